"""Height and length of frames against plants, and the top of a crop against the picker."""

from __future__ import annotations

from plantframe.pairing.climber import Climber
from plantframe.pairing.pair import Pair
from plantframe.pairing.reaching import reach_of, reaching
from plantframe.pairing.supports import of_frame
from plantframe.season.entries import entry_of
from tests.pairing.gardens import answers, season_of


def reached(
    plant: str, up: str, garden: str = "", *, stopped: bool = False, count: int | None = None
) -> tuple[str, str]:
    """Verdict and words for a plant on a net frame so high, one bay of 2.4 m."""
    season = season_of(
        f"garden Test Row, 2027\n  place 52 N, 1 W\n{garden}"
        f"frame Row, net frame\n  bays 1 of 2.4 m\n  posts 45x45 mm, 60 cm down, {up} up\n"
    )
    support, entry = of_frame(season, "Row"), entry_of(plant)
    assert support is not None
    assert entry is not None
    reason = reaching(Pair(Climber(entry, entry.name, stopped=stopped, count=count), support))
    return reason.verdict, reason.says


def test_runner_beans_fold_over_a_frame_of_1_50_m() -> None:
    verdict, says = reached("runner bean", "1.5 m")
    assert verdict == "knocked out"
    assert "folds over the top" in says
    assert reached("runner bean", "2 m")[0] == "good"


def test_pinched_at_the_top_they_may_stay() -> None:
    assert reached("runner bean", "1.5 m", stopped=True)[0] == "good"


def test_what_is_led_along_may_be_longer_than_the_frame_is_high() -> None:
    assert answers("climbing rose", "mortised fence")["reach"].verdict == "good"
    assert answers("wisteria", "pergola")["reach"].verdict == "good"


def test_a_morning_glory_runs_along_a_low_fence_and_beans_do_not() -> None:
    assert answers("morning glory", "animal fence")["reach"].verdict == "fair"
    assert answers("runner bean", "animal fence")["reach"].verdict == "knocked out"


def test_kiwis_overhead_are_picked_once_and_from_a_step() -> None:
    assert answers("hardy kiwi", "pergola")["reach"].verdict == "fair"


def test_a_short_pea_leaves_the_top_of_a_tall_net_bare() -> None:
    verdict, says = reached("short pea", "2 m")
    assert verdict == "fair"
    assert "bare" in says


def test_beans_picked_above_the_picker_are_out_of_reach() -> None:
    garden = "  person Inge, reach 1.95 m\n"
    verdict, says = reached("pole bean", "2.4 m", garden)
    assert verdict == "knocked out"
    assert "Inge reaches 1.95 m" in says
    assert reached("pole bean", "2.2 m", garden)[0] == "fair"
    assert reached("pole bean", "2 m", garden)[0] == "good"


def test_a_taller_picker_brings_the_same_frame_within_reach() -> None:
    garden = "  person Inge, reach 1.95 m\n  person Bo, reach 2.25 m\n"
    assert reached("pole bean", "2.4 m", garden)[0] == "good"


def test_without_a_word_about_reach_two_metres_are_taken() -> None:
    season = season_of("garden Test Row, 2027\n  place 52 N, 1 W\n")
    assert reach_of(season.plan.garden) == ("", 2.0)


def test_flowers_that_are_only_looked_at_are_out_of_nobodys_reach() -> None:
    assert reached("morning glory", "2.4 m")[0] == "good"


def test_more_plants_than_the_row_takes_are_told_how_many_fit() -> None:
    verdict, says = reached("tall tomato", "1.8 m", count=20)
    assert verdict == "fair"
    assert "fit" in says
    assert "fit" not in reached("tall tomato", "1.8 m", count=4)[1]


def test_a_great_vine_swamps_a_small_frame() -> None:
    assert answers("rambler rose", "obelisk")["reach"].verdict != "good"
    assert answers("rambler rose", "pergola")["reach"].verdict == "good"
