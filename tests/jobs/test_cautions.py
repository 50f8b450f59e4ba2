"""Which work that a gardener describes calls for which caution; common practice, no source."""

from __future__ import annotations

import pytest

from plantframe.jobs.cautions import cautions


@pytest.mark.parametrize(
    ("words", "caution"),
    [
        ("rip 4 of 2x4", "Clamp"),
        ("cut hazel poles", "Clamp"),
        ("dig the holes for the gate", "cables"),
        ("clear the gutters", "Steps"),
        ("glaze the lights", "Gloves"),
        ("paint the shed", "label"),
        ("mend the socket by the tap", "licensed"),
    ],
)
def test_work_that_can_hurt_carries_its_caution(words: str, caution: str) -> None:
    assert any(caution in says for says in cautions(words))


@pytest.mark.parametrize(
    "words",
    ["order seed", "pick the ripe plums", "cut the sweet peas", "take cuttings", "post a letter"],
)
def test_other_work_carries_none(words: str) -> None:
    assert cautions(words) == ()
