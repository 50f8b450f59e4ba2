"""Ground ready for seed: warm enough, or wet enough where no frost comes."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plantframe.season.entries import entry_of
from plantframe.season.sowing import Ground, warm_soil_day, with_the_rains
from tests.jobs.gardens import HEAD, JANUARY, NET, listed, season, the

PALMS = """garden Palm Yard, 2027
  place 12 N, 5 E
  frost none
"""


def rains(words: str, plant: str, today: date = JANUARY) -> Ground | None:
    garden = season(f"{PALMS}  rains {words}\n").plan.garden
    entry = entry_of(plant)
    assert entry is not None
    return with_the_rains(entry, garden, today)


def test_what_loves_warmth_goes_in_once_the_rains_have_set_in() -> None:
    found = rains("June to September", "pole bean")
    assert found is not None
    assert (found.first, found.last) == (date(2027, 6, 8), date(2027, 7, 13))
    assert "begin about 1 June" in found.why


def test_peas_go_in_as_they_end() -> None:
    found = rains("June to September", "tall pea")
    assert found is not None
    assert found.first == date(2027, 9, 30)


def test_of_two_rains_the_next_is_taken() -> None:
    two = "March to May, October to December"
    first, second = rains(two, "pole bean"), rains(two, "pole bean", date(2027, 7, 1))
    assert first is not None
    assert second is not None
    assert (first.first.month, second.first.month) == (3, 10)


def test_rains_that_run_over_new_year_are_one() -> None:
    found = rains("mid November to 10 March", "tall pea")
    assert found is not None
    assert found.first == date(2027, 3, 10)


def test_where_there_is_frost_the_rains_set_nothing() -> None:
    garden = season(HEAD + "  rains June to September\n").plan.garden
    entry = entry_of("pole bean")
    assert entry is not None
    assert with_the_rains(entry, garden, JANUARY) is None
    assert rains("", "pole bean") is None


@pytest.mark.parametrize("plant", ["pole bean", "cucumber", "tall tomato"])
def test_a_row_without_a_date_is_sown_by_the_rains(plant: str) -> None:
    plan = f"{PALMS}  rains June to September\n{NET}  grow {plant}\n"
    found = listed(plan)
    placed = [job for job in found.jobs if job.kind in {"sow", "plant out"} and job.planned]
    assert placed
    assert date(2027, 6, 8) <= max(job.planned for job in placed if job.planned)
    assert max(job.planned for job in placed if job.planned) <= date(2027, 7, 13)
    assert the(found, "bean-net/pins").planned is not None


def test_seed_waits_for_soil_warm_enough_to_come_up_in() -> None:
    """Sweet pea may go in from March on where the soil is warm enough by then; here it is not."""
    garden = season(HEAD).plan.garden
    entry = entry_of("sweet pea")
    assert entry is not None
    warm = warm_soil_day(entry, garden)
    job = the(listed(HEAD + NET + "  grow sweet pea\n"), "bean-net/sow-sweet-pea")
    assert warm is not None
    assert warm > date(2027, 3, 11)
    assert job.earliest == job.planned == warm
    assert "warm enough" in job.reckoned


def test_what_is_sown_from_the_last_frost_on_waits_for_the_soil_and_has_two_weeks() -> None:
    entry = entry_of("cucumber")
    assert entry is not None
    warm = warm_soil_day(entry, season(HEAD).plan.garden)
    job = the(listed(HEAD + NET + "  grow cucumber\n"), "bean-net/sow-cucumber")
    assert warm is not None
    assert job.earliest == warm > date(2027, 5, 6)
    assert job.latest == warm + timedelta(days=14)


def test_a_printed_range_outranks_the_estimate_of_the_soil() -> None:
    """One to two weeks after the last frost: Oregon State University, as the entry cites."""
    job = the(listed(HEAD + NET + "  grow pole bean\n"), "bean-net/sow-pole-bean")
    assert (job.earliest, job.latest) == (date(2027, 5, 13), date(2027, 5, 20))


def test_without_frosts_nobody_can_tell_how_warm_the_soil_is() -> None:
    entry = entry_of("pole bean")
    assert entry is not None
    assert warm_soil_day(entry, season("garden Hazel End, 2027\n").plan.garden) is None
