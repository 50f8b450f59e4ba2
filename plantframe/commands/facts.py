"""facts: what is known of a plant, a structure, a material or a warning, each figure's source."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.advice.findings import Rule
from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.entries import Material, Plant, Source, Structure
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.names import all_names
from plantframe.catalogue.sourced import Sourced
from plantframe.commands.asked import FINE, Refused, one_answer, write_json
from plantframe.commands.entry_pages import Entry, show_entry, show_here
from plantframe.commands.figure_words import figure
from plantframe.commands.screen import beside
from plantframe.season.entries import entry_of
from plantframe.season.own_plants import names_in
from plantframe.season.units import listed, plural

if TYPE_CHECKING:
    import argparse
    from collections.abc import Mapping
    from datetime import date

    from plantframe.catalogue.tally import Tally
    from plantframe.commands.screen import Screen
    from plantframe.plan.things import Plan

KINDS = ("plants", "structures", "materials", "rules", "sources")


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("name", metavar="NAME", nargs="*", help="its name")
    parser.add_argument("--plan", metavar="PLAN", help="with its days in the garden of a plan")
    for whole in KINDS:
        parser.add_argument(f"--{whole}", action="store_true", help=f"list the {whole}")


def run(given: argparse.Namespace, today: date) -> int:
    """Print what was asked for."""
    from plantframe.commands.screen import Screen

    wanted = [kind for kind in KINDS if getattr(given, kind)]
    screen = Screen.of(sys.stdout)
    if wanted:
        if given.json:
            data = {kind: list_data(kind) for kind in wanted}
            write_json(data[wanted[0]] if len(wanted) == 1 else data)
        else:
            for kind in wanted:
                show_list(kind, screen)
        return FINE
    return _of_name(given, " ".join(given.name).strip(), screen, today)


def _of_name(given: argparse.Namespace, name: str, screen: Screen, today: date) -> int:
    """Print all that goes by a name."""
    if not name:
        raise Refused("What about? Type a name, or --plants, --structures, --rules or --sources")
    plan = one_answer(given.plan, today).plan if given.plan else None
    entries = _entries(name, plan)
    if not entries:
        near = _near(name)
        tail = f" Nearest: {', '.join(near)}." if near else ""
        raise Refused(f"Nothing here is called “{name}”.{tail}")
    if given.json:
        data_of = [{**entry_data(entry), **_here_data(entry, plan)} for entry in entries]
        write_json(data_of[0] if len(data_of) == 1 else data_of)
        return FINE
    if len(entries) > 1:
        names = listed([entry.name for entry in entries], "or")
        screen.wrapped(f"“{name}” may be {names}. Each in turn:", "")
    for place, entry in enumerate(entries):
        if place or len(entries) > 1:
            screen.line()
        show_entry(entry, screen)
        if plan is not None and isinstance(entry, Plant):
            show_here(entry, plan, screen)
    return FINE


def _entries(name: str, plan: Plan | None) -> list[Entry]:
    from plantframe.advice.engine import rule_named

    out: list[Entry | None] = []
    try:
        if plan is not None:
            out += [entry_of(one, plan.garden) for one in names_in(plan, name)]
        else:
            out += [catalogue.plant(one) for one in catalogue.plants_named(name)]
        out += [catalogue.structure(one) for one in catalogue.structures_named(name)]
        out += [catalogue.material(one) for one in catalogue.materials_named(name)]
    except CatalogueError as error:
        raise Refused(f"The entry cannot be read: {error}") from None
    rule = rule_named(name.lower().replace(" ", "-"))
    if rule is not None:
        out.append(rule)
    return [entry for entry in out if entry is not None]


def _near(name: str) -> tuple[str, ...]:
    from plantframe.advice.engine import rules
    from plantframe.language.reader import nearest

    names = [*all_names("plant"), *all_names("structure"), *all_names("material")]
    return nearest(name, [*names, *(rule.name for rule in rules())])


def _here_data(entry: Entry, plan: Plan | None) -> dict[str, Any]:
    """The same as data."""
    if plan is None or not isinstance(entry, Plant):
        return {}
    from plantframe.season.windows import windows

    return {
        "here": [
            {
                "what": span.what,
                "first": span.first.isoformat() if span.first else None,
                "last": span.last.isoformat() if span.last else None,
                "says": span.says,
            }
            for span in windows(entry, plan.garden)
        ]
    }


# ---- lists ----------------------------------------------------------------------------------
def show_list(kind: str, screen: Screen) -> None:
    """Print all of a kind, a line each."""
    from plantframe.commands.screen import table

    rows = [_list_row(one) for one in _all(kind)]
    heads = {
        "plants": ("plant", "holds on", "what is said of it"),
        "structures": ("structure", "stays", "what it is"),
        "materials": ("material", "kind", "what it is"),
        "rules": ("warning", "levels", "speaks where"),
        "sources": ("source", "figures", "what it is"),
    }[kind]
    table(rows, heads, screen)
    screen.line()
    screen.line(plural(len(rows), kind[:-1], kind) + ".")
    if kind == "sources":
        bases = _tally().by_basis
        screen.wrapped(
            f"Of all that plants, structures and materials say here, {bases['published']} figures "
            f"and words are published, {bases['common practice']} common practice, "
            f"{bases['estimate']} estimates and {bases['sum']} sums. Published numbers alone, each "
            f"statement counted once however many crops it was made of: "
            f"{sum(_tally().once.values())}.",
            "",
        )


def _all(kind: str) -> list[Any]:
    from plantframe.advice.engine import rules

    if kind == "rules":
        return list(rules())
    names = catalogue.entry_names(kind[:-1])
    read: Mapping[str, Any] = {
        "plants": catalogue.plant,
        "structures": catalogue.structure,
        "materials": catalogue.material,
        "sources": lambda name: catalogue.source(name.replace(" ", "-")),
    }
    out = []
    for name in names:
        try:
            out.append(read[kind](name))
        except CatalogueError as error:
            beside(f"plantframe: {error}")  # the rest of the catalogue still serves
    return [entry for entry in out if entry is not None]


def _list_row(entry: Entry | Source) -> tuple[str, str, str]:
    if isinstance(entry, Plant):
        return entry.name, figure(entry.holds_on) if entry.holds_on else "", entry.says
    if isinstance(entry, Structure):
        return entry.name, "a season" if entry.seasonal else "years", entry.says
    if isinstance(entry, Material):
        return entry.name, entry.kind, entry.says
    if isinstance(entry, Rule):
        return entry.name, ", ".join(entry.levels), entry.summary
    return entry.key, str(_tally().by_source.get(entry.key, 0)), _source_words(entry)


def _source_words(source: Source) -> str:
    year = f", {source.year}" if source.year else ""
    return f"{source.title}. {source.publisher}{year}"


_counted: list[Tally] = []


def _tally() -> Tally:
    """What the figures of the whole catalogue rest on."""
    if not _counted:
        from plantframe.catalogue.tally import tally

        entries = [one for kind in ("plants", "structures", "materials") for one in _all(kind)]
        _counted.append(tally(entries, _all("sources")))
    return _counted[0]


def list_data(kind: str) -> list[dict[str, Any]]:
    """All of a kind as data."""
    return [entry_data(entry) for entry in _all(kind)]


def entry_data(entry: Entry | Source) -> dict[str, Any]:
    """An entry as data."""
    if isinstance(entry, Rule):
        from plantframe.answers.examples import cases_count

        return {
            "name": entry.name,
            "severity": list(entry.levels),
            "basis": entry.basis,
            "source": entry.source,
            "summary": entry.summary,
            "answered": entry.answered,
            "reviewed": entry.reviewed,
            "cases": cases_count(entry),
        }
    data: dict[str, Any] = _plain(entry)
    if isinstance(entry, Source):
        data["figures"] = _tally().by_source.get(entry.key, 0)
        data["once"] = _tally().once.get(entry.key, 0)
    return data


def _plain(value: Any) -> Any:  # noqa: ANN401 - whatever an entry may hold
    """Any value of the catalogue as lists, mappings, words and figures."""
    if isinstance(value, Sourced):
        out: dict[str, Any] = {"basis": value.basis}
        if value.is_word:
            out["value"] = value.value
        else:
            out |= {"low": value.low, "middle": value.middle, "high": value.high}
            out["unit"] = value.base
        for name in ("source", "printed", "doubt"):
            if getattr(value, name):
                out[name] = getattr(value, name)
        if value.also:
            out["also"] = [_plain(one) for one in value.also]
        return out
    if hasattr(value, "FIELDS"):
        fields = ((name, getattr(value, name)) for name in value.FIELDS)
        return {
            name.rstrip("_").replace("_", " "): _plain(one)
            for name, one in fields
            if one not in (None, "", (), {})
        }
    if hasattr(value, "items"):
        return {str(key): _plain(one) for key, one in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(one) for one in value]
    return value
