"""Entries of the catalogue as they are read on the screen: a plant, a structure, a rule."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.findings import Rule
from plantframe.catalogue.entries import Material, Plant, Step, Structure
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.workings import work
from plantframe.commands.figure_words import Cited, figure, origin
from plantframe.season.units import Shown, listed

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Harm, PlantCare
    from plantframe.catalogue.workings import Worked
    from plantframe.commands.screen import Screen
    from plantframe.plan.things import Plan

Entry = Plant | Structure | Material | Rule
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


def show_entry(entry: Entry, screen: Screen) -> None:
    """Print one entry, with the sources it names at its foot."""
    cited = Cited()
    if isinstance(entry, Plant):
        _plant(entry, screen, cited)
    elif isinstance(entry, Structure):
        _structure(entry, screen, cited)
    elif isinstance(entry, Material):
        _material(entry, screen, cited)
    elif isinstance(entry, Rule):
        _rule(entry, screen)
    if found := cited.listed():
        screen.heading("Published in")
        width = len(found[-1][0])
        for mark, named in found:
            screen.labelled(f"{mark:>{width}}", named, "")


def _rows(pairs: list[tuple[str, Sourced]], screen: Screen, cited: Cited) -> None:
    """A table of figures, what several sources say alike told once."""
    from plantframe.commands.screen import table

    rows = []
    for words, value in pairs:
        told: dict[str, list[str]] = {}
        for one in (value, *value.also):
            told.setdefault(figure(one), []).append(origin(one, cited))
        for place, (said, origins) in enumerate(told.items()):
            rows.append((words if place == 0 else "– also", said, "; ".join(origins)))
    if rows:
        table(rows, ("", "", "from"), screen)


def _plant(plant: Plant, screen: Screen, cited: Cited) -> None:
    screen.line(
        screen.strong(f"{plant.name}  ({plant.latin}, {plant.family_name or plant.family})")
    )
    if plant.also:
        screen.wrapped(f"Also called {listed(list(plant.also))}.", "")
    if plant.says:
        screen.wrapped(plant.says, "")
    screen.line()
    _rows(list(figures(plant)), screen, cited)
    if plant.training is not None and plant.training.how:
        screen.line()
        screen.labelled("Training:", plant.training.how, "")
    for care in plant.care:
        when = _when(care)
        screen.labelled("Care:", f"{care.do.rstrip('.')}{f' ({when})' if when else ''}.", "")
    for harm in plant.harm:
        screen.labelled("Mind:", _harm(harm, cited), "")
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


def _harm(harm: Harm, cited: Cited) -> str:
    """What a plant does, where and to whom, and where that is from: one sentence."""
    where = f" in {listed(list(harm.where))}" if harm.where else ""
    year = f", {harm.year}" if harm.year else ""
    head = f"{harm.kind[:1].upper()}{harm.kind[1:]}{where}"
    told = f"{head}: {harm.what.rstrip('.')}" if harm.what else head
    from_ = Sourced(value="x", basis=harm.basis, source=harm.source, doubt=harm.doubt)
    return f"{told} ({origin(from_, cited)}{year})."


def show_here(plant: Plant, plan: Plan, screen: Screen) -> None:
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


def _structure(structure: Structure, screen: Screen, cited: Cited) -> None:
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
    life = (
        f"; lasts {_years(structure.life)} ({origin(structure.life, cited)})"
        if structure.life
        else ""
    )
    screen.labelled("Stays:", f"{stays}{life}.", "")
    if structure.built_by == "builder":
        screen.wrapped("Left to a builder or a span table: no sizes are worked out here. Ask:", "")
        for question in structure.questions:
            screen.wrapped(f"- {question}", "  ", "    ")
    worked = _ordinary(structure)
    if worked is not None:
        _ordinary_parts(worked, screen, cited)
    _dangers(structure, screen)
    _steps(structure, worked, screen)
    screen.wrapped("" if structure.reviewed else "(not yet reviewed)", "")


def _ordinary(structure: Structure) -> Worked | None:
    from plantframe.catalogue.mistakes import ExpressionError

    try:
        return work(structure, {})
    except (ExpressionError, ValueError, ZeroDivisionError):
        return None


def _ordinary_parts(worked: Worked, screen: Screen, cited: Cited) -> None:
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
        _rows(pairs, screen, cited)


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


def _material(material: Material, screen: Screen, cited: Cited) -> None:
    screen.line(screen.strong(material.name))
    if material.also:
        screen.wrapped(f"Also called {listed(list(material.also))}.", "")
    screen.wrapped(material.says, "")
    screen.line()
    _rows(list(material.figures.items()), screen, cited)
    for size, values in material.sizes.items():
        _rows([(f"{size}, {name}", value) for name, value in values.items()], screen, cited)


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
