"""Nails, pins and screws: what is left to bite, and what a wrong name is told."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import fixings

lengths = st.floats(0.01, 0.2)


@pytest.mark.parametrize(("through_mm", "bite_mm"), [(38.1, 64), (76.2, 25)])
def test_a_four_inch_pin_bites_what_the_sum_by_hand_says(through_mm: float, bite_mm: float) -> None:
    # Through one planed 2 in bar, and through two that are not halved.
    bite = fixings.bite_m(fixings.nail("20d").length_m, through_mm / 1000)
    assert bite * 1000 == pytest.approx(bite_mm, abs=0.5)


@given(lengths, lengths, lengths)
def test_thicker_wood_never_leaves_more_bite(length: float, through: float, added: float) -> None:
    bite = fixings.bite_m(length, through)
    assert 0 <= fixings.bite_m(length, through + added) <= bite <= length


def test_a_higher_penny_size_is_a_longer_and_no_thinner_nail() -> None:
    nails = [fixings.nail(size) for size in sorted(fixings.NAILS, key=lambda s: int(s[:-1]))]
    lengths_m = [n.length_m for n in nails]
    assert lengths_m == sorted(set(lengths_m))
    diameters_m = [n.diameter_m for n in nails]
    assert diameters_m == sorted(diameters_m)


@pytest.mark.parametrize("size", sorted(fixings.BOX_DIAMETERS_IN))
def test_a_box_nail_is_thinner_than_a_common_one(size: str) -> None:
    assert fixings.box_nail(size).diameter_m < fixings.nail(size).diameter_m


@given(lengths)
def test_end_grain_wants_a_longer_screw(held: float) -> None:
    # Common practice, no source: twice the thickness held, two and a half times in end grain.
    assert fixings.least_screw_length_m(held) == pytest.approx(2 * held)
    assert fixings.end_grain_screw_length_m(held) == pytest.approx(2.5 * held)


def test_an_unknown_size_is_answered_with_what_there_is() -> None:
    with pytest.raises(ValueError, match=r"'9d'.*20d"):
        fixings.nail("9d")
    with pytest.raises(ValueError, match="'60d'"):
        fixings.box_nail("60d")
    with pytest.raises(ValueError, match="gauge 5"):
        fixings.screw_diameter_m(5)
