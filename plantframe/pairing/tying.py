"""Plants that hold on to nothing of themselves: tied to what is there, or propped."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.parts import every, parts
from plantframe.pairing.wording import capital
from plantframe.season.told import sentence

if TYPE_CHECKING:
    from plantframe.catalogue.workings import Held
    from plantframe.pairing.matches import Reason

# Distances of common practice, no source, in m.
LEVEL_APART_M = (0.30, 0.45)  # canes are tied to level wires or rails as far apart as this
LEVEL_EVERY_M = 0.60  # and at most this
STRANDS_EVERY_M = 0.60  # one stake, string or pole to a plant
# What the trade holds standing plants up with, in its own words.
_PROPS = frozenset({"ring", "brush", "cane", "stake", "stakes", "cage", "corral"})


def tied(pair: Pair) -> Reason:
    """It holds on to nothing of itself: what is there to tie it to."""
    climber, support = pair.climber, pair.support
    said = climber.said
    if not support.holds:
        return out("hold", f"{support.gives} {said} nothing to be tied to.")
    level = [held for held in support.holds if held.hold.runs in {"across", "both"}]
    up = [held for held in support.holds if held.hold.runs in {"up", "both"}]
    if pair.suited is not None and climber.stem == "cane" and level:
        return good("hold", f"{support.The}: {said} stands between its {parts(pair, level[0])}.")
    if climber.stiff and climber.habit != "bush":
        firm = [held for held in level if support.matter(held) not in {"net", "twine"}]
        if firm:
            return _tied_along(pair, firm)
        if climber.habit == "upright" and up and support.matter(up[0]) not in {"net", "twine"}:
            return good("hold", f"{support.The}: {said} is tied to its {parts(pair, up[0])}.")
        has = parts(pair, (level or up)[0])
        return out(
            "hold",
            f"{support.has} only {has}; {said} clings to nothing and is tied along level wires, "
            f"rails or strips {pair.shown.lengths(*LEVEL_APART_M)} apart.",
        )
    close = [held for held in up if (held.every_m or 0.0) <= STRANDS_EVERY_M]
    if any(support.matter(held) == "net" for held in level):
        return fair(
            "hold",
            f"{support.has} a net: {said} does not climb it and is clipped or tied to it as it "
            "grows.",
        )
    near = [held for held in level if held.every_m is not None and held.every_m <= LEVEL_EVERY_M]
    if close or near:
        held = (close or near)[0]
        return good("hold", f"{support.The}: {said} is tied to its {parts(pair, held)}.")
    far = (up or level)[0]
    spaced = f" only every {every(pair, far)}" if far.every_m else ""
    return fair(
        "hold",
        f"{support.has} {parts(pair, far)}{spaced}: a plant between two of them has nothing to be "
        "tied to.",
    )


def _tied_along(pair: Pair, level: list[Held]) -> Reason:
    climber, support = pair.climber, pair.support
    best = min(level, key=lambda held: held.every_m or 0.0)
    says = f"{support.The}: {climber.said} does not climb; tie it along the {parts(pair, best)}"
    if best.every_m is None or best.every_m <= LEVEL_EVERY_M:
        spaced = f", one every {every(pair, best)}" if best.every_m else ""
        return good("hold", f"{says}{spaced}.")
    return fair(
        "hold",
        f"{says}. They are {every(pair, best)} apart, and canes want one every "
        f"{pair.shown.lengths(*LEVEL_APART_M)}: a wire between helps.",
    )


def propped(pair: Pair) -> Reason:
    """It stands alone, or nearly: the trade's own way of holding it up decides."""
    climber, support = pair.climber, pair.support
    ways = sentence(climber.staking, imperial=pair.shown.imperial)
    if not ways:
        return out("hold", f"{climber.said.capitalize()} stands on its own and wants no frame.")
    if meant_for(pair):
        asked = set(ways.lower().replace(",", "").split()) & set(support.kind.split())
        does = "do" if support.plural else "does"
        serves = "serve" if support.plural else "serves"
        told = f"{does} that" if asked or support.kind == "stake" else f"{serves} too"
        return good("hold", f"{capital(climber.said)} wants {ways}; {support.the} {told}.")
    return out(
        "hold",
        f"{support.is_} not what holds it: {climber.said} stands on its own and wants {ways}.",
    )


def meant_for(pair: Pair) -> bool:
    """Whether the kind is what the trade holds this standing plant up with: a ring, one cane."""
    structure = pair.support.structure
    if structure is None:
        return False
    if pair.suited is not None:
        return True
    wanted = {word.strip(",") for word in pair.climber.staking.lower().split()} & _PROPS
    named = set(structure.name.replace("-", " ").split())
    if "wires" in named:
        named = {"wires"}  # wires for raspberry canes are no canes
    only = {name.removeprefix("single ") for name in structure.also}
    return bool(wanted & (named | only))
