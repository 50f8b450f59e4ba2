"""The blocks: what may begin in column one."""

from __future__ import annotations

from plantframe.language.vocabulary.common import block

# What a wall or a fence may be made of; anything else may be said with `surface`.
_MADE = (
    "{brick|stone|timber|wood|boards|concrete|block|render|mesh|iron|hedge|"
    "cedar|larch|oak|pine|panels:surface}*"
)

block(
    "garden",
    "{year}, {season}",
    help="The garden and the season the plan is for. One to a plan.",
    example="garden Quarry Row, 2027",
)
block(
    "shed",
    "{spot}*",
    help="What is in store: one thing a line, with its count and size.",
    example="shed\n  6 posts 2x2, 8 ft",
    named=False,
    details="items",
    also="store",
)
block(
    "yard",
    "{spot}*",
    help="What the timber yard sells, in which lengths, and at what price where you know it.",
    example="yard\n  2x4, 8 ft, at 4.20",
    named=False,
    details="items",
)
block(
    "wall",
    "{length:high} high, {length:long} long, {facing}, {spot}*, {stuff:surface}*",
    help="A wall of the house or of the garden: which way it faces and what it is made of.",
    example="wall Kitchen Wall, faces east, shingles",
)
block(
    "hedge",
    "{length:high} high/tall, {length:wide} wide, {length:long} long, {spot}*",
    help="A hedge: how high, and where it stands.",
    example="hedge Holly Hedge, 3 m high, 5 m south of Seed Box",
)
block(
    "tree",
    "{length:high} high/tall, {length:across} across/wide, {spot}*",
    help="A tree: how high, how wide, and where it stands.",
    example="tree Old Pear, 6 m high, 4 m across, west of Long Bed",
)
block(
    "path",
    "{length:wide} wide, {length:long} long, {spot}*",
    help="A path: how wide, and where it runs.",
    example="path Main Path, 90 cm wide, east of Long Bed",
)
block(
    "house",
    "{length:high} high/tall, {spot}*",
    help="The house itself, where a distance is measured from it.",
    example="house, 6 m high",
    named=False,
)
_SUNNY = "in? {full|half|part|partial|dappled|no:sun} sun/shade"
block(
    "bed",
    f"{{size}}, {{length:wide}} wide, {{length:long}} long, {{length:high}} high/tall, {_SUNNY}, "
    "{line:runs}, {spot}*",
    help="A bed: its size, which way it runs, and what grew there before.",
    example="bed Long Bed, 1.2 m x 7.5 m, runs north-south",
)
block(
    "border",
    f"{{size}}, {{length:wide}} wide, {{length:long}} long, {{length:high}} high/tall, {_SUNNY}, "
    "{line:runs}, {spot}*",
    help="A flower border; each line under it may simply name a plant.",
    example="border Lane Border, 6 m long\n  climbing rose, 2 plants",
    details="plants",
)
_HEAD = "{kind}, {spot}*, {length:long} long, {length:high} high/tall, {length:wide} wide, {size}"
block(
    "frame",
    _HEAD,
    help="A frame that plants climb or lean on: its name, its kind, and where it stands.",
    example="frame Bean Net, net frame, in Long Bed, north end",
)
block(
    "line",
    _HEAD,
    help="A row of posts and wires.",
    example="line Berry Wires, cane wires, in Long Bed, east side",
)
block(
    "cover",
    _HEAD,
    help="A cold frame, tunnel, cage or anything else that covers.",
    example="cover Seed Box, cold frame, south of the shed",
)
block(
    "fence",
    f"{_HEAD}, {{facing}}, {_MADE}",
    help="A fence.",
    example="fence Rose Fence, mortised fence, 12 m long",
)
block(
    "want",
    "{plant} {cultivar}?, {cultivar}, "
    "{count} plants/plant/off/of_them/crowns/seeds/vines/roots/canes/row/rows, {count}, "
    "for {place:spot}, {spot}*, {length:row} of_row?",
    help="A plant that has no frame yet; `plantframe pair` looks for one.",
    example="want cucumber, 6 plants",
    named=False,
    also="wants, wish",
)
block(
    "variety",
    "like {plant:like}",
    help="A plant of your own, or figures of your own for one of the catalogue's: they outrank the "
    "catalogue's. Best kept in a file beside the plan, brought in with `read plants`.",
    example="variety Ida Bean, like runner bean\n  height 2 to 2.6 m",
    also="sort",
)
block(
    "task",
    "by {date:by}, {hours}, done {date:done}, after {job:after}, {both of us|both:both}, "
    "when {text:when}, because {reason:because}, move/moved to? {date:moved}, {spot}*, "
    "{date:on}, {count:hands} people/hands, {person}*",
    help="A job of your own, with whatever you know of when, where and who.",
    example="task rip 4 of 2x4, at the yard, by 1 April",
    also="todo, to-do, job",
)
block(
    "log",
    "{text}",
    help="What happened: the date first, then anything. Measures are picked out, words are kept.",
    example="log 2 August, Bean Net, picked 1.4 kg, bar 2 in low",
    named=False,
    also="diary",
)
block(
    "note",
    "{text}",
    help="A remark to yourself, on the whole garden or (with a name and a colon) on one thing.",
    example="note Bean Net: never again the same weekend as the tomatoes",
    named=False,
    also="notes",
)
