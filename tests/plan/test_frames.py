"""Frames: their kind, when they stand, what is set aside and done, and where."""

from __future__ import annotations

import pytest

from tests.plan.building_plans import (
    GARDEN,
    SOUTH,
    built,
    days,
    frame_of,
    names_of,
    plan_of,
    slips_of,
)


def test_a_frame_has_its_kind_its_place_and_its_facts() -> None:
    frame = frame_of(
        "  bays 2 of 8 ft\n  posts 2x2, 8 ft, 18 in down\n  wires 1, at 2 m\n  wires 2, at 50 cm\n",
        "frame Bean Net, net frame, in Long Bed, north end",
    )
    assert (frame.word, frame.kind, frame.own_design) == ("frame", "net frame", False)
    assert [(one.relation, one.thing, one.part) for one in frame.spots] == [
        ("in", "Long Bed", ""),
        ("", "", "north end"),
    ]
    assert len(frame.facts["wires"]) == 2
    assert frame.fact("bar") is None
    spot = frame.spot("in", "on")
    assert spot is not None
    assert spot.thing == "Long Bed"


def test_a_kind_may_be_written_with_capitals_or_as_a_synonym() -> None:
    assert frame_of("", "frame Beans, Bean Teepee").kind == "wigwam"
    assert frame_of("", "frame Tomatoes, stakes, in Long Bed").kind == "stake"


def test_a_frame_whose_name_is_a_kind_is_taken_for_it_and_says_so() -> None:
    plan, slips = built(f"{GARDEN}cover Fruit Cage, over the blueberries\n")
    assert plan.frames["Fruit Cage"].kind == "fruit cage"
    (slip,) = slips
    assert (slip.name, slip.level) == ("kind-by-name", "note")
    assert "Fruit Cage is taken for a fruit cage, by its name." in slip.says


def test_a_frame_of_no_kind_is_asked_about_with_the_likely_first() -> None:
    (slip,) = slips_of(f"{GARDEN}frame Old Lattice Thing\n  bar 2x2\n")
    assert slip.name == "no-kind"
    assert slip.candidates[0].changes[0].new == "frame Old Lattice Thing, lattice"


def test_a_frame_of_the_gardeners_own_is_not_asked_for_its_kind() -> None:
    frame = frame_of("  piece 4 of 2x2, 1.9 m\n", "frame Bean Bridge, own design")
    assert (frame.kind, frame.own_design) == ("", True)
    assert frame_of("  own design\n", "frame Bean Bridge").own_design


def test_a_fence_that_only_stands_there_needs_no_kind() -> None:
    plan = plan_of(f"{GARDEN}fence Back Fence, faces south, timber\n  high 1.8 m\n")
    assert plan.frames["Back Fence"].kind == ""
    assert names_of(f"{GARDEN}fence Back Fence\n  bays 4 of 2 m\n") == ["no-kind"]


@pytest.mark.parametrize(
    ("line", "year"),
    [("built 2024", 2024), ("built in May 2025", 2025), ("built", 2026), ("built last year", 2026)],
)
def test_a_frame_stands_since_a_year(line: str, year: int) -> None:
    assert frame_of(f"  {line}\n").built == year


def test_a_frame_built_in_years_to_come_is_no_frame_that_stands() -> None:
    (slip,) = slips_of(f"{GARDEN}frame Bean Net, net frame\n  built 2029\n")
    assert slip.name == "impossible-date"
    assert "what is still to be built has no `built`" in slip.says


@pytest.mark.parametrize(
    "more",
    [
        "  done renew the strips, 18 May 2023\n",
        "log 18 May 2023, Bean Net, picked 1.4 kg\n",
    ],
)
def test_nothing_was_done_to_a_frame_before_it_was_built(more: str) -> None:
    (slip,) = slips_of(f"{GARDEN}frame Bean Net, net frame\n  built 2024\n{more}")
    assert slip.name == "impossible-date"
    assert "that is before Bean Net was built, in 2024." in slip.says
    assert names_of(f"{GARDEN}frame Bean Net, net frame\n{more}") == []


def test_a_frame_is_ready_and_comes_down_on_its_days() -> None:
    frame = frame_of("  ready by 15 May\n  take down 30 September\n  stays up 2 years\n")
    assert days(frame.ready_by)[0] == "2027-05-15"
    assert days(frame.take_down)[0] == "2027-09-30"
    assert frame.stays_years == 2


def test_a_frame_may_come_down_in_another_year() -> None:
    assert days(frame_of("  take down in 2029\n").take_down)[:2] == ("2029-01-01", "2029-12-31")


def test_a_frame_that_only_stays_is_wanted_for_years() -> None:
    assert (frame_of("  stays up\n").stays_years or 0) >= 5
    assert frame_of("").stays_years is None


def test_lights_are_on_over_winter() -> None:
    frame = frame_of("  on 1 October to 15 April\n", "cover Seed Box, cold frame")
    assert days(frame.on)[:2] == ("2027-10-01", "2028-04-15")


def test_a_frame_may_have_its_own_wind_soil_and_sun() -> None:
    frame = frame_of("  wind windy\n  soil sand\n  sun half\n")
    assert (frame.wind, frame.soil, frame.sun, frame.sun_h) == (
        "windy",
        "loose sand",
        "half",
        (4, 6),
    )


def test_what_is_set_aside_has_its_reason_and_its_bounds() -> None:
    frame = frame_of(
        '  ok too heavy because "we prop it", Maud, 2 March, at about 1.3 times, until 2029\n'
        "  ok crowded because we thin by eating, at note\n"
    )
    heavy, crowded = frame.set_asides
    assert (heavy.rule, heavy.because, heavy.who, heavy.times) == (
        "too-heavy",
        "we prop it",
        "Maud",
        1.3,
    )
    assert days(heavy.when)[0] == "2027-03-02"
    assert days(heavy.until)[0] == "2029-12-31"
    assert (crowded.rule, crowded.level, crowded.who) == ("crowded", "note", "")


def test_nothing_is_set_aside_without_a_reason_or_a_name() -> None:
    text = f"{GARDEN}frame Bean Net, net frame\n  ok too-heavy\n"
    plan, _ = built(text)
    assert plan.frames["Bean Net"].set_asides == ()
    assert names_of(text) == ["no-reason"]
    assert names_of(f"{GARDEN}frame Bean Net, net frame\n  ok because we like it\n") != []


def test_jobs_are_done_moved_and_left_out() -> None:
    done, moved, skipped = frame_of(
        "  done set the posts, 24 April, Maud\n"
        "  move weave the bar to 2 May\n"
        '  skip fix the stays because "sheltered corner"\n'
    ).marks
    assert (done.kind, done.job, done.who) == ("done", "set the posts", "Maud")
    assert days(done.day)[0] == "2027-04-24"
    assert (moved.kind, moved.job) == ("move", "weave the bar")
    assert days(moved.day)[0] == "2027-05-02"
    assert (skipped.kind, skipped.because, skipped.day) == ("skip", "sheltered corner", None)


def test_a_job_left_out_wants_a_reason() -> None:
    assert names_of(f"{GARDEN}frame Bean Net, net frame\n  skip fix the stays\n") == ["no-reason"]


def test_a_southern_frame_comes_down_in_autumn() -> None:
    plan = plan_of(f"{SOUTH}frame Net, net frame, in Top Bed\n  take down late April\n")
    assert days(plan.frames["Net"].take_down)[0] == "2027-04-25"
