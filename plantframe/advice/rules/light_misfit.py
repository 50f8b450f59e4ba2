"""light-misfit: the lights do not fit the box they lie on."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit
from plantframe.language.values import Measure, Size
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Room a light needs to swell and be lifted, what is usual, and what is too much (common practice,
# no source). Old printed frames leave up to half an inch a light.
SWELL_M, PLAY_M, WIDE_M, MOST_M = 0.002, 0.003, 0.015, 0.025
SLIDE_M = 0.10  # a bar between two lights is narrower than this
SASH_M = 0.85  # lights as wide as this lie loose and may hang over the ends a little
HAIR_M = 0.0005


@frozen
class Facts:
    """Lights of a width, with bars of a width between them, on a box of a length: m."""

    cover: str
    count: int
    wide_m: float
    gap_m: float
    long_m: float
    slides: bool

    @property
    def taken_m(self) -> float:
        """What lights and bars take together."""
        return self.count * self.wide_m + (self.count - 1) * self.gap_m

    @property
    def left_m(self) -> float:
        """What is left of the box, less than nothing where they are wider."""
        return self.long_m - self.taken_m

    @property
    def level(self) -> str:
        """silent, note, ask, warn or stop."""
        each = self.left_m / self.count
        if self.slides:
            return "ask"
        if each > WIDE_M + HAIR_M:
            return "warn" if each > MOST_M + HAIR_M else "note"
        if self.count == 1 and each > -SLIDE_M:
            return "silent"  # one light may lie over the edges of its box
        if self.left_m < -HAIR_M:
            return "stop"
        if each < SWELL_M - HAIR_M:
            return "note" if self.wide_m >= SASH_M else "warn"
        return "silent"


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The lights and the bars between them against the length of the box."""
    names = ("lights.count", "lights.wide", "size.long")
    if not all(frame.is_said(name) for name in names):
        return
    count, wide, long = (frame.figure(name) for name in names)
    if not count or not wide or not long:
        return
    gap = frame.figure("lights.gap") or 0.0
    name, said_gap = frame.frame.name, frame.is_said("lights.gap")
    facts = Facts(name, round(count), wide, gap, long, slides=False)
    if facts.left_m > MOST_M * count + HAIR_M and count > 1 and not said_gap:
        slides = facts.left_m / (count - 1) <= SLIDE_M
        facts = Facts(name, round(count), wide, gap, long, slides=slides)
    if facts.level == "silent":
        return
    fact = frame.frame.fact("lights")
    yield Finding(
        level=facts.level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
    )


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """The box made to the lights, or the lights to the box; which, is the gardener's to say."""
    box, lights = frame.frame.fact("size"), frame.frame.fact("lights")
    shown = Shown(frame.garden.imperial)
    room = facts.count * PLAY_M
    if facts.slides and lights is not None:
        between = _figure((facts.left_m - room) / (facts.count - 1), shown, down=True)
        yield rewrite(lights, {"gap": f"{between} between"})
    long = facts.taken_m + room
    size = box.get("size") if box else None
    if box is not None and isinstance(size, Size) and len(size.sides) == 2:
        other = size.sides[1]
        edit = rewrite(box, {"size": f"{_figure(long, shown)} x {other.text}"})
        yield Edit(f"{edit.says} (the box made to the lights)", edit.changes)
    wide = (facts.long_m - room - (facts.count - 1) * facts.gap_m) / facts.count
    if lights is not None and wide > 0:
        typed = lights.get("size")
        if isinstance(typed, Size) and len(typed.sides) == 2:
            slots = {"size": f"{_figure(wide, shown, down=True)} x {typed.sides[1].text}"}
        elif isinstance(lights.get("wide"), Measure):
            slots = {"wide": _figure(wide, shown, down=True)}
        else:
            return
        edit = rewrite(lights, slots)
        yield Edit(f"{edit.says} (the lights made to the box)", edit.changes)


def _figure(metres: float, shown: Shown, *, down: bool = False) -> str:
    """To an eighth of an inch or to the millimetre, as a saw bench works; up unless `down`."""
    if not shown.imperial:
        return f"{int(metres * 1000 + (0.001 if down else 0.999))} mm"
    eighths = metres / INCH_M * 8
    return shown.bench(int(eighths + (0.02 if down else 0.98)) / 8 * INCH_M)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    lights = f"{facts.count} lights of {shown.exact(facts.wide_m)}"
    if facts.count == 1:
        lights = f"one light of {shown.exact(facts.wide_m)}"
    if facts.gap_m:
        lights += f" with {shown.exact(facts.gap_m)} between"
    box = f"a box {shown.exact(facts.long_m)} long"
    told = f"{lights} on {box}."
    take = "take" if facts.count > 1 else "takes"
    total = f"{'Together they' if facts.count > 1 else 'It'} {take} {shown.exact(facts.taken_m)}."
    if facts.left_m < -HAIR_M:
        says = (
            f"{facts.cover}: {lights} {take} {shown.exact(facts.taken_m)}, and the box is "
            f"{shown.exact(facts.long_m)} long: {shown.exact(-facts.left_m)} too much."
        )
        return Words(says, "The last light does not go on.", told, "", total)
    left = shown.exact(facts.left_m) if facts.left_m > HAIR_M else "nothing"
    if facts.slides:
        says = (
            f"{facts.cover}: {lights} on {box} leave {left} over. Are there bars between the "
            "lights, and how wide?"
        )
        return Words(says, "Without bars the rain runs in between them.", told, "", total)
    leave = "leave" if facts.count > 1 else "leaves"
    says = f"{facts.cover}: {lights} on {box} {leave} {left}"
    if facts.left_m > WIDE_M * facts.count:
        gap = (
            "A strip of wood on each light closes it."
            if facts.level == "note"
            else "The warmth goes out there and the rain comes in."
        )
        return Words(f"{says} uncovered.", gap, told, "", total)
    says += f" to swell; about {shown.bench(PLAY_M)} a light is usual."
    return Words(says, "In a wet week they jam, and are forced off and broken.", told, "", total)


RULE = Rule(
    name="light-misfit",
    summary="the lights are wider than the box, fit without play, or leave a gap",
    looks_at="frame",
    levels=("note", "ask", "warn", "stop"),
    basis="sum",
    check=check,
    words=words,
)
