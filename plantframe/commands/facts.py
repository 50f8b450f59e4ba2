"""facts: what is known of a plant, a structure, a material or a warning, each figure's source."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.advice.findings import Rule
from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.entries import Material, Plant, Source, Step, Structure
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.names import all_names
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.units import unit_named
from plantframe.catalogue.workings import work
from plantframe.commands.asked import FINE, Refused, one_answer, write_json
from plantframe.season.entries import entry_of
from plantframe.season.own_plants import names_in
from plantframe.season.units import Shown, listed, plural

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterator, Mapping
    from datetime import date

    from plantframe.catalogue.entries import Harm, PlantCare
    from plantframe.catalogue.tally import Tally
    from plantframe.catalogue.workings import Worked
    from plantframe.commands.screen import Screen
    from plantframe.plan.things import Plan

Entry = Plant | Structure | Material | Rule
KINDS = ("plants", "structures", "materials", "rules", "sources")
# Words of an entry as they stand in a sentence, where they differ from the field's own name.
_SKIP = {
    "FIELDS",
    "name",
    "also",
    "part_of",
    "like",
    "says",
    "care",
    "harm",
    "reviewed",
    "training",
}


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
            _here(entry, plan, screen)
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


# ---- figures --------------------------------------------------------------------------------
def figure(value: Sourced) -> str:
    """A sourced value as it is written: `2.4 to 3.5 m`, `twines`."""
    if value.is_word:
        return value.value
    if " from " in value.unit:
        return _counted_from(value)
    unit = unit_named(value.unit)
    factor, offset = (unit.factor, unit.offset) if unit else (1.0, 0.0)
    if _months(value):
        factor /= 12

    def typed(number: float) -> str:
        return f"{(number - offset) / factor:.{2 if _months(value) else 3}g}"

    low = typed(value.low) if value.low is not None else ""
    high = typed(value.high) if value.high is not None else ""
    words = {"per m": "a metre", "kg/m": "kg a metre", "kg/m2": "kg/m²", "C": "°C"}
    unit_text = "months" if _months(value) else words.get(value.unit, value.unit)
    if low and high and low != high:
        middle = typed(value.middle) if value.middle is not None else ""
        mean = typed((value.low + value.high) / 2) if value.low is not None and value.high else ""
        core = f"{low} to {high}" + (f", mostly {middle}" if middle not in {"", mean} else "")
    elif low and high:
        core = low
    elif low:
        core = f"{low} or more"
    else:
        core = f"up to {high}"
    return f"{core} {unit_text}".strip()


def _months(value: Sourced) -> bool:
    """A stay of less than a year is told in months."""
    return value.unit == "years" and value.high is not None and value.high < 1


def _counted_from(value: Sourced) -> str:
    """Time counted from a day: `2 to 4 weeks before last frost`, `60 to 70 days after sowing`."""
    unit, _, event = value.unit.partition(" from ")
    known = unit_named(value.unit)
    factor = known.factor if known else 1.0
    ends = [one / factor for one in (value.low, value.high) if one is not None]
    low, high = min(ends), max(ends)
    if low < 0 < high:
        return f"{-low:.3g} {unit} before to {high:.3g} {unit} after {event}"
    if low == high == 0:
        return f"at {event}"
    side = "before" if low < 0 else "after"
    near, far = sorted((abs(low), abs(high)))
    span = f"{near:.3g}" if near == far else f"{near:.3g} to {far:.3g}"
    one = unit.removesuffix("s") if near == far == 1 else unit
    return f"{span} {one} {side} {event}"


def origin(value: Sourced) -> str:
    """Where it is from, in a phrase."""
    said = "your figure" if value.basis == "yours" else value.basis
    if value.source:
        try:
            source = catalogue.source(value.source)
        except CatalogueError:
            source = None  # the list of sources says what is wrong with it
        if source is not None:
            said += f": {source.publisher}, {source.title}"
    if value.printed:
        said += f" (printed: {value.printed})"
    if value.doubt:
        said += f"; {value.doubt}"
    return said


def figures(entry: object) -> Iterator[tuple[str, Sourced]]:
    """Every figure of an entry by its words."""
    for name in getattr(entry, "FIELDS", ()):
        if name in _SKIP:
            continue
        value = getattr(entry, name)
        words = name.replace("_", " ")
        if isinstance(value, Sourced):
            yield words, value
        elif hasattr(value, "items"):
            for key, one in value.items():
                if isinstance(one, Sourced):
                    yield (f"{words}, {key}" if name != "other" else str(key)), one


# ---- entries on the screen ------------------------------------------------------------------
def show_entry(entry: Entry, screen: Screen) -> None:
    """Print one entry."""
    if isinstance(entry, Plant):
        _plant(entry, screen)
    elif isinstance(entry, Structure):
        _structure(entry, screen)
    elif isinstance(entry, Material):
        _material(entry, screen)
    elif isinstance(entry, Rule):
        _rule(entry, screen)


def _rows(pairs: list[tuple[str, Sourced]], screen: Screen) -> None:
    from plantframe.commands.screen import table

    rows = []
    for words, value in pairs:
        rows.append((words, figure(value), origin(value)))
        rows += [("– also", figure(other), origin(other)) for other in value.also]
    if rows:
        table(rows, ("", "", "from"), screen)


def _plant(plant: Plant, screen: Screen) -> None:
    screen.line(
        screen.strong(f"{plant.name}  ({plant.latin}, {plant.family_name or plant.family})")
    )
    if plant.also:
        screen.wrapped(f"Also called {listed(list(plant.also))}.", "")
    if plant.says:
        screen.wrapped(plant.says, "")
    screen.line()
    _rows(list(figures(plant)), screen)
    if plant.training is not None and plant.training.how:
        screen.line()
        screen.labelled("Training:", plant.training.how, "")
    for care in plant.care:
        when = _when(care)
        screen.labelled("Care:", f"{care.do.rstrip('.')}{f' ({when})' if when else ''}.", "")
    for harm in plant.harm:
        screen.labelled("Mind:", _harm(harm), "")
    if plant.yours:
        screen.wrapped(f"Your own entry ({plant.yours}); the rest is as for {plant.known_as}.", "")
    screen.wrapped("" if plant.reviewed else "(not yet reviewed)", "")


def _when(care: PlantCare) -> str:
    """When a round of care comes, and how often: `midsummer, every year`."""
    parts = []
    if care.from_ is not None:
        parts.append(figure(care.from_))
    if care.until is not None:
        parts.append(f"until {figure(care.until)}")
    if care.every is not None:
        parts.append(_every(care.every))
    return ", ".join(parts)


def _harm(harm: Harm) -> str:
    """What a plant does, where and to whom, and where that is from: one sentence."""
    where = f" in {listed(list(harm.where))}" if harm.where else ""
    year = f", {harm.year}" if harm.year else ""
    head = f"{harm.kind[:1].upper()}{harm.kind[1:]}{where}"
    told = f"{head}: {harm.what.rstrip('.')}" if harm.what else head
    basis = origin(Sourced(value="x", basis=harm.basis, source=harm.source, doubt=harm.doubt))
    return f"{told} ({basis}{year})."


def _here(plant: Plant, plan: Plan, screen: Screen) -> None:
    """Its days in the garden of a plan."""
    from plantframe.season.windows import windows

    spans = windows(plant, plan.garden)
    screen.heading(f"Here, at {plan.garden.name or plan.name}")
    if not spans:
        screen.wrapped("Nothing can be reckoned: the plan gives no `place` and no `frost`.")
        return
    width = max(len(span.what) for span in spans)
    for span in spans:
        screen.labelled(f"{span.what:{width}}", span.says)


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


def _structure(structure: Structure, screen: Screen) -> None:
    screen.line(screen.strong(structure.name))
    if structure.also:
        screen.wrapped(f"Also called {listed(list(structure.also))}.", "")
    screen.wrapped(structure.says, "")
    if structure.suits:
        names = [
            one.plant
            + (f" (bays to {Shown().length(one.bay.high)})" if one.bay and one.bay.high else "")
            for one in structure.suits
        ]
        screen.labelled("For:", listed(names) + ".", "")
    stays = "is taken down each year" if structure.seasonal else "stays for years"
    life = f"; lasts {_years(structure.life)} ({origin(structure.life)})" if structure.life else ""
    screen.labelled("Stays:", f"{stays}{life}.", "")
    if structure.built_by == "builder":
        screen.wrapped("Left to a builder or a span table: no sizes are worked out here. Ask:", "")
        for question in structure.questions:
            screen.wrapped(f"- {question}", "  ", "    ")
    worked = _ordinary(structure)
    if worked is not None:
        _ordinary_parts(worked, screen)
    _dangers(structure, screen)
    _steps(structure, worked, screen)
    screen.wrapped("" if structure.reviewed else "(not yet reviewed)", "")


def _ordinary(structure: Structure) -> Worked | None:
    from plantframe.catalogue.mistakes import ExpressionError

    try:
        return work(structure, {})
    except (ExpressionError, ValueError, ZeroDivisionError):
        return None


def _ordinary_parts(worked: Worked, screen: Screen) -> None:
    from plantframe.commands.screen import table

    rows = []
    for name, pieces in worked.pieces.items():
        size = []
        if pieces.width_m and pieces.depth_m:
            across = f"{pieces.width_m * 1000:.0f} mm round"
            flat = f"{pieces.width_m * 1000:.0f} x {pieces.depth_m * 1000:.0f} mm"
            size.append(across if pieces.round else flat)
        if pieces.breadth_m and pieces.length_m and not pieces.width_m:
            size.append(f"{_cut(pieces.breadth_m)} x {_cut(pieces.length_m)}")
        elif pieces.length_m:
            shortest = min(pieces.lengths_m)
            size.append(
                _cut(pieces.length_m)
                if pieces.length_m - shortest < 0.005
                else f"{_cut(shortest)} to {_cut(pieces.length_m)}"
            )
        if pieces.size:
            size.append(pieces.size)
        rows.append((f"{pieces.count}", name, ", ".join(size)))
    if rows:
        screen.heading("Parts, at its ordinary size")
        table(rows, ("", "", ""), screen)
    taken = worked.facts.assumed()
    # a section is settled as three figures and was assumed as one
    pairs = [
        (name.replace(".width", ".section").replace(".", ", ").replace("_", " "), value)
        for name, value in taken.items()
        if not name.endswith((".depth", ".round"))
    ]
    if pairs:
        screen.heading("What is taken for granted where a plan does not say")
        _rows(pairs, screen)


def _cut(metres: float) -> str:
    """A length as it is cut at the bench, to 5 mm."""
    return Shown().exact(round(metres * 200) / 200)


def _dangers(structure: Structure, screen: Screen) -> None:
    if structure.dangers:
        screen.heading("Mind")
        for danger in structure.dangers:
            screen.wrapped(f"- {danger.says}", "  ", "    ")
        screen.wrapped("Local rules and licensed people come before anything said here.", "  ")


def _steps(structure: Structure, worked: Worked | None, screen: Screen) -> None:
    """The order of work, taking down, storage and care."""
    if structure.steps:
        _building(structure, worked, screen)
    down = [one.step for one in worked.down] if worked else list(structure.down)
    if down:
        screen.heading("Taking down")
        for place, step in enumerate(down, start=1):
            screen.labelled(f"{place:2}.", step.do, "")
    if structure.storage:
        screen.labelled("Store:", structure.storage, "")
    for care in structure.care:
        every = _every(care.every) if care.every is not None else ""
        told = ", ".join(part for part in (every, care.season or care.event) if part)
        screen.labelled("Care:", f"{care.do} ({told})", "")
    for fault in structure.fails:
        screen.labelled("Goes wrong:", f"{fault}.", "")


def _building(structure: Structure, worked: Worked | None, screen: Screen) -> None:
    """The order at its ordinary size, then the steps that only some of its kind have."""
    steps = [one.step for one in worked.steps] if worked else list(structure.steps)
    here = {step.id for step in steps}
    screen.heading("In this order")
    for place, step in enumerate(steps, start=1):
        screen.labelled(f"{place:2}.", f"{step.do}{_about(step)}", "")
    others = [step for step in structure.steps if step.id not in here]
    if others:
        screen.wrapped("In its turn, where the plan has it:", "")
        for step in others:
            screen.wrapped(f"- {step.do}{_about(step)}", "    ", "      ")
    screen.labelled("Late:", f"{structure.late.because}.", "")
    if structure.planting.says:
        screen.labelled("Plant:", structure.planting.says, "")


def _years(value: Sourced) -> str:
    """A life: `a year`, `4 to 8 years`."""
    said = figure(value)
    return "a year" if said == "1 years" else said


def _every(value: Sourced) -> str:
    """How often: `every year`, `every 4 to 5 years`."""
    return (
        f"every {figure(value)}".replace("every 1 ", "every ").removesuffix("s")
        if (value.low == value.high and figure(value).startswith("1 "))
        else f"every {figure(value)}"
    )


def _about(step: Step) -> str:
    """Hands, what must wait, and where one may stop, in brackets after the step."""
    tail = []
    if step.hands > 1:
        tail.append(f"{step.hands} people" + (f"; alone: {step.alone}" if step.alone else ""))
    if step.not_yet:
        tail.append(f"not yet: {step.not_yet}")
    if step.wait is not None:
        tail.append(f"then wait {figure(step.wait.days)} for {step.wait.for_}")
    if step.stop:
        tail.append("a good place to stop")
    return f" ({'; '.join(tail)})" if tail else ""


def _material(material: Material, screen: Screen) -> None:
    screen.line(screen.strong(material.name))
    if material.also:
        screen.wrapped(f"Also called {listed(list(material.also))}.", "")
    screen.wrapped(material.says, "")
    screen.line()
    _rows(list(material.figures.items()), screen)
    for size, values in material.sizes.items():
        _rows([(f"{size}, {name}", value) for name, value in values.items()], screen)


def _rule(rule: Rule, screen: Screen) -> None:
    from plantframe.answers.examples import example_of

    screen.ends(rule.name, listed(list(rule.levels), "or"))
    screen.wrapped(f"Speaks where {rule.summary}.", "")
    source = f": {rule.source}" if rule.source else ""
    reviewed = f"reviewed by {rule.reviewed}" if rule.reviewed else "not yet reviewed"
    screen.wrapped(f"Rests on {rule.basis}{source}; {reviewed}.", "")
    if rule.answered:
        where = "" if rule.answered_at == "note" else f"Where it says {rule.answered_at}, "
        it = "it" if where else "It"
        screen.wrapped(f"{where}{it} can't be set aside, only answered: {rule.answered}", "")
    else:
        screen.wrapped(f'Set aside with: ok {rule.name} because "…"', "")
    example = example_of(rule)
    if example is not None:
        screen.heading(f"For example, {example.title}")
        for line in example.plan.rstrip().split("\n"):
            screen.line(f"    {line}")
        for said in example.says:
            screen.wrapped(said)


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
            sys.stderr.write(f"plantframe: {error}\n")  # the rest of the catalogue still serves
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
