"""What the garden says about itself."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, fact

LANGUAGE.topic = "The garden"

fact(
    "place",
    "{degrees}*",
    blocks="garden",
    help="Latitude and longitude; a tenth of a degree is near enough.",
    example="place 52.1 N, 1.4 W",
    also="location, where",
)
fact(
    "frost",
    "last {date:last}, first {date:first}, {none|no frost|never:none}, "
    "{years:one} in_ten_after {date:late}, late/latest {date:late}",
    blocks="garden",
    help="The average last frost of spring and first of autumn, or `frost none`.",
    example="frost last 6 May, first 12 October",
    also="frosts",
)
fact(
    "last frost",
    "{date:last}, first {date:first}",
    blocks="garden",
    help="The average last frost of spring, in a line of its own.",
    example="last frost 6 May",
)
fact(
    "first frost",
    "{date:first}, last {date:last}",
    blocks="garden",
    help="The average first frost of autumn, in a line of its own.",
    example="first frost 12 October",
)
fact(
    "wind",
    "{sheltered|average|windy|exposed:class}, from? {direction}, gusts? {speed}",
    blocks=f"garden bed {BUILT}",
    help="sheltered, average or windy, and where it mostly comes from.",
    example="wind average, from the south-west",
)
fact(
    "soil",
    "{loose|wet|firm|stiff|heavy|light|dry|sandy|stony:state}*, {stuff}*",
    blocks=f"garden bed {BUILT}",
    help="What the ground is: firm loam, clay, sand …",
    example="soil firm loam",
)
fact(
    "person",
    "{name}, reach/reaches {length:reach}, {length:reach} reach, "
    "lifts/lift/carries {weight:lifts}, {weight:lifts} lift, here {dates:here}, "
    "{saw|axe|no saw|no axe:tools}*",
    blocks="garden",
    help="Who works here: how high they reach and how much they lift.",
    example="person Maud, reach 1.95 m, lifts 15 kg",
    repeats=True,
)
fact(
    "people",
    "{count:many}, {name}*",
    blocks="garden",
    help="Who works here, by their names alone.",
    example="people Maud, Wim",
)
fact(
    "free",
    "{weekday}*, {hours}*",
    blocks="garden",
    help="The hours a week there are for building.",
    example="free Saturday 6 h, Wednesday 2 h",
    also="hours, free hours, free time",
    repeats=True,
)
fact(
    "away",
    "{dates}*, {person}",
    blocks="garden",
    help="When nobody is at home, or who is not.",
    example="away 10 to 20 July",
    repeats=True,
)
fact(
    "tools",
    "{stuff}*",
    blocks="garden",
    help="The tools in the house.",
    example="tools driver, hand saw, iron bar, mallet",
    repeats=True,
)
fact(
    "power",
    "{text}",
    blocks="garden",
    help="Where there is a socket.",
    example="power house only",
)
fact(
    "household",
    "{count} people/of_us?",
    blocks="garden",
    help="How many eat from the garden.",
    example="household 4",
)
fact(
    "children",
    "{count:many} of, {number:age}*, {text}",
    blocks="garden",
    help="That there are children, and how old.",
    example="children 3 and 6",
    also="child, kids, kid",
)
fact(
    "dog",
    "{text}",
    blocks="garden",
    help="That there is a dog or another animal that chews.",
    example="dog",
    also="dogs, cat, cats, pets",
    repeats=True,
)
fact(
    "region",
    "{text}",
    blocks="garden",
    help="The country or state, for lists of plants that run wild there.",
    example="region Vermont",
)
fact(
    "frost depth",
    "{length}",
    blocks="garden",
    help="How deep the ground freezes in a hard winter.",
    example="frost depth 90 cm",
)
fact(
    "normal high",
    "{date:month} {warmth}",
    blocks="garden",
    help="The usual warmest of a day in a month.",
    example="normal high July 36 C",
    repeats=True,
)
fact(
    "normal low",
    "{date:month} {warmth}",
    blocks="garden",
    help="The usual coldest of a night in a month.",
    example="normal low January -12 C",
    repeats=True,
)
fact(
    "rains",
    "{dates}*",
    blocks="garden",
    help="The wet season.",
    example="rains June to September",
)
fact(
    "storms",
    "{dates}*",
    blocks="garden",
    help="The season of great storms.",
    example="storms August to October",
)
fact(
    "lines marked",
    "{date}, by? {person}",
    blocks=f"garden {BUILT}",
    help="When the buried cables and pipes were marked, or found not to be there.",
    example="lines marked 2 March",
    also="services marked",
)
fact(
    "overhead line",
    "{spot}*, {none:none}, {length:high} high/up",
    blocks="garden",
    help="A power or telephone line overhead and where it runs, or `overhead lines none`.",
    example="overhead line 6 m north of Hop Pole",
    also="overhead lines",
    repeats=True,
)
fact(
    "no lines overhead",
    "{text}",
    blocks="garden",
    help="That no line runs overhead.",
    example="no lines overhead",
    also="no overhead lines, no overhead line",
)
fact(
    "timber",
    "{nominal|actual:means}, {text}",
    blocks="garden",
    help="Whether 2x4 names a trade size or is the size of the stick.",
    example="timber nominal",
)
fact(
    "kerf",
    "{length}",
    blocks="garden yard",
    help="What one saw cut takes away.",
    example="kerf 3 mm",
)
