"""What was settled by trying it on real typing: one test for each way of writing."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.language.files import read_input
from plantframe.language.slots import Section, Spot, When
from plantframe.language.values import Measure, Nail, Number, Season, Span, Word
from plantframe.plan.building import build
from tests.language.reading import all_slips, block, day, fact, facts, plain, read, said, slips


# -- sheds and yards --------------------------------------------------------------------------
@pytest.mark.parametrize(
    ("line", "under", "count", "words"),
    [
        ("6 posts 2x2, 8 ft", "shed", 6, "posts"),
        ("2 @ 2x4, 6'", "shed", 2, ""),
        ("12 off 2x2, 8 ft", "shed", 12, ""),
        ("9 nails 20d", "shed", 9, "nails"),
        ("4 of 2x4, 8 ft", "yard", 4, ""),
    ],
)
def test_a_shed_line_that_starts_with_a_figure_is_a_count_then_anything(
    line: str, under: str, count: int, words: str
) -> None:
    found = fact(line, under)
    assert found.word == "item"
    assert said(found)["count"] == count
    assert said(found).get("stuff", "") == words


def test_a_shed_line_may_name_a_thing_that_is_a_fact_word_elsewhere() -> None:
    found = fact("net 5 ft x 20 ft, mesh 4 in", "shed")
    assert found.word == "item"
    assert said(found) == {"stuff": "net", "size": (1.524, 6.096), "mesh": 0.1016}


# -- crops ------------------------------------------------------------------------------------
def test_grow_twice_in_a_block_is_two_crops() -> None:
    text = "frame Pea Net, net frame\n  grow peas, sow mid March\n  grow sweet pea, sow April\n"
    found = read(text)
    assert [one.word for one in found.blocks[0].facts] == ["grow", "grow"]
    assert not found.mistakes


@pytest.mark.parametrize("raised", ["indoors", "under cover", "under glass", "inside"])
def test_sow_under_cover_and_plant_out_are_two_dates_of_one_crop(raised: str) -> None:
    found = fact(
        f"grow cucumber 'Little Lantern', 8 plants, sow 24 May {raised}, plant out 10 June"
    )
    slots = said(found)
    assert slots["raised"] == raised
    assert slots["count"] == 8
    assert slots["cultivar"] == "Little Lantern"
    sow, out = slots["sow"], slots["out"]
    assert isinstance(sow, When)
    assert isinstance(out, When)
    assert (day(sow), day(out)) == ((24, 5, None), (10, 6, None))


def test_take_down_is_an_end_and_down_is_a_depth() -> None:
    end = fact("take down 30 Sept")
    assert end.word == "take down"
    depth = fact("posts 2x2, 8 ft, 18 in down")
    assert said(depth)["down"] == pytest.approx(0.4572)
    (slip,) = slips("down 30 Sept")
    assert slip.name == "unknown-word"
    assert "take down" in slip.told["near"]


@pytest.mark.parametrize(
    ("line", "anchor", "from_days"),
    [
        ("ready by last frost", "last frost", 0),
        ("take down before Christmas", "christmas", 0),
        ("take down after first frost", "first frost", 0),
        ("ready by 2 weeks after last frost", "last frost", 14),
        ("ready by a week before the last frost", "last frost", -7),
        ("ready by a fortnight after the average last frost date", "last frost", 14),
        ("ready by Easter", "easter", 0),
        ("ready by a week before Labour weekend", "labour weekend", -7),
        ("ready by Memorial Day", "memorial day", 0),
        ("ready by Lady Day", "lady day", 0),
        ("take down Michaelmas", "michaelmas", 0),
        ("take down St Martin's Day", "martinmas", 0),
        ("take down New Year's Eve", "new year", 0),
    ],
)
def test_frosts_and_feasts_are_dates(line: str, anchor: str, from_days: float) -> None:
    when = fact(line).get("date")
    assert isinstance(when, When)
    assert (when.anchor, when.from_days) == (anchor, from_days)


@pytest.mark.parametrize(
    "line", ["ready by Founders' Day", "ready by spring", "take down whenever"]
)
def test_a_day_that_is_no_date_is_asked_about(line: str) -> None:
    (slip,) = slips(line)
    assert slip.name == "which-day"
    assert "18 May" in slip.says


def test_a_date_that_a_crop_waits_for_is_asked_about_too() -> None:
    (slip,) = slips("grow pea, sow in spring, 40 plants")
    assert (slip.name, slip.told["text"], slip.where.column) == ("which-day", "in spring", 17)


@pytest.mark.parametrize(
    ("line", "first", "last"),
    [
        ("grow pea, sow last week of March", (None, 3), (None, 3)),
        ("grow pea, sow first week of April", (1, 4), (7, 4)),
        ("grow pea, sow second week in April", (8, 4), (14, 4)),
        ("grow pea, sow first two weeks of April", (1, 4), (14, 4)),
        ("grow pea, sow first half of April", (1, 4), (15, 4)),
    ],
)
def test_a_week_of_a_month_is_a_span(
    line: str, first: tuple[int | None, int], last: tuple[int | None, int]
) -> None:
    when = fact(line).get("sow")
    assert isinstance(when, When)
    assert when.day is not None
    assert when.last is not None
    assert (when.day.day, when.day.month) == first
    assert (when.last.day, when.last.month) == last


def test_a_weekday_before_a_date_is_passed_over() -> None:
    when = fact("ready by Saturday 14 March").get("date")
    assert isinstance(when, When)
    assert day(when) == (14, 3, None)


def test_an_american_date_keeps_its_year_behind_the_comma() -> None:
    found = fact("grow pea, sow March 14, 2027, 40 plants")
    when = found.get("sow")
    assert isinstance(when, When)
    assert day(when) == (14, 3, 2027)
    assert said(found)["count"] == 40


# -- years ------------------------------------------------------------------------------------
def test_a_southern_season_is_one_season() -> None:
    found = block("garden Back Paddock, 2026-27").head.get("season")
    year = block("garden Back Paddock, 2026-27").head.get("year")
    assert isinstance(found or year, Season)


def test_a_garden_may_go_by_its_year_without_a_comma() -> None:
    assert block("garden Quarry Row 2027").name == "Quarry Row"
    assert block("garden 2027").name == "2027"


def test_a_crop_may_have_had_several_years() -> None:
    found = fact("had squash in 2024, 2025", "bed")
    years = [value for name in ("year", "more") for value in found.all(name)]
    assert [year.value for year in years if isinstance(year, Number)] == [2024, 2025]
    span = fact("had squash 2023-2025", "bed").get("year")
    assert isinstance(span, Span)


def test_last_year_is_a_year() -> None:
    assert fact("had tomatoes last year", "bed").get("year") == Word("last year")


# -- the garden -------------------------------------------------------------------------------
@pytest.mark.parametrize(
    ("line", "kind"),
    [
        ("sun full", "full"),
        ("sun half the day", "half"),
        ("sun morning", "morning"),
        ("sun afternoon sun", "afternoon"),
        ("sun none", "none"),
        ("sun dappled shade", "dappled"),
        ("sun all day", "all day"),
        ("sun part shade", "part"),
    ],
)
def test_the_sun_of_a_bed_is_a_word(line: str, kind: str) -> None:
    assert fact(line, "bed").get("kind") == kind


def test_the_sun_of_a_bed_may_be_hours() -> None:
    assert said(fact("sun 5 h", "bed")) == {"hours": 5}
    assert said(fact("sun 4 to 6 hours", "bed")) == {"hours": (4, 6)}


@pytest.mark.parametrize(
    ("line", "days", "hours"),
    [
        ("free Sat 5 hrs", ("saturday",), 5),
        ("free Saturdays 5 hours", ("saturday",), 5),
        ("free Wednesday 2 h", ("wednesday",), 2),
        ("free weekends 4 h", ("saturday", "sunday"), 4),
        ("free Mon-Wed 1 h", ("monday", "tuesday", "wednesday"), 1),
        ("free Friday to Sunday 1 h", ("friday", "saturday", "sunday"), 1),
        ("free Sunday half a day", ("sunday",), 4),
        ("free Sunday all day", ("sunday",), 8),
    ],
)
def test_days_may_be_short_and_hours_written_out(
    line: str, days: tuple[str, ...], hours: float
) -> None:
    assert said(fact(line, "garden")) == {"weekday": days, "hours": hours}


@pytest.mark.parametrize(
    "typed", ["south-west", "south west", "southwest", "SW", "the south west", "South-West"]
)
def test_directions_need_no_hyphen(typed: str) -> None:
    assert fact(f"wind average, from {typed}", "garden").get("direction") == "south-west"


@pytest.mark.parametrize(
    "typed", ["52.1 N, 1.4 W", "52°06′ N, 1°24′ W", "52.1° N, 1.4° W", "52.1 north, 1.4 west"]
)
def test_a_place_is_latitude_and_longitude(typed: str) -> None:
    found = fact(f"place {typed}", "garden").all("degrees")
    assert found == (("latitude", pytest.approx(52.1)), ("longitude", pytest.approx(-1.4)))


def test_a_place_may_be_copied_from_a_map() -> None:
    # ISO 6709: latitude first, south and west below zero
    assert fact("place 51.4, -2.1", "garden").all("degrees") == (("", 51.4), ("", -2.1))


def test_south_is_below_zero() -> None:
    assert fact("place 37 S", "garden").all("degrees") == (("latitude", -37.0),)


# -- counts and sizes -------------------------------------------------------------------------
@pytest.mark.parametrize("typed", ["4 of 2x4", "4 @ 2x4", "4 off 2x4", "4 2x4", "four of 2x4"])
def test_a_count_stands_before_a_size(typed: str) -> None:
    found = fact(f"rails {typed}")
    assert said(found)["count"] == 4
    assert isinstance(found.get("section"), Section)


def test_a_count_stands_before_a_length_too() -> None:
    assert said(fact("bays 4 @ 8 ft")) == {"count": 4, "length": pytest.approx(2.4384)}


def test_a_times_sign_behind_a_nail_counts() -> None:
    found = fact("pins 20d ×5")
    assert found.get("nail") == Nail(20, "20d")
    assert said(found)["count"] == 5


def test_a_times_sign_between_a_count_and_a_size_is_asked_about() -> None:
    (slip,) = slips("piece 4 x 2x4, 1.9 m")
    assert slip.name == "count-or-size"
    assert "4 of 2x4" in slip.says


def test_three_figures_are_a_trade_size_and_its_length_in_feet() -> None:
    section = fact("bar 2x4x8").get("section")
    assert isinstance(section, Section)
    assert section.length_m == pytest.approx(2.4384)
    (slip,) = all_slips("bar 2x4x8")
    assert (slip.name, slip.level) == ("third-is-length", "note")
    assert "8 ft long" in slip.says


def test_how_three_figures_are_read_is_said_once() -> None:
    text = "yard\n  (none)\nframe A, net frame\n  bar 2x4x8\nframe B, net frame\n  bar 2x4x8\n"
    assert [slip.name for slip in read(text).mistakes] == ["third-is-length"]


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ("bays 3 of 1200", "no-unit"),
        ("posts 2x2, 8 ft, 45 in ground", "no-unit"),
        ("posts 2x2, 8 ft, 18 in the ground", "no-unit"),
        ("posts 2x2, 6 ft 2", "two-readings"),
        ("grow cucumber, 5 in Long Bed", "inches-or-in"),
        ("posts 2x2,8 ft", "two-readings"),
        ("bays 3 of 1,200 mm", "two-readings"),
        ("posts 45x45 mm, 1.200 m", "two-readings"),
        ("posts 2x2, 1 m 20", "two-readings"),
        ("bays 2 x 8 ft", "count-or-size"),
    ],
)
def test_what_can_be_meant_two_ways_is_asked_and_never_guessed(line: str, name: str) -> None:
    asked = slips(line)
    assert [slip.name for slip in asked] == [name]
    assert asked[0].says.rstrip(". ").endswith(("?", "say", "first", "Bed`"))
    assert not fact(line).whole


def test_a_times_sign_joined_to_a_count_is_a_count() -> None:
    found = fact("7x 2x2, 8 ft", "shed")
    assert said(found)["count"] == 7
    assert isinstance(found.get("section"), Section)


def test_hours_without_their_unit_are_asked_about() -> None:
    (slip,) = slips("free Saturday 5 h, Sunday 3", "garden")
    assert slip.name == "no-unit"
    assert slip.candidates[0].changes[0].new == "  free Saturday 5 h, Sunday 3 h"


# -- names ------------------------------------------------------------------------------------
def test_a_cultivar_may_hold_an_apostrophe_in_either_quotes() -> None:
    assert fact("rose 'Gardener's Apricot'", "border").get("cultivar") == "Gardener's Apricot"
    assert fact('rose "Bees\' Choice"', "border").get("cultivar") == "Bees' Choice"
    assert fact("rose 'Bees' Choice'", "border").get("cultivar") == "Bees' Choice"


@pytest.mark.parametrize(
    ("line", "texts"),
    [
        ("log Aug 14. Bar bowed 3 in.", ["Aug 14. Bar bowed 3 in."]),
        ("log 3 Jan: 41 degrees, shade cloth on", ["3 Jan: 41 degrees", "shade cloth on"]),
        ("log 2 August, Bean Net, picked 1.4 kg", ["2 August", "Bean Net", "picked 1.4 kg"]),
    ],
)
def test_a_log_keeps_its_words(line: str, texts: list[str]) -> None:
    assert list(block(line).head.all("text")) == texts


@pytest.mark.parametrize(
    ("line", "word"),
    [
        ("prop in the middle of every bar", "prop"),
        ("tie with the tarred twine", "tie"),
        ("hinges at the foot", "hinges"),
        ("painted 2022", "painted"),
        ("brace 2x4", "brace"),
        ("stays 2, square to the row", "stays"),
        ("prop", "prop"),
    ],
)
def test_parts_are_facts_of_their_frame(line: str, word: str) -> None:
    assert fact(line).word == word
    assert not slips(line)


@pytest.mark.parametrize(
    ("line", "slot", "value"),
    [
        ("wires 1, at 2 m, 250 N", "pull", 250.0),
        ("wire 12.5 gauge at 5 ft, 250 lb", "pull", pytest.approx(1112.06, abs=0.01)),
        ("wires 3, tension 300 N", "pull", 300.0),
        ("posts 2x2, 8 ft, in sleeves", "set", "sleeves"),
        ("posts 4x4, 8 ft, in concrete", "set", "concrete"),
        ("end posts 2 of 4 in round, 8 ft, leaning", "lean", "leaning"),
        ("net 5 ft x 16 ft, from 12 in up", "start", pytest.approx(0.3048)),
        ("lights 4 of 24 in x 4 ft, 1 in between", "gap", pytest.approx(0.0254)),
        ("lights 4, 2 in bars between", "gap", pytest.approx(0.0508)),
        ("fabric 2.5 m wide, stapled", "held", "stapled"),
        ("rails 2x4, along the tops", "where", "along the tops"),
    ],
)
def test_the_rarer_parts_can_be_said(line: str, slot: str, value: object) -> None:
    assert said(fact(line))[slot] == value
    assert fact(line).whole


def test_a_net_needs_no_bar_and_a_wire_may_be_the_ridge() -> None:
    text = "frame Sweet Peas, crossed row\n  poles 20, 8 ft\n  wire at 6 ft\n  net 5 ft x 16 ft\n"
    assert not read(text).mistakes


def test_children_may_be_counted_before_their_ages() -> None:
    assert said(fact("2 kids, 4 and 7", "garden")) == {"many": 2, "age": [4, 7]}
    assert said(fact("children 3 and 6", "garden")) == {"age": [3, 6]}


def test_a_year_may_stand_before_what_a_bed_had() -> None:
    found = fact("2025: beans, 2026: peas", "bed")
    assert found.word == "had"
    assert [slot.name for slot in found.slots] == ["more", "again", "more", "again"]


def test_a_size_in_the_name_of_a_bed_is_its_size() -> None:
    found = block("bed Bottom Bed 4 ft x 12 ft, in full sun")
    assert found.name == "Bottom Bed"
    assert said(found.head) == {"size": (1.2192, 3.6576), "sun": "full"}
    assert block("bed Bed 3").name == "Bed 3"


@pytest.mark.parametrize("typed", ["south facing", "faces south", "facing south", "south-facing"])
def test_a_wall_faces_somewhere_in_any_words(typed: str) -> None:
    found = block(f"wall Back Wall, {typed}, brick")
    faces = found.fact("faces")
    assert "south" in {found.head.get("facing"), faces.get("direction") if faces else None}
    assert found.head.get("surface") == "brick"


def test_a_bed_named_without_its_in_is_offered_with_it() -> None:
    (slip,) = read("frame Bean Net, net frame, Top Bed\n").mistakes
    assert slip.name == "unknown-word"
    assert slip.candidates[0].changes[0].new == "frame Bean Net, net frame, in Top Bed"


@pytest.mark.parametrize(
    ("line", "opener"),
    [("Trellis: Old Rose by the door", "frame"), ("Cold frame by the shed", "cover")],
)
def test_a_line_that_begins_with_a_kind_is_offered_its_block(line: str, opener: str) -> None:
    text = f"frame Bean Net, net frame\n  bar 2x2\n{line}\n  size 6 ft x 4 ft\n"
    found = read(text)
    (slip,) = found.mistakes
    assert slip.name == "unknown-block"
    assert f"type `{opener}` and a name before it" in slip.says
    assert slip.candidates[-1].changes[0].new == f"{opener} {line}"
    assert [one.word for one in found.blocks[0].facts] == ["bar"]
    assert [one.word for one in found.lost] == ["size"]


def test_where_and_how_a_crop_is_sown_may_stand_before_its_date() -> None:
    found = fact("grow 32 runner beans 'Sky High', sow indoors mid April, plant out late May")
    assert said(found)["raised"] == "indoors"
    assert found.whole


def test_a_word_that_stands_nowhere_is_told_what_does() -> None:
    (slip,) = slips("zymurgy", "garden")
    assert "Under a garden stand place, frost" in slip.says


@pytest.mark.parametrize(("line", "kind"), [("full sun", "full"), ("half shade", "half")])
def test_the_sun_may_stand_behind_its_word(line: str, kind: str) -> None:
    found = fact(line, "bed")
    assert (found.word, found.get("kind")) == ("sun", kind)


def test_a_reach_may_stand_before_its_word() -> None:
    found = fact("person Sam, 5'6\" reach, 50 lb lift", "garden")
    assert said(found) == {"name": "Sam", "reach": 1.6764, "lifts": 22.6796}


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ("task start tomatoes 20 March", "start tomatoes"),
        ("task start tomatoes 3/20", "start tomatoes"),
        ("task buy twine by 20 April", "buy twine"),
        ("task rip 4 of 2x4, by 1 April", "rip 4 of 2x4"),
        ("task mend the gate", "mend the gate"),
    ],
)
def test_a_task_ends_where_its_date_begins(line: str, name: str) -> None:
    assert block(line).name == name


@pytest.mark.parametrize(
    "line",
    [
        "grow cucumbers x 4, direct sow 20 May",
        "grow squash, start inside 15 April, transplant 25 May",
        "grow 8 tomatoes, transplants May 20-25",
    ],
)
def test_seed_is_started_and_plants_are_transplanted(line: str) -> None:
    assert fact(line).whole


@pytest.mark.parametrize(
    ("line", "slots"),
    [
        ("sow pole beans 18 May", {"plant": "pole beans", "sow": (18, 5, None)}),
        ("plant 12 tomatoes, sow 1 March", {"plant": "tomatoes", "count": 12, "sow": (1, 3, None)}),
        ("plant out 12 tomatoes 1 June", {"plant": "tomatoes", "count": 12, "out": (1, 6, None)}),
        ("sow 'Kelvedon' peas mid-March", {"plant": "peas", "cultivar": "Kelvedon"}),
        ("planted late clematis", {"plant": "late clematis"}),
    ],
)
def test_a_crop_may_be_sown_or_planted_in_its_own_words(
    line: str, slots: dict[str, object]
) -> None:
    found = fact(line)
    assert (found.word, found.whole) == ("grow", True)
    read_slots = {
        name: day(value) if isinstance(value, When) and value.day and value.day.day else value
        for name, value in said(found).items()
    }
    assert slots.items() <= read_slots.items()


@pytest.mark.parametrize(
    ("line", "under", "word", "slots"),
    [
        ("2 m high", "frame", "high", {"length": 2.0}),
        ("8 ft posts 2x2", "frame", "posts", {"length": 2.4384}),
        ("previously: potatoes 2026", "bed", "had", {"plant": "potatoes", "year": 2026}),
        ("planted in 2023", "bed", "plant out", {"since": 2023}),
        ("wind very windy, from the west", "garden", "wind", {"class": "windy"}),
        ("hoops at 1 m centres", "cover", "hoops", {"apart": 1.0}),
        ("wires @ 60, 100 & 150 cm", "frame", "wires", {"heights": [0.6, 1.0, 1.5]}),
        ("grow raspberries, 12 no.", "frame", "grow", {"count": 12}),
        ("6 poles each, 8 ft, pushed in 9 in", "frame", "poles", {"count": 6, "down": 0.2286}),
        ("end posts 75 mm dia x 2.1 m", "frame", "end posts", {"length": 2.1}),
        ("grow runner beans: 24 plants", "frame", "grow", {"plant": "runner beans"}),
        ("from 1 October until end of March", "cover", "on", {}),
    ],
)
def test_what_else_is_typed_in_a_hurry(
    line: str, under: str, word: str, slots: dict[str, object]
) -> None:
    found = fact(line, under)
    assert (found.word, found.whole) == (word, True)
    assert slots.items() <= said(found).items()


@pytest.mark.parametrize(
    "head",
    ["bed Veg 1 - 1.2 m x 6 m, N-S", "bed Veg 1: 1.2 m x 6 m, N/S", "bed Veg 1, 1.2 m x 6 m, NS"],
)
def test_a_dash_or_colon_ends_a_name(head: str) -> None:
    found = block(head)
    assert found.name == "Veg 1"
    assert said(found.head) == {"size": (1.2, 6.0), "runs": "north-south"}


# -- people called May ------------------------------------------------------------------------
def test_months_are_dates_only_where_a_date_is_waited_for() -> None:
    assert fact("person May, reach 5 ft 8 in", "garden").get("name") == "May"
    assert fact("person June", "garden").get("name") == "June"
    assert fact("picked by May").get("person") == "May"
    when = fact("ready by May").get("date")
    assert isinstance(when, When)


# -- lists and lengths ------------------------------------------------------------------------
@pytest.mark.parametrize(
    "line",
    [
        "wires 3, at 45 cm, 90 cm and 150 cm",
        "wires 3 at 45, 90 and 150 cm",
        "wires at 45 cm, 90 cm, 1.5 m",
        "wires at 45 and 90 and 150 cm",
    ],
)
def test_heights_in_a_list_share_the_unit_that_closes_it(line: str) -> None:
    heights = [value.value for value in fact(line).all("heights") if isinstance(value, Measure)]
    assert heights == pytest.approx([0.45, 0.9, 1.5])


def test_lines_may_go_without_commas() -> None:
    found = fact("posts 2x2 8 ft 18 in down 6 ft 6 in up")
    assert said(found) == said(fact("posts 2x2, 8 ft, 18 in down, 6 ft 6 in up"))


def test_a_count_may_stand_before_the_word() -> None:
    assert said(fact("6 poles, 8 ft")) == said(fact("poles 6, 8 ft"))
    assert said(fact("2 bays of 8 ft")) == said(fact("bays 2 of 8 ft"))


def test_a_remark_between_two_words_does_not_part_them() -> None:
    found = fact("posts 2x2, 8 ft (the straight ones) long, 18 in down")
    assert found.remark == "(the straight ones)"
    assert said(found)["length"] == pytest.approx(2.4384)
    assert found.whole


def test_several_facts_may_share_a_line() -> None:
    found = facts("back 2x12, front 2x8, 4 lights", "cover")
    assert [one.word for one in found] == ["back", "front", "lights"]
    assert plain(found[2].get("count")) == 4


@pytest.mark.parametrize(
    ("line", "relation", "name", "distance_m", "part", "along_m"),
    [
        ("in Long Bed", "in", "Long Bed", None, "", None),
        ("north end", "", "", None, "north end", None),
        ("middle", "", "", None, "middle", None),
        ("in the middle", "", "", None, "middle", None),
        ("in the middle of Long Bed", "in", "Long Bed", None, "middle", None),
        ("at the north end of Long Bed", "in", "Long Bed", None, "north end", None),
        ("south-west corner of Long Bed", "in", "Long Bed", None, "south-west corner", None),
        ("in Long Bed north end", "in", "Long Bed", None, "north end", None),
        ("in Middle Bed", "in", "Middle Bed", None, "", None),
        ("in North End Bed", "in", "North End Bed", None, "", None),
        ("from 1 m to 4 m along", "", "", None, "", (1.0, 4.0)),
        ("from 1 to 4 m", "", "", None, "", (1.0, 4.0)),
        ("on House Wall", "on", "House Wall", None, "", None),
        ("0.5 m north of Larch Bed", "north", "Larch Bed", 0.5, "", None),
        ("south of the shed", "south", "the shed", None, "", None),
        ("to the south of the shed", "south", "the shed", None, "", None),
        ("5 m south of Seed Box", "south", "Seed Box", 5.0, "", None),
        ("40 cm from the wall", "from", "the wall", 0.4, "", None),
        ("60 cm off Main Path", "from", "Main Path", 0.6, "", None),
        ("over the blueberries", "over", "the blueberries", None, "", None),
        ("along the drive", "along", "the drive", None, "", None),
        ("on the west side", "", "", None, "west side", None),
        ("next to Long Bed", "beside", "Long Bed", None, "", None),
    ],
)
def test_a_place_is_said_in_plain_words(
    line: str,
    relation: str,
    name: str,
    distance_m: float | None,
    part: str,
    along_m: tuple[float, float] | None,
) -> None:
    (spot,) = block(f"frame Bean Net, net frame, {line}").head.all("spot")
    assert spot == Spot(relation, name, distance_m, part, along_m, line)


def test_a_place_ends_where_a_size_begins() -> None:
    head = block("frame Rose Lattice, lattice, on House Wall 6 ft x 5 ft").head
    assert head.get("spot") == Spot("on", "House Wall", None, "", None, "on House Wall")
    assert plain(head.get("size")) == (1.8288, 1.524)


# -- heads --------------------------------------------------------------------------------------
def test_what_a_head_says_may_stand_in_lines_of_its_own() -> None:
    found = read("frame Pea Net, net frame\n  in Long Bed, north end, built 2024\n  bays 2\n")
    (net,) = found.blocks
    assert not found.mistakes
    assert [slot.text for slot in net.head.slots] == ["net frame", "in Long Bed", "north end"]
    assert [fact.word for fact in net.facts] == ["built", "bays"]
    place = net.head.place(net.head.slots[-1])
    assert (place.line, place.column) == (2, 16)


def test_a_head_that_goes_on_never_says_a_thing_twice() -> None:
    found = read("bed Long Bed, 4 ft x 24 ft\n  4 ft x 20 ft\n")
    assert [slip.name for slip in found.mistakes] == ["unknown-word"]


def test_a_bed_that_does_not_exist_is_looked_for_on_the_line_that_names_it() -> None:
    text = "garden Hill, 2027\nbed Long Bed\nframe Pea Net, net frame\n  in Lond Bed\n"
    _, slips = build(read_input(text), date(2027, 3, 1))
    slip = next(slip for slip in slips if slip.name == "no-such-place")
    assert (slip.where.line, slip.where.column) == (4, 3)
    assert slip.candidates[0].changes[0].new == "  in Long Bed"


@pytest.mark.parametrize("way", ["north-south", "north south", "N-S", "north to south", "NS"])
def test_a_row_runs_both_ways_however_it_is_joined(way: str) -> None:
    assert fact(f"runs {way}", "bed").get("line") == "north-south"


def test_a_comma_left_out_before_a_fact_of_its_own_costs_nothing() -> None:
    found = read("bed Low Bed, 4 ft x 16 ft runs east-west\n")
    assert not found.mistakes
    assert plain(found.blocks[0].head.get("size")) == (1.2192, 4.8768)
    assert found.blocks[0].facts[0].get("line") == "east-west"


@pytest.mark.parametrize(
    "head", ["bed Top Bed, 4 ft x 16 ft", "shed", "variety Ida Bean, like runner bean"]
)
def test_a_head_that_is_indented_opens_its_block_all_the_same(head: str) -> None:
    found = read(f"garden Hill, 2027\n  soil clay\n  {head}\n    soil sand\n")
    assert [one.word for one in found.blocks] == ["garden", head.split(" ", maxsplit=1)[0]]
    (slip,) = [slip for slip in found.mistakes if slip.name == "indented-head"]
    assert slip.level == "note"
    assert slip.candidates[0].changes[0].new == head
    assert len(found.blocks[0].facts) == 1


@pytest.mark.parametrize(
    "line",
    ["task order seed, by 15 January", "want cucumber, 6 plants", "log 2 August, picked 1 kg"],
)
def test_a_job_want_or_log_in_the_midst_of_a_block_does_not_end_it(line: str) -> None:
    found = read(f"frame Pea Net, net frame\n  bays 2\n  {line}\n  bar 2x2\n")
    blocks = {one.word: one for one in found.blocks}
    assert len(found.blocks) == 2
    assert line.split(" ", maxsplit=1)[0] in blocks
    assert [fact.word for fact in blocks["frame"].facts] == ["bays", "bar"]


def test_what_lies_in_a_shed_is_no_block_though_it_is_named_like_one() -> None:
    found = read("shed\n  frame Old, 2 of 2x2\n")
    assert [one.word for one in found.blocks] == ["shed"]


def test_a_kind_at_the_margin_keeps_its_lines_to_itself() -> None:
    found = read("frame Arch, arch\n  width 4 ft\nlattice on House Wall, 6 ft\n  grow wisteria\n")
    (slip,) = found.mistakes
    assert [fact.word for fact in found.blocks[0].facts] == ["wide"]
    assert [fact.word for fact in found.lost] == ["grow"]
    assert slip.candidates[-1].changes[0].new == "frame Lattice, lattice, on House Wall, 6 ft"


# -- people, and hours --------------------------------------------------------------------------
def test_those_who_work_may_be_named_in_one_line() -> None:
    text = "garden Hill, 2027\n  people Maud, Wim\n  person Wim, lifts 15 kg\n  hours Sat 4 h\n"
    plan, slips = build(read_input(text), date(2027, 3, 1))
    assert not slips
    assert plan.garden is not None
    assert {one.name: one.lifts_kg for one in plan.garden.people} == {"Maud": None, "Wim": 15.0}
    assert plan.garden.free_h == {"saturday": 4.0}


def test_people_may_be_counted_instead() -> None:
    plan, _ = build(read_input("garden Hill, 2027\n  people 4\n"), date(2027, 3, 1))
    assert plan.garden is not None
    assert plan.garden.household == 4


@pytest.mark.parametrize(
    ("line", "first", "second"),
    [
        ("sow lettuce, leeks", "  sow lettuce", "  sow leeks"),
        ("grow climbing rose, grow clematis", "  grow climbing rose", "  grow clematis"),
    ],
)
def test_two_crops_in_a_line_are_offered_a_line_each(line: str, first: str, second: str) -> None:
    (slip,) = slips(line)
    assert slip.name == "two-plants"
    assert [change.new for change in slip.candidates[0].changes] == [first, second]


@pytest.mark.parametrize(
    ("line", "word", "slot"),
    [
        ("windy, from the north-west", "wind", "direction"),
        ("sheltered", "wind", "class"),
        ("Wim lifts 15 kg, reach 2 m", "person", "lifts"),
        ("Maud reaches 1.9 m", "person", "reach"),
    ],
)
def test_the_wind_and_what_a_person_can_do_are_known_without_their_word(
    line: str, word: str, slot: str
) -> None:
    found = fact(line, "garden")
    assert found.word == word
    assert found.get(slot) is not None
    assert not slips(line, "garden")


def test_a_second_fact_may_have_its_figure_before_its_word() -> None:
    found = facts("6 ft high, 10 ft long")
    assert [(one.word, plain(one.get("length"))) for one in found] == [
        ("high", 1.8288),
        ("long", 3.048),
    ]


@pytest.mark.parametrize("word", ["high", "tall"])
def test_tall_is_high(word: str) -> None:
    (found,) = read(f"frame C, wire cage\n  6 cages, 5 ft {word}, 18 in across\n").blocks[0].facts
    assert plain(found.get("high")) == 1.524
    assert found.whole


@pytest.mark.parametrize("word", ["from", "starts", "starting at", "starts from"])
def test_a_net_that_begins_above_the_ground_is_no_lower_net(word: str) -> None:
    found = fact(f"net 1.2 m x 4 m, {word} 20 cm up")
    assert plain(found.get("start")) == 0.2
    assert found.get("up") is None
    assert found.whole


def test_the_same_words_with_other_spaces_are_the_same_fact() -> None:
    head = "frame Net Row, net frame\n"
    one = read(f"{head}  fabric old fleece\n  fabric old fleece\n")
    other = read(f"{head}  fabric old fleece\n  fabric  old  fleece\n")
    assert not other.mistakes
    assert len(one.blocks[0].facts) == len(other.blocks[0].facts)
