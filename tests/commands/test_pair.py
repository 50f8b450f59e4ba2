"""What suits what, as it is printed."""

from __future__ import annotations

import pytest

from plantframe.commands.main import main


def printed(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    """What `pair` prints, its lines joined."""
    assert main(["pair", *words]) == 0
    return " ".join(capsys.readouterr().out.split())


def test_what_serves_in_place_of_every_reject_is_said_once(
    capsys: pytest.CaptureFixture[str],
) -> None:
    told = printed(capsys, "--plant", "climbing hydrangea")
    assert told.count("brick or stone in good order or wall wires") == 1
    assert told.endswith("In their place: brick or stone in good order or wall wires.")


def test_a_doubt_that_all_rejects_share_is_said_once(capsys: pytest.CaptureFixture[str]) -> None:
    told = printed(capsys, "--plant", "climbing hydrangea").partition("Ruled out")[2]
    assert told.count("Sources differ") == 1


def test_a_border_plant_is_told_its_prop_and_nothing_of_picking(
    capsys: pytest.CaptureFixture[str],
) -> None:
    told = printed(capsys, "--plant", "delphinium")
    assert "1. stake hold Delphinium wants one cane a spike" in told
    assert "top picks" not in told
    assert "comes again from the root" in told
    assert "cane wires" not in told.partition("Ruled out")[0]


@pytest.mark.parametrize("kind", ["ring", "stake"])
def test_a_prop_lists_plants_by_their_names(capsys: pytest.CaptureFixture[str], kind: str) -> None:
    told = printed(capsys, "--structure", kind)
    assert f", {kind} hold" not in told


def test_one_fact_that_rules_out_many_plants_is_told_of_the_first_and_the_others_named(
    capsys: pytest.CaptureFixture[str],
) -> None:
    told = printed(capsys, "--structure", "tripod").partition("Ruled out")[2]
    first, _, others = told.partition("winds round anything up to 25 mm")
    assert "winds round anything up to 25 mm" not in others
    named = others.partition("So too: ")[2].partition(".")[0]
    assert "morning glory" in named
    assert "morning glory:" not in first


def test_a_plant_that_is_not_to_be_planted_is_told_once_and_no_frame_is_named_for_it(
    capsys: pytest.CaptureFixture[str],
) -> None:
    told = printed(capsys, "--plant", "Oriental bittersweet")
    assert "1. " not in told
    assert told.count("is not to be planted") == 1
    assert "lattice" not in told
