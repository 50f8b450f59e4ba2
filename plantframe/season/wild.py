"""Where a plant runs wild, and where it is not to be planted, by the lists its entry holds.

One judgement for the warnings and for the pairings.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.season.regions import lies_in
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Harm, Plant

# A list that leaves the garden itself out, or speaks of some part of a country only.
_MILD = re.compile(r"\b(in the wild|some states|may be|in parts)\b")
_BARS = re.compile(r"\b(not to be (kept|planted|sold)|sale prohibited|too weedy to plant)\b")


def lists_of(entry: Plant) -> tuple[Harm, ...]:
    """Every list, printed or not, on which it stands as a plant that runs wild."""
    return tuple(one for one in entry.harm if one.kind == "invasive")


def printed_lists(entry: Plant) -> tuple[Harm, ...]:
    """Those of them that were published."""
    return tuple(one for one in lists_of(entry) if one.basis == "published")


def is_mild(harm: Harm) -> bool:
    """Whether the list leaves gardens out, or part of the country."""
    return bool(_MILD.search(harm.what))


def bars(harm: Harm) -> bool:
    """Whether the list says that it is not to be planted, kept or sold there."""
    return bool(_BARS.search(harm.what)) and not is_mild(harm) and harm.basis == "published"


def here(lists: Iterable[Harm], region: str) -> list[tuple[Harm, str]]:
    """The lists of the parts of the world a region lies in, each with its part, gravest first."""
    found = [(one, part) for one in lists for part in one.where if region and lies_in(region, part)]
    return sorted(found, key=lambda pair: is_mild(pair[0]))  # of equals the nearest to home


def barred(entry: Plant, region: str) -> str:
    """Why it is not to be planted in a region, or anywhere; "" where it may be.

    region   as the garden has it, "" where it has none
    """
    name = entry.name[:1].upper() + entry.name[1:]
    lists = [one for one in lists_of(entry) if bars(one)]
    led = entry.training
    if led is not None and led.kind == "none" and _BARS.search(led.how.lower()):
        told = "; ".join(f"{listed(one.where)}, {_said(one)}" for one in lists)
        return f"{name} is not to be planted{f': {told}' if told else ''}."
    for harm, part in here(lists, region):
        return f"{name} is not to be planted in {part}: print has it as {_said(harm)}."
    return ""


def _said(harm: Harm) -> str:
    return f"“{harm.what}”" + (f" ({harm.year})" if harm.year else "")
