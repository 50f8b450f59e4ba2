"""The jobs in order: the only place that loads the library of graphs."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from plantframe.jobs.job import Before


def without_circles(
    names: Sequence[str], befores: Sequence[Before]
) -> tuple[list[Before], list[tuple[Before, tuple[str, ...]]]]:
    """What goes before what, with every circle broken.

    A circle is broken at a line of the gardener's own where it has one: the trade's order stays.
    Returns what is kept; and what was left out, each with the jobs of its circle in turn.
    """
    import networkx as nx

    kept: dict[tuple[str, str], Before] = {}
    for before in befores:
        pair = (before.first, before.then)
        kept[pair] = _both(kept[pair], before) if pair in kept else before
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(names)
    graph.add_edges_from(kept)
    left_out: list[tuple[Before, tuple[str, ...]]] = []
    while True:
        try:
            circle = nx.find_cycle(graph)
        except nx.NetworkXNoCycle:
            return list(kept.values()), left_out
        pairs = [(pair[0], pair[1]) for pair in circle]
        own = [pair for pair in pairs if kept[pair].own is not None]
        broken = max(own, key=lambda pair: _line(kept[pair])) if own else pairs[-1]
        graph.remove_edge(*broken)
        turn = pairs.index(broken)
        jobs = tuple(first for first, _ in (*pairs[turn + 1 :], *pairs[: turn + 1]))
        left_out.append((kept.pop(broken), jobs))


def _both(one: Before, other: Before) -> Before:
    """Two reasons for one order: the trade's stays, and the longer wait."""
    first, second = (one, other) if one.own is None else (other, one)
    return first if first.wait >= second.wait or first.own is None else second


def _line(before: Before) -> int:
    return before.own.line if before.own else 0


def in_order(
    names: Sequence[str],
    befores: Sequence[Before],
    planned: Mapping[str, date | None],
    halves: Mapping[str, int] | None = None,
) -> list[str]:
    """The jobs so that each comes after what goes before it.

    Of those that might come next the one planned first comes first, then the one that stands first
    in the plan; what has no day comes last.

    halves   1 for what is done in the afternoon of its day
    """
    import networkx as nx

    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(names)
    graph.add_edges_from((before.first, before.then) for before in befores)
    place = {name: at for at, name in enumerate(names)}

    def key(name: str) -> tuple[date, int, int]:
        return planned.get(name) or date.max, (halves or {}).get(name, 0), place[name]

    return list(nx.lexicographical_topological_sort(graph, key=key))
