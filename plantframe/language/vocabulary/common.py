"""The one language that every declaration joins, and the names of groups of blocks."""

from __future__ import annotations

from plantframe.language.declarations import Language

LANGUAGE = Language()
block = LANGUAGE.block
fact = LANGUAGE.fact

BUILT = "frame line cover fence"
PLACES = f"bed wall house hedge tree path border {BUILT}"
