"""Reads a structure's entry."""

from __future__ import annotations

from typing import TYPE_CHECKING, TypeVar

from plantframe.catalogue.entries import (
    Care,
    Carries,
    Danger,
    Fact,
    Hold,
    Late,
    Limit,
    Part,
    Place,
    Planting,
    Slot,
    Stands,
    Step,
    Structure,
    Suited,
    Wait,
)
from plantframe.catalogue.page import Page

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from plantframe.catalogue.sourced import Sourced

T = TypeVar("T")

MINUTES_BASIS = "estimate"
_OF_A_FACT = frozenset({"called", "shape", "help", "example", "sides"})


def structure_from(raw: object, file: str) -> Structure:
    """A structure from its entry as YAML gave it. Raises CatalogueError."""
    page = Page(raw, file)
    # Each figure has a basis: that of the minutes is said once for the whole entry.
    minutes = page.text("minutes are", MINUTES_BASIS)
    dangers = tuple(_danger(kind, inner) for kind, inner in page.pages("dangers"))
    stands_for = page.figure("stands for")
    if stands_for is None:
        raise page.wrong("it does not say how long it stands", "stands for")
    clear = page.page("clear")
    ground = page.page("ground")
    structure = Structure(
        name=page.needed("name"),
        also=page.texts("also"),
        part_of=page.texts("part of"),
        blocks=page.texts("block"),
        says=page.needed("is"),
        suits=_suits(page),
        stands_for=stands_for,
        life=page.figure("life"),
        fails=page.texts("fails"),
        built_by=page.text("built by", "gardener"),
        questions=page.texts("questions"),
        facts=_facts(page),
        sums=_sums(page),
        parts={name: _part(name, inner) for name, inner in page.pages("parts")},
        holds=tuple(_hold(inner) for _, inner in page.pages("holds")),
        carries=_one_or_more(page, "carries", _carries),
        stands=_stands(page),
        height=page.expression("height", "0"),
        lengthways=page.expression("lengthways", "0"),
        ground_along=ground.expression("along", "0") if ground else "0",
        ground_across=ground.expression("across", "0") if ground else "0",
        clear_front=clear.expression("front", "0") if clear else "0",
        clear_because=clear.text("because") if clear else "",
        steps=tuple(_step(inner, minutes, dangers) for _, inner in page.pages("steps")),
        late=_late(page),
        planting=_planting(page),
        down=tuple(
            _step(inner, minutes, dangers, f"down {number}")
            for number, (_, inner) in enumerate(page.pages("down"), 1)
        ),
        storage=page.text("storage"),
        care=tuple(_care(inner, minutes) for _, inner in page.pages("care")),
        dangers=dangers,
        limits=_one_or_more(page, "limits", _limit),
        reviewed=page.text("reviewed"),
    )
    for inner_page in (clear, ground):
        if inner_page:
            inner_page.done()
    page.done()
    return structure


def _facts(page: Page) -> Mapping[str, Fact]:
    facts = page.page("facts")
    return {word: _fact(word, _slots_of(facts, word)) for word in facts.raw} if facts else {}


def _slots_of(facts: Page, word: str) -> Page:
    """The slots under a fact's word; a list there is what the fact itself is taken to be."""
    raw = facts.take(word)
    slots = raw if isinstance(raw, dict) else {"default": raw}
    return Page(slots, facts.file, *facts.path, word)


def _fact(word: str, page: Page) -> Fact:
    called, shape, says = page.text("called", word), page.text("shape"), page.text("help")
    example, sides = page.text("example"), page.texts("sides")
    slots: dict[str, Slot] = {}
    if "basis" in page.raw:  # the fact is itself one value
        value = {key: one for key, one in page.raw.items() if key not in _OF_A_FACT}
        slots[""] = (page.as_figure(value, word),)
        return Fact(word, called, shape, says, example, sides, slots)
    for key in page.rest():
        slot = "" if key == "default" else key
        slots[slot] = _slot(page, key)
    page.done()
    return Fact(word, called, shape, says, example, sides, slots)


def _slot(page: Page, key: str) -> Slot:
    value = page.take(key)
    tried = value if isinstance(value, list) else [value]
    return tuple(
        str(one)
        if isinstance(one, str | int | float) and not isinstance(one, bool)
        else page.as_figure(one, key)
        for one in tried
    )


def _sums(page: Page) -> Mapping[str, str]:
    inner = page.page("sums")
    return {name: inner.expression(name) for name in inner.raw} if inner else {}


def _part(name: str, page: Page) -> Part:
    part = Part(
        name=name,
        of=page.needed("of"),
        count=page.expression("count", "1"),
        section=page.text("section"),
        length=page.expression("length"),
        width=page.expression("width"),
        thickness=page.expression("thickness"),
        size=page.text("size"),
        wood=page.text("wood"),
        cut=page.text("cut"),
        places=_one_or_more(page, "place", _place),
    )
    page.done()
    return part


def _place(page: Page) -> Place:
    def ends(key: str) -> tuple[str, str]:
        value = page.take(key)
        if isinstance(value, list) and len(value) == 2:
            return str(value[0]), str(value[1])
        if value is None or isinstance(value, list | dict | bool):
            raise page.wrong("it wants a sum, or a start and an end", key)
        return str(value), str(value)

    place = Place(page.text("view", "front"), ends("x"), ends("y"), page.text("as", "line"))
    page.done()
    return place


def _hold(page: Page) -> Hold:
    thickness = _sum_or_figure(page, "thickness")
    if thickness is None:
        raise page.wrong("it does not say how thick it is", "thickness")
    hold = Hold(
        part=page.needed("part"),
        thickness=thickness,
        runs=page.needed("runs"),
        every=_sum_or_figure(page, "every"),
        when=page.expression("if"),
    )
    page.done()
    return hold


def _sum_or_figure(page: Page, key: str) -> str | Sourced | None:
    value = page.take(key)
    if value is None:
        return None
    return value if isinstance(value, str) else page.as_figure(value, key)


def _carries(page: Page) -> Carries:
    carries = Carries(
        by=page.needed("by"),
        when=page.expression("if"),
        section=page.text("section"),
        span=page.expression("span"),
        wide=page.expression("wide"),
        tall=page.expression("tall"),
        round=page.expression("round"),
        count=page.expression("count", "1"),
        bears=page.figure("bears"),
        strained=page.expression("strained"),
        ends=page.expression("ends"),
    )
    page.done()
    return carries


def _stands(page: Page) -> Stands:
    inner = page.page("stands")
    if inner is None:
        raise page.wrong("it does not say how it stands", "stands")
    stands = Stands(
        by=inner.text("by"),
        held=inner.needed("held"),
        loads=inner.needed("loads"),
        leafy_from=inner.expression("leafy from", "0"),
        leafy_to=inner.expression("leafy to", "0"),
        metres=inner.expression("metres", "0"),
        area=inner.expression("area"),
        shares=inner.expression("shares", "1"),
        push=inner.figure("push"),
        down=inner.expression("down", "0"),
        least_down=inner.figure("least down"),
    )
    inner.done()
    return stands


def _step(page: Page, minutes: str, dangers: tuple[Danger, ...], named: str = "") -> Step:
    name = page.text("id", named)
    wait = page.page("wait")
    step = Step(
        id=name,
        do=page.needed("do"),
        after=page.texts("after"),
        at=page.text("at", "there"),
        minutes=page.minutes("minutes", minutes),
        per=page.expression("per", "1"),
        hands=page.whole("hands", 1),
        tools=page.texts("tools"),
        power=page.flag("power"),
        alone=page.text("alone"),
        not_yet=page.text("not yet"),
        wait=_wait(wait) if wait else None,
        stop=page.flag("stop"),
        when=page.expression("if"),
        season=page.text("season"),
        dangers=tuple(danger.kind for danger in dangers if name in danger.at),
    )
    page.done()
    return step


def _wait(page: Page) -> Wait:
    for_ = page.needed("for")
    figures = {key: page.take(key) for key in page.rest()}
    return Wait(page.as_figure({"unit": "days", **figures}, "wait"), for_)


def _care(page: Page, minutes: str) -> Care:
    care = Care(
        id=page.needed("id"),
        do=page.needed("do"),
        every=page.figure("every"),
        season=page.text("season"),
        event=page.text("event"),
        minutes=page.minutes("minutes", minutes),
        per=page.expression("per", "1"),
        hands=page.whole("hands", 1),
        tools=page.texts("tools"),
        needs=page.texts("needs"),
        when=page.expression("if"),
    )
    page.done()
    return care


def _danger(kind: str, page: Page) -> Danger:
    danger = Danger(kind, page.needed("says"), page.texts("at"))
    page.done()
    return danger


def _late(page: Page) -> Late:
    inner = page.page("late")
    if inner is None:
        raise page.wrong("it names no step that cannot be done late", "late")
    late = Late(inner.needed("step"), inner.needed("because"))
    inner.done()
    return late


def _limit(page: Page) -> Limit:
    instead = page.page("instead")
    limit = Limit(
        fact=page.needed("fact"),
        what=page.needed("what"),
        because=page.needed("because"),
        least=page.expression("least"),
        most=page.expression("most"),
        even=page.flag("even"),
        when=page.expression("if"),
        instead=instead.needed("fact") if instead else "",
        instead_to=instead.expression("to") if instead else "",
    )
    if instead:
        instead.done()
    page.done()
    return limit


def _planting(page: Page) -> Planting:
    inner = page.page("plant")
    if inner is None:
        return Planting()
    planting = Planting(
        own_order=inner.flag("by its own order"),
        after=inner.texts("after"),
        before=inner.texts("before"),
        says=inner.text("says"),
    )
    inner.done()
    return planting


def _suits(page: Page) -> tuple[Suited, ...]:
    value = page.take("for") or []
    if not isinstance(value, list):
        raise page.wrong("it wants a list of plants", "for")
    suits: list[Suited] = []
    for one in value:
        if isinstance(one, str):
            suits.append(Suited(one))
            continue
        inner = Page(one, page.file, *page.path, "for")
        suits.append(Suited(inner.needed("plant"), inner.figure("bay"), inner.text("with")))
        inner.done()
    return tuple(suits)


def _one_or_more(page: Page, key: str, read: Callable[[Page], T]) -> tuple[T, ...]:
    value = page.take(key)
    if value is None:
        return ()
    each = value if isinstance(value, list) else [value]
    return tuple(read(Page(one, page.file, *page.path, key)) for one in each)
