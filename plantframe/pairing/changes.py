"""Changes that let a rejected pairing back in: each is tried on the support before it is named."""

from __future__ import annotations

import math
from functools import lru_cache
from itertools import product
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.language.edits import Edit, LineChange
from plantframe.pairing import judging
from plantframe.pairing.climber import Climber
from plantframe.pairing.pair import Pair
from plantframe.pairing.reaching import OVER_THE_TOP, STRETCH_M, reach_of
from plantframe.pairing.supports import BARE_WALL, kinds, of_kind, only_props
from plantframe.season.entries import entry_of
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from plantframe.language.reader import Fact
    from plantframe.pairing.matches import Reason
    from plantframe.pairing.supports import Support
    from plantframe.plan.things import Frame

MOST_OFFERED = 3
MOST_NAMED = 2
MOST_TRIED = 12
SHORTEST_BAY_M = 0.9


@frozen
class Line:
    """A line of the plan as it would become.

    word    the fact's word
    new     the whole line, where there is none yet or it is written anew
    slots   slots of the line as it stands -> what they become, where only those change
    """

    word: str
    new: str
    slots: Mapping[str, str] = MappingProxyType({})


@frozen
class Change:
    """Some figures of a support changed.

    says    the change as it would be typed, or in words
    said    the figures, by `word.slot`, SI; None takes one away
    lines   the lines of the plan that say so
    """

    says: str
    said: Mapping[str, object]
    lines: tuple[Line, ...]


def let_back_in(pair: Pair, answers: tuple[Reason, ...], most: int = 1) -> tuple[Change, ...]:
    """The changes with which nothing rules the pair out any more, at most so many."""
    failing = [one.question for one in answers if one.verdict == "knocked out"]
    if pair.support.bare_wall or any(question not in WAYS for question in failing):
        return ()
    found: list[Change] = []
    choices = [list(WAYS[question](pair)) for question in failing]
    for number, chosen in enumerate(product(*choices)):
        if number == MOST_TRIED or len(found) == most:
            break
        change = _merged(chosen)
        after = pair.changed(change.said)
        if after is None or after.support.worked is None or after.support.worked.worked is None:
            continue
        if judging.ruled_out(judging.reasons(after)) is None:
            found.append(change)
    return tuple(found)


def _merged(changes: tuple[Change, ...]) -> Change:
    said = {name: value for change in changes for name, value in change.said.items()}
    lines = {line.word: line for change in changes for line in change.lines}
    says = list(dict.fromkeys(change.says for change in changes))
    return Change(" and ".join(says), said, tuple(lines.values()))


# -- what may be changed, question by question ------------------------------------------------


def _to_hold(pair: Pair) -> Iterator[Change]:
    """Something thin to climb, or something level to be tied to."""
    shown, ways = pair.shown, pair.climber.holds_on
    apart = shown.typed(0.2)
    strings = Change(
        f"strings {apart} apart",
        {"strings.apart": 0.2},
        (Line("strings", f"strings {apart} apart"),),
    )
    mesh = shown.typed(0.15)
    net = Change(f"net mesh {mesh}", {"net.mesh": 0.15}, (Line("net", f"net mesh {mesh}"),))
    gap = shown.typed(0.4)
    wires = Change(
        f"wires 4, {gap} apart",
        {"wires.count": 4.0, "wires.apart": 0.4},
        (Line("wires", f"wires 4, {gap} apart"),),
    )
    if ways == "twines":
        yield from (strings, net)
    elif ways in {"tendrils", "leaf stalks"}:
        yield from (strings, net) if "strings" in _words(pair) else (net, strings)
    elif ways == "tied in" and pair.climber.stiff:
        yield wires
    elif ways == "tied in":
        yield from (strings, wires)


def _to_carry(pair: Pair) -> Iterator[Change]:
    """Shorter bays, a prop, a stouter bar; strained wires with braced ends."""
    worked, shown, words = pair.support.worked, pair.shown, _words(pair)
    if worked is None or worked.worked is None:
        return
    count, length = worked.figure("bays.count"), worked.figure("bays.length")
    carries = worked.worked.carries
    if "bays" in words and count and length:
        for parts in (2, 3):
            if length / parts >= SHORTEST_BAY_M:
                yield _bays(pair, count * parts, length / parts)
    if carries is not None and carries.by == "bar" and "bar" in words:
        stout, wide, tall = ("2x4", 0.038, 0.089) if shown.imperial else ("45x95 mm", 0.045, 0.095)
        said: dict[str, object] = {
            "bar.width": wide,
            "bar.depth": tall,
            "bar.round": False,
            "bar.lie": "on edge",
        }
        lines = [Line("bar", f"bar {stout}, on edge")]
        says = f"bar {stout}, on edge"
        if "pins" in words:
            # a pin has to go through the deeper bar and still bite
            said["pins.nail"] = "40d"
            lines.append(Line("pins", "pins 40d"))
            says += ", with pins 40d"
        yield Change(says, said, tuple(lines))
    if "prop" in words:
        line = "prop in the middle of every bar"
        yield Change(line, {"prop": True}, (Line("prop", line),))
    if carries is not None and carries.by == "wire":
        tight = Change(
            "wires strained", {"wires.strain": "strained"}, (Line("wires", "wires strained"),)
        )
        ends = Change("ends braced", {"ends.how": "braced"}, (Line("ends", "ends braced"),))
        yield _merged((tight, ends)) if "ends" in words else tight


def _bays(pair: Pair, count: float, length: float) -> Change:
    shown, worked = pair.shown, pair.support.worked
    line = f"bays {count:.0f} of {shown.typed(length)}"
    said: dict[str, object] = {"bays.count": count, "bays.length": length, "long": None}
    lines = [Line("bays", line)]
    if worked is not None and worked.is_said("posts.count"):
        said["posts.count"] = count + 1
        lines.append(Line("posts", "", {"count": f"{count + 1:.0f}"}))
    if worked is not None and worked.is_said("bar.count"):
        said["bar.count"] = count
        lines.append(Line("bar", "", {"count": f"{count:.0f}"}))
    return Change(line, said, tuple(lines))


def _to_reach(pair: Pair) -> Iterator[Change]:
    """A higher or a lower frame."""
    height = pair.support.height_m
    if height is None:
        return
    over = (pair.support.way_up_m or height) - height
    least = pair.climber.least_height_m / OVER_THE_TOP - over
    _, reach = reach_of(pair.support.garden)
    wanted = least if least > height else reach + STRETCH_M
    step = 0.0508 if pair.shown.imperial else 0.05
    whole = math.ceil if wanted > height else math.floor
    wanted = whole(round(wanted / step, 3)) * step
    worked, words = pair.support.worked, _words(pair)
    if worked is None:
        return
    shown = pair.shown
    if "posts" in words:
        down = worked.figure("posts.down") or 0.0
        slope = max((worked.figure("posts.length") or 0.0) - down - height, 0.0)
        up = wanted + slope
        length = up + down
        word = _own_word(pair, "posts")
        says = f"{word} {shown.typed(up)} up, {shown.typed(length)} long"
        new = f"{word} {shown.typed(length)}, {shown.typed(down)} down, {shown.typed(up)} up"
        yield Change(
            says,
            {"posts.up": up, "posts.length": length, "posts.down": down, "tie.height": None},
            (Line("posts", new, {"length": shown.typed(length), "up": f"{shown.typed(up)}"}),),
        )
    if "size" in words:
        high = (worked.figure("size.high") or 0.0) + wanted - height
        long = worked.figure("size.long") or 0.0
        line = f"size {shown.typed(high)} x {shown.typed(long)}"
        yield Change(
            line, {"size.high": high, "size.long": long, "size": None}, (Line("size", line),)
        )


WAYS = {"hold": _to_hold, "carry": _to_carry, "reach": _to_reach}


def _words(pair: Pair) -> frozenset[str]:
    structure = pair.support.structure
    return frozenset(structure.facts) if structure else frozenset()


def _own_word(pair: Pair, word: str) -> str:
    """What this kind's plan line calls a part: poles or stakes for posts."""
    structure = pair.support.structure
    called = structure.facts[word].called if structure and word in structure.facts else word
    return called if called in {"poles", "stakes"} else word


# -- a change as an edit of the plan ----------------------------------------------------------


def as_edit(change: Change, frame: Frame) -> Edit | None:
    """The change as lines of the plan; None where a line cannot be changed in part."""
    changes: list[LineChange] = []
    for line in change.lines:
        made = _line_change(line, frame)
        if made is None:
            return None
        changes.append(made)
    return Edit(change.says, tuple(changes))


def _line_change(line: Line, frame: Frame) -> LineChange | None:
    fact = next(
        (found for word in _spellings(line.word) if (found := frame.fact(word)) is not None), None
    )
    block = frame.block
    if fact is None or fact.where.line == block.where.line:
        return (
            LineChange(block.where.file, block.last_line, None, f"  {line.new}")
            if line.new
            else None
        )
    typed = fact.where.typed
    if line.slots:
        new = _with_slots(fact, line.slots)
        return LineChange(fact.where.file, fact.where.line, typed, new) if new else None
    indent = typed[: len(typed) - len(typed.lstrip())]
    remark = f" {fact.remark}" if fact.remark else ""
    return LineChange(fact.where.file, fact.where.line, typed, f"{indent}{line.new}{remark}")


def _spellings(word: str) -> tuple[str, ...]:
    return ("posts", "poles", "stakes") if word == "posts" else (word,)


def _with_slots(fact: Fact, slots: Mapping[str, str]) -> str:
    """The fact's line with some slots written anew, from the right so that columns hold."""
    line = fact.where.typed
    places = [
        (slot.column - 1, slot.text, slots[slot.name]) for slot in fact.slots if slot.name in slots
    ]
    if not places:
        return ""
    for start, old, new in sorted(places, reverse=True):
        if line[start : start + len(old)] != old:
            return ""
        line = line[:start] + new + line[start + len(old) :]
    return line


# -- where no change of the support helps -----------------------------------------------------


def elsewhere(pair: Pair, because: str) -> str:
    """Another way in, in words: another kind of support, another place, or none at all."""
    climber, support = pair.climber, pair.support
    if climber.unsupported:
        return "no frame at all"
    if climber.habit == "low":
        return "the open ground"
    if because == "light":
        need = climber.sun_h
        hours = f"{need[0]:g} hours" if need else "more"
        return f"a place with {hours} of sun or more"
    if because == "upkeep":
        return "fewer metres of it"
    if support.kind == BARE_WALL and climber.holds_on != "clings":
        return "wires or a lattice fixed to it"
    if (
        because == "reach"
        and not climber.lasting
        and _is_in(replace(climber, stopped=True), support)
    ):
        return "the tips pinched out when they reach the top"
    best = [kind for kind in best_kinds(climber.entry.known_as) if kind != support.kind]
    if climber.holds_on == "clings":
        best = ["brick or stone in good order", *best]
    return f"{listed(best[:MOST_NAMED], 'or')} instead" if best else ""


def _is_in(climber: Climber, support: Support) -> bool:
    return judging.ruled_out(judging.reasons(Pair(climber, support))) is None


@lru_cache(maxsize=512)
def best_kinds(plant: str) -> tuple[str, ...]:
    """The kinds that suit a plant best in an average place, best first."""
    entry, ranked = entry_of(plant), []
    for kind in kinds():
        support = of_kind(kind)
        if support is None or entry is None or only_props(kind):
            continue
        pair = Pair(Climber(entry, plant), support)
        answers = judging.reasons(pair)
        if judging.ruled_out(answers) is None:
            ranked.append((judging.place(pair, answers), kind))
    return tuple(kind for _, kind in sorted(ranked)[: MOST_NAMED + 1])
