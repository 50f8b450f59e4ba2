"""shades-neighbour: a tall row keeps the sun from the bed beside it."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice import posts
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.plan.things import Bed
from plantframe.season.beside import apart_deg, beside
from plantframe.season.plantings import as_range

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.beside import Neighbour
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SUN_CROP_H = 6.0  # what wants that much wants it in the middle of the day too
MIDDLE_H = 6  # from nine to three by the sun
# Hours of those with a third of the bed in shade (common practice, no source).
MOST_H = 2.0
MONTHS = (7, 8, 9)  # while rows are high and crops stand; half a year later in the south
RUNS_DEG = {"north-south": 0.0, "east-west": 90.0}
BESIDE_DEG = 45.0
AWAY_M = 3.0  # a row so far off is nobody's neighbour
LOWER = (0.75, 0.6)  # of the height it is planned at


@frozen
class Facts:
    """The row and its height, m; the bed, its crop, and the hours it is shaded."""

    frame: str
    high_m: float
    bed: str
    plant: str
    hours: float
    shade_m: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The shade of a row over the bed beside it, in the middle of summer days."""
    latitude, bed, high = frame.garden.latitude, frame.bed, frame.height_m
    if (
        latitude is None
        or bed is None
        or high is None
        or not frame.plantings
        or frame.builders_work
    ):
        return
    for found in beside(season.plan, bed.name):
        other = found.thing
        if not isinstance(other, Bed) or not other.width_m or not _alongside(frame, found):
            continue
        crop = _sun_crop(season, other)
        if crop is None or found.distance_m is None or found.distance_m > AWAY_M:
            continue
        shaded = _shaded(frame, found, other.width_m)
        if shaded is None:
            continue
        hours, width = shaded
        yield Finding(
            level="warn",
            where=frame.frame.block.where,
            block=frame.frame.name,
            subject=other.name,
            facts=Facts(frame.frame.name, high, other.name, crop.name, hours, width),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame),
            ways=(
                "The tall row on the far side from the sun, or salads in the shade of it.",
                "A lower row.",
            ),
        )


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """The same row lower: its push in wind falls with the square of its height."""
    for share in LOWER:
        yield from posts.lower(frame, share * share)


def _alongside(frame: WorkedFrame, found: Neighbour) -> bool:
    """The bed lies along the row and not past its end."""
    row = RUNS_DEG.get(frame.word("runs") or (frame.bed.runs if frame.bed else ""))
    if row is None:
        return False
    ends = min(apart_deg(found.bearing_deg, row), apart_deg(found.bearing_deg, row + 180.0))
    return ends > BESIDE_DEG


def _sun_crop(season: Season, bed: Bed) -> WorkedPlanting | None:
    """Something there that wants full sun and is not as tall as the row itself."""
    for planting in season.growing_in(bed.name):
        wants = as_range(planting.entry.sun) if planting.entry else None
        if wants is None or wants.low < SUN_CROP_H:
            continue
        if planting.holder in season.frames:
            continue  # it climbs into the light
        return planting
    return None


def _shaded(frame: WorkedFrame, found: Neighbour, strip_m: float) -> tuple[float, float] | None:
    """Hours of shade and its width, where most of the summer has more than is borne."""
    from plantframe.sky.shadow import RowBeside, row_shade_width_m, strip_shaded_hours

    latitude, high, bed = frame.garden.latitude, frame.height_m, frame.bed
    if latitude is None or high is None or bed is None:
        return None
    # a row stands in the middle of its bed unless the plan says other
    gap = (found.distance_m or 0.0) + (bed.width_m or 0.0) / 2
    row = RowBeside(high, found.bearing_deg, gap, strip_m)
    year = frame.garden.year or 2000
    months = [(month + 5) % 12 + 1 if latitude < 0 else month for month in MONTHS]
    days = [date(year, month, 1) for month in months]
    hours = sorted(strip_shaded_hours(row, latitude, day) for day in days)
    middle = hours[len(hours) // 2]
    if middle <= MOST_H:
        return None
    width = max(
        row_shade_width_m(high, found.bearing_deg, latitude, days[-1], hour) for hour in (10, 14)
    )
    return middle, width


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    whole = round(facts.hours)
    hours = "all" if whole >= MIDDLE_H else f"about {whole} of the"
    return Words(
        says=(
            f"{facts.frame}: {shown.typed(facts.high_m)} high, it shades more than a third of "
            f"{facts.bed} for {hours} six hours round noon in summer, and {facts.plant} there "
            "wants full sun."
        ),
        if_ignored="The shaded side bears late and little.",
        told=f"{facts.frame} beside {facts.bed}.",
        assumed="Level ground, a row in the middle of its bed, leaves that let no light through.",
        sum=f"At ten and two, late in summer, its shade is {shown.length(facts.shade_m)} wide.",
    )


RULE = Rule(
    name="shades-neighbour",
    summary="a tall row keeps the sun from a crop in the bed beside it",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
