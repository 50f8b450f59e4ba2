"""Published figures are counted, a statement made of many crops once."""

from __future__ import annotations

from plantframe.catalogue.reading import entry_names, plant, source
from plantframe.catalogue.tally import borne_by, tally


def of(*names: str) -> int:
    """How many published numbers these plants bear, each statement once."""
    sources = [source(key.replace(" ", "-")) for key in entry_names("source")]
    plants = [plant(name) for name in names]
    assert None not in plants
    assert None not in sources
    counted = tally([one for one in plants if one], [one for one in sources if one])
    return sum(counted.once.values())


def test_seven_hundred_figures_of_plants_have_a_published_source() -> None:
    assert of(*entry_names("plant")) >= 700


def test_the_same_crop_in_two_entries_does_not_count_its_figures_twice() -> None:
    short, snap = of("short pea"), of("short snap pea")
    assert of("short pea", "short snap pea") < short + snap
    assert of("short pea", "short pea") == short


def test_a_page_on_vegetables_in_general_counts_once_for_all_of_them() -> None:
    pepper, carrot = of("pepper"), of("carrot")
    # six hours of sun, and two or three years before the family comes back
    assert of("pepper", "carrot") <= pepper + carrot - 2


def test_a_word_is_no_number_and_what_is_common_practice_is_not_published() -> None:
    vine = plant("trumpet vine")
    assert vine is not None
    published = [
        one for one in borne_by(vine) if one.basis == "published" and one.source and one.figures
    ]
    assert of("trumpet vine") <= len(published)
    assert all(one.source for one in borne_by(vine) if one.basis == "published")
