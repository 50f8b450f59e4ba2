"""buy: what to buy by shop counter, less the shed; the note for the yard; poles from the wood."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.catalogue.wares import one_of
from plantframe.commands.asked import FINE, one_answer, write_json
from plantframe.commands.yard import arguments, frames_named, lengths
from plantframe.season.units import Shown, listed
from plantframe.timber.buying import buying_of
from plantframe.timber.counters import COUNTERS, NETS, SEED

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.plan.things import Garden
    from plantframe.timber.buying import Buying
    from plantframe.timber.counters import Line

IN_THE_WOOD = (
    "Ask whose wood it is. Look up for dead branches and along the fall before the first cut; "
    "gloves, eyes covered, feet well clear of axe and saw; a power saw only if you were taught it."
)

__all__ = ["arguments", "run"]


def run(given: argparse.Namespace, today: date) -> int:
    """Print the buying list."""
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    buying = buying_of(answers.season, frames_named(answers, given.frame), lengths(given.lengths))
    if given.json:
        write_json({"plan": answers.plan.name, **as_data(buying)})
    else:
        show(answers, buying, Screen.of(sys.stdout))
    return FINE


# ---- on the screen --------------------------------------------------------------------------
def show(answers: Answers, buying: Buying, screen: Screen) -> None:
    """The list by counter, then what goes with it."""
    plan = answers.plan
    screen.line(screen.strong(f"{plan.garden.name or plan.name}: what to buy"))
    for counter in COUNTERS:
        lines = [line for line in buying.lines if line.counter == counter and line.count]
        if lines:
            screen.heading(counter[:1].upper() + counter[1:])
            shared = _said_of_several(lines)
            for line in lines:
                _line(line, screen, "" if line.instead in shared else line.instead)
            if shared:
                screen.wrapped(f"If they are out of a size: {'; '.join(shared)}.", "  ", "    ")
    if not any(line.count for line in buying.lines):
        screen.wrapped("Nothing: no frame is still to be built, or the shed has it all.", "")
    _cost(buying, screen)
    _yard(buying, screen)
    _wood(buying, screen)
    _shed(buying, screen)
    _car(buying, plan.garden, screen)
    _assumed(buying, screen)


def _said_of_several(lines: Sequence[Line]) -> list[str]:
    """What else will do for several lines of a counter alike, said once under them."""
    said = [line.instead for line in lines if line.instead]
    return [one for one in dict.fromkeys(said) if said.count(one) > 1]


def _line(line: Line, screen: Screen, instead: str) -> None:
    count = "" if line.counter == SEED or _is_one_length(line) else f"{line.count} "
    of = "of " if count and line.what[:1].isdigit() else ""
    cost = "" if line.cost is None else f"{line.cost:.2f}"
    says = one_of(line.says) if line.count == 1 else line.says
    text = f"  {count}{of}{says}"
    if len(text) + len(cost) + 2 <= screen.width:
        screen.ends(text, cost)
    else:
        screen.wrapped(f"{text.strip()} {cost}".rstrip(), "  ", "    ")
    told = [_for(line.for_)]
    if line.spare:
        told.append(f"{line.spare} of them to spare")
    if line.from_shed and line.counter != NETS:
        told.append(f"{line.from_shed} more from the shed")
    told += line.minds
    screen.wrapped("; ".join(part for part in told if part), "      ")
    if instead:
        screen.wrapped(f"If they are out of it: {instead}.", "      ", "        ")


def _is_one_length(line: Line) -> bool:
    return line.count == 1 and (
        line.loose or line.counter in {"wire", "twine and cord", "paint and preservative"}
    )


def _for(parts: Sequence[str]) -> str:
    """`Bean Net post, bar; Squash Net post`."""
    by_frame: dict[str, list[str]] = {}
    for one in parts:
        frame, _, part = one.partition(", ")
        by_frame.setdefault(frame, []).append("" if part == "net" else part)
    return "; ".join(f"{frame} {', '.join(names)}".strip() for frame, names in by_frame.items())


def _cost(buying: Buying, screen: Screen) -> None:
    if buying.cost is None:
        if any(line.count for line in buying.lines):
            screen.line()
            screen.wrapped(
                "No cost: the plan gives no price for any of it (a line `2x4, 8 ft, at 4.20` under "
                "`yard` would).",
                "",
            )
        return
    screen.line()
    screen.ends("At your own prices", f"{buying.cost:.2f}")
    rest = len(buying.without_price)
    if rest:
        have = "line has" if rest == 1 else "lines have"
        screen.wrapped(f"{rest} {have} no price in the plan, and no part in this sum.", "")


def _yard(buying: Buying, screen: Screen) -> None:
    if buying.to_rip:
        screen.heading("For the yard")
        for says in buying.to_rip:
            screen.wrapped(says, "  ", "    ")
        if buying.own_count:
            screen.wrapped(buying.own_count, "  ", "    ")


def _wood(buying: Buying, screen: Screen) -> None:
    cut = [one for one in buying.to_cut if one.count]
    if not cut:
        return
    screen.heading("To cut in the wood, while it is bare and before the buds break")
    for one in cut:
        told = [_for(one.for_)]
        if one.wood not in {"", "softwood"}:
            told.append(one.wood)
        if one.spare:
            told.append(f"{one.spare} to spare")
        if one.stubs:
            told.append("from the tops of the long ones")
        if one.from_shed:
            told.append(f"{one.from_shed} more from the shed")
        screen.wrapped(f"{one.says}: {'; '.join(told)}", "  ", "    ")
    screen.wrapped(
        "Measure your own hand once; hands differ. Straight ones, a hand longer than needed, the "
        "thickness half-way up. If there is no wood of yours, ask for round poles at the yard.",
        "  ",
    )
    screen.wrapped(f"Mind: {IN_THE_WOOD}", "  ")


def _shed(buying: Buying, screen: Screen) -> None:
    have = [line for line in buying.lines if line.from_shed and not line.count]
    idle = [*buying.idle]
    if not (buying.old or have or idle):
        return
    screen.heading("In the shed already")
    for use in buying.old:
        uses = [f"{count} as {whose}" for whose, count in use.uses]
        screen.wrapped(f"{use.says}: {'; '.join(uses)}", "  ", "    ")
    for line in have:
        minds = f"; {'; '.join(line.minds)}" if line.minds else ""
        screen.wrapped(f"{line.says}: {_for(line.for_)}{minds}", "  ", "    ")
    if idle:
        told = [f"{count} of “{old.says}”" for old, count in idle]
        screen.wrapped(f"Stays where it is: {listed(told)}.", "  ", "    ")


def _car(buying: Buying, garden: Garden, screen: Screen) -> None:
    load, shown = buying.load, Shown(garden.imperial)
    if not load.longest_m:
        return
    screen.heading("For the car")
    weight = ""
    if load.high_kg:
        low, high = shown.weight(load.low_kg), shown.weight(load.high_kg)
        weight = f"; the wood weighs {low} dry to {high} wet"
    screen.wrapped(
        f"The longest is {shown.typed(load.longest_m)} ({load.what}){weight}. What stands out "
        "behind is tied at both ends and marked as your road rules say.",
        "  ",
    )


def _assumed(buying: Buying, screen: Screen) -> None:
    said = []
    cutting = buying.cutting
    if cutting.lots and not cutting.yard_listed:
        tape = cutting.tape
        sold = "8, 10, 12, 14 and 16 ft" if tape.imperial else "1.8, 2.4, 3, 3.6, 4.2 and 4.8 m"
        said.append(
            f"The plan has no `yard`: boards are reckoned in {sold}, as yards mostly sell them, "
            "and so that least is wasted. With --lengths you say what yours has."
        )
    if any(line.spare for line in buying.lines):
        said.append("Spares are one in ten of what gets lost or bent.")
    said += [f"Not in the list: {one.frame}; {one.because}." for one in buying.left_out]
    if buying.standing:
        said.append(f"Stands already: {listed(list(buying.standing))}.")
    if said:
        screen.line()
        for says in said:
            screen.wrapped(says, "", "  ")


# ---- as data --------------------------------------------------------------------------------
def as_data(buying: Buying) -> dict[str, Any]:
    """The list as data: the promise of the commands page."""
    return {
        "items": [_line_data(line) for line in buying.lines],
        "cost": None if buying.cost is None else round(buying.cost, 2),
        "without_price": [line.says for line in buying.without_price],
        "for_the_yard": list(buying.to_rip),
        "cut_in_the_wood": [
            {
                "says": one.says,
                "count": one.count,
                "length_mm": round(one.length_m * 1000),
                "across_mm": round(one.thick_m * 1000),
                "as_thick_as": one.hand or None,
                "wood": one.wood or None,
                "spare": one.spare,
                "from_shed": one.from_shed,
                "for": list(one.for_),
            }
            for one in buying.to_cut
        ],
        "shed": [
            {"line": use.says, "uses": [{"for": whose, "count": n} for whose, n in use.uses]}
            for use in buying.old
        ],
        "stays_in_shed": [{"line": old.says, "count": count} for old, count in buying.idle],
        "longest_mm": round(buying.load.longest_m * 1000) or None,
        "wood_kg": [round(buying.load.low_kg, 1), round(buying.load.high_kg, 1)],
        "not_in_the_list": [
            {"frame": one.frame, "because": one.because} for one in buying.left_out
        ],
        "stands_already": list(buying.standing),
    }


def _line_data(line: Line) -> dict[str, Any]:
    def mm(metres: float | None) -> int | None:
        return None if metres is None else round(metres * 1000)

    return {
        "what": line.what,
        "says": line.says,
        "counter": line.counter,
        "length_mm": mm(line.length_m),
        "width_mm": mm(line.width_m),
        "count": line.count,
        "for": list(line.for_),
        "from_shed": line.from_shed,
        "spare": line.spare,
        "cost": None if line.cost is None else round(line.cost, 2),
        "instead": line.instead or None,
        "minds": list(line.minds),
    }
