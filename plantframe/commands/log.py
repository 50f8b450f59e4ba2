"""log: what was picked, a metre and by year, whether it paid, beds by year, lessons."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.commands.asked import FINE, one_answer, plan_argument, write_json
from plantframe.commands.screen import table
from plantframe.diary.beds import beds_by_year, years_shown
from plantframe.diary.bowed import bowed_again, bows_of
from plantframe.diary.lessons import lessons_of, outcomes_of
from plantframe.diary.paying import paid
from plantframe.diary.picks import totals_of
from plantframe.diary.years import label, seasons_of
from plantframe.jobs.fitting import hours_words
from plantframe.season.units import FOOT_M, day, plural

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.diary.picks import Total
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


def arguments(parser: argparse.ArgumentParser) -> None:
    """What the command takes."""
    plan_argument(parser)


def run(given: argparse.Namespace, today: date) -> int:
    """Print what the log holds, of this season and those before."""
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    seasons = seasons_of(answers.reading, today)
    if given.json:
        write_json({"plan": answers.plan.name, **_data(seasons)})
    else:
        _show(answers, seasons, Screen.of(sys.stdout))
    return FINE


# ---- on the screen --------------------------------------------------------------------------
def _show(answers: Answers, seasons: Sequence[Season], screen: Screen) -> None:
    title = answers.plan.garden.name or answers.plan.name
    entries = sum(len(season.plan.log) for season in seasons)
    years = f" of {plural(len(seasons), 'season')}" if len(seasons) > 1 else ""
    screen.line(screen.strong(f"{title}: {plural(entries, 'line')} in the log{years}"))
    _picked(seasons, answers.shown, screen)
    _paid(seasons, answers.shown, screen)
    _bowed(seasons, answers.shown, screen)
    _beds(seasons[0], screen)
    _learned(seasons, screen)


def _picked(seasons: Sequence[Season], shown: Shown, screen: Screen) -> None:
    totals = totals_of(seasons)
    if not totals:
        return
    screen.heading("Picked")
    rows = [
        (
            one.season,
            one.block or "the garden",
            one.crop or "?",
            _amount(one, shown),
            _per_metre(one.kg_per_m, shown),
            _between(one),
        )
        for one in totals
    ]
    heads = ("", "", "", "picked", shown.a_metre, "from, to, how often")
    table(rows, heads, screen)


def _amount(one: Total, shown: Shown) -> str:
    parts = [shown.weight(one.weight_kg)] if one.weight_kg is not None else []
    parts += [f"{one.count} of them"] if one.count is not None else []
    return " and ".join(parts)


def _per_metre(kg_per_m: float | None, shown: Shown) -> str:
    if kg_per_m is None:
        return ""
    return shown.weight(kg_per_m * FOOT_M if shown.imperial else kg_per_m)


def _between(one: Total) -> str:
    if one.first is None or one.last is None:
        return plural(one.times, "time")
    days = day(one.first) if one.first == one.last else f"{day(one.first)} to {day(one.last)}"
    return f"{days}, {plural(one.times, 'time')}"


def _paid(seasons: Sequence[Season], shown: Shown, screen: Screen) -> None:
    """Frames off which something was picked, against the hours reckoned for them."""
    rows = []
    for season in seasons:
        for one in paid(season):
            if one.kg is None and one.count is None:
                continue
            amount = [shown.weight(one.kg)] if one.kg is not None else []
            amount += [f"{one.count} of them"] if one.count is not None else []
            hours = hours_words(*one.hours) if one.hours else "?"
            rows.append((label(season), one.block, " and ".join(amount), hours))
    if rows:
        screen.heading("Did it pay?")
        table(rows, ("", "", "picked", "hours, reckoned"), screen)


def _bowed(seasons: Sequence[Season], shown: Shown, screen: Screen) -> None:
    bows = [bow for season in seasons for bow in bows_of(season)]
    if not bows:
        return
    screen.heading("Bars that hung low")
    for bow in bows:
        low = f"by {shown.length(bow.low_m)}" if bow.low_m is not None else ""
        where = bow.block or "the garden"
        told = ", ".join(one for one in (low, " and ".join(bow.plants)) if one)
        screen.wrapped(f"{bow.season}  {where}: {told or bow.words}", "  ", "    ")
    for again in bowed_again(seasons):
        screen.wrapped(f"{again.says} `plantframe check` says what it carries.", "  ", "    ")


def _beds(season: Season, screen: Screen) -> None:
    beds = beds_by_year(season)
    if not beds:
        return
    years = years_shown(beds, season)
    screen.heading("Beds by year")
    rows = [
        (
            bed.bed,
            *(
                ", ".join(
                    f"{crop.plant} ({crop.family})" if crop.family else crop.plant
                    for crop in bed.crops(year)
                )
                for year in years
            ),
        )
        for bed in beds
    ]
    if sum(max(len(row[at]) for row in rows) + 2 for at in range(len(years) + 1)) <= screen.width:
        table(rows, ("", *(str(year) for year in years)), screen)
        return
    for row in rows:
        if not any(row[1:]):
            screen.line(f"  {row[0]}: nothing is told of it")
            continue
        screen.line(f"  {row[0]}")
        for year, grown in zip(years, row[1:], strict=True):
            if grown:
                screen.labelled(f"{year}:", grown, "    ")


def _learned(seasons: Sequence[Season], screen: Screen) -> None:
    lessons = lessons_of(seasons)
    for tag, heading in (("never", "Never again"), ("again", "Again")):
        some = [one for one in lessons if one.tag == tag]
        if some:
            screen.heading(heading)
            for one in some:
                about = f"{one.about}: " if one.about else ""
                screen.wrapped(f"{one.season}  {about}{one.words}", "  ", "    ")
    outcomes = [one for season in seasons for one in outcomes_of(season)]
    if outcomes:
        screen.heading("Warnings set aside, and what the log says since")
        for out in outcomes:
            since = "; ".join(out.since) or "nothing yet"
            who = f", {out.who}" if out.who else ""
            line = f"{out.season}  {out.block}, {out.rule} ({out.because}{who}): {since}"
            screen.wrapped(line, "  ", "    ")


# ---- as data --------------------------------------------------------------------------------
def _data(seasons: Sequence[Season]) -> dict[str, Any]:
    this = seasons[0]
    return {
        "seasons": [label(season) for season in seasons],
        "picked": [
            {
                "season": one.season,
                "block": one.block or None,
                "crop": one.crop or None,
                "kg": _round(one.weight_kg),
                "count": one.count,
                "times": one.times,
                "first": _day(one.first),
                "last": _day(one.last),
                "kg_per_m": _round(one.kg_per_m),
            }
            for one in totals_of(seasons)
        ],
        "paid": [
            {
                "season": label(season),
                "block": one.block,
                "kg": _round(one.kg),
                "count": one.count,
                "kg_per_m": _round(one.kg_per_m),
                "hours": [round(hour, 1) for hour in one.hours] if one.hours else None,
            }
            for season in seasons
            for one in paid(season)
        ],
        "bowed": [
            {
                "season": bow.season,
                "block": bow.block or None,
                "kind": bow.kind or None,
                "plants": list(bow.plants),
                "low_m": _round(bow.low_m),
                "says": bow.words,
            }
            for season in seasons
            for bow in bows_of(season)
        ],
        "bowed_again": [
            {"block": one.block, "plant": one.plant, "seasons": list(one.seasons), "says": one.says}
            for one in bowed_again(seasons)
        ],
        "beds": [
            {
                "bed": bed.bed,
                "years": {
                    str(year): [{"plant": c.plant, "family": c.family or None} for c in crops]
                    for year, crops in bed.by_year
                },
            }
            for bed in beds_by_year(this)
        ],
        "lessons": [
            {
                "tag": one.tag,
                "season": one.season,
                "about": one.about or None,
                "says": one.words,
                "day": _day(one.day),
            }
            for one in lessons_of(seasons)
        ],
        "set_aside": [
            {
                "season": one.season,
                "block": one.block,
                "rule": one.rule,
                "because": one.because,
                "who": one.who or None,
                "when": _day(one.when),
                "since": list(one.since),
            }
            for season in seasons
            for one in outcomes_of(season)
        ],
    }


def _round(value: float | None) -> float | None:
    return None if value is None else round(value, 3)


def _day(value: date | None) -> str | None:
    return value.isoformat() if value else None
