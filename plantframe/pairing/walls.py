"""What a wall is made of, as far as its words say."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from plantframe.plan.things import Thing

# Words that a wall's surface is told in.
_MASONRY = re.compile(r"brick|stone|masonry|block|concrete|flint")
_CLADDING = re.compile(r"shingle|timber|wood|board|siding|cladding|\bclad\b|plank|\blogs?\b|vinyl")
_SKIN = re.compile(r"paint|render|stucco|plaster|wash")
_FAILING = re.compile(r"crumbl|crack|loose|failing|flaking|\bsoft|perished|\bpoor|rotten")


def fabric(wall: Thing) -> str:
    """What a wall is made of, as far as its words say: the weakest word decides."""
    surface = wall.surface.lower()
    if _FAILING.search(surface):
        return "failing"
    if _CLADDING.search(surface):
        return "cladding"
    if _SKIN.search(surface) or wall.painted is not None:
        return "skin"
    return "masonry" if _MASONRY.search(surface) else ""
