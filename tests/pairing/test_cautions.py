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


def test_a_plant_that_is_not_to_be_planted_is_ruled_out_of_every_frame_with_that_fact() -> None:
    # European Union, list of invasive alien species of Union concern (EPPO Reporting Service 2022)
    for region in ("", "  region Germany\n", "  region Vermont\n"):
        found = for_plant(season_of(f"{START}{region}"), "Oriental bittersweet")
        assert not found.ranked
        assert {one.because for one in found.rejected} == {"barred"}
        assert all("not to be planted" in one.says for one in found.rejected)
        assert "European Union" in found.rejected[0].says


def test_a_plant_barred_in_one_state_is_refused_there_and_elsewhere_told_of() -> None:
    # Forest Service, 2002: its sale is prohibited in Illinois
    there = for_plant(season_of(f"{START}  region Illinois\n"), "Japanese honeysuckle")
    assert not there.ranked
    assert "not to be planted in Illinois" in there.rejected[0].says
    elsewhere = for_plant(season_of(f"{START}  region Norway\n"), "Japanese honeysuckle")
    assert elsewhere.ranked
    told = "\n".join(line for one in elsewhere.ranked for line in one.cautions)
    assert "not to be planted in Illinois" in told


def test_a_list_that_speaks_of_the_wild_only_bars_no_garden() -> None:
    found = for_plant(season_of(f"{START}  region England\n"), "Virginia creeper")
    assert found.ranked


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
