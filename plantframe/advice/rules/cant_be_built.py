"""can't-be-built: a count or a size with which a thing of this kind cannot be made."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.catalogue.limits import broken
from plantframe.catalogue.words import SAME_FACT
from plantframe.catalogue.workings import MOST_OF_A_PART
from plantframe.frozen import frozen
from plantframe.language.values import Measure, Number
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.catalogue.limits import Broken
    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

STICKS = ("posts", "end posts", "poles", "stakes")
# What there is a whole number of, and one at the least, where a plan counts it.
COUNTED = (*STICKS, "bays", "lights", "hoops", "panels")
SMALL_M = 0.3  # below this a length is rounded to the centimetre, above it to five


@frozen
class Facts:
    """What is written and what can be, lengths in m.

    what    the circle, poles, the height of the top wire
    value   as written or as it comes to
    counts  whether it is a count
    least, most   the bound that is passed; both where one figure only will do; None where it is odd
    buried  the length of a stick of which this much is to be in the ground, or None
    """

    frame: str
    what: str
    value: float
    counts: bool
    because: str
    least: float | None = None
    most: float | None = None
    buried: float | None = None


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Counts that are no counts, posts all underground, and the limits of the kind's own entry."""
    if frame.stands or frame.structure is None:
        return
    yield from _uncounted(frame)
    yield from _all_buried(frame)
    for one in broken(frame.structure, frame.said, frame.measure):
        line = _line(frame, one)
        if line is None or not line.whole:
            continue  # nothing of it is typed, or what is typed was not understood to its end
        exactly = one.limit.least and one.limit.least == one.limit.most
        bound = one.least if one.least is not None else one.most
        facts = Facts(
            frame.frame.name,
            one.limit.what,
            one.value,
            one.limit.fact.endswith(".count"),
            one.limit.because,
            bound if exactly else one.least,
            bound if exactly else one.most,
        )
        if facts.counts and one.value < 1:
            continue  # told of already as no count
        yield _finding(frame, line, facts, one.limit.fact, partial(_ways_out, frame, one))


def _finding(
    frame: WorkedFrame,
    line: Fact,
    facts: Facts,
    subject: str,
    candidates: partial[Iterable[Edit]],
) -> Finding:
    return Finding(
        level="stop",
        where=line.where,
        block=frame.frame.name,
        subject=subject,
        facts=facts,
        by=frame.wanted_by,
        candidates=candidates,
    )


# ---- what every kind asks -----------------------------------------------------------------------
def _uncounted(frame: WorkedFrame) -> Iterator[Finding]:
    """No bays at all, two bays and a half."""
    for word in COUNTED:
        for fact in frame.frame.facts.get(word, ()):
            count = fact.get("count")
            if not isinstance(count, Number):
                continue
            if count.value > MOST_OF_A_PART:
                yield _too_many(frame, fact, word, count.value)
                continue
            if count.value >= 1 and count.value % 1 == 0:
                continue
            because = "there is a whole number of them, and one at the least"
            facts = Facts(frame.frame.name, word, count.value, counts=True, because=because)
            whole = {max(1, math.floor(count.value)), max(1, math.ceil(count.value))}
            edits = partial(_counts, fact, sorted(whole))
            yield _finding(frame, fact, facts, word, edits)


def _too_many(frame: WorkedFrame, fact: Fact, word: str, count: float) -> Finding:
    """A count with a slip of the keys in it; what was meant nobody can tell."""
    because = "a list of more answers nobody"
    facts = Facts(frame.frame.name, word, count, counts=True, because=because, most=MOST_OF_A_PART)
    return _finding(frame, fact, facts, word, partial(_counts, fact, ()))


def _counts(fact: Fact, counts: Iterable[int]) -> Iterable[Edit]:
    for count in counts:
        yield rewrite(fact, {"count": str(count)})


def _all_buried(frame: WorkedFrame) -> Iterator[Finding]:
    """A post that is to stand deeper than it is long."""
    for word in STICKS:
        for fact in frame.frame.facts.get(word, ()):
            length, down = fact.get("length"), fact.get("down")
            if not isinstance(length, Measure) or not isinstance(down, Measure):
                continue
            if fact.get("up") is not None or down.value < length.value:
                continue  # all three figures are for the sum of them to settle
            facts = Facts(
                frame.frame.name,
                word,
                down.value,
                counts=False,
                because="nothing is left standing",
                buried=length.value,
            )
            edits = partial(_out_of_the_ground, frame, fact, length.value, down.value)
            yield _finding(frame, fact, facts, f"{word} down", edits)


def _out_of_the_ground(
    frame: WorkedFrame, fact: Fact, length: float, down: float
) -> Iterable[Edit]:
    """The two figures changed over, or the post as deep as the kind ordinarily stands."""
    shown = Shown(frame.garden.imperial)
    if down > length:
        figures = {"length": shown.typed(down), "down": shown.typed(length)}
        yield rewrite(fact, figures)
    entry = frame.structure.facts.get("posts") if frame.structure else None
    for usual in entry.slots.get("down", ()) if entry else ():
        if not isinstance(usual, str) and usual.usual < length:
            yield rewrite(fact, {"down": shown.typed(usual.usual)})


# ---- what the kind's entry asks -----------------------------------------------------------------
def _line(frame: WorkedFrame, one: Broken) -> Fact | None:
    """The typed line that is wrong: that of the figure itself, else of the other one."""
    for key in (one.limit.fact, one.limit.instead):
        if key and (line := _fact(frame, key)) is not None:
            return line
    for word in frame.frame.facts:  # the bound itself is typed: poles too short for their circle
        known = SAME_FACT.get(word, word).replace(" ", "_")
        if any(f"{known}." in text for text in (one.limit.least, one.limit.most)):
            return frame.frame.fact(word)
    return None


def _fact(frame: WorkedFrame, key: str) -> Fact | None:
    """The plan's line for a figure, by whichever word it is typed; None where it does not say."""
    word = key.partition(".")[0].replace("_", " ")
    for typed in frame.frame.facts:
        if SAME_FACT.get(typed, typed) == word:
            return frame.frame.fact(typed)
    return None


def _ways_out(frame: WorkedFrame, one: Broken) -> Iterable[Edit]:
    """The figure brought to its bound, the other one to what it would have to be."""
    yield from _bounded(frame, one)
    if one.limit.instead and one.instead is not None:
        yield from _other(frame, one.limit.instead, one.instead)


def _bounded(frame: WorkedFrame, one: Broken) -> Iterable[Edit]:
    line = _fact(frame, one.limit.fact)
    slot = one.limit.fact.partition(".")[2] or "length"
    if line is None or line.slot(slot) is None:
        return
    bound = one.least if one.least is not None else one.most
    if slot == "count":
        if bound is None:
            yield from _counts(line, (round(one.value) - 1, round(one.value) + 1))
        else:
            yield from _counts(line, (math.ceil(bound),))
    elif bound is not None:
        figure = _rounded(bound, frame, up=one.least is not None)
        yield rewrite(line, {slot: figure})


def _other(frame: WorkedFrame, key: str, wanted_m: float) -> Iterable[Edit]:
    """The other figure made to fit: a length typed anew, or two boards changed over."""
    line = _fact(frame, key)
    word, _, slot = key.partition(".")
    if line is None:
        return
    if line.slot(slot) is not None:
        yield rewrite(line, {slot: _rounded(wanted_m, frame, up=True)})
    elif slot == "up" and line.slot("length") is not None:
        down = frame.figure(f"{word}.down") or 0.0
        yield rewrite(line, {"length": _rounded(wanted_m + down, frame, up=True)})
    elif word == "back" and (front := frame.frame.fact("front")) is not None:
        high, low = line.slot("section"), front.slot("section")
        if high is not None and low is not None:
            yield together(
                f"back {low.text}, front {high.text}",
                rewrite(line, {"section": low.text}),
                rewrite(front, {"section": high.text}),
            )


def _rounded(metres: float, frame: WorkedFrame, *, up: bool) -> str:
    """A length on the right side of its bound, as a tape is read."""
    shown = Shown(frame.garden.imperial)
    step = INCH_M if shown.imperial else 0.01 if metres < SMALL_M else 0.05
    turn = math.ceil if up else math.floor
    return shown.typed(max(1, turn(metres / step + (-1e-6 if up else 1e-6))) * step)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    name, what = facts.frame, facts.what
    if facts.buried is not None:
        long, down = shown.exact(facts.buried), shown.exact(facts.value)
        return Words(
            says=f"{name}: {what} {long} long with {down} in the ground: {facts.because}.",
            if_ignored=_IGNORED,
            told=f"{what} {long} long, {down} down.",
            sum=f"{long} less {down} is nothing, or less.",
        )
    if facts.counts:
        ones = (
            "one " + what.removesuffix("s")
            if facts.value == 1
            else f"{_figure(facts.value)} {what}"
        )
        bound = _bound_words(facts)
        says = f"{name}: {ones}, and {bound}: {facts.because}."
        if not bound:
            says = f"{name}: {ones}; {facts.because}."
        return Words(says, _IGNORED, f"{ones[0].upper()}{ones[1:]}.", sum=facts.because)
    value = shown.length(facts.value)
    edge = facts.least if facts.least is not None else facts.most or 0.0
    which = "the least" if facts.least is not None else "the most"
    return Words(
        says=f"{name}: {what} is {value}, and {shown.length(edge)} is {which}: {facts.because}.",
        if_ignored=_IGNORED,
        told=f"{what}: {value}.",
        sum=f"{shown.exact(facts.value)} against {shown.exact(edge)}.",
    )


_IGNORED = "What is bought and cut for it does not go together."


def _bound_words(facts: Facts) -> str:
    if facts.least is None and facts.most is None:
        return "that is odd" if facts.value % 2 == 1 else ""
    if facts.least == facts.most:
        return f"{facts.least or 0:g} are wanted"
    if facts.least is not None:
        return f"{facts.least:g} {'is' if facts.least == 1 else 'are'} the least"
    return f"{_figure(facts.most or 0)} are the most"


def _figure(count: float) -> str:
    """A count in figures: 2, 2.5, 999,999."""
    return f"{count:,.0f}" if count % 1 == 0 else f"{count:g}"


RULE = Rule(
    name="can't-be-built",
    summary="a count or a size is one that a thing of its kind cannot be made with",
    looks_at="frame",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
)
