"""Before wind: what stands, the weakest first."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.wind import before_wind
from tests.jobs.gardens import HEAD, NET, listed, season

BUILT = "  built 2026\n  grow pole bean, 40 plants, sow 18 May\n"
STOUT = NET.replace("Bean Net", "Stout Net").replace("2x2, 8 ft", "4x4, 8 ft")
BOX = "cover Seed Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n  built 2024\n"


def names(text: str, day: date) -> list[str]:
    found = season(text, day)
    return [one.frame.frame.name for one in before_wind(found, listed(text, day).jobs, day)]


def test_the_weakest_stands_first() -> None:
    text = HEAD + STOUT + BUILT + NET + BUILT + BOX
    assert names(text, date(2027, 8, 10)) == ["Bean Net", "Stout Net", "Seed Box"]


def test_what_is_not_yet_built_or_is_down_again_is_not_on_the_page() -> None:
    text = HEAD + NET + "  grow pole bean, 40 plants, sow 18 May\n"
    assert names(text, date(2027, 3, 1)) == []
    down = HEAD + NET + BUILT + "  take down 1 September\n"
    assert names(down, date(2027, 8, 10)) == ["Bean Net"]


def test_a_frame_nobody_marked_stands_once_its_crop_is_due() -> None:
    text = HEAD + NET + "  grow pole bean, 40 plants, sow 18 May\n"
    assert names(text, date(2027, 7, 20)) == ["Bean Net"]


def test_a_bare_frame_comes_after_one_in_leaf() -> None:
    late = NET.replace("Bean Net", "Late Net") + BUILT.replace("18 May", "1 August")
    text = HEAD + late + NET + BUILT
    found = season(text, date(2027, 8, 10))
    exposed = before_wind(found, listed(text, date(2027, 8, 10)).jobs, date(2027, 8, 10))
    assert [(one.frame.frame.name, one.leafy) for one in exposed] == [
        ("Bean Net", True),
        ("Late Net", False),
    ]


def test_what_to_look_at_afterwards_is_said() -> None:
    text = HEAD + NET + BUILT
    day = date(2027, 8, 10)
    exposed = before_wind(season(text, day), listed(text, day).jobs, day)
    assert [job.id for job in exposed[0].after] == ["bean-net/care-lean"]


def test_a_box_whose_lights_are_on_since_autumn_stands_in_the_wind_of_january() -> None:
    text = (
        HEAD + "cover Salad Box, cold frame\n  lights 4\n  on 1 October to 15 April\n  built 2020\n"
    )
    for day, told in ((date(2027, 1, 20), ["Salad Box"]), (date(2027, 7, 20), [])):
        exposed = before_wind(season(text, day), listed(text, day).jobs, day)
        assert [one.frame.frame.name for one in exposed] == told
