"""What the gardener knows of a plant better than any book: figures of their own."""

from __future__ import annotations

from plantframe.language.vocabulary.common import LANGUAGE, fact

LANGUAGE.topic = "Plants of your own"

_OWN = "variety"

fact(
    "like",
    "{plant}",
    blocks=_OWN,
    help="The plant of the catalogue it is like: what you do not say is taken from there.",
    example="like runner bean",
)
fact(
    "also called",
    "{plant}*",
    blocks=_OWN,
    help="Other names that you know it by.",
    example="also called Ida's bean",
    also="also, called",
)
fact(
    "height",
    "{lengths}, {lengths} high/tall",
    blocks=_OWN,
    help="How high it grows with you.",
    example="height 2 to 2.6 m",
    also="grows, high",
)
fact(
    "weighs",
    "{weights} {per metre|per m|per foot|per ft:each}, {weights} {length:each}",
    blocks=_OWN,
    help="What it weighs wet and in full leaf on a metre or a foot of row.",
    example="weighs 9 to 12 kg a metre",
)
fact(
    "yields",
    "{weights} {per metre|per m|per foot|per ft:each}, {weights} {length:each}",
    blocks=_OWN,
    help="What you pick from a metre or a foot of row in a season.",
    example="yields 3 kg a metre",
)
fact(
    "grips",
    "up to {length}, {length}",
    blocks=_OWN,
    help="The thickest it takes hold of.",
    example="grips up to 4 cm",
)
fact(
    "apart",
    "{lengths}",
    blocks=_OWN,
    help="How far apart its plants stand in the row.",
    example="apart 15 to 20 cm",
    also="spacing",
)
fact(
    "sun",
    "{hours}",
    blocks=_OWN,
    help="How many hours of sun it wants.",
    example="sun 5 to 6 h",
)
fact(
    "sow",
    "{indoors|inside|under cover|under glass|outdoors:raised}, {dates:sow}",
    blocks=_OWN,
    help="When you sow it, by the calendar or by the frost.",
    example="sow 2 weeks after last frost",
    also="sown",
)
fact(
    "plant out",
    "{dates:out}",
    blocks=_OWN,
    help="When you plant it out.",
    example="plant out 1 to 10 June",
    also="planted",
)
fact(
    "ready",
    "{whiles} after? {sowing|planting:from}",
    blocks=_OWN,
    help="How long it takes to the first picking.",
    example="ready 70 to 80 days after sowing",
    also="picked",
)
fact(
    "soil",
    "{warmth}",
    blocks=_OWN,
    help="How warm the soil must be.",
    example="soil 12 C",
)
fact(
    "stays",
    "{whiles}",
    blocks=_OWN,
    help="How long it stands, from planting to pulling out.",
    example="stays 4 to 5 months",
)
fact(
    "fruit",
    "{weights}",
    blocks=_OWN,
    help="What one fruit weighs.",
    example="fruit 300 g to 1 kg",
)
fact(
    "hardy",
    "{text}",
    blocks=_OWN,
    help="Frost does it no harm.",
    example="hardy",
)
fact(
    "tender",
    "{text}",
    blocks=_OWN,
    help="The first frost kills it.",
    example="tender",
)
fact(
    "poisonous",
    "{text}",
    blocks=_OWN,
    help="What of it is poisonous.",
    example="poisonous the berries",
    also="poison",
)
fact(
    "train",
    "{text}",
    blocks=_OWN,
    help="How you lead or prune it, in a line.",
    example="train two leaders, tied every hand",
    also="training, prune",
)
