"""A garden with fifty different causes for advice, and its twin with none of them.

Put together from the rules' own cases: one that makes a rule speak, and the silent twin that is
nearest to it, side by side under names of their own in one garden.
"""

from __future__ import annotations

import re
from datetime import date

from plantframe.advice.engine import rules
from plantframe.answers.answers import Answers, answers_to
from tests.advice.cases import Case, cases_of

TODAY = date(2027, 3, 5)
HEAD = """\
garden Bench Bottom, 2027
  place 51.4 N, 2.1 W
  frost last 4 May, first 14 October
  wind average, from the south-west
  soil firm loam
  person Wren, reach 1.95 m, lifts 15 kg
  person Ansel, lifts 25 kg
  household 2
  children 3 and 6
  normal high July 36 C
  normal high August 36 C
  normal low January -12 C
  storms August to October
  lines marked 2 March
"""
# A garden has one head, and these belong to it or to no thing in it.
LEFT_OUT = frozenset({"garden", "shed", "yard", "house", "want", "log", "note"})
NAMED = re.compile(r"(?:wall|hedge|tree|path|bed|line|frame|cover|fence|border) ([^,\n]+)")
NEAR_LINES = 3  # a twin that differs by more is another garden


def pair() -> tuple[str, str, int]:
    """The plan with faults, the one without, and how many rules the first lets speak."""
    faulty, sound, count = [HEAD], [HEAD], 0
    for place, rule in enumerate(rules()):
        found = _nearest(cases_of(rule), f"N{place}")
        if found is not None:
            faulty.append(found[0])
            sound.append(found[1])
            count += 1
    return "\n".join(faulty), "\n".join(sound), count


def _nearest(cases: list[Case], mark: str) -> tuple[str, str] | None:
    """A case of a rule that speaks in the common garden, and a twin without warnings."""
    silent = [case for case in cases if not case.fires]
    for fault in (case for case in cases if case.fires):
        text, name = _body(fault, mark), fault.rule.name
        if name not in _spoken(text, ("note", "ask", "warn", "stop")):
            continue
        for twin in sorted(silent, key=lambda one: _apart(one.plan, fault.plan)):
            other = _body(twin, mark)
            near = abs(other.count("\n") - text.count("\n")) <= NEAR_LINES
            grave = _spoken(other, ("ask", "warn", "stop"))
            if near and not grave and name not in _spoken(other, ("note",)):
                return text, other
    return None


def _apart(one: str, other: str) -> int:
    """In how many lines two plans differ."""
    return len(set(one.split("\n")) ^ set(other.split("\n")))


def _spoken(body: str, levels: tuple[str, ...]) -> set[str]:
    answers: Answers = answers_to(f"{HEAD}\n{body}", TODAY)
    return {found.rule.name for found in answers.report.found if found.level in levels}


def _body(case: Case, mark: str) -> str:
    """A case's things, each with a mark behind its name, a blank line between them."""
    blocks: list[list[str]] = []
    for line in case.plan.split("\n"):
        if line[:1] in {" ", "("} and blocks:
            blocks[-1].append(line)
        elif line.strip():
            blocks.append([line])
    kept = ["\n".join(block) for block in blocks if block[0].split()[0] not in LEFT_OUT]
    text = "\n\n".join(kept) + "\n"
    names = {match[1].strip() for match in map(NAMED.match, kept) if match}
    for name in sorted(names, key=len, reverse=True):
        text = re.sub(rf"\b{re.escape(name)}\b", f"{name} {mark}", text)
    return text
