"""Plants of the gardener's own, and figures of their own for plants of the catalogue.

The catalogue itself is not read here: what is kept are figures in SI under the catalogue's words,
and the name of the plant that everything else is taken from.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.names import named, tidy
from plantframe.language.edits import lengthen
from plantframe.language.values import Measure, Span
from plantframe.plan import names as naming
from plantframe.plan.plantings import FOOT_M
from plantframe.plan.things import Own, Variety, VarietyName

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from plantframe.language.reader import Block, Fact
    from plantframe.plan.site import Site
    from plantframe.plan.things import Garden

# The fact's word and slot -> the catalogue's word for the figure. `weights` are per metre of row
# where the fact says so.
_FIGURES = {
    "height": ("lengths", "height"),
    "weighs": ("weights", "wet weight"),
    "yields": ("weights", "yield"),
    "grips": ("length", "grip"),
    "apart": ("lengths", "apart"),
    "sun": ("hours", "sun"),
    "soil": ("warmth", "soil"),
    "stays": ("whiles", "stays"),
    "fruit": ("weights", "fruit weight"),
    "ready": ("whiles", "harvest"),
}
_DATES = {"sow": "sow", "plant out": "out"}
_WORDS = ("hardy", "tender", "poisonous", "train")


def varieties_of(site: Site, blocks: Iterable[Block], garden: Garden) -> Mapping[str, VarietyName]:
    """Every plant of the gardener's own by its names in small letters; slips are said."""
    found: dict[str, VarietyName] = {}
    first: dict[str, Block] = {}
    for block in blocks:
        key = tidy(block.name)
        if key in first:
            lines = {
                "name": block.name,
                "first": f"the variety on line {first[key].where.line} of {first[key].where.file}",
                "second": f"the variety on line {block.where.line} of {block.where.file}",
            }
            site.slips.say("same-name", block.where, (), **lines)
            continue
        first[key] = block
        variety = _variety(site, block, garden)
        if variety is None:
            continue
        name = VarietyName.of(variety)
        for word in (variety.name, *variety.also):
            found.setdefault(tidy(word), name)
    return found


def _variety(site: Site, block: Block, garden: Garden) -> Variety | None:
    """One variety; None where nobody knows what it is like."""
    if not block.name:
        example = "variety Ida Bean, like runner bean"
        site.slips.say("nothing-after", block.where, word=block.word, example=example)
        return None
    itself = named("plant", block.name)
    like = block.fact("like")
    slot = block.head.slot("like") or (like.slot("plant") if like else None)
    if slot is not None:
        fact = block.head if block.head.slot("like") else like or block.head
        plants = naming.plant_of(fact, slot, site.slips, quiet=False, ambiguous=False)
    elif len(itself) == 1:
        plants = itself
    else:
        edits = [lengthen(block.where, f", like {name}") for name in itself[:2]]
        site.slips.say("like-what", block.where, edits, name=block.name)
        return None
    if len(plants) != 1:
        return None
    also = tuple(
        str(value)
        for fact in block.facts
        if fact.word == "also called"
        for value in fact.all("plant")
    )
    name = itself[0] if slot is None else block.name
    figures = tuple(one for fact in block.facts for one in _figures(site, fact, garden))
    return Variety(name, plants[0], also, figures, block.where)


def _figures(site: Site, fact: Fact, garden: Garden) -> Iterable[Own]:
    """What one line says."""
    if fact.word in _FIGURES:
        slot, word = _FIGURES[fact.word]
        ends = _ends(fact.get(slot))
        if ends is None:
            return
        if ends[0] > ends[1]:
            site.slips.say("backwards", fact.where, text=fact.text)
            return
        low, high = (one / _row_m(fact) for one in ends)
        yield Own(word, low, high, _counted_from(fact))
    elif fact.word in _DATES:
        dated = site.dated(fact, _DATES[fact.word])
        if dated is None:
            return
        if garden.frost_last is None:
            site.slips.say("no-frost-to-count-from", fact.where, text=fact.text)
            return
        indoors = fact.word == "sow" and str(fact.get("raised") or "") not in {"", "outdoors"}
        first, last = ((day - garden.frost_last.day).days for day in (dated.day, dated.last))
        yield Own("sow indoors" if indoors else fact.word, first, last)
    elif fact.word in _WORDS:
        yield Own(fact.word, says=str(fact.get("text") or ""))


def _ends(value: object) -> tuple[float, float] | None:
    """The two ends of a measure or a span of them."""
    if isinstance(value, Span):
        low, high = _ends(value.low), _ends(value.high)
        return (low[0], high[1]) if low and high else None
    return (_si(value), _si(value)) if isinstance(value, Measure) else None


def _si(value: Measure) -> float:
    """Metres, kilograms, hours, degrees Celsius; a while in days."""
    return value.value * 365.0 if value.dimension == "years" else value.value


def _row_m(fact: Fact) -> float:
    """The metres of row that a weight is for: one, a foot, or as many as are typed."""
    each = fact.get("each")
    if each is None:
        return 1.0
    if isinstance(each, Measure):
        return each.value
    return FOOT_M if str(each).endswith(("foot", "ft")) else 1.0


def _counted_from(fact: Fact) -> str:
    return str(fact.get("from") or "sowing") if fact.word == "ready" else ""
