"""Running the rules over a season, one after another; each rule is found by being in the folder."""

from __future__ import annotations

from functools import lru_cache
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

from plantframe.advice.findings import Found, Rule, severity
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from plantframe.season.season import Season

FOLDER = Path(__file__).parent / "rules"


@frozen
class Report:
    """What the rules found.

    found   every finding, before set-asides
    fine    the rules that looked at something and found nothing
    """

    found: tuple[Found, ...]
    fine: tuple[str, ...]


@lru_cache(maxsize=1)
def rules() -> tuple[Rule, ...]:
    """Every rule, by name."""
    found = []
    for file in sorted(FOLDER.glob("*.py")):
        if file.stem != "__init__":
            module = import_module(f"plantframe.advice.rules.{file.stem}")
            found.append(module.RULE)
    return tuple(sorted(found, key=lambda rule: rule.name))


def rule_named(name: str) -> Rule | None:
    """The rule of that name; an apostrophe may be left out."""
    return next((rule for rule in rules() if bare(rule.name) == bare(name)), None)


def bare(name: str) -> str:
    """A rule's name as it is compared: `won't-fold` and `wont-fold` are one."""
    return name.replace("'", "").replace("\u2019", "")


def cases_file(rule: Rule) -> Path:
    """The file of a rule's cases."""
    return FOLDER / f"{rule.name.replace('-', '_').replace(chr(39), '')}.yaml"


def run(season: Season) -> Report:
    """Ask every rule about everything it looks at."""
    found: list[Found] = []
    looked_at: set[str] = set()
    for kind, subjects in _subjects(season).items():
        if not subjects:
            continue
        looked_at.add(kind)
        for subject in subjects:
            found += _of_itself(kind, subject, season)
        for rule in _rules_for(kind, alone=False):
            found += [
                Found(rule, one) for subject in subjects for one in rule.check(subject, season)
            ]
    spoke = {one.rule.name for one in found}
    fine = [rule.name for rule in rules() if rule.looks_at in looked_at and rule.name not in spoke]
    return Report(tuple(sorted(_one_cause(found), key=order)), tuple(fine))


@lru_cache(maxsize=16)
def _rules_for(kind: str, *, alone: bool) -> tuple[Rule, ...]:
    """The rules that look at a kind of thing: at it alone, or at what is round it as well."""
    return tuple(rule for rule in rules() if rule.looks_at == kind and rule.alone is alone)


def _of_itself(kind: str, subject: object, season: Season) -> tuple[Found, ...]:
    """What the rules that look at nothing else find in a subject, asked once of each.

    While offers are tried, most frames are the very same in plan after plan.
    """
    kept: dict[str, Any] = getattr(subject, "kept", {})
    if "found" not in kept:
        kept["found"] = tuple(
            Found(rule, one)
            for rule in _rules_for(kind, alone=True)
            for one in rule.check(subject, season)
        )
    found: tuple[Found, ...] = kept["found"]
    return found


def _subjects(season: Season) -> dict[str, tuple[Any, ...]]:
    """Everything that rules look at, by its kind."""
    return {
        "frame": tuple(season.frames.values()),
        "planting": season.plantings,
        "bed": tuple(season.plan.beds.values()),
        "thing": tuple(season.plan.things.values()),
        "season": (season,),
    }


def order(found: Found) -> tuple[int, str, str, int, str, str]:
    """Worst first, then soonest, then as the plan runs."""
    finding = found.finding
    by = finding.by.isoformat() if finding.by else "9999"
    where = finding.where
    return -severity(finding.level), by, where.file, where.line, found.rule.name, finding.subject


# Where two rules can speak of one cause, the first speaks instead of the second.
INSTEAD = {
    ("needs-real-engineering", "too-heavy"),
    ("needs-real-engineering", "too-shallow-permanent"),
    ("sail-too-big", "too-shallow-seasonal"),
    ("heavy-lift", "needs-two"),
    ("nothing-to-hold", "support-too-fat"),
    ("frame-too-short-lived", "too-heavy"),
    ("won't-fold", "too-heavy"),
    ("won't-fold", "nothing-to-hold"),
    ("won't-fold", "support-too-fat"),
    ("vine-outgrows", "not-a-climber"),
    ("ends-unbraced", "wire-will-sag"),
    ("won't-fold", "frame-too-short-lived"),
    ("poisonous-lookalike", "plant-harm"),
    ("won't-fold", "prune-clashes-with-fold"),
    ("fixed-frame-pins-crop", "same-family-too-soon"),
    ("frost", "soil-cold"),
    ("not-a-climber", "frame-not-needed"),
}


def _one_cause(found: list[Found]) -> list[Found]:
    """One message for one cause."""
    names = {(one.rule.name, one.finding.block) for one in found}
    return [
        one
        for one in found
        if not any(
            (first, one.finding.block) in names
            for first, second in INSTEAD
            if second == one.rule.name
        )
    ]
