"""Phrases: dates, ranges, counts, money, places on the globe, names in quotes."""

from __future__ import annotations

import pytest

from plantframe.language.phrases import phrase, read_phrase
from plantframe.language.values import (
    Bearing,
    Cultivar,
    Day,
    Measure,
    Money,
    Nail,
    Number,
    Quoted,
    Season,
    Slashed,
    Span,
    Word,
)


def one(typed: str) -> object:
    """The one value of a phrase."""
    (item,) = read_phrase(typed)[0]
    return item.value


DAYS = [
    ("18 May", (18, 5, None, "")),
    ("18 May 2027", (18, 5, 2027, "")),
    ("May 18", (18, 5, None, "")),
    ("May 18th", (18, 5, None, "")),
    ("May 18th 2027", (18, 5, 2027, "")),
    ("18th May", (18, 5, None, "")),
    ("18th of May", (18, 5, None, "")),
    ("1st June", (1, 6, None, "")),
    ("2nd of june", (2, 6, None, "")),
    ("Sept. 30", (30, 9, None, "")),
    ("30 Sep", (30, 9, None, "")),
    ("3-March", (3, 3, None, "")),
    ("18-May-2027", (18, 5, 2027, "")),
    ("18-May-27", (18, 5, 2027, "")),
    ("2027-05-18", (18, 5, 2027, "")),  # ISO 8601
    ("2027-05", (None, 5, 2027, "")),  # ISO 8601
    ("18.5.2027", (18, 5, 2027, "")),  # DIN 5008
    ("18.05.", (18, 5, None, "")),  # DIN 5008
    ("May", (None, 5, None, "")),
    ("May 2027", (None, 5, 2027, "")),
    ("early May", (None, 5, None, "early")),
    ("mid May", (None, 5, None, "mid")),
    ("mid-May", (None, 5, None, "mid")),
    ("late in May", (None, 5, None, "late")),
    ("middle of May", (None, 5, None, "mid")),
    ("end of May", (None, 5, None, "end")),
    ("end May", (None, 5, None, "end")),
    ("start of May 2027", (None, 5, 2027, "start")),
    ("beginning of may", (None, 5, None, "start")),
]


@pytest.mark.parametrize(("typed", "day"), DAYS)
def test_a_date_is_read_in_every_form(
    typed: str, day: tuple[int | None, int, int | None, str]
) -> None:
    found = one(typed)
    assert isinstance(found, Day)
    assert (found.day, found.month, found.year, found.part) == day


SPANS = [
    ("10 to 20 July", (10, 7), (20, 7)),
    ("10-20 July", (10, 7), (20, 7)),
    ("10–20 July", (10, 7), (20, 7)),
    ("10 – 20 July", (10, 7), (20, 7)),
    ("10 till 20 July", (10, 7), (20, 7)),
    ("10th to 20th July", (10, 7), (20, 7)),
    ("July 10 to 20", (10, 7), (20, 7)),
    ("24 Dec to 6 Jan", (24, 12), (6, 1)),
    ("Dec 24 - Jan 6", (24, 12), (6, 1)),
    ("1 October through 15 April", (1, 10), (15, 4)),
    ("June to September", (None, 6), (None, 9)),
    ("June-September", (None, 6), (None, 9)),
    ("Jun–Sep", (None, 6), (None, 9)),
    ("mid to late May", (None, 5), (None, 5)),
]


@pytest.mark.parametrize(("typed", "first", "last"), SPANS)
def test_a_span_of_dates_is_read_with_every_sign_between(
    typed: str, first: tuple[int | None, int], last: tuple[int | None, int]
) -> None:
    found = one(typed)
    assert isinstance(found, Span)
    assert isinstance(found.low, Day)
    assert isinstance(found.high, Day)
    assert (found.low.day, found.low.month) == first
    assert (found.high.day, found.high.month) == last


@pytest.mark.parametrize(
    ("typed", "low", "high"),
    [
        ("15 to 30 kg", 15.0, 30.0),
        ("15-30 kg", 15.0, 30.0),
        ("15–30 kg", 15.0, 30.0),
        ("1 m to 4 m", 1.0, 4.0),
        ("4 to 6 h", 4.0, 6.0),
        ("1 ft – 2 ft", 0.3048, 0.6096),
    ],
)
def test_a_span_of_measures_gives_both_ends_the_unit(typed: str, low: float, high: float) -> None:
    found = one(typed)
    assert isinstance(found, Span)
    assert isinstance(found.low, Measure)
    assert isinstance(found.high, Measure)
    assert (found.low.value, found.high.value) == pytest.approx((low, high))


def test_a_season_runs_over_new_year() -> None:
    for typed in ("2026-27", "2026/27", "2026–27", "2026-2027"):
        found = one(typed)
        assert isinstance(found, Season)
        assert (found.first, found.second) == (2026, 2027)


def test_the_turn_of_a_century_is_a_season_too() -> None:
    found = one("1999-00")
    assert isinstance(found, Season)
    assert (found.first, found.second) == (1999, 2000)


def test_several_years_are_a_span_or_a_list() -> None:
    span = one("2023-2026")
    assert isinstance(span, Span)
    assert [item.value for item in read_phrase("2024,2025")[0]] == [
        Number(2024.0, "2024"),
        Number(2025.0, "2025"),
    ]


def test_a_stroke_between_figures_may_be_a_date() -> None:
    assert one("5/6") == Slashed((5, 6), "5/6")
    assert one("18/5") == Slashed((18, 5), "18/5")
    assert one("31/12") == Slashed((31, 12), "31/12")
    assert one("3/11/2026") == Slashed((3, 11, 2026), "3/11/2026")


@pytest.mark.parametrize(
    ("typed", "amount"),
    [("£17.60", 17.6), ("$4", 4.0), ("€ 3,50", 3.5), ("3,50 €", 3.5), ("85p", 0.85)],
)
def test_a_price_is_read_with_its_sign_on_either_side(typed: str, amount: float) -> None:
    found = one(typed)
    assert isinstance(found, Money)
    assert found.amount == pytest.approx(amount)


@pytest.mark.parametrize(
    ("typed", "degrees"),
    [("52°", 52.0), ("52.1°", 52.1), ("52°06′", 52.1), ("1°24'", 1.4), ("52°06′36″", 52.11)],
)
def test_degrees_and_minutes_become_degrees(typed: str, degrees: float) -> None:
    found = one(typed)
    assert isinstance(found, Bearing)
    assert found.degrees == pytest.approx(degrees)


def test_a_nail_has_its_penny_size() -> None:
    assert one("20d") == Nail(20, "20d")


@pytest.mark.parametrize("typed", ["20d ×5", "20d x5", "20d × 5"])
def test_a_times_sign_before_a_figure_counts(typed: str) -> None:
    nail, sign, count = (item.value for item in read_phrase(typed)[0])
    assert isinstance(nail, Nail)
    assert sign == Word("×")
    assert isinstance(count, Number)
    assert count.value == 5


@pytest.mark.parametrize(("typed", "count"), [("a dozen", 12), ("two dozen", 24), ("a couple", 2)])
def test_dozens_are_counted(typed: str, count: int) -> None:
    found = one(typed)
    assert isinstance(found, Number)
    assert found.value == count


# The International Code of Nomenclature for Cultivated Plants sets a cultivar in single quotes.
@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("'Tall Piper'", "Tall Piper"),
        ("‘Tall Piper’", "Tall Piper"),
        ("'Gardener's Apricot'", "Gardener's Apricot"),
        ("'Bees' Choice'", "Bees' Choice"),
    ],
)
def test_a_cultivar_stands_in_single_quotes(typed: str, name: str) -> None:
    assert one(typed) == Cultivar(name, typed)


def test_double_quotes_are_taken_round_a_cultivar_too() -> None:
    assert one('"Bees\' Choice"') == Quoted("Bees' Choice", '"Bees\' Choice"')
    assert one("“Bees' Choice”") == Quoted("Bees' Choice", "“Bees' Choice”")


def test_feet_after_a_cultivar_are_feet() -> None:
    name, feet = (item.value for item in read_phrase("'Tall Piper' 6'")[0])
    assert name == Cultivar("Tall Piper", "'Tall Piper'")
    assert isinstance(feet, Measure)
    assert feet.value == pytest.approx(1.8288)


def test_a_depth_after_a_length_is_not_its_inches() -> None:
    length, depth, _ = (item.value for item in read_phrase("8 ft 18 in down")[0])
    assert isinstance(length, Measure)
    assert isinstance(depth, Measure)
    assert (length.value, depth.value) == pytest.approx((2.4384, 0.4572))


@pytest.mark.parametrize(
    ("typed", "slip"),
    [
        ("1,200 mm", "two-readings"),
        ("1.200 m", "two-readings"),
        ("2.400 m", "two-readings"),
        ("2x2,8 ft", "two-readings"),
        ("6 ft 2", "feet-and-what"),
        ("6'2", "feet-and-what"),
        ("1 m 20", "metres-and-what"),
        ("2,4 m", "decimal-comma"),
    ],
)
def test_a_figure_that_can_be_meant_two_ways_is_a_doubt(typed: str, slip: str) -> None:
    _, doubts = read_phrase(typed)
    assert [(doubt.slip, doubt.at, doubt.text) for doubt in doubts] == [(slip, 0, typed)]


@pytest.mark.parametrize("typed", ["0.125 m", "1.125 in", "2.40 m", "1200 mm", "0,125 m"])
def test_three_places_that_can_be_meant_one_way_are_no_doubt(typed: str) -> None:
    _, doubts = read_phrase(typed)
    assert {doubt.slip for doubt in doubts} <= {"decimal-comma"}


def test_july_36_degrees_is_a_month_and_a_warmth() -> None:
    month, warmth = (item.value for item in read_phrase("July 36 C")[0])
    assert isinstance(month, Day)
    assert month.day is None
    assert isinstance(warmth, Measure)
    assert warmth.value == 36


def test_a_year_before_a_small_word_is_no_length() -> None:
    values = [item.value for item in read_phrase("pea 2025 in Long Bed")[0]]
    assert values[1] == Number(2025.0, "2025")
    assert values[2] == Word("in")


def test_the_end_of_a_bed_is_no_date() -> None:
    assert all(isinstance(item.value, Word) for item in read_phrase("north end of Long Bed")[0])


def test_people_may_have_the_names_of_months_joined_to_others() -> None:
    assert one("May-Ann") == Word("May-Ann")
    assert one("May's") == Word("May's")


def test_every_item_knows_where_it_stands() -> None:
    typed = "18\u00a0in down,  6'6\" x 16 ft – ¾″"
    for item in read_phrase(typed)[0]:
        assert typed[item.at : item.end].strip() == typed[item.at : item.end]
        assert typed[item.at : item.end]


def test_a_phrase_nobody_can_parse_still_gives_its_words() -> None:
    found = phrase("2 x x 4", 3)
    assert found.column == 3
    assert found.items


@pytest.mark.parametrize("typed", ["9" * 400, "9" * 400 + " ft", "1/" + "0" * 30, "9" * 400 + "d"])
def test_a_figure_beyond_all_gardens_is_read_as_words_or_as_it_is(typed: str) -> None:
    items, _ = read_phrase(typed)
    assert items
    for item in items:
        value = getattr(item.value, "value", 0.0)
        assert value < float("inf")
