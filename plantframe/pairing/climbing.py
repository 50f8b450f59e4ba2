"""Plants that climb of themselves: stems that wind, tendrils and leaf stalks that close."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.parts import endures, every, is_rung, parts, rots, thick
from plantframe.pairing.wording import capital
from plantframe.season.plantings import as_range

if TYPE_CHECKING:
    from plantframe.catalogue.workings import Held
    from plantframe.pairing.matches import Reason

# Distances of common practice, no source, in m.
UPRIGHT_APART_M = (0.30, 0.50)  # Hortipendium, the German horticultural encyclopaedia
LED_EVERY_M = 0.50  # a twining stem is led from one level wire to the next over this
SLATS_EVERY_M = 0.20  # pickets this close, a stem is woven through
GRID_EVERY_M = 0.30  # a leaf stalk finds the next hold within this
HAND_MESH_M = 0.10  # a hand and a fruit go through
OPEN_MESH_M = (0.12, 0.15)
PEA_MESH_M = 0.20
SLUNG_KG = 1.0  # a fruit this heavy hangs in a sling before it fills an opening


def twining(pair: Pair) -> Reason:
    """Stems wind round what stands upright, up to a thickness."""
    climber, support = pair.climber, pair.support
    grip = climber.grip_m or 0.0
    up = [held for held in support.holds if held.hold.runs in {"up", "both"}]
    thin = [held for held in up if held.thickness_m <= grip + 1e-6 and endures(pair, held)]
    takes = f"{climber.said} winds round anything up to {pair.shown.bench(grip)}"
    if thin:
        return _mesh(pair, thin[0]) or good(
            "hold", f"{support.has} {thick(pair, thin[0])}; {takes}."
        )
    if support.overhead:
        return _led_up(pair)
    rungs = [held for held in support.holds if is_rung(held) and endures(pair, held)]
    level = [held for held in support.holds if held.hold.runs == "across"]
    if rungs and up:
        return fair(
            "hold",
            f"{support.has} {thick(pair, rungs[0])} every {every(pair, rungs[0])}: "
            f"{takes}, and over these it lies rather than climbs. Help it up.",
        )
    slats = [held for held in up if held.every_m is not None and held.every_m <= SLATS_EVERY_M]
    if slats:
        return fair(
            "hold",
            f"{support.has} {thick(pair, slats[0])}: {takes}, and has to be woven in and out of "
            "these.",
        )
    wired = [held for held in level if support.matter(held) in {"wire", "rope", "twine"}]
    asks = as_range(climber.entry.other.get("wires apart"))
    apart = UPRIGHT_APART_M if asks is None else (asks.low, asks.high)
    if wired and (climber.tied or climber.stiff or (wired[0].every_m or 1.0) <= LED_EVERY_M):
        return fair(
            "hold",
            f"{support.has} level {parts(pair, wired[0])} only, and a twining stem gains "
            f"nothing from those: {climber.said} has to be led from one to the next and tied. "
            "Upright wires or strings "
            f"{pair.shown.lengths(*apart)} apart serve it better.",
        )
    if up and not endures(pair, up[0]):
        return rots(pair, up[0])
    if up:
        return out(
            "hold",
            f"{support.has} {thick(pair, up[0])}; {takes}, and cannot get round those.",
        )
    return out(
        "hold",
        f"{support.has} nothing upright and thin to climb; {takes} if it stands upright.",
    )


def grasping(pair: Pair) -> Reason:
    """Tendrils and leaf stalks close round what is thin."""
    climber, support = pair.climber, pair.support
    grip = climber.grip_m or 0.0
    what = "leaf stalks" if climber.holds_on == "leaf stalks" else "tendrils"
    takes = f"the {what} of {climber.said} close round anything up to {pair.shown.bench(grip)}"
    strict = climber.strict_grip_m
    if strict is not None and pair.shown.bench(strict) != pair.shown.bench(grip):
        takes += f" (one source says {pair.shown.bench(strict)})"
    thin = [
        held for held in support.holds if held.thickness_m <= grip + 1e-6 and endures(pair, held)
    ]
    if thin:
        return _thin(pair, thin, takes)
    if support.overhead and climber.least_height_m >= (support.height_m or 0.0):
        return _led_up(pair)
    rungs = [held for held in support.holds if is_rung(held) and endures(pair, held)]
    if rungs:
        return fair(
            "hold",
            f"{support.has} {thick(pair, rungs[0])} every {every(pair, rungs[0])}: {takes}, "
            "so it wants a tie at each, or twine wound round.",
        )
    firm = [held for held in support.holds if endures(pair, held)]
    if climber.tied and climber.stiff and firm:
        return fair(
            "hold",
            f"{support.has} {thick(pair, firm[0])}: {takes}, so the stems "
            "are tied to it, as they are anyhow.",
        )
    if not support.holds:
        return out("hold", f"{support.gives} {climber.said} nothing to hold.")
    if not endures(pair, support.holds[0]):
        return rots(pair, support.holds[0])
    return out(
        "hold",
        f"{support.has} nothing thinner than {thick(pair, support.holds[0])}; {takes}.",
    )


def _thin(pair: Pair, thin: list[Held], takes: str) -> Reason:
    """There is something thin enough; is it close enough, and does it run the right way."""
    climber, support = pair.climber, pair.support
    crossed = [held for held in thin if held.hold.runs == "both"]
    level = [held for held in thin if held.hold.runs == "across"]
    up = [held for held in thin if held.hold.runs == "up"]
    best = (crossed or level or up)[0]
    says = f"{support.has} {thick(pair, best)}; {takes}."
    if crossed:
        return _mesh(pair, best) or good("hold", says)
    if level and up:
        return good("hold", says)
    if level:
        if (best.every_m or 0.0) <= GRID_EVERY_M or (climber.tied and climber.stiff):
            return good("hold", says)
        return fair(
            "hold",
            f"{says} From one to the next it is {every(pair, best)}: tie it across the gaps, or "
            "hang string or net between.",
        )
    if climber.holds_on == "leaf stalks":
        return good("hold", says)
    return fair(
        "hold", f"{says} Up a single strand it wants a clip or a tie every hand and a half."
    )


def _led_up(pair: Pair) -> Reason:
    """A roof on posts too thick to climb: what is led up them lies on top."""
    support = pair.support
    return fair(
        "hold",
        f"{support.has} posts too thick for it and a roof to lie on: lead {pair.climber.said} up "
        "a post with ties or a wire, and it spreads over the top.",
    )


def _mesh(pair: Pair, held: Held) -> Reason | None:
    """What is wrong with the openings of a net or mesh, or None."""
    climber, support = pair.climber, pair.support
    size = held.every_m
    if size is None or support.matter(held) not in {"net", "mesh"}:
        return None
    entry = climber.entry
    openings = pair.shown.length(size)
    is_pea = climber.holds_on == "tendrils" and entry.family == "Fabaceae"
    if is_pea:
        if size > PEA_MESH_M + 1e-6:
            return fair(
                "hold",
                f"{support.has} openings of {openings}: wide for {climber.said}, whose tendrils "
                f"want the next cord within {pair.shown.length(PEA_MESH_M)}.",
            )
        return None
    weighs = entry.fruit_weight
    if weighs is not None and (weighs.high or 0.0) >= SLUNG_KG:
        return None
    fruit = entry.fruit_across
    thick = fruit.high if fruit is not None and fruit.high is not None else 0.0
    small = size < HAND_MESH_M - 1e-6 or (thick > 0.7 * size and climber.picked == "by hand")
    if climber.picked == "by hand" and small:
        return fair(
            "hold",
            f"{support.has} openings of {openings}: the fruit of {climber.said} swells through "
            "them and has to be cut out. "
            f"{capital(pair.shown.lengths(*OPEN_MESH_M))} lets hand and fruit pass.",
        )
    return None
