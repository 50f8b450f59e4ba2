"""What is bought and not sawn, in words for a counter: its name and size, and neither twice.

An entry gives a part a name (`rail screw`) and words to buy it by (`coated, 75 mm`, `fencing
staples`). Where the words say already what it is they are enough; else the name stands before.
"""

from __future__ import annotations

import re
from typing import Final

# What a thing is of that gives it no name of its own: the words to buy it by are all.
UNNAMED: Final = frozenset({"concrete", "tub", "fill"})
# Things that go by another name in the words they are bought by.
_ALSO: Final = {"bolt": ("screw",), "nail": ("pin",), "strainer": ("bolt",)}
_NAMED_BY_KIND: Final = frozenset({"nail", "screw", "bolt", "staple", "strainer"})


# `3 in (75 mm)` is one size in both measures, `75 mm` and `20 cm` one in metres.
_BOTH: Final = re.compile(r"\d[\d½¼¾⅛⅜⅝⅞/-]* in \((\d+(?:\.\d+)? [mc]m)\)")
_METRIC: Final = re.compile(r"(?<!\()\b(\d+(?:\.\d+)?) ([mc])m\b")
_EIGHTHS: Final = ("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞")
_THIN_MM: Final = 20  # from here down a bolt or a staple is sold by eighths, above by quarters


def sized(size: str, *, imperial: bool) -> str:
    """The words to buy a part by with its size in the measure of the garden: `3 in (75 mm)`."""
    metric = _BOTH.sub(r"\1", size)
    if not imperial:
        return metric
    return _METRIC.sub(lambda found: f"{_inches(found[1], found[2])} in ({found[0]})", metric)


def _inches(figure: str, unit: str) -> str:
    """The size in inches that is sold for a metric one."""
    inches = float(figure) / (25.4 if unit == "m" else 2.54)
    if unit == "c":
        return f"{max(round(inches), 1)}"
    step = 1 if float(figure) < _THIN_MM else 2
    whole, eighths = divmod(max(round(inches * 8 / step), 1) * step, 8)
    return f"{whole or ''}{_EIGHTHS[eighths]}"


def several(name: str) -> str:
    """A name for more than one: boxes, laths, brushes."""
    if name.endswith("twine"):
        return f"lengths of {name}"
    if name.endswith(("mesh", "netting")):
        return f"pieces of {name}"
    return f"{name}es" if name.endswith(("s", "x", "ch", "sh")) else f"{name}s"


def one_of(says: str) -> str:
    """One of them: `cane caps` is cane cap."""
    name, comma, rest = says.partition(",")
    if re.search(r"[a-z]{2}s$", name) and not name.endswith(("ss", "glass")):
        name = name[:-1]
    return f"{name}{comma}{rest}"


def ware(part: str, of: str, size: str) -> str:
    """What several of a part are asked for by: `fencing staples`, `screws, coated, 75 mm`."""
    return _joined(of if of in _NAMED_BY_KIND else part, part, of, size)


def part_words(count: int, part: str, of: str, size: str) -> str:
    """So many of a part in a list of parts: `8 cane caps`, `24 rail screws, coated, 75 mm`."""
    if of == "fill" and size and not size.endswith("s"):
        return size  # soil and manure are not counted
    says = _joined(part, part, of, size)
    return f"{count} {one_of(says) if count == 1 else says}"


def _joined(name: str, part: str, of: str, size: str) -> str:
    if not size:
        return several(name)
    if of in UNNAMED or any(_names(word, size) for word in (of, part, *_ALSO.get(of, ()))):
        return size
    return f"{several(name)}, {size}"


def _names(word: str, size: str) -> bool:
    """Whether the words to buy it by, up to the first comma, name the thing itself."""
    last = word.rsplit(maxsplit=1)[-1]
    return bool(re.search(rf"\b{re.escape(last)}(s|es)?\b", size.split(",", maxsplit=1)[0]))
