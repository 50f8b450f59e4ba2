"""Lives of frames against the stay of plants."""

from __future__ import annotations

from plantframe.pairing.climber import Climber
from plantframe.pairing.outlasting import outlasting
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_frame
from plantframe.season.entries import entry_of
from tests.pairing.gardens import answers, season_of


def test_beans_are_gone_before_the_posts_are() -> None:
    reason = answers("pole bean", "net frame")["outlast"]
    assert reason.verdict == "good"
    assert "2 to 4 years" in reason.says
    assert "4 months" in reason.says


def test_what_keeps_its_wood_cannot_stand_on_a_frame_that_comes_down() -> None:
    reason = answers("common honeysuckle", "net frame")["outlast"]
    assert reason.verdict == "knocked out"
    assert "each autumn" in reason.says


def test_a_wisteria_outlives_an_arch_by_a_lifetime() -> None:
    assert answers("wisteria", "arch")["outlast"].verdict == "knocked out"


def test_a_rose_can_be_untied_while_its_fence_is_mended() -> None:
    reason = answers("climbing rose", "mortised fence")["outlast"]
    assert reason.verdict == "fair"
    assert "untied" in reason.says


def test_only_soft_stems_cut_every_year_fold_down_with_a_lattice() -> None:
    assert answers("late clematis", "hinged lattice")["outlast"].verdict in {"good", "fair"}
    assert answers("sweet pea", "hinged lattice")["outlast"].verdict == "good"
    assert answers("large-flowered clematis", "hinged lattice")["outlast"].verdict == "fair"
    for woody in ("climbing rose", "common honeysuckle", "alpine clematis", "summer jasmine"):
        assert answers(woody, "hinged lattice")["outlast"].verdict == "knocked out", woody


def test_a_hop_comes_again_from_its_root_each_year() -> None:
    assert answers("hop", "hop pole")["outlast"].verdict == "good"


def test_an_old_frame_is_to_be_tried_before_it_is_trusted() -> None:
    text = (
        "garden Test Row, 2027\n  place 52 N, 1 W\n"
        "frame Row, net frame\n  bays 1 of 2.4 m\n  built 2019\n"
    )
    support, entry = of_frame(season_of(text), "Row"), entry_of("pole bean")
    assert support is not None
    assert entry is not None
    reason = outlasting(Pair(Climber(entry, entry.name), support))
    assert reason.verdict == "fair"
    assert "8 years old" in reason.says
