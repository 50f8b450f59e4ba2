"""What the plan's check still says of a frame: a sheet must not hide it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.paper.sheet import Aside, Danger
from plantframe.paper.text import sentence
from plantframe.season.units import plural

if TYPE_CHECKING:
    from plantframe.advice.findings import Found
    from plantframe.answers.answers import Answers

_FIRST: Final = re.compile(r"^(.*?[.!?])(?:\s+[A-Z]|$)", re.DOTALL)
MOST: Final = 4  # warnings on one sheet; the others are counted


def stops(answers: Answers, block: str) -> tuple[Danger, ...]:
    """What says stop, among the dangers at the top."""
    found = [one for one in answers.advice.active if one.level == "stop"]
    return tuple(
        Danger(f"STOP: {_first(answers, one)}") for one in found if one.finding.block == block
    )


def settle_first(answers: Answers, block: str) -> tuple[Aside, ...]:
    """Warnings that nobody has answered yet, each by its name and first sentence."""
    found = [
        one for one in answers.advice.active if one.level == "warn" and one.finding.block == block
    ]
    if not found:
        return ()
    # the sheet bears the frame's name already
    lines = [
        f"{one.rule.name}: {sentence(_first(answers, one).removeprefix(f'{block}: '))}"
        for one in found[:MOST]
    ]
    if len(found) > MOST:
        lines.append(f"and {plural(len(found) - MOST, 'more warning')}: plantframe check")
    return tuple(Aside("Settle first" if at == 0 else "", (line,)) for at, line in enumerate(lines))


def _first(answers: Answers, found: Found) -> str:
    """The first sentence of a warning."""
    says = found.words(answers.shown).says
    match = _FIRST.match(says)
    return sentence(match.group(1) if match else says)


def unread_words(answers: Answers) -> tuple[str, ...]:
    """That some of the plan could not be read, so that the sheet may lack something."""
    count = sum(slip.unread for slip in answers.mistakes)
    if not count:
        return ()
    lines = plural(count, "line")
    return (f"{lines} of the plan could not be read, so this may lack something: plantframe check",)
