"""Shapes of the garden: hoops, leaning poles, tapers, laps, folds, holes, square corners."""

from __future__ import annotations

import math

CONCRETE_MIX_KG_PER_M3 = 2200.0  # dry mix for each m³ of hole filled: common practice, no source


def diagonal_m(width_m: float, length_m: float) -> float:
    """Diagonal of a rectangle, m; both alike when it is square. Sides in m. Source: Pythagoras."""
    return math.hypot(width_m, length_m)


def half_ellipse_m(width_m: float, height_m: float) -> float:
    """Length of a hoop over a bed, m: half the outline of an ellipse.

    width_m    between its feet at the ground, m, above zero
    height_m   crown above the ground, m, above zero

    A bent rod takes nearly this shape.
    Source: the outline of an ellipse by the arithmetic-geometric mean (Gauss), from memory.
    """
    a, g = width_m / 2, height_m
    total = a * a
    weight = 0.5
    total -= weight * (a * a - g * g)
    while abs(a - g) > 1e-12 * a:
        a, g = (a + g) / 2, math.sqrt(a * g)
        weight *= 2
        total -= weight * (a * a - g * g)
    return math.pi * total / a


def hoop_rod_m(width_m: float, height_m: float, foot_m: float = 0.2) -> float:
    """Rod to cut for a hoop, m: its arc and a foot in the ground at each end.

    Width between the feet, height of the crown and length of each foot in m.
    Source: `half_ellipse_m`; a foot of 20 cm is common practice, no source.
    """
    return half_ellipse_m(width_m, height_m) + 2 * foot_m


def hoop_cover_m(width_m: float, height_m: float, skirt_m: float = 0.3) -> float:
    """Least width of a cover over a hoop, m: its arc and a skirt on the ground at each side.

    Width between the feet, height of the crown and width of each skirt in m.
    Source: `half_ellipse_m`; a skirt of 30 cm is common practice, no source.
    """
    return half_ellipse_m(width_m, height_m) + 2 * skirt_m


def lean_height_m(pole_m: float, spread_m: float) -> float:
    """Height that a leaning pole reaches, m.

    pole_m     length from the ground to the tie, m
    spread_m   foot to the point under the tie, m, less than the pole

    Raises ValueError where the foot lies as far out as the pole is long. Source: Pythagoras.
    """
    if spread_m >= pole_m:
        raise ValueError("the foot stands further out than the pole is long")
    return math.sqrt(pole_m**2 - spread_m**2)


def lean_deg(pole_m: float, spread_m: float) -> float:
    """Lean of a pole away from upright, degrees. Arguments and ValueError as `lean_height_m`.

    Source: trigonometry.
    """
    return math.degrees(math.atan2(spread_m, lean_height_m(pole_m, spread_m)))


def fall_deg(fall_m: float, run_m: float) -> float:
    """Slope of a light or a tapered side, degrees from level. Fall and run in m, run above zero.

    Source: trigonometry.
    """
    return math.degrees(math.atan2(fall_m, run_m))


def taper_width_m(wide_m: float, narrow_m: float, length_m: float, from_wide_m: float) -> float:
    """Width of a tapered board, or diameter of a pole, at a distance from its wide end, m.

    Wide end, narrow end, length (above zero) and distance in m. Source: a straight line.
    """
    return wide_m + (narrow_m - wide_m) * from_wide_m / length_m


def lapped_row_m(pieces: int, piece_m: float, lap_m: float) -> float:
    """Length of a row of equal pieces that overlap their neighbours, m.

    pieces    how many, at least one
    piece_m   length of each, m
    lap_m     how far neighbours overlap, m

    Source: addition.
    """
    return pieces * piece_m - (pieces - 1) * lap_m


def lapped_piece_m(pieces: int, row_m: float, lap_m: float) -> float:
    """Length of each of equal pieces that overlap along a row, m: `lapped_row_m` turned round.

    Number of pieces (at least one), length of the row and overlap in m. Source: addition.
    """
    return (row_m + (pieces - 1) * lap_m) / pieces


def stem_upright_m(crown_m: float, hinge_m: float, tie_m: float) -> float:
    """Length of stem from the crown of a plant to its first tie, m, with the lattice upright.

    crown_m   crown in front of the hinge line, m; less than zero toward the wall
    hinge_m   hinge above the ground, m
    tie_m     first tie above the hinge, m

    Source: Pythagoras.
    """
    return math.hypot(crown_m, tie_m + hinge_m)


def stem_folded_m(crown_m: float, hinge_m: float, tie_m: float) -> float:
    """Distance from the crown to the first tie, m, with the lattice folded down forward.

    Arguments as `stem_upright_m`. Source: Pythagoras.
    """
    return math.hypot(tie_m - crown_m, hinge_m)


def fold_stretch_m(crown_m: float, hinge_m: float, tie_m: float) -> float:
    """How much a stem is stretched when the lattice folds, m; less than zero is slack to loop.

    Arguments as `stem_upright_m`. A stem is stretched only where the crown lies further toward
    the wall than the hinge stands high.
    Source: `stem_folded_m` less `stem_upright_m`.
    """
    return stem_folded_m(crown_m, hinge_m, tie_m) - stem_upright_m(crown_m, hinge_m, tie_m)


def hole_fill_m3(hole_m: float, depth_m: float, post_area_m2: float) -> float:
    """Concrete to fill a round hole round a post, m³.

    hole_m         diameter of the hole, m
    depth_m        depth filled, m
    post_area_m2   section of the post, m², less than the hole's

    Source: volume of a cylinder less that of the post.
    """
    return (math.pi * hole_m**2 / 4 - post_area_m2) * depth_m


def concrete_mix_kg(volume_m3: float) -> float:
    """Dry mix to buy for a filled volume in m³, kg.

    Source: 2.2 kg a litre, common practice, no source.
    """
    return CONCRETE_MIX_KG_PER_M3 * volume_m3


def stay_m(height_m: float, foot_m: float) -> float:
    """Length of a stay or raking brace, m.

    Height at which it takes hold and distance of its foot from the post, m. Source: Pythagoras.
    """
    return math.hypot(height_m, foot_m)
