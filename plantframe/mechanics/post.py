"""A post as a cantilever: what the wind asks of it at the ground, and what its wood answers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.mechanics import practice

if TYPE_CHECKING:
    from plantframe.mechanics.ranges import Range


def push_height_m(leafy_height_m: float, from_ground_m: float = 0.0) -> float:
    """Height at which the wind's push on a leafy sail acts, m above the ground.

    leafy_height_m   height of the leafy part, m
    from_ground_m    height of its lower edge above the ground, m

    Source: estimate tuned to practice, 0.55 of the leafy height.
    """
    return from_ground_m + practice.PUSH_HEIGHT_SHARE * leafy_height_m


def wind_push_n(pressure_pa: float, leaf_factor: float, area_m2: float) -> float:
    """Sideways push of the wind on a leafy area, N.

    pressure_pa   velocity pressure of the gust, Pa
    leaf_factor   push on gross area as a share of that pressure, no unit
    area_m2       gross leafy area the post answers for, m²

    Source: F = c q A, EN 1991-1-4, 5.3; the leaf factor has no published value.
    """
    return pressure_pa * leaf_factor * area_m2


def wind_push_nm(
    pressure_pa: float, leaf_factor: float, area_m2: float, height_of_push_m: float
) -> float:
    """Moment of the wind at the foot of a post, N·m.

    Arguments as `wind_push_n`, and the height of the push above the ground, m.
    Source: force times lever arm.
    """
    return wind_push_n(pressure_pa, leaf_factor, area_m2) * height_of_push_m


def leafy_push_nm(pressure_pa: float, area_m2: float, height_of_push_m: float) -> Range:
    """Moment of a gust on leaves at the foot of a post, N·m: low, middle, high.

    pressure_pa        velocity pressure at the leaves, Pa
    area_m2            gross leafy area the post answers for, m²
    height_of_push_m   height of the push above the ground, m

    Source: `wind_push_nm` with the leaf push of `practice`, an estimate tuned to practice.
    """
    return practice.LEAF_PUSH.times(wind_push_nm(pressure_pa, 1.0, area_m2, height_of_push_m))


def wood_moment_nm(modulus_m3: float, strength_pa: Range) -> Range:
    """Moment at which a stick gives way, N·m: low, middle, high.

    modulus_m3    section modulus, m³
    strength_pa   breaking stress, Pa: low, middle, high

    Source: M = f S, the definition of the section modulus.
    """
    return strength_pa.times(modulus_m3)


def sawn_moment_nm(modulus_m3: float) -> Range:
    """Moment at which an ungraded, wet, sawn stick gives way in a gust, N·m.

    Section modulus in m³. Source: strength is an estimate tuned to practice.
    """
    return wood_moment_nm(modulus_m3, practice.SAWN_STRENGTH_PA)


def round_moment_nm(modulus_m3: float) -> Range:
    """Moment at which a round pole gives way in a gust, N·m.

    Section modulus in m³. Source: strength is an estimate tuned to practice.
    """
    return wood_moment_nm(modulus_m3, practice.ROUND_STRENGTH_PA)
