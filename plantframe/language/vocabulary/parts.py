"""The parts of frames, lines, covers and fences: posts, bars, nets, wires, glass."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, fact

LANGUAGE.topic = "Parts of frames, lines, covers and fences"

_POST = (
    "{count} of?, {count} in_all, {section}, {length} long?, "
    "{length:down} down/deep/in/buried/in_the_ground/in_ground/in_the_soil, "
    "down/deep/buried/sunk/in/pushed_in/driven_in/knocked_in {length:down}, "
    "{length:up} up/standing/high/above/tall/clear/out_of_the_ground/above_ground/"
    "above_the_ground, up/standing {length:up}, "
    "{length:up} to_the_wire/to_the_top_wire/to_the_rail, "
    "{length:apart} apart/centres/centers, every/each {length:apart}, "
    "in {concrete|sleeves|pipes|spikes:set}, "
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
    also="post, uprights, upright, legs, leg, pillars, pillar, gateposts, gatepost, foot posts, "
    "foot post",
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
    also="pole, canes, cane, pairs of poles, pair of poles, sticks, stick, twigs, twig",
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
    "{count} of?, {section}, {length} long?, "
    "{halved|lapped|overlapped|overlapping|side by side|butted:joint}, "
    "{flat|on the flat|on edge:lie}, {length:up} up/high, at {length:up}, {none:none}, "
    "{along the tops|all round:where}, {stuff:wood}*"
)
fact(
    "bar",
    _STICK,
    blocks=BUILT,
    help="The bar along the top: how thick, and whether two bars are halved where they meet.",
    example="bar 2x4, on edge",
    also="bars, top bar, ridge, ridge pole, ridge cane, cane along the top",
)
fact(
    "rails",
    "{count} of?, {section}, {length} long?, at {length:heights}*, {length:apart} apart, "
    "every/each {length:apart}, "
    "{halved|lapped|overlapped|overlapping|side by side|butted:joint}, "
    "{flat|on the flat|on edge:lie}, "
    "{along the tops|all round:where}, {stuff:wood}*",
    blocks=BUILT,
    help="The rails: how many, how thick, how long.",
    example="rails 2 of 75 mm round, 2.7 m",
    also="rail, rungs, rung, battens, batten, cross laths, cross lath, laths, lath, panel sticks, "
    "frame sticks",
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
    "{count} of?, {size}, {length:high} high/tall, {length:up} up, {length:wide} wide, "
    "{length:long} long, "
    "mesh {length:mesh}, {length:mesh} mesh/squares, "
    "from/starts/starting/starts_at/starting_at/starts_from {length:start} up?, "
    "{length:buried} buried, {count:widths} widths tied?, "
    "{tied|taut|loose|loosely|draped|thrown over|laid over:hung}*, or_less, "
    "{stuff:made}*",
    blocks=BUILT,
    help="The net: height by length, its mesh, and whether two widths are tied into one.",
    example="net 6 ft 6 in x 16 ft, mesh 15 cm, two widths tied",
    also="netting",
    alone=True,
)
fact(
    "mesh",
    "{length} squares?, or_less, {size}, {length:high} high/tall, {length:up} up, "
    "{length:buried} buried, "
    "{sides and roof|sides|roof:where}, "
    "{tied|taut|loose|loosely|draped|thrown over|laid over:hung}*, {stuff:made}*",
    blocks=BUILT,
    help="How wide the openings are.",
    example="mesh 15 cm",
)
fact(
    "wires",
    "{count} of?, at? {length:heights}*, {gauge} wire?, {strained|hand tight|tight|slack:strain}, "
    "tension? {pull}, of {length:thick}, {length:thick} thick, {length:apart} apart, every/each "
    "{length:apart}, from {length:start}, {stuff:made}*",
    blocks=BUILT,
    help="The wires: how many, at what heights, and how tight.",
    example="wires 3, at 45 cm, 90 cm and 150 cm, strained",
    also="wire",
    repeats=True,
    alone=True,
)
fact(
    "strings",
    "{count} of?, {length:apart} apart, every/each {length:apart}, at {length:heights}*, "
    "then_every {length:apart}, {a plant|each plant|every plant|one a plant:share}, "
    "{length} long?, {stuff:made}*",
    blocks=BUILT,
    help="Strings for plants to climb, and what they are made of.",
    example="strings, one a plant",
    also="string, twine",
    alone=True,
)
fact(
    "circle",
    "{length} across?/wide?",
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
    "{length:across} across, {length:wide} wide",
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
    "{count} of?, {size}, {length:long} long?, {length:high} high, {length:wide} wide, "
    "mesh {length:mesh}, {bent|bent in the middle|arched:shaped}, {stuff:made}*",
    blocks=BUILT,
    help="The panels: how many and how large.",
    example="panels 2 of 3 ft x 5 ft",
    also="panel, hurdles, hurdle",
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
    "{none:none}, {section}, new? {date:since}, "
    "new? {spring|summer|autumn|winter:season} {year}, new? {year}, "
    "{length:apart} apart, every/each {length:apart}, {stuff:made}*, {length} of?, {count} of?",
    blocks=BUILT,
    help="The strips: of a lattice, or those under a box, and when they were put on.",
    example="strips new spring 2021",
    also="strip, foot strips, lattice strip, lattice strips, slats, ribs, rib",
    alone=True,
)
fact(
    "lights",
    "{count} of?, {size}, {length:wide} wide, {length:long} long, {length:wide} each?, "
    "{length:gap} between/bars_between, {overlapping:laid}, "
    "{length:thick} {glass|toughened glass|twin-wall|twin wall|plastic:glazing}, "
    "{length:thick} thick, "
    "slot {length:slot}, {length:slot} slot, {length:play} to_grow, "
    "{ridges down|ridges across|ridges crosswise:ridges}, "
    "{open at the low end|bar across the low end|bar along the low end|bar all round:end}, "
    "{strapped|hooked down|tied down|weighted|loose:held}, {stuff:glazing}*",
    blocks=BUILT,
    help="The lights of a cold frame: how many, how wide, glazed with what; the slot the sheet "
    "slides into, and how the lights are held against the wind.",
    example="lights 4 of 24 in x 4 ft, glass",
    also="light, sashes, sash",
)
_SIDE = "{cut:section}, {length:high} high?/tall?, {length:thick} thick, {stuff:wood}*"
fact(
    "back",
    _SIDE,
    blocks=BUILT,
    help="The high side of a cold frame.",
    example="back 2x12",
    also="back board, high side",
)
fact(
    "front",
    f"{_SIDE}, {{length:boards}} boards",
    blocks=BUILT,
    help="The low side of a cold frame.",
    example="front 2x8",
    also="front board",
)
fact(
    "brace",
    "{count} of?, {section}, {length} long?, every/each {length:apart}, {none:none}, {text}",
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
    "{none:none}, {count} of?, {square to the row|square|in line with the row|in line|"
    "at the ends|both ways:which}*, {length:up} up/high, at {length:up}, {length:out} out, "
    "{stuff:made}*",
    blocks=BUILT,
    help="Stays: square to the row against wind, in line against the row's own pull.",
    example="stays 2, square to the row",
    also="stay, guys",
    alone=True,
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
    "{count} of?, {nail}, {length} long?, {length:end} from_the_end/from_the_ends/from_each_end, "
    "{text}",
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
    also="screw",
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
    "path",
    "{length} wide?",
    blocks=BUILT,
    help="How wide the path under it is.",
    example="path 1.2 m",
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
    also="pegged, peg",
)
fact(
    "hoops",
    "{count} of?, {length} long?, rod {length}, {length:up} up/high, {length:wide} wide, "
    "{length:down} down, {length:apart} apart/centres/centers, every/each {length:apart}, "
    "{stuff:made}*",
    blocks=BUILT,
    help="The hoops of a tunnel.",
    example="hoops 6, 60 cm high, 1.2 m wide",
    also="hoop",
)
fact(
    "fabric",
    "{size}, {length:wide} wide, {length} long?, "
    "{stapled|weighted|buried|edges weighted|edges buried:held}*, {stuff:made}*",
    blocks=BUILT,
    help="The fabric, film or cloth over it.",
    example="fabric 2.5 m wide, weighted",
    also="film, fleece, polythene, cloth, shade cloth, sheet, cover fabric, cover film, cover",
    alone=True,
)
fact(
    "sides",
    "{length} deep?, {text}",
    blocks=BUILT,
    help="Anything about its sides.",
    example="sides of netting",
)
fact(
    "roof",
    "{length:up} up/high, {text}*",
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
    also="pieces",
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
