"""Words for what is bought and not sawn."""

from __future__ import annotations

import itertools

import pytest

from plantframe.catalogue.reading import entry_names, structure
from plantframe.catalogue.wares import part_words, sized, ware
from plantframe.catalogue.workings import work


@pytest.mark.parametrize(
    ("part", "of", "size", "says"),
    [
        ("rail screw", "screw", "coated, 75 mm", "screws, coated, 75 mm"),
        ("fixing", "screw", "wall screws with plugs", "wall screws with plugs"),
        (
            "strainer",
            "strainer",
            "one at one end of each wire",
            "strainers, one at one end of each wire",
        ),
        ("strainer", "strainer", "straining bolts", "straining bolts"),
        ("cap", "fitting", "cane caps", "cane caps"),
        ("weight", "peg", "bags of soil, or stones", "weights, bags of soil, or stones"),
        ("pane", "pane", "glass", "panes, glass"),
        ("hoop", "steel", "", "hoops"),
        ("mesh", "mesh", "", "pieces of mesh"),
    ],
)
def test_a_thing_is_asked_for_by_its_name_and_only_once(
    part: str, of: str, size: str, says: str
) -> None:
    assert ware(part, of, size) == says


def test_one_of_a_thing_is_said_as_one() -> None:
    assert part_words(1, "cap", "fitting", "cane caps") == "1 cane cap"
    assert part_words(1, "latch", "fitting", "latch") == "1 latch"
    assert part_words(1, "soil", "fill", "good potting soil") == "good potting soil"


def test_sizes_are_said_in_the_measure_of_the_garden() -> None:
    """2½ in is the trade's size for 65 mm, 3 in for 75 mm (common practice)."""
    assert sized("coated, 65 mm", imperial=True) == "coated, 2½ in (65 mm)"
    assert sized("3 in (75 mm)", imperial=True) == "3 in (75 mm)"
    assert sized("3 in (75 mm)", imperial=False) == "75 mm"
    assert sized("wire pegs, 20 cm", imperial=True) == "wire pegs, 8 in (20 cm)"


@pytest.mark.parametrize("name", entry_names("structure"))
def test_no_part_of_a_structure_is_told_twice_or_without_its_name(name: str) -> None:
    entry = structure(name)
    assert entry is not None
    for pieces in work(entry, {}).pieces.values():
        part = pieces.part
        said = part_words(pieces.count, part.name, part.of, pieces.size)
        words = said.replace(",", "").split()
        assert len(words) < 2 or all(a != b for a, b in itertools.pairwise(words))
        assert not said.startswith(("1 a ", "1 an ", "1 one ")), said
