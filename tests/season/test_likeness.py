"""What a gardener's words for a job are taken to mean; common practice, no source."""

from __future__ import annotations

import pytest

from plantframe.catalogue.reading import structure
from plantframe.season.likeness import Called, best, meant, near, root_of, short, slug

SAID = [
    ("net frame", "weave the bar", "bar"),
    ("net frame", "weaving the bars", "bar"),
    ("net frame", "thread the net", "net"),
    ("net frame", "threead the net", "net"),
    ("net frame", "hang the net", "net"),
    ("net frame", "tie the nets together", "join"),
    ("net frame", "firm the soil", "firm"),
    ("net frame", "ram the posts firm", "firm"),
    ("net frame", "drill the holes", "bore"),
    ("net frame", "coat the feet", "coat"),
    ("net frame", "fix the stays", "stays"),
    ("net frame", "pins", "pins"),
    ("wigwam", "push the poles in", "poles"),
    ("wigwam", "tie the top", "tie"),
    ("wigwam", "circle", "circle"),
    ("cold frame", "screw the corners", "corners"),
    ("cold frame", "turn it over", "turn"),
    ("cold frame", "foot strips", "strips"),
    ("mortised fence", "dig the holes", "holes"),
    ("mortised fence", "enter the rails", "rails"),
    ("hinged lattice", "paint the wall", "paint"),
    ("hinged lattice", "weave the strips", "weave"),
    ("crossed row", "tie the diagonals", "diagonals"),
]


def steps(kind: str) -> list[Called]:
    entry = structure(kind)
    assert entry is not None
    return [Called(step.id, step.do) for step in entry.steps]


@pytest.mark.parametrize(("kind", "words", "step"), SAID)
def test_words_near_enough_mean_the_step(kind: str, words: str, step: str) -> None:
    found = best(words, steps(kind))
    assert found is not None
    assert steps(kind)[found].id == step


@pytest.mark.parametrize("words", ["set the posts", "posts", "the posts are in", "drive the posts"])
def test_setting_the_posts_means_the_end_posts_and_the_middle_ones(words: str) -> None:
    jobs = steps("net frame")
    assert [jobs[at].id for at in meant(words, jobs)] == ["ends", "middles"]
    last = best(words, jobs)
    assert last is not None
    assert jobs[last].id == "middles"


@pytest.mark.parametrize(
    "words", ["paint the shed door", "sow the beans", "clean the bars", "water", "the", ""]
)
def test_words_of_another_job_mean_no_step(words: str) -> None:
    assert best(words, steps("net frame")) is None


def test_the_nearest_are_named_to_somebody_who_meant_none() -> None:
    found = near("bar on the roof", steps("net frame"))
    assert "weave the bar through the top row of meshes" in found
    assert len(found) <= 4
    assert near("frobnicate", steps("net frame")) == ()


def test_the_short_form_of_a_step_is_its_first_clause() -> None:
    assert short("turn the box over, lights off") == "turn the box over"
    assert short("cut the pieces: 4 of 2x2") == "cut the pieces"


@pytest.mark.parametrize(
    ("name", "address"),
    [
        ("Bean Net", "bean-net"),
        ("May's Border", "mays-border"),
        ("lights size", "lights-size"),
        ("Épinards – été", "épinards-été"),
    ],
)
def test_an_address_keeps_the_words_of_a_name(name: str, address: str) -> None:
    assert slug(name) == address


@pytest.mark.parametrize("words", [("weave", "weaves", "weaving"), ("ram", "rams", "rammed")])
def test_a_word_has_one_root_whatever_its_ending(words: tuple[str, ...]) -> None:
    assert len({root_of(word) for word in words}) == 1
