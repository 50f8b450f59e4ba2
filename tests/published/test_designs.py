"""Designs as they were printed, put to the rules: a second opinion on our own warnings."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
import yaml

from plantframe.answers.answers import Answers, answers_to

DESIGNS = yaml.safe_load((Path(__file__).parent / "designs.yaml").read_text(encoding="utf-8"))
TODAY = date(2026, 11, 25)
HEAD = """garden Print Row, 2027
  place {place}
  wind {wind}
  soil firm loam
  person Bryn
  person Tove
  lines marked 2 March

"""


def _answers(design: dict[str, object]) -> Answers:
    head = HEAD.format(place=design["place"], wind=design.get("wind", "average"))
    return answers_to(head + str(design["plan"]), TODAY)


def _name(design: dict[str, object]) -> str:
    return str(design["design"])


@pytest.mark.parametrize("design", DESIGNS, ids=_name)
def test_every_line_of_a_printed_design_is_understood(design: dict[str, object]) -> None:
    answers = _answers(design)
    slips = [
        (slip.where.typed, slip.says) for slip in answers.mistakes if slip.level in {"ask", "stop"}
    ]
    assert slips == []
    assert [frame.problem for frame in answers.season.frames.values() if frame.problem] == []


@pytest.mark.parametrize("design", DESIGNS, ids=_name)
def test_a_printed_design_is_judged_as_it_deserves(design: dict[str, object]) -> None:
    answers = _answers(design)
    spoken = {
        one.rule.name: one.words(answers.shown).says
        for one in answers.report.found
        if one.level in {"warn", "stop"}
    }
    verdict = design["verdict"]
    expected = set(verdict) if isinstance(verdict, list) else set()
    assert set(spoken) == expected, spoken


def test_every_design_names_its_publication() -> None:
    for design in DESIGNS:
        source = design["source"]
        assert source["title"]
        assert source["publisher"]
        assert source["year"]
        assert "http" not in str(source)
