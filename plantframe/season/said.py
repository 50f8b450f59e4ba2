"""What a plan says of a frame, in the names and units the catalogue's sums ask for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.slots import Section
from plantframe.language.values import Measure, Nail, Number, Size, Span
from plantframe.mechanics.section import dressed_mm

if TYPE_CHECKING:
    from plantframe.language.reader import Fact
    from plantframe.language.shapes import Slot
    from plantframe.plan.things import Frame, Garden

# Words whose sticks are round where only a thickness is given.
ROUND = frozenset({"poles", "hoops"})
# Slots whose words may be several: `feet chained, pegged`.
SEVERAL = frozenset({"how", "which", "hung", "held", "foot", "made"})
# Several words for one thing, by slot: the sums know the first.
SAME = {
    "joint": {"overlapped": "lapped", "overlapping": "lapped"},
    "hung": dict.fromkeys(("loosely", "draped", "thrown over", "laid over"), "loose"),
}
# Facts of which a length is one part among others.
OF_SEVERAL_PARTS = frozenset(
    {"posts", "poles", "stakes", "end posts", "bar", "rails", "bays", "hooks"}
)
# Facts about the frame's place in the year or its care; no sum asks for them.
APART = frozenset(
    ["grow", "sow", "done", "move", "skip", "ok", "built", "had", "wind", "soil", "sun", "on"]
) | {
    "plant out",
    "ready by",
    "take down",
    "lines marked",
    "stays up",
    "stood in",
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
    _mesh_is_the_net(out)
    if "stays" in frame.facts and "stays.count" not in out:
        fact = frame.facts["stays"][0]
        out["stays.count"] = 0.0 if fact.get("none") is not None else 2.0
    _count_all(out)
    _say_plants(frame, out)
    return out


def _mesh_is_the_net(out: dict[str, object]) -> None:
    """What is said of the mesh is said of the net; on a fence it has its heights too."""
    if "mesh" in out:
        out.setdefault("net.mesh", out["mesh"])
    for side in ("high", "up", "buried"):
        if f"mesh.{side}" in out:
            out.setdefault(f"net.{side}", out[f"mesh.{side}"])
    up, buried = out.pop("net.up", None), out.get("net.buried", 0.0)
    if isinstance(up, float) and isinstance(buried, float):
        out.setdefault("net.high", up + buried)  # what stands and what is buried is one width


def _say_plants(frame: Frame, out: dict[str, object]) -> None:
    """How many plants it bears, and how far apart they stand, where each has its own support."""
    counts = [one.count for one in frame.plantings]
    if counts and all(count is not None for count in counts):
        out["plants.count"] = float(sum(count for count in counts if count is not None))
    apart = {one.apart_m for one in frame.plantings if one.apart_m}
    if len(apart) == 1:
        out["plants.apart"] = apart.pop()


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
        if isinstance(value, str):
            value = SAME.get(slot.name, {}).get(value, value)
        if isinstance(value, Section):
            _take_section(word, value, garden, out)
        elif isinstance(value, Measure) and slot.name == "heights":
            heights.append(value.value)
        elif isinstance(value, str) and slot.name in SEVERAL:
            words.append(value)
            out[f"{word}.{slot.name}"] = " ".join(words)
        elif (plain := _plain(slot)) is not None:
            if slot.name == "count" and isinstance(plain, float) and _in_pairs(fact):
                plain *= 2  # three pairs of poles are six poles
            out[_key(word, slot, fact)] = plain
    if not any(name == word or name.startswith(f"{word}.") for name in out):
        out[word] = True
    return heights


def _in_pairs(fact: Fact) -> bool:
    """Whether a line counts pairs: `3 pairs of poles`."""
    return any(words in fact.text.lower() for words in ("pairs of ", "pair of "))


def _take_section(word: str, section: Section, garden: Garden, out: dict[str, object]) -> None:
    width, depth, rounded = actual_m(section, garden, word)
    out[f"{word}.width"], out[f"{word}.depth"] = width, depth
    out[f"{word}.round"] = rounded
    if section.length_m is not None:
        out.setdefault(f"{word}.length", section.length_m)


def _plain(slot: Slot) -> object | None:
    """A slot's value as the sums take it: a figure, a word, the sides of a size."""
    value = slot.value
    if isinstance(value, str):
        value = SAME.get(slot.name, {}).get(value, value)
    if isinstance(value, Size):
        return _sides(value)
    if isinstance(value, Span):
        value = value.low
    if isinstance(value, Measure | Number):
        return value.value
    if isinstance(value, Nail):
        return f"{value.penny}d"
    return value if isinstance(value, str) and slot.name != "text" else None


def _key(word: str, slot: Slot, fact: Fact) -> str:
    """The name the sums know a slot by: the fact's own word where the slot is all it says."""
    value = slot.value
    whole = (
        (isinstance(value, Size) and slot.name == word == "size")
        or (isinstance(value, Measure) and slot.name == "length" and _whole_word(word, fact))
        or (isinstance(value, Span) and word == "spacing")
    )
    return word if whole else f"{word}.{slot.name}"


def _whole_word(word: str, fact: Fact) -> bool:
    """Whether a single length is the whole of this fact: `circle 1 m`, but not `posts 8 ft`."""
    lengths = [slot for slot in fact.slots if slot.name == "length"]
    return word not in OF_SEVERAL_PARTS and len(lengths) == 1


def _sides(size: Size) -> tuple[float, ...]:
    return tuple(side.value for side in size.sides)
