"""Plants that cling by rootlets or pads: on masonry in good order, and on no other wall."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.parts import parts, thick
from plantframe.pairing.wording import capital

if TYPE_CHECKING:
    from plantframe.pairing.matches import Reason

SOLID_M = 0.02  # rootlets and pads take a batten of about 25 mm, no wire and no net
_OPEN = frozenset({"net", "twine", "rope", "wire"})


def clinging(pair: Pair) -> Reason:
    """Rootlets and pads fix themselves to a rough, solid face, and stay in it."""
    climber, support = pair.climber, pair.support
    if support.at_wall:
        return _on_wall(pair)
    solid = [held for held in support.holds if held.thickness_m >= SOLID_M]
    solid = [held for held in solid if support.matter(held) not in _OPEN]
    if not solid:
        return out(
            "hold",
            f"{support.gives} only {parts(pair, support.holds[0])}; {climber.said} clings to "
            "a rough, solid face and finds none.",
        )
    return fair(
        "hold",
        f"{support.has} {thick(pair, solid[0])}: tie {climber.said} to them until its "
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
