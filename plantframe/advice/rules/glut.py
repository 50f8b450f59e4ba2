"""glut: a row bears far more of one thing than the household eats."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import rewrite, set_fact, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of, place_of
from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.season.plantings import as_range
from plantframe.season.units import Shown, plural

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

EATS_KG = 10.0  # of one crop, fresh, a person, through its season (common practice, no source)
TIMES = 2.0
KEPT = (
    r"\b(freez\w*|frozen|give|giving|gift|sell|sale|stall|market|neighbours?|neighbors?|bottl\w*|"
    r"preserv\w*|pickl\w*|sauce|store|dry|drying|can|canning|swap)\b"
)


@frozen
class Facts:
    """The crop and its place; metres of it; what that bears, kg; and who eats."""

    plant: str
    place: str
    row_m: float
    bears_kg: Range
    household: int


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Metres times what a metre bears, against what so many people eat fresh."""
    garden, entry = season.plan.garden, planting.entry
    per_m = as_range(entry.other.get("yield")) if entry else None
    metres = _metres(planting)
    if entry is None or per_m is None or not garden.household or metres is None:
        return
    if word(entry.picked) != "by hand":
        return  # roots and squash keep
    bears = per_m.times(metres)
    most = TIMES * EATS_KG * garden.household
    if bears.middle <= most or is_spoken_of(season, KEPT, planting.holder):
        return
    yield Finding(
        level="note",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, place_of(season, planting), metres, bears, garden.household),
        ratio=Range(bears.low / most, bears.middle / most, bears.high / most).times(TIMES),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, season, most / per_m.middle),
        ways=("What is left of the row for something else; or days set for freezing and giving.",),
    )


def _metres(planting: WorkedPlanting) -> float | None:
    """Metres that the plants fill: their number by the usual, and no more than the row is long."""
    count, usual = planting.planting.count, planting.usual_per_metre
    filled = count / usual.middle if count is not None and usual is not None else None
    if filled is None:
        alone = planting.planting.spot is None
        return planting.row_m if alone else None
    return min(filled, planting.row_m) if planting.row_m else filled


def _ways_out(planting: WorkedPlanting, season: Season, enough_m: float) -> Iterable[Edit]:
    """Fewer of them, on a row as much shorter where it is made of bays."""
    own, usual = planting.planting, planting.usual_per_metre
    if own.count is None or usual is None:
        return
    fewer = int(enough_m * usual.middle)
    if fewer < 1:
        return
    count = rewrite(own.fact, {"count": str(fewer)})
    yield count
    frame = season.frames.get(planting.holder)
    bays = frame.figure("bays.count") if frame is not None else None
    length = frame.figure("bays.length") if frame is not None else None
    if frame is None or frame.stands or not bays or not length or bays < 2:
        return
    left = max(1, int(enough_m / length))
    shown = Shown(frame.garden.imperial)
    line = f"bays {left} of {shown.typed(length)}"
    says = f"{line}, with {plural(fewer, 'plant')}"
    yield together(says, set_fact(frame.frame, "bays", line), count)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = (shown.weight(one) for one in (facts.bears_kg.low, facts.bears_kg.high))
    bears = high if low == high else f"{low.split()[0]} to {high}"
    eat = "eats" if facts.household == 1 else "eat"
    people = plural(facts.household, "person", "people")
    eaten = shown.weight(EATS_KG * facts.household)
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place}: {shown.length(facts.row_m)} of it bear about "
            f"{bears} in a good year, and {people} {eat} about {eaten} of one crop fresh."
        ),
        if_ignored="The second half is given away or left on the plants, which then stop bearing.",
        told=f"Household {facts.household}.",
        assumed=f"About {shown.weight(EATS_KG)} of one crop a person; a good year.",
        sum="Common practice: said from twice as much on.",
    )


RULE = Rule(
    name="glut",
    summary="a row bears more than twice what the household eats of it",
    looks_at="planting",
    levels=("note",),
    basis="estimate",
    check=check,
    words=words,
)
