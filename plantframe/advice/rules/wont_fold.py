"""won't-fold: stems that do not bend on a frame that folds or is taken down."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, suited, word
from plantframe.advice.edits import drop, other_crop, other_kind
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

STEMS = {
    "woody": "its stems turn to wood",
    "stiff": "its canes are stiff",
    "cane": "its canes are stiff",
    "trunk": "it makes a trunk",
}


@frozen
class Facts:
    """The plant, and what the frame does.

    hinged   it folds on hinges; else it is taken down
    """

    plant: str
    frame: str
    stem: str
    hinged: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Plants that keep their stems for years on what does not stand still for years."""
    hinged = is_hinged(frame)
    if not frame.holds or not (hinged or frame.frame.take_down is not None):
        return
    for planting in frame.plantings:
        entry = planting.entry
        if entry is None or not keeps_stiff_stems(planting, entry):
            continue
        yield Finding(
            level="stop",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(planting.name, frame.frame.name, word(entry.stem), hinged),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, entry, hinged=hinged),
            ways=("What is cut to the ground each year, or sown each year, goes with it.",),
        )


def is_hinged(frame: WorkedFrame) -> bool:
    """It has hinges, by its kind or by the plan, and folds on them: a gate only swings."""
    kind = frame.structure
    if kind is None or not ("hinges" in kind.facts or frame.frame.fact("hinges") is not None):
        return False
    return any("fold" in step.do for step in (*kind.steps, *kind.down))


def keeps_stiff_stems(planting: WorkedPlanting, entry: Plant) -> bool:
    """Woody, leaning on the frame, and not renewed from the ground each year.

    A young tree leaves its stake behind and is no matter here.
    """
    stem = word(entry.stem)
    yearly = planting.planting.cut or word(entry.flowers_on).startswith("new")
    renewed = stem == "cane" and yearly
    leans = word(entry.habit) in {"climber", "leaner"}
    return leans and word(entry.life) == "woody" and stem in STEMS and not renewed


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, entry: Plant, *, hinged: bool
) -> Iterable[Edit]:
    """A softer plant of the kind's own list; a lattice that stays; a frame left standing."""
    for other in suited(frame):
        if word(other.stem) in {"soft", "flexible"} and other.grown_for == entry.grown_for:
            yield other_crop(planting.planting, other.name)
            break
    if hinged and frame.wall is not None:
        fixed = other_kind(frame.frame, "lattice", "hinges", "hooks", "posts")
        if fixed is not None:
            yield fixed
    down = frame.frame.fact("take down")
    if not hinged and down is not None and frame.structure and not frame.structure.seasonal:
        yield drop(down, "leave it standing: no take down")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    plant = opening(facts.plant)
    if facts.hinged:
        says = f"{plant} on {facts.frame}: {STEMS[facts.stem]}, and this folds on hinges."
        ignored = "The first time it is folded the stems break at the hinge."
    else:
        says = f"{plant} on {facts.frame}: {STEMS[facts.stem]}, and this is taken down."
        ignored = "It cannot be drawn out of the frame; one of the two is cut to pieces."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} on {facts.frame}.",
        assumed="Stems that stay from year to year.",
        sum="How the plant's stems age, against whether the frame stands still.",
    )


RULE = Rule(
    name="won't-fold",
    summary="stems that do not bend on a frame that folds or is taken down",
    looks_at="frame",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
)
