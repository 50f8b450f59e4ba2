"""Picking, as lines of the log tell of it."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.diary.picks import picks_of, totals_of
from tests.diary.diaries import BED, HEAD, NET, season

TWO = NET.replace("Bean Net", "Mixed Net") + "  grow cucumber, 2 plants, plant out 4 June\n"


def test_weights_add_up_and_go_by_the_metre() -> None:
    """1.4 kg, 600 g and 1 lb (453.6 g) on two bays of 2.4 m: 2.4536 kg, 0.511 kg a metre."""
    log = "log 2 August, Bean Net, picked 1.4 kg\nlog 5 August, Bean Net, picked 600 g\n"
    (total,) = totals_of([season(HEAD + BED + NET + log + "log 9 Sept, Bean Net, picked 1 lb\n")])
    assert total.weight_kg == pytest.approx(2.4536, abs=1e-3)
    assert total.kg_per_m == pytest.approx(0.511, abs=1e-3)
    assert (total.crop, total.times) == ("pole bean", 3)
    assert (total.first, total.last) == (date(2027, 8, 2), date(2027, 9, 9))


def test_what_is_counted_and_not_weighed_is_counted() -> None:
    log = "log 12 July, Mixed Net, first cucumbers picked, 6\n"
    log += "log 14 July, Mixed Net, picked 4 cucumbers\n"
    (total,) = totals_of([season(HEAD + BED + TWO + log)])
    assert (total.crop, total.count, total.weight_kg) == ("cucumber", 10, None)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("log 2 August, Bean Net, bar 2 in low", False),
        ("log 2 August, Bean Net, sown in wet soil", False),
        ("log 5 June frost, lost 4 cucumbers", False),
        ("log 2 August, Bean Net, picked 1.4 kg, bar 2 in low", True),
        ("log Aug 14. First beans picked.", True),
        ("log 3 January: cut the last of the salad", True),
    ],
)
def test_a_line_tells_of_picking_or_it_does_not(line: str, told: bool) -> None:
    assert bool(picks_of(season(f"{HEAD}{BED}{NET}{line}\n"))) == told


def test_a_plant_is_known_by_name_where_two_share_a_frame() -> None:
    log = "log 2 August, Mixed Net, picked 1 kg of beans\nlog 3 August, Mixed Net, picked 2 kg\n"
    found = picks_of(season(HEAD + BED + TWO + log))
    assert [pick.crop for pick in found] == ["pole bean", ""]


def test_first_and_last_are_told() -> None:
    log = "log 13 July, Bean Net, first picking, 300 g\nlog 4 October, Bean Net, picked the last\n"
    first, last = picks_of(season(HEAD + BED + NET + log))
    assert (first.first, first.last) == (True, False)
    assert (last.first, last.last) == (False, True)
