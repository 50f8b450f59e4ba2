"""Value classes behave as the standard library's frozen dataclasses do."""

from __future__ import annotations

import dataclasses
from functools import cached_property

import pytest

from plantframe.frozen import FrozenError, frozen, replace


@frozen
class Post:
    """A post, in metres."""

    length_m: float
    down_m: float = 0.45
    wood: str = "softwood"

    @cached_property
    def up_m(self) -> float:
        return self.length_m - self.down_m


@dataclasses.dataclass(frozen=True)
class Standard:
    length_m: float
    down_m: float = 0.45
    wood: str = "softwood"


def test_two_values_alike_are_equal_and_hash_alike() -> None:
    assert Post(2.4) == Post(2.4, 0.45)
    assert hash(Post(2.4)) == hash(Post(2.4, 0.45))
    assert Post(2.4) != Post(2.5)
    assert Post(2.4) != Standard(2.4)  # type: ignore[comparison-overlap]
    assert len({Post(2.4), Post(2.4), Post(2.5)}) == 2


def test_a_value_cannot_be_changed() -> None:
    post = Post(2.4)
    with pytest.raises(FrozenError):
        post.length_m = 3.0  # type: ignore[misc]
    with pytest.raises(FrozenError):
        del post.length_m
    assert post.length_m == 2.4


def test_it_is_made_and_shown_as_the_standard_one_is() -> None:
    assert repr(Post(2.4)) == repr(Standard(2.4)).replace("Standard", "Post")
    with pytest.raises(TypeError):
        Post()  # type: ignore[call-arg]
    with pytest.raises(TypeError):
        Post(1, 2, "oak", "more")  # type: ignore[call-arg]


def test_a_changed_copy_leaves_the_first_as_it_was() -> None:
    post = Post(2.4)
    assert replace(post, wood="oak") == Post(2.4, 0.45, "oak")
    assert post.wood == "softwood"
    with pytest.raises(TypeError):
        replace(post, colour="green")


def test_what_is_worked_out_once_is_kept_and_makes_no_difference() -> None:
    post = Post(2.4)
    assert post.up_m == pytest.approx(1.95)
    assert post == Post(2.4)
    assert hash(post) == hash(Post(2.4))


def test_a_child_has_its_parents_fields_first() -> None:
    @frozen
    class Gatepost(Post):
        hangs: str = "left"

    assert Gatepost(2.4, 0.75, "oak", "right").hangs == "right"
    assert Gatepost(2.4) != Post(2.4)
