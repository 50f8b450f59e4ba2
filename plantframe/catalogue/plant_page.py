"""Reads a plant's entry."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.entries import Emergence, Harm, Plant, PlantCare, Training
from plantframe.catalogue.page import Page

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced

# Names are a plant's own; everything else a kind may take from the plant it is like.
NOT_INHERITED = frozenset({"name", "also", "part of", "like", "says", "reviewed"})


def plant_from(raw: object, file: str) -> Plant:
    """A plant from its entry as YAML gave it, with what it is like filled in already."""
    page = Page(raw, file)
    holds_on = page.take("holds on")
    strangles = isinstance(holds_on, dict) and bool(holds_on.get("strangles"))
    if isinstance(holds_on, dict):
        holds_on = {key: value for key, value in holds_on.items() if key != "strangles"}
    plant = Plant(
        name=page.needed("name"),
        also=page.texts("also"),
        part_of=page.texts("part of"),
        latin=page.text("latin"),
        family=page.text("family"),
        family_name=page.text("family name"),
        like=page.text("like"),
        grown_for=page.text("grown for"),
        life=page.figure("life"),
        habit=page.figure("habit"),
        holds_on=None if holds_on is None else page.as_figure(holds_on, "holds on"),
        strangles=strangles,
        grip=page.figure("grip"),
        height=page.figure("height"),
        wet_weight=page.figure("wet weight"),
        weight_by_area=page.figure("weight by area"),
        weight_by_leaders=_by_leaders(page),
        sun=page.figure("sun"),
        stem=page.figure("stem"),
        stays=page.figure("stays"),
        plants_per_metre=page.figure("plants per metre"),
        apart=page.figure("apart"),
        rows_apart=page.figure("rows apart"),
        tender=page.figure("tender"),
        sow=page.figure("sow"),
        sow_indoors=page.figure("sow indoors"),
        plant_out=page.figure("plant out"),
        soil=page.figure("soil"),
        soil_best=page.figure("soil best"),
        emergence=_emergence(page),
        harvest=page.figure("harvest"),
        frost_margin=page.figure("frost margin"),
        picked=page.figure("picked", "common practice"),
        fruit_across=page.figure("fruit across"),
        fruit_weight=page.figure("fruit weight"),
        mesh=page.figure("mesh"),
        training=_training(page),
        flowers_on=page.figure("flowers on"),
        cut_back=page.figure("cut back"),
        care=tuple(_care(inner) for _, inner in page.pages("care")),
        rotation=page.figure("rotation"),
        harm=tuple(_harm(inner) for _, inner in page.pages("harm")),
        says=page.text("says"),
        reviewed=page.text("reviewed"),
        other=_other(page),
    )
    page.done()
    return plant


def _by_leaders(page: Page) -> dict[int, Sourced]:
    inner = page.page("wet weight by leaders")
    if inner is None:
        return {}
    found: dict[int, Sourced] = {}
    for key in inner.raw:
        if not key.isdigit():
            raise inner.wrong("it wants a number of leaders", key)
        found[int(key)] = inner.as_figure(inner.take(key), key)
    return found


def _emergence(page: Page) -> Emergence | None:
    raw = page.take("emergence")
    if raw is None:
        return None
    if isinstance(raw, list):  # each line may carry the origin; the first speaks for all
        raw = {"table": raw}
    inner = Page(raw, page.file, "emergence")
    rows = inner.take("table")
    if not isinstance(rows, list) or not rows:
        raise inner.wrong("it wants lines of {at: warmth in C, days: days}", "table")
    table: list[tuple[float, float]] = []
    origin: dict[str, object] = {}
    for number, row in enumerate(rows, 1):
        line = Page(row, page.file, "emergence", str(number))
        at, days = line.take("at"), line.take("days")
        if not isinstance(at, int | float) or not isinstance(days, int | float):
            raise line.wrong("it wants {at: warmth in C, days: days}")
        table.append((float(at), float(days)))
        for key in ("basis", "source", "doubt", "printed"):
            origin.setdefault(key, line.take(key))
        line.done()
    basis = inner.text("basis") or str(origin.get("basis") or "")
    source = inner.text("source") or str(origin.get("source") or "")
    doubt = inner.text("doubt") or str(origin.get("doubt") or "")
    inner.take("printed")
    inner.done()
    if not basis:
        raise inner.wrong("it wants a basis")
    return Emergence(tuple(sorted(table)), basis, source or None, doubt)


def _training(page: Page) -> Training | None:
    raw = page.take("training")
    leaders = page.take("leaders")
    how = page.text("how")
    if raw is None:
        return None
    if isinstance(raw, str):
        raw = {"value": raw}
    inner = Page(raw, page.file, "training")
    found = inner.take("leaders") or leaders
    if isinstance(found, dict):
        found = found.get("value")
    if found is not None and (isinstance(found, bool) or not isinstance(found, int)):
        raise inner.wrong("it wants a whole figure", "leaders")
    training = Training(
        kind=inner.text("value") or inner.text("kind") or "none",
        how=inner.text("how") or how,
        leaders=found,
        basis=inner.text("basis", "common practice"),
        source=inner.text("source") or None,
        doubt=inner.text("doubt"),
    )
    inner.done()
    return training


def _care(page: Page) -> PlantCare:
    care = PlantCare(
        id=page.needed("id"),
        do=page.needed("do"),
        from_=_when(page, "from"),
        until=_when(page, "until"),
        every=_when(page, "every"),
        minutes_per_metre=page.minutes("minutes per metre", "estimate"),
        hands=page.whole("hands", 1),
        tools=page.texts("tools"),
    )
    page.done()
    return care


def _when(page: Page, key: str) -> Sourced | None:
    """A time: a value with its unit, {days: 7}, or a word of the season."""
    raw = page.take(key)
    if isinstance(raw, dict) and len(raw) == 1:
        ((unit, figure),) = raw.items()
        if unit in {"days", "weeks", "months", "years"}:
            raw = {"value": figure, "unit": unit}
    return None if raw is None else page.as_figure(_with_basis(raw), key, "common practice")


def _with_basis(raw: object) -> object:
    return {"basis": "common practice", **raw} if isinstance(raw, dict) else raw


def _harm(page: Page) -> Harm:
    year = page.take("year")
    harm = Harm(
        kind=page.needed("kind"),
        what=page.text("what"),
        who=page.texts("who"),
        where=page.texts("where"),
        year=year if isinstance(year, int) else None,
        basis=page.text("basis", "common practice"),
        source=page.text("source") or None,
        doubt=page.text("doubt"),
    )
    page.done()
    return harm


def _other(page: Page) -> dict[str, Sourced]:
    """Figures under words that no other line of this module knows."""
    found: dict[str, Sourced] = {}
    for key in page.rest():
        value = page.raw[key]
        if isinstance(value, dict) and "basis" in value:
            found[key] = page.as_figure(page.take(key), key)
    return found
