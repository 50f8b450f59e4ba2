"""Wants, tasks, the log, notes, and what lies in the shed and the yard."""

from __future__ import annotations

import pytest

from tests.plan.building_plans import GARDEN, SOUTH, days, names_of, plan_of, slips_of


def test_a_want_has_its_plant_its_count_and_its_place() -> None:
    plan = plan_of(
        f"{GARDEN}wall House Wall, faces east\n"
        "want cucumber, 6 plants\n"
        "want late clematis 'Tall Piper', on House Wall\n"
        "want 12 pole beans\n"
    )
    cucumber, clematis, beans = plan.wants
    assert (cucumber.said, cucumber.plants, cucumber.count) == ("cucumber", ("cucumber",), 6)
    assert clematis.cultivar == "Tall Piper"
    assert clematis.spot is not None
    assert clematis.spot.thing == "House Wall"
    assert beans.count == 12


def test_a_want_may_be_for_something_in_a_place() -> None:
    plan = plan_of(f"{GARDEN}wall House Wall, faces east\nwant something for House Wall\n")
    (want,) = plan.wants
    assert (want.said, want.plants) == ("something", ())
    assert want.spot is not None
    assert (want.spot.relation, want.spot.thing) == ("for", "House Wall")


def test_a_want_of_nothing_is_asked_about() -> None:
    assert names_of(f"{GARDEN}want\n") == ["nothing-after"]


TASKS = [
    ("task rip 4 of 2x4, at the yard, by 1 April", "rip 4 of 2x4", "by", "2027-04-01"),
    ("task order seed by 15 Jan", "order seed", "by", "2027-01-15"),
    ("task fix gate hinge, before Christmas", "fix gate hinge", "on", "2027-12-25"),
    ("task rip 4 of 2x4, by 1 April, done 28 March", "rip 4 of 2x4", "done", "2027-03-28"),
    ("task clean pots, by 1 March, moved to 8 March", "clean pots", "moved", "2027-03-08"),
]


@pytest.mark.parametrize(("line", "what", "slot", "day"), TASKS)
def test_a_task_has_its_words_and_its_days(line: str, what: str, slot: str, day: str) -> None:
    (task,) = plan_of(f"{GARDEN}yard\n  2x4, 8 ft\n{line}\n").tasks
    assert task.what == what
    assert days(getattr(task, slot))[0] == day


def test_a_task_has_hands_hours_and_what_it_waits_for() -> None:
    first, second, third = plan_of(
        f"{GARDEN}task cut hazel poles, Feb, both of us, half a day\n"
        "task paint the gate, after set the posts, 2 h, Maud, Wim\n"
        "task take nets off, when the wind warning is out\n"
    ).tasks
    assert (first.hands, first.hours) == (2, 4.0)
    assert days(first.on) == ("2027-02-15", "2027-02-15", 14)
    assert (second.after, second.hours, second.who) == ("set the posts", 2.0, ("Maud", "Wim"))
    assert third.when == "the wind warning is out"


LOG = [
    ("log 2 August, Bean Net, picked 1.4 kg, bar 2 in low", "2027-08-02", "Bean Net", 2),
    ("log Aug 14. Bar bowed 3 in. Propped with hazel.", "2027-08-14", "", 1),
    ("log 3 Jan 2027: 41 degrees, shade cloth on", "2027-01-03", "", 1),
    ("log August 2, 2027, Bean Net, picked 3 lb", "2027-08-02", "Bean Net", 1),
    ("log 2027-08-02 Bean Net: bar 2 in low", "2027-08-02", "Bean Net", 1),
    ("log 9 Aug. Bean Net bar bowed 2 in", "2027-08-09", "Bean Net", 1),
    ("log 9 Aug. House martins over the Bean Net", "2027-08-09", "", 0),
]


@pytest.mark.parametrize(("line", "day", "about", "measures"), LOG)
def test_a_log_has_its_day_and_its_words(line: str, day: str, about: str, measures: int) -> None:
    (entry,) = plan_of(f"{GARDEN}frame Bean Net, net frame\n{line}\n").log
    assert days(entry.day)[0] == day
    assert (entry.about, len(entry.measures)) == (about, measures)
    assert entry.words


def test_a_log_without_its_day_keeps_its_words_and_is_asked() -> None:
    found = slips_of(f"{GARDEN}log first beans\n")
    assert [slip.name for slip in found] == ["no-log-date"]
    found = slips_of(f"{GARDEN}log 5/6 frost, lost 4 cucumbers\n")
    assert [edit.changes[0].new for edit in found[0].candidates] == [
        "log 5 June frost, lost 4 cucumbers",
        "log 6 May frost, lost 4 cucumbers",
    ]


def test_a_log_of_a_southern_summer_is_of_the_second_year() -> None:
    (entry,) = plan_of(f"{SOUTH}log 3 Jan: 41 degrees\n").log
    assert days(entry.day)[0] == "2027-01-03"


def test_a_note_may_part_its_thing_from_its_words_with_a_dash() -> None:
    (note,) = plan_of(f"{GARDEN}frame Bean Net, net frame\nnote Bean Net - zip ties broke\n").notes
    assert (note.about, note.words) == ("Bean Net", "zip ties broke")


def test_a_note_may_be_about_one_thing() -> None:
    about, free, time = plan_of(
        f"{GARDEN}frame Bean Net, net frame\n"
        "note Bean Net: never again the same weekend, or the next\n"
        "note never buy cheap twine\n"
        "note this: twine\n"
    ).notes
    assert (about.about, about.words) == ("Bean Net", "never again the same weekend, or the next")
    assert (free.about, free.words) == ("", "never buy cheap twine")
    assert (time.about, time.words) == ("", "this: twine")


ITEMS = [
    ("6 posts 2x2, 8 ft", "posts", 6, (2.4384,)),
    ("2 @ 2x4, 6'", "", 2, (1.8288,)),
    ("tarred twine, 2 balls", "tarred twine", 2, ()),
    ("2x4x8, 4.85", "", None, (2.4384,)),
    ("90x45 mm, 2.4 m or 3.6 m", "", None, (2.4, 3.6)),
    ("half a box of screws 3 in", "a box of screws", 0.5, (0.0762,)),
]


@pytest.mark.parametrize(("line", "what", "count", "lengths_m"), ITEMS)
def test_an_item_has_its_count_and_its_lengths(
    line: str, what: str, count: float | None, lengths_m: tuple[float, ...]
) -> None:
    (item,) = plan_of(f"{GARDEN}shed\n  {line}\n").shed
    assert (item.what, item.count) == (what, count)
    assert item.lengths_m == pytest.approx(lengths_m)


def test_a_bare_thickness_among_lengths_is_a_thickness() -> None:
    wire, poles, screws = plan_of(
        f"{GARDEN}shed\n  1 roll wire 2.5 mm, 50 m\n  poles, 25 mm, 2.4 m\n  screws 3 in\n"
    ).shed
    assert wire.section is not None
    assert (wire.section.width_m, wire.lengths_m) == (0.0025, (50.0,))
    assert poles.section is not None
    assert (poles.section.width_m, poles.lengths_m) == (0.025, (2.4,))
    assert screws.section is None
    assert screws.lengths_m == pytest.approx((0.0762,))


@pytest.mark.parametrize(
    ("line", "price"),
    [("2x4, 8 ft, at 4.20", 4.2), ("2x4, 8 ft, £17.60 each", 17.6), ("90x90 mm, $19.80", 19.8)],
)
def test_the_yard_has_prices_where_they_are_known(line: str, price: float) -> None:
    (item,) = plan_of(f"{GARDEN}yard\n  {line}\n").yard
    assert item.price == price
    assert item.section is not None


def test_nets_and_nails_have_theirs() -> None:
    net, nails = plan_of(f"{GARDEN}shed\n  bird net 4 x 10 m, mesh 4 mm\n  9 nails 20d\n").shed
    assert net.size is not None
    assert (net.what, net.mesh_m) == ("bird net", 0.004)
    assert (nails.what, nails.nail, nails.count) == ("nails", 20, 9)
