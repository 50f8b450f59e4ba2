"""The data checks find nothing in the catalogue, and would find each kind of fault."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from plantframe.catalogue.checks import (
    entry_faults,
    faults,
    figure_faults,
    sources_of,
    text_faults,
)
from plantframe.catalogue.entries import Danger, Late, Structure
from plantframe.catalogue.reading import structure
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.structure_checks import structure_faults
from plantframe.frozen import replace

if TYPE_CHECKING:
    from collections.abc import Callable


def test_nothing_is_wrong_with_the_catalogue() -> None:
    assert faults() == []


@pytest.fixture
def frame() -> Structure:
    found = structure("net frame")
    assert found is not None
    return found


def _with_step(frame: Structure, step_id: str, **changes: object) -> Structure:
    steps = tuple(replace(step, **changes) if step.id == step_id else step for step in frame.steps)
    return replace(frame, steps=steps)


DAMAGE: list[tuple[str, Callable[[Structure], Structure]]] = [
    ("wait for each other", lambda s: _with_step(s, "mark", after=("firm",))),
    ("there is no step 'nowhere'", lambda s: _with_step(s, "net", after=("nowhere",))),
    ("there is no step 'late one'", lambda s: replace(s, late=Late("late one", "so"))),
    (
        "not a kind that is known",
        lambda s: replace(s, dangers=(Danger("ghosts", "boo", ("net",)),)),
    ),
    ("no step 'never'", lambda s: replace(s, dangers=(Danger("trip", "mind", ("never",)),))),
    ("stands with no step", lambda s: replace(s, dangers=(Danger("trip", "mind", ()),))),
    ("is no fact or sum", lambda s: replace(s, sums={**s.sums, "odd": "gate.width"})),
    ("cannot be worked out", lambda s: replace(s, sums={"row": "row + 1"})),
    ("can be read", lambda s: replace(s, sums={**s.sums, "odd": "2 **"})),
    ("no height", lambda s: replace(s, height="0")),
    ("none of", lambda s: replace(s, blocks=("shed",))),
    ("questions to put", lambda s: replace(s, built_by="builder")),
]


@pytest.mark.parametrize(("says", "damage"), DAMAGE, ids=[says for says, _ in DAMAGE])
def test_a_damaged_structure_is_found_out(
    frame: Structure, says: str, damage: Callable[[Structure], Structure]
) -> None:
    assert any(says in fault for fault in structure_faults(damage(frame)))


def test_an_entry_in_a_file_of_another_name_is_found_out(frame: Structure) -> None:
    found = list(entry_faults("structure", frame, Path("other.yaml")))
    assert any("the file 'other.yaml'" in fault for fault in found)


def test_a_figure_from_a_source_that_is_not_there_is_found_out(frame: Structure) -> None:
    invented = Sourced(1, 1, 1, "m", "m", basis="published", source="nobody-1900")
    found = list(figure_faults(replace(frame, life=invented)))
    assert found == ["life: there is no source 'nobody-1900'"]
    assert sources_of(replace(frame, life=invented)) == {"nobody-1900"}


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("name: x\nname: y\n", "stands here twice"),
        ("name: x\nis: see www.example.invalid\n", "address"),
        ("name: x\nis: perfectly safe\n", "promises too much"),
    ],
)
def test_text_that_may_not_stand_in_an_entry_is_found_out(
    tmp_path: Path, text: str, says: str
) -> None:
    path = tmp_path / "x.yaml"
    path.write_text(text, encoding="utf-8")
    assert any(says in fault for fault in text_faults(path))
