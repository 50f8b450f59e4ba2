"""Which wood words mean, and which will do for which."""

from __future__ import annotations

import pytest

from plantframe.timber.woods import density_kg_per_m3, will_do, wood_in


@pytest.mark.parametrize(
    ("words", "wood"),
    [
        ("cedar posts", "cedar"),
        ("old pressure treated posts", "treated softwood"),
        ("stakes", ""),
        ("bamboo canes", "bamboo"),
        ("", ""),
    ],
)
def test_the_wood_is_found_among_other_words(words: str, wood: str) -> None:
    assert wood_in(words) == wood


def test_any_wood_will_do_where_ordinary_softwood_is_wanted() -> None:
    assert will_do("", "softwood")
    assert will_do("cedar", "softwood")


def test_a_wood_that_is_asked_for_is_that_wood() -> None:
    assert will_do("cedar", "cedar")
    assert not will_do("", "cedar")
    assert not will_do("oak", "cedar")


def test_treated_wood_goes_round_no_food() -> None:
    assert will_do("treated softwood", "softwood")
    assert not will_do("treated softwood", "softwood", near_food=True)


def test_wood_that_is_not_known_weighs_like_ordinary_softwood() -> None:
    # the catalogue's softwood: 430 dry to 800 wet
    assert density_kg_per_m3("") == density_kg_per_m3("softwood") == (430, 800)
