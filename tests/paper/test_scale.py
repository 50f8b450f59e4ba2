"""Scales of drawings: usual ones, and never one that does not fit."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.paper.scale import INCHES, Scale, TooLargeError, scale_for


@given(st.floats(0.1, 900), st.floats(0.0, 900), st.booleans())
def test_what_is_drawn_fits_on_its_paper(wide: float, high: float, imperial: bool) -> None:
    scale = scale_for(wide, high, 150.0, 100.0, imperial=imperial)
    assert scale.mm(wide) <= 150.0 + 1e-6
    assert scale.mm(high) <= 100.0 + 1e-6


def test_two_metres_forty_on_fifteen_centimetres_is_one_to_twenty() -> None:
    assert scale_for(2.4, 1.0, 150.0, 100.0, imperial=False) == Scale(20, "1 to 20")


def test_half_an_inch_to_the_foot_is_one_to_twenty_four() -> None:
    # twelve inches over half an inch
    assert INCHES[24].startswith("½ in")
    assert Scale(24, "").mm(0.3048) == pytest.approx(12.7)


@pytest.mark.parametrize("size", [math.inf, math.nan, 1e9, -1.0])
def test_what_has_no_real_size_is_not_drawn(size: float) -> None:
    with pytest.raises(TooLargeError):
        scale_for(size, 1.0, 100.0, 100.0, imperial=False)
