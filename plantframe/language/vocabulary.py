"""Every block and fact of a plan, declared once.

Reading, messages, completion, the language page and the colouring all come from here. A shape is
written as the line is written; `shapes.py` says how shapes are read.
"""

from __future__ import annotations

from plantframe.language.declarations import Language

LANGUAGE = Language()
block = LANGUAGE.block
fact = LANGUAGE.fact

BUILT = "frame line cover fence"
PLACES = f"bed wall house hedge tree path border {BUILT}"

# ---- blocks -------------------------------------------------------------------------------
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
    "{length:high} high, {length:long} long, {spot}*, {stuff:surface}*",
    help="A wall of the house or of the garden: which way it faces and what it is made of.",
    example="wall Kitchen Wall, faces east, shingles",
)
block(
    "hedge",
    "{length:high} high, {length:wide} wide, {length:long} long, {spot}*",
    help="A hedge: how high, and where it stands.",
    example="hedge Holly Hedge, 3 m high, 5 m south of Seed Box",
)
block(
    "tree",
    "{length:high} high, {length:across} across, {spot}*",
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
    "{length:high} high, {spot}*",
    help="The house itself, where a distance is measured from it.",
    example="house, 6 m high",
    named=False,
)
block(
    "bed",
    "{size}, {length:wide} wide, {length:long} long, {spot}*",
    help="A bed: its size, which way it runs, and what grew there before.",
    example="bed Long Bed, 1.2 m x 7.5 m, runs north-south",
)
block(
    "border",
    "{size}, {length:wide} wide, {length:long} long, {spot}*",
    help="A flower border; each line under it may simply name a plant.",
    example="border Lane Border, 6 m long\n  climbing rose, 2 plants",
    details="plants",
)
_HEAD = "{kind}, {spot}*, {length:long} long, {length:high} high, {length:wide} wide, {size}"
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
    _HEAD,
    help="A fence.",
    example="fence Rose Fence, mortised fence, 12 m long",
)
block(
    "want",
    "{plant} {cultivar}?, {cultivar}, {count} plants/of_them/off/row/rows, {count}, {spot}*, "
    "{length:row} of_row?",
    help="A plant that has no frame yet; `plantframe pair` looks for one.",
    example="want cucumber, 6 plants",
    named=False,
)
block(
    "task",
    "by {date:by}, {hours}, done {date:done}, after {job:after}, {both of us|both:both}, "
    "when {text:when}, because {reason:because}, move/moved to? {date:moved}, {spot}*, "
    "{date:on}, {count:hands} people/hands, {person}*",
    help="A job of your own, with whatever you know of when, where and who.",
    example="task rip 4 of 2x4, at the yard, by 1 April",
)
block(
    "log",
    "{text}",
    help="What happened: the date first, then anything. Measures are picked out, words are kept.",
    example="log 2 August, Bean Net, picked 1.4 kg, bar 2 in low",
    named=False,
)
block(
    "note",
    "{text}",
    help="A remark to yourself, on the whole garden or (with a name and a colon) on one thing.",
    example="note Bean Net: never again the same weekend as the tomatoes",
    named=False,
)

# ---- the garden ---------------------------------------------------------------------------
fact(
    "place",
    "{degrees}*",
    blocks="garden",
    help="Latitude and longitude; a tenth of a degree is near enough.",
    example="place 52.1 N, 1.4 W",
)
fact(
    "frost",
    "last {date:last}, first {date:first}, {none|no frost|never:none}, "
    "one_year_in_ten_after {date:late}",
    blocks="garden",
    help="The average last frost of spring and first of autumn, or `frost none`.",
    example="frost last 6 May, first 12 October",
    also="frosts",
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
    "{loose|wet|firm|stiff|heavy|light|dry|sandy|stony:state} {stuff}, {stuff}",
    blocks=f"garden bed {BUILT}",
    help="What the ground is: firm loam, clay, sand …",
    example="soil firm loam",
)
fact(
    "person",
    "{name}, reach/reaches {length:reach}, lifts {weight:lifts}, here {dates:here}, "
    "{saw|axe|no saw:tools}*",
    blocks="garden",
    help="Who works here: how high they reach and how much they lift.",
    example="person Nell, reach 1.95 m, lifts 15 kg",
    repeats=True,
)
fact(
    "free",
    "{weekday} {hours}*",
    blocks="garden",
    help="The hours a week there are for building.",
    example="free Saturday 6 h, Wednesday 2 h",
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
    "{count}, {count} people/of_us",
    blocks="garden",
    help="How many eat from the garden.",
    example="household 4",
)
fact(
    "children",
    "{number:age}*, {text}",
    blocks="garden",
    help="That there are children, and how old.",
    example="children 3 and 6",
    also="child",
)
fact(
    "dog",
    "{text}",
    blocks="garden",
    help="That there is a dog or another animal that chews.",
    example="dog",
    also="dogs, cat, cats, pets",
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
    help="A power or telephone line overhead, and where it runs.",
    example="overhead line 6 m north of Hop Pole",
    also="overhead lines",
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

# ---- walls and beds -----------------------------------------------------------------------
fact(
    "faces",
    "{direction}",
    blocks="wall",
    help="The way you look with your back to it.",
    example="faces east",
    also="facing",
)
fact(
    "surface",
    "{stuff}*",
    blocks="wall",
    help="What it is made of or clad with.",
    example="surface shingles",
    also="made of, clad in, clad with",
)
fact(
    "eaves",
    "{length}, overhang {length:overhang}, {length:overhang} out/overhang",
    blocks="wall house",
    help="How high the eaves are, and how far they come out.",
    example="eaves 3.1 m",
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
    "{full|half|morning|afternoon|none|dappled:kind} the? day?/sun?, {hours}, {text}",
    blocks=f"bed wall border {BUILT}",
    help="The direct sun it gets in summer: full, half, morning, afternoon, none, dappled, or hours.",
    example="sun half",
)
fact(
    "had",
    "{plant} in? {year}*, {year:more}*, {plant:again}*",
    blocks=f"bed border {BUILT}",
    help="What grew here, and in which year.",
    example="had pea in 2025, bean in 2026",
    repeats=True,
)
fact(
    "raised",
    "{length}",
    blocks="bed border",
    help="How high the sides of a raised bed are.",
    example="raised 30 cm",
)

# ---- frames, lines, covers, fences --------------------------------------------------------
_POST = (
    "{count} of?, {count} in_all, {section}, {length} long?, {length:down} down/deep/in/buried, "
    "down/deep/buried {length:down}, {length:up} up/standing/high/above/tall/clear, "
    "up/standing {length:up}, {length:up} to_the_wire/to_the_top_wire/to_the_rail, "
    "{length:apart} apart, every/each {length:apart}, in {concrete|sleeves|pipes|spikes:set}, "
    "{leaning|angled|leaned out:lean}, {pointed|driven|blunt:foot}*, {stuff:wood}*"
)
fact(
    "bays",
    "{count} of? {length}?, of? {length}",
    blocks=BUILT,
    help="How many bays, and how far from post to post.",
    example="bays 2 of 8 ft",
    also="bay",
)
fact(
    "posts",
    _POST,
    blocks=BUILT,
    help="The uprights: how thick, how long, how much in the ground, how much above it.",
    example="posts 2x2, 8 ft, 18 in down, 6 ft 6 in up",
    also="post, uprights, upright, legs",
)
fact(
    "end posts",
    _POST,
    blocks=BUILT,
    help="The posts at the two ends, where they differ from the others.",
    example="end posts 100 mm round, 2.4 m, 75 cm down",
    also="ends posts",
)
fact(
    "poles",
    _POST,
    blocks=BUILT,
    help="Poles or canes: how many, how thick, how long, how deep.",
    example="poles 6 of 20 mm round, 2.4 m, 25 cm down",
    also="pole, canes, cane",
)
fact(
    "stakes",
    _POST,
    blocks=BUILT,
    help="Stakes: how many, how thick, how long, how deep.",
    example="stakes 8 of 25x25 mm, 1.8 m, 30 cm down",
    also="stake",
)
_STICK = (
    "{count} of?, {section}, {length} long?, {halved|lapped|side by side|butted:joint}, "
    "{flat|on the flat|on edge:lie}, {length:up} up/high, at {length:up}, "
    "{stuff:wood}*"
)
fact(
    "bar",
    _STICK,
    blocks=BUILT,
    help="The bar along the top: how thick, and whether two bars are halved where they meet.",
    example="bar 2x4, on edge",
    also="bars, top bar, ridge, ridge pole",
)
fact(
    "rails",
    f"{_STICK}, at? {{length:heights}}*",
    blocks=BUILT,
    help="The rails: how many, how thick, how long.",
    example="rails 2 of 75 mm round, 2.7 m",
    also="rail, rungs, rung",
)
fact(
    "top rail",
    _STICK,
    blocks=BUILT,
    help="A rail along the tops of the posts.",
    example="top rail 2x4",
)
fact(
    "net",
    "{size}, {length:high} high/tall, {length:wide} wide, mesh {length:mesh}, {length:mesh} "
    "mesh/squares, from {length:start} up?, {count:widths} widths tied?, {tied|taut|loose:hung}*, "
    "or_less, {stuff:made}*, {count} of?",
    blocks=BUILT,
    help="The net: height by length, its mesh, and whether two widths are tied into one.",
    example="net 6 ft 6 in x 16 ft, mesh 15 cm, two widths tied",
    also="netting",
)
fact(
    "mesh",
    "{length} squares?, or_less, {size}, {stuff:made}*",
    blocks=BUILT,
    help="How wide the openings are.",
    example="mesh 15 cm",
)
_WIRE = (
    "{count} of?, at? {length:heights}*, {gauge} wire?, {strained|hand tight|tight|slack:strain}, "
    "{pull}, {length:thick} thick, {stuff:made}*, {length:apart} apart"
)
fact(
    "wires",
    _WIRE,
    blocks=BUILT,
    help="The wires: how many, at what heights, and how tight.",
    example="wires 3, at 45 cm, 90 cm and 150 cm, strained",
    also="wire, eyes",
    repeats=True,
)
fact(
    "strings",
    "{count} of?, {length:apart} apart, {a plant|each plant|every plant|one a plant:share}, "
    "{length} long?, {stuff:made}*",
    blocks=BUILT,
    help="Strings for plants to climb, and what they are made of.",
    example="strings, one a plant",
    also="string, twine",
)
fact(
    "circle",
    "{length} across?, {length} wide",
    blocks=BUILT,
    help="How wide the ring of feet is.",
    example="circle 1 m",
    also="ring",
)
fact(
    "tie",
    "at {length:height}, {length:height} up/high, {text}",
    blocks=BUILT,
    help="Where or with what it is tied.",
    example="tie at 1.9 m",
    also="tied, ties",
)
fact(
    "size",
    "{size}, {length:high} high, {length:long} long, {length:deep} deep, low_side {direction:low}, "
    "{length:across} across",
    blocks=BUILT,
    help="Its size over all: height by length for a panel, length by depth for a box.",
    example="size 8 ft 1 in x 4 ft, low side south",
)
fact(
    "low side",
    "{direction}",
    blocks=BUILT,
    help="The way the low side of a cold frame looks.",
    example="low side south",
)
fact(
    "panels",
    "{count} of?, {size}, {length:high} high, mesh {length:mesh}, {stuff:made}*",
    blocks=BUILT,
    help="The panels: how many and how large.",
    example="panels 2 of 3 ft x 5 ft",
    also="panel",
)
fact(
    "hinges",
    "at? the? {foot|bottom|top|head:at}, {length:up} up/high/above_the_ground, {count} of?, {text}",
    blocks=BUILT,
    help="Where it is hinged, and how high the hinge is.",
    example="hinges at the foot, 30 cm up",
    also="hinge, hinged",
)
fact(
    "hooks",
    "{length} long?, {count} of?, at {length:up}, {length:up} up/high, {text}",
    blocks=BUILT,
    help="The hooks that hold its head.",
    example="hooks 15 cm",
    also="hook",
)
fact(
    "gap",
    "{length}, {text}",
    blocks=BUILT,
    help="The air between it and the wall behind.",
    example="gap 15 cm",
    also="air gap, off the wall, stands off",
)
fact(
    "strips",
    "{section}, new? {date:since}, new? {spring|summer|autumn|winter:season} {year}, {year}, "
    "{length:apart} apart, every {length:apart}, {stuff:made}*, {length} of?",
    blocks=BUILT,
    help="The strips: of a lattice, or those under a box, and when they were put on.",
    example="strips new spring 2021",
    also="strip, foot strips, lattice strip, slats",
)
fact(
    "lights",
    "{count} of?, {size}, {length:wide} wide, {length:long} long, {length:wide} each?, "
    "{length:gap} between/bars_between, {stuff:glazing}*",
    blocks=BUILT,
    help="The lights of a cold frame: how many, how wide, glazed with what.",
    example="lights 4 of 24 in x 4 ft, glass",
    also="light, sashes, sash",
)
fact(
    "back",
    "{section}, {length:high} high/tall, {stuff:wood}*",
    blocks=BUILT,
    help="The high side of a cold frame.",
    example="back 2x12",
    also="back board, high side",
)
fact(
    "front",
    "{section}, {length:high} high/tall, {stuff:wood}*",
    blocks=BUILT,
    help="The low side of a cold frame.",
    example="front 2x8",
    also="front board",
)
fact(
    "brace",
    "{count} of?, {section}, {length} long?, {none:none}, {text}",
    blocks=BUILT,
    help="A brace: across a box, or raking to an end post.",
    example="brace 2x4",
    also="braces",
)
fact(
    "ends",
    "{braced|anchored|stayed|unbraced|free|not braced:how}, {text}",
    blocks=BUILT,
    help="How the end posts are held along the row.",
    example="ends braced",
)
fact(
    "stays",
    "{none:none}, {count} of?, {square to the row|square|in line|in line with the row|at the ends|"
    "both ways:which}*, {length:up} up/high, at {length:up}, {length:out} out, {stuff:made}*",
    blocks=BUILT,
    help="Stays: square to the row against wind, in line against the row's own pull.",
    example="stays 2, square to the row",
    also="stay, guys",
)
fact(
    "prop",
    "{text}",
    blocks=BUILT,
    help="Props under the bar.",
    example="prop in the middle of every bar",
    also="props, propped",
)
fact(
    "pins",
    "{count} of?, {nail}, {length} long?, {text}",
    blocks=BUILT,
    help="The loose nails that hold the bars.",
    example="pins 40d",
    also="pin, nails",
)
fact(
    "screws",
    "{count} of?, {length}, {stuff:made}*",
    blocks=BUILT,
    help="The screws it is put together with.",
    example="screws 14 of 3 in",
)
fact(
    "wood",
    "{stuff}*",
    blocks=BUILT,
    help="What wood it is made of.",
    example="wood cedar",
    also="made of",
)
fact(
    "finish",
    "{none:none}, {stuff}*, {date}",
    blocks=BUILT,
    help="What it is painted, oiled or treated with, and when.",
    example="finish linseed oil, 12 April",
    also="coat, coated, treated with, feet coated with, preservative, stained",
)
fact(
    "spacing",
    "{lengths} apart?",
    blocks=BUILT,
    help="How far apart the plants or the stakes stand.",
    example="spacing 45 cm",
    also="spaced",
)
fact(
    "overhang",
    "{length}",
    blocks=BUILT,
    help="How far the bar goes beyond the posts.",
    example="overhang 5 cm",
)
fact(
    "wide",
    "{length}",
    blocks=BUILT,
    help="How wide it is.",
    example="wide 1.2 m",
    also="width, across",
)
fact(
    "long",
    "{length}",
    blocks=BUILT,
    help="How long it is.",
    example="long 12 m",
    also="length",
)
fact(
    "feet",
    "{length:apart} apart, {chained|pegged:how}*, {text}",
    blocks=BUILT,
    help="How far apart the feet stand, and how they are held.",
    example="feet 1 m apart, chained, pegged",
)
fact(
    "chain",
    "{length}, {text}",
    blocks=BUILT,
    help="The chain or cord that stops the feet spreading.",
    example="chain 1 m",
)
fact(
    "pegs",
    "{count} of?, {length}, {text}",
    blocks=BUILT,
    help="The pegs that hold it down.",
    example="pegs 4",
    also="pegged",
)
fact(
    "hoops",
    "{count} of?, {length} long?, {length:up} up/high, {length:wide} wide, {length:apart} apart, "
    "{stuff:made}*",
    blocks=BUILT,
    help="The hoops of a tunnel.",
    example="hoops 6, 60 cm high, 1.2 m wide",
    also="hoop",
)
fact(
    "fabric",
    "{size}, {length:wide} wide, {length} long?, {stapled|weighted|buried:held}*, {stuff:made}*",
    blocks=BUILT,
    help="The fabric, film or cloth over it.",
    example="fabric 2.5 m wide, weighted",
    also="film, cloth, sheet",
)
fact(
    "sides",
    "{text}",
    blocks=BUILT,
    help="Anything about its sides.",
    example="sides of netting",
)
fact(
    "roof",
    "{length:up} up/high, {text}",
    blocks=BUILT,
    help="Anything about its roof.",
    example="roof net, off before snow",
)
fact(
    "beams",
    _STICK,
    blocks=BUILT,
    help="The beams overhead.",
    example="beams 2x8, 3 m",
    also="beam, rafters",
)
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
    "{date}",
    blocks=BUILT,
    help="When it comes down.",
    example="take down 30 September",
    also="takedown",
)
fact(
    "built",
    "{year}, {date}",
    blocks=BUILT,
    help="That it stands already, and since when.",
    example="built 2024",
    also="put up, stands since",
)
fact(
    "stays up",
    "{years}, {all year|for years|for good:long}",
    blocks=BUILT,
    help="That it stays, and for how many years it is wanted.",
    example="stays up 15 years",
    also="wanted for, stands for",
)
fact(
    "on",
    "{dates}",
    blocks="cover",
    help="From when to when the lights or the fabric are on.",
    example="on 1 October to 15 April",
)
fact(
    "vent opened by",
    "{person}, {text}",
    blocks="cover",
    help="Who opens it on a sunny morning.",
    example="vent opened by Nell",
    also="vents opened by, opened by",
)
fact(
    "picked by",
    "{person}",
    blocks=f"{BUILT} border",
    help="Who picks here.",
    example="picked by Odo",
)
fact(
    "carried by",
    "{count}, {person}*",
    blocks=BUILT,
    help="How many carry it.",
    example="carried by two",
)
fact(
    "built by",
    "{person}*, {text}",
    blocks=BUILT,
    help="Who builds it.",
    example="built by Odo",
)
fact(
    "headroom",
    "{length}",
    blocks=BUILT,
    help="How high it is to walk under.",
    example="headroom 2.3 m",
)
fact(
    "own design",
    "{text}",
    blocks=BUILT,
    help="That the kind is the gardener's own; pieces and steps follow.",
    example="own design",
)
fact(
    "piece",
    "{count} of?, {section}, {length} long?, {text}",
    blocks=BUILT,
    help="A piece of something of your own design.",
    example="piece 4 of 2x2, 1.9 m",
    repeats=True,
)
fact(
    "step",
    "{job} after {job:after}, {job}, {hours}, {count:hands} people/hands",
    blocks=BUILT,
    help="A step in building something of your own design, and what it comes after.",
    example="step join the pieces after cut the pieces",
    repeats=True,
)

# ---- what grows ---------------------------------------------------------------------------
GROW = (
    "{plant} {cultivar}?, {cultivar}, {count} plants/plant/off/of_them/crowns/seeds/vines/roots, "
    "{length:apart} apart, {lengths:apart} apart, sow/sown {date:sow}, "
    "plant_out/planted_out/set_out/plant/planted {date:out}, "
    "{indoors|inside|under cover|under glass|in the frame|outdoors:raised}, "
    "{count:leaders} leader/leaders/stem/stems, "
    "{pinched at the top|pinched|pinch at the top|pinch|stopped at the top|stopped:pinched}, "
    "{tied in|led sideways|trained along:trained}, {cut back yearly|cut back every year:cut}, "
    "until {date:until}, picked? from {date:pick}, {count}, {spot}*"
)
fact(
    "grow",
    GROW,
    blocks=f"{BUILT} bed border wall",
    help="What grows here: how many, when sown or planted, how led. Twice in one block is a first "
    "and a second crop.",
    example="grow pole bean 'Ferryman', 40 plants, sow 18 May",
    also="grows, crop",
    repeats=True,
)
fact(
    "sow",
    "{date:sow}, {indoors|under cover|under glass|outdoors:raised}, {text}",
    blocks=f"{BUILT} bed border wall",
    help="When the plant named above is sown.",
    example="sow 1 June",
    also="sown",
    repeats=True,
)
fact(
    "plant out",
    "{date:out}, {text}",
    blocks=f"{BUILT} bed border wall",
    help="When the plant named above is set out.",
    example="plant out 10 June",
    also="plant, planted, set out",
    repeats=True,
)

# ---- done, moved, dropped, set aside --------------------------------------------------------
fact(
    "done",
    "{job}, {date:on}, by? {person}",
    blocks=f"{BUILT} bed border garden wall",
    help="A job that is done, in the words of its step, and when.",
    example="done set the posts, 24 April",
    repeats=True,
)
fact(
    "move",
    "{job} to {date:to}, because {reason}",
    blocks=f"{BUILT} bed border garden wall",
    help="A job moved to another day.",
    example="move weave the bar to 2 May",
    also="moved",
    repeats=True,
)
fact(
    "skip",
    "{job} because {reason}, {job}, because {reason}",
    blocks=f"{BUILT} bed border garden wall",
    help="A job that will not be done, and why.",
    example='skip fix the stays because "sheltered corner"',
    repeats=True,
)
fact(
    "ok",
    "by? {person}, {rule} because {reason}, {rule}, because {reason}, at_about {number:times} times, "
    "at {note|warn|stop|ask:level}, until {date:until}, {date:on}",
    blocks=f"{BUILT} {PLACES} garden want task shed yard",
    help="A warning set aside: its name, why, who and when, and how bad it was then.",
    example='ok crowded because "we thin by eating", Nell, 2 March',
    repeats=True,
)

# ---- lines under a shed or a yard -----------------------------------------------------------
ITEM = (
    "{count} of?, {section}, {size}, mesh {length:mesh}, {length}*, {nail}, at {number:price}, "
    "at? {money:price} each?, {gauge}, {number:price}, {stuff}*, {count:packs} "
    "balls/rolls/boxes/packets/bags, {cultivar}, {spot}*"
)
