"""jobs: the ordered list, each job with its day, hands and tools, and what must not come yet."""

from __future__ import annotations

import sys
from functools import partial
from itertools import groupby
from typing import TYPE_CHECKING

from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.commands.asked import day as a_day
from plantframe.jobs.choosing import (
    beyond_walk,
    of_day,
    of_frame,
    of_person,
    of_week,
    walk,
    while_there,
)
from plantframe.jobs.data import as_data
from plantframe.jobs.days import season_bounds
from plantframe.jobs.fitting import hours_words, monday_of, weeks_of
from plantframe.jobs.job import LINES, OWN, PLANT, SOW
from plantframe.jobs.listing import jobs_of
from plantframe.jobs.troubles import label
from plantframe.season.units import dated, day, every_words, listed, minutes_words, plural

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser)
    add = parser.add_argument
    add("--day", type=a_day, metavar="DATE", help="the jobs of one day")
    add("--week", type=a_day, metavar="DATE", help="the jobs of the week of a day")
    add("--for", dest="person", metavar="PERSON", help="one person's jobs")
    add("--frame", metavar="NAME", help="the jobs of one frame or bed")
    add("--walk", action="store_true", help="at most eight lines for ten minutes")
    add("--weeks", action="store_true", help="hours wanted and free, and what waits")
    add("--away", action="store_true", help="the neighbour's page while nobody is in")
    add("--before-wind", action="store_true", help="what stands today, the weakest first")
    add("--rain", type=a_day, metavar="DATE", help="what a day of rain moves")


def run(given: argparse.Namespace, today: date) -> int:
    """Print the jobs that were asked for."""
    from plantframe.commands import job_pages
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    jobs = jobs_of(answers.season)
    page = job_pages.asked_for(given)
    if page is not None:
        page(answers, jobs, given, None if given.json else Screen.of(sys.stdout))
        return FINE
    chosen = choose(answers, jobs, given)
    if given.frame and not chosen and given.frame.lower() not in _blocks(answers, jobs):
        names = listed(
            sorted({job.block for job in jobs.jobs if job.kind not in {OWN, LINES}})
            or ["none yet"],
            "or",
        )
        raise Refused(f"No frame or bed here is called “{given.frame}”. There are {names}.")
    if given.json:
        write_json({"plan": answers.plan.name, **as_data(jobs, chosen)})
        return FINE
    screen = Screen.of(sys.stdout)
    show(answers, jobs, chosen, screen, given)
    if given.day is not None:
        job_pages.who_does_what(chosen, jobs.sharing, given.day, screen)
    return FINE


def _blocks(answers: Answers, jobs: Jobs) -> set[str]:
    return {name.lower() for name in (*answers.plan.frames, *answers.plan.beds)} | {
        job.block.lower() for job in jobs.jobs
    }


def choose(answers: Answers, jobs: Jobs, given: argparse.Namespace) -> tuple[Job, ...]:
    """The jobs of a day, a week, a person, a frame or a walk; all of them where none is named."""
    chosen = jobs.jobs
    if given.walk:
        chosen = walk(chosen, given.day or answers.today)
    elif given.day is not None:
        chosen = of_day(chosen, given.day)
    if given.week is not None:
        chosen = of_week(chosen, given.week)
    if given.person:
        people = [person.name for person in answers.plan.garden.people]
        known = {one.lower() for one in (*people, *(who for job in chosen for who in job.who))}
        if people and given.person.lower() not in known:
            raise Refused(f"Nobody here is called “{given.person}”; there is {listed(people)}.")
        chosen = of_person(chosen, given.person)
        helper = [h for h in jobs.sharing.crew.hands if h.name.lower() == given.person.lower()]
        for hand in helper:
            given.person = hand.name
            if hand.here is not None:
                chosen = while_there(chosen, *hand.here)
    if given.frame:
        chosen = of_frame(chosen, given.frame)
    return chosen


# ---- on the screen --------------------------------------------------------------------------
def show(
    answers: Answers,
    jobs: Jobs,
    chosen: Sequence[Job],
    screen: Screen,
    given: argparse.Namespace,
) -> None:
    """Print a list of jobs. What concerns none of them is left to the whole list."""
    title = answers.plan.garden.name or answers.plan.name
    screen.line(screen.strong(f"{title}{_asked(given)}: {_many(len(chosen))}"))
    everything = len(chosen) == len(jobs.jobs)
    _notes(answers, jobs, given, screen)
    _troubles(jobs, None if everything else {job.id for job in chosen}, screen)
    if given.walk:
        for job in chosen:
            screen.wrapped(f"[ ] {job.says}", "", "    ")
        day_of = given.day or answers.today
        rest = beyond_walk(jobs.jobs, day_of)
        if not chosen and not rest:
            screen.wrapped(_next_round(jobs, day_of), "")
        if rest:
            screen.line()
            told = "; ".join(_longer(job) for job in rest)
            screen.wrapped(f"Due as well, with more time than this walk has: {told}.", "")
        return
    number = 0
    for (when, until, block), group in groupby(chosen, key=partial(_group, jobs=jobs, given=given)):
        screen.line()
        screen.ends(f"{when}  {block}" if block else when, until)
        for job in group:
            number += 1
            _job(job, number, screen)
    if everything and jobs.done:
        screen.line()
        screen.wrapped(f"Done: {'; '.join(job.says for job in jobs.done)}.", "", "  ")
    for job in jobs.skipped if everything else ():
        screen.wrapped(f"Left out: {job.says}.", "", "  ")


def _asked(given: argparse.Namespace) -> str:
    """What of it was asked for, as it follows the garden's name."""
    told = [
        "a walk of ten minutes" if given.walk else "",
        dated(given.day) if given.day else "",
        f"week of {dated(monday_of(given.week))}" if given.week else "",
        given.frame or "",
        f"for {given.person}" if given.person else "",
    ]
    return "".join(f", {one}" for one in told if one)


def _many(count: int) -> str:
    return plural(count, "job") if count else "nothing to do"


def _notes(answers: Answers, jobs: Jobs, given: argparse.Namespace, screen: Screen) -> None:
    """What belongs to the list as a whole: a season that is over, an empty plan, a week's hours."""
    if answers.today > season_bounds(answers.plan.garden)[1]:
        screen.wrapped(
            "That season is over, and its days stand as they were planned; `plantframe next` "
            "begins the plan of the one after it.",
            "",
        )
    if not jobs.jobs and not jobs.done:
        screen.wrapped(
            "Nothing is to be built, sown or done yet; `plantframe pair` says which frame suits "
            "what you want to grow.",
            "",
        )
    if given.week and jobs.sharing.said and not (given.person or given.frame):
        monday = monday_of(given.week)
        for week in weeks_of(jobs.jobs, jobs.sharing):
            if week.monday == monday:
                there = hours_words(week.there, week.there)
                wanted = hours_words(*week.wanted)
                screen.wrapped(f"Building and care: {wanted} of everybody's {there}.", "")


def _once(job: Job, jobs: Jobs) -> str:
    """What a job without a day waits for, in words."""
    if job.every_days is None:
        return "any time"
    firsts = [one.kind for name in job.after if (one := jobs.job(name)) is not None]
    if {SOW, PLANT} & set(firsts):
        return "once it is planted"
    return "once it stands" if firsts else "any time"


def _next_round(jobs: Jobs, day_of: date) -> str:
    """What comes next, where nothing is due."""
    rounds = [job for job in jobs.jobs if job.every_days and job.planned and job.planned > day_of]
    if not rounds:
        return "Nothing is due, and no round is to come."
    job = min(rounds, key=lambda one: one.planned or day_of)
    when = dated(job.planned) if job.planned else ""
    return f"Nothing is due today. Next comes {job.block}, {job.brief}, on {when}."


def _longer(job: Job) -> str:
    minutes = f" ({minutes_words(job.minutes)})" if job.minutes else ""
    return f"{job.block}, {job.brief}{minutes}"


def _troubles(jobs: Jobs, chosen: set[str] | None, screen: Screen) -> None:
    """What cannot be as written, of the chosen jobs, and marks that mean no job."""
    for trouble in jobs.troubles:
        if chosen is None or chosen & set(trouble.jobs):
            screen.line()
            screen.labelled(label(trouble), trouble.says, "")
    for slip in jobs.mistakes if chosen is None else ():
        screen.labelled(f"line {slip.where.line}:", slip.says, "")


def _group(job: Job, jobs: Jobs, given: argparse.Namespace) -> tuple[str, str, str]:
    """Jobs of one day and one block stand together, with the day they must be done by."""
    if job.every_days is not None and job.planned is not None and (given.day or given.week):
        when = dated(given.day) if given.day else "On some day of the week"
    elif job.overdue and job.planned is None:
        when = f"Is it done? It was due by {day(job.latest)}" if job.latest else "Is it done?"
        return when, "", "" if job.kind == OWN else job.block
    elif job.planned is None:
        words = job.whenever or _once(job, jobs)
        when = words[:1].upper() + words[1:]
    else:
        day_of = given.day if given.day in job.days else job.planned
        when = dated(day_of) + (f", {job.half}" if job.half else "")
    by = ""
    if job.latest is not None and job.every_days is None and job.latest != job.planned:
        by = f"by {day(job.latest)}"
    return when, by, "" if job.kind == OWN else job.block


def _job(job: Job, number: int, screen: Screen) -> None:
    screen.labelled(f"[ ] {number:3}.", _sentence(job), "")
    pad = " " * 10
    hands = _hands(job)
    if hands:
        screen.wrapped(hands, pad)
    if job.power:
        screen.wrapped("It needs a socket: do it at the house.", pad)
    if job.dont_yet:
        screen.wrapped(f"Not yet: {job.dont_yet}.", pad)
    if job.how:
        screen.wrapped(f"{job.how.rstrip('.')}.", pad)
    for danger in job.dangers:
        screen.wrapped(f"Mind: {danger}.", pad)
    if job.wait:
        screen.wrapped(f"Then wait {job.wait}.", pad)
    if job.days:
        screen.wrapped(f"Parted over {listed([dated(one) for one in job.days])}.", pad)
    if job.stop_point:
        screen.wrapped("A good place to stop.", pad)
    if job.overdue and job.planned is not None:
        screen.wrapped("Its days are over: is it done? Mark it, or move it.", pad)


def _hands(job: Job) -> str:
    """How many it wants, and the way of one alone; "" where one is enough."""
    alone = f"Alone: {job.alone}." if job.alone else ""
    if job.short:
        return alone if alone and len(job.who) < 2 else f"It wants {job.hands}: ask for a hand."
    return f"{job.hands} people. {alone}".rstrip() if job.hands > 1 else ""


def _sentence(job: Job) -> str:
    """What is done, and in brackets where, how long, how often, by whom, with what."""
    told = []
    if job.place:
        told.append(job.place)
    if job.minutes is not None:
        told.append(minutes_words(job.minutes))
    if job.every_days is not None:
        told.append(every_words(job.every_days, job.until))
    elif job.until is not None:
        told.append(f"until {day(job.until)}")
    if job.who:
        told.append(listed(list(job.who)))
    if job.tools:
        told.append(", ".join(job.tools))
    extra = "; ".join(told)
    return f"{job.does} ({extra})" if extra else job.does
