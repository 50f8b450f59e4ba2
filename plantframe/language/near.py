"""Names and words that are near one typed: what was most likely meant."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

MOST = 4  # at most so many near names are ever shown
_NAME_CUTOFF = 0.6
_WORD_CUTOFF = 0.75


@lru_cache(maxsize=4096)
def _close(word: str, among: tuple[str, ...], cutoff: float) -> tuple[str, ...]:
    import difflib

    return tuple(difflib.get_close_matches(word, among, n=MOST, cutoff=cutoff))


def nearest(name: str, among: Iterable[str]) -> tuple[str, ...]:
    """At most four of the names that are near this one, whatever their capitals."""
    by_lower = {other.lower(): other for other in among}
    found = _close(name.lower(), tuple(by_lower), _NAME_CUTOFF)
    return tuple(by_lower[other] for other in found)


def near_words(word: str, among: Iterable[str]) -> tuple[str, ...]:
    """At most four of the words that look like a slip of this one."""
    if len(word) < 2 or not word.isalpha():
        return ()
    return _close(word, tuple(among), _WORD_CUTOFF)


def one_slip(typed: str, meant: str) -> bool:
    """Whether one letter is missing, added, wrong, or changed over with its neighbour."""
    if typed == meant or abs(len(typed) - len(meant)) > 1:
        return False
    first = next(
        (place for place, (a, b) in enumerate(zip(typed, meant, strict=False)) if a != b),
        min(len(typed), len(meant)),
    )
    rest, wanted = typed[first:], meant[first:]
    swapped = rest[:2] == wanted[1::-1] if len(wanted) > 1 else False
    return (
        rest[1:] == wanted[1:]
        or rest[1:] == wanted
        or rest == wanted[1:]
        or (swapped and rest[2:] == wanted[2:])
    )
