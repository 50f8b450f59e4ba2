"""Spares, as the trade takes them (common practice, no source)."""

from __future__ import annotations

import pytest

from plantframe.timber.spares import spares


@pytest.mark.parametrize(("count", "more"), [(0, 0), (1, 1), (10, 1), (11, 2), (100, 10)])
def test_one_in_ten_is_taken_to_spare(count: int, more: int) -> None:
    assert spares(count, "poles and canes") == more
    assert spares(count, "nails and screws") == more
