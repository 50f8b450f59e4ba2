"""What the figures of the catalogue rest on, counted; what was said of many plants counts once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.checks import figures_in
from plantframe.catalogue.entries import Plant
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from plantframe.catalogue.entries import Material, Source, Structure

    Entry = Plant | Structure | Material


@frozen
class Borne:
    """One thing an entry says, and what it rests on.

    where     the words that lead to it
    figures   the numbers, empty where it is a word
    genus     the plant's genus, or the entry's name
    """

    source: str
    basis: str
    where: str
    figures: tuple[float | None, ...]
    genus: str


@frozen
class Tally:
    """The count.

    by_source   everything that names the source: figures, words, lines of a table, harms
    once        by source, published numbers alone; the same number said of the same thing counts
                once for all plants of one genus, and once for all where the source speaks of many
                crops together
    by_basis    the same as by_source, by basis
    """

    by_source: Mapping[str, int]
    once: Mapping[str, int]
    by_basis: Mapping[str, int]


def tally(entries: Iterable[Entry], sources: Iterable[Source]) -> Tally:
    """Count what a number of entries rest on."""
    general = {one.key for one in sources if one.general}
    by_source: dict[str, int] = {}
    by_basis: dict[str, int] = {}
    said: dict[str, set[object]] = {}
    for entry in entries:
        for one in borne_by(entry):
            by_basis[one.basis] = by_basis.get(one.basis, 0) + 1
            if not one.source:
                continue
            by_source[one.source] = by_source.get(one.source, 0) + 1
            if one.basis == "published" and one.figures:
                genus = "" if one.source in general else one.genus
                said.setdefault(one.source, set()).add((one.where, one.figures, genus))
    return Tally(by_source, {key: len(told) for key, told in said.items()}, by_basis)


def borne_by(entry: Entry) -> Iterator[Borne]:
    """Everything an entry says, each with its source and basis."""
    genus = entry.latin.split()[0] if isinstance(entry, Plant) and entry.latin else entry.name
    for where, value in figures_in(entry):
        numbers = () if value.is_word else (value.low, value.middle, value.high)
        thing = where.partition(", also")[0]
        yield Borne(value.source or "", value.basis, thing, numbers, genus)
    if not isinstance(entry, Plant):
        return
    for harm in entry.harm:
        yield Borne(harm.source or "", harm.basis, harm.kind, (), genus)
    if entry.training is not None:
        yield Borne(entry.training.source or "", entry.training.basis, "training", (), genus)
    if entry.emergence is not None:
        table = entry.emergence
        for line in table.table:
            yield Borne(table.source or "", table.basis, "emergence", line, genus)
