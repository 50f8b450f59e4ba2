"""The season's book: one file by itself, everything in it, nothing a plan says taken for a page."""

from __future__ import annotations

import re
from html.parser import HTMLParser

import pytest

from plantframe.paper.book import book
from plantframe.paper.layout import A4, LETTER
from tests.paper.gardens import BED, DEMOS, HEAD, NET, answers, demo

NASTY = (
    HEAD.replace("Hazel End", "Hazel <script>alert</script> & End")
    + BED.replace("Long Bed", "<b>Long</b> 'Bed'")
    + NET.replace("Long Bed", "<b>Long</b> 'Bed'").replace("Bean Net", "Bean \x07<img src=x> Net")
    + "note <i>never</i> again\n"
)


class Page(HTMLParser):
    """The tags, anchors and links of a page."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.loads: list[str] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        told = dict(attrs)
        self.ids += [told["id"] or ""] if "id" in told else []
        self.links += [told["href"] or ""] if "href" in told and tag == "a" else []
        self.loads += [told[name] or "" for name in ("src", "data", "action") if name in told]
        if tag in {"link", "iframe", "object", "script", "img", "form"}:
            self.loads.append(tag)


@pytest.mark.parametrize(("name", "today"), DEMOS)
def test_it_needs_no_network_and_no_script(name: str, today: object) -> None:
    text = book(demo(name, today), A4)  # type: ignore[arg-type]
    page = Page(text)
    assert page.loads == []
    assert "url(" not in text
    assert "@import" not in text


@pytest.mark.parametrize(("name", "today"), DEMOS)
def test_every_line_of_the_contents_leads_somewhere(name: str, today: object) -> None:
    page = Page(book(demo(name, today), A4))  # type: ignore[arg-type]
    assert len(page.links) > 10
    assert {link.removeprefix("#") for link in page.links} <= set(page.ids)
    assert len(set(page.ids)) == len(page.ids)


def test_the_same_plan_and_day_give_the_same_bytes() -> None:
    name, today = DEMOS[0]
    assert book(demo(name, today), LETTER) == book(demo(name, today), LETTER)


def test_names_with_signs_of_a_page_are_printed_as_they_were_typed() -> None:
    text = book(answers(NASTY), A4)
    page = Page(text)
    assert not {"script", "img", "i"} & set(page.tags)
    assert "Hazel &lt;script&gt;alert&lt;/script&gt; &amp; End" in text
    assert not re.search(r"[\x00-\x08\x0b-\x1f\x7f]", text)


def test_a_plan_of_nothing_still_makes_a_book() -> None:
    assert "Contents" in book(answers(""), A4)


def test_all_jobs_warnings_and_sheets_are_in_it() -> None:
    found = answers(HEAD + BED + NET)
    text = book(found, A4)
    assert "Weave the bar through the top row of meshes" in text
    assert "Bean Net, building" in text
    assert text.count('class="sheet"') >= 4


def test_work_for_any_time_stands_before_what_waits_for_a_gale() -> None:
    name, today = DEMOS[0]
    page = book(demo(name, today), A4)
    last = page[page.index("Any time, or when") :]
    assert last.index("Plant late clematis") < last.index("after a gale")
