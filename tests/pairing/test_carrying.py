"""Weights against what frames carry: in words first, and from the same sums as the advice."""

from __future__ import annotations

import pytest

from plantframe.mechanics.ranges import Range
from plantframe.pairing.carrying import carrying, how_much
from plantframe.pairing.climber import Climber
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_frame
from plantframe.season.entries import entry_of
from tests.pairing.gardens import answers, season_of


def carried(plant: str, frame_lines: str, garden: str = "") -> tuple[str, str]:
    """Verdict and words for a plant on a net frame typed out."""
    season = season_of(
        f"garden Test Row, 2027\n  place 52 N, 1 W\n{garden}frame Row, net frame\n{frame_lines}"
    )
    support, entry = of_frame(season, "Row"), entry_of(plant)
    assert support is not None
    assert entry is not None
    reason = carrying(Pair(Climber(entry, entry.name), support))
    return reason.verdict, reason.says


def bays(count: int, length: str, bar: str = "2x2") -> str:
    return f"  bays {count} of {length}\n  posts 2x2, 8 ft, 18 in down\n  bar {bar}\n"


# Bays and bars that stand in gardens, and two that bow: common practice, no source.
@pytest.mark.parametrize(
    ("plant", "lines", "verdict"),
    [
        ("tall pea", bays(1, "8 ft"), "good"),
        ("pole bean", bays(2, "8 ft"), "good"),
        ("cucumber", bays(5, "8 ft"), "good"),
        ("runner bean", bays(2, "8 ft"), "fair"),
        ("climbing squash", bays(3, "4 ft"), "good"),
        ("climbing squash", bays(1, "8 ft"), "knocked out"),
        ("pole bean", bays(1, "10 ft"), "knocked out"),
    ],
)
def test_a_bar_carries_what_the_trade_hangs_on_it(plant: str, lines: str, verdict: str) -> None:
    assert carried(plant, lines)[0] == verdict


def test_the_sum_is_the_one_the_advice_uses() -> None:
    season = season_of(
        f"garden Test Row, 2027\n  place 52 N, 1 W\nframe Row, net frame\n{bays(1, '8 ft')}"
        "  grow climbing squash, 3 plants\n"
    )
    load = season.frames["Row"].load
    assert load is not None
    assert how_much(load.ratio) == "about twice too much"
    assert "about twice too much" in carried("climbing squash", bays(1, "8 ft"))[1]


@pytest.mark.parametrize(
    ("middle", "words"),
    [
        (0.7, "with something in hand"),
        (1.0, "about as much as it carries, so tight"),
        (1.5, "likely too much"),
        (2.0, "about twice too much"),
        (3.4, "about 3.4 times too much"),
    ],
)
def test_a_comparison_is_put_in_words_first(middle: float, words: str) -> None:
    assert how_much(Range(middle / 2, middle, middle * 2)) == words


def test_a_longer_bay_never_carries_a_plant_better() -> None:
    order = ("good", "fair", "knocked out")
    places = [
        order.index(carried("winter squash", bays(2, f"{feet} ft"))[0]) for feet in (3, 5, 6, 8, 10)
    ]
    assert places == sorted(places)


def test_a_vine_that_keeps_its_wood_is_weighed_full_grown() -> None:
    # mountain clematis is kept off lattices by the trade (common practice, no source)
    assert answers("mountain clematis", "lattice")["carry"].verdict == "knocked out"
    assert answers("late clematis", "lattice")["carry"].verdict == "good"


def test_beans_on_a_hand_tight_wire_over_3_m_pull_it_too_low() -> None:
    lines = "  bays 1 of 3 m\n  posts 45x45 mm, 2.4 m, 45 cm down\n  wires 1\n"
    verdict, says = carried("pole bean", lines)
    assert verdict == "knocked out"
    assert "30 cm" in says


def test_a_windy_place_asks_for_stays_square_to_the_row() -> None:
    windy = "  wind windy\n"
    verdict, says = carried("pole bean", bays(2, "8 ft"), windy)
    assert verdict == "fair"
    assert "square" in says
    stayed, _ = carried("pole bean", bays(2, "8 ft") + "  stays 3, square to the row\n", windy)
    assert stayed == "good"


def test_a_pergola_is_left_to_a_builder_with_the_weight_to_tell_him() -> None:
    reason = answers("wisteria", "pergola")["carry"]
    assert reason.verdict == "fair"
    assert "builder" in reason.says
    assert "kg a metre" in reason.says


def test_a_trunk_asks_for_stouter_wire_on_a_wall_and_both_figures_are_told() -> None:
    says = answers("wisteria", "wall wires")["carry"].says
    assert "3 mm to 4 mm" in says
    assert "8 mm" in says


def test_a_pumpkin_is_left_on_the_ground() -> None:
    reason = answers("pumpkin", "mesh panel")["carry"]
    assert reason.verdict == "knocked out"
    assert "ground" in reason.says
