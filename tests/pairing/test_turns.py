"""What shares a frame, and what has it before or after in the same year."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.answers.answers import answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.pairing import advisor
from plantframe.pairing.turns import free_day

if TYPE_CHECKING:
    from plantframe.pairing.matches import Turn

TODAY = date(2027, 1, 15)
NORTH = "place 52.1 N, 1.4 W\n  frost last 6 May, first 12 October"
SOUTH = "place 41 S, 147 E\n  frost last 8 October, first 28 April"


def asked(grow: str, place: str = NORTH, year: str = "2027") -> dict[str, dict[str, Turn]]:
    text = (
        f"garden Tarn Side, {year}\n  {place}\nbed Long Bed, 1.2 m x 7.5 m\n"
        f"frame Net, net frame, in Long Bed\n  grow {grow}\n"
    )
    found: dict[str, dict[str, Turn]] = {"beside": {}, "after": {}, "before": {}}
    for turn in advisor.for_frame(answers_to(text, TODAY).season, "Net").turns:
        found[turn.when][turn.plant] = turn
    return found


def test_a_cucumber_shares_a_net_with_peas() -> None:
    assert "another family" in asked("tall pea")["beside"]["cucumber"].says


def test_sweet_peas_never_share_a_net_with_peas_to_eat() -> None:
    # Poisonous seed beside its look-alike.
    assert "sweet pea" not in asked("tall pea")["beside"]
    assert "tall pea" not in asked("sweet pea")["beside"]


def test_what_would_smother_it_does_not_share_it() -> None:
    assert "climbing squash" not in asked("tall pea")["beside"]


def test_kale_follows_peas_and_a_bean_of_their_family_does_not() -> None:
    after = asked("tall pea, sow 1 April")["after"]
    assert "kale" in after
    assert not {"bush bean", "pole bean", "broad bean"} & set(after)


def test_nothing_tender_follows_that_has_no_weeks_left_to_bear() -> None:
    for turn in asked("tall pea, sow 1 April")["after"].values():
        entry = catalogue.plant(turn.plant)
        assert entry is not None
        assert entry.harvest is not None
        assert turn.last is not None
        days = entry.harvest.low or 0
        tender = entry.tender is not None and entry.tender.value in {"tender", "half hardy"}
        ripe = turn.last + timedelta(days=days)
        assert ripe <= date(2027, 10, 12) - timedelta(days=21) or not tender
        assert turn.first is not None
        assert turn.first <= turn.last


def test_after_beans_that_stand_until_the_frost_it_is_too_late() -> None:
    assert asked("pole bean, sow 18 May")["after"] == {}


def test_radishes_and_spinach_come_before_tomatoes_where_spring_is_long() -> None:
    before = asked(
        "tall tomato, plant out 25 March",
        "place 38 N, 0.5 W\n  frost last 20 February, first 5 December",
    )["before"]
    assert "radish" in before
    for turn in before.values():
        assert turn.first is not None
        assert turn.first < date(2027, 3, 25)


def test_in_the_south_they_follow_half_a_year_later() -> None:
    after = asked("tall pea, sow 20 September", SOUTH, "2027-28")["after"]
    assert after
    assert all(turn.first and turn.first > date(2027, 12, 1) for turn in after.values())


def test_what_stays_for_years_leaves_no_room() -> None:
    text = (
        f"garden Tarn Side, 2027\n  {NORTH}\nbed Long Bed, 1.2 m x 7.5 m\n"
        "frame Net, net frame, in Long Bed\n  grow common honeysuckle\n  grow tall pea\n"
    )
    season = answers_to(text, TODAY).season
    stays, goes = season.plantings
    assert free_day(stays) is None
    assert free_day(goes) is not None


def test_a_bed_that_had_the_family_last_year_comes_last() -> None:
    text = (
        f"garden Tarn Side, 2027\n  {NORTH}\n"
        "bed Long Bed, 1.2 m x 7.5 m\n  had bean in 2026\nbed Low Bed, 1.2 m x 7.5 m\n"
        "frame A Net, net frame, in Long Bed\nframe B Net, net frame, in Low Bed\n"
    )
    season = answers_to(text, TODAY).season
    frames = [one.frame for one in advisor.for_plant(season, "pole bean").ranked if one.frame]
    assert frames == ["B Net", "A Net"]
    ranked = [one.plant for one in advisor.for_place(season, "Long Bed").ranked]
    assert ranked.index("cucumber") < ranked.index("pole bean")
