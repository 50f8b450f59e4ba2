"""What a wall's words say of it."""

from __future__ import annotations

import pytest

from plantframe.pairing.walls import fabric
from tests.pairing.gardens import season_of


@pytest.mark.parametrize(
    ("surface", "made_of"),
    [
        ("brick", "masonry"),
        ("flint", "masonry"),
        ("cedar shingles", "cladding"),
        ("painted brick", "skin"),
        ("brick, crumbling", "failing"),
        ("", ""),
    ],
)
def test_the_weakest_word_says_what_a_wall_bears(surface: str, made_of: str) -> None:
    line = f"  surface {surface}\n" if surface else ""
    season = season_of(f"garden Test Row, 2027\nwall Back Wall\n{line}")
    assert fabric(season.plan.things["Back Wall"]) == made_of
