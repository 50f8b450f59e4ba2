"""Pairings as an expert would check them: who goes where, who does not, and why."""

from __future__ import annotations

import pytest

from plantframe.pairing.advisor import (
    for_frame,
    for_place,
    for_plant,
    for_structure,
    for_want,
    is_back_in,
)
from plantframe.pairing.matches import QUESTIONS, VERDICTS
from plantframe.pairing.supports import BARE_WALL, kinds
from plantframe.season.entries import kind_of
from tests.pairing.gardens import edited, pairing, reject, season_of

GARDEN = """\
garden Pump Field, 2027
  place 52.1 N, 1.4 W
  person Ines, reach 1.95 m
wall Scullery Wall, shingles
wall Cart Shed, brick
bed Long Bed, 4 ft x 24 ft
  sun full
  had pea in 2025
bed Dell, 4 ft x 12 ft
  sun 3 h
frame Gate Net, net frame, in Long Bed
  bays 1 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
frame Tent Poles, wigwam, in Long Bed
  6 poles, 8 ft
frame Fold Lattice, hinged lattice, on Scullery Wall
  size 8 ft x 6 ft
want climbing squash, 2 plants, in Long Bed
want clematis, 2 plants
"""

# Each a trade fact: common practice, no source, unless said.
GOES = [
    ("pole bean", "net frame"),
    ("pole bean", "wigwam"),
    ("runner bean", "crossed row"),
    ("tall pea", "net frame"),
    ("tall tomato", "stake"),
    ("tall tomato", "string drops"),
    ("bush tomato", "stakes and twine"),
    ("late clematis", "hinged lattice"),
    ("large-flowered clematis", "lattice"),
    ("climbing rose", "mortised fence"),
    ("rambler rose", "rope pillars"),
    ("summer raspberry", "cane wires"),
    ("grape", "grape wires"),
    ("apple espalier", "espalier row"),
    ("hardy kiwi", "kiwi T-bar"),
    ("wisteria", "pergola"),
    ("ivy", "bare wall"),
    ("short pea", "pea sticks"),
    ("hop", "hop pole"),
    ("sweet pea", "wigwam"),
    ("delphinium", "stake"),
    ("peony", "ring"),
]
DOES_NOT = [
    ("wisteria", "net frame", "carry"),
    ("wisteria", "lattice", "carry"),
    ("wisteria", "obelisk", "carry"),
    ("trumpet vine", "obelisk", "carry"),
    ("mountain clematis", "lattice", "carry"),
    ("hardy kiwi", "net frame", "carry"),
    ("climbing rose", "hinged lattice", "outlast"),
    ("common honeysuckle", "hinged lattice", "outlast"),
    ("climbing rose", "net frame", "hold"),
    ("climbing rose", "wigwam", "hold"),
    ("melon", "mortised fence", "hold"),
    ("late clematis", "crossed row", "hold"),
    ("pole bean", "bare wall", "hold"),
    ("hop", "wigwam", "reach"),
    ("watermelon", "mesh panel", "carry"),
]


@pytest.mark.parametrize(("plant", "kind"), GOES)
def test_what_the_trade_grows_on_it_is_ranked(plant: str, kind: str) -> None:
    assert pairing(for_plant(None, plant), kind).plant == plant


@pytest.mark.parametrize(("plant", "kind", "because"), DOES_NOT)
def test_what_the_trade_would_not_do_is_ruled_out_by_its_one_fact(
    plant: str, kind: str, because: str
) -> None:
    found = reject(for_plant(None, plant), kind)
    assert found.because == because
    assert plant in found.says


def test_sweet_pea_cannot_hold_bare_poles_until_string_goes_round_them() -> None:
    found = reject(for_plant(season_of(GARDEN), "sweet pea"), "Tent Poles")
    assert found.because == "hold"
    assert found.back_in.startswith("strings")
    after = season_of(edited(GARDEN, found.candidates[0]))
    assert is_back_in(after, "sweet pea", "Tent Poles")


def test_climbing_squash_on_one_long_bar_is_about_twice_too_much_and_short_bays_cure_it() -> None:
    found = reject(for_plant(season_of(GARDEN), "climbing squash"), "Gate Net")
    assert found.because == "carry"
    assert "about twice too much" in found.says
    assert "lb a foot" in found.says
    assert found.back_in == "bays 2 of 4 ft"
    assert not is_back_in(season_of(GARDEN), "climbing squash", "Gate Net")
    for edit in found.candidates:
        assert is_back_in(season_of(edited(GARDEN, edit)), "climbing squash", "Gate Net"), edit


def test_every_edit_that_any_plant_is_offered_on_a_frame_lets_that_plant_back_in() -> None:
    before = season_of(GARDEN)
    tried = 0
    for frame in ("Gate Net", "Tent Poles"):
        for found in for_frame(before, frame).rejected:
            for edit in found.candidates[:1]:
                after = season_of(edited(GARDEN, edit))
                assert is_back_in(after, found.plant, frame), (found.plant, edit.says)
                tried += 1
    assert tried > 20


def test_ivy_is_kept_off_shingles_and_ranked_on_brick() -> None:
    found = for_plant(season_of(GARDEN), "ivy")
    off = reject(found, "Scullery Wall")
    assert off.because == "hold"
    assert "rots" in off.says
    assert pairing(found, "Cart Shed").reason("hold").verdict == "good"


def test_a_bare_wall_lets_a_twiner_in_once_there_is_something_to_grip() -> None:
    found = reject(for_plant(season_of(GARDEN), "grape"), "Cart Shed")
    assert found.because == "hold"
    assert "wires or a lattice" in found.back_in


def test_a_bed_with_little_sun_rules_beans_out_and_names_the_sunnier_bed() -> None:
    text = f"{GARDEN}frame Low Net, net frame, in Dell\n"
    found = reject(for_plant(season_of(text), "pole bean"), "Low Net")
    assert found.because == "light"
    assert "3 hours" in found.says
    assert is_back_in(season_of(edited(text, found.candidates[0])), "pole bean", "Low Net")


def test_a_frame_that_stands_is_not_offered_a_move_to_another_bed() -> None:
    text = f"{GARDEN}frame Low Net, net frame, in Dell\n  built 2026\n"
    found = reject(for_plant(season_of(text), "pole bean"), "Low Net")
    assert found.because == "light"
    assert found.candidates == ()
    assert "6 hours of sun" in found.back_in


def test_peas_in_the_bed_two_years_ago_are_a_caution_for_beans_and_no_bar() -> None:
    found = pairing(for_plant(season_of(GARDEN), "pole bean"), "Gate Net")
    assert any("pea in 2025" in line and "2 years ago" in line for line in found.cautions)
    cucumber = pairing(for_plant(season_of(GARDEN), "cucumber"), "Gate Net")
    assert not any("2025" in line for line in cucumber.cautions)


def test_sweet_pea_is_warned_off_a_net_of_eating_peas() -> None:
    text = GARDEN.replace("  bar 2x2\n", "  bar 2x2\n  grow tall pea, 40 plants\n")
    found = pairing(for_plant(season_of(text), "sweet pea"), "Gate Net")
    assert any("poisonous" in line and "Not on one frame" in line for line in found.cautions)


def test_a_frame_that_is_taken_comes_after_a_free_one_of_its_kind() -> None:
    text = GARDEN.replace("  bar 2x2\n", "  bar 2x2\n  grow cucumber, 4 plants\n")
    free = (
        "frame Free Net, net frame, in Long Bed\n  bays 1 of 8 ft\n"
        "  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up\n  bar 2x2\n"
    )
    names = [one.frame for one in for_plant(season_of(text + free), "pole bean").ranked]
    assert names.index("Free Net") < names.index("Gate Net")


def test_a_want_is_looked_at_in_the_bed_where_it_is_wanted() -> None:
    season = season_of(GARDEN)
    found = for_want(season, season.plan.wants[0])
    assert "Long Bed" in found.ranked[0].reason("light").says
    assert "lattice" not in {one.kind for one in found.ranked}


def test_a_loose_name_ranks_every_plant_it_can_mean_and_asks_which() -> None:
    season = season_of(GARDEN)
    found = for_want(season, season.plan.wants[1])
    assert {"late clematis", "mountain clematis"} <= {one.plant for one in found.ranked} | {
        one.plant for one in found.rejected
    }
    assert any("say which" in line for line in found.remarks)


def test_a_name_nobody_knows_gets_the_nearest_and_no_pairing() -> None:
    found = for_plant(None, "pole baen")
    assert found.ranked == ()
    assert "pole bean" in found.remarks[0]


def test_lettuce_is_told_that_it_needs_no_frame() -> None:
    found = for_plant(None, "lettuce")
    assert found.ranked == ()
    assert "stands on its own" in found.remarks[0]


def test_a_shady_wall_is_given_to_what_bears_shade() -> None:
    text = f"{GARDEN}wall Back Wall, brick\n  sun none\n"
    found = for_place(season_of(text), "Back Wall")
    plants = [one.plant for one in found.ranked]
    assert "climbing hydrangea" in plants
    assert "climbing rose" not in plants
    rose = next(one for one in found.rejected if one.plant == "climbing rose")
    assert rose.because == "light"


def test_a_place_gives_each_plant_once() -> None:
    found = for_place(season_of(GARDEN), "Long Bed")
    names = [one.plant for one in found.ranked] + [one.plant for one in found.rejected]
    assert len(names) == len(set(names))
    assert pairing(found, "Gate Net", "tall pea").frame == "Gate Net"


def test_a_plant_ranks_for_a_kind_exactly_if_the_kind_ranks_for_the_plant() -> None:
    plants = ("pole bean", "climbing rose", "wisteria", "late clematis", "ivy", "peony")
    back = {(plant, one.kind) for plant in plants for one in for_plant(None, plant).ranked}
    there = {
        (one.plant, kind)
        for kind in kinds()
        for one in for_structure(kind).ranked
        if one.plant in plants
    }
    assert there == {pair for pair in back if pair[1] != BARE_WALL}


def test_a_plant_ranks_for_a_frame_exactly_if_the_frame_ranks_for_the_plant() -> None:
    season = season_of(GARDEN)
    for frame in ("Gate Net", "Tent Poles", "Fold Lattice"):
        ranked = {one.plant for one in for_frame(season, frame).ranked}
        for plant in ("pole bean", "sweet pea", "late clematis", "wisteria", "cucumber"):
            back = any(one.frame == frame for one in for_plant(season, plant).ranked)
            assert (plant in ranked) == back, (plant, frame)


def test_what_the_trade_grows_comes_first_and_then_the_six_answers_rank_in_their_order() -> None:
    found = for_structure("net frame").ranked
    kind = kind_of("net frame")
    assert kind is not None
    usual = {one.plant for one in kind.suits}
    places = [
        (pair.plant not in usual, [VERDICTS.index(one.verdict) for one in pair.reasons])
        for pair in found
    ]
    assert places == sorted(places)
    assert all(tuple(one.question for one in pair.reasons) == QUESTIONS for pair in found)


def test_the_same_question_gets_the_same_answer_again() -> None:
    assert for_frame(season_of(GARDEN), "Gate Net") == for_frame(season_of(GARDEN), "Gate Net")


def test_no_pairing_promises_or_scores() -> None:
    for plant in ("pole bean", "wisteria", "climbing squash"):
        found = for_plant(None, plant)
        texts = [reason.says for one in found.ranked for reason in one.reasons]
        texts += [one.says for one in found.rejected]
        for text in texts:
            words = set(text.lower().replace(".", " ").replace(",", " ").split())
            assert not words & {"safe", "passes", "approved", "certified", "guaranteed", "score"}
