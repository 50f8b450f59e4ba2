"""The tape's smallest step: lengths are never made longer than the board, cuts never thinner."""

from __future__ import annotations

import pytest

from plantframe.timber.tape import KERF_M, Tape

INCHES, METRIC = Tape(imperial=True), Tape()


def test_eight_feet_are_96_inches_of_16_steps() -> None:
    assert INCHES.nearest(2.4384) == INCHES.within(2.4384) == 96 * 16


def test_a_board_sold_by_the_metre_is_no_longer_on_an_inch_tape() -> None:
    # 2.4 m is 94.488 in: 94 and 7/16 fit in it, 94 and 1/2 do not
    assert INCHES.within(2.4) == 94 * 16 + 7
    assert INCHES.board(INCHES.within(2.4)) == "2.4 m"


@pytest.mark.parametrize(("tape", "steps"), [(INCHES, 2), (METRIC, 3)])
def test_a_power_saws_cut_is_an_eighth_or_three_millimetres(tape: Tape, steps: int) -> None:
    assert tape.kerf(KERF_M) == steps


def test_a_fine_cut_is_never_none() -> None:
    assert INCHES.kerf(0.0005) == 1
    assert METRIC.kerf(0.0014) == 2


@pytest.mark.parametrize(
    ("tape", "steps", "says"),
    [
        (INCHES, 96 * 16, "8 ft"),
        (INCHES, 30 * 16, "30 in"),
        (INCHES, 35 * 16 + 14, "35-7/8 in"),
        (INCHES, 0, "0 in"),
        (METRIC, 1981, "1981 mm"),
    ],
)
def test_a_length_is_said_as_it_is_read(tape: Tape, steps: int, says: str) -> None:
    assert tape.says(steps) == says


def test_a_metric_board_is_called_by_its_metres() -> None:
    assert (METRIC.board(2400), METRIC.board(950)) == ("2.4 m", "950 mm")


def test_a_sixteenth_is_a_millimetre_and_a_half() -> None:
    # 1/16 in = 1.5875 mm
    assert METRIC.millimetres(7) == 7
    assert INCHES.millimetres(16) == 25
