"""Seed and plants, less the packets in the shed."""

from __future__ import annotations

from plantframe.timber.counters import SEED
from tests.timber.gardens import NET, buying, line

BEANS = NET + "  grow pole bean 'Millpond', 40 plants, sow 18 May\n"
ROSE = "wall Barn, faces east\n  climbing rose, 2 plants\n"


def test_what_is_sown_is_seed_for_so_many_plants() -> None:
    found = line(BEANS, "pole bean")
    assert found.says == "pole bean 'Millpond', seed for 40 plants"
    assert found.count == 40


def test_a_packet_in_the_shed_is_not_bought_again() -> None:
    for packet in ("1 packet pole bean seed", "1 packet pole bean 'Millpond'"):
        found = line(BEANS + f"shed\n  {packet}\n", "pole bean")
        assert found.count == 0
        assert any("look at its year" in mind for mind in found.minds)


def test_a_packet_of_another_sort_does_not_count() -> None:
    assert line(BEANS + "shed\n  1 packet pole bean 'Postman'\n", "pole bean").count == 40
    assert line(BEANS + "shed\n  1 packet lettuce seed\n", "pole bean").count == 40


def test_what_is_only_planted_out_is_bought_as_plants() -> None:
    found = line(NET + "  grow cucumber, 4 plants, plant out 6 June\n", "cucumber")
    assert found.says == "cucumber, 4 plants"


def test_a_plant_that_has_stood_for_years_is_not_bought() -> None:
    frame = NET.replace("net frame", "hinged lattice").split("\n")[0]
    text = f"{frame}\n  size 8 ft x 5 ft\n  grow late clematis, 2 plants\n  built 2021\n"
    assert not any("clematis" in one.what for one in buying(text).lines)


def test_a_planting_without_a_number_says_so() -> None:
    found = line(NET + "  grow pole bean, sow 18 May\n", "pole bean")
    assert any("no number" in mind for mind in found.minds)


def test_two_rows_of_one_sort_are_one_line() -> None:
    two = BEANS + BEANS.replace("Bean Net", "Second Net").replace("40 plants", "20 plants")
    assert line(two, "pole bean").count == 60


def test_runner_beans_are_sown_dahlias_planted_and_of_the_unknown_nothing_is_claimed() -> None:
    text = (
        "frame Poles, wigwam\n  grow runner bean, 8 plants\n"
        "frame Stakes, corral\n  grow dahlia, 3 plants\n"
        "frame Odd, wigwam\n  grow zorbleberry, 4 plants\n"
    )
    said = [line.says for line in buying(text).lines if line.counter == SEED]
    assert said == ["runner bean, seed for 8 plants", "dahlia, 3 plants", "zorbleberry, 4 plants"]
