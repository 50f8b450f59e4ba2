"""When frames, lines, covers and fences stand, and who has to do with them."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, fact

LANGUAGE.topic = "When they stand, and whose work they are"

fact(
    "ready by",
    "{date}",
    blocks=BUILT,
    help="When it must stand.",
    example="ready by 15 May",
    also="ready, up by",
)
fact(
    "take down",
    "{date}, in? {year}",
    blocks=BUILT,
    help="When it comes down.",
    example="take down 30 September",
    also="takedown",
)
fact(
    "built",
    "in? {year}, {date}",
    blocks=BUILT,
    help="That it stands already, and since when.",
    example="built 2024",
    also="put up, stands since, standing since",
    alone=True,
)
fact(
    "stood in",
    "{name:bed}, in? {year}*, on? {date}",
    blocks=BUILT,
    help="The bed it stood in before, and in which years; `moved from` with the year of the move. "
    "What it had then is counted to that bed.",
    example="stood in Low Bed in 2026",
    also="moved from, stood before in, came from",
    repeats=True,
)
fact(
    "stays up",
    "for? {years}, {all year|for years|for good|always:long}",
    blocks=BUILT,
    help="That it stays, and for how many years it is wanted.",
    example="stays up 15 years",
    also="wanted for, stands for, stands",
    alone=True,
)
fact(
    "on",
    "{dates}",
    blocks="cover",
    help="From when to when the lights or the fabric are on.",
    example="on 1 October to 15 April",
    also="on from, from",
)
fact(
    "vent opened by",
    "{person}, by {person}, at {warmth:at} and_sun?, {text}",
    blocks="cover",
    help="Who opens it on a sunny morning.",
    example="vent opened by Maud",
    also="vents opened by, opened by, vent, vents",
)
fact(
    "picked by",
    "{person}*",
    blocks=f"{BUILT} border",
    help="Who picks here.",
    example="picked by Wim",
)
fact(
    "carried by",
    "{count} people/hands?, {person}*",
    blocks=BUILT,
    help="How many carry it.",
    example="carried by two",
)
fact(
    "built by",
    "{person}*, {text}",
    blocks=BUILT,
    help="Who builds it.",
    example="built by Wim",
)
