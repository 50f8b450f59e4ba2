"""Reading a rule's cases: plans that must make it speak, and twins that must keep it silent."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING

import yaml

from plantframe.advice.engine import cases_file, rules
from plantframe.answers.answers import Answers, answers_to

if TYPE_CHECKING:
    from plantframe.advice.findings import Found, Rule

TODAY = date(2026, 11, 25)


@dataclass(frozen=True)
class Case:
    """One case: its rule, its title, its plan, and what is expected of it."""

    rule: Rule
    title: str
    plan: str
    fires: bool
    today: date
    at: str = ""
    level: str = ""
    says: tuple[str, ...] = ()
    cured_by: tuple[str, ...] = field(default=())
    with_others: tuple[str, ...] = ()
    why: tuple[str, ...] = ()

    def answers(self) -> Answers:
        """The plan's answers."""
        return answers_to(self.plan, self.today)

    def found(self) -> list[Found]:
        """What this rule found in it."""
        return [one for one in self.answers().report.found if one.rule.name == self.rule.name]


def all_cases() -> list[Case]:
    """Every case of every rule."""
    return [case for rule in rules() for case in cases_of(rule)]


def cases_of(rule: Rule) -> list[Case]:
    """The cases beside a rule. `as above, but` changes lines of the plan last given in full."""
    text = cases_file(rule).read_text(encoding="utf-8")
    raw = yaml.safe_load(text)
    out = []
    plan = ""
    for kind in ("fires", "silent"):
        for title, body in (raw.get(kind) or {}).items():
            if "plan" in body:
                plan = body["plan"]
            changed = but(plan, body.get("as above, but", ""))
            out.append(
                Case(
                    rule,
                    title,
                    changed,
                    kind == "fires",
                    date.fromisoformat(str(body["today"])) if "today" in body else TODAY,
                    str(body.get("at", "")),
                    str(body.get("level", "")),
                    tuple(_list(body.get("says"))),
                    tuple(_list(body.get("cured by"))),
                    tuple(_list(body.get("with"))),
                    tuple(_list(body.get("why"))),
                )
            )
    return out


def _list(value: object) -> list[str]:
    if value is None:
        return []
    return [str(one) for one in value] if isinstance(value, list) else [str(value)]


def but(plan: str, changes: str) -> str:
    """The plan with lines changed: a line of the same first word is replaced, `- word` takes one
    out, a line `+ text` is added at the end (kept as indented)."""
    lines = plan.rstrip("\n").split("\n")
    for change in changes.split("\n") if changes else []:
        if not change.strip():
            continue
        if change.startswith("- "):
            word = change[2:].strip()
            lines = [line for line in lines if not line.strip().startswith(word)]
            continue
        if change.startswith("+ "):
            lines.append(change[2:])
            continue
        word = change.split()[0]
        place = next(
            (at for at, line in enumerate(lines) if line.split() and line.split()[0] == word), None
        )
        if place is None:
            lines.append("  " + change.strip())
            continue
        indent = lines[place][: len(lines[place]) - len(lines[place].lstrip())]
        lines[place] = indent + change.strip()
    return "\n".join(lines) + "\n"
