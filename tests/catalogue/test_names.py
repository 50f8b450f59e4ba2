"""Names as people type them find the entry, or all that could be meant."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.catalogue.names import all_names, singular_forms, tidy
from plantframe.catalogue.reading import (
    entry_names,
    near,
    plants_named,
    structure,
    structures_named,
)
from plantframe.language.declarations import find_fact
from plantframe.language.files import read_input
from plantframe.plan.building import build


@pytest.mark.parametrize(
    ("typed", "entry"),
    [
        ("runner bean", "runner bean"),
        ("Runner Beans", "runner bean"),
        ("runner-beans", "runner bean"),
        ("the pole beans", "pole bean"),
        ("cucumbers", "cucumber"),
        ("climbing roses", "climbing rose"),
        ("sweet peas", "sweet pea"),
        ("hops", "hop"),
    ],
)
def test_a_plant_is_found_as_it_is_typed(typed: str, entry: str) -> None:
    assert plants_named(typed) == [entry]


@pytest.mark.parametrize("word", ["bean", "beans", "pea", "peas", "clematis"])
def test_a_word_for_several_plants_gives_them_all_to_be_asked_about(word: str) -> None:
    assert len(plants_named(word)) > 1


def test_bean_may_be_climbing_or_bush() -> None:
    assert {"pole bean", "runner bean", "bush bean"} <= set(plants_named("bean"))


@pytest.mark.parametrize(
    ("typed", "entry"),
    [
        ("net frame", "net frame"),
        ("net frames", "net frame"),
        ("net between two posts", "net frame"),
        ("teepee", "wigwam"),
        ("stakes", "stake"),
        ("A-frame", "A-frame"),
        ("a frame", "A-frame"),
        ("post and rail", "mortised fence"),
        ("post and rail fence", "mortised fence"),
        ("mesh panel on posts", "mesh panel"),
    ],
)
def test_a_structure_is_found_as_it_is_typed(typed: str, entry: str) -> None:
    assert structures_named(typed) == [entry]


def test_a_name_nobody_knows_finds_nothing_and_its_neighbours() -> None:
    assert plants_named("runer bean") == []
    assert near("runer bean", all_names("plant"))[0] == "runner bean"
    assert near("net farme", entry_names("structure"))[0] == "net frame"


def test_at_most_four_neighbours_are_named() -> None:
    assert len(near("bean", [f"bean {letter}" for letter in "abcdefgh"])) == 4
    assert near("quite other", ["runner bean"]) == []


def test_capitals_hyphens_and_spaces_do_not_part_names() -> None:
    assert tidy("  Large–Flowered   CLEMATIS ") == "large flowered clematis"
    assert tidy("lamb’s lettuce") == "lamb's lettuce"


@pytest.mark.parametrize(
    ("plural", "singular"),
    [("tomatoes", "tomato"), ("berries", "berry"), ("squashes", "squash"), ("leaves", "leaf")],
)
def test_plurals_are_made_singular_the_english_way(plural: str, singular: str) -> None:
    assert singular in singular_forms(plural)


def test_nothing_typed_names_nothing() -> None:
    assert plants_named("  ") == []
    assert singular_forms("") == ()


def test_every_name_of_a_structure_may_be_typed_as_the_kind_in_a_plan() -> None:
    """`net on posts`, `wires on a wall`: a word of place inside a name opens no place."""
    unread = []
    for entry in entry_names("structure"):
        found = structure(entry)
        assert found is not None
        block = next((one for one in found.blocks if one not in {"any", "border"}), "frame")
        for name in (found.name, *found.also):
            for tail in ("", ", in Long Bed", " on House Wall"):
                text = f"garden Hazel End, 2027\n{block} My Thing, {name}{tail}\n"
                (frame,) = build(read_input(text), date(2027, 1, 10))[0].frames.values()
                if frame.kind != found.name:
                    unread.append(f"{name}{tail}")
    assert unread == []


def test_what_an_entry_calls_its_parts_is_a_word_a_plan_may_use() -> None:
    """Sticks, pillars, hurdles: whoever reads the word on a page may type it."""
    unread = []
    for entry in entry_names("structure"):
        found = structure(entry)
        assert found is not None
        block = next((one for one in found.blocks if one not in {"any", "border"}), "frame")
        for fact in found.facts.values():
            words = tuple(fact.called.split())
            known, count = find_fact(words, block)
            if not fact.shape and (known is None or count != len(words)):
                unread.append(f"{found.name}: {fact.called}")
    assert unread == []
