"""The lights of a cold frame as the rules ask of them: what they are glazed with, and how large."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame

PLASTIC = re.compile(r"twin[- ]?wall|plastic|polycarbonate|acrylic|corrugated", re.IGNORECASE)
GLASS = re.compile(r"glass|panes?", re.IGNORECASE)
# Glass that does not break into blades, and plastic that is sold under the name of glass.
MILD = re.compile(
    r"toughened|tempered|safety|laminated|wired|plexi|perspex|acrylic|fibre|fiber", re.IGNORECASE
)


def glazing(frame: WorkedFrame) -> str:
    """What the plan says the lights are glazed with, "" where it does not."""
    return frame.word("lights.glazing") if frame.is_said("lights.glazing") else ""


def is_plastic(frame: WorkedFrame) -> bool:
    """The plan says that the lights are of plastic sheet."""
    return bool(PLASTIC.search(glazing(frame)))


def is_ordinary_glass(said: str) -> bool:
    """Glass, as it is said, that breaks into blades."""
    return bool(GLASS.search(said)) and not MILD.search(said)


def has_lights(frame: WorkedFrame) -> bool:
    """Its kind is a box with lights on it."""
    return frame.structure is not None and "lights" in frame.structure.facts
