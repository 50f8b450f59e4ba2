"""Parts that a round of care uses up."""

from __future__ import annotations

from datetime import date

from tests.jobs.gardens import HEAD, listed, the

BOX = """cover Seed Box, cold frame
  size 8 ft 1 in x 4 ft, low side south
  back 2x12
  front 2x8
  lights 4 of 24 in x 4 ft, glass
  brace 2x4
  strips new spring 2022
  built 2021
"""


def test_foot_strips_come_with_their_lengths_and_screws() -> None:
    """Two long strips of the box's 8 ft 1 in and two short ones; half an hour or so, two people."""
    job = the(listed(HEAD + BOX), "seed-box/care-strips")
    assert "2 long foot strips of 8 ft 1 in" in job.how
    assert "2 short foot strips" in job.how
    assert "screws" in job.how
    assert job.hands == 2
    assert job.planned is not None
    assert date(2027, 2, 15) <= job.planned <= date(2027, 4, 15)


def test_strips_that_are_three_years_old_are_left_alone() -> None:
    found = listed(HEAD + BOX.replace("spring 2022", "spring 2024"))
    assert found.job("seed-box/care-strips") is None


def test_a_round_without_parts_says_nothing_of_them() -> None:
    net = "frame Bean Net, net frame\n  bays 2 of 8 ft\n  built 2025\n"
    assert the(listed(HEAD + net), "bean-net/care-poke").how == ""
