"""Sections of sticks and poles: area, section modulus, second moment, sizes as sold."""

from __future__ import annotations

import math

from plantframe.mechanics.units import IN_M


def rectangle_area_m2(width_m: float, depth_m: float) -> float:
    """Area of a rectangle, m². Sides in m. Source: geometry."""
    return width_m * depth_m


def rectangle_modulus_m3(width_m: float, depth_m: float) -> float:
    """Section modulus of a rectangle, m³: bending moment over stress.

    width_m   side across the load, m
    depth_m   side along the load, m (on edge: the longer one)

    Assumes: a solid, straight-grained rectangle bent about one of its axes.
    Source: S = b d² / 6, the formula behind NDS Supplement 2018, Table 1B.
    """
    return width_m * depth_m**2 / 6


def rectangle_inertia_m4(width_m: float, depth_m: float) -> float:
    """Second moment of area of a rectangle, m⁴; it governs the bow.

    width_m   side across the load, m
    depth_m   side along the load, m

    Source: I = b d³ / 12, the formula behind NDS Supplement 2018, Table 1B.
    """
    return width_m * depth_m**3 / 12


def round_area_m2(diameter_m: float) -> float:
    """Area of a round section, m². Diameter in m. Source: geometry."""
    return math.pi * diameter_m**2 / 4


def round_modulus_m3(diameter_m: float) -> float:
    """Section modulus of a solid round pole, m³. Diameter in m.

    Source: S = π d³ / 32, elementary strength of materials (from memory).
    """
    return math.pi * diameter_m**3 / 32


def round_inertia_m4(diameter_m: float) -> float:
    """Second moment of area of a solid round pole, m⁴. Diameter in m.

    Source: I = π d⁴ / 64, elementary strength of materials (from memory).
    """
    return math.pi * diameter_m**4 / 64


def tube_modulus_m3(outside_m: float, inside_m: float) -> float:
    """Section modulus of a tube (pipe, thick cane), m³.

    outside_m   outer diameter, m
    inside_m    inner diameter, m, less than the outer

    Assumes: an even wall and no crushing of it; the joints of a cane are left out.
    Source: S = π (D⁴ - d⁴) / (32 D), elementary strength of materials (from memory).
    """
    return math.pi * (outside_m**4 - inside_m**4) / (32 * outside_m)


def tube_inertia_m4(outside_m: float, inside_m: float) -> float:
    """Second moment of area of a tube, m⁴. Outer and inner diameter in m.

    Source: I = π (D⁴ - d⁴) / 64, elementary strength of materials (from memory).
    """
    return math.pi * (outside_m**4 - inside_m**4) / 64


def stick_mass_kg(area_m2: float, length_m: float, density_kg_per_m3: float) -> float:
    """Mass of a stick or pole of one section, kg. Source: volume times density."""
    return area_m2 * length_m * density_kg_per_m3


def _dressed_side_in(nominal_in: float) -> float:
    if nominal_in < 2:
        return nominal_in - 0.25
    return nominal_in - (0.5 if nominal_in <= 6 else 0.75)


def dressed_in(nominal_thickness_in: float, nominal_width_in: float) -> tuple[float, float]:
    """Actual thickness and width of planed, dry softwood sold by nominal size, in inches.

    nominal_thickness_in   1 to 4, or 6 for a 6 by 6
    nominal_width_in       not below the thickness, at most 16

    Raises ValueError for a heavier timber, whose planed size follows another column.
    Source: PS 20, American Softwood Lumber Standard, dry dressed sizes (also NDS Supplement 2018,
    Table 1A): ¼ in comes off a 1 in board's thickness, ½ in off sides up to 6 in, ¾ in beyond.
    A 1¼ in (5/4) board and a 1 in wide strip follow the same rule from memory.
    """
    thin, wide = sorted((nominal_thickness_in, nominal_width_in))
    if thin < 1 or wide > 16 or (thin > 4 and (thin, wide) != (6, 6)):
        raise ValueError(
            f"no planed size is known for {nominal_thickness_in:g}x{nominal_width_in:g}: "
            "give the measured size"
        )
    return _dressed_side_in(nominal_thickness_in), _dressed_side_in(nominal_width_in)


def dressed_mm(nominal_thickness_in: float, nominal_width_in: float) -> tuple[int, int]:
    """Actual thickness and width of planed, dry softwood, in whole millimetres.

    As `dressed_in`, with its ValueError; to the nearest millimetre, as timber is measured.
    Source: PS 20, converted at 25.4 mm to the inch.
    """
    thickness_in, width_in = dressed_in(nominal_thickness_in, nominal_width_in)
    return round(thickness_in * IN_M * 1000), round(width_in * IN_M * 1000)
