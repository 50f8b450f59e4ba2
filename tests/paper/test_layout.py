"""Fitting sheets on pages: one page each, nothing lost, dangers on every page."""

from __future__ import annotations

import pytest

from plantframe.catalogue import reading as catalogue
from plantframe.paper.layout import A4, LETTER, Paper, pages_of
from plantframe.paper.sheet import BUILDING, Sheet
from tests.paper.gardens import BED, HEAD, KINDS, NET, sheets

LONG = (
    HEAD
    + "frame Odd Thing\n  own design\n"
    + "".join(
        f"  step fit part number {count} of the odd thing on to the one before, "
        f"and see that it holds, 2 hands\n"
        for count in range(1, 70)
    )
)


def steps_on(sheet: Sheet, paper: Paper, *, large: bool = False) -> list[int]:
    return [row.number for page in pages_of(sheet, paper, large=large) for row in page.rows]


@pytest.mark.parametrize("paper", [A4, LETTER], ids=lambda paper: paper.name)
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_has_each_sheet_on_one_page(kind: str, paper: Paper) -> None:
    structure = catalogue.structure(kind)
    assert structure is not None
    block = "frame" if "any" in structure.blocks else structure.blocks[0]
    plant = structure.suits[0].plant if structure.suits else "runner bean"
    text = f"{HEAD}{BED}{block} Thing, {kind}, in Long Bed\n  grow {plant}, 6 plants\n"
    for sheet in sheets(text, "Thing"):
        assert len(pages_of(sheet, paper)) == 1, sheet.kind


def test_what_is_too_long_for_a_page_goes_on_and_loses_no_step() -> None:
    (sheet,) = sheets(LONG, "Odd Thing", BUILDING)
    pages = pages_of(sheet, A4)
    assert len(pages) > 1
    assert {page.of for page in pages} == {len(pages)}
    assert steps_on(sheet, A4) == [row.number for row in sheet.rows]


def test_large_type_is_larger_and_loses_no_step_either() -> None:
    (sheet,) = sheets(HEAD + BED + NET, "Bean Net", BUILDING)
    small, large = pages_of(sheet, A4)[0], pages_of(sheet, A4, large=True)[0]
    assert large.type_pt >= 13
    assert large.type_pt > small.type_pt
    assert steps_on(sheet, A4, large=True) == [row.number for row in sheet.rows]


@pytest.mark.parametrize("large", [False, True])
def test_each_page_has_the_cautions_of_its_own_steps(large: bool) -> None:
    (sheet,) = sheets(HEAD + BED + NET, "Bean Net", BUILDING)
    for page in pages_of(sheet, A4, large=large):
        shown = {danger.says for danger in page.dangers}
        for row in page.rows:
            for danger in sheet.dangers:
                assert row.number not in danger.rows or danger.says in shown
