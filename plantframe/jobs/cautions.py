"""The usual cautions for work that only the gardener has described (common practice, no source)."""

from __future__ import annotations

import re
from typing import Final

CAUTIONS: Final = (
    (
        re.compile(
            r"\b(saw(ing)?|rip(ping)?|axe|chisel|drill(ing)?|bor(e|ing)|chop(ping)?|"
            r"split(ting)?|cut(ting)?\b.*\b(wood|timber|poles?|posts?|pieces?|boards?|rails?|hazel|"
            r"willow|birch|brush|branch(es)?|trees?|battens?|\d+x\d+))\b",
            re.IGNORECASE,
        ),
        "Clamp or steady the work, keep both hands behind the edge, and shield your eyes",
    ),
    (
        re.compile(r"\b(dig(ging)?|holes?|trench|iron bar|posts|footings?)\b", re.IGNORECASE),
        "Have buried cables and pipes marked before going deeper than 30 cm near a house or a road",
    ),
    (
        re.compile(r"\bfell(ing)?\b", re.IGNORECASE),
        "Nobody within twice its height; a big or leaning one, or one near wires, is licensed work",
    ),
    (
        re.compile(r"\bprun(e|ing)\b", re.IGNORECASE),
        "Shield your eyes, and cut from the ground what can be reached from it",
    ),
    (
        re.compile(r"\b(ladder|steps|roof|gutters?|eaves)\b", re.IGNORECASE),
        "Steps on firm level ground, one hand for yourself, and somebody within call",
    ),
    (
        re.compile(r"\b(glass|panes?|glaz(e|ing))\b", re.IGNORECASE),
        "Gloves for every pane, and panes stacked on edge",
    ),
    (
        re.compile(
            r"\b(spray(ing)?|preservative|creosote|weedkiller|paint(ing)?|stain(ing)?)\b",
            re.IGNORECASE,
        ),
        "Keep to what the label says, off food beds and away from children and animals",
    ),
    (
        re.compile(r"\b(electric(al|ity)?|sockets?|wiring|gas)\b", re.IGNORECASE),
        "Work on mains electricity and gas is for somebody licensed to do it",
    ),
)


EDGED: Final = (
    ("saw", re.compile(r"\b(saw(ing)?|rip(ping)?|fell(ing)?|cross-?cut(ting)?)\b", re.IGNORECASE)),
    ("axe", re.compile(r"\b(axe|chop(ping)?|split(ting)?)\b", re.IGNORECASE)),
)


def edged(words: str) -> tuple[str, ...]:
    """The saw or axe that work described in these words wants."""
    return tuple(tool for tool, pattern in EDGED if pattern.search(words))


def cautions(words: str) -> tuple[str, ...]:
    """The cautions that go with work described in these words."""
    return tuple(says for pattern, says in CAUTIONS if pattern.search(words))
