"""Every kind of structure at its own ordinary sizes, growing what it is for, is not scolded."""

from __future__ import annotations

import pytest

from plantframe.answers.answers import answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.season.entries import kind_of
from tests.advice.cases import TODAY

KINDS = [
    kind
    for kind in catalogue.entry_names("structure")
    if (structure := kind_of(kind)) is not None
    and structure.built_by == "gardener"
    and structure.blocks[0] != "any"  # a sling, a prop: parts of other things
]
PLAN = """garden Sorrel Row, 2027
  place {place}
  wind {wind}
  soil firm loam
  lines marked 2 March
  overhead line none
wall Kitchen Wall, faces {sun}, brick
bed Long Bed, 1.2 m x 6 m
{word} Ordinary, {kind}, {where}
"""


def _scolded(
    kind: str, plant: str, place: str, bay_m: float | None, wind: str = "average"
) -> list[tuple[str, str]]:
    structure = kind_of(kind)
    assert structure is not None
    sun = "north" if place.endswith("E") else "south"
    where = "on Kitchen Wall" if kind == "hinged lattice" else "in Long Bed"
    if structure.stands.held == "wall":
        where = "on Kitchen Wall"
    word = structure.blocks[0]
    plan = PLAN.format(place=place, sun=sun, word=word, kind=kind, where=where, wind=wind)
    if any(care.id == "vent" for care in structure.care):
        plan += "  vent opened by Maud\n"
    if bay_m is not None:
        plan += f"  bays 2 of {bay_m:.2f} m\n"
    if plant:
        plan += f"  grow {plant}\n"
    answers = answers_to(plan, TODAY)
    slips = [slip.says for slip in answers.mistakes if slip.level in {"ask", "stop"}]
    assert slips == []
    return [
        (one.rule.name, one.words(answers.shown).says)
        for one in answers.report.found
        if one.level in {"warn", "stop"}
    ]


@pytest.mark.parametrize("kind", KINDS)
def test_an_ordinary_one_is_not_scolded_for_what_the_trade_grows_on_it(kind: str) -> None:
    structure = kind_of(kind)
    assert structure is not None
    for suited in structure.suits:
        bay = suited.bay.high if suited.bay else None
        for wind in ("average", "sheltered"):
            assert _scolded(kind, suited.plant, "52 N, 1 W", bay, wind) == []


@pytest.mark.parametrize("kind", KINDS)
def test_an_ordinary_one_with_nothing_on_it_is_not_scolded(kind: str) -> None:
    assert _scolded(kind, "", "52 N, 1 W", None) == []
    assert _scolded(kind, "", "37 S, 145 E", None) == []
