"""What a plan says of a frame, in the names and units the catalogue's sums ask for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.slots import Section, When
from plantframe.language.values import Measure, Nail, Number, Size, Span
from plantframe.mechanics.section import dressed_mm

if TYPE_CHECKING:
    from plantframe.language.reader import Fact
    from plantframe.plan.things import Frame, Garden

# Words whose sticks are round where only a thickness is given.
ROUND = frozenset({"poles", "hoops"})
# Facts about the frame's place in the year or its care; no sum asks for them.
APART = frozenset("grow sow done move skip ok built had wind soil sun on".split()) | {
    "plant out",
    "ready by",
    "take down",
    "lines marked",
    "stays up",
}


def actual_m(section: Section, garden: Garden, word: str = "") -> tuple[float, float, bool]:
    """Width, depth (m) and whether it is round, of a section as typed.

    A trade size such as 2x4 is taken as dressed (PS 20), unless the garden says `timber actual`.
    """
    if section.nominal and garden.timber != "actual":
        try:
            width, depth = dressed_mm(section.width_m / 0.0254, section.depth_m / 0.0254)
        except ValueError:
            return section.width_m, section.depth_m, False  # no size of the trade: as typed
        return width / 1000, depth / 1000, False
    rounded = section.round if section.round is not None else word in ROUND
    return section.width_m, section.depth_m, rounded


def said_of(frame: Frame, garden: Garden) -> dict[str, object]:
    """Every fact of a frame by `word.slot`, in m, kg and so on.

    A fact that only has to be there (`prop`, `chain`) is true under its word.
    """
    out: dict[str, object] = {}
    head = frame.block.head
    for name in ("long", "high", "wide"):
        value = head.get(name)
        if isinstance(value, Measure):
            out[name] = value.value
    size = head.get("size")
    if isinstance(size, Size):
        out["size"] = _sides(size)
    for word, facts in frame.facts.items():
        if word in APART:
            continue
        heights: list[float] = []
        for fact in facts:
            heights += _take(word, fact, garden, out)
        if heights:
            out[f"{word}.heights"] = tuple(heights)
    if "mesh" in out and "net.mesh" not in out:
        out["net.mesh"] = out["mesh"]
    if "stays" in frame.facts and "stays.count" not in out:
        fact = frame.facts["stays"][0]
        out["stays.count"] = 0.0 if fact.get("none") is not None else 2.0
    _count_all(out)
    return out


def _count_all(out: dict[str, object]) -> None:
    """Posts counted on two lines, those of the ends and the others, are one row of posts."""
    posts, ends, bays = (out.get(f"{word}.count") for word in ("posts", "end posts", "bays"))
    if not isinstance(posts, float) or not isinstance(ends, float):
        return
    if not isinstance(bays, float) or posts != bays + 1:
        out["posts.count"] = posts + ends


def _take(word: str, fact: Fact, garden: Garden, out: dict[str, object]) -> list[float]:
    """One fact's slots; the heights of wires and rails are given back to be gathered."""
    heights: list[float] = []
    words: list[str] = []
    for slot in fact.slots:
        value = slot.value
        key = f"{word}.{slot.name}"
        if isinstance(value, Section):
            width, depth, rounded = actual_m(value, garden, word)
            out[f"{word}.width"], out[f"{word}.depth"] = width, depth
            out[f"{word}.round"] = rounded
            if value.length_m is not None:
                out.setdefault(f"{word}.length", value.length_m)
        elif isinstance(value, Size):
            out[word if slot.name == "size" and word == "size" else key] = _sides(value)
        elif isinstance(value, Measure):
            if slot.name == "heights":
                heights.append(value.value)
            elif slot.name == "length" and _whole_word(word, fact):
                out[word] = value.value
            else:
                out[key] = value.value
        elif isinstance(value, Span) and isinstance(value.low, Measure):
            out[key if slot.name != "apart" or word != "spacing" else word] = value.low.value
        elif isinstance(value, Number):
            out[key] = value.value
        elif isinstance(value, Nail):
            out[key] = f"{value.penny}d"
        elif isinstance(value, str) and slot.name != "text":
            if slot.name in {"how", "which", "hung", "held", "foot", "made"}:
                words.append(value)
                out[key] = " ".join(words)
            else:
                out[key] = value
        elif isinstance(value, When):
            continue
    if not any(name == word or name.startswith(f"{word}.") for name in out):
        out[word] = True
    return heights


def _whole_word(word: str, fact: Fact) -> bool:
    """Is a single length the whole of this fact (`spacing 45 cm`, `circle 1 m`)?"""
    return word not in {
        "posts",
        "poles",
        "stakes",
        "end posts",
        "bar",
        "rails",
        "bays",
        "hooks",
    } and (len([slot for slot in fact.slots if slot.name == "length"]) == 1)


def _sides(size: Size) -> tuple[float, ...]:
    return tuple(side.value for side in size.sides)
