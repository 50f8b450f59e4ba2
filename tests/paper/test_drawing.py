"""A drawing as SVG: sizes on paper, black on white, text that can be selected."""

from __future__ import annotations

import math
import xml.etree.ElementTree as ET

import pytest

from plantframe.paper.drawing import Drawing, hatching, stacked

SVG = "{http://www.w3.org/2000/svg}"


def drawn() -> Drawing:
    drawing = Drawing(50.0, 20.0)
    drawing.line((0.0, 0.0), (10.0, 5.0))
    drawing.text((1.0, 2.0), 'Mum\'s <Bed> & "more"')
    drawing.hatch([(0, 0), (10, 0), (10, 10), (0, 10)], 2.0, 45.0)
    return drawing


def _root(svg: str) -> ET.Element:
    return ET.fromstring(svg)  # noqa: S314


def test_it_is_as_large_on_paper_as_it_says() -> None:
    root = _root(drawn().svg("Test"))
    assert (root.get("width"), root.get("height")) == ("50mm", "20mm")
    assert root.get("viewBox") == "0 0 50 20"


def test_a_name_with_signs_of_a_page_is_text_and_nothing_else() -> None:
    root = _root(drawn().svg("<b>&"))
    assert [one.text for one in root.iter(f"{SVG}text")] == ['Mum\'s <Bed> & "more"']
    assert root.findtext(f"{SVG}title") == "<b>&"


def test_all_ink_is_black_and_all_paper_white() -> None:
    root = _root(drawn().svg("Test"))
    inks = {one.get(name) for one in root.iter() for name in ("fill", "stroke")} - {None}
    assert inks <= {"#000", "#fff", "none"}


def test_a_file_of_its_own_says_who_made_it_and_a_piece_of_a_page_does_not() -> None:
    assert "made by plantframe" in drawn().svg("Test")[:400]
    assert "made by" not in drawn().svg("Test", alone=False)


@pytest.mark.parametrize("lean", [0.0, 45.0, 90.0, 135.0])
def test_hatching_stays_within_its_figure(lean: float) -> None:
    lines = hatching([(0, 0), (8, 0), (8, 4), (0, 4)], 1.0, lean)
    assert lines
    for end in [point for line in lines for point in line]:
        assert -1e-9 <= end[0] <= 8 + 1e-9
        assert -1e-9 <= end[1] <= 4 + 1e-9


def test_hatching_of_a_square_is_as_long_as_its_area_over_the_step() -> None:
    lines = hatching([(0, 0), (20, 0), (20, 20), (0, 20)], 0.5, 30.0)
    assert sum(math.dist(*line) for line in lines) == pytest.approx(20 * 20 / 0.5, rel=0.01)


def test_stacked_drawings_stand_under_each_other() -> None:
    whole = stacked([Drawing(30, 10), Drawing(40, 5)], 2.0)
    assert (whole.width_mm, whole.height_mm) == (40, 17)
