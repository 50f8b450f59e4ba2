"""Does it hold on? How a plant climbs, against what the support gives it to climb."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.matches import OUT
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.supports import capital

if TYPE_CHECKING:
    from collections.abc import Callable

    from plantframe.catalogue.workings import Held
    from plantframe.pairing.matches import Reason

# Distances of common practice, no source, in m.
RUNG_EVERY_M = 0.40  # rungs or strips this close let a shoot lie over them where it cannot grip
RUNG_THICK_M = 0.045  # thicker than this it is a rail, and nothing lies over it of itself
LEVEL_APART_M = (0.30, 0.45)  # canes are tied to level wires or rails as far apart as this
LEVEL_EVERY_M = 0.60  # and at most this
UPRIGHT_APART_M = (0.30, 0.50)  # Hortipendium, the German horticultural encyclopaedia
LED_EVERY_M = 0.50  # a twining stem is led from one level wire to the next over this
SLATS_EVERY_M = 0.20  # pickets this close, a stem is woven through
GRID_EVERY_M = 0.30  # a leaf stalk finds the next hold within this
STRANDS_EVERY_M = 0.60  # one stake, string or pole to a plant
SOLID_M = 0.02  # rootlets and pads take a batten of about 25 mm, no wire and no net
HAND_MESH_M = 0.10  # a hand and a fruit go through
OPEN_MESH_M = (0.12, 0.15)
PEA_MESH_M = 0.20
SLUNG_KG = 1.0
FINE_MM = 5.0  # a wire is told to half a millimetre

_OPEN = frozenset({"net", "twine", "rope", "wire"})


# What the trade holds standing plants up with, in its own words.
_PROPS = frozenset({"ring", "brush", "cane", "stake", "stakes", "cage", "corral"})


def holding(pair: Pair) -> Reason:
    """Whether it holds on, and to what."""
    climber, support = pair.climber, pair.support
    ways: dict[str, Callable[[Pair], Reason]] = {
        "twines": _twining,
        "tendrils": _grasping,
        "leaf stalks": _grasping,
        "clings": _clinging,
        "tied in": _tied,
    }
    if support.bare_wall and climber.holds_on != "clings":
        return out(
            "hold",
            f"{support.gives} nothing to grip: {climber.said} {_habit(pair)} and cannot take a "
            "flat face.",
        )
    if climber.habit == "low":
        return fair("hold", f"{capital(climber.said)} creeps, and climbs only where it is led up.")
    if climber.propped or climber.holds_on not in ways:
        return _propped(pair)
    reason = ways[climber.holds_on](pair)
    if reason.verdict == OUT and climber.by_hand:
        reason = fair("hold", f"{reason.says} The plan has it tied by hand, and so it holds.")
    other = climber.holds_otherwise
    if other in ways:
        reason = type(reason)(
            reason.question,
            reason.verdict,
            f"{reason.says} Sources differ: some say it {_verb(other)}.",
        )
    return reason


# -- the ways of holding ----------------------------------------------------------------------


def _twining(pair: Pair) -> Reason:
    """Stems wind round what stands upright, up to a thickness."""
    climber, support = pair.climber, pair.support
    grip = climber.grip_m or 0.0
    up = [held for held in support.holds if held.hold.runs in {"up", "both"}]
    thin = [held for held in up if held.thickness_m <= grip + 1e-6 and _endures(pair, held)]
    takes = f"{climber.said} winds round anything up to {pair.shown.bench(grip)}"
    if thin:
        return _mesh(pair, thin[0]) or good(
            "hold", f"{support.has} {_thick(pair, thin[0])}; {takes}."
        )
    if support.overhead:
        return _led_up(pair)
    rungs = [held for held in support.holds if _is_rung(held)]
    level = [held for held in support.holds if held.hold.runs == "across"]
    if rungs and up:
        return fair(
            "hold",
            f"{support.has} {_thick(pair, rungs[0])} every {_every(pair, rungs[0])}: "
            f"{takes}, and over these it lies rather than climbs. Help it up.",
        )
    slats = [held for held in up if held.every_m is not None and held.every_m <= SLATS_EVERY_M]
    if slats:
        return fair(
            "hold",
            f"{support.has} {_thick(pair, slats[0])}: {takes}, and has to be woven in and out of "
            "these.",
        )
    wired = [held for held in level if support.matter(held) in {"wire", "rope", "twine"}]
    if wired and (climber.tied or climber.stiff or (wired[0].every_m or 1.0) <= LED_EVERY_M):
        return fair(
            "hold",
            f"{support.has} level {_parts(pair, wired[0])} only, and a twining stem gains "
            f"nothing from those: {climber.said} has to be led from one to the next and tied. "
            "Upright wires or strings "
            f"{pair.shown.lengths(*UPRIGHT_APART_M)} apart serve it better.",
        )
    if up and not _endures(pair, up[0]):
        return _rots(pair, up[0])
    if up:
        return out(
            "hold",
            f"{support.has} {_thick(pair, up[0])}; {takes}, and cannot get round those.",
        )
    return out(
        "hold",
        f"{support.has} nothing upright and thin to climb; {takes} if it stands upright.",
    )


def _grasping(pair: Pair) -> Reason:
    """Tendrils and leaf stalks close round what is thin."""
    climber, support = pair.climber, pair.support
    grip = climber.grip_m or 0.0
    what = "leaf stalks" if climber.holds_on == "leaf stalks" else "tendrils"
    takes = f"the {what} of {climber.said} close round anything up to {pair.shown.bench(grip)}"
    strict = climber.strict_grip_m
    if strict is not None and pair.shown.bench(strict) != pair.shown.bench(grip):
        takes += f" (one source says {pair.shown.bench(strict)})"
    thin = [
        held for held in support.holds if held.thickness_m <= grip + 1e-6 and _endures(pair, held)
    ]
    if thin:
        return _thin(pair, thin, takes)
    if support.overhead and climber.least_height_m >= (support.height_m or 0.0):
        return _led_up(pair)
    rungs = [held for held in support.holds if _is_rung(held)]
    if rungs:
        return fair(
            "hold",
            f"{support.has} {_thick(pair, rungs[0])} every {_every(pair, rungs[0])}: {takes}, "
            "so it wants a tie at each, or twine wound round.",
        )
    if climber.tied and climber.stiff and support.holds:
        return fair(
            "hold",
            f"{support.has} {_thick(pair, support.holds[0])}: {takes}, so the stems "
            "are tied to it, as they are anyhow.",
        )
    if not support.holds:
        return out("hold", f"{support.gives} {climber.said} nothing to hold.")
    if not _endures(pair, support.holds[0]):
        return _rots(pair, support.holds[0])
    return out(
        "hold",
        f"{support.has} nothing thinner than {_thick(pair, support.holds[0])}; {takes}.",
    )


def _thin(pair: Pair, thin: list[Held], takes: str) -> Reason:
    """There is something thin enough; is it close enough, and does it run the right way."""
    climber, support = pair.climber, pair.support
    crossed = [held for held in thin if held.hold.runs == "both"]
    level = [held for held in thin if held.hold.runs == "across"]
    up = [held for held in thin if held.hold.runs == "up"]
    best = (crossed or level or up)[0]
    says = f"{support.has} {_thick(pair, best)}; {takes}."
    if crossed:
        return _mesh(pair, best) or good("hold", says)
    if level and up:
        return good("hold", says)
    if level:
        if (best.every_m or 0.0) <= GRID_EVERY_M or (climber.tied and climber.stiff):
            return good("hold", says)
        return fair(
            "hold",
            f"{says} From one to the next it is {_every(pair, best)}: tie it across the gaps, or "
            "hang string or net between.",
        )
    if climber.holds_on == "leaf stalks":
        return good("hold", says)
    return fair(
        "hold", f"{says} Up a single strand it wants a clip or a tie every hand and a half."
    )


def _clinging(pair: Pair) -> Reason:
    """Rootlets and pads fix themselves to a rough, solid face, and stay in it."""
    climber, support = pair.climber, pair.support
    if support.at_wall:
        return _on_wall(pair)
    solid = [held for held in support.holds if held.thickness_m >= SOLID_M]
    solid = [held for held in solid if support.matter(held) not in _OPEN]
    if not solid:
        return out(
            "hold",
            f"{support.gives} only {_parts(pair, support.holds[0])}; {climber.said} clings to "
            "a rough, solid face and finds none.",
        )
    return fair(
        "hold",
        f"{support.has} {_thick(pair, solid[0])}: tie {climber.said} to them until its "
        "rootlets have taken hold.",
    )


def _on_wall(pair: Pair) -> Reason:
    climber, support = pair.climber, pair.support
    wall = support.wall.name if support.wall else "the wall"
    kind = support.fabric
    if kind == "cladding":
        return out(
            "hold",
            f"{capital(wall)} is clad: {climber.said} fixes itself to boards and "
            "shingles, damp stays behind it and the wood rots.",
        )
    if kind == "skin":
        return out(
            "hold",
            f"{capital(wall)} is painted or rendered: {climber.said} fixes itself to "
            "it, and taking it off takes the skin along.",
        )
    if kind == "failing":
        return out(
            "hold",
            f"{capital(wall)} is in poor order: {climber.said} goes into every crack "
            "and loose joint and opens it.",
        )
    if not support.bare_wall:
        if kind == "masonry":
            return fair(
                "hold",
                f"{support.is_} soon left behind: {climber.said} goes through it on to the wall, "
                "which needs no frame for it. Tie it until its rootlets hold.",
            )
        if kind == "" and any(support.matter(held) == "wire" for held in support.holds):
            return fair(
                "hold",
                f"{support.does('keeps', 'keep')} {climber.said} from peeling off as it grows old, "
                "on brick or stone in good order. Never on boards, shingles, paint or render.",
            )
        return out(
            "hold",
            f"{support.does('does', 'do')} not keep it: {climber.said} goes through to the wall "
            "and fixes itself there, to boards and paint as well as to brick.",
        )
    if support.wall is None:
        return good(
            "hold",
            f"On brick or stone in good order {climber.said} clings by itself. Not on boards, "
            "shingles, paint, render or crumbling mortar.",
        )
    if kind == "masonry":
        return good(
            "hold",
            f"{support.is_} masonry: {climber.said} clings to it by itself. Sources differ on "
            "mortar: sound joints bear it, loose ones it opens, so look at them first.",
        )
    return fair(
        "hold",
        f"{support.The}: nobody has said what it is made of. On brick or stone in good order "
        f"{climber.said} clings by itself; never on boards, shingles, paint or render.",
    )


def _tied(pair: Pair) -> Reason:
    """It holds on to nothing of itself: what is there to tie it to."""
    climber, support = pair.climber, pair.support
    said = climber.said
    if not support.holds:
        return out("hold", f"{support.gives} {said} nothing to be tied to.")
    level = [held for held in support.holds if held.hold.runs in {"across", "both"}]
    up = [held for held in support.holds if held.hold.runs in {"up", "both"}]
    if pair.suited is not None and climber.stem == "cane" and level:
        return good("hold", f"{support.The}: {said} stands between its {_parts(pair, level[0])}.")
    if climber.stiff and climber.habit != "bush":
        firm = [held for held in level if support.matter(held) not in {"net", "twine"}]
        if firm:
            return _tied_along(pair, firm)
        if climber.habit == "upright" and up and support.matter(up[0]) not in {"net", "twine"}:
            return good("hold", f"{support.The}: {said} is tied to its {_parts(pair, up[0])}.")
        has = _parts(pair, (level or up)[0])
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
        return good("hold", f"{support.The}: {said} is tied to its {_parts(pair, held)}.")
    far = (up or level)[0]
    every = f" only every {_every(pair, far)}" if far.every_m else ""
    return fair(
        "hold",
        f"{support.has} {_parts(pair, far)}{every}: a plant between two of them has nothing to be "
        "tied to.",
    )


def _tied_along(pair: Pair, level: list[Held]) -> Reason:
    climber, support = pair.climber, pair.support
    best = min(level, key=lambda held: held.every_m or 0.0)
    says = f"{support.The}: {climber.said} does not climb; tie it along the {_parts(pair, best)}"
    if best.every_m is None or best.every_m <= LEVEL_EVERY_M:
        every = f", one every {_every(pair, best)}" if best.every_m else ""
        return good("hold", f"{says}{every}.")
    return fair(
        "hold",
        f"{says}. They are {_every(pair, best)} apart, and canes want one every "
        f"{pair.shown.lengths(*LEVEL_APART_M)}: a wire between helps.",
    )


def _propped(pair: Pair) -> Reason:
    """It stands alone, or nearly: the trade's own way of holding it up decides."""
    climber, support = pair.climber, pair.support
    ways = climber.staking
    if not ways:
        return out("hold", f"{climber.said.capitalize()} stands on its own and wants no frame.")
    if meant_for(pair):
        return good("hold", f"{capital(climber.said)} wants {ways}; {support.the} does that.")
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
    only = {name.removeprefix("single ") for name in structure.also}
    return bool(wanted & (named | only))


# -- what several ways share ------------------------------------------------------------------


def _led_up(pair: Pair) -> Reason:
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
        return None  # it hangs in a sling before it fills an opening
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


def _endures(pair: Pair, held: Held) -> bool:
    """Whether a part lasts under what climbs it: string, rope and net rot under wood that stays."""
    climber = pair.climber
    soft = pair.support.matter(held) in {"net", "twine", "rope"}
    return not (soft and climber.lasting and climber.stiff)


def _rots(pair: Pair, held: Held) -> Reason:
    climber = pair.climber
    return out(
        "hold",
        f"{pair.support.has} {_parts(pair, held)}, which rot and cut in under wood that stays for "
        f"years, as that of {climber.said} does.",
    )


def _is_rung(held: Held) -> bool:
    """A rung or strip that a shoot can lie over: close to the next, and no rail."""
    return (
        held.hold.runs in {"across", "both"}
        and held.every_m is not None
        and held.every_m <= RUNG_EVERY_M + 1e-6
        and held.thickness_m <= RUNG_THICK_M
    )


def _parts(pair: Pair, held: Held) -> str:
    """A part as a gardener names several of it."""
    matter = pair.support.matter(held)
    if matter == "net":
        return "net cord"
    if matter == "mesh":
        return "mesh wire"
    if matter == "strip":
        return "strips"
    part = held.hold.part
    return f"{part}es" if part.endswith(("s", "h", "x")) else f"{part}s"


def _thick(pair: Pair, held: Held) -> str:
    millimetres = held.thickness_m * 1000
    if millimetres < FINE_MM and not pair.shown.imperial:
        return f"{_parts(pair, held)} {millimetres:.2g} mm thick"
    return f"{_parts(pair, held)} {pair.shown.bench(held.thickness_m)} thick"


def _every(pair: Pair, held: Held) -> str:
    return pair.shown.length(held.every_m or 0.0)


def _verb(way: str) -> str:
    return {
        "twines": "twines",
        "tendrils": "holds by tendrils",
        "leaf stalks": "holds by its leaf stalks",
        "clings": "clings by itself",
        "tied in": "has to be tied",
    }.get(way, way)


def _habit(pair: Pair) -> str:
    return _verb(pair.climber.holds_on or "stands alone")
