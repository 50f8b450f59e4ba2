"""Bars and posts beside a general library for frames, which knows nothing of our formulas."""

from __future__ import annotations

from typing import Any

import pytest
from Pynite import FEModel3D  # type: ignore[import-untyped]

from plantframe.mechanics import beam, section

STIFFNESS_PA = 8e9
COMBINATION = "Combo 1"


def member(length_m: float, inertia_m4: float, area_m2: float) -> Any:  # noqa: ANN401
    """A model with one level member from A to B; its supports and loads are still to come."""
    model = FEModel3D()
    model.add_node("A", 0, 0, 0)
    model.add_node("B", length_m, 0, 0)
    model.add_material("wood", STIFFNESS_PA, STIFFNESS_PA / 16, 0.3, 0)
    model.add_section("stick", area_m2, inertia_m4, inertia_m4, 2 * inertia_m4)
    model.add_member("stick", "A", "B", "wood", "stick")
    return model


STICKS = [
    (0.038, 0.038, 2.40),
    (0.038, 0.043, 2.40),
    (0.089, 0.038, 3.00),
    (0.038, 0.089, 3.60),
]


@pytest.mark.parametrize(("width_m", "depth_m", "span_m"), STICKS)
def test_a_bar_under_an_even_load_bends_and_bows_as_the_library_finds(
    width_m: float, depth_m: float, span_m: float
) -> None:
    inertia_m4 = section.rectangle_inertia_m4(width_m, depth_m)
    load_n_per_m = 110.0
    model = member(span_m, inertia_m4, section.rectangle_area_m2(width_m, depth_m))
    model.def_support("A", True, True, True, True, False, False)
    model.def_support("B", False, True, True, False, False, False)
    model.add_member_dist_load("stick", "Fy", -load_n_per_m, -load_n_per_m)
    model.analyze()
    stick = model.members["stick"]
    moments = (stick.max_moment("Mz", COMBINATION), stick.min_moment("Mz", COMBINATION))
    bow_m = stick.min_deflection("dy", COMBINATION)
    assert max(abs(m) for m in moments) == pytest.approx(
        beam.bending_moment_nm(load_n_per_m, span_m), rel=1e-3
    )
    assert -bow_m == pytest.approx(
        beam.deflection_m(load_n_per_m, span_m, inertia_m4, STIFFNESS_PA), rel=1e-3
    )


def test_a_bar_with_a_basket_in_the_middle_bends_as_the_library_finds() -> None:
    inertia_m4 = section.rectangle_inertia_m4(0.038, 0.089)
    model = member(2.0, inertia_m4, section.rectangle_area_m2(0.038, 0.089))
    model.def_support("A", True, True, True, True, False, False)
    model.def_support("B", False, True, True, False, False, False)
    model.add_member_pt_load("stick", "Fy", -150.0, 1.0)
    model.analyze()
    stick = model.members["stick"]
    moments = (stick.max_moment("Mz", COMBINATION), stick.min_moment("Mz", COMBINATION))
    assert max(abs(m) for m in moments) == pytest.approx(beam.point_moment_nm(150.0, 2.0), rel=1e-3)
    assert -stick.min_deflection("dy", COMBINATION) == pytest.approx(
        beam.point_deflection_m(150.0, 2.0, inertia_m4, STIFFNESS_PA), rel=1e-3
    )


@pytest.mark.parametrize(("diameter_m", "height_m"), [(0.038, 1.1), (0.075, 1.0), (0.1, 1.8)])
def test_a_post_pushed_by_the_wind_bends_and_leans_as_the_library_finds(
    diameter_m: float, height_m: float
) -> None:
    inertia_m4 = section.round_inertia_m4(diameter_m)
    model = member(height_m, inertia_m4, section.round_area_m2(diameter_m))
    model.def_support("A", True, True, True, True, True, True)
    model.add_node_load("B", "FY", 90.0)
    model.analyze()
    foot_nm = model.nodes["A"].RxnMZ[COMBINATION]
    lean_m = model.nodes["B"].DY[COMBINATION]
    assert abs(foot_nm) == pytest.approx(beam.cantilever_moment_nm(90.0, height_m), rel=1e-6)
    assert lean_m == pytest.approx(
        beam.cantilever_deflection_m(90.0, height_m, inertia_m4, STIFFNESS_PA), rel=1e-6
    )
