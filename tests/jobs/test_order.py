"""The order of work of every kind of frame, held against the order the trade builds it in.

The orders are common practice, no source: typed here by hand in words of the steps, apart from the
entries, so that an entry that is put out of order is found out.
"""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.catalogue.reading import entry_names, structure
from plantframe.jobs.job import Before
from plantframe.jobs.order import in_order, without_circles
from plantframe.language.mistakes import Where
from tests.jobs.gardens import BEANS, HEAD, JANUARY, NET, listed, place, the

# Kind: lines of the plan, and words of its steps in the order of the trade. A plant's name stands
# where it is sown or planted.
TRADE = {
    "A-frame": (
        "panels 2 of 3 ft x 5 ft\nfinish oil\nfeet 1 m apart, chained, pegged\ngrow cucumber",
        "square it, oil the panels, staple the net, hinge, chain, carry, peg, cucumber",
    ),
    "animal fence": ("", "end and corner posts, the others, strain a wire, the mesh, the foot"),
    "arch": (
        "finish oil\ngrow sweet pea",
        "ladders, oil, four holes, level with each other, beams, rungs, sweet pea",
    ),
    "brush dome": ("", "push the twigs, bend the tops, weave them"),
    "cane wires": (
        "ends braced\ngrow summer raspberry",
        "end posts, brace or anchor, line posts, run the wires, strain the wires, summer raspberry",
    ),
    "cloche": ("grow lettuce, sow 10 March", "warm it, sow lettuce, set it back"),
    "cold frame": (
        "brace 2x4\nlights 4\ngrow lettuce, sow 10 March",
        (
            "size of the lights, taper, upside down, corners, foot strips, notches, lay the brace, "
            "turn the box, bed it level, lay the lights on"
        ),
    ),
    "corral": ("grow dahlia, plant out 20 May", "drive the stakes, lowest round, next rounds"),
    "crossed row": (
        "grow runner bean",
        "two strings, pair at each end, ridge pole, other pairs, slantwise, runner bean",
    ),
    "espalier row": (
        "ends braced\ngrow apple espalier",
        "end posts, brace or anchor, line posts, run the wires, strain them, apple espalier",
    ),
    "fan trellis": ("grow sweet pea", "pin the ribs, spread them, fix it upright, sweet pea"),
    "fruit cage": ("", "set the posts, cap every post, side net, over between two, hang the door"),
    "fruit sling": ("", "tie a sling"),
    "gate": (
        "",
        "both gateposts, measure, make the gate, hinges on, fit the latch, the fence away",
    ),
    "grape wires": (
        "ends braced",
        "end posts, brace each end post, line posts, run the wires, strain the wires",
    ),
    "hinged lattice": (
        "grow late clematis",
        (
            "paint the wall, foot posts, square it flat, weave the strips, nail, hinges, "
            "raise the panel, fold it down, late clematis"
        ),
    ),
    "hop pole": ("", "look up, dig the hole, walk the pole up, ram, tie the lines"),
    "hot bed": (
        "grow lettuce, sow 10 March",
        "pit, manure, set the frame, sieved soil, lights on, sow lettuce",
    ),
    "kiwi T-bar": ("", "end posts, bolt the arms, run the wires, strain the wires"),
    "lattice": (
        "grow star jasmine",
        "paint the wall, solid fixings, battens level, hold the panel, star jasmine",
    ),
    "low tunnel": ("grow lettuce, sow 10 March", "hoops, sow lettuce, draw the cover, weight"),
    "mesh arch": (
        "grow runner bean",
        "drive the stakes, first foot, bend it over, second foot, tie it, runner bean",
    ),
    "mesh panel": ("grow winter squash", "peg the place, end posts, carry the panel, staple"),
    "mortised fence": (
        "grow climbing rose",
        (
            "mortises, dig the holes, first post, next post loose, the rails into, plumb that, "
            "climbing rose"
        ),
    ),
    "net box": ("", "screw the sticks, staple the net, set it over"),
    "net frame": (
        "bays 2 of 8 ft\nbar 2x2\nfinish oil\nstays 2, square to the row\ngrow tall pea",
        (
            "pencil line, bore, brush the feet, end post with, string from, middle posts, "
            "firm the soil, thread the net, weave the bar, drop in the pins, tie the stay, tall pea"
        ),
    ),
    "obelisk": (
        "finish oil\ngrow sweet pea",
        "two faces up, finial, oil, set the legs, sweet pea",
    ),
    "paired-pole fence": (
        "grow rambler rose",
        "in pairs, lowest spacer, lowest rails, next spacers, top spacers, rambler rose",
    ),
    "pea sticks": ("grow short pea, sow 20 March", "cut twiggy, sow short pea, push the sticks"),
    "pergola": (
        "grow wisteria",
        (
            "lines found, permit, 3-4-5, footings, posts are, beams, rafters are, knee braces are, "
            "run wires, wisteria"
        ),
    ),
    "picket fence": ("", "paint all, set the posts, fix the rails, pickets"),
    "props and stays": ("stays 2, square to the row", "pegs, tie the stay, rag"),
    "raised bed frame": ("grow pole bean", "the bed stands, inside the side, bars, net, pole bean"),
    "ring": ("", "push the legs, draw the ring"),
    "rope pillars": ("grow rambler rose", "pillars, hooks, hang the rope, rambler rose"),
    "row cover": ("grow lettuce, sow 10 March", "sow lettuce, lay it, bury the edges"),
    "shade frame": ("", "set the posts, run a wire, clip the cloth"),
    "slant frame": (
        "feet pegged\ngrow cucumber",
        "join the panel, legs, carry it out, peg the foot",
    ),
    "stake": ("grow tall tomato", "mark each place, drive each stake, plant out tall tomato"),
    "stakes and twine": (
        "grow bush tomato, plant out 25 May",
        "drive a stake, weave the first course, new course",
    ),
    "string drops": (
        "bar 2x2\nbays 2 of 6 ft\ngrow tall tomato",
        (
            "bore, end posts, middle posts, firm the soil, lift the bars, one string a leader, "
            "plant out tall tomato"
        ),
    ),
    "tripod": ("grow runner bean", "lash or bolt, raise them, spread the feet, set each foot"),
    "tub trellis": (
        "grow sweet pea",
        "empty tub, make the frame, fill it, sweet pea",
    ),
    "wall wires": (
        "grow climbing rose",
        "look the wall over, set the eyes, thread the wires, strain each, climbing rose",
    ),
    "wigwam": ("grow runner bean", "circle, push a pole, bind them, runner bean"),
    "windbreak": (
        "stays 4, square to the row",
        "set the posts, stays square, run a wire, hang the net, batten",
    ),
    "wire cage": (
        "grow bush tomato, plant out 25 May",
        "cut the mesh, roll it, plant out bush tomato, set it over, drive the stake",
    ),
    "wooden cage": (
        "finish oil\ngrow tall tomato, plant out 25 May",
        "screw the rails, oil the cage, carry it out, press the feet",
    ),
    "woven hurdle": (
        "grow late clematis",
        "three stakes, stand the hurdles, wire each, late clematis",
    ),
}


def test_every_kind_that_is_known_has_its_order_here() -> None:
    assert set(TRADE) == set(entry_names_as_called())


def entry_names_as_called() -> list[str]:
    found = [structure(name) for name in entry_names("structure")]
    return [one.name for one in found if one is not None]


def plan_of(kind: str, lines: str) -> str:
    entry = structure(kind)
    assert entry is not None
    block = next((word for word in entry.blocks if word not in {"any", "border"}), "frame")
    own = "".join(f"  {line}\n" for line in lines.split("\n") if line)
    return f"{HEAD}{block} Thing, {kind}\n{own}"


@pytest.mark.parametrize("kind", TRADE)
@pytest.mark.parametrize("dates", ["", "  ready by 1 June\n"], ids=["no date", "ready by"])
def test_a_frame_is_built_in_the_order_of_the_trade(kind: str, dates: str) -> None:
    lines, words = TRADE[kind]
    found = listed(plan_of(kind, lines) + dates)
    places = [place(found, one.strip()) for one in words.split(", ")]
    assert places == sorted(places), [job.says for job in found.jobs]
    assert len(set(places)) == len(places)


@pytest.mark.parametrize("kind", TRADE)
def test_the_list_keeps_to_every_entry_by_hand(kind: str) -> None:
    """A second opinion: no job stands before one of those it comes after."""
    found = listed(plan_of(kind, TRADE[kind][0]))
    seen: set[str] = set()
    for job in found.jobs:
        assert set(job.after) <= seen, job.id
        seen.add(job.id)


def test_the_bar_never_goes_before_the_net() -> None:
    found = listed(HEAD + NET + BEANS + "  ready by 15 May\n")
    assert place(found, "thread the net") < place(found, "weave the bar")
    assert "bean-net/net" in the(found, "bean-net/bar").after


def test_rails_go_in_before_the_next_post_is_firmed() -> None:
    found = listed(f"{HEAD}fence Lane Fence, mortised fence\n  posts 4 of 4 in round, 6 ft\n")
    assert place(found, "loose in its hole") < place(found, "enter the rails")
    assert place(found, "enter the rails") < place(found, "plumb that post, ram it firm")


def test_foot_strips_go_on_before_the_box_is_turned() -> None:
    found = listed(f"{HEAD}cover Salad Box, cold frame\n  size 8 ft x 4 ft\n")
    assert place(found, "foot strips") < place(found, "turn the box over")


def test_the_wall_is_painted_before_the_hinges_and_the_vine() -> None:
    found = listed(f"{HEAD}frame Porch Lattice, hinged lattice\n  grow late clematis\n")
    paint = place(found, "paint the wall")
    assert paint < place(found, "hinges") < place(found, "plant late clematis")


def test_frames_stand_before_their_plants() -> None:
    found = listed(HEAD + NET + BEANS)
    assert place(found, "drop in the pins") < place(found, "sow pole bean")


def test_of_two_jobs_of_a_day_the_one_first_in_the_plan_comes_first() -> None:
    plan = f"{HEAD}task oil the spade, on 3 March\ntask count the pots, on 3 March\n"
    assert [job.says for job in listed(plan).jobs] == ["oil the spade", "count the pots"]


def test_the_same_plan_gives_the_same_list() -> None:
    text = HEAD + NET + BEANS + "task mend the gate, by 1 April\n"
    assert listed(text) == listed(text)


# ---- the graph alone --------------------------------------------------------------------------
OWN = Where("a.plan", 7, 1, "step one after two")


def test_a_circle_is_broken_at_the_gardeners_own_line() -> None:
    trade = [Before("net", "bar"), Before("bar", "pins")]
    own = Before("pins", "net", own=OWN)
    kept, left_out = without_circles(["net", "bar", "pins"], [*trade, own])
    assert kept == trade
    assert left_out == [(own, ("net", "bar", "pins"))]


def test_two_circles_are_both_broken() -> None:
    trade = [Before("a", "b"), Before("b", "c")]
    own = [Before("b", "a", own=OWN), Before("c", "b", own=OWN)]
    kept, left_out = without_circles(["a", "b", "c"], [*trade, *own])
    assert kept == trade
    assert {before for before, _ in left_out} == set(own)


def test_of_two_reasons_for_one_order_the_trades_stays() -> None:
    twice = [Before("a", "b", own=OWN), Before("a", "b", wait=(7, 14))]
    kept, _ = without_circles(["a", "b"], twice)
    assert kept == [twice[1]]


def test_what_has_no_day_comes_last_unless_something_waits_for_it() -> None:
    days = {"b": date(2027, 3, 1), "c": date(2027, 2, 1)}
    assert in_order(["a", "b", "c"], [], days) == ["c", "b", "a"]
    assert in_order(["a", "b", "c"], [Before("a", "c")], days) == ["b", "a", "c"]


def test_a_list_without_any_date_keeps_the_order_of_work() -> None:
    found = listed("garden Hazel End, 2027\n" + NET + "  grow pole bean\n", JANUARY)
    assert all(job.planned is None for job in found.jobs)
    assert place(found, "set the middle posts") < place(found, "thread the net")
    assert place(found, "drop in the pins") < place(found, "sow pole bean")
    assert place(found, "sow pole bean") < place(found, "pull the pins")
