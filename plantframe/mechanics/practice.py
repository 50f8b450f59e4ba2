"""Constants tuned to practice: they let ordinary garden structures that stand be called standing.

No standard gives a value for a bean net or a seconds-grade stick. Each figure below is an estimate,
chosen so that structures long known to stand come out under their limit and ones known to fail come
out over it; a figure that rests on more than that says so. Change one only together with a run of
the whole bench of known-good and known-bad structures.
"""

from typing import Final

from plantframe.mechanics.ranges import Range

# --- Wind in a garden ---------------------------------------------------------------------------

# Most summers bring one such gust, at 10 m in the open (70 km/h, Beaufort 8).
MAST_GUST_M_PER_S: Final = 20.0

# The same gust at the leaves: among walls and hedges; in an ordinary garden; on a ridge or coast.
SHELTER_FACTORS: Final = {"sheltered": 0.35, "average": 0.5, "windy": 0.9}

# EN 1991-1-4 recommends this density of air for the sums of wind.
AIR_KG_PER_M3: Final = 1.25

# Push on the gross area of a leafy net, as a share of the wind's pressure: 60 % filled, 1.2 on the
# filled part. Low end: a windbreak two fifths open, its leaves folded back. High end: a flat
# lattice, 1.6 on its solid part. No standard has a value for leaves on a net.
LEAF_PUSH: Final = Range(0.5, 0.72, 1.0)

# A bare net, without leaves, on gross area.
BARE_NET_PUSH: Final = 0.2

# Where the push acts, as a share of leafy height: above the middle, for there is more leaf up
# there and more wind.
PUSH_HEIGHT_SHARE: Final = 0.55

# --- Wood that is put up and taken down each year -----------------------------------------------

# Breaking stress in a gust of seconds: ungraded, wet, sawn sticks. A 38 mm stick gives way at
# about 290 N·m at the ground (230 to 350).
SAWN_STRENGTH_PA: Final = Range(25e6, 32e6, 38e6)

# A round pole keeps its fibres whole; the same share of doubt either way as a sawn stick.
ROUND_STRENGTH_PA: Final = Range(37e6, 47e6, 56e6)

# A top bar under weeks of crop: bending stress, stiffness of ordinary softwood, and the bow a
# gardener still puts up with (a sixtieth of the span).
BAR_STRESS_LOW_PA: Final = 7e6
BAR_STRESS_HIGH_PA: Final = 10e6
BAR_STIFFNESS_PA: Final = 8e9
BAR_BOW_SHARE: Final = 1 / 60

# Wood under a standing load goes on bowing; only where the bow itself is spoken of, and only from
# this bow on (about 1¾ in). Inside the capacity it would condemn ordinary bean rows.
CREEP_FACTOR: Final = 1.5
BOW_WORTH_SAYING_M: Final = 0.045

# A post propped near its head, square to the row, carries so many times as much push.
SQUARE_STAY_FACTOR: Final = 3.0

# --- What stays for years -----------------------------------------------------------------------

# A rarer gust while in leaf; and age, knots and wet feet.
YEARS_PRESSURE_FACTOR: Final = 1.5
YEARS_STRENGTH_FACTOR: Final = 0.5

# --- Wires --------------------------------------------------------------------------------------

HAND_TIGHT_N: Final = 300.0
STRAINED_N: Final = 1000.0

# Droop worth a remark, and droop worth a warning, as a share of the span. Only under soft plants
# that hang from the wire: canes and trunks stand by themselves.
WIRE_SAG_NOTE_SHARE: Final = 0.04
WIRE_SAG_WARN_SHARE: Final = 0.06

# Stiffness of steel wire. Handbooks give 190 to 210 GPa; from memory.
STEEL_STIFFNESS_PA: Final = 200e9

# --- Ground -------------------------------------------------------------------------------------

# The top of the soil does not count: 1½ post widths (Broms), at most so much. Without the cap a
# thicker short post would come out weaker than a thin one.
UNCOUNTED_WIDTHS: Final = 1.5
UNCOUNTED_MOST_M: Final = 0.057

# --- Depth of a lasting post: common practice, no source ----------------------------------------

LASTING_DEPTH_M: Final = 0.60
LASTING_DEPTH_SHARE: Final = 0.25  # of the post's length, where that is more
GATEPOST_DEPTH_M: Final = 0.75
HELD_ELSEWHERE_DEPTH_M: Final = 0.40  # braced, anchored, tied at the head, or a concrete foot
TALL_POLE_SHARE: Final = 0.10  # of the pole's length, and then
TALL_POLE_ADDED_M: Final = 0.60
