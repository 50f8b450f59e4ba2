"""Sowing, hardening off, planting out, picking and clearing."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from tests.jobs.gardens import BEANS, HEAD, NET, SOUTH, listed, place, the


def test_a_row_is_sown_on_the_gardeners_day() -> None:
    job = the(listed(HEAD + NET + BEANS), "bean-net/sow-pole-bean")
    assert job.says == "Bean Net: sow pole bean, 40 plants"
    assert job.earliest == job.planned == job.latest == date(2027, 5, 18)
    assert "no post goes through roots" in job.how


def test_a_month_alone_leaves_its_days_open() -> None:
    job = the(listed(f"{HEAD}{NET}  grow tall pea, sow mid March\n"), "bean-net/sow-tall-pea")
    assert (job.earliest, job.latest) == (date(2027, 3, 10), date(2027, 3, 20))
    assert job.planned == date(2027, 3, 15)


def test_what_is_raised_indoors_is_hardened_before_it_goes_out() -> None:
    plan = "  grow cucumber, 4 plants, sow 4 May indoors, plant out 6 June\n"
    found = listed(HEAD + NET + plan)
    sow, harden = the(found, "bean-net/sow-cucumber"), the(found, "bean-net/harden-cucumber")
    out = the(found, "bean-net/plant-out-cucumber")
    assert sow.says == "Bean Net: sow cucumber indoors, 4 plants"
    assert sow.after == ()
    assert harden.planned == date(2027, 5, 27)
    assert "bean-net/harden-cucumber" in out.after
    assert "bean-net/pins" in out.after
    assert out.planned == date(2027, 6, 6)


def test_where_the_plan_gives_no_date_the_usual_time_from_the_frost_is_taken() -> None:
    """Sown one to two weeks after the last frost: Oregon State University, as the entry cites."""
    job = the(listed(f"{HEAD}{NET}  grow pole bean\n"), "bean-net/sow-pole-bean")
    assert (job.earliest, job.latest) == (date(2027, 5, 13), date(2027, 5, 20))
    assert job.reckoned == "the usual time from your last frost"


def test_south_of_the_equator_the_frost_sets_the_same_days() -> None:
    job = the(listed(f"{SOUTH}{NET}  grow pole bean\n", date(2026, 7, 1)), "bean-net/sow-pole-bean")
    assert (job.earliest, job.latest) == (date(2026, 10, 2), date(2026, 10, 9))


def test_picking_begins_when_the_crop_is_ripe_and_ends_with_the_frost() -> None:
    """Fifty to sixty days from sowing: Oregon State University, as the entry cites."""
    found = listed(HEAD + NET + BEANS)
    pick = the(found, "bean-net/pole-bean-pick")
    assert pick.planned == date(2027, 5, 18) + timedelta(days=50)
    assert pick.every_days == (2, 3)
    assert pick.until == date(2027, 10, 12)
    assert place(found, "sow pole bean") < place(found, "pick every")


def test_who_picks_is_said_on_the_frame() -> None:
    people = "  person Isa\n  person Bram\n"
    found = listed(HEAD + people + NET + BEANS + "  picked by Bram\n")
    assert the(found, "bean-net/pole-bean-pick").who == ("Bram",)


def test_peas_are_cleared_before_beans_follow_on_the_same_net() -> None:
    plan = "  grow tall pea, sow 20 March\n  grow pole bean, sow 5 July\n"
    found = listed(HEAD + NET + plan)
    cleared = the(found, "bean-net/clear-tall-pea")
    assert "bean-net/tall-pea-pick" in cleared.after
    assert "bean-net/clear-tall-pea" in the(found, "bean-net/sow-pole-bean").after
    assert cleared.planned is not None
    assert cleared.planned <= date(2027, 7, 5)


def test_two_crops_that_share_a_net_are_not_cleared_for_each_other() -> None:
    plan = "  grow tall pea, sow 20 March\n  grow sweet pea, sow 1 April\n"
    assert not [job for job in listed(HEAD + NET + plan).jobs if "/clear" in job.id]


def test_two_sowings_of_one_plant_have_each_their_own_address() -> None:
    plan = "  grow lettuce, sow 10 March\n  grow lettuce, sow 20 March\n"
    found = listed(f"{HEAD}bed Low Bed, 1 m x 3 m\n{plan}")
    assert the(found, "low-bed/sow-lettuce").planned == date(2027, 3, 10)
    assert the(found, "low-bed/sow-lettuce-2").planned == date(2027, 3, 20)


def test_what_lives_for_years_is_planted_once_its_frame_stands() -> None:
    plan = "fence Lane Fence, mortised fence\n  grow climbing rose, 4 plants\n  ready by 1 April\n"
    found = listed(HEAD + plan)
    job = the(found, "lane-fence/plant-out-climbing-rose")
    assert job.says == "Lane Fence: plant climbing rose, 4 plants"
    assert "lane-fence/firm" in job.after


def test_what_lives_for_years_is_there_already_on_a_frame_that_stands() -> None:
    found = listed(f"{HEAD}fence Lane Fence, mortised fence, built 2020\n  grow climbing rose\n")
    assert not [job for job in found.jobs if job.kind == "plant out"]
    assert [job for job in found.jobs if "climbing rose" in job.says]


@pytest.mark.parametrize("name", ["wonderplant", "rose", "clematis"])
def test_a_plant_that_is_unknown_or_unclear_still_comes_after_its_frame(name: str) -> None:
    found = listed(f"{HEAD}{NET}  grow {name}\n")
    assert place(found, "drop in the pins") < place(found, name)


def test_what_is_sown_under_cover_without_a_day_to_go_out_is_not_sown_on_the_frame() -> None:
    found = listed(f"{HEAD}{NET}  grow cucumber, sow 4 May indoors\n")
    assert the(found, "bean-net/sow-cucumber").after == ()
    assert "bean-net/pins" in the(found, "bean-net/plant-out-cucumber").after


def test_a_tender_plant_set_out_before_the_last_frost_is_told_of_it() -> None:
    early = HEAD + NET + "  grow cucumber, 4 plants, plant out 1 May\n"
    late = HEAD + NET + "  grow cucumber, 4 plants, plant out 20 May\n"
    hardy = HEAD + NET + "  grow tall pea, 40 plants, sow 1 April\n"
    assert any("6 May" in one for one in the(listed(early), "bean-net/plant-out-cucumber").dangers)
    assert not the(listed(late), "bean-net/plant-out-cucumber").dangers
    assert not the(listed(hardy), "bean-net/sow-tall-pea").dangers


def test_of_two_kinds_of_raspberry_either_is_planted_and_not_sown() -> None:
    text = HEAD + "frame Cane Row, cane wires\n  grow raspberry, 6 plants\n"
    assert the(listed(text), "cane-row/plant-out-raspberry").does == "plant raspberry, 6 plants"


def test_where_there_is_no_frost_what_lasts_is_planted_as_the_rains_set_in() -> None:
    text = "garden Reef Plot, 2027\n  place 10 N, 61 W\n  frost none\n  rains June to November\n"
    wires = "frame Fruit Wires, grape wires\n  grow passionfruit, 3 plants\n"
    job = the(listed(text + wires), "fruit-wires/plant-out-passionfruit")
    assert job.earliest == date(2027, 6, 8)


def test_a_rose_without_a_day_is_told_when_roses_are_planted() -> None:
    text = HEAD + "fence Rose Fence, mortised fence\n  grow climbing rose, 2 plants\n"
    job = the(listed(text), "rose-fence/plant-out-climbing-rose")
    assert job.planned is None
    assert "bare roots only while it rests" in job.how


def test_sticks_that_follow_the_peas_do_not_wait_for_the_crop_after_them() -> None:
    text = (
        HEAD + "frame Pea Rows, pea sticks\n  grow tall pea, 100 plants, sow 20 March\n"
        "  grow leek, 40 plants, plant out 10 July\n"
    )
    found = listed(text)
    order = [job.id for job in found.jobs]
    assert order.index("pea-rows/stick") < order.index("pea-rows/tall-pea-pick")
    assert "stick by the time" in the(found, "pea-rows/sow-tall-pea").how
    assert the(found, "pea-rows/plant-out-leek").how == ""
