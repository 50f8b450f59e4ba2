"""What walls, beds and other places say of themselves."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, PLACES, fact

LANGUAGE.topic = "Walls, beds and other places"

fact(
    "faces",
    "{direction}",
    blocks="wall fence",
    help="The way you look with your back to it.",
    example="faces east",
    also="facing",
)
fact(
    "surface",
    "{stuff}*",
    blocks="wall fence",
    help="What it is made of or clad with.",
    example="surface shingles",
    also="clad in, clad with",
)
fact(
    "eaves",
    "at? {length} high/up?, overhang {length:overhang}, {length:overhang} out/overhang",
    blocks="wall house",
    help="How high the eaves are, and how far they come out.",
    example="eaves 3.1 m",
    also="gutter, gutters",
)
fact(
    "painted",
    "{year}, {date}, {text}",
    blocks=f"wall {BUILT}",
    help="When it was last painted, or with what.",
    example="painted 2022",
)
fact(
    "high",
    "{length}",
    blocks=PLACES,
    help="How high it is.",
    example="high 2.2 m",
    also="height",
)
fact(
    "runs",
    "{line}",
    blocks=f"bed border path {BUILT}",
    help="Which way the long side lies.",
    example="runs north-south",
)
fact(
    "sun",
    "{full|all day|half|part|partial|morning|afternoon|evening|none|shade|dappled|broken:kind} "
    "the? day?/sun?/shade?, {hours}, {text}",
    blocks=f"bed wall border {BUILT}",
    help="The direct sun it gets in summer: full, half, morning, afternoon, none, dappled, "
    "or so many hours.",
    example="sun half",
)
fact(
    "had",
    "{plant} in? {year}*, {year:more}*, {plant:again}*",
    blocks=f"bed border {BUILT}",
    help="What grew here, and in which year.",
    example="had pea in 2025, bean in 2026",
    also="previously, grew",
    repeats=True,
)
fact(
    "raised",
    "{length} high?",
    blocks="bed border",
    help="How high the sides of a raised bed are.",
    example="raised 30 cm",
)
