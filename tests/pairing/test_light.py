"""Sun of a place against the plant's need."""

from __future__ import annotations

from plantframe.pairing.climber import Climber
from plantframe.pairing.light import lighting
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_kind
from plantframe.season.entries import entry_of
from tests.pairing.gardens import season_of


def lit(plant: str, sun: str) -> tuple[str, str]:
    """Verdict and words for a plant in a bed with such sun."""
    line = f"  sun {sun}\n" if sun else ""
    season = season_of(
        f"garden Test Row, 2027\n  place 52 N, 1 W\nbed North Bed, 1 m x 4 m\n{line}"
    )
    bed = season.plan.beds["North Bed"]
    support, entry = of_kind("net frame", season.plan.garden, bed), entry_of(plant)
    assert support is not None
    assert entry is not None
    reason = lighting(Pair(Climber(entry, entry.name), support))
    return reason.verdict, reason.says


def test_four_hours_do_not_ripen_cucumbers() -> None:
    verdict, says = lit("cucumber", "4 h")
    assert verdict == "knocked out"
    assert "4 hours" in says
    assert "6 to 8 hours" in says


def test_full_sun_suits_beans_and_half_the_day_is_doubtful_for_them() -> None:
    assert lit("pole bean", "full")[0] == "good"
    assert lit("pole bean", "half")[0] == "fair"


def test_half_the_day_suits_a_clematis_that_wants_its_roots_cool() -> None:
    verdict, says = lit("large-flowered clematis", "5 h")
    assert verdict == "good"
    assert "roots in the cool" in says


def test_what_bears_shade_is_not_ruled_out_by_shade() -> None:
    for plant in ("Virginia creeper", "climbing hydrangea", "ivy"):
        assert lit(plant, "3 h")[0] == "good", plant


def test_a_place_nobody_has_described_is_neither_praised_nor_ruled_out() -> None:
    verdict, says = lit("cucumber", "")
    assert verdict == "fair"
    assert "nobody has said how much North Bed has" in says


def test_more_sun_never_makes_a_bean_row_worse() -> None:
    order = ("good", "fair", "knocked out")
    places = [order.index(lit("runner bean", f"{hours} h")[0]) for hours in (1, 3, 5, 7, 9)]
    assert places == sorted(places, reverse=True)


def test_a_wall_that_faces_the_pole_is_not_for_climbing_roses() -> None:
    text = "wall North Face, brick\n  faces north\nwall South Face, brick\n  faces south\n"
    for place, shady, sunny in (
        ("52 N", "North Face", "South Face"),
        ("38 S", "South Face", "North Face"),
    ):
        season = season_of(f"garden Test Row, 2027\n  place {place}, 1 W\n{text}")
        garden, entry = season.plan.garden, entry_of("climbing rose")
        assert entry is not None
        verdicts = {}
        for name in (shady, sunny):
            support = of_kind("wall wires", garden, None, season.plan.things[name])
            assert support is not None
            verdicts[name] = lighting(Pair(Climber(entry, entry.name), support)).verdict
        assert verdicts == {shady: "knocked out", sunny: "good"}, place
