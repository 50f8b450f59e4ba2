"""posts-vs-bays: the posts, the bays and the length of the row do not agree."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, set_fact, together, uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit
from plantframe.language.values import Measure
from plantframe.season.units import Shown, plural

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

NEAR = 0.05  # a row paced out is written to the nearest foot or half metre


@frozen
class Count:
    """Bays against posts: what is written, and what each asks of the other."""

    frame: str
    called: str
    posts: int
    bays: int
    posts_wanted: int
    bays_made: int


@frozen
class Row:
    """The row that the bays make against the row written, m. `posts` None where unsaid."""

    frame: str
    called: str
    posts: int | None
    bays: int
    apart_m: float
    row_m: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """One post more than bays in an open row; bays times their length against the row."""
    wanted = _by_the_entry(frame, "posts", of="bays.count")
    made = _by_the_entry(frame, "bays", of="posts.count")
    if wanted is None or made is None or not _plain(frame):
        return
    posts = frame.figure("posts.count") if frame.is_said("posts.count") else None
    bays = frame.figure("bays.count") if frame.is_said("bays.count") else None
    name, called = frame.frame.name, frame.uprights
    if posts is not None and bays is not None and round(posts) != wanted:
        count = Count(name, called, round(posts), round(bays), wanted, made)
        yield _finding(frame, count, _counts(frame, count))
        return
    apart, row = _apart(frame), frame.said.get("long")
    count_of = round(bays) if bays is not None else made if posts is not None else 0
    if apart is None or count_of < 1 or not isinstance(row, float):
        return
    if abs(count_of * apart - row) > NEAR * row:
        typed = round(posts) if posts is not None else None
        facts = Row(name, called, typed, count_of, apart, row)
        yield _finding(frame, facts, _lengths(frame, facts))


def _plain(frame: WorkedFrame) -> bool:
    """Every line that the sum rests on was understood to its end."""
    lines = (frame.frame.fact("bays"), uprights(frame.frame), frame.frame.fact("rails"))
    return all(line is None or line.whole for line in lines)


def _by_the_entry(frame: WorkedFrame, word: str, of: str) -> int | None:
    """The number of posts that go with the bays, or of bays with the posts, by the kind's sum."""
    fact = frame.structure.facts.get(word) if frame.structure else None
    ways = fact.slots.get("count", ()) if fact else ()
    way = next((one for one in ways if isinstance(one, str) and of in one), None)
    if way is None or frame.worked is None or frame.figure(of) is None:
        return None
    return round(frame.worked.figure(way))


def _apart(frame: WorkedFrame) -> float | None:
    """From post to post, where the plan says it or says the rails that settle it."""
    if frame.is_said("bays.length"):
        return frame.figure("bays.length")
    if frame.is_said("posts.apart"):
        return frame.figure("posts.apart")
    if frame.is_said("rails.length") and frame.structure is not None:
        fact = frame.structure.facts.get("bays")
        ways = fact.slots.get("length", ()) if fact else ()
        if any(isinstance(way, str) and "rails.length" in way for way in ways):
            return frame.figure("bays.length")
    return None


def _finding(frame: WorkedFrame, facts: Count | Row, ways_out: Iterable[Edit]) -> Finding:
    line = frame.frame.fact("bays") or uprights(frame.frame)
    return Finding(
        level="stop",
        where=line.where if line else frame.frame.block.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=tuple(ways_out),
    )


def _counts(frame: WorkedFrame, facts: Count) -> Iterable[Edit]:
    """The posts made to go with the bays, or the bays with the posts."""
    bays, posts = frame.frame.fact("bays"), uprights(frame.frame)
    if posts is not None:
        count = facts.posts_wanted
        yield _worded(rewrite(posts, {"count": str(count)}), f"{count} {facts.called}")
    if bays is not None and facts.bays_made > 0:
        count = facts.bays_made
        yield _worded(rewrite(bays, {"count": str(count)}), plural(count, "bay"))


def _lengths(frame: WorkedFrame, facts: Row) -> Iterable[Edit]:
    """The number of bays or posts, what lies between them, or the row, made to fit the rest."""
    bays, posts = frame.frame.fact("bays"), uprights(frame.frame)
    rails, row = frame.frame.fact("rails"), frame.frame.fact("long")
    head = frame.frame.block.head
    shown = Shown(frame.garden.imperial)
    if not facts.apart_m:
        return
    needed = max(1, round(facts.row_m / facts.apart_m))
    more = (needed - facts.bays) * _posts_a_bay(frame)
    fits = abs(needed * facts.apart_m - facts.row_m) <= NEAR * facts.row_m
    if fits and bays is not None and facts.posts is None:
        yield _worded(rewrite(bays, {"count": str(needed)}), plural(needed, "bay"))
    if fits and bays is None and posts is not None and facts.posts is not None:
        count = facts.posts + more
        yield _worded(rewrite(posts, {"count": str(count)}), f"{count} {facts.called}")
    if not fits and posts is not None and rails is not None and facts.posts is not None:
        yield from _shorter_rails(frame, facts, posts, rails)
    if bays is not None and bays.slot("length") is not None:
        figure = shown.typed(facts.row_m / facts.bays)
        yield _worded(rewrite(bays, {"length": figure}), f"{facts.called} {figure} apart")
    made = shown.typed(facts.bays * facts.apart_m)
    if row is not None and row.slot("length") is not None:
        yield set_fact(frame.frame, "long", f"long {made}")
    elif head.slot("long") is not None:
        yield _worded(rewrite(head, {"long": made}), f"a row of {made}")


def _posts_a_bay(frame: WorkedFrame) -> int:
    """One, or two where they stand in pairs."""
    wanted = _by_the_entry(frame, "posts", of="bays.count") or 0
    bays = frame.figure("bays.count") or 0
    return max(1, round(wanted / (bays + 1)))


def _shorter_rails(frame: WorkedFrame, facts: Row, posts: Fact, rails: Fact) -> Iterable[Edit]:
    """Posts enough for the row, and rails cut to what then lies between them."""
    typed = rails.get("length")
    if not isinstance(typed, Measure) or facts.posts is None or facts.row_m <= 0:
        return
    bays = math.ceil(facts.row_m / facts.apart_m)
    count = facts.posts + (bays - facts.bays) * _posts_a_bay(frame)
    length = Shown(frame.garden.imperial).typed(facts.row_m / bays + typed.value - facts.apart_m)
    yield together(
        f"{count} {facts.called}, with rails cut to {length}",
        rewrite(posts, {"count": str(count)}),
        rewrite(rails, {"length": length}),
    )


def _worded(edit: Edit, remark: str) -> Edit:
    return Edit(f"{edit.says} ({remark})", edit.changes)


def words(facts: Count | Row, shown: Shown) -> Words:
    """It in words."""
    if isinstance(facts, Count):
        bays = plural(facts.bays, "bay")
        want = (
            f"{bays} {'wants' if facts.bays == 1 else 'want'} {facts.posts_wanted} {facts.called}"
        )
        one = "pair" if facts.posts_wanted > facts.bays + 1 else facts.called.removesuffix("s")
        return Words(
            says=(
                f"{facts.frame}: {want}, and {facts.posts} are written. "
                f"An open row has one {one} more than it has bays."
            ),
            if_ignored="The wood that is bought does not make the row.",
            told=f"{bays}, {facts.posts} {facts.called}.",
            sum=f"{bays} and one {one} more.",
        )
    apart, made = shown.typed(facts.apart_m), shown.typed(facts.bays * facts.apart_m)
    bays = f"{plural(facts.bays, 'bay')} of {apart}"
    if facts.posts is not None:
        bays = f"{facts.posts} {facts.called} {apart} apart"
    make = "makes" if facts.posts is None and facts.bays == 1 else "make"
    return Words(
        says=(
            f"{facts.frame}: {bays} {make} {made} of row, and {shown.typed(facts.row_m)} is "
            "written."
        ),
        if_ignored="The wood that is bought does not make the row.",
        told=f"{bays}; a row of {shown.typed(facts.row_m)}.",
        sum=f"{facts.bays} times {apart} is {made}.",
    )


RULE = Rule(
    name="posts-vs-bays",
    summary="the number of posts, the bays and the length of the row do not agree",
    looks_at="frame",
    levels=("stop",),
    basis="sum",
    check=check,
    words=words,
)
