"""Every block and fact of a plan, declared once.

Reading, messages, completion, the language page and the colouring all come from here. A shape is
written as the line is written; `shapes.py` says how shapes are read. The order below is the order
of the page.
"""

# ruff: noqa: F401, I001 - each module declares its words, in the order of the page

from __future__ import annotations

from plantframe.language.vocabulary import blocks
from plantframe.language.vocabulary import garden
from plantframe.language.vocabulary import ground
from plantframe.language.vocabulary import parts
from plantframe.language.vocabulary import frames
from plantframe.language.vocabulary import growing
from plantframe.language.vocabulary import varieties
from plantframe.language.vocabulary import marks
from plantframe.language.vocabulary.common import BUILT, LANGUAGE, PLACES
from plantframe.language.vocabulary.growing import GROW
from plantframe.language.vocabulary.stock import ITEM

__all__ = ["BUILT", "GROW", "ITEM", "LANGUAGE", "PLACES"]
