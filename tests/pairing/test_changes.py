"""Changes that let a reject back in are tried first, and typed as a gardener types."""

from __future__ import annotations

from plantframe.pairing.advisor import for_plant, is_back_in
from plantframe.pairing.changes import best_kinds
from tests.pairing.gardens import edited, pairing, reject, season_of

METRIC = "garden Test Row, 2027\n  place 52 N, 1 W\n"


def test_a_metric_plan_gets_metric_lines() -> None:
    text = (
        f"{METRIC}frame Row, net frame\n  bays 1 of 2.4 m (north end)\n"
        "  posts 45x45 mm, 2.4 m, 45 cm down\n  bar 38x38 mm\n"
    )
    found = reject(for_plant(season_of(text), "climbing squash"), "Row")
    assert found.back_in == "bays 2 of 1.2 m"
    after = edited(text, found.candidates[0])
    assert "  bays 2 of 1.2 m (north end)\n" in after
    assert is_back_in(season_of(after), "climbing squash", "Row")


def test_a_count_of_posts_that_was_typed_goes_up_with_the_bays() -> None:
    text = (
        f"{METRIC}frame Row, net frame\n  bays 2 of 2.4 m\n"
        "  posts 3 of 45x45 mm, 2.4 m, 45 cm down\n  bar 38x38 mm\n"
    )
    found = reject(for_plant(season_of(text), "climbing squash"), "Row")
    after = edited(text, found.candidates[0])
    assert "  bays 4 of 1.2 m\n" in after
    assert "  posts 5 of 45x45 mm" in after


def test_a_deeper_bar_comes_with_the_longer_pins_it_needs() -> None:
    text = f"{METRIC}frame Row, net frame\n  bays 1 of 2.4 m\n  bar 38x38 mm\n"
    found = reject(for_plant(season_of(text), "climbing squash"), "Row")
    stout = next(edit for edit in found.candidates if "on edge" in edit.says)
    assert "pins 40d" in edited(text, stout)


def test_taller_posts_bring_hungry_beans_back() -> None:
    text = (
        f"{METRIC}frame Row, net frame\n  bays 1 of 2 m\n"
        "  posts 45x45 mm, 1.8 m, 45 cm down, 1.35 m up\n"
    )
    found = reject(for_plant(season_of(text), "runner bean"), "Row")
    assert found.because == "reach"
    after = edited(text, found.candidates[0])
    assert is_back_in(season_of(after), "runner bean", "Row")
    assert "60 cm down" not in after  # the depth stays as it was typed


def test_a_frame_too_high_to_pick_from_is_lowered_to_the_picker() -> None:
    text = (
        "garden Test Row, 2027\n  place 52 N, 1 W\n  person Inge, reach 1.8 m\n"
        "frame Row, net frame\n  bays 1 of 2 m\n"
        "  posts 45x45 mm, 2.85 m, 45 cm down, 2.4 m up\n"
    )
    found = reject(for_plant(season_of(text), "pole bean"), "Row")
    assert found.because == "reach"
    assert is_back_in(season_of(edited(text, found.candidates[0])), "pole bean", "Row")


def test_a_kind_nobody_has_built_is_changed_in_words() -> None:
    found = reject(for_plant(None, "late clematis"), "wigwam")
    assert found.back_in.startswith("strings")
    assert found.candidates == ()


def test_what_the_trade_adds_to_a_kind_is_added_before_it_is_ranked() -> None:
    found = pairing(for_plant(None, "sweet pea"), "wigwam").reason("hold")
    assert found.verdict == "fair"
    assert found.says.startswith("With strings")


def test_where_no_change_helps_the_kinds_that_suit_are_named() -> None:
    found = reject(for_plant(None, "wisteria"), "net frame")
    assert "pergola" in found.back_in
    assert best_kinds("wisteria")[0] == "pergola"


def test_a_net_is_not_offered_to_wood_that_stays() -> None:
    for kind in ("hop pole", "paired-pole fence", "wigwam"):
        assert "net" not in reject(for_plant(None, "passionfruit"), kind).back_in.split(), kind
