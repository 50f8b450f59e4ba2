"""Every block and fact of a plan, declared once.

Reading, messages, completion, the language page and the colouring all come from here. A shape is
written as the line is written; `shapes.py` says how shapes are read.
"""

from __future__ import annotations

from plantframe.language.vocabulary import (  # noqa: F401 - each declares its words
    blocks,
    frames,
    garden,
    ground,
    growing,
    marks,
    parts,
)
from plantframe.language.vocabulary.common import BUILT, LANGUAGE, PLACES
from plantframe.language.vocabulary.growing import GROW
from plantframe.language.vocabulary.stock import ITEM

__all__ = ["BUILT", "GROW", "ITEM", "LANGUAGE", "PLACES"]
