"""How plants hold on, against what frames give them."""

from __future__ import annotations

import pytest

from plantframe.pairing.climber import Climber
from plantframe.pairing.holding import holding
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_frame, of_wall
from plantframe.season.entries import entry_of
from tests.pairing.gardens import answers, season_of


def held(plant: str, frame_lines: str) -> tuple[str, str]:
    """Verdict and words for a plant on a frame typed out."""
    season = season_of(f"garden Test Row, 2027\n  place 52 N, 1 W\n{frame_lines}")
    name = frame_lines.split(",", maxsplit=1)[0].split(" ", 1)[1]
    support, entry = of_frame(season, name), entry_of(plant)
    assert support is not None
    assert entry is not None
    reason = holding(Pair(Climber(entry, entry.name), support))
    return reason.verdict, reason.says


def test_leaf_stalks_cannot_close_round_a_38_mm_post() -> None:
    # advice of the trade: strips or mesh of 12 mm and thinner (common practice, no source)
    verdict, says = held("late clematis", "frame Row, crossed row\n  poles 38 mm round, 2.4 m\n")
    assert verdict == "knocked out"
    assert "38 mm" in says
    assert "12 mm" in says


def test_rungs_a_hand_apart_let_a_clematis_lie_over_what_it_cannot_grip() -> None:
    assert answers("large-flowered clematis", "obelisk")["hold"].verdict == "fair"


def test_where_print_is_stricter_about_clematis_both_figures_are_told() -> None:
    says = answers("late clematis", "lattice")["hold"].says
    assert "12 mm" in says
    assert "7 mm" in says


def test_a_bean_climbs_a_thin_pole_and_not_a_thick_one() -> None:
    thin, _ = held("pole bean", "frame Row, crossed row\n  poles 25 mm round, 2.4 m\n")
    thick, says = held("pole bean", "frame Row, crossed row\n  poles 120 mm round, 2.4 m\n")
    assert (thin, thick) == ("good", "knocked out")
    assert "75 mm" in says


def test_a_net_hung_on_a_rail_fence_gives_sweet_peas_their_hold() -> None:
    bare, _ = held("sweet pea", "fence Row, mortised fence\n  posts 1.8 m, 60 cm down\n")
    netted, _ = held(
        "sweet pea", "fence Row, mortised fence\n  posts 1.8 m, 60 cm down\n  net mesh 15 cm\n"
    )
    assert (bare, netted) == ("knocked out", "good")


def test_roses_are_tied_along_rails_and_not_to_a_net() -> None:
    assert answers("climbing rose", "mortised fence")["hold"].verdict == "good"
    assert answers("climbing rose", "net frame")["hold"].verdict == "knocked out"
    assert "tie it along" in answers("climbing rose", "mortised fence")["hold"].says


def test_cucumbers_on_a_5_cm_net_swell_through_it() -> None:
    verdict, says = held("cucumber", "frame Row, net frame\n  net mesh 5 cm\n")
    assert verdict == "fair"
    assert "swells" in says
    assert held("cucumber", "frame Row, net frame\n  net mesh 15 cm\n")[0] == "good"


def test_peas_want_no_wider_net_than_20_cm() -> None:
    assert held("tall pea", "frame Row, net frame\n  net mesh 5 cm\n")[0] == "good"
    assert held("tall pea", "frame Row, net frame\n  net mesh 25 cm\n")[0] == "fair"


def test_string_rots_under_wood_that_stays() -> None:
    verdict, says = held("chocolate vine", "frame Row, hop pole\n")
    assert verdict == "knocked out"
    assert "rot" in says
    assert answers("hop", "hop pole")["hold"].verdict == "good"


def test_a_tomato_is_tied_to_stake_and_string_and_clipped_to_a_net() -> None:
    assert answers("tall tomato", "stake")["hold"].verdict == "good"
    assert answers("tall tomato", "string drops")["hold"].verdict == "good"
    assert answers("tall tomato", "net frame")["hold"].verdict == "fair"


def test_a_twiner_is_told_that_level_wires_give_it_nothing() -> None:
    assert answers("pole bean", "grape wires")["hold"].verdict == "knocked out"
    assert answers("pole bean", "cane wires")["hold"].verdict == "fair"
    assert answers("common honeysuckle", "wall wires")["hold"].verdict == "fair"


@pytest.mark.parametrize(
    ("surface", "verdict"),
    [
        ("brick", "good"),
        ("stone", "good"),
        ("shingles", "knocked out"),
        ("weatherboard", "knocked out"),
        ("painted brick", "knocked out"),
        ("render", "knocked out"),
        ("crumbling brick", "knocked out"),
    ],
)
def test_a_clinger_goes_on_masonry_in_good_order_and_on_no_other_wall(
    surface: str, verdict: str
) -> None:
    season = season_of(f"garden Test Row, 2027\nwall Back Wall\n  surface {surface}\n")
    entry = entry_of("ivy")
    assert entry is not None
    wall = of_wall(season.plan.things["Back Wall"])
    assert holding(Pair(Climber(entry, "ivy"), wall)).verdict == verdict


def test_a_wall_nobody_has_described_is_asked_about() -> None:
    season = season_of("garden Test Row, 2027\n  place 52 N, 1 W\nwall Back Wall\n")
    entry = entry_of("Boston ivy")
    assert entry is not None
    reason = holding(Pair(Climber(entry, "Boston ivy"), of_wall(season.plan.things["Back Wall"])))
    assert reason.verdict == "fair"
    assert "nobody has said" in reason.says


def test_stems_are_woven_in_and_out_of_pickets() -> None:
    reason = answers("trumpet honeysuckle", "picket fence")["hold"]
    assert reason.verdict == "fair"
    assert "woven" in reason.says


def test_a_clinger_does_not_stay_on_a_lattice_in_front_of_a_wall() -> None:
    assert answers("ivy", "lattice")["hold"].verdict == "knocked out"


def test_trumpet_vine_on_a_pergola_is_tied_until_it_has_rooted_on() -> None:
    reason = answers("trumpet vine", "pergola")["hold"]
    assert reason.verdict == "fair"
    assert "until" in reason.says


def test_a_border_flower_goes_to_what_the_trade_holds_it_up_with() -> None:
    assert answers("peony", "ring")["hold"].verdict == "good"
    assert answers("delphinium", "stake")["hold"].verdict == "good"
    assert answers("delphinium", "wigwam")["hold"].verdict == "knocked out"
