"""A real browser prints the sheets: one page each, no text cut off, fonts within the file."""

from __future__ import annotations

import html
import json
import re
import subprocess
import unicodedata
from typing import TYPE_CHECKING, Any

import pytest
from pypdf import PdfReader

from plantframe.jobs.listing import jobs_of
from plantframe.paper.book import book
from plantframe.paper.labels import labels_sheet
from plantframe.paper.layout import A4, LETTER, Page, Paper, pages_of
from plantframe.paper.neighbour import neighbour_sheet
from plantframe.paper.pages import sheets_page
from plantframe.paper.sheets import ALL_KINDS, season_sheets
from tests.paper.gardens import BED, DEMOS, HEAD, NET, answers, demo

if TYPE_CHECKING:
    from datetime import date
    from pathlib import Path

    from plantframe.answers.answers import Answers

pytestmark = pytest.mark.browser

MM_PER_POINT = 25.4 / 72
QUIET = (
    *("--headless", "--no-sandbox", "--disable-gpu", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
)
# Put into a copy of a page by this test alone: the product has no script. Tells every element
# whose content is wider or higher than itself, and every section wider than the page.
LOOK = """<script>
window.onload = () => {
  const cut = [];
  document.querySelectorAll("body *").forEach((one) => {
    if (one.closest("svg")) return;
    if (one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== "inline")
      cut.push(one.className + ": " + one.textContent.slice(0, 60));
  });
  document.querySelectorAll("svg").forEach((svg) => {
    const whole = svg.getBoundingClientRect();
    svg.querySelectorAll("text").forEach((text) => {
      const own = text.getBoundingClientRect();
      if (own.left < whole.left - 2 || own.right > whole.right + 2 || own.top < whole.top - 2
          || own.bottom > whole.bottom + 2) cut.push("drawing: " + text.textContent);
    });
  });
  document.body.innerHTML = "<pre>" + JSON.stringify(cut) + "</pre>";
};
</script></body>"""


def run(browser: str, folder: Path, *words: str) -> str:
    done = subprocess.run(
        [browser, *QUIET, f"--user-data-dir={folder / 'browser'}", *words],
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def printed(browser: str, folder: Path, text: str) -> PdfReader:
    page, pdf = folder / "page.html", folder / "page.pdf"
    page.write_text(text, encoding="utf-8")
    run(browser, folder, "--no-pdf-header-footer", f"--print-to-pdf={pdf}", page.as_uri())
    return PdfReader(pdf)


def cut_off(browser: str, folder: Path, text: str, width: int) -> list[str]:
    page = folder / "looked-at.html"
    page.write_text(text.replace("</body>", LOOK), encoding="utf-8")
    size = f"--window-size={width},1200"
    told = run(browser, folder, size, "--virtual-time-budget=4000", "--dump-dom", page.as_uri())
    found = re.search(r"<pre>(.*?)</pre>", told, re.DOTALL)
    assert found, "the page was not looked at"
    return list(json.loads(html.unescape(found.group(1))))


def all_pages(found: Answers, paper: Paper, *, large: bool = False) -> list[Page]:
    jobs = jobs_of(found.season)
    extra = (neighbour_sheet(found, jobs), labels_sheet(found))
    sheets = [*season_sheets(found, jobs, ALL_KINDS), *(one for one in extra if one is not None)]
    return [page for sheet in sheets for page in pages_of(sheet, paper, large=large)]


def words(text: str) -> str:
    """Letters and figures alone: a printed line may break anywhere else."""
    return re.sub(r"[\W_]+", "", unicodedata.normalize("NFKC", text))


@pytest.mark.parametrize(
    ("paper", "large"), [(A4, False), (LETTER, False), (A4, True)], ids=["A4", "letter", "large"]
)
@pytest.mark.parametrize(("name", "today"), DEMOS)
def test_every_sheet_of_the_demos_is_one_page_with_all_its_words(
    name: str, today: date, paper: Paper, large: bool, browser_path: str, tmp_path: Path
) -> None:
    pages = all_pages(demo(name, today), paper, large=large)
    if not large:
        assert {page.of for page in pages} == {1}
    reader = printed(browser_path, tmp_path, sheets_page("sheets", pages, paper))
    assert len(reader.pages) == len(pages)
    for page, sheet in zip(reader.pages, pages, strict=True):
        says = words(page.extract_text())
        assert words(sheet.sheet.title) in says
        for row in sheet.rows:
            assert words(row.says) in says
        for danger in sheet.dangers:
            assert words(danger.says) in says


@pytest.mark.parametrize(("paper", "sides"), [(A4, (210, 297)), (LETTER, (216, 279))])
def test_pages_have_the_size_of_their_paper(
    paper: Paper, sides: tuple[int, int], browser_path: str, tmp_path: Path
) -> None:
    pages = all_pages(answers(HEAD + BED + NET), paper)
    box = printed(browser_path, tmp_path, sheets_page("x", pages, paper)).pages[0].mediabox
    size = (float(box.width) * MM_PER_POINT, float(box.height) * MM_PER_POINT)
    assert size == pytest.approx(sides, abs=1.0)


def test_fonts_are_within_the_file(browser_path: str, tmp_path: Path) -> None:
    pages = all_pages(answers(HEAD + BED + NET), A4)
    reader = printed(browser_path, tmp_path, sheets_page("x", pages, A4))
    fonts = [
        font.get_object()
        for page in reader.pages
        for font in page.get("/Resources", {}).get_object()["/Font"].get_object().values()
    ]
    assert fonts
    assert [font["/BaseFont"] for font in fonts if not _within(font)] == []


def _within(font: dict[str, Any]) -> bool:
    """Whether the file holds the letters themselves: a font file, or letters drawn one by one."""
    if font["/Subtype"] == "/Type3":
        return True
    parts = [font, *(one.get_object() for one in font.get("/DescendantFonts", []))]
    described = [
        part["/FontDescriptor"].get_object() for part in parts if "/FontDescriptor" in part
    ]
    return any(name.startswith("/FontFile") for one in described for name in one)


@pytest.mark.parametrize("width", [900, 500], ids=["a screen", "a phone"])
@pytest.mark.parametrize(("name", "today"), DEMOS)
def test_no_text_of_the_book_is_cut_off(
    name: str, today: date, width: int, browser_path: str, tmp_path: Path
) -> None:
    assert cut_off(browser_path, tmp_path, book(demo(name, today), A4), width) == []


def test_the_book_prints_its_contents_first(browser_path: str, tmp_path: Path) -> None:
    name, today = DEMOS[0]
    reader = printed(browser_path, tmp_path, book(demo(name, today), A4))
    assert "Contents" in reader.pages[0].extract_text()
    assert all(page.extract_text().strip() for page in reader.pages)


def test_names_with_signs_of_a_page_print_as_they_were_typed(
    browser_path: str, tmp_path: Path
) -> None:
    text = (HEAD + BED + NET).replace("Bean Net", "<h1>Bean</h1> & Net")
    found = answers(text)
    reader = printed(browser_path, tmp_path, sheets_page("x", all_pages(found, A4), A4))
    assert "<h1>Bean</h1> & Net" in reader.pages[0].extract_text()
