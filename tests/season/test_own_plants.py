"""What a gardener says of a plant of their own outranks the catalogue, and is told as theirs."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.answers.answers import Answers, answers_of, answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.pairing import advisor
from plantframe.season.entries import entry_of

if TYPE_CHECKING:
    from pathlib import Path

    from plantframe.catalogue.entries import Plant

TODAY = date(2026, 11, 25)
PLANTS = """\
variety Ida Bean, like runner bean
  also called Ida's
  height 2 to 2.6 m
  weighs 5 to 7 kg a metre
  yields 3 kg a metre
  grips up to 4 cm
  apart 20 cm
  sun 4 to 5 h
  sow 2 weeks after last frost
  ready 60 to 70 days after sowing
  soil 14 C
  stays 4 months
  tender
  poisonous the raw beans
  train one plant to a pole

variety tall pea
  weighs 4 lb a foot
"""
PLAN = """\
garden Sallow Strip, 2027
  place 52 N, 1 W
  frost last 6 May, first 12 October
bed Strip, 1.2 m x 12 m
  had Ida beans in 2026
frame Gate Net, net frame, in Strip
  grow ida bean, 12 plants
  grow tall peas
"""


def answers() -> Answers:
    return answers_to(f"{PLAN}{PLANTS}", TODAY)


def planted(found: Answers, place: int) -> Plant:
    entry = found.season.plantings[place].entry
    assert entry is not None
    return entry


def test_every_line_of_it_is_understood() -> None:
    assert [slip.says for slip in answers().mistakes] == []


def test_its_figures_are_reckoned_with() -> None:
    planting = answers().season.plantings[0]
    entry = planting.entry
    assert entry is not None
    assert entry.height is not None
    assert (entry.height.low, entry.height.high) == (2.0, 2.6)
    assert planting.weight_kg_per_m is not None
    assert planting.weight_kg_per_m.low == pytest.approx(5)
    assert planting.weight_kg_per_m.high == pytest.approx(7)
    assert planting.usual_per_metre is not None
    assert planting.usual_per_metre.middle == pytest.approx(5)
    assert entry.grip is not None
    assert entry.grip.high == pytest.approx(0.04)
    assert entry.harvest is not None
    assert (entry.harvest.low, entry.harvest.base) == (60, "days from sowing")
    assert entry.sow is not None
    assert entry.sow.usual == 14
    assert entry.other["yield"].usual == pytest.approx(3)
    assert entry.stays is not None
    assert entry.stays.usual == pytest.approx(4 / 12, abs=0.01)


def test_what_it_says_is_told_as_theirs_and_the_rest_as_the_catalogue_has_it() -> None:
    entry, runner = planted(answers(), 0), catalogue.plant("runner bean")
    assert runner is not None
    assert entry.height is not None
    assert entry.height.basis == "yours"
    assert entry.yours == "standard input, line 9"
    assert entry.family == runner.family
    assert entry.holds_on == runner.holds_on
    assert entry.rotation == runner.rotation
    assert any(harm.basis == "yours" for harm in entry.harm)
    assert runner.yours == ""


def test_figures_for_a_plant_of_the_catalogue_stand_in_its_place() -> None:
    pea = planted(answers(), 1)
    assert pea.name == "tall pea"
    assert pea.wet_weight is not None
    # four pounds a foot: the pound and the foot of 1959
    assert pea.wet_weight.usual == pytest.approx(4 * 0.45359237 / 0.3048)
    known = catalogue.plant("tall pea")
    assert known is not None
    assert known.wet_weight != pea.wet_weight


def test_it_goes_by_any_of_its_names_and_by_a_plural() -> None:
    for name in ("Ida Bean", "ida beans", "Ida's"):
        found = answers_to(PLAN.replace("ida bean,", f"{name},") + PLANTS, TODAY)
        assert planted(found, 0).name == "Ida Bean"


def test_its_family_counts_where_it_grew_before() -> None:
    assert "same-family-too-soon" in {one.rule.name for one in answers().report.found}


def test_it_is_paired_as_the_plant_it_is_like() -> None:
    found = advisor.for_plant(answers().season, "ida bean")
    assert {one.plant for one in found.ranked} == {"Ida Bean"}
    assert found.ranked[0].kind in {
        one.kind for one in advisor.for_plant(None, "runner bean").ranked[:6]
    }


def test_a_frame_is_asked_about_it_too() -> None:
    found = advisor.for_frame(answers().season, "Gate Net")
    plants = {one.plant for one in found.ranked} | {one.plant for one in found.rejected}
    assert {"Ida Bean", "runner bean", "tall pea"} <= plants


def test_another_plan_knows_nothing_of_it() -> None:
    answers()
    assert entry_of("Ida Bean") is None
    pea = catalogue.plant("tall pea")
    assert pea is not None
    assert pea.yours == ""


def test_it_may_stand_in_a_file_of_its_own_beside_the_plan(tmp_path: Path) -> None:
    (tmp_path / "plants.plan").write_text(PLANTS, encoding="utf-8")
    (tmp_path / "2027.plan").write_text(f"read plants\n{PLAN}", encoding="utf-8")
    found = answers_of(tmp_path / "2027.plan", TODAY)
    assert [slip.says for slip in found.mistakes] == []
    assert planted(found, 0).yours == "plants.plan, line 1"


@pytest.mark.parametrize(
    ("typed", "slip"),
    [
        ("variety Ida Bean", "like-what"),
        ("variety Ida Bean, like runer bean", "unknown-plant"),
        ("variety Ida Bean, like beans", "which-plant"),
        ("variety Ida Bean, like runner bean\n  height 2.6 to 2 m", "backwards"),
        ("variety Ida Bean, like runner bean\n  height 2", "unknown-word"),
        ("variety Ida Bean, like runner bean\n  colour red", "unknown-word"),
        ("variety Ida Bean, like runner bean\nvariety ida bean, like tall pea", "same-name"),
    ],
)
def test_a_slip_in_it_is_said_and_costs_that_line_alone(typed: str, slip: str) -> None:
    found = answers_to(f"garden Sallow Strip, 2027\n{typed}\n", TODAY)
    assert slip in [one.name for one in found.mistakes]
