"""Colouring of a plan in an editor, written from the declared words.

`python -m plantframe.language.colouring` writes grammar/plan.vim anew: Vim and Neovim read it, and
give each part of a line the group that the reader's own theme colours.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.declarations import language
from plantframe.language.phrases import MONTHS, grammar_file
from plantframe.language.values import UNITS

if TYPE_CHECKING:
    from collections.abc import Iterable
    from pathlib import Path

HEAD = """\
" Colouring of season plans (*.plan), written from the words the program declares.
" Do not mend it by hand: python -m plantframe.language.colouring
"
" Put it into your editor's folder for syntax files as plan.vim, and let files named *.plan have
" the type plan:  autocmd BufRead,BufNewFile *.plan setfiletype plan
if exists("b:current_syntax")
  finish
endif
syntax case ignore
"""
TAIL = """\
highlight default link planBlock Statement
highlight default link planName Identifier
highlight default link planFact Keyword
highlight default link planRemark Comment
highlight default link planCultivar String
highlight default link planReason String
highlight default link planFigure Number
highlight default link planMonth Constant
let b:current_syntax = "plan"
"""


def colouring() -> str:
    """The whole file."""
    blocks = [word for block in language().blocks for word in (block.word, *block.also)]
    facts = [word for fact in language().facts for word in fact.spellings]
    measured = _either(unit for unit in UNITS if unit.isalpha())
    heads = _either([*blocks, "read"])
    lines = [
        # a name runs from the block's word to the first comma
        rf"syntax match planBlock /^\%({heads}\)\>/ nextgroup=planName skipwhite",
        r"syntax match planName /[^ ,(][^,(]*/ contained",
        rf"syntax match planFact /^\s\+\zs\%({_either(facts)}\)\>/",
        rf"syntax match planMonth /\<\%({_either(MONTHS)}\)\>/",
        rf"syntax match planFigure /\<\d[0-9.,½¼¾⅛⅜⅝⅞\/-]*\%(\s\?\%({measured}\)\)\?\>/",
        r"syntax match planFigure /\<\d\+x\d\+\%(x\d\+\)\?\>/",
        (
            r"syntax region planCultivar start=/\%(^\|[ ,]\)\zs['‘]\a/ "
            r"end=/['’]\ze\%([ ,]\|$\)/ oneline"
        ),
        r'syntax region planReason start=/\%(^\|[ ,]\)\zs["“]/ end=/["”]/ oneline',
        r"syntax match planRemark /^\s*(.*$/",
        r"syntax match planRemark /([^()]*)/",
    ]
    return HEAD + "\n".join(lines) + "\n" + TAIL


def _either(words: Iterable[str]) -> str:
    r"""Words as alternatives of a pattern, the longest first so that none hides another."""
    found = sorted(set(words), key=lambda word: (-len(word), word))
    return r"\|".join(word.replace("/", r"\/").replace(" ", r"\s\+") for word in found)


def colouring_file() -> Path:
    """Where the file stands."""
    return grammar_file().parent / "plan.vim"


if __name__ == "__main__":
    colouring_file().write_text(colouring(), encoding="utf-8")
