"""What a pairing warns of beside its six answers."""

from __future__ import annotations

from plantframe.pairing.advisor import for_plant
from tests.pairing.gardens import pairing, season_of

START = "garden Test Row, 2027\n  place 52 N, 1 W\n"


def lines(plant: str, kind: str, text: str = START) -> str:
    """The cautions of a pairing, as one text."""
    return "\n".join(pairing(for_plant(season_of(text), plant), kind).cautions)


def test_poison_is_told_and_children_are_named_where_there_are_some() -> None:
    assert "Poisonous" in lines("wisteria", "pergola")
    assert "There are children here" in lines(
        "wisteria", "pergola", START.replace("\n", "\n  children 4\n", 1)
    )


def test_where_a_plant_runs_wild_is_told_by_the_region() -> None:
    unknown = lines("wisteria", "pergola")
    assert "Look it up" in unknown
    here = lines("wisteria", "pergola", f"{START}  region Hawaii\n")
    assert "Hawaii, where you are" in here
    elsewhere = lines("wisteria", "pergola", f"{START}  region Norway\n")
    assert "runs wild" not in elsewhere


def test_melons_want_slings() -> None:
    assert "sling" in lines("melon", "string drops")


def test_a_clinger_is_kept_off_gutters() -> None:
    assert "gutters" in lines("ivy", "bare wall", f"{START}wall Back Wall, brick\n")


def test_a_hop_among_sweet_peas_wins_by_june() -> None:
    text = f"{START}frame Row, hop pole\n  grow sweet pea, 6 plants\n"
    assert "give each its own bay" in lines("hop", "Row", text)


def test_squash_on_short_bays_is_given_its_stays() -> None:
    text = (
        f"{START}frame Row, net frame\n  bays 3 of 1.2 m\n"
        "  posts 45x45 mm, 2.4 m, 45 cm down\n  bar 45x45 mm\n"
    )
    assert "stays at the ends" in lines("climbing squash", "Row", text)
