"""A rule's first case, as an example: what is tested is what is shown."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.advice.engine import cases_file
from plantframe.answers.answers import answers_to
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from plantframe.advice.findings import Rule

ANY_DAY = date(2026, 11, 25)  # the cases' own season is 2027


@frozen
class Example:
    """A plan in which a rule speaks, and what it says there."""

    title: str
    plan: str
    says: tuple[str, ...]


def _cases(rule: Rule) -> dict[str, dict[str, dict[str, str]]]:
    import yaml

    try:
        text = cases_file(rule).read_text(encoding="utf-8")
    except OSError:
        return {}
    loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
    return yaml.load(text, Loader=loader) or {}  # noqa: S506 - both loaders make plain values only


def cases_count(rule: Rule) -> int:
    """How many cases a rule has."""
    return sum(len(cases) for cases in _cases(rule).values())


def example_of(rule: Rule) -> Example | None:
    """The first case in which the rule speaks."""
    for title, case in (_cases(rule).get("fires") or {}).items():
        plan = case.get("plan", "")
        answers = answers_to(plan, ANY_DAY)
        said = tuple(
            one.words(answers.shown).says
            for one in answers.report.found
            if one.rule.name == rule.name
        )
        return Example(title, plan, said)
    return None
