"""Beds laid out, and shade on the ground against school geometry."""

from __future__ import annotations

import math
from datetime import date

import pytest

from plantframe.paper.bed_drawing import bed_drawing
from plantframe.paper.bed_map import row_lines
from plantframe.paper.ground import Ground, cut_to, ground_of, hull, overlaps, shade_of
from plantframe.paper.shade import days_of
from tests.paper.gardens import BED, HEAD, NET, answers, texts

SQUARE = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)]


def ground(text: str, name: str = "Long Bed") -> Ground:
    found = answers(text)
    laid = ground_of(found.season, found.plan.beds[name])
    assert laid is not None
    return laid


def area(corners: tuple[tuple[float, float], ...]) -> float:
    pairs = zip(corners, (*corners[1:], corners[0]), strict=True)
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)) / 2


def test_a_row_at_the_north_end_begins_at_the_north_edge() -> None:
    (row,) = ground(HEAD + BED + NET).rows
    assert row.placed
    assert max(y for _, y in row.corners) == pytest.approx(4.0)
    assert min(y for _, y in row.corners) == pytest.approx(4.0 - 16 * 0.3048)


def test_a_row_without_a_place_goes_where_there_is_room_and_says_so() -> None:
    other = "frame Pea Net, net frame, in Long Bed\n  bays 1 of 2.4 m\n"
    laid = ground(HEAD + BED + NET + other)
    rows = {row.name: row for row in laid.rows}
    assert not rows["Pea Net"].placed
    assert overlaps(laid) == []
    assert any("does not say where" in line for line in row_lines(laid, answers(HEAD).shown))


def test_two_rows_in_one_stretch_of_a_bed_are_told_of() -> None:
    other = "frame Pea Net, net frame, in Long Bed, south end\n  bays 2 of 2.4 m\n"
    ((one, two, shared),) = overlaps(ground(HEAD + BED + NET + other))
    assert {one, two} == {"Bean Net", "Pea Net"}
    assert shared == pytest.approx(16 * 0.3048 + 4.8 - 8.0, abs=0.05)


def test_a_bed_whose_run_is_not_said_has_no_compass_and_no_shade() -> None:
    found = answers(HEAD + "bed Low Bed, 1 m x 4 m\n")
    drawn = bed_drawing(found, found.plan.beds["Low Bed"], [])
    assert drawn is not None
    says = texts(drawn.svg("Low Bed"))
    assert "N" not in says
    assert any("No shade is drawn" in one for one in says)


def test_a_bed_that_runs_north_south_lies_along_the_page_with_north_at_the_left() -> None:
    found = answers(HEAD + BED)
    drawn = bed_drawing(found, found.plan.beds["Long Bed"], [])
    assert drawn is not None
    assert {"N", "8 m", "1.2 m", "12 o'clock", "21 June"} <= set(texts(drawn.svg("x")))


def test_a_neighbour_at_a_distance_is_drawn_there() -> None:
    hedge = "hedge Holly, 2 m high, 3 m east of Long Bed\n"
    (other,) = ground(HEAD + BED + hedge).beside
    assert min(x for x, _ in other.corners) == pytest.approx(0.6 + 3.0)
    assert other.high_m == 2.0


def test_a_sun_at_45_degrees_throws_shade_as_long_as_the_thing_is_high() -> None:
    dark = shade_of([(0, 0), (4, 0), (4, 0.1), (0, 0.1)], None, 2.0, 1.0, 0.0)
    assert max(y for _, y in dark) == pytest.approx(2.1)
    assert area(dark) == pytest.approx(4 * 2.1)


def test_the_shade_of_a_wigwam_ends_in_its_tip() -> None:
    dark = shade_of(SQUARE, (0.5, 0.5), 2.0, 1.0, 90.0)
    assert max(dark) == pytest.approx((2.5, 0.5))


def test_an_outline_has_no_hollow_side() -> None:
    assert set(hull([*SQUARE, (0.5, 0.5), (0.2, 0.4)])) == set(SQUARE)


def test_a_window_cuts_a_figure_at_its_edge() -> None:
    cut = cut_to(SQUARE, (0.5, -1.0), (2.0, 0.5))
    assert area(cut) == pytest.approx(0.25)
    assert cut_to(SQUARE, (5.0, 5.0), (6.0, 6.0)) == ()


def test_days_of_shade_are_half_a_year_apart_in_the_two_halves_of_the_world() -> None:
    assert days_of(52.0, 2027) == (date(2027, 5, 1), date(2027, 6, 21), date(2027, 9, 1))
    assert days_of(-41.0, 2026) == (date(2026, 11, 1), date(2026, 12, 21), date(2027, 3, 1))


def test_a_bed_of_no_size_is_not_laid_out() -> None:
    found = answers(HEAD + "bed Odd Bed\n")
    assert ground_of(found.season, found.plan.beds["Odd Bed"]) is None
    assert math.isfinite(ground(HEAD + BED).length_m)
