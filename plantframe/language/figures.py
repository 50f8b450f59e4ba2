"""Figures as typed: `2,4`, `1-1/2`, `6½`, `six and a half`, and the signs they are written with."""

from __future__ import annotations

import re

NUMBER_WORDS = {
    "zero": 0.0,
    "half": 0.5,
    "one": 1.0,
    "two": 2.0,
    "three": 3.0,
    "four": 4.0,
    "five": 5.0,
    "six": 6.0,
    "seven": 7.0,
    "eight": 8.0,
    "nine": 9.0,
    "ten": 10.0,
    "eleven": 11.0,
    "twelve": 12.0,
    "thirteen": 13.0,
    "fourteen": 14.0,
    "fifteen": 15.0,
    "sixteen": 16.0,
    "seventeen": 17.0,
    "eighteen": 18.0,
    "nineteen": 19.0,
    "twenty": 20.0,
    "thirty": 30.0,
    "forty": 40.0,
    "fifty": 50.0,
}
FRACTIONS = {
    "½": 1 / 2,
    "¼": 1 / 4,
    "¾": 3 / 4,
    "⅓": 1 / 3,
    "⅔": 2 / 3,
    "⅛": 1 / 8,
    "⅜": 3 / 8,
    "⅝": 5 / 8,
    "⅞": 7 / 8,
}
# Odd spaces, hyphens, strokes and quote signs, each for one plain one, so that places stay.
_PLAIN = str.maketrans(
    {
        "\u00a0": " ",
        "\u202f": " ",
        "\u2009": " ",
        "\u2007": " ",
        "\t": " ",
        "\u2010": "-",
        "\u2011": "-",
        "\u2212": "-",
        "\u2044": "/",
        "´": "'",
        "`": "'",
    }
)
_BEYOND = 1e9  # no garden holds so many of anything
_AND_A_HALF = re.compile(r"\s+and\s+a\s+half$")
_FRACTION = re.compile(r"(?:(\d+)[ -])?(\d+)/(\d+)")
# `1,200` and `1,200,000`: thousands to one reader, a decimal comma to another.
_GROUPED = re.compile(r"[1-9]\d{0,2}(?:,\d{3})+")


def plain_signs(text: str) -> str:
    """The text with odd signs made plain ones, sign for sign."""
    return text.translate(_PLAIN)


def figure(text: str) -> float | None:
    """A figure as typed: `2,4`, `1-1/2`, `6½`, `two`.

    None where it could be two numbers, or is beyond anything in a garden.
    """
    text = plain_signs(text).strip().lower()
    if half := _AND_A_HALF.search(text):
        whole_part = figure(text[: half.start()])
        return None if whole_part is None else whole_part + 0.5
    if text in NUMBER_WORDS:
        return NUMBER_WORDS[text]
    whole, fraction = text, 0.0
    if text[-1:] in FRACTIONS:
        whole, fraction = text[:-1].strip(), FRACTIONS[text[-1]]
    elif match := _FRACTION.fullmatch(text):
        if int(match[3]) == 0:
            return None
        whole, fraction = match[1] or "", int(match[2]) / int(match[3])
    if not whole:
        return fraction or None
    if ("," in whole and "." in whole) or _GROUPED.fullmatch(whole):
        return None
    try:
        value = float(whole.replace(",", ".")) + fraction
    except ValueError:
        return None
    return value if value < _BEYOND else None


def either_way(text: str) -> tuple[float, float] | None:
    """What a figure with a comma or a point before three places can mean, the larger first."""
    if not re.fullmatch(r"\d+(?:[.,]\d{3})+", text):
        return None
    large = float(re.sub(r"[.,]", "", text))
    small = figure(re.sub(r"[.,](?=\d{3}$)", "#", text).replace(",", "").replace("#", "."))
    return None if small is None else (large, small)
