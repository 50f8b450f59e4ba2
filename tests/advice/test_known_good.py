"""The known-good bench: structures of the trade, at ordinary sizes, that must not be scolded."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml

from plantframe.answers.answers import Answers, answers_to
from plantframe.season.entries import kind_of
from tests.advice.cases import TODAY

ROWS = yaml.safe_load((Path(__file__).parent / "known_good.yaml").read_text(encoding="utf-8"))
NEAR = 0.05
# The figures were written down to this many places; half of the last one may be rounding.
ROUNDED = {"demand": 0.5, "capacity": 5.0, "ratio": 0.005}


def _answers(row: dict[str, object], place: str) -> Answers:
    plan = str(row["plan"])
    return answers_to(plan.replace("wind average", f"wind {place}"), TODAY)


def _near(found: float, table: float, rounding: float) -> bool:
    return abs(found - table) <= max(NEAR * table, min(rounding, 0.1 * table))


@pytest.mark.parametrize("name", ROWS)
def test_every_line_of_a_known_good_plan_is_understood(name: str) -> None:
    answers = _answers(ROWS[name], "average")
    assert [slip.says for slip in answers.mistakes if slip.level in {"ask", "stop"}] == []
    assert all(
        fact.whole
        for frame in answers.plan.frames.values()
        for facts in frame.facts.values()
        for fact in facts
    )
    for frame in answers.season.frames.values():
        assert frame.problem == ""
        assert frame.structure is not None
        assert kind_of(frame.frame.kind) is not None
        assert frame.plantings or frame.frame.word in {"cover", "fence"}
        assert all(one.entry is not None for one in frame.plantings)


@pytest.mark.parametrize("name", [name for name, row in ROWS.items() if "wind" in row])
def test_the_wind_on_a_known_good_frame_is_as_reckoned(name: str) -> None:
    (frame,) = _answers(ROWS[name], "average").season.frames.values()
    demand, capacity, ratio = ROWS[name]["wind"]
    push = frame.push
    assert push is not None
    assert _near(push.asked.middle, demand, ROUNDED["demand"])
    assert _near(push.carried.middle, capacity, ROUNDED["capacity"])
    assert _near(push.ratio.middle, ratio, ROUNDED["ratio"])


@pytest.mark.parametrize("name", [name for name, row in ROWS.items() if "load" in row])
def test_the_load_on_a_known_good_frame_is_as_reckoned(name: str) -> None:
    (frame,) = _answers(ROWS[name], "average").season.frames.values()
    demand, capacity, ratio = ROWS[name]["load"]
    load = frame.load
    assert load is not None
    assert _near(load.asked.middle, demand, 0.05)
    assert _near(load.carried.middle, capacity, 0.5)
    assert _near(load.ratio.middle, ratio, ROUNDED["ratio"])


@pytest.mark.parametrize("place", ["average", "sheltered"])
@pytest.mark.parametrize("name", ROWS)
def test_a_known_good_structure_is_not_scolded(name: str, place: str) -> None:
    answers = _answers(ROWS[name], place)
    shown = answers.shown
    scolded = [
        (one.rule.name, one.words(shown).says)
        for one in answers.report.found
        if one.level in {"warn", "stop"}
    ]
    assert scolded == []
    notes = {one.rule.name for one in answers.report.found}
    assert notes <= set(ROWS[name].get("notes", ()))


def test_a_sheltered_place_takes_seven_tenths_of_the_wind_speed_and_half_its_push() -> None:
    plan = ROWS["bean net of two bays"]
    pushes = [
        next(iter(_answers(plan, place).season.frames.values())).push
        for place in ("sheltered", "average")
    ]
    assert pushes[0] is not None
    assert pushes[1] is not None
    assert pushes[0].asked.middle / pushes[1].asked.middle == pytest.approx(0.49)
