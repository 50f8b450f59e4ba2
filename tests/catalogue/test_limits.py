"""Counts and sizes with which nothing can be built are found by the entries' own sums."""

from __future__ import annotations

import pytest

from plantframe.catalogue.limits import broken
from plantframe.catalogue.reading import entry_names, structure


def passed(kind: str, **said: object) -> dict[str, tuple[float | None, float | None]]:
    """The limits passed, by the figure: the least and the most there may be."""
    found = structure(kind)
    assert found is not None
    given = {name.replace("__", "."): value for name, value in said.items()}
    return {one.limit.fact: (one.least, one.most) for one in broken(found, given)}


@pytest.mark.parametrize("kind", entry_names("structure"))
def test_nothing_is_amiss_at_the_ordinary_size(kind: str) -> None:
    assert passed(kind) == {}


def test_poles_of_pairs_are_an_even_number() -> None:
    assert passed("paired-pole fence", posts__count=7) == {"posts.count": (None, None)}
    assert passed("crossed row", posts__count=15) == {"posts.count": (None, None)}
    assert passed("paired-pole fence", posts__count=8) == {}


def test_a_wigwam_of_two_poles_does_not_stand() -> None:
    assert passed("wigwam", posts__count=2) == {"posts.count": (3, None)}


def test_the_bound_of_a_circle_follows_its_poles() -> None:
    # 2.4 m canes, 30 cm in the soil, tied 15 cm down: 1.95 m of slope, and 1.6 times that
    ((least, most),) = passed("wigwam", posts__length=2.4, posts__down=0.3, circle=4.5).values()
    assert least is None
    assert most == pytest.approx(3.12)


def test_a_limit_speaks_where_the_rest_cannot_be_worked_out() -> None:
    # feet so far apart that the legs do not meet: no height comes of it, but the limit does
    assert "feet.apart" in passed("A-frame", panels__high=1.2, feet__apart=2.7)


def test_what_gives_way_instead_is_told_with_its_sum() -> None:
    found = structure("cane wires")
    assert found is not None
    said = {"posts.length": 2.1, "posts.down": 0.6, "wires.heights": (0.6, 1.8)}
    (one,) = broken(found, said)
    assert one.limit.instead == "posts.length"
    assert one.instead == pytest.approx(2.4)
