"""Sentences of the catalogue in the gardener's units."""

from __future__ import annotations

import re

import pytest

from plantframe.catalogue import reading as catalogue
from plantframe.season.told import sentence, told

# Figures by hand: an inch is 25.4 mm and a foot 304.8 mm by definition, a pound 0.45359237 kg
# (international yard and pound agreement, 1959); rounded as coarsely as the sentence was.
PAIRS = [
    ("none nearer the top than 10 cm", "none nearer the top than 4 in"),
    ("at least 2 cm in", "at least ¾ in in"),
    ("before the peas are 5 to 8 cm high", "before the peas are 2 to 3 in high"),
    ("Plant 30 to 45 cm out from the wall.", "Plant 12 to 18 in out from the wall."),
    ("cap stakes that end below 1.8 m", "cap stakes that end below 6 ft"),
    ("wires at 0.8 and 1.5 m", "wires at 31 in and 5 ft"),
    ("within 6 m of an overhead line", "within 20 ft of an overhead line"),
    ("posts of 125 to 150 mm", "posts of 5 to 6 in"),
    ("it weighs 60 kg and more", "it weighs 130 lb and more"),
    ("Thin to 3 to 5 cm (1 to 2 in) apart.", "Thin to 1 to 2 in apart."),
    ("Sling what is going to pass 1.4 kg (3 lb).", "Sling what is going to pass 3 lb."),
    ("wide at 15 C outside", "wide at 59 °F outside"),
    ("on 3 by 3 m of net", "on 10 by 10 ft of net"),
    ("an 8 ft box with 4 lights", "an 8 ft box with 4 lights"),
]


@pytest.mark.parametrize(("metric", "imperial"), PAIRS)
def test_a_gardener_who_types_feet_is_told_feet(metric: str, imperial: str) -> None:
    assert sentence(metric, imperial=True) == imperial


def test_a_gardener_who_types_metres_is_told_metres() -> None:
    assert sentence("Thin to 3 to 5 cm (1 to 2 in) apart.", imperial=False) == (
        "Thin to 3 to 5 cm apart."
    )
    assert sentence("wide at 15 C outside", imperial=False) == "wide at 15 °C outside"


def test_an_entry_keeps_its_sums_and_figures() -> None:
    for name in catalogue.entry_names("structure"):
        entry = catalogue.structure(name)
        assert entry is not None
        here = told(entry, imperial=True)
        assert (here.facts, here.sums, here.parts) == (entry.facts, entry.sums, entry.parts)
        assert [step.id for step in here.steps] == [step.id for step in entry.steps]


METRIC = re.compile(r"\d ?(mm|cm|m|kg|C)\b")


def test_no_step_or_caution_stays_metric_under_feet() -> None:
    for name in catalogue.entry_names("structure"):
        entry = catalogue.structure(name)
        assert entry is not None
        here = told(entry, imperial=True)
        words = [here.says, here.planting.says, *(danger.says for danger in here.dangers)]
        words += [one.do for one in (*here.steps, *here.down)] + [one.do for one in here.care]
        assert [one for one in words if METRIC.search(one)] == [], name


def test_no_care_of_a_plant_stays_metric_under_feet() -> None:
    for name in catalogue.entry_names("plant"):
        entry = catalogue.plant(name)
        assert entry is not None
        here = told(entry, imperial=True)
        words = [here.says, *(one.do for one in here.care)]
        words += [here.training.how] if here.training else []
        assert [one for one in words if METRIC.search(one)] == [], name
