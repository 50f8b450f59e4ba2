"""What is said of a line that could be read only in part: which slip, where, and what to type."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.catalogue.names import index, named
from plantframe.frozen import replace
from plantframe.language.declarations import block_words, fact_words, find_block
from plantframe.language.edits import Edit, a_line_each, rewrite, useful
from plantframe.language.figures import either_way, figure
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.near import MOST, near_words, one_slip
from plantframe.language.phrases import phrase
from plantframe.language.shapes import literal_words, patterns
from plantframe.language.values import Measure, Size

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from plantframe.language.declarations import FactWord
    from plantframe.language.shapes import Leftover, Slot
    from plantframe.language.values import Phrase

# Lengths outside these are asked about, not refused: (least, most, what is usual), in metres. By
# the fact's word and the slot, else by the slot.
_USUAL = {
    ("bays", "length"): (0.03, 60.0, "1 to 10 m (4 to 33 ft)"),
    ("spacing", "lengths"): (0.02, 12.0, "2 cm to 4 m (1 in to 13 ft)"),
    ("mesh", "length"): (0.001, 0.5, "5 mm to 20 cm (¼ to 8 in)"),
    ("gap", "length"): (0.005, 1.0, "5 to 20 cm (2 to 8 in)"),
    ("hooks", "length"): (0.01, 1.0, "10 to 20 cm (4 to 8 in)"),
    ("kerf", "length"): (0.0005, 0.02, "1 to 8 mm"),
    ("overhang", "length"): (0.0, 2.0, "5 to 20 cm (2 to 8 in)"),
    ("pins", "length"): (0.03, 0.4, "10 to 15 cm (4 to 6 in)"),
    ("screws", "length"): (0.01, 0.4, "3 to 15 cm (1 to 6 in)"),
    ("stick", "length"): (0.03, 15.0, "10 cm to 8 m (4 in to 26 ft)"),
    ("", "down"): (0.02, 3.0, "15 cm to 1.2 m (6 in to 4 ft)"),
    ("", "up"): (0.02, 15.0, "30 cm to 4 m (1 to 13 ft)"),
    ("", "mesh"): (0.001, 0.5, "5 mm to 20 cm (¼ to 8 in)"),
    ("", "apart"): (0.01, 30.0, "2 cm to 10 m (1 in to 33 ft)"),
    ("", "reach"): (1.2, 3.0, "1.6 to 2.4 m (5 to 8 ft)"),
}
_ANY_LENGTH = (0.0, 200.0, "less than 200 m (650 ft)")

# What a figure that is no length may be meant in.
_UNITS = {
    "hours": ("h",),
    "weight": ("kg", "lb"),
    "years": ("years",),
    "warmth": ("C", "F"),
    "pull": ("N", "lb"),
}
_STANDING = frozenset({"frame", "line", "cover", "fence", "hedge", "tree", "path"})

_IMPERIAL = re.compile(
    r"\d\s?(?:ft|feet|foot|in\b(?! +(?:all|the|a|ground|soil|ten)\b)|inch|['\"′″])"
)
_METRIC = re.compile(r"\d\s?(?:mm|cm|m|metres?|meters?)\b")
_FIGURE = re.compile(r"\d+(?:[.,]\d+)?(?:[ -]\d/\d|[½¼¾])?")
_COUNT_TIMES_SIZE = re.compile(r"(\d+)\s*[xX×*]\s+(\d+(?:\.\d+)?\s?[xX×]\s?\d+(?:\.\d+)?)")
_COUNT_TIMES_LENGTH = re.compile(r"(\d+)\s*[xX×*]\s*(\d[^xX×*]*[a-z'\"])")
_SECTION = re.compile(r"(\d+)\s*[xX×*]\s*(\d+)")
LARGEST_TRADE_IN = 12  # the widest board sold by a nominal size in inches, as in PS 20
_FIGURE_IN_NAME = re.compile(r"(\d+) in ([A-Z].*)")


LONGEST_NAME = 4  # words in the name of a plant or a kind
STAND = 24  # words that are named to one who typed none that is known

# Slips that are said of the first in a file and meant of all.
ONCE = frozenset({"decimal-comma", "third-is-length"})
Units = tuple[bool, bool]


def units_in(text: str) -> Units:
    """Whether a text has lengths in feet and inches, and whether in metres."""
    return bool(_IMPERIAL.search(text)), bool(_METRIC.search(text))


class Slips:
    """The slips of one part of a file, as they are found.

    lines   the part's lines as typed
    first   how many lines of the file stand before it
    units   whether the file's lengths are imperial, metric: asked where its block has none
    """

    def __init__(
        self, file: str, lines: Sequence[str], first: int = 0, units: Units = (False, False)
    ) -> None:
        self.file = file
        self.lines = lines
        self.first = first
        self.units = units
        self.found: list[Mistake] = []
        self.block_units: dict[int, Units] = {}

    def say(self, slip: str, where: Where, edits: Iterable[Edit] = (), /, **told: str) -> None:
        """Keep a mistake."""
        self.found.append(Mistake(slip, where, told, useful(edits)))

    def once(self, slip: str, where: Where, /, **told: str) -> None:
        """Keep a mistake, unless one of its name was kept before in this file."""
        if not any(old.name == slip for old in self.found):
            self.say(slip, where, **told)

    def not_a_remark(self, where: Where) -> bool:
        """Say that a line such as `# to do` is no remark here, and how one is written."""
        text = where.typed.strip()
        sign = next((sign for sign in ("#", "//", "--") if text.startswith(sign)), None)
        if sign is None:
            return False
        words = text.lstrip("#/-").strip().replace("(", "").replace(")", "")
        edit = rewrite(where, text, f"({words})")
        self.say("not-a-remark", where, (edit,), sign=sign, write=f"({words})"[:60])
        return True

    # -- words ----------------------------------------------------------------------------
    def unknown_fact(self, found: Sequence[Phrase], where: Where, block: str) -> None:
        """A line under a block that opens with no word known there."""
        first = found[0]
        word = first.items[0].value.text
        known = fact_words(block)
        holding = [other for other in known if len(word) > 2 and word.lower() in other.split()]
        inside = [other for other in first.words[1:] if other in known]
        near = list(dict.fromkeys([*holding, *inside, *near_words(word.lower(), known)]))[:MOST]
        if (plant := _plant_at_start(first)) and "grow" in known:
            edit = rewrite(where, first.text, f"grow {first.text}", f"grow {plant}")
            self.say("plant-alone", where, (edit,), plant=plant, block=block)
            return
        edits = [rewrite(where, word, other) for other in near[:2] if other not in inside]
        told = {"text": first.text[:60], "near": ", ".join(near), "block": block}
        other = find_block(word.lower())
        if other is not None:
            head, _, item = other.example.partition("\n")
            told |= {"near": "", "opens": other.word, "item": item.strip()}
            told["example"] = "" if item else head
        elif not near:
            plain = [word for word in known if " " not in word]
            told["stand"] = ", ".join(plain[:STAND]) + (" and more" if len(plain) > STAND else "")
        self.say("unknown-word", where, edits, **told)

    def unknown_block(self, found: Sequence[Phrase], where: Where) -> bool:
        """A line in column one that opens with no block word; whether it is known what it means."""
        word = found[0].items[0].value.text.rstrip(":")
        near = near_words(word.lower(), block_words())
        edits = [rewrite(where, word, other) for other in near]
        kind, opener = _kind_at_start(found[0])
        if kind:
            edits.append(rewrite(where, kind, f"{opener} {_named_after(kind, found[0])}"))
        told = {"word": word[:40], "near": ", ".join(near), "kind": kind, "opener": opener}
        self.say("unknown-block", where, edits, **told)
        return bool(near or kind)

    def leftovers(
        self,
        left: Sequence[Leftover],
        declared: FactWord | None,
        filled: Sequence[Slot],
        where: Where,
        *,
        block: str,
        shape: str,
    ) -> None:
        """What no part of a fact's shape took, each said as what it most likely is."""
        for one in left:
            place = replace(where, column=one.column)
            if self.place_without_in(one.text, place, block):
                continue
            if one.bad_figure:
                self.bad_figure(one, place)
            elif one.missing_unit:
                self.no_unit(one.text, one.missing_unit, place)
            elif one.missing_day:
                self.say("which-day", place, text=one.text[:60])
            elif not (
                ("of?" in shape and self.count_or_size(one.text, place))
                or ("{section}" in shape and self.bare_section(one.text, place))
                or ("{size}" in shape and self.bare_size(one, place))
                or self.another_plant(one.text, shape, place)
                or self.inches_or_in(one.text, place)
                or self.which_length(one, shape, filled, place)
                or self.which_day(one.text, shape, filled, place)
            ):
                self.unknown_words(one.text, shape, declared, place, block)

    def unknown_words(
        self, text: str, shape: str, declared: FactWord | None, where: Where, block: str
    ) -> None:
        """Words within a fact that mean nothing there."""
        known = literal_words(shape)
        edits: list[Edit] = []
        near: list[str] = []
        for word in text.split():
            if len(word) < 4 or word.lower() in known:
                continue
            slips = [other for other in known if one_slip(word.lower(), other)]
            slips = slips or list(near_words(word.lower(), known))
            edits += [rewrite(where, word, other) for other in slips[:2]]
            near += slips
        if not near:
            typed = text.split(maxsplit=1)[0].lower()
            near += [word for word in near_words(typed, fact_words(block)) if word != typed]
        example = declared.example.split("\n")[0] if declared is not None else ""
        told = {"text": text[:60], "near": ", ".join(near[:4]), "example": example}
        self.say("unknown-word", where, edits[:2], **told)

    def no_day(self, text: str, shape: str, filled: Sequence[Slot], where: Where) -> None:
        """A fact that is above all a date, and got only words."""
        first = patterns(shape)[0]
        dated = len(first.pieces) == 1 and first.pieces[0].type in {"date", "dates"}
        if dated and filled and not first.must_fill & {slot.name for slot in filled}:
            self.say("which-day", where, text=text[:60])

    def which_day(self, text: str, shape: str, filled: Sequence[Slot], where: Where) -> bool:
        """A fact that waits for a date got words that name none."""
        names = {slot.name for slot in filled}
        waits = any(
            pattern.pieces[0].type in {"date", "dates"} and not pattern.must_fill & names
            for pattern in patterns(shape)
            if pattern.needed == 1
        )
        if not waits or names:
            return False
        self.say("which-day", where, text=text[:60])
        return True

    # -- figures --------------------------------------------------------------------------
    def place_without_in(self, text: str, where: Where, block: str) -> bool:
        """A name by itself in the head of a frame: most likely the bed it stands in."""
        plain = text[:1].isupper() and text.replace(" ", "").isalnum()
        if where.typed[:1].isspace() or block not in _STANDING or not plain:
            return False
        edit = rewrite(where, text, f"in {text}")
        self.say("unknown-word", where, (edit,), text=text[:60], near=f"in {text}"[:60])
        return True

    def count_or_size(self, text: str, where: Where) -> bool:
        """Ask whether `4 x 2x4` is four of them, or three sides."""
        found = _COUNT_TIMES_SIZE.fullmatch(text) or _COUNT_TIMES_LENGTH.fullmatch(text)
        if not found:
            return False
        count, size = found[1], found[2]
        write = f"{count} of {size}"
        sized = found.re is _COUNT_TIMES_SIZE
        readings = f"{write}, or {'a stick of three sizes' if sized else f'{count} by {size}'}"
        edit = rewrite(where, text, write)
        self.say("count-or-size", where, (edit,), text=text, readings=readings, write=write)
        return True

    def bare_section(self, text: str, where: Where) -> bool:
        """Ask what a section too large for a trade size in inches is in: `75 x 75`."""
        sides = _SECTION.fullmatch(text)
        if sides is None or min(int(side) for side in sides.groups()) <= LARGEST_TRADE_IN:
            return False
        edit = rewrite(where, text, f"{text} mm")
        self.say("no-unit", where, (edit,), figure=text, units="mm", likely="")
        return True

    def bare_size(self, left: Leftover, where: Where) -> bool:
        """Ask what the two sides of a bed, a net or a frame are in: `4x8`."""
        items = phrase(left.text, left.column).items
        value = items[0].value
        if len(items) != 1 or not isinstance(value, Size) or not value.bare or len(value.sides) > 2:
            return False
        imperial, metric = self.units_here(where.line)
        if imperial == metric:
            choices, said = ["ft", "m"], ""
        elif imperial:
            choices, said = ["ft", "in"], "The other lengths here are in feet and inches."
        else:
            choices, said = ["m", "cm"], "The other lengths here are metric."
        edits = [rewrite(where, left.text, f"{left.text} {unit}") for unit in choices]
        units = " or ".join(choices)
        self.say("no-unit", where, edits, figure=left.text, units=units, likely=said)
        return True

    def bad_figure(self, left: Leftover, where: Where) -> None:
        """A figure below nothing, or one that runs into letters."""
        edits = []
        if left.bad_figure == "below-nothing":
            edits = [rewrite(where, left.text, left.text[1:])]
        self.say(left.bad_figure, where, edits, text=left.text[:60], write=left.text[1:60])

    def another_plant(self, text: str, shape: str, where: Where) -> bool:
        """A second plant in a line for one: `sow lettuce, leeks`."""
        line = where.typed
        opened = re.match(r"\s*\w+", line)
        first, _, rest = text.partition(" ")
        plant = rest if first.lower() in {"grow", "sow", "want", "and"} else text
        before = line.find(text, where.column - 1)
        start = line.rfind(",", 0, max(0, before))
        if "{plant}" not in shape or not opened or start < 0 or not named("plant", plant):
            return False
        left = line[:start] + line[before + len(text) :]
        edit = a_line_each(where, left, f"{opened[0]} {plant}")
        self.say("two-plants", where, (edit,), plant=plant)
        return True

    def inches_or_in(self, text: str, where: Where) -> bool:
        """Ask whether `5 in Long Bed` is five inches, or five plants in it."""
        if not (found := _FIGURE_IN_NAME.fullmatch(text)):
            return False
        edit = rewrite(where, text, f"{found[1]} plants, in {found[2]}")
        told = {"text": text, "figure": found[1], "name": found[2]}
        self.say("inches-or-in", where, (edit,), **told)
        return True

    def which_length(
        self, left: Leftover, shape: str, filled: Sequence[Slot], where: Where
    ) -> bool:
        """Ask what a length without a word is for, where the fact has words for lengths."""
        items = phrase(left.text, left.column).items
        value = items[0].value
        if len(items) != 1 or not isinstance(value, Measure) or value.dimension != "length":
            return False
        names = {slot.name for slot in filled}
        words: dict[str, None] = {}
        for pattern in patterns(shape):
            pieces = pattern.pieces
            length_first = pieces[0].type == "length" and pieces[0].name not in names
            if length_first and len(pieces) > 1 and pieces[1].word and not pieces[1].optional:
                words[pieces[1].word] = None
        if not words:
            return False
        offered = [f"{left.text} {word}" for word in list(words)[:3]]
        *most, last = [f"`{one}`" for one in offered]
        choices = f"{', '.join(most)} or {last}" if most else last
        edits = [rewrite(where, left.text, one) for one in offered]
        self.say("which-length", where, edits, text=left.text, choices=choices)
        return True

    def no_unit(self, text: str, measure: str, where: Where) -> None:
        """A figure that wants a unit: the other lengths of the block say which is likely."""
        found = _FIGURE.search(text)
        number = found.group() if found else text
        if measure in _UNITS:
            choices = list(_UNITS[measure])
            edits = [rewrite(where, number, f"{number} {unit}") for unit in choices]
            units = " or ".join(choices)
            self.say("no-unit", where, edits, figure=number, units=units, likely="")
            return
        imperial, metric = self.units_here(where.line)
        value = figure(number) or 0.0
        if imperial and not metric:
            likely = "in" if value > 8 else "ft"
            name = {"in": "inches", "ft": "feet"}[likely]
            units = "in or ft"
            said = f"The other lengths here are in feet and inches, so {name} is likely."
            choices = [likely, "ft" if likely == "in" else "in"]
        elif metric and not imperial:
            likely = "mm" if value >= 400 else "cm" if value > 8 else "m"
            units = "mm, cm or m"
            said = f"The other lengths here are metric, so {likely} is likely."
            choices = [likely]
        else:
            units, said, choices = "in or cm", "", ["in", "cm"]
        edits = [rewrite(where, number, f"{number} {unit}") for unit in choices]
        self.say("no-unit", where, edits, figure=number, units=units, likely=said)

    def units_here(self, line: int) -> tuple[bool, bool]:
        """Whether the other lengths of this block, or else of the file, are imperial, metric."""
        line -= self.first
        first = line - 1
        while first > 0 and self.lines[first][:1] in {" ", "\t", "\u00a0"}:
            first -= 1
        last = line
        while last < len(self.lines) and self.lines[last][:1] in {" ", "\t", "\u00a0"}:
            last += 1
        if first not in self.block_units:
            self.block_units[first] = units_in("\n".join(self.lines[first:last]))
        here = self.block_units[first]
        return here if any(here) else self.units

    def doubts(self, part: Phrase, where: Where) -> None:
        """What a phrase's figures can mean two ways."""
        for doubt in part.doubts:
            place = replace(where, column=part.column + doubt.at)
            text = doubt.text
            match doubt.slip:
                case "decimal-comma":
                    self.once("decimal-comma", place, text=text, read=text.replace(",", "."))
                case "two-readings":
                    pair = _readings(text)
                    edits = [rewrite(place, text, one) for one in pair]
                    readings = " or ".join(f"`{one}`" for one in pair)
                    self.say("two-readings", place, edits, text=text, readings=readings)
                case _:
                    unit = "in" if doubt.slip == "feet-and-what" else "cm"
                    whole, rest = re.fullmatch(r"(.*?)\s?(\d+)", text).groups()  # type: ignore[union-attr]
                    write = f"{whole} {rest} {unit}"
                    readings = f"`{write}`, or {whole} and {rest} of something"
                    edit = rewrite(place, text, write)
                    self.say("two-readings", place, (edit,), text=text, readings=readings)

    def sizes(self, filled: Sequence[Slot], declared: FactWord, where: Where) -> None:
        """Ask about lengths no garden has, and say how three figures were read."""
        word = "stick" if "{section}" in declared.shape else declared.word
        for slot in filled:
            value, place = slot.value, replace(where, column=slot.column)
            if getattr(value, "length_m", None) and slot.text[-1].isdigit():
                sides = re.split(r"\s*[xX×*]\s*", slot.text)
                read = f"{sides[0]}x{sides[1]}, {sides[2]} ft long"
                self.once("third-is-length", place, text=slot.text, read=read)
            if not isinstance(value, Measure) or value.dimension != "length":
                continue
            by_slot = _USUAL.get(("", slot.name), _ANY_LENGTH)
            low, high, usual = _USUAL.get((word, slot.name), by_slot)
            if not low <= value.value <= high:
                said = f"{slot.text} for {declared.word}"
                self.say("unlikely-size", place, what=said, usual=usual)


def _beginnings(part: Phrase) -> Iterator[str]:
    """What a name at the start of a line may be, as typed, the longest first."""
    for after in range(min(LONGEST_NAME, len(part.items)), 0, -1):
        yield part.text[: part.items[after - 1].end]


def _plant_at_start(part: Phrase) -> str:
    """The plant that a line begins with, as typed, "" where it begins with none."""
    return next((said for said in _beginnings(part) if named("plant", said)), "")


def _named_after(kind: str, part: Phrase) -> str:
    """A name for what only its kind was typed of, unless more than a kind was: `Trellis: Rose`."""
    rest = part.text[len(kind) :].lstrip()
    if not rest or (kind.islower() and not rest.startswith(":")):
        return f"{kind.title()}, {kind}{',' if rest else ''}"
    return kind


def _kind_at_start(part: Phrase) -> tuple[str, str]:
    """A kind of frame that a line begins with, as typed, and the word that opens its block."""
    for said in (beginning.rstrip(":") for beginning in _beginnings(part)):
        for kind in named("structure", said):
            blocks = index()["structures"][kind]["blocks"]
            opener = next((word for word in blocks if word in block_words()), "frame")
            return said, opener
    return "", ""


def _readings(text: str) -> list[str]:
    """The two ways a figure with a comma or three places can be meant, as they would be typed."""
    if re.search(r"[xX×*]", text):
        before, _, after = text.partition(",")
        return [f"{before}, {after}", f"{before}.{after}"]
    found = re.fullmatch(r"([\d.,]+)\s*(.*)", text)
    number, unit = (found[1], found[2]) if found else (text, "")
    both = either_way(number)
    if both is None:
        return [text]
    large, small = both
    pair = [f"{large:.12g} {unit}".strip(), f"{small:.12g} {unit}".strip()]
    if unit == "m":  # `1.955 m` would be asked about again
        pair[1] = pair[1] if large % 10 == 0 else f"{large:.12g} mm"
        pair.reverse()
    return pair
