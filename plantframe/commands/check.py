"""check: slips in the text, then advice, worst and soonest first, on one screen."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.answers.assumed import assumed, not_checked
from plantframe.answers.offers import offers_for, offers_for_slip
from plantframe.commands.asked import FINE, STOPS, answers_for, plan_argument, write_json
from plantframe.commands.screen import Screen
from plantframe.diary.bowed import bowed_again_in
from plantframe.season.units import day, plural

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from plantframe.advice.findings import Found
    from plantframe.answers.answers import Answers
    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Mistake

BUDGET = 7  # advice on the first screen
MOST_SLIPS = 200  # a file that is no plan must not fill the screen for ever
MOST_LISTED = 5
_CURES = ("", "Cured by:", "Either cures it:")
MOST_ALIKE = 6  # places named where the same is so
ON_SCREEN = 2  # ways out told of each warning; the data has more


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser, "+")
    parser.add_argument(
        "--all", action="store_true", help="every warning, not only the first screen"
    )


def run(given: argparse.Namespace, today: date) -> int:
    """Check each plan."""
    answers = answers_for(given.plan, today)
    if given.json:
        data = [as_data(one) for one in answers]
        write_json(data[0] if len(data) == 1 else data)
    else:
        screen = Screen.of(sys.stdout)
        for place, one in enumerate(answers):
            if place:
                screen.line()
            show(one, screen, given.voice, everything=given.all)
    return STOPS if any(one.stops for one in answers) else FINE


def show(answers: Answers, screen: Screen, voice: str, *, everything: bool = False) -> None:
    """Print the check of one plan."""
    plan = answers.plan
    title = plan.garden.name or plan.name
    year = answers.plan.garden.seasons
    season = f"{year[0]}" if year[0] == year[1] else f"{year[0]}-{year[1] % 100:02d}"
    screen.line(screen.strong(f"{title}, {season}"))
    _slips(answers, screen)
    _advice(answers, screen, voice, everything=everything)
    for again in bowed_again_in(answers.reading, answers.today):
        screen.line()
        screen.labelled("From your log:", again.says, "")
    _foot(answers, screen, voice)


def _where(answers: Answers, file: str, line: int) -> str:
    """`line 12`, with its file where the plan has several."""
    several = len(answers.reading.texts) > 1
    return f"{file}, line {line}" if several else f"line {line}"


def _slips(answers: Answers, screen: Screen) -> None:
    slips = answers.mistakes
    if not slips:
        return
    screen.heading("The text")
    for slip in slips[:MOST_SLIPS]:
        typed = slip.where.typed.strip()
        place = _where(answers, slip.where.file, slip.where.line)
        screen.line()
        screen.ends(f"{place}: {typed}" if typed else place, f"{slip.level}  {slip.name}")
        screen.wrapped(_sentence(slip.says))
        _offers(screen, offers_for_slip(answers, slip), "Type:")
    if len(slips) > MOST_SLIPS:
        screen.wrapped(f"{len(slips) - MOST_SLIPS} more are not listed; {MOST_SLIPS} is the most.")


def _advice(answers: Answers, screen: Screen, voice: str, *, everything: bool) -> None:
    told, notes, later = _shown_advice(answers, voice, everything=everything)
    if told:
        screen.heading("Advice")
    for found, *same in told:
        screen.line()
        _finding(answers, found, same, screen, voice)
    if notes:
        screen.line()
        lines = [_note_line(answers, found) for found in notes]
        screen.labelled("Also:", "; ".join(lines) + ".", "")
    if later:
        screen.line()
        names = list(dict.fromkeys(found.rule.name for found in later))
        said = plural(len(later), "more warning")
        screen.wrapped(f"{said} ({', '.join(names)}): plantframe check --all", "")
    for aside in answers.advice.aside:
        screen.line()
        who = f", {aside.by.who}" if aside.by.who else ""
        said = f"{aside.found.finding.block}: {aside.found.rule.name}, “{aside.by.because}”{who}"
        screen.labelled("Set aside:", said, "")


def _shown_advice(
    answers: Answers, voice: str, *, everything: bool
) -> tuple[list[list[Found]], list[Found], list[Found]]:
    """What is told (each with those of its kind), what is told in a word, what only counted."""
    active = list(answers.advice.active)
    asks = [found for found in active if found.level == "ask"]
    # one question at a time; the others wait until it is answered
    active = [found for found in active if found.level != "ask"] + asks[:1]
    notes = [found for found in active if found.level == "note"]
    told = [found for found in active if found.level != "note"]
    if voice == "beginner":
        told, notes = told + notes, []
    if everything:
        return [[found] for found in told], notes, []
    kinds: dict[tuple[str, str], list[Found]] = {}
    for found in told:
        kinds.setdefault((found.rule.name, found.level), []).append(found)
    # what cannot be set aside is never crowded off the first screen
    grave = [kind for kind in kinds.values() if kind[0].level == "stop" or kind[0].answered]
    rest = [kind for kind in kinds.values() if kind not in grave]
    room = max(BUDGET - len(grave), 0)
    later = [found for kind in rest[room:] for found in kind]
    return grave + rest[:room], notes, later


def _finding(answers: Answers, found: Found, same: list[Found], screen: Screen, voice: str) -> None:
    """One finding in full, and where else the same is so."""
    finding = found.finding
    words = found.words(answers.shown)
    typed = finding.where.typed.strip()
    place = _where(answers, finding.where.file, finding.where.line)
    block = finding.block
    left = f"{block}, {place}: {typed}" if block and not typed.startswith(f"frame {block}") else ""
    left = left or f"{place}: {typed}"
    screen.ends(left, f"{found.level}  {found.rule.name}")
    says = words.says
    woken = next((one.why for one in answers.advice.woken if one.found == found), "")
    if woken:
        says += f" You set this aside; {woken}."
    if words.if_ignored:
        says += f" {words.if_ignored}"
    if finding.by is not None and found.level in {"stop", "warn"}:
        says += f" Settle it by {day(finding.by)}."
    screen.wrapped(says)
    offers = offers_for(answers, found, ON_SCREEN)
    _offers(screen, offers, _CURES[len(offers)])
    for way in finding.ways:
        screen.wrapped(f"- {way}", "  ", "    ")
    if voice == "beginner" and words.sum:
        screen.wrapped(f"Why: {words.sum}")
    screen.wrapped(_basis(found))
    if same:
        places = [_so_too(answers, one) for one in same[:MOST_ALIKE]]
        if len(same) > MOST_ALIKE:
            places.append(f"{len(same) - MOST_ALIKE} more (plantframe check --all)")
        screen.labelled("So too:", "; ".join(places))


def _so_too(answers: Answers, found: Found) -> str:
    """Where the same is so: what hurts or stops the work by its sentence, the rest by its line."""
    where = found.finding.where
    place = _where(answers, where.file, where.line)
    if found.answered or found.level == "stop":
        return f"{found.words(answers.shown).says.rstrip('.')} ({place})"
    return f"{found.finding.block} ({place})" if found.finding.block else place


def _basis(found: Found) -> str:
    rule = found.rule
    source = f", {rule.source}" if rule.source else ""
    reviewed = "" if rule.reviewed else "; not yet reviewed"
    return f"({rule.basis}{source}{reviewed})"


def _note_line(answers: Answers, found: Found) -> str:
    finding = found.finding
    line = _where(answers, finding.where.file, finding.where.line)
    name = found.rule.name
    return f"{finding.block}: {name} ({line})" if finding.block else f"{name} ({line})"


def _offers(screen: Screen, offers: tuple[Edit, ...], label: str) -> None:
    """Each edit as the lines it changes: what to type, and at which line."""
    for place, edit in enumerate(offers):
        lead = label if place == 0 else " " * len(label)
        changes = []
        for change in edit.changes:
            new = change.new.strip() if change.new is not None else ""
            if change.old is None:
                changes.append(f"{new}  (a new line after line {change.line})")
            elif change.new is None:
                changes.append(f"take out line {change.line}")
            elif len(edit.changes) == 1 and edit.says.startswith(new):
                changes.append(edit.says)  # with what it means in brackets
            else:
                changes.append(new)
        said = "  and  ".join(changes)
        if len(changes) > 1 and not any(edit.says.startswith(one) for one in changes):
            said = f"{edit.says}: {said}"  # a line that moves says little by itself
        screen.labelled(lead, said)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def _foot(answers: Answers, screen: Screen, voice: str) -> None:
    fine = answers.report.fine
    screen.line()
    count = plural(len(fine), "kind of fault", "kinds of fault")
    said = f"Looked for and not found: {count}"
    if voice == "beginner" and fine:
        said += f" ({', '.join(fine)})"
    screen.wrapped(said + ".", "")
    taken = assumed(answers)
    if taken:
        rest = len(taken) - MOST_LISTED if voice != "beginner" else 0
        shown = taken[:MOST_LISTED] if rest > 0 else taken
        more = f", and {plural(rest, 'thing')} more (plantframe why)" if rest > 0 else ""
        screen.wrapped(f"Assumed: {'; '.join(shown)}{more}.", "")
    missed = not_checked(answers)
    if missed:
        screen.wrapped(f"Not checked: {'; '.join(missed)}.", "")


# ---- as data --------------------------------------------------------------------------------
def as_data(answers: Answers) -> dict[str, Any]:
    """The check as plain data: the promise of the commands page."""
    return {
        "plan": answers.plan.name,
        "mistakes": [_slip_data(answers, slip) for slip in answers.mistakes],
        "advice": [_found_data(answers, found) for found in answers.advice.active],
        "set_aside": [
            {
                **_found_data(answers, aside.found, offers=False),
                "because": aside.by.because,
                "who": aside.by.who,
                "when": aside.by.when.day.isoformat() if aside.by.when else None,
            }
            for aside in answers.advice.aside
        ],
        "fine": len(answers.report.fine),
        "assumed": assumed(answers),
        "not_checked": not_checked(answers),
        "from_the_log": [one.says for one in bowed_again_in(answers.reading, answers.today)],
    }


def offer_data(edit: Edit) -> dict[str, Any]:
    """An offer as data."""
    return {
        "says": edit.says,
        "changes": [
            {"file": change.file, "line": change.line, "old": change.old, "new": change.new}
            for change in edit.changes
        ],
    }


def _slip_data(answers: Answers, slip: Mistake) -> dict[str, Any]:
    return {
        "name": slip.name,
        "level": slip.level,
        "file": slip.where.file,
        "line": slip.where.line,
        "column": slip.where.column,
        "typed": slip.where.typed,
        "says": _sentence(slip.says),
        "offers": [offer_data(edit) for edit in offers_for_slip(answers, slip)],
    }


def _found_data(answers: Answers, found: Found, *, offers: bool = True) -> dict[str, Any]:
    finding = found.finding
    words = found.words(answers.shown)
    ratio = finding.ratio
    return {
        "name": found.rule.name,
        "level": found.level,
        "block": finding.block,
        "subject": finding.subject,
        "file": finding.where.file,
        "line": finding.where.line,
        "column": finding.where.column,
        "says": words.says,
        "if_ignored": words.if_ignored,
        "by": finding.by.isoformat() if finding.by else None,
        "ratio": [float(f"{one:.2g}") for one in ratio] if ratio else None,
        "basis": found.rule.basis,
        "source": found.rule.source,
        "ways": list(finding.ways),
        "offers": [offer_data(edit) for edit in offers_for(answers, found)] if offers else [],
    }
