"""Reading one phrase into values: `18 in down`, `6'6" x 16 ft`, `10–20 July`."""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, cast

from plantframe import kept
from plantframe.language.figures import either_way, figure, plain_signs
from plantframe.language.joining import joined, size_of
from plantframe.language.values import (
    UNITS,
    Bearing,
    Cultivar,
    Day,
    Doubt,
    Item,
    Measure,
    Money,
    Nail,
    Number,
    Phrase,
    Quoted,
    Season,
    Slashed,
    Span,
    Value,
    Word,
)

if TYPE_CHECKING:
    from lark import Lark, Token, Tree

_MONTH_NAMES = (
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
)
MONTHS = {name: number for number, names in enumerate(_MONTH_NAMES, 1) for name in names}
PARTS = {
    "early": "early",
    "early in": "early",
    "mid": "mid",
    "middle of": "mid",
    "late": "late",
    "late in": "late",
    "start": "start",
    "start of": "start",
    "beginning of": "start",
    "end": "end",
    "end of": "end",
}
# `2.400 m`: two metres forty to a carpenter, more than two kilometres to another.
_THREE_PLACES = re.compile(r"[1-9]\d{0,2}[.,]\d{3}")
_FEET_INCHES = re.compile(
    r"(.*?)\s*(?:ft\.?|feet|foot|['′’])\s*-?\s*(?:and\s+)?(.*?)"
    r"\s*(?:inches|inch|in\.?|[\"″”]|''|’’|′′)$"
)


def grammar_file() -> Path:
    """Where plan.lark stands: inside an installed package, or beside it in a checkout."""
    inside = Path(__file__).parent.parent / "grammar" / "plan.lark"
    beside = Path(__file__).parent.parent.parent / "grammar" / "plan.lark"
    return inside if inside.exists() else beside


def _cache_file(start: str, text: str) -> str | None:
    """A cached grammar in the user's own cache folder, or None where none can be written."""
    import hashlib

    import lark

    folder = kept.folder()
    if folder is None:
        return None
    key = hashlib.sha256(f"{lark.__version__}{text}".encode()).hexdigest()[:16]
    return str(folder / f"grammar-{start}-{key}.bin")


@lru_cache(maxsize=2)
def parser(start: str) -> Lark:
    """The parser for one of the grammar's two starts: "start" or "phrase"."""
    text = grammar_file().read_text(encoding="utf-8")
    cache = _cache_file(start, text)
    if cache is not None:
        try:
            return _lark(text, start, cache=cache)
        except Exception:  # noqa: BLE001, S110 - whatever a damaged cache holds, the grammar is at hand
            pass
    return _lark(text, start, cache=False)


def _lark(text: str, start: str, *, cache: str | bool) -> Lark:
    from lark import Lark

    return Lark(
        text, parser="lalr", lexer="basic", start=start, maybe_placeholders=False, cache=cache
    )


@lru_cache(maxsize=20_000)
def read_phrase(text: str) -> tuple[tuple[Item, ...], tuple[Doubt, ...]]:
    """The items of a phrase and the doubts about them, remembered by its text."""
    from lark.exceptions import LarkError

    signs = plain_signs(text)
    try:
        tree = parser("phrase").parse(signs)
    except LarkError:
        return _only_words(text), ()
    reading = _Reading(text)
    items = [item for child in tree.children for item in reading.items(child)]
    return tuple(joined(items, text, reading.doubts)), tuple(reading.doubts)


def phrase(text: str, column: int) -> Phrase:
    """A phrase as it stands in its line; `column` counts from 1."""
    items, doubts = read_phrase(text)
    return Phrase(text, column, items, doubts)


def _only_words(text: str) -> tuple[Item, ...]:
    return tuple(
        Item(Word(match.group()), match.start(), match.end()) for match in re.finditer(r"\S+", text)
    )


class _Reading:
    """The values of one phrase's tree; what could be meant two ways is kept as a doubt."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.doubts: list[Doubt] = []

    def items(self, child: Tree[Token] | Token) -> list[Item]:
        """The items of one node: one, but for years in a row and for signs that count."""
        from lark import Token

        if isinstance(child, Token):
            at, end = child.start_pos or 0, child.end_pos or 0
            return [Item(_token_value(child.type, str(child), self.text[at:end]), at, end)]
        tokens = list(child.scan_values(lambda value: isinstance(value, Token)))
        at, end = tokens[0].start_pos or 0, tokens[-1].end_pos or 0
        typed = self.text[at:end]
        match child.data:
            case "size":
                sides = [
                    self.items(part)[0].value
                    for part in child.children
                    if not isinstance(part, Token)
                ]
                return [Item(size_of(sides, typed, at, self.doubts), at, end)]
            case "times":  # `20d ×5`: a count
                counted = self.items(cast("Tree[Token]", child.children[1]))
                return [Item(Word("×"), at, at + 1), *counted]
            case "measure":
                return self.measure(tokens, at, end)
            case "number":
                return self.number(str(tokens[0]), at, end)
            case "month":
                month = MONTHS[str(tokens[0]).lower().rstrip(".")]
                return [Item(Day(None, month, None, "", typed), at, end)]
            case _:
                return [Item(_day(tokens, typed), at, end)]

    def number(self, signs: str, at: int, end: int) -> list[Item]:
        typed = self.text[at:end]
        if re.fullmatch(r"\d+/\d+", signs):
            # `5/6` without a unit: a date to one reader, five sixths to another
            return [Item(Slashed(tuple(int(part) for part in signs.split("/")), typed), at, end)]
        if re.fullmatch(r"(?:19|20)\d\d(?:,(?:19|20)\d\d)+", signs):  # `2024,2025`: years
            years = signs.split(",")
            return [
                Item(Number(float(year), year), at + 5 * place, at + 5 * place + 4)
                for place, year in enumerate(years)
            ]
        value = figure(signs)
        if value is None:
            return self.unread(signs, at, end)
        if "," in signs:
            self.doubts.append(Doubt("decimal-comma", at, typed))
        return [Item(Number(value, typed), at, end)]

    def unread(self, signs: str, at: int, end: int) -> list[Item]:
        """A figure that is none, or that is asked about since it can be two."""
        typed = self.text[at:end]
        if either_way(signs) is not None:
            self.doubts.append(Doubt("two-readings", at, typed))
        return [Item(Word(typed), at, end)]

    def measure(self, tokens: list[Token], at: int, end: int) -> list[Item]:
        typed = self.text[at:end]
        if tokens[0].type == "FEET_INCHES":
            return [Item(_feet_inches(str(tokens[0]), typed), at, end)]
        if tokens[0].type == "WARMTH":
            return [Item(_warmth(str(tokens[0]), typed), at, end)]
        signs, unit = str(tokens[0]), str(tokens[1]).lstrip("-")
        dimension, factor, shown = UNITS.get(unit) or UNITS[unit.lower().rstrip(".")]
        if tokens[0].type == "YEAR" and shown != "mm":
            # `pea 2025 in Long Bed`: a year and a small word
            middle, start = tokens[0].end_pos or 0, tokens[1].start_pos or 0
            year = Number(float(signs), self.text[at:middle])
            return [Item(year, at, middle), Item(Word(self.text[start:end]), start, end)]
        value = figure(signs)
        if value is None or (shown == "m" and _THREE_PLACES.fullmatch(signs)):
            return self.unread(signs, at, end)
        if "," in signs:
            self.doubts.append(Doubt("decimal-comma", at, typed))
        return [Item(Measure(value * factor, dimension, shown, typed), at, end)]


def _warmth(signs: str, typed: str) -> Measure:
    """Degrees Celsius; of degrees Fahrenheit, 5/9 above 32."""
    number, unit = signs.rstrip("CFcf° "), signs[-1].upper()
    degrees = float(number.lstrip("-–").replace(",", ".")) * (-1 if number[0] in "-–" else 1)
    return Measure((degrees - 32) / 1.8 if unit == "F" else degrees, "warmth", unit, typed)


def _token_value(kind: str, signs: str, typed: str) -> Value:
    match kind:
        case "CULTIVAR":
            return Cultivar(typed[1:-1].strip(), typed)
        case "QUOTED":
            return Quoted(typed.strip('"“”').strip(), typed)
        case "COUNTED":
            return Number(float(signs[:-1]), typed)
        case "PENNY":
            return Nail(int(signs[:-1]), typed)
        case "MONEY":
            return _money(signs, typed)
        case "SLASHED":
            return Slashed(tuple(int(part) for part in signs.split("/")), typed)
        case "SEASON":
            return _season(signs, typed)
        case "BEARING":
            return Bearing(_degrees(signs), typed)
        case _:
            return Word(typed)


def _money(signs: str, typed: str) -> Money | Word:
    amount = figure(signs.strip("£$€p "))
    if amount is None:
        return Word(typed)
    return Money(amount / 100 if signs.endswith("p") else amount, typed)


def _season(signs: str, typed: str) -> Value:
    """`2026-27` is a season; `2027-05` a month, as ISO 8601 writes it; `2023-2026` four years."""
    first, tail = int(signs[:4]), signs[5:]
    second = int(tail) if len(tail) == 4 else first // 100 * 100 + int(tail)
    if second == first + 1 or (len(tail) == 2 and first % 100 == 99 and tail == "00"):
        return Season(first, first + 1, typed)
    if second > first:
        return Span(Number(float(first), signs[:4]), Number(float(second), tail), typed)
    if len(tail) == 2 and signs[4] == "-" and 1 <= int(tail) <= 12:
        return Day(None, int(tail), first, "", typed)
    return Word(typed)


def _degrees(signs: str) -> float:
    figures = [float(part) for part in re.findall(r"\d+(?:\.\d+)?", signs)]
    return sum((one / 60.0**place for place, one in enumerate(figures[:3])), 0.0)


def _feet_inches(signs: str, typed: str) -> Measure | Word:
    match = _FEET_INCHES.match(signs)
    feet = figure(match[1]) if match else None
    inches = figure(match[2]) if match else None
    if feet is None or inches is None:
        return Word(typed)
    return Measure(feet * 0.3048 + inches * 0.0254, "length", "ft in", typed)


def _day(tokens: list[Token], typed: str) -> Day:
    day: int | None = None
    month, year, part = 0, None, ""
    for token in tokens:
        text = str(token).lower().rstrip(".")
        match token.type:
            case "ISO":
                parts = [int(piece) for piece in text.split("-")]
                return Day(parts[2], parts[1], parts[0], "", typed)
            case "DASHED":
                days, name, *rest = text.split("-")
                year = _full_year(rest[0]) if rest else None
                return Day(int(days), MONTHS[_month_in(name)], year, "", typed)
            case "DOTTED":  # day before month, as DIN 5008 and its neighbours write it
                days, number, *rest = text.split(".")
                return Day(int(days), int(number), _full_year(rest[0] if rest else ""), "", typed)
            case "MONTH":
                month = MONTHS[text]
            case "YEAR":
                year = int(text)
            case "PART":
                part = PARTS[" ".join(text.rstrip(" -").split())]
            case "ORDINAL":
                day = int(re.sub(r"\D.*", "", text))
            case _:
                value = figure(text)
                # `4½ May` is no day; 0 is said to be impossible where dates are worked out
                whole = value is not None and value == int(value) and value < 1000
                day = int(value) if whole and value is not None else 0
    return Day(day, month, year, part, typed)


def _month_in(name: str) -> str:
    return name if name in MONTHS else name[:3]


def _full_year(text: str) -> int | None:
    if not text:
        return None
    return int(text) + 2000 if len(text) == 2 else int(text)
