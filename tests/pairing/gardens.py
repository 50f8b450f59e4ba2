"""Small gardens to try pairings in."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.edits import Edit, apply
from plantframe.language.files import read_input
from plantframe.pairing.climber import Climber
from plantframe.pairing.judging import reasons
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_kind
from plantframe.plan.building import build
from plantframe.season.entries import entry_of
from plantframe.season.season import Season

if TYPE_CHECKING:
    from plantframe.pairing.matches import Matches, Pairing, Reason, Reject

TODAY = date(2027, 3, 1)
FILE = "standard input"


def season_of(text: str) -> Season:
    """The season of a plan's text."""
    plan, _ = build(read_input(text), TODAY)
    return Season(plan, TODAY)


def edited(text: str, edit: Edit) -> str:
    """The text with an edit made."""
    return apply(edit, {FILE: text})[FILE]


def answers(plant: str, kind: str) -> dict[str, Reason]:
    """The six answers for a plant on a kind of frame in an average place, by question."""
    entry, support = entry_of(plant), of_kind(kind)
    assert entry is not None, f"no plant {plant}"
    assert support is not None, f"no support {kind}"
    return {one.question: one for one in reasons(Pair(Climber(entry, entry.name), support))}


def pairing(matches: Matches, name: str, plant: str = "") -> Pairing:
    """The ranked pairing with a frame or kind, and with a plant where several are ranked."""
    found = [
        one for one in matches.ranked if name in {one.frame, one.kind} and plant in {"", one.plant}
    ]
    assert found, f"{name} is not ranked for {matches.asked}: {_why(matches, name, plant)}"
    return found[0]


def reject(matches: Matches, name: str, plant: str = "") -> Reject:
    """The reject with a frame or kind, and with a plant where several are asked about."""
    found = [
        one
        for one in matches.rejected
        if name in {one.frame, one.kind} and plant in {"", one.plant}
    ]
    assert found, f"{name} is not rejected for {matches.asked}"
    return found[0]


def _why(matches: Matches, name: str, plant: str) -> str:
    says = [
        f"{one.because}: {one.says}"
        for one in matches.rejected
        if name in {one.frame, one.kind} and plant in {"", one.plant}
    ]
    return "; ".join(says) or "nothing is said of it"
