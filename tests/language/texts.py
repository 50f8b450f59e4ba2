"""Plans to read: a few whole ones, some messy ones, and any number made up."""

from __future__ import annotations

import random
from typing import TYPE_CHECKING

from hypothesis import strategies as st

if TYPE_CHECKING:
    from hypothesis.strategies import SearchStrategy

HILL = """\
garden Marl Hill, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
  wind average, from the south-west
  soil firm loam
  person Maud, reach 1.95 m, lifts 15 kg
  person Wim, lifts 25 kg
  free Saturday 6 h, Wednesday 2 h
  away 10–20 July

(What is in the shed after Christmas.)
shed
  6 posts 2x2, 8'
  2 @ 2x4, 6'
  net 5 ft x 20 ft, mesh 4 in
  half a box of screws 3 in

yard Copse Lane
  2x4, 8 ft, at 4.20

wall House Wall, faces east, shingles
  eaves 10 ft

bed Long Bed, 4 ft x 24 ft, runs north-south
  sun full
  had pea in 2025, bean in 2026

frame Bean Net, net frame, in Long Bed, north end
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6½ ft up (the straight ones)
  bar 2x2
  net 6 ft 6 in x 16 ft, mesh 6", two widths tied
  grow pole bean 'Millpond's Pride', 40 plants, sow 18 May
  ready by 15 May
  ok crowded because "we thin by eating", Maud, 2 March

cover Seed Box, cold frame, south of the shed
  size 8 ft 1 in x 4 ft, low side south
  back 2x12
  lights 4
  on 1 October to 15 April

want cucumber, 6 plants
task rip 4 of 2x4, at the yard, by 1 April
log 2 August, Bean Net, picked 3 lb, bar 2 in low
note Bean Net: never again the same weekend as the tomatoes
"""
SOUTH = """\
garden Back Paddock, 2026-27
  place 37.8 S, 145 E
  frost last 25 September, first 20 May

shed
  10 hardwood stakes 25x25 mm, 1,8 m

bed Top Bed, 1.2 × 6 m, runs east-west
  sun 8 h
  had tomatoes last year

frame Tomato Stakes, stakes, in Top Bed
  stakes 25x25 mm, 1.8 m, 45cm down
  grow tomato, 12 plants, plant 2 weeks after last frost
  done set the stakes, 24 September
  move tie the stems to 2 December

fence Rose Fence, post and rail, 14 m long
  built 2024
  posts 100 mm round, 1.8 m, 60 cm down
  rails 2
  grow climbing rose, 5

cover Fruit Cage, fruit cage, over the blueberries
  size 3 x 4 m, 2 m high
  net mesh 5 mm or less
"""
OWN = """\
garden Lot 9, 2027
  last frost May 18th
  place 45.4 N, 73 W

bed South Strip, 30 in x 18 ft
frame Bean Bridge, own design, in South Strip
  piece 4 of 2x2, 1.9 m
  step join the pieces after cut the pieces
  wires 2, at 3 ft and 5 ft
  grow pea, 60, sow April 10
border Roses, along the drive
  rose 'Gardener's Apricot'
  rose "Bees' Choice"
"""
PLANS = (HILL, SOUTH, OWN)
# Typed in a hurry, at the edge of what can be read.
MESSY = (
    "bed Long Bed ,4 ft x 8 ft,runs N-S\n\tsun  full(they say)\n   had pea in 2025,bean in 2026\n",
    'frame Bean Net,net frame\n  posts 2x2,8 ft\n  ok crowded because "a, b (c)",Maud\n',
    "shed\n\u00a06  posts\u00a02x2 , 8'\n  a (b (c) d) e\n  (unclosed\n  \"unclosed, too\n",
    "frame A\n  net 6'6\" x 16', mesh 6\",two widths tied\n  grow pea 'Tall, and thin'\n",
    "log 2 August,  Bean Net ,picked 1.4 kg\nnote a  b,c\nread   places\n",
    "bed A, B, C,,\n  ,,\n  sun,full\n  , sun half\n",
    "<<<<<<< ours\nbed  A\n=======\nbed  B\n>>>>>>> theirs\n  sun   full\n",
    "bed Long Bed\n  sun full \x0c\n\x0b  sun half\n  \u2028had pea in 2025\n",
)

_WORDS = [
    *("bed", "frame", "line", "cover", "fence", "shed", "yard", "garden", "want", "task", "log"),
    *("note", "read", "posts", "bar", "bays", "net", "grow", "sow", "sun", "had", "ok", "done"),
    *("move", "skip", "because", "Long Bed", "Bean Net", "net frame", "pea", "pole bean", "in"),
    *("on", "to", "by", "of", "from", "down", "up", "north end", "8 ft", "18 in", "2x2", "2x4"),
    *("45x95 mm", "2.4 m", "2,4 m", "6'6\"", "½", "18 May", "31 June", "5/6", "2027", "last"),
    *("'Tall Piper'", '"quoted, words"', "(remark)", "(", ")", ",", ":", ";", "-", "–", "×", "@"),
    *("£4.20", "20d", "frost", "8", "ft", '"', "'", "\u00a0"),
]


@st.composite
def _lines(draw: st.DrawFn) -> str:
    indent = draw(st.sampled_from(["", "  ", "  ", "\t", "\u00a0", "     "]))
    words = draw(st.lists(st.sampled_from(_WORDS), max_size=9))
    return indent + draw(st.sampled_from([" ", " ", "  ", ",", ", "])).join(words)


def plan_texts() -> SearchStrategy[str]:
    """Texts made of a plan's own words, in any order."""
    return st.lists(_lines(), max_size=14).map("\n".join)


def many_lines(count: int) -> str:
    """A long plan of so many lines, no two blocks of it alike; the same every time."""
    chance = random.Random(count)
    out = ["garden Quarry Row, 2027", "  place 52.1 N, 1.4 W", "bed Long Bed, 4 ft x 24 ft"]
    number = 0
    while len(out) < count:
        number += 1
        down, length = chance.randint(14, 30), chance.choice([6, 7, 8, 10])
        out += [
            f"frame Net {number}, net frame, in Long Bed",
            f"  bays {chance.randint(1, 6)} of {chance.randint(5, 9)} ft",
            f"  posts 2x2, {length} ft, {down} in down",
            f"  bar 2x{chance.choice([2, 3, 4])}, on edge",
            f"  net {chance.randint(4, 7)} ft x {chance.randint(8, 30)} ft, mesh 6 in",
            f"  grow pole bean, {chance.randint(8, 60)} plants, sow {chance.randint(1, 28)} May",
            f"  ready by {chance.randint(1, 30)} April (as number {number})",
            "",
        ]
    return "\n".join(out[:count]) + "\n"
