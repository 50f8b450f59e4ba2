"""The cutting list of a plan, against lists made by hand."""

from __future__ import annotations

import pytest

from plantframe.timber.sawing import Sawing, Stock, Wanted
from tests.timber.gardens import HEAD, NET, YARD, cutting

LATTICE = """wall Barn, faces east
frame Lattice, own design
  piece 4 of 2x2, 5 ft
  piece 3 of 2x2, 30 in
"""


def recounted(found) -> None:
    """Every board holds its pieces, the cuts between them and the rest, and no piece is lost."""
    for board in found.boards:
        if not board.pieces:
            assert board.left == board.length
            continue
        pieces = sum(piece.length for piece in board.pieces)
        cuts = len(board.pieces) - (board.left == 0)
        dust = board.length - pieces - cuts * found.kerf - board.left
        # what is thinner than a cut goes with it
        assert dust == 0 or (board.left == 0 and 0 <= dust < found.kerf)
    for lot in found.lots:
        for piece in lot.pieces:
            sawn = sum(board.pieces.count(piece) for board in lot.boards)
            missing = sum(one.count for one in lot.unfit if one.piece == piece)
            assert sawn + missing == piece.stick.count


def test_a_row_from_the_yard_is_five_sticks_as_they_are() -> None:
    found = cutting(NET + YARD)
    (lot,) = found.lots
    assert (lot.cost, lot.proven, len(lot.bought)) == (15.5, True, 5)
    assert all(board.as_it_is for board in lot.boards)
    recounted(found)


def test_old_posts_are_used_first_and_cost_nothing() -> None:
    found = cutting(NET + YARD + "shed\n  4 posts 2x2, 8 ft\n")
    (lot,) = found.lots
    assert (lot.cost, len(lot.from_shed)) == (3.1, 4)
    recounted(found)


def test_old_posts_stand_in_the_ground_again_before_they_are_bars() -> None:
    (lot,) = cutting(NET + YARD + "shed\n  3 posts 2x2, 8 ft\n").lots
    assert [board.pieces[0].stick.part for board in lot.from_shed] == ["post"] * 3


def test_a_split_stick_is_no_post() -> None:
    found = cutting(NET + YARD + "shed\n  5 posts 2x2, 8 ft (all split)\n")
    (lot,) = found.lots
    assert lot.from_shed == ()
    assert found.unused[0][1] == 5


def test_a_split_stick_may_be_a_cross_piece() -> None:
    found = cutting(LATTICE + YARD + "shed\n  1 post 2x2, 6 ft (split)\n")
    (lot,) = found.lots
    (old,) = lot.from_shed
    assert old.flawed
    recounted(found)


def test_ripping_is_cheaper_where_the_plan_speaks_of_it() -> None:
    # by hand: three ripped 2x4 at 4.60 give six sticks, but five want two and a 2x2: 12.30
    (lot,) = cutting(NET + YARD + "task rip some 2x4, at the yard\n").lots
    assert lot.cost == pytest.approx(2 * 4.60 + 3.10)
    assert {board.half for board in lot.boards} == {"", "a", "b"}


def test_nobody_is_told_to_rip_who_does_not_speak_of_it() -> None:
    (lot,) = cutting(NET + YARD).lots
    assert not any(board.half for board in lot.boards)


def test_boards_are_ripped_where_the_yard_has_no_such_stick() -> None:
    found = cutting(NET + "yard\n  2x4, 8 ft, at 4.60\n")
    (lot,) = found.lots
    assert lot.cost == pytest.approx(3 * 4.60)
    assert all(board.half for board in lot.boards)
    recounted(found)


def test_old_boards_are_ripped_only_with_a_saw_for_it() -> None:
    text = NET + YARD + "task rip 2x4\nshed\n  3 of 2x4, 8 ft\n"
    (by_hand,) = cutting(text).lots
    (by_saw,) = cutting(text, HEAD + "  tools table saw\n").lots
    assert by_hand.cost == pytest.approx(12.30)
    assert by_hand.ripping_old_saves == pytest.approx(12.30)
    assert by_saw.cost == 0


def test_two_old_boards_are_not_counted_twice() -> None:
    # the only 8 ft board serves as the 2x4 or as two sticks
    text = (
        "frame Bench, own design\n  piece 1 of 2x4, 8 ft\n  piece 2 of 2x2, 8 ft\n"
        + YARD
        + "task rip 2x4\nshed\n  1 of 2x4, 8 ft\n"
    )
    found = cutting(text, HEAD + "  tools band saw\n")
    used = [board for lot in found.lots for board in lot.from_shed]
    assert len(used) == 1
    # by hand: the board is free one way, the other costs one 2x4
    assert sum(lot.cost for lot in found.lots) == pytest.approx(4.60)
    recounted(found)


def test_two_pieces_of_48_in_do_not_come_from_96() -> None:
    text = (
        "frame Box, own design\n  piece 2 of 2x4, 48 in\n"
        "yard\n  2x4, 8 ft, at 4.60\n  2x4, 10 ft, at 6.20\n"
    )
    (lot,) = cutting(text).lots
    # one of 10 ft at 6.20, not two of 8 ft at 9.20
    assert lot.cost == 6.20
    assert [board.left for board in lot.boards] == [(120 - 96) * 16 - 4]


def test_a_little_shorter_saves_a_board_and_is_told() -> None:
    text = "frame Box, own design\n  piece 10 of 2x2, 48 in\nyard\n  2x2, 8 ft, at 3.10\n"
    (lot,) = cutting(text).lots
    assert lot.cost == 31.0
    assert lot.shorter is not None
    # by hand: (96 - 1/8) / 2 = 47 15/16 in, and five boards
    assert lot.shorter.to == 47 * 16 + 15
    assert lot.shorter.saves == pytest.approx(15.5)


def test_the_gardens_own_kerf_counts() -> None:
    # by hand: 2 x 1199 mm and a cut of 3 mm are 2401 mm, with a cut of 1 mm 2399 mm
    head = "garden Alder Row, 2027\n  place 51.9 N, 2.3 W\n"
    text = (
        "frame Box, own design\n  piece 2 of 38x38 mm, 119.9 cm\nyard\n  38x38 mm, 2.4 m, at 3.10\n"
    )
    (coarse,) = cutting(text, head).lots
    (fine,) = cutting(text, head + "  kerf 1 mm\n").lots
    assert (coarse.cost, fine.cost) == (6.2, 3.1)


def test_a_piece_longer_than_any_board_is_named_with_what_would_do() -> None:
    found = cutting("frame Box, own design\n  piece 2 of 2x2, 9 ft\nyard\n  2x2, 8 ft, at 3.10\n")
    (lot,) = found.lots
    (unfit,) = lot.unfit
    assert (unfit.count, unfit.longest) == (2, 96 * 16)
    assert unfit.would_do == 120 * 16
    recounted(found)


def test_an_old_board_long_enough_serves_as_far_as_it_goes() -> None:
    text = (
        "frame Box, own design\n  piece 2 of 2x2, 9 ft\n"
        "yard\n  2x2, 8 ft, at 3.10\nshed\n  1 of 2x2, 10 ft\n"
    )
    found = cutting(text)
    (lot,) = found.lots
    assert [one.count for one in lot.unfit] in ([1], [2])
    recounted(found)


def test_without_a_price_the_least_wood_is_bought() -> None:
    # by hand, 3 mm cuts: 2 x 1.75 + a cut is 3503 mm, from one of 3.6 m and not two of 2.4 m
    text = "frame Box, own design\n  piece 2 of 45x45 mm, 1.75 m\n"
    found = cutting(text, HEAD + "  timber actual\n")
    (lot,) = found.lots
    assert not lot.priced
    assert [board.length for board in lot.bought] == [3600]
    assert (lot.cost, lot.proven) == (3600, True)


def test_old_cedar_is_kept_for_what_wants_cedar() -> None:
    text = (
        "frame Gate, own design\n  piece 1 of 2x4 cedar, 6 ft\n  piece 1 of 2x4, 6 ft\n"
        "yard\n  2x4, 8 ft, at 4.60\nshed\n  1 of 2x4 cedar, 6 ft\n"
    )
    found = cutting(text)
    used = {lot.wood: len(lot.from_shed) for lot in found.lots}
    assert used == {"cedar": 1, "softwood": 0}


def test_treated_old_wood_goes_into_no_box_round_food() -> None:
    text = """cover Seed Box, cold frame
  size 8 ft x 4 ft, low side south
  back 2x12
  front 2x8
yard
  2x2, 8 ft, at 3.10
  2x4, 8 ft, at 4.60
  2x8, 8 ft, at 11.80
  2x12, 8 ft, at 17.60
  1x2, 8 ft, at 1.20
shed
  2 treated 2x8, 8 ft
"""
    found = cutting(text)
    assert not any(lot.from_shed for lot in found.lots)
    recounted(found)


def test_other_lengths_at_the_yard_are_another_list() -> None:
    found = cutting(NET + YARD, lengths_m=(3.048,))
    (lot,) = found.lots
    assert {board.length for board in lot.bought} == {120 * 16}
    recounted(found)


def test_the_posts_and_bars_of_two_frames_are_one_list_with_a_letter_each() -> None:
    found = cutting(NET + NET.replace("Bean Net", "Pea Net") + YARD)
    (lot,) = found.lots
    assert [piece.mark for piece in lot.pieces] == ["a", "b", "c", "d"]
    assert [board.number for board in lot.boards] == list(range(1, 11))


def test_the_list_is_what_its_own_problem_says() -> None:
    # the lot above, put to the solver by hand
    from plantframe.timber.solver import solve

    found = solve(Sawing((Wanted(96 * 16, 5),), (Stock(96 * 16, 310),), 2))
    assert found is not None
    assert found.cost / 100 == cutting(NET + YARD).lots[0].cost
