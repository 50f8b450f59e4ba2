"""The fixed words entries are written with: matter, dangers, ways of holding and standing."""

from __future__ import annotations

from typing import Final

MATTER: Final = {
    "wood": "sticks, boards, poles, posts",
    "brush": "twiggy branches and rods as cut",
    "cane": "bamboo",
    "steel": "steel posts, rods and tubes",
    "nail": "nails, by penny size",
    "screw": "screws, by length",
    "bolt": "bolts and coach screws",
    "staple": "fencing staples",
    "fitting": "hinges, hooks, eyes, brackets, clips, caps, latches",
    "strainer": "what tightens a wire",
    "net": "net, by width and length",
    "mesh": "stiff welded mesh, by width and length",
    "wire": "wire, by length",
    "twine": "twine and string, by length",
    "rope": "rope and cord, by length",
    "chain": "chain, by length",
    "cloth": "crop fabric, film, shade cloth, by width and length",
    "pane": "glass or twin-wall sheet, by width and length",
    "concrete": "concrete and gravel, by volume",
    "fill": "soil, manure, straw",
    "peg": "pegs, pins and weights on the ground",
    "tub": "a tub or box of soil",
    "strip": "lattice strip and lath",
}

DANGERS: Final = {
    "services": "buried pipes and cables",
    "overhead": "lines overhead",
    "cutting": "saws, axes, chisels, drills",
    "ends": "sharp ends of wire and mesh",
    "whip": "a bent panel, rod or strained wire that flies back",
    "eyes": "tips and ends at the height of a face",
    "ladder": "work off the ground",
    "lifting": "weight for one pair of hands",
    "falling": "something that can come down on somebody",
    "pinch": "fingers between two parts",
    "glass": "glass edges and panes underfoot",
    "heat": "a closed cover in the sun",
    "trip": "stays, pegs and pots at shin height",
    "wind": "a sail that goes over or flies off",
    "wildlife": "birds and animals in nets",
    "children": "what invites climbing",
    "poison": "preservatives, treated or tarred wood, poisonous plants",
    "dust": "dust of stone, mortar and cement",
    "snow": "snow on a net or a cover",
    "thorns": "thorns",
    "house": "what is fixed to a building",
}

HELD: Final = ("alone", "braces itself", "elsewhere", "wall", "ground")
LOADS: Final = ("light", "lasting")
RUNS: Final = ("up", "across", "both")
CARRIED_BY: Final = ("bar", "wire", "mesh", "none")
PLACES_OF_WORK: Final = ("bench", "there", "yard", "wood")
VIEWS: Final = ("front", "side", "top")
DRAWN_AS: Final = ("line", "area", "arc")
BLOCKS: Final = ("frame", "line", "cover", "fence", "border", "any")

# Words of the plan that mean the uprights, whatever a structure calls them; and other words for
# one and the same fact. A sum knows the first word only.
SAME_FACT: Final = {
    "post": "posts",
    "poles": "posts",
    "pole": "posts",
    "stakes": "posts",
    "stake": "posts",
    "canes": "posts",
    "cane": "posts",
    "legs": "posts",
    "uprights": "posts",
    "bars": "bar",
    "ridge": "bar",
    "ridge pole": "bar",
    "rail": "rails",
    "wire": "wires",
    "string": "strings",
    "panel": "panels",
    "hook": "hooks",
    "hinge": "hinges",
    "hoop": "hoops",
    "strip": "strips",
    "braces": "brace",
    "light": "lights",
    "pin": "pins",
    "props": "prop",
    "stay": "stays",
}
