"""When a round of care was last done; the years between are common practice, no source."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.season.rounds import done_marks, is_of_years, last_done
from tests.jobs.gardens import HEAD, season

BOX = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n  built 2018\n"


@pytest.mark.parametrize(
    ("lines", "year"),
    [
        ("", 2018),
        ("  strips new spring 2023\n", 2023),
        ("  strips new 2021\n  done unscrew the foot strips, 20 March 2025\n", 2025),
    ],
)
def test_a_mark_outranks_a_fact_and_a_fact_the_building(lines: str, year: int) -> None:
    frame = season(HEAD + BOX + lines).frames["Salad Box"]
    assert frame.structure is not None
    care = next(one for one in frame.structure.care if one.id == "strips")
    assert is_of_years(care)
    assert last_done(frame, care)[0] == year


def test_a_mark_from_a_day_on_is_of_the_round_still_to_be_reckoned() -> None:
    text = HEAD + BOX + "  done unscrew the foot strips, 20 March 2027\n"
    frame = season(text).frames["Salad Box"]
    assert frame.structure is not None
    care = next(one for one in frame.structure.care if one.id == "strips")
    assert len(done_marks(frame, care)) == 1
    assert last_done(frame, care, date(2027, 1, 1)) == (2018, None)
