"""The work of plants, week by week."""

from __future__ import annotations

from plantframe.pairing.climber import Climber
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_frame
from plantframe.pairing.upkeep import upkeeping, work_of
from plantframe.season.entries import entry_of
from tests.pairing.gardens import answers, season_of


def test_picking_is_told_apart_from_pinching_and_tying() -> None:
    entry = entry_of("climbing squash")
    assert entry is not None
    work = work_of(Climber(entry, entry.name))
    assert set(work.weekly_jobs) == {"pinch", "tie"}
    assert work.picking > 0
    assert "Picking takes" in answers("climbing squash", "net frame")["upkeep"].says


def test_every_rose_pairing_says_that_it_is_tied() -> None:
    says = answers("climbing rose", "arch")
    assert "tie it along" in says["hold"].says
    assert "tie" in says["upkeep"].says


def test_wisteria_is_never_called_little_work() -> None:
    assert answers("wisteria", "pergola")["upkeep"].verdict == "fair"


def test_a_long_row_of_tomatoes_asks_more_than_two_hours_a_week() -> None:
    text = (
        "garden Test Row, 2027\n  place 52 N, 1 W\n  free Saturday 2 h\n"
        "frame Row, string drops\n  bays 15 of 1.8 m\n"
    )
    support, entry = of_frame(season_of(text), "Row"), entry_of("tall tomato")
    assert support is not None
    assert entry is not None
    reason = upkeeping(Pair(Climber(entry, entry.name), support))
    assert reason.verdict == "knocked out"
    assert "of the 2 you have" in reason.says
