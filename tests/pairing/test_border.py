"""A border: what each plant there is held up with, and what stands up among its neighbours."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.answers.answers import answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.pairing import advisor
from plantframe.pairing.border import BARE, prop_of
from plantframe.pairing.matches import QUESTIONS, Matches

TODAY = date(2027, 1, 15)
BORDER = """\
garden Tarn Side, 2027
  place 52.1 N, 1.4 W
border Back Border, 1.5 m x 6 m
  sun {sun}
  peony, 3 plants
  phlox, 5 plants
  delphinium, 3 plants
"""


def asked(sun: str = "full") -> Matches:
    return advisor.for_place(answers_to(BORDER.format(sun=sun), TODAY).season, "Back Border")


@pytest.mark.parametrize(
    ("plant", "prop"),
    [
        # Common practice, no source, but for the first two: a ring for peonies and a cylinder or a
        # ring for asters are in Iowa State University Extension's advice on staking.
        ("peony", "ring"),
        ("tall aster", "ring"),
        ("garden phlox", "ring"),
        ("delphinium", "cane"),
        ("tall lily", "cane"),
        ("dahlia", "stake"),
        ("cornflower", "brush"),
        ("scabious", "brush"),
        ("Culver's root", BARE),
        ("coneflower", BARE),
        ("blazing star", BARE),
        ("sea holly", BARE),
        ("foxglove", BARE),
        ("hollyhock", BARE),
    ],
)
def test_who_needs_a_ring_a_cane_a_spike_brush_or_nothing(plant: str, prop: str) -> None:
    entry = catalogue.plant(plant)
    assert entry is not None
    assert prop_of(entry) == prop


def test_what_stands_there_is_told_what_it_is_held_up_with() -> None:
    remarks = " ".join(asked().remarks)
    assert "Peony: a grow-through ring, 45 to 60 cm across." in remarks
    assert "Delphinium: one cane a spike." in remarks
    assert "Phlox: a ring" in remarks


def test_a_tall_narrow_plant_that_needs_no_prop_comes_first() -> None:
    found = asked()
    first = [one.plant for one in found.ranked[:4]]
    assert "Culver's root" in first
    assert all(one.kind == BARE for one in found.ranked[:3])
    assert "an upright accent" in found.ranked[0].reason("reach").says


def test_a_low_plant_is_no_accent_among_tall_ones() -> None:
    low = next(one for one in asked().ranked if one.plant == "Asiatic lily")
    assert "no taller than its neighbours" in low.reason("reach").says


def test_climbers_and_vegetables_are_not_offered_for_it() -> None:
    plants = {one.plant for one in asked().ranked}
    assert not plants & {"cucumber", "wisteria", "sweet corn", "tall pea"}


def test_all_six_questions_are_answered() -> None:
    for one in asked().ranked:
        assert tuple(reason.question for reason in one.reasons) == QUESTIONS


def test_a_shady_border_rules_out_what_wants_sun() -> None:
    shady = asked("none")
    out = {one.plant: one.because for one in shady.rejected}
    assert out.get("hollyhock") == "light"
    assert "foxglove" in {one.plant for one in shady.ranked} | set(out)
    assert len(asked().rejected) < len(shady.rejected)


def test_what_is_there_already_is_not_offered_again() -> None:
    assert not {"peony", "garden phlox", "delphinium"} & {one.plant for one in asked().ranked}
