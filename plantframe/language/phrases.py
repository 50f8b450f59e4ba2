"""Reading one phrase into values: `18 in down`, `6'6" x 16 ft`, `10–20 July`."""

from __future__ import annotations

import os
import re
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, cast

from plantframe.language.values import (
    UNITS,
    Bearing,
    Cultivar,
    Day,
    Item,
    Measure,
    Money,
    Nail,
    Number,
    Phrase,
    Quoted,
    Season,
    Size,
    Slashed,
    Span,
    Value,
    Word,
)

if TYPE_CHECKING:
    from lark import Lark, Token, Tree

MONTHS = {
    name: number
    for number, names in enumerate(
        (
            ("january", "jan"),
            ("february", "feb"),
            ("march", "mar"),
            ("april", "apr"),
            ("may",),
            ("june", "jun"),
            ("july", "jul"),
            ("august", "aug"),
            ("september", "sept", "sep"),
            ("october", "oct"),
            ("november", "nov"),
            ("december", "dec"),
        ),
        start=1,
    )
    for name in names
}
NUMBER_WORDS = {
    word: float(number)
    for number, word in enumerate(
        "zero one two three four five six seven eight nine ten eleven twelve".split()
    )
} | {"half": 0.5}
FRACTIONS = {
    "½": 0.5,
    "¼": 0.25,
    "¾": 0.75,
    "⅛": 0.125,
    "⅜": 0.375,
    "⅝": 0.625,
    "⅞": 0.875,
}
PARTS = {
    "early": "early",
    "mid": "mid",
    "middle of": "mid",
    "late": "late",
    "start of": "start",
    "beginning of": "start",
    "end of": "end",
}


def grammar_file() -> Path:
    """Where plan.lark stands: inside an installed package, or beside it in a checkout."""
    inside = Path(__file__).parent.parent / "grammar" / "plan.lark"
    beside = Path(__file__).parent.parent.parent / "grammar" / "plan.lark"
    return inside if inside.exists() else beside


def _cache_file(start: str, text: str) -> str | None:
    """A cached grammar in the user's own cache folder, or None where none can be written."""
    import hashlib

    import lark

    home = os.environ.get("XDG_CACHE_HOME") or os.path.join(os.path.expanduser("~"), ".cache")
    folder = Path(home) / "plantframe"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        if not os.access(folder, os.W_OK):
            return None
    except OSError:
        return None
    key = hashlib.sha256(f"{lark.__version__}{text}".encode()).hexdigest()[:16]
    return str(folder / f"grammar-{start}-{key}.bin")


@lru_cache(maxsize=2)
def parser(start: str) -> Lark:
    """The parser for one of the grammar's two starts: "start" or "phrase"."""
    from lark import Lark

    text = grammar_file().read_text(encoding="utf-8")
    options = {"parser": "lalr", "lexer": "basic", "start": start, "maybe_placeholders": False}
    cache = _cache_file(start, text)
    if cache is not None:
        try:
            return Lark(text, cache=cache, **options)  # type: ignore[arg-type]
        except (OSError, EOFError, ValueError):
            pass  # a cache file that cannot be used must never cost the gardener an answer
    return Lark(text, **options)  # type: ignore[arg-type]


@lru_cache(maxsize=20_000)
def read_phrase(text: str) -> tuple[tuple[Item, ...], tuple[tuple[str, int, str], ...]]:
    """The items of a phrase and the doubts about them, remembered by its text."""
    from lark.exceptions import LarkError

    reader = parser("phrase")
    try:
        tree = reader.parse(text)
    except LarkError:
        return _only_words(text), ()
    doubts: list[tuple[str, int, str]] = []
    items = [
        item
        for child in tree.children
        for item in _item(cast("Tree[Token] | Token", child), doubts)
    ]
    items = _joined(items, text, doubts)
    return tuple(items), tuple(doubts)


def phrase(text: str, column: int) -> Phrase:
    """A phrase as it stands in its line; `column` counts from 1."""
    items, doubts = read_phrase(text)
    return Phrase(text, column, items, doubts)


def _only_words(text: str) -> tuple[Item, ...]:
    return tuple(
        Item(Word(match.group()), match.start(), match.end()) for match in re.finditer(r"\S+", text)
    )


def _token_item(token: Token, doubts: list[tuple[str, int, str]]) -> Item:
    text, at = str(token), token.start_pos or 0
    kind = token.type
    value: Value
    if kind == "CULTIVAR":
        value = Cultivar(text[1:-1].strip(), text)
    elif kind == "QUOTED":
        value = Quoted(text.strip('"“”').strip(), text)
    elif kind == "PENNY":
        value = Nail(int(text[:-1]), text)
    elif kind == "MONEY":
        value = Money(float(text[1:].strip().replace(",", ".")), text)
    elif kind == "SLASHED":
        value = Slashed(tuple(int(part) for part in text.split("/")), text)
    elif kind == "SEASON":
        first = int(text[:4])
        value = Season(first, first // 100 * 100 + int(text[5:7]), text)
    elif kind == "BEARING":
        value = Bearing(_degrees(text), text)
    else:
        value = Word(text)
    return Item(value, at, at + len(text))


def _degrees(text: str) -> float:
    figures = [float(part) for part in re.findall(r"\d+(?:\.\d+)?", text)]
    return sum(figure / 60**place for place, figure in enumerate(figures[:3]))


def _item(child: Tree[Token] | Token, doubts: list[tuple[str, int, str]]) -> list[Item]:
    from lark import Token

    if isinstance(child, Token):
        return [_token_item(child, doubts)]
    tokens = [token for token in child.scan_values(lambda value: isinstance(value, Token))]
    at, end = tokens[0].start_pos or 0, tokens[-1].end_pos or 0
    if child.data == "size":
        sides: list[Number | Measure] = []
        for part in child.children:
            if isinstance(part, Token):
                continue
            side = _item(part, doubts)[0].value
            sides.append(cast("Number | Measure", side))
        return [Item(_size(sides, _text(tokens), at, doubts), at, end)]
    if child.data == "times":  # `20d ×5`: a count
        (inner,) = _item(child.children[1], doubts)
        return [Item(Word("×"), at, at + 1), inner]
    if child.data == "measure":
        return [Item(_measure(tokens, doubts), at, end)]
    if child.data == "number":
        return [Item(_number(tokens[0], doubts), at, end)]
    if child.data == "month":
        month = MONTHS[str(tokens[0]).lower().rstrip(".")]
        return [Item(Day(None, month, None, "", str(tokens[0])), at, end)]
    return [Item(_day(tokens), at, end)]


def _text(tokens: list[Token]) -> str:
    """The tokens' text with single spaces where the line had any."""
    out = str(tokens[0])
    for before, after in zip(tokens, tokens[1:], strict=False):
        out += " " * bool((after.start_pos or 0) > (before.end_pos or 0)) + str(after)
    return out


def figure(text: str) -> float | None:
    """A figure as typed: `2,4`, `1-1/2`, `6½`, `two`. None where it could be two numbers."""
    text = text.strip().lower()
    if text in NUMBER_WORDS:
        return NUMBER_WORDS[text]
    whole, fraction = text, 0.0
    if text[-1] in FRACTIONS:
        whole, fraction = text[:-1].strip(), FRACTIONS[text[-1]]
    elif match := re.fullmatch(r"(?:(\d+)[ -])?(\d+)/(\d+)", text):
        if int(match[3]) == 0:
            return None
        whole, fraction = match[1] or "", int(match[2]) / int(match[3])
    if not whole:
        return fraction
    if "," in whole and "." in whole:
        return None
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+", whole):
        return None
    try:
        return float(whole.replace(",", ".")) + fraction
    except ValueError:
        return None


def _number(token: Token, doubts: list[tuple[str, int, str]]) -> Number | Slashed | Word:
    text = str(token)
    at = token.start_pos or 0
    if re.fullmatch(r"\d+/\d+", text):
        # `5/6` without a unit: a date to one reader, five sixths to another
        return Slashed(tuple(int(part) for part in text.split("/")), text)
    value = figure(text)
    if value is None:
        doubts.append(("two-readings", at, text))
        return Word(text)
    if "," in text:
        doubts.append(("decimal-comma", at, text))
    return Number(value, text)


def _measure(tokens: list[Token], doubts: list[tuple[str, int, str]]) -> Measure | Word:
    text = _text(tokens)
    at = tokens[0].start_pos or 0
    if tokens[0].type == "FEET_INCHES":
        return _feet_inches(text)
    number_text, unit_text = str(tokens[0]), str(tokens[1])
    dimension, factor, shown = UNITS.get(unit_text) or UNITS[unit_text.lower().rstrip(".")]
    value = figure(number_text)
    three_places = shown == "m" and re.fullmatch(r"\d+[.,]\d{3}", number_text)
    if value is None or three_places:
        doubts.append(("two-readings", at, text))
        return Word(text)
    if "," in number_text:
        doubts.append(("decimal-comma", at, text))
    if dimension == "warmth-f":
        return Measure((value - 32) / 1.8, "warmth", shown, text)
    return Measure(value * factor, dimension, shown, text)


def _feet_inches(text: str) -> Measure | Word:
    match = re.match(
        r"(.*?)\s?(?:ft\.?|feet|foot|['′’])\s?(?:and )?(.*?)\s?(?:inches|inch|in\.?|[\"″”])$", text
    )
    feet = figure(match[1]) if match else None
    inches = figure(match[2]) if match else None
    if feet is None or inches is None:
        return Word(text)
    return Measure(feet * 0.3048 + inches * 0.0254, "length", "ft in", text)


def _size(
    sides: list[Number | Measure], text: str, at: int, doubts: list[tuple[str, int, str]]
) -> Size | Word:
    if not all(isinstance(side, Number | Measure) for side in sides):
        return Word(text)
    if isinstance(sides[0], Number) and "," in text.split("x")[-1]:
        # `2x2,8 ft`: is the comma a decimal one, or was a space forgotten after it?
        doubts[:] = [doubt for doubt in doubts if doubt[0] != "decimal-comma"]
        doubts.append(("two-readings", at, text))
        return Word(text)
    # `4 x 10 m` and `¼ x 1-1/2 in`: a bare first side takes the unit of the one after it
    last = next((side for side in reversed(sides) if isinstance(side, Measure)), None)
    if last is not None:
        sides = [
            Measure(_in_unit(side.value, last.unit), last.dimension, last.unit, side.text)
            if isinstance(side, Number)
            else side
            for side in sides
        ]
    return Size(tuple(sides), text)


def _in_unit(value: float, unit: str) -> float:
    return value * UNITS["ft" if unit == "ft in" else unit][1]


def _day(tokens: list[Token]) -> Day:
    day: int | None = None
    month, year, part = 0, None, ""
    for token in tokens:
        text = str(token).lower().rstrip(".")
        if token.type == "ISO":
            parts = [int(piece) for piece in text.split("-")]
            return Day(parts[2], parts[1], parts[0], "", _text(tokens))
        if token.type == "MONTH":
            month = MONTHS[text]
        elif token.type == "YEAR":
            year = int(text)
        elif token.type == "PART":
            part = PARTS[text.rstrip("-").strip()]
        elif token.type == "ORDINAL":
            day = int(text[:-2])
        else:
            value = figure(text)
            # `4½ May` is no day; 0 is said to be impossible where dates are worked out
            day = int(value) if value is not None and value == int(value) and value < 1000 else 0
    return Day(day, month, year, part, _text(tokens))


def _joined(items: list[Item], text: str, doubts: list[tuple[str, int, str]]) -> list[Item]:
    """Join `8 ft by 6 ft` into a size and `10 to 20 July` into a span."""
    out: list[Item] = []
    at = 0
    while at < len(items):
        first = items[at]
        if at + 2 < len(items) and isinstance(items[at + 1].value, Word):
            link = items[at + 1].value.text.lower()
            third = items[at + 2]
            whole = text[first.at : third.end]
            joined: Value | None = None
            if link == "by":
                joined = _by(first.value, third.value, whole)
            elif link in {"to", "-", "–", "—", "and"}:
                joined = _span(first.value, third.value, whole, link)
            if joined is not None:
                out.append(Item(joined, first.at, third.end))
                at += 3
                continue
        out.append(first)
        at += 1
    if len(out) > 1:
        before, after = out[-2:]
        feet = isinstance(before.value, Measure) and before.value.unit == "ft"
        if feet and isinstance(after.value, Number) and after.value.value < 12:
            # `6 ft 2`: inches most likely, but nobody said so
            whole = text[before.at : after.end]
            doubts.append(("feet-and-what", before.at, whole))
            out[-2:] = [Item(Word(whole), before.at, after.end)]
    return out


def _by(first: Value, third: Value, whole: str) -> Value | None:
    if isinstance(first, Measure) and isinstance(third, Measure) and first.dimension == "length":
        if third.dimension == "length":
            return Size((first, third), whole)
    return None


def _span(first: Value, third: Value, whole: str, link: str) -> Value | None:
    if isinstance(first, Measure) and isinstance(third, Measure):
        if first.dimension == third.dimension and link != "and":
            return Span(first, third, whole)
    elif isinstance(first, Number) and isinstance(third, Measure) and link != "and":
        value = _in_unit(first.value, third.unit)
        return Span(Measure(value, third.dimension, third.unit, first.text), third, whole)
    elif isinstance(first, Number) and isinstance(third, Number) and link != "and":
        return Span(first, third, whole)
    elif isinstance(first, Day) and isinstance(third, Day) and link != "and":
        return Span(first, third, whole)
    elif isinstance(first, Number) and isinstance(third, Day) and third.day is not None:
        if link != "and" and first.value == int(first.value) and first.value < 32:
            start = Day(int(first.value), third.month, third.year, "", first.text)
            return Span(start, third, whole)
    elif isinstance(first, Day) and isinstance(third, Number) and first.day is not None:
        if link != "and" and third.value == int(third.value) and third.value < 32:
            stop = Day(int(third.value), first.month, first.year, "", third.text)
            return Span(first, stop, whole)
    return None
