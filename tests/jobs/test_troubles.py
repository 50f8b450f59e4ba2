"""What cannot be as written, told in words that name the jobs."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from tests.jobs.gardens import BEANS, HEAD, NET, listed, place, the

if TYPE_CHECKING:
    from plantframe.jobs.job import Trouble


def only(text: str, today: date = date(2027, 1, 10)) -> Trouble:
    (trouble,) = listed(text, today).troubles
    return trouble


def test_a_sound_plan_has_no_troubles() -> None:
    assert not listed(HEAD + NET + BEANS + "  finish oil\n  ready by 15 May\n").troubles


# ---- circles ----------------------------------------------------------------------------------
def test_a_step_put_before_what_it_needs_is_a_circle_and_the_trades_order_stays() -> None:
    text = HEAD + NET + BEANS + "  step thread the net after weave the bar\n"
    trouble = only(text)
    assert trouble.name == "circle"
    assert trouble.jobs == ("bean-net/net", "bean-net/bar")
    assert "thread the net" in trouble.says
    assert "“step thread the net after weave the bar” is left out" in trouble.says
    assert trouble.where is not None
    assert trouble.where.line == 9
    found = listed(text)
    assert place(found, "thread the net") < place(found, "weave the bar")


def test_tasks_that_wait_for_each_other_are_a_circle_and_both_are_listed() -> None:
    plan = "task wash the pots, after sort the pots\ntask sort the pots, after wash the pots\n"
    trouble = only(HEAD + plan)
    assert trouble.name == "circle"
    assert set(trouble.jobs) == {"task/wash-the-pots", "task/sort-the-pots"}
    assert len(listed(HEAD + plan).jobs) == 2


def test_own_steps_in_a_circle_are_all_listed() -> None:
    own = (
        "frame Bean Bridge\n  own design\n  step saw the poles after hang the net\n"
        "  step hang the net after saw the poles\n"
    )
    assert only(HEAD + own).name == "circle"
    assert len(listed(HEAD + own).jobs) == 2


# ---- days of the gardener's own -----------------------------------------------------------------
def test_a_bar_moved_before_its_net_is_told_with_both_days_and_the_reason() -> None:
    trouble = only(
        HEAD + NET + BEANS + "  move weave the bar to 2 May\n  move thread the net to 5 May\n"
    )
    assert (trouble.name, trouble.jobs) == ("out-of-order", ("bean-net/net", "bean-net/bar"))
    assert "5 May and 2 May" in trouble.says
    assert "no longer be threaded" in trouble.says


def test_pins_moved_before_the_net_are_told_though_a_step_lies_between() -> None:
    lines = "  move drop in the pins to 5 May\n  move thread the net to 10 May\n"
    trouble = only(HEAD + NET + BEANS + lines)
    assert trouble.jobs == ("bean-net/net", "bean-net/bar", "bean-net/pins")
    assert "“thread the net on the posts” is down for 10 May" in trouble.says


def test_pins_that_are_in_before_the_net_is_on_are_told() -> None:
    lines = "  done drop in the pins, 2 May\n  move thread the net to 5 May\n"
    trouble = only(HEAD + NET + BEANS + lines)
    assert (trouble.name, trouble.jobs) == ("out-of-order", ("bean-net/net", "bean-net/pins"))


def test_posts_set_three_days_after_their_coat_are_told_of_the_wait() -> None:
    text = HEAD + NET + BEANS + "  finish oil, 12 April\n  move set the middle posts to 15 April\n"
    text += "  move open a hole to 15 April\n"
    trouble = only(text)
    assert trouble.name == "out-of-order"
    assert "3 days after" in trouble.says
    assert "leave 7 days for the feet to air" in trouble.says


# ---- days that do not fit -----------------------------------------------------------------------
LATE = HEAD + NET + BEANS + "  finish oil\n"


def test_a_frame_that_cannot_stand_by_sowing_is_told_with_the_days_it_needs() -> None:
    trouble = only(LATE, date(2027, 5, 14))
    assert trouble.name == "too-late"
    assert trouble.jobs[-1] == "bean-net/sow-pole-bean"
    assert "can begin on 14 May" in trouble.says
    assert "7 days for the feet to air" in trouble.says
    assert "3 days too few" in trouble.says


def test_the_list_then_puts_the_order_before_the_day() -> None:
    found = listed(LATE, date(2027, 5, 14))
    sow, pins = the(found, "bean-net/sow-pole-bean"), the(found, "bean-net/pins")
    assert pins.planned == sow.planned == date(2027, 5, 21)


def test_ready_by_before_the_wait_is_over_is_told() -> None:
    trouble = only(HEAD + NET + "  finish oil\n  ready by 12 January\n")
    assert trouble.name == "too-late"
    assert "ready by 12 January" in trouble.says
    assert trouble.jobs[-1] == "bean-net/pins"


def test_a_task_due_before_what_it_waits_for_is_told() -> None:
    plan = (
        f"{HEAD}{NET}  move firm the soil to 1 May\ntask sweep, after firm the soil, by 20 April\n"
    )
    trouble = only(plan)
    assert trouble.name == "out-of-order"
    assert "20 April" in trouble.says


def test_where_only_the_shortest_wait_fits_that_is_said_and_kept() -> None:
    found = listed(LATE, date(2027, 5, 8))
    (trouble,) = found.troubles
    assert trouble.name == "short-wait"
    assert "7 to 14 days are usual for the feet to air" in trouble.says
    coat, ends = the(found, "bean-net/coat"), the(found, "bean-net/ends")
    assert coat.planned is not None
    assert ends.planned is not None
    assert (ends.planned - coat.planned).days >= 7


def test_work_whose_day_is_over_is_told_once_for_each_frame() -> None:
    found = listed(HEAD + NET + BEANS + "  ready by 15 May\n", date(2027, 6, 1))
    (trouble,) = found.troubles
    assert trouble.name == "overdue"
    assert "1 more job" in trouble.says
    assert the(found, "bean-net/pins").overdue
    assert the(found, "bean-net/pins").planned == date(2027, 6, 1)


@pytest.mark.parametrize("today", [date(2025, 11, 1), date(2029, 1, 1)])
def test_a_plan_read_long_before_or_after_its_season_is_not_overdue(today: date) -> None:
    found = listed(HEAD + NET + BEANS + "  ready by 15 May\n", today)
    assert not found.troubles
    assert not [job for job in found.jobs if job.overdue]


@pytest.mark.parametrize("text", [LATE, HEAD + NET + "  step thread the net after weave the bar\n"])
def test_no_trouble_speaks_as_a_machine_would(text: str) -> None:
    for trouble in listed(text, date(2027, 5, 14)).troubles:
        assert not {"cycle", "graph", "node", "edge", "constraint"} & set(trouble.says.split())
        assert trouble.says.endswith(".")


def test_what_follows_work_taken_as_done_is_not_late_for_its_sake() -> None:
    box = (
        "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n"
        "  on 10 March to 20 May\n  grow lettuce, 20 plants, sow 12 March under cover\n"
    )
    found = listed(HEAD + box, date(2027, 5, 10))
    assert [trouble.name for trouble in found.troubles] == ["overdue"]
    assert "the days of" in found.troubles[0].says


def test_several_days_that_are_over_are_told_in_the_plural() -> None:
    text = HEAD + NET + BEANS + "  ready by 1 May\n"
    overdue = next(t for t in listed(text, date(2027, 6, 20)).troubles if t.name == "overdue")
    assert "1 more job are over, and they are not marked" in overdue.says
