"""Pages made of jobs: who does what, hours by week, while away, before wind, a day of rain."""

from __future__ import annotations

from itertools import groupby
from textwrap import shorten
from typing import TYPE_CHECKING, Any, Final

from plantframe.commands.asked import Refused, write_json
from plantframe.commands.screen import table
from plantframe.jobs.away import next_away, while_away
from plantframe.jobs.data import job_data, trouble_data
from plantframe.jobs.fitting import hours_words, projects_of, weeks_of
from plantframe.jobs.rain import slid
from plantframe.jobs.troubles import label
from plantframe.jobs.wind import before_wind
from plantframe.season.loads import LIKELY, TIGHT
from plantframe.season.units import dated, day, every_words, listed, plural, times

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable, Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.jobs.fitting import Project
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.jobs.rain import Move
    from plantframe.jobs.sharing import Part
    from plantframe.jobs.wind import Exposed
    from plantframe.jobs.works import Sharing

    Page = Callable[[Answers, Jobs, argparse.Namespace, Screen | None], None]


WIDEST: Final = 32  # letters of a name in a table
FREE_MINUTES: Final = 10.0  # less is a breath between two steps


def asked_for(given: argparse.Namespace) -> Page | None:
    """The page that the arguments ask for, None for the plain list."""
    if given.weeks:
        return weeks
    if given.away:
        return away
    if given.before_wind:
        return wind
    return rain if given.rain is not None else None


def _write(data: dict[str, Any]) -> None:

    write_json(data)


# ---- a day: who does what ----------------------------------------------------------------------
def who_does_what(jobs: Sequence[Job], sharing: Sharing, on: date, screen: Screen) -> None:
    """Side by side what each does in a half-day, and after which step it is well to stop."""
    parts = [
        (part, job)
        for job in jobs
        if job.id in sharing.placed
        for part in sharing.placed[job.id].parts
        if part.half.day == on
    ]
    if not parts or not sharing.said:
        return
    for name in dict.fromkeys(part.half.name for part, _ in parts):
        some = sorted(
            ((part, job) for part, job in parts if part.half.name == name),
            key=lambda one: (one[0].start, one[0].end),
        )
        people = list(dict.fromkeys(who for part, _ in some for who in part.who))
        if sharing.crew.named and len(people) > 1:
            screen.heading(f"Who does what{f', {name}' if name else ''}")
            for person in people:
                own = [(part, job) for part, job in some if person in part.who]
                screen.labelled(f"{person}:", _turns(own, person), "  ")
        stops = sorted(
            ((part.end, job) for part, job in some if job.stop_point), key=lambda one: one[0]
        )
        if stops:
            screen.heading(f"Where to stop if it rains{f', {name}' if name else ''}")
            for end, job in stops:
                screen.wrapped(f"{_clock(end)} in, after {_name(job)}.", "  ", "    ")


def _turns(own: Sequence[tuple[Part, Job]], person: str) -> str:
    """What one person does in turn: each frame named once, with whom, and when they are free."""
    told: list[str] = []
    block, with_, at = "", None, 0.0
    for part, job in own:
        words = ""
        if part.start - at >= FREE_MINUTES:
            told.append(f"free for {_clock(part.start - at)}")
        others = [who for who in part.who if who != person]
        if job.block != block or not told:
            words = f"{job.block}: " if job.block and job.block != job.does else ""
            with_ = None
        if others != with_:
            words += f"with {listed(others)}, " if others else ("alone, " if with_ else "")
        told.append(f"{words}{job.brief}")
        block, with_, at = job.block, others, part.end
    return "; ".join(told)


def _name(job: Job) -> str:
    """A job in a few words."""
    return f"{job.block}, {job.brief}" if job.block and job.block != job.does else job.says


def _clock(minutes: float) -> str:
    hours, rest = divmod(round(minutes / 5) * 5, 60)
    if not hours:
        return f"{max(rest, 5)} min"
    return f"{hours} h {rest:02d}" if rest else f"{hours} h"


# ---- hours by week ------------------------------------------------------------------------------
def weeks(answers: Answers, jobs: Jobs, _given: argparse.Namespace, screen: Screen | None) -> None:
    """Hours wanted against hours there, by week; then what can wait, and how long."""
    found = weeks_of(jobs.jobs, jobs.sharing)
    projects = projects_of(jobs.jobs, jobs.sharing)
    if screen is None:
        _write(
            {
                "plan": answers.plan.name,
                "weeks": [
                    {
                        "monday": week.monday.isoformat(),
                        "wanted_hours": [round(one, 1) for one in week.wanted],
                        "free_hours": round(week.there, 1) if jobs.sharing.said else None,
                        "without_room_hours": round(week.over, 1),
                        "work_on": list(week.blocks),
                    }
                    for week in found
                ],
                "projects": [_project_data(project) for project in projects],
                "troubles": [trouble_data(one) for one in jobs.troubles],
            }
        )
        return
    title = answers.plan.garden.name or answers.plan.name
    screen.line(screen.strong(f"{title}: hours by week, of everybody's together"))
    screen.line()
    rows = [
        (
            day(week.monday) + _year(week.monday, answers.plan.garden.seasons),
            hours_words(*week.wanted),
            hours_words(week.there, week.there) if jobs.sharing.said else "",
            listed(week.blocks),
        )
        for week in found
    ]
    free = "free" if jobs.sharing.said else ""
    table(rows, ("week of", "wanted", free, "work on"), screen)
    screen.heading("What can wait")
    rows = [
        (
            shorten(one.block, WIDEST, placeholder=" …"),
            hours_words(*one.hours),
            _begins(one),
            _waits(one, answers.today),
        )
        for one in projects
    ]
    table(rows, ("", "hours", "planned from", "can wait"), screen)
    screen.line()
    for trouble in jobs.troubles:
        screen.labelled(label(trouble), trouble.says, "")
    if not jobs.sharing.crew.named:
        screen.wrapped(
            "The plan names nobody: two pairs of hands are reckoned with. A line such as "
            "`person Maud, lifts 15 kg` under the garden says who there is.",
            "",
        )
    if not jobs.sharing.said:
        screen.wrapped(
            "The plan gives no free hours, so none are counted against. A line such as "
            "`free Saturday 6 h` under the garden says when there is time.",
            "",
        )


def _year(on: date, seasons: Sequence[int]) -> str:
    """The year, of a day that is not in the plan's own."""
    return "" if seasons[0] <= on.year <= seasons[1] else f" {on.year}"


def _begins(project: Project) -> str:
    return day(project.first) if project.first else "any time"


def _waits(project: Project, today: date) -> str:
    if project.last is None:
        return "has no last day"
    if project.slack_days is None or project.slack_days <= 0:
        late = project.last < today
        return f"its day was {day(project.last)}" if late else f"no: {day(project.last)} at latest"
    if project.slack_days < 7:
        return f"{plural(project.slack_days, 'day')}: {day(project.last)} at latest"
    return f"{plural(project.slack_days // 7, 'week')}: {day(project.last)} at latest"


def _project_data(project: Project) -> dict[str, Any]:
    return {
        "block": project.block,
        "hours": [round(one, 1) for one in project.hours],
        "planned_from": project.first.isoformat() if project.first else None,
        "latest": project.last.isoformat() if project.last else None,
        "slack_days": project.slack_days,
    }


# ---- while away ---------------------------------------------------------------------------------
def away(answers: Answers, jobs: Jobs, _given: argparse.Namespace, screen: Screen | None) -> None:
    """One page for whoever looks after the garden meanwhile, and what is done before leaving."""
    span = next_away(answers.plan.garden, answers.today)
    if span is None:
        raise Refused(
            "The plan names no days from here on when nobody is at home; a line such as "
            "`away 10 to 20 July` under the garden does."
        )
    found = while_away(jobs.jobs, span.first, span.last, answers.plan.garden)
    if screen is None:
        _write(
            {
                "plan": answers.plan.name,
                "first": found.first.isoformat(),
                "last": found.last.isoformat(),
                "rounds": [job_data(job) for job in found.rounds],
                "events": [job_data(job) for job in found.events],
                "before_leaving": [job_data(job) for job in found.leaving],
            }
        )
        return
    title = answers.plan.garden.name or answers.plan.name
    one_month = (span.first.year, span.first.month) == (span.last.year, span.last.month)
    begins = f"{span.first.day}" if one_month else day(span.first)
    screen.line(screen.strong(f"{title}, {begins} to {day(span.last)}"))
    screen.wrapped("Thank you for looking after it. What is ripe is yours.", "")
    by_block: dict[str, list[str]] = {}
    for job in found.rounds:
        often = every_words(job.every_days, None) if job.every_days else ""
        says_how_often = "every" in job.does or "times a" in job.does
        line = _sentence(job.does) + ("" if says_how_often else f"; {often}")
        by_block.setdefault(_where(job), []).append(f"{line}.")
    for job in found.events:
        by_block.setdefault(_where(job), []).append(f"{_sentence(job.does)}, {job.whenever}.")
    for where, lines in by_block.items():
        screen.heading(where)
        for line in lines:
            screen.wrapped(f"[ ] {line}", "", "    ")
    if not by_block:
        screen.line("Nothing needs anybody in these days.")
    if found.leaving:
        screen.heading(f"Before {day(span.first)}, ourselves")
        for job in found.leaving:
            by = f" (by {day(job.latest)})" if job.latest else ""
            screen.wrapped(f"[ ] {_name(job)}{by}", "", "    ")


def _where(job: Job) -> str:
    return f"{job.block}, {job.place}" if job.place and job.block not in job.place else job.block


def _sentence(words: str) -> str:
    return f"{words[:1].upper()}{words[1:].rstrip('.')}"


# ---- before wind --------------------------------------------------------------------------------
def wind(answers: Answers, jobs: Jobs, _given: argparse.Namespace, screen: Screen | None) -> None:
    """What stands, the weakest first, and what to tie down."""
    found = before_wind(answers.season, jobs.jobs, answers.today)
    if screen is None:
        _write(
            {
                "plan": answers.plan.name,
                "standing": [
                    {
                        "block": one.frame.frame.name,
                        "times": round(one.ratio, 2) if one.ratio is not None else None,
                        "weak": one.weak or None,
                        "in_leaf": one.leafy,
                        "says": _holds(one),
                        "do": list(_tie_down(one)),
                        "after": [job.says for job in one.after],
                    }
                    for one in found
                ],
            }
        )
        return
    title = answers.plan.garden.name or answers.plan.name
    screen.line(screen.strong(f"{title}: before wind, the weakest first"))
    if not found:
        screen.line("Nothing of the plan stands today.")
    for number, one in enumerate(found, start=1):
        screen.line()
        screen.labelled(f"{number}.", f"{one.frame.frame.name}. {_holds(one)}", "")
        for line in _tie_down(one):
            screen.wrapped(f"[ ] {line}", "    ", "        ")
    if found:
        screen.line()
        screen.wrapped(
            "Do it while it is still calm; nobody goes near a frame, a ladder or glass in the "
            "gale itself. In the morning walk round once more.",
            "",
        )


def _holds(one: Exposed) -> str:
    """How it stands against a usual gale, in words; an estimate."""
    if one.ratio is None:
        if one.weak == "cover":
            return "A gust gets under its edge and lifts it."
        if one.weak == "fixings":
            return "It hangs on its fixings."
        return "How it stands cannot be reckoned from the plan."
    bare = "" if one.leafy else " once it is in leaf; bare, it catches little yet"
    holds = "the ground holds" if one.weak == "ground" else f"its {one.weak} hold"
    if one.ratio > LIKELY:
        return f"A usual gale asks about {times(one.ratio)} what {holds}{bare}."
    if one.ratio > TIGHT:
        return f"A usual gale asks about all that {holds}{bare}."
    return f"A usual gale asks less than {holds}{bare}."


def _tie_down(one: Exposed) -> tuple[str, ...]:
    if one.weak == "cover":
        return (
            "Shut it, and strap its lights or lay a brick on each.",
            "Bury or weigh down every edge of cloth.",
        )
    if one.weak == "fixings":
        return (
            "See that every hook and eye is home, and tie in what hangs loose.",
            "Steps on firm ground, and somebody within call.",
        )
    if one.ratio is None:
        return ("Look at its ties and at what leans.",)
    ripe = "Pick what is ripe and tie in" if one.leafy else "Tie in"
    lines = [f"{ripe} what hangs loose: it is weight and sail."]
    if one.ratio > TIGHT and not one.frame.stayed_square:
        lines.append("Tie a stay square to the row at each end, or lean a prop on the far side.")
    if one.weak == "ground":
        lines.append("Firm the soil round every upright with the heel.")
    return tuple(lines)


def _moves(move: Move) -> tuple[str, date, date]:
    """Steps of one frame that move together are told together."""
    block = "" if move.job.block == move.job.does or not move.job.block else f"{move.job.block}, "
    return block, move.was, move.becomes


# ---- rain ---------------------------------------------------------------------------------------
def rain(answers: Answers, jobs: Jobs, given: argparse.Namespace, screen: Screen | None) -> None:
    """What a day of rain moves, and what can be done under a roof instead."""
    found = slid(answers.season, jobs, given.rain)
    if screen is None:
        _write(
            {
                "plan": answers.plan.name,
                "day": found.day.isoformat(),
                "moved": [
                    {
                        "id": move.job.id,
                        "says": move.job.says,
                        "was": move.was.isoformat(),
                        "planned": move.becomes.isoformat(),
                    }
                    for move in found.moved
                ],
                "stays": [job.id for job in found.stays],
                "under_a_roof": [job.id for job in found.roof],
                "troubles": [trouble_data(one) for one in found.troubles],
            }
        )
        return
    screen.line(screen.strong(f"Rain on {dated(found.day)}"))
    if not found.moved:
        screen.line("Nothing outdoors is down for that day; nothing moves.")
    else:
        screen.heading("What it moves")
    for (block, was, becomes), group in groupby(found.moved, key=_moves):
        steps = "; ".join(move.job.brief for move in group)
        line = f"{dated(was)} becomes {dated(becomes)}: {block}{steps}"
        screen.wrapped(line, "  ", "    ")
    for heading, some in (
        ("Still on that day", found.stays),
        ("Under a roof meanwhile", found.roof),
    ):
        if some:
            screen.heading(heading)
            for job in some:
                screen.wrapped(f"[ ] {_name(job)}", "  ", "      ")
    for trouble in found.troubles:
        screen.line()
        screen.labelled("Too late with the rain:", trouble.says, "")
