"""Work that comes round; how often it comes is common practice, no source."""

from __future__ import annotations

from datetime import date

from tests.jobs.gardens import BEANS, HEAD, NET, SOUTH, listed, the

BOX = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n"


def test_shoots_are_led_each_week_from_three_weeks_after_sowing() -> None:
    job = the(listed(HEAD + NET + BEANS), "bean-net/pole-bean-lead")
    assert job.kind == "train"
    assert job.says.startswith("Bean Net: pole bean: start the shoots")
    assert not job.says.endswith(".")
    assert (job.planned, job.every_days) == (date(2027, 6, 8), (7, 7))
    assert job.minutes is not None


def test_a_round_that_was_done_comes_again_after_its_days() -> None:
    done = "  done separate the shoots, 29 June\n"
    job = the(listed(HEAD + NET + BEANS + done), "bean-net/pole-bean-lead")
    assert job.planned == date(2027, 7, 6)


def test_in_midseason_a_round_stands_at_its_next_day() -> None:
    text = HEAD + NET + "  built 2026\n" + BEANS + "  done sow the beans, 18 May\n"
    job = the(listed(text, date(2027, 7, 1)), "bean-net/pole-bean-lead")
    assert job.planned == date(2027, 7, 6)
    assert not job.overdue


def test_strips_under_a_cold_frame_fall_due_after_four_or_five_years() -> None:
    found = listed(HEAD + BOX + "  built 2020\n  strips new spring 2023\n")
    strips = the(found, "salad-box/care-strips")
    assert strips.reckoned == "last done in 2023; due every 4 to 5 years"
    assert strips.planned is not None
    assert strips.planned.month == 3
    assert strips.hands == 2


def test_strips_that_are_new_are_left_alone() -> None:
    found = listed(HEAD + BOX + "  built 2020\n  strips new spring 2025\n")
    assert found.job("salad-box/care-strips") is None


def test_yearly_care_is_for_what_stands_already() -> None:
    standing, new = listed(HEAD + NET + "  built 2025\n"), listed(HEAD + NET)
    poke = the(standing, "bean-net/care-poke")
    assert (poke.earliest, poke.latest) == (date(2027, 2, 27), date(2027, 3, 29))
    assert new.job("bean-net/care-poke") is None


def test_spring_care_of_a_mild_southern_garden_is_in_august() -> None:
    found = listed(SOUTH + NET + "  built 2024\n", date(2026, 7, 1))
    assert the(found, "bean-net/care-poke").earliest == date(2026, 8, 13)


def test_care_that_an_event_calls_for_has_no_day_and_comes_last() -> None:
    found = listed(HEAD + NET + BEANS)
    lean = found.jobs[-1]
    assert (lean.id, lean.whenever, lean.planned) == ("bean-net/care-lean", "after a gale", None)


def test_lights_are_opened_each_day_they_are_on() -> None:
    found = listed(HEAD + BOX + "  built 2021\n  on 1 February to 15 April\n")
    vent = the(found, "salad-box/care-vent")
    assert vent.every_days == (1, 1)
    assert (vent.planned, vent.until) == (date(2027, 2, 1), date(2027, 4, 15))


def test_a_new_plant_is_not_pruned_before_it_is_planted() -> None:
    plan = "frame Rose Arch, arch\n  grow climbing rose, plant 20 March\n"
    assert not [job for job in listed(HEAD + plan).jobs if "worn cane" in job.says]
    standing = "frame Rose Arch, arch\n  built 2020\n  grow climbing rose\n"
    assert [job for job in listed(HEAD + standing).jobs if "worn cane" in job.says]


def test_peas_on_a_net_want_no_sticks_besides() -> None:
    found = listed(f"{HEAD}{NET}  grow short pea, sow 20 March\n")
    assert not [job for job in found.jobs if "twiggy" in job.says]


def test_a_box_is_watered_from_its_first_sowing_on_and_not_before() -> None:
    sown = "  built 2020\n  grow lettuce, 20 plants, sow 24 March under cover\n"
    assert the(listed(HEAD + BOX + sown), "salad-box/care-water").planned == date(2027, 3, 24)
    empty = the(listed(HEAD + BOX + "  built 2020\n"), "salad-box/care-water")
    assert (empty.planned, empty.whenever) == (None, "while something grows there")


def test_what_is_planted_this_year_is_neither_picked_nor_cut_for_bearing_yet() -> None:
    wires = "frame Cane Row, cane wires\n"
    young = {job.id for job in listed(HEAD + wires + "  grow summer raspberry, 6 plants\n").jobs}
    old = {
        job.id
        for job in listed(HEAD + wires + "  built 2020\n  grow summer raspberry, 6 plants\n").jobs
    }
    assert not any("raspberry-pick" in one for one in young)
    assert any("raspberry-pick" in one for one in old)


def test_watering_a_row_is_for_whoever_looks_after_the_garden() -> None:
    beans = "  grow runner bean, 24 plants, sow 18 May\n"
    assert the(listed(HEAD + NET + beans), "bean-net/runner-bean-water").kind == "look after"


def test_between_the_tropics_no_round_waits_for_a_spring_that_never_comes() -> None:
    text = "garden Reef Plot, 2027\n  place 10 N, 61 W\n  frost none\n"
    wires = "frame Fruit Wires, grape wires\n  built 2020\n  grow passionfruit, 3 plants\n"
    told = [job.whenever for job in listed(text + wires).jobs]
    assert "in its own time" in told
    assert not any("spring" in words or "summer" in words for words in told)


def test_a_caution_of_strained_wire_stands_with_the_straining_and_not_with_the_knife() -> None:
    text = HEAD + "frame Vine Wires, grape wires\n  built 2020\n  grow grape, 3 plants\n"
    found = listed(text)
    assert any("recoils" in one for one in the(found, "vine-wires/care-strain").dangers)
    assert the(found, "vine-wires/care-poke").dangers == ()


def test_no_snow_is_brushed_off_where_no_frost_comes() -> None:
    warm = "garden Reef Plot, 2027\n  place 10 N, 61 W\n  frost none\n"
    assert any("snow" in job.whenever for job in listed(HEAD + BOX + "  built 2020\n").jobs)
    assert not any("snow" in job.whenever for job in listed(warm + BOX + "  built 2020\n").jobs)


def test_what_is_reckoned_from_a_frost_nobody_has_given_keeps_its_words_and_no_day() -> None:
    cage = "frame Cage, wire cage\n  grow tall tomato, 2 plants, plant out 31 May\n"
    found = listed("garden Fold End, 2027\n" + cage)
    (top,) = [job for job in found.jobs if "pinch out the top" in job.says]
    assert (top.planned, top.whenever) == (None, "6 to 8 weeks before the first frost")
    without = listed("garden Fold End, 2027\n  place 14 N, 90 W\n  frost none\n" + cage)
    assert not [job for job in without.jobs if "pinch out the top" in job.says]
