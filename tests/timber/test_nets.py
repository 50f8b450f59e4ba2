"""Nets: the smallest old one that will do, cut from what is long; two widths where it is tall."""

from __future__ import annotations

from tests.timber.gardens import NET, line

TALL = NET.replace("6 ft 6 in x 16 ft", "8 ft x 16 ft").replace("8 ft, 18 in", "10 ft, 18 in")


def test_a_net_in_the_shed_that_fits_is_not_bought() -> None:
    found = line(NET + "shed\n  net 6 ft 6 in x 16 ft, mesh 15 cm\n", "net")
    assert (found.count, found.from_shed) == (0, 1)


def test_a_net_too_low_or_too_short_is_bought() -> None:
    for size in ("5 ft x 20 ft", "6 ft 6 in x 12 ft"):
        assert line(NET + f"shed\n  net {size}, mesh 15 cm\n", "net").count == 1


def test_a_net_of_another_mesh_is_told_of_and_not_taken() -> None:
    found = line(NET + "shed\n  net 7 ft x 20 ft, mesh 10 cm\n", "net")
    assert found.count == 1
    assert any("if its mesh is wide enough" in mind for mind in found.minds)


def test_one_long_net_serves_two_rows_and_no_third() -> None:
    rows = NET + NET.replace("Bean Net", "Pea Net")
    found = line(rows + "shed\n  net 6 ft 6 in x 33 ft, mesh 15 cm\n", "net")
    assert found.from_shed == 2
    three = rows + NET.replace("Bean Net", "Squash Net")
    assert line(three + "shed\n  net 6 ft 6 in x 33 ft, mesh 15 cm\n", "net").from_shed == 2


def test_the_smallest_net_that_will_do_is_taken() -> None:
    shed = "shed\n  net 7 ft x 40 ft, mesh 15 cm\n  net 6 ft 6 in x 17 ft, mesh 15 cm\n"
    assert any("17 ft" in mind for mind in line(NET + shed, "net").minds)


def test_a_net_taller_than_they_are_sold_is_two_widths_tied() -> None:
    # common practice, no source
    assert any("tied edge to edge" in mind for mind in line(TALL, "net").minds)


def test_a_net_with_the_gardeners_price_costs_that() -> None:
    assert line(NET + "yard\n  net 6 ft 6 in x 16 ft, at 12.50\n", "net").cost == 12.5
