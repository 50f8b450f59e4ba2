"""Sections: what they measure, what they are called, and what a ripped board gives."""

from __future__ import annotations

import pytest

from plantframe.timber.sections import Section, section_m
from plantframe.timber.tape import KERF_M
from tests.timber.gardens import HEAD, plan

INCHES = plan("bed Bed, 4 ft x 8 ft\n").garden
METRIC = plan("bed Bed, 1.2 m x 2 m\n", HEAD + "  timber actual\n").garden


@pytest.mark.published
@pytest.mark.parametrize(
    ("thick_in", "wide_in", "name"),
    # PS 20, dry dressed sizes, inches
    [(1.5, 1.5, "2x2"), (1.5, 3.5, "2x4"), (0.75, 3.5, "1x4"), (1.5, 11.25, "2x12")],
)
def test_a_dressed_stick_is_called_by_its_trade_size(thick_in, wide_in, name) -> None:
    section = section_m(thick_in * 0.0254, wide_in * 0.0254, is_round=False)
    assert section.name(INCHES) == name


def test_a_ripped_two_by_four_gives_sticks_of_an_inch_and_eleven_sixteenths() -> None:
    # by hand: (3 1/2 - 1/8) / 2 = 1 11/16 in, 43 mm
    half = Section(38, 89).ripped(KERF_M)
    assert half == Section(38, 43)
    assert half.inches() == "1-1/2 x 1-11/16 in"


def test_a_ripped_stick_stands_for_the_square_one_and_not_the_other_way() -> None:
    assert Section(38, 43).stands_for(Section(38, 38))
    assert not Section(38, 38).stands_for(Section(38, 43))
    assert not Section(38, 67).stands_for(Section(38, 38))


@pytest.mark.parametrize(
    "section", [Section(38, 38), Section(38, 184), Section(80, 80, round=True)]
)
def test_what_gives_no_two_sticks_is_not_ripped(section: Section) -> None:
    assert section.ripped(KERF_M) is None


def test_metric_timber_is_called_by_what_it_measures() -> None:
    assert Section(45, 90).name(METRIC) == "45x90 mm"
    assert Section(38, 89).name(METRIC) == "38x89 mm"


def test_a_name_that_hides_the_measure_is_given_it() -> None:
    assert Section(38, 286).measures(INCHES) == "1-1/2 x 11-1/4 in"
    assert Section(45, 90).measures(METRIC) == ""


def test_a_pole_is_round_and_weighs_less_than_the_square_round_it() -> None:
    assert Section(80, 80, round=True).area_m2 == pytest.approx(0.0050265, rel=1e-3)
    assert not Section(80, 80, round=True).same_as(Section(80, 80))
