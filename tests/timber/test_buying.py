"""The buying list: need less shed, the note for the yard, and what else will do."""

from __future__ import annotations

import pytest

from tests.timber.gardens import NET, YARD, buying, line


def test_need_less_shed_is_bought() -> None:
    found = line(NET + YARD + "shed\n  4 posts 2x2, 8 ft\n", "2x2")
    assert (found.count, found.from_shed, found.cost) == (1, 4, 3.10)


def test_nothing_is_bought_where_the_shed_has_it() -> None:
    found = buying(NET + YARD + "shed\n  5 posts 2x2, 8 ft\n")
    assert not any(one.what == "2x2" for one in found.lines)
    assert [(use.says, use.uses) for use in found.old] == [
        ("5 posts 2x2, 8 ft", (("Bean Net, post", 3), ("Bean Net, bar", 2)))
    ]


def test_the_cost_is_that_of_the_lines_with_a_price() -> None:
    found = buying(NET + YARD)
    assert found.cost == pytest.approx(15.5)
    assert {one.what for one in found.without_price} == {"nails 20d", "net"}


def test_without_a_price_there_is_no_cost() -> None:
    assert buying(NET).cost is None


def test_the_yard_gets_two_lines_on_ripping() -> None:
    found = buying(NET + "yard\n  2x4, 8 ft, at 4.60\n")
    rip, measure = found.to_rip
    assert "rip 3 of 2x4, 8 ft down the middle" in rip
    assert "6 sticks" in rip
    assert "1-1/2 x 1-11/16 in" in measure


def test_a_task_that_counts_other_boards_is_told() -> None:
    text = NET + "yard\n  2x4, 8 ft, at 4.60\ntask rip 4 of 2x4, at the yard\n"
    assert buying(text).own_count == "Your own task says “rip 4 of 2x4”; this list wants 3."
    assert buying(text.replace("rip 4", "rip 3")).own_count == ""


def test_where_they_are_out_of_it_other_boards_will_do() -> None:
    text = NET + "yard\n  2x2, 8 ft, at 3.10\n  2x2, 10 ft, at 4.00\n"
    assert line(text, "2x2").instead == "5 of 2x2, 10 ft"


def test_a_piece_longer_than_any_board_is_asked_for() -> None:
    text = "frame Box, own design\n  piece 2 of 2x2, 9 ft\nyard\n  2x2, 8 ft, at 3.10\n"
    found = line(text, "2x2, 10 ft or longer")
    assert found.count == 2
    assert "9 ft is wanted" in found.minds[0]


def test_what_the_yards_list_does_not_have_is_asked_for() -> None:
    found = line("frame Box, own design\n  piece 2 of 1x4, 5 ft\n" + YARD, "1x4")
    assert found.minds == ("your yard's list has no 1x4: ask whether it is sold in this length",)


def test_each_old_stick_is_told_its_best_use() -> None:
    text = NET + YARD + "shed\n  1 post 2x2, 8 ft\n  2 posts 2x2, 6 ft\n"
    found = buying(text)
    assert [use.says for use in found.old] == ["1 post 2x2, 8 ft"]
    assert [(old.says, count) for old, count in found.idle] == [("2 posts 2x2, 6 ft", 2)]
