"""What is said of a slip: which line and place, the line as typed, and what to type instead."""

from __future__ import annotations

import re
from datetime import date
from typing import NamedTuple

import pytest

from plantframe.language.edits import Edit, LineChange
from plantframe.language.files import read_input
from plantframe.language.mistakes import LEVELS, UNREAD, WORDS, Mistake, Where
from plantframe.plan.building import build
from tests.language.reading import edited

TODAY = date(2027, 3, 1)
GARDEN = """\
garden Quarry Row, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
bed Long Bed, 4 ft x 24 ft
  had pea in 2025
wall House Wall, faces east, shingles
"""
NET = f"{GARDEN}frame Bean Net, net frame, in Long Bed\n"


class Case(NamedTuple):
    """A slip: its name, the text it stands in, where, parts of what is said, and cures."""

    name: str
    text: str
    line: int
    column: int
    says: tuple[str, ...]
    cures: tuple[str | None, ...] = ()


CASES = [
    # ---- the table of mistakes --------------------------------------------------------------
    Case(
        "no-unit",
        f"{NET}  posts 2x2, 8 ft, down 18\n",
        8,
        20,
        ("18 what, in or ft?", "feet and inches, so inches is likely", "Not used until you say."),
        ("  posts 2x2, 8 ft, down 18 in", "  posts 2x2, 8 ft, down 18 ft"),
    ),
    Case(
        "no-such-place",
        f"{GARDEN}frame Bean Net, net frame, in Lond Bed\n",
        7,
        28,
        ("no bed “Lond Bed”.", "Nearest: Long Bed (line 4)"),
        ("frame Bean Net, net frame, in Long Bed",),
    ),
    Case(
        "unknown-plant",
        f"{NET}  grow runer bean, 30 plants\n",
        8,
        8,
        ("no plant “runer bean”", "Nearest: runner bean", "?"),
        ("  grow runner bean, 30 plants",),
    ),
    Case(
        "no-block",
        "  bays 2 of 8 ft\n",
        1,
        3,
        ("“bays 2 of 8 ft” belongs to something", "`frame Name, kind`"),
    ),
    Case(
        "same-name",
        f"{NET}cover Long Bed, cold frame\n",
        8,
        1,
        ("“Long Bed”", "the bed on line 4", "the cover on line 8", "Rename one"),
        ("cover Long Bed 2, cold frame",),
    ),
    Case(
        "impossible-date",
        f"{NET}  grow pole bean, sow 31 June\n",
        8,
        23,
        ("“31 June”", "June has 30 days."),
        ("  grow pole bean, sow 30 June",),
    ),
    Case(
        "a-year-off",
        f"{NET}  grow pole bean, sow 18 May 2026\n",
        8,
        23,
        ("last year", "a plan of 2027", "18 May 2027?"),
        ("  grow pole bean, sow 18 May 2027",),
    ),
    Case(
        "same-fact-twice",
        f"{NET}  bar 2x2\n  bays 1 of 8 ft\n  bar 2x4\n",
        10,
        3,
        ("Bean Net has “bar” twice: line 8 and line 10", "Keep one"),
        (None, None),
    ),
    Case(
        "like-what",
        f"{GARDEN}variety Ida Bean\n  height 2 m\n",
        7,
        1,
        ("which plant of the catalogue is Ida Bean like?", ", like runner bean", "Not used"),
    ),
    Case(
        "backwards",
        f"{GARDEN}variety Ida Bean, like runner bean\n  height 3 to 2 m\n",
        8,
        3,
        ("“height 3 to 2 m”: the larger figure stands first.", "Not used."),
    ),
    Case(
        "no-frost-to-count-from",
        "garden Quarry Row, 2027\nvariety Ida Bean, like runner bean\n  sow 20 May\n",
        3,
        3,
        ("“sow 20 May” is kept by how far it lies from the last frost", "frost last …"),
    ),
    Case(
        "no-reason",
        f"{NET}  ok too-heavy\n",
        8,
        3,
        ("why is too-heavy all right here?", "because …", "so that you know in August"),
    ),
    Case(
        "unknown-word",
        f"{NET}  bears 2x2\n",
        8,
        3,
        ("“bears 2x2”", "Kept, not used.", "Nearest: beams", "?"),
        ("  beams 2x2",),
    ),
    Case(
        "decimal-comma",
        f"{NET}  posts 45x45 mm, 2,4 m\n",
        8,
        19,
        ("“2,4 m” is read as 2.4 m.",),
    ),
    Case(
        "two-readings",
        f"{NET}  posts 45x45 mm, 1.200 m\n",
        8,
        19,
        ("“1.200 m”", "`1.2 m` or `1200 m`?", "Not used until you say."),
        ("  posts 45x45 mm, 1.2 m",),
    ),
    Case(
        "two-readings",
        f"{NET}  posts 45x45 mm, 1.955 m\n",
        8,
        19,
        ("“1.955 m”", "`1955 mm` or `1955 m`?"),
        ("  posts 45x45 mm, 1955 mm",),
    ),
    Case(
        "two-readings",
        f"{NET}  posts 45x45 mm, 1,250 mm\n",
        8,
        19,
        ("“1,250 mm”", "`1250 mm` or `1.25 mm`?"),
        ("  posts 45x45 mm, 1250 mm",),
    ),
    Case(
        "no-place",
        "garden Quarry Row, 2027\nframe Bean Net, net frame\n  grow pole bean, sow 18 May\n",
        1,
        1,
        ("where is this garden?", "place 52.1 N", "frost", "All the rest is answered."),
    ),
    Case(
        "merge-marks",
        f"{NET}<<<<<<< ours\n  bar 2x2\n=======\n  bar 2x4\n>>>>>>> theirs\n  bays 2 of 8 ft\n",
        8,
        1,
        ("lines 8 to 12", "Both are kept, unread"),
    ),
    # ---- words and heads --------------------------------------------------------------------
    Case(
        "unknown-block",
        f"{GARDEN}fram Bean Net, net frame\n  bar 2x2\n",
        7,
        1,
        ("does not begin with “fram”", "Nearest: frame", "The line under it is kept, not used."),
        ("frame Bean Net, net frame",),
    ),
    Case(
        "not-indented",
        f"{NET}bar 2x2\n",
        8,
        1,
        ("“bar” belongs under a block", "two spaces"),
        ("  bar 2x2",),
    ),
    Case(
        "not-a-remark",
        f"{NET}  # the old bar\n",
        8,
        3,
        ("“#” opens no remark", "`(the old bar)`"),
        ("  (the old bar)",),
    ),
    Case(
        "no-name",
        f"{GARDEN}frame\n  bar 2x2\n  bays 2 of 8 ft\n",
        7,
        1,
        ("this frame has no name", "`frame Bean Net, net frame", "The 2 lines under it are kept"),
    ),
    Case(
        "elsewhere",
        f"{NET}  eaves 3 m\n",
        8,
        3,
        ("“eaves” stands under `wall`, `house`", "not under a frame", "?"),
    ),
    Case(
        "nothing-after",
        f"{NET}  grow\n",
        8,
        3,
        ("grow what?", "Such as: `grow pole bean"),
    ),
    Case(
        "which-day",
        f"{NET}  ready by Founders' Day\n",
        8,
        12,
        ("“Founders' Day”: which day is that?", "`18 May`"),
    ),
    # ---- figures ----------------------------------------------------------------------------
    Case(
        "which-length",
        f"{NET}  posts 2x2, 8 ft, 18 in\n",
        8,
        20,
        ("18 in of what: `18 in down`, `18 in up`", "?", "Not used until you say."),
        ("  posts 2x2, 8 ft, 18 in down", "  posts 2x2, 8 ft, 18 in up"),
    ),
    Case(
        "below-nothing",
        f"{NET}  bays -2 of 8 ft\n",
        8,
        8,
        ("“-2” is less than nothing", "is 2 meant?", "Not used."),
        ("  bays 2 of 8 ft",),
    ),
    Case(
        "below-nothing",
        f"{NET}  posts 2x2, 8 ft, \u221218 in down\n",
        8,
        20,
        ("“\u221218 in” is less than nothing", "is 18 in meant?"),
        ("  posts 2x2, 8 ft, 18 in down",),
    ),
    Case(
        "run-together",
        f"{NET}  poles 1e9\n",
        8,
        9,
        ("“1e9” is a figure run together with letters", "which is meant?", "Not used."),
    ),
    Case(
        "third-is-length",
        f"{NET}  bar 2x4x8\n",
        8,
        7,
        ("“2x4x8” is read as 2x4, 8 ft long.",),
    ),
    Case(
        "count-or-size",
        f"{NET}  bar 4 x 2x4\n",
        8,
        7,
        ("“4 x 2x4”", "4 of 2x4, or a stick of three sizes?"),
        ("  bar 4 of 2x4",),
    ),
    Case(
        "inches-or-in",
        f"{NET}  grow cucumber, 5 in Long Bed\n",
        8,
        18,
        ("5 inches, or 5 plants in “Long Bed”?", "`5 plants, in Long Bed`"),
        ("  grow cucumber, 5 plants, in Long Bed",),
    ),
    Case(
        "unlikely-size",
        f"{NET}  posts 2x2, 80 ft\n",
        8,
        14,
        ("80 ft for posts: is that so?", "is usual"),
    ),
    Case(
        "which-are-ends",
        f"{NET}  posts 2 of 4x4, 8 ft\n  posts 3 of 2x2, 8 ft\n",
        8,
        3,
        ("“posts 2 of 4x4, 8 ft” is read as the end posts",),
        ("  end posts 2 of 4x4, 8 ft",),
    ),
    # ---- names ------------------------------------------------------------------------------
    Case(
        "two-things-in-a-name",
        f"{GARDEN}frame Clematis Lattice on House Wall\n",
        7,
        1,
        ("is the name “Clematis Lattice on House Wall”", "“Clematis Lattice” on House Wall?"),
        ("frame Clematis Lattice, on House Wall",),
    ),
    Case(
        "unknown-kind",
        f"{GARDEN}frame Bean Net, net fram, in Long Bed\n",
        7,
        17,
        ("no frame called “net fram”", "Nearest: net frame", "own design", "?"),
        ("frame Bean Net, net frame, in Long Bed",),
    ),
    Case(
        "no-kind",
        f"{GARDEN}frame Old Lattice Thing, in Long Bed\n  bar 2x2\n",
        7,
        1,
        ("what kind of frame is Old Lattice Thing?", "Nearest: lattice"),
        ("frame Old Lattice Thing, lattice, in Long Bed",),
    ),
    Case(
        "kind-by-name",
        f"{GARDEN}cover Cold Frame\n",
        7,
        1,
        ("Cold Frame is taken for a cold frame, by its name.",),
    ),
    Case(
        "indented-head",
        f"{GARDEN}  frame Bean Net, net frame, in Long Bed\n",
        7,
        1,
        ("`frame` opens a block", "at the margin", "Read as if it did."),
        ("frame Bean Net, net frame, in Long Bed",),
    ),
    Case(
        "no-unit",
        f"{GARDEN}frame Bean Net, net frame, in Long Bed\n  posts 75 x 75, 2.4 m, 45 cm down\n",
        8,
        9,
        ("75 x 75 what, mm?",),
        ("  posts 75 x 75 mm, 2.4 m, 45 cm down",),
    ),
    Case(
        "no-unit",
        f"{GARDEN}bed South Patch 4x8\n",
        7,
        17,
        ("4x8 what, ft or in?", "in feet and inches", "Not used until you say."),
        ("bed South Patch 4x8 ft", "bed South Patch 4x8 in"),
    ),
    Case(
        "no-unit",
        "garden Quarry Row, 2027\n  frost none\nbed East Patch, 1.2 by 7.5\n",
        3,
        17,
        ("1.2 by 7.5 what, ft or m?",),
        ("bed East Patch, 1.2 by 7.5 ft", "bed East Patch, 1.2 by 7.5 m"),
    ),
    Case(
        "plant-alone",
        f"{NET}  runner bean 'Sky High', 8 plants\n",
        8,
        3,
        ("“runner bean” is a plant", "type `grow` before it", "this frame"),
        ("  grow runner bean 'Sky High', 8 plants",),
    ),
    Case(
        "two-gardens",
        f"{GARDEN}Garden beds:\nbed Low Bed\n",
        7,
        1,
        ("a plan is of one garden", "“beds” is read as more of “Quarry Row”", "into brackets"),
    ),
    Case(
        "two-plants",
        f"{NET}  grow runner bean, sweet pea\n",
        8,
        21,
        ("one plant to a line", "“sweet pea” is kept, not used"),
        ("  grow runner bean",),
    ),
    Case(
        "which-plant",
        f"{GARDEN}want bean\n",
        7,
        6,
        ("which “bean”:", "?"),
        ("want broad bean", "want bush bean"),
    ),
    Case(
        "which-wall",
        f"{GARDEN}wall West Wall\n",
        7,
        1,
        ("the wall on the west side, or the one that faces west?", "`faces west`"),
        ("wall West Wall, faces west", "wall West Wall, on the west side"),
    ),
    Case(
        "no-plant",
        f"{GARDEN}frame Bean Net, net frame\n  sow 1 June\n",
        8,
        3,
        ("“sow 1 June”: of what?", "`grow …`"),
    ),
    Case(
        "no-year",
        f"{GARDEN}bed Low Bed\n  had beans\n",
        8,
        3,
        ("“had beans”: in which year?",),
        ("  had beans in 2026",),
    ),
    # ---- dates ------------------------------------------------------------------------------
    Case(
        "which-month",
        f"{GARDEN}log 5/6, first beans\n",
        7,
        5,
        ("“5/6”: which is the month?", "`5 June` or `6 May`"),
        ("log 5 June, first beans", "log 6 May, first beans"),
    ),
    Case(
        "no-log-date",
        f"{GARDEN}log first beans\n",
        7,
        1,
        ("“first beans”: on which day?", "`log 2 August"),
    ),
    Case(
        "no-garden",
        "bed Long Bed\n",
        1,
        1,
        ("no line `garden Name, year`", "which season is this plan for?", "I take 2027"),
    ),
    Case(
        "no-garden",
        "garden Quarry Row\nbed Long Bed\n",
        1,
        1,
        ("the garden has no year", "`garden Quarry Row, 2027`"),
    ),
]
# Tested with the files they need, or said by other rooms.
ELSEWHERE = {
    *("bad-byte", "line-too-long", "file-too-large"),
    *("read-missing", "read-unread", "read-climbs", "read-cycle", "read-too-deep"),
    *("unknown-rule", "nothing-to-set-aside", "not-set-aside", "no-such-job", "matched-job"),
}


def mistakes(text: str) -> list[Mistake]:
    """Every slip of a text, of reading and of building."""
    reading = read_input(text)
    _, built = build(reading, TODAY)
    return [*reading.mistakes, *built]


def named(text: str, name: str) -> list[Mistake]:
    """The slips of one name."""
    return [slip for slip in mistakes(text) if slip.name == name]


def ids(case: Case) -> str:
    """A case by its slip and line."""
    return f"{case.name}: {case.text.rstrip().split(chr(10))[-1].strip()}"


@pytest.mark.parametrize("case", CASES, ids=ids)
def test_a_slip_names_its_line_and_says_what_to_type(case: Case) -> None:
    (slip,) = named(case.text, case.name)
    lines = case.text.split("\n")
    assert slip.where.file == "standard input"
    assert (slip.where.line, slip.where.column) == (case.line, case.column)
    assert slip.where.typed == lines[case.line - 1]
    for part in case.says:
        assert part in slip.says
    news = [change.new for edit in slip.candidates for change in edit.changes]
    assert news[: len(case.cures)] == list(case.cures)


@pytest.mark.parametrize("case", CASES, ids=ids)
def test_one_slip_is_said_once_and_draws_no_other_stop(case: Case) -> None:
    others = [slip for slip in mistakes(case.text) if slip.name != case.name]
    assert not [slip.says for slip in others if slip.level == "stop"]


@pytest.mark.parametrize("case", [case for case in CASES if case.cures], ids=ids)
def test_every_cure_takes_its_slip_away_and_brings_no_worse(case: Case) -> None:
    (slip,) = named(case.text, case.name)
    before = {other.name for other in mistakes(case.text)}
    texts = {"standard input": case.text}
    for edit in slip.candidates:
        fresh = cured(texts, edit)
        assert not named(fresh, case.name), edit.says
        worse = [other for other in mistakes(fresh) if other.name not in before]
        assert not [other.says for other in worse if other.level == "stop"]


def cured(texts: dict[str, str], edit: Edit) -> str:
    """The text with an edit made, wherever it was read from."""
    changes = tuple(
        LineChange("garden.plan", change.line, change.old, change.new) for change in edit.changes
    )
    return edited(texts["standard input"], Edit(edit.says, changes))


def test_every_slip_has_a_case_of_its_own() -> None:
    assert {case.name for case in CASES} | ELSEWHERE == set(WORDS)


@pytest.mark.parametrize("name", sorted(WORDS))
def test_only_a_question_ends_in_a_question_mark(name: str) -> None:
    for case in CASES:
        if case.name == name:
            (slip,) = named(case.text, name)
            if "?" in slip.says:
                assert LEVELS[name] == "ask"
    assert LEVELS[name] in {"stop", "ask", "note"}


@pytest.mark.parametrize("case", CASES, ids=ids)
def test_at_most_four_near_names_are_shown(case: Case) -> None:
    for slip in mistakes(case.text):
        assert len([one for one in slip.told.get("near", "").split(",") if one]) <= 4


# A gardener's words only.
PROGRAMMER = re.compile(
    r"\b(token|pars\w*|syntax|invalid|error|null|none type|string|integer|float|boolean|array|"
    r"index|exception|traceback|identifier|argument|parameter|unicode|utf|encoding|regex)\b",
    re.IGNORECASE,
)


@pytest.mark.parametrize("case", CASES, ids=ids)
def test_what_is_said_is_in_plain_words(case: Case) -> None:
    for slip in mistakes(case.text):
        assert not PROGRAMMER.search(slip.says)
        assert slip.says.rstrip("`)”").endswith((".", "?"))
        assert "{" not in slip.says


def test_a_slip_of_a_whole_line_is_told_from_one_of_a_part() -> None:
    whole = named(f"{GARDEN}fram Bean Net, net frame\n", "unknown-block")
    part = named(f"{NET}  posts 2x2, 8 ft, down 18\n", "no-unit")
    assert whole[0].unread
    assert not part[0].unread
    assert set(WORDS) >= UNREAD


def test_a_slip_is_data_until_it_is_worded() -> None:
    slip = Mistake("no-unit", Where("a.plan", 3), {"figure": "18", "units": "in or cm"})
    assert slip.says == "18 what, in or cm? Not used until you say."
    assert slip.level == "ask"


@pytest.mark.parametrize(
    "line",
    [
        *("bays -2", "poles -6", "spacing -6 in", "wires at -3 ft, 5 ft", "bays 2 of -8 ft"),
        *("posts 2x2, -8 ft", "bar 2x2, -3 of 8 ft", "posts -4 of 2x2", "stays \u20132"),
        *("net -6 ft x 16 ft", "net mesh -6 in", "grow pole bean, -30 plants", "-2 bays"),
        *("posts 2x2, 8 ft, down -18 in", "high -6 ft", "stays up -15 years"),
        *("grow pole bean, -6 in apart", "carried by -2 people", "rails -2 to 3 ft apart"),
    ],
)
def test_no_figure_below_nothing_is_read_as_one_above(line: str) -> None:
    found = {one.name for one in mistakes(f"{NET}  {line}\n")}
    assert found & {"below-nothing", "unknown-word"}
    slots = [slot for block in read_input(f"{NET}  {line}\n").blocks for slot in block.facts]
    assert not [one for one in slots if one.where.line == 8 and one.whole]


@pytest.mark.parametrize(
    "line",
    [
        *(
            "posts - 4 of 2x2",
            "bar 4 of 2x4s",
            "bays 2 of 8-ft",
            "spacing 6-8 in",
            "bar 2x4 – 8 ft",
        ),
        *("grow pole bean, 6 in - 8 in apart", "posts 4 of 2x2 - 8 ft", "posts 4off 2x2"),
        *("string 3ply", "wires 3, 10ga", "film 6mil"),
    ],
)
def test_a_dash_is_no_minus_and_an_ending_no_slip(line: str) -> None:
    found = {one.name for one in mistakes(f"{NET}  {line}\n")}
    assert not found & {"below-nothing", "run-together"}


def test_a_shed_holds_no_fewer_than_none() -> None:
    assert named(f"{GARDEN}shed\n  -4 posts 45x45 mm, 2.4 m\n", "below-nothing")
    assert not named(f"{GARDEN}shed\n  - 4 posts 45x45 mm, 2.4 m\n  3M tape, 2pk\n", "run-together")


def test_a_garden_west_of_greenwich_or_in_frost_may_have_a_minus() -> None:
    text = GARDEN.replace("52.1 N, 1.4 W", "-33.9, 151.2")
    assert not named(text, "below-nothing")


def test_all_slips_of_a_plan_are_said_in_one_run() -> None:
    text = (
        f"{GARDEN}frame Bean Net, net fram, in Lond Bed\n"
        "  posts 2x2, 8 ft, down 18\n"
        "  bar 4 x 2x4\n"
        "  grow runer bean, sow 31 June\n"
        "  bears 2x2\n"
    )
    assert {slip.name for slip in mistakes(text)} == {
        *("unknown-kind", "no-such-place", "no-unit", "count-or-size"),
        *("unknown-plant", "impossible-date", "unknown-word"),
    }
