"""Slips in the text of a plan: what each is called, how grave it is, and how it is put in words.

A mistake is data: its name, its place and what was found there. `WORDS` holds the one function
that words each name; nothing else in the program writes a sentence about the text.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from plantframe.language.edits import Edit

Told = Mapping[str, str]


@frozen
class Where:
    """A place in the plan: file, line and column (both from 1), and the line as typed."""

    file: str
    line: int
    column: int = 1
    typed: str = ""


@frozen
class Mistake:
    """A slip, as data. `candidates` are edits that may cure it; they are tried before shown."""

    name: str
    where: Where
    told: Told = MappingProxyType({})
    candidates: tuple[Edit, ...] = ()

    @property
    def level(self) -> str:
        """stop, ask or note."""
        return LEVELS[self.name]

    @property
    def says(self) -> str:
        """The slip in words."""
        return WORDS[self.name](self.told)

    @property
    def unread(self) -> bool:
        """A whole line could not be used."""
        return self.name in UNREAD


LEVELS: dict[str, str] = {}
WORDS: dict[str, Callable[[Told], str]] = {}
UNREAD: set[str] = set()


def _kind(
    name: str, level: str, *, unread: bool = False
) -> Callable[[Callable[[Told], str]], Callable[[Told], str]]:
    def keep(words: Callable[[Told], str]) -> Callable[[Told], str]:
        LEVELS[name] = level
        WORDS[name] = words
        if unread:
            UNREAD.add(name)
        return words

    return keep


def _a(noun: str) -> str:
    return f"an {noun}" if noun[:1].lower() in "aeiou" else f"a {noun}"


def _nearest(told: Told) -> str:
    return f" Nearest: {told['near']}." if told.get("near") else ""


def _kept(told: Told) -> str:
    """What becomes of the lines under a head that means nothing."""
    if not (lines := told.get("lines")):
        return " Kept, not used."
    return f" The {lines} under it {'is' if lines == 'line' else 'are'} kept, not used."


# ---- lines nobody can read ------------------------------------------------------------------
@_kind("merge-marks", "stop", unread=True)
def _merge_marks(told: Told) -> str:
    return (
        f"lines {told['first']} to {told['last']} hold two versions with the marks of a merge that "
        "was not finished. Both are kept, unread: take out the marks and the version you "
        "don't want."
    )


@_kind("bad-byte", "stop", unread=True)
def _bad_byte(told: Told) -> str:
    return (
        f"this line holds something that is not text (sign {told['place']}). "
        "Type it again; the rest of the file is read."
    )


@_kind("line-too-long", "stop", unread=True)
def _line_too_long(told: Told) -> str:
    return (
        f"this line has {told['length']}; {told['cap']} is the most I read. Break it into several."
    )


@_kind("file-too-large", "stop", unread=True)
def _file_too_large(told: Told) -> str:
    return (
        f"{told['file']} holds {told['size']}; {told['cap']} is the most I read. "
        "Split it, and bring the parts in with `read`."
    )


@_kind("no-block", "stop", unread=True)
def _no_block(told: Told) -> str:
    return (
        f"“{told['text']}” belongs to something: start a line such as `frame Name, kind` above it."
    )


@_kind("not-indented", "stop", unread=True)
def _not_indented(told: Told) -> str:
    return (
        f"“{told['word']}” belongs under a block: put two spaces before it. Not used until you do."
    )


@_kind("indented-head", "note")
def _indented_head(told: Told) -> str:
    return f"`{told['word']}` opens a block: it stands at the margin. Read as if it did."


@_kind("unknown-block", "stop", unread=True)
def _unknown_block(told: Told) -> str:
    kind = ""
    if told.get("kind"):
        kind = f" It is a kind of frame: type `{told['opener']}` and a name before it."
    return f"a line does not begin with “{told['word']}”.{_nearest(told)}{kind}{_kept(told)}"


@_kind("not-a-remark", "stop", unread=True)
def _not_a_remark(told: Told) -> str:
    return (
        f"“{told['sign']}” opens no remark; a remark stands in round brackets: `{told['write']}`. "
        "Kept, not used."
    )


@_kind("no-name", "stop", unread=True)
def _no_name(told: Told) -> str:
    such = f"Type one after the word: `{told['example']}`."
    return f"this {told['word']} has no name. {such}{_kept(told)}"


@_kind("read-missing", "stop", unread=True)
def _read_missing(told: Told) -> str:
    return f"there is no plan “{told['name']}” beside this one.{_nearest(told)}"


@_kind("read-unread", "stop", unread=True)
def _read_unread(told: Told) -> str:
    return told["says"]


@_kind("read-climbs", "stop", unread=True)
def _read_climbs(told: Told) -> str:
    return f"“{told['name']}” lies outside {told['root']}; `read` stays inside."


@_kind("read-cycle", "stop", unread=True)
def _read_cycle(told: Told) -> str:
    return f"these plans read each other in a circle: {told['circle']}. It was read once."


@_kind("read-too-deep", "stop", unread=True)
def _read_deep(told: Told) -> str:
    return f"plans that read plans go {told['cap']} deep at most; this one is not read."


# ---- words and figures ------------------------------------------------------------------------
@_kind("unknown-word", "ask")
def _unknown_word(told: Told) -> str:
    such = f" Such as: `{told['example']}`." if told.get("example") else ""
    if told.get("opens"):
        things = f", with a thing to a line under it: `{told['item']}`." if told["item"] else "."
        where = f"At the margin `{told['opens']}` opens a block of its own{things}"
        return f"I don't know “{told['text']}” here. Kept, not used. {where}{such}"
    if told.get("stand"):
        such = f" Under {_a(told['block'])} stand {told['stand']}."
    return (
        f"I don't know “{told['text']}” here. Kept, not used.{_nearest(told)}{such} What is meant?"
    )


@_kind("plant-alone", "ask")
def _plant_alone(told: Told) -> str:
    return (
        f"“{told['plant']}” is a plant: type `grow` before it if it grows on this "
        f"{told['block']}. Kept, not used."
    )


@_kind("two-plants", "ask")
def _two_plants(told: Told) -> str:
    return f"one plant to a line: “{told['plant']}” is kept, not used."


@_kind("which-day", "ask")
def _which_day(told: Told) -> str:
    return (
        f"“{told['text']}”: which day is that? Type it as `18 May`, `mid May` or "
        "`2 weeks after last frost`. Not used until you do."
    )


@_kind("elsewhere", "ask")
def _elsewhere(told: Told) -> str:
    return f"“{told['word']}” stands under {told['blocks']}, not under a {told['block']}. Where to?"


@_kind("nothing-after", "ask")
def _nothing_after(told: Told) -> str:
    return f"{told['word']} what? Such as: `{told['example']}`."


@_kind("no-unit", "ask")
def _no_unit(told: Told) -> str:
    likely = f" {told['likely']}" if told.get("likely") else ""
    return f"{told['figure']} what, {told['units']}?{likely} Not used until you say."


@_kind("which-length", "ask")
def _which_length(told: Told) -> str:
    return f"{told['text']} of what: {told['choices']}? Not used until you say."


@_kind("two-readings", "ask")
def _two_readings(told: Told) -> str:
    return f"“{told['text']}” can be read two ways: {told['readings']}? Not used until you say."


@_kind("below-nothing", "ask")
def _below_nothing(told: Told) -> str:
    return f"“{told['text']}” is less than nothing: is {told['write']} meant? Not used."


@_kind("run-together", "ask")
def _run_together(told: Told) -> str:
    return f"“{told['text']}” is a figure run together with letters: which is meant? Not used."


@_kind("decimal-comma", "note")
def _decimal_comma(told: Told) -> str:
    return f"“{told['text']}” is read as {told['read']}."


@_kind("third-is-length", "note")
def _third_is_length(told: Told) -> str:
    return f"“{told['text']}” is read as {told['read']}."


@_kind("count-or-size", "ask")
def _count_or_size(told: Told) -> str:
    return f"“{told['text']}”: {told['readings']}? Type `{told['write']}` for the first."


@_kind("inches-or-in", "ask")
def _inches_or_in(told: Told) -> str:
    return (
        f"“{told['text']}”: {told['figure']} inches, or {told['figure']} plants in "
        f"“{told['name']}”? "
        f"Type `{told['figure']} inches` or `{told['figure']} plants, in {told['name']}`."
    )


@_kind("unlikely-size", "ask")
def _unlikely(told: Told) -> str:
    return f"{told['what']}: is that so? {told['usual']} is usual."


@_kind("which-are-ends", "note")
def _which_are_ends(told: Told) -> str:
    return f"of the two lines of posts, “{told['text']}” is read as the end posts."


@_kind("same-fact-twice", "stop")
def _same_fact(told: Told) -> str:
    return (
        f"{told['name']} has “{told['word']}” twice: line {told['first']} and line "
        f"{told['second']}. "
        "Keep one; the first is used."
    )


# ---- names ---------------------------------------------------------------------------------
@_kind("same-name", "stop")
def _same_name(told: Told) -> str:
    return (
        f"two things are called “{told['name']}”: {told['first']} and {told['second']}. "
        "Rename one; the first is used."
    )


@_kind("two-gardens", "ask")
def _two_gardens(told: Told) -> str:
    return (
        f"a plan is of one garden; what stands under “{told['other']}” is read as more of "
        f"“{told['name']}”. Is it meant so? Another garden goes into a folder of its own, and a "
        "heading into brackets."
    )


@_kind("no-such-place", "stop")
def _no_such_place(told: Told) -> str:
    there = f" There are: {told['there']}." if told.get("there") else ""
    return f"no {told['what']} “{told['name']}”.{_nearest(told) or there}"


@_kind("two-things-in-a-name", "ask")
def _two_things(told: Told) -> str:
    return (
        f"is the name “{told['name']}”, or is it “{told['short']}” {told['link']} {told['place']}? "
        "A comma says so."
    )


@_kind("unknown-kind", "ask")
def _unknown_kind(told: Told) -> str:
    return (
        f"I know no {told['word']} called “{told['kind']}”.{_nearest(told)} "
        "Which is it, or is it your `own design`?"
    )


@_kind("no-kind", "ask")
def _no_kind(told: Told) -> str:
    return (
        f"what kind of {told['word']} is {told['name']}?{_nearest(told)} "
        "Its loads and its order of work wait for that."
    )


@_kind("kind-by-name", "note")
def _kind_by_name(told: Told) -> str:
    return f"{told['name']} is taken for {_a(told['kind'])}, by its name."


@_kind("no-plant", "ask")
def _no_plant(told: Told) -> str:
    return f"“{told['text']}”: of what? Nothing grows here yet; start with a line `grow …`."


@_kind("no-year", "ask")
def _no_year(told: Told) -> str:
    return f"“{told['text']}”: in which year? Such as: `{told['text']} in 2025`."


@_kind("no-log-date", "ask")
def _no_log_date(told: Told) -> str:
    return (
        f"“{told['text']}”: on which day? The date comes first: "
        "`log 2 August, Bean Net, picked 1.4 kg`."
    )


@_kind("unknown-plant", "ask")
def _unknown_plant(told: Told) -> str:
    return f"I know no plant “{told['plant']}”.{_nearest(told)} Which is it?"


@_kind("which-plant", "ask")
def _which_plant(told: Told) -> str:
    return f"which “{told['plant']}”: {told['near']}?"


@_kind("which-wall", "ask")
def _which_wall(told: Told) -> str:
    return (
        f"{told['name']}: the wall on the {told['side']} side, or the one that faces "
        f"{told['side']}? "
        f"Type `faces {told['side']}` or `on the {told['side']} side`."
    )


# ---- dates ---------------------------------------------------------------------------------
@_kind("impossible-date", "stop")
def _impossible_date(told: Told) -> str:
    return f"“{told['text']}”: {told['why']}"


@_kind("which-month", "ask")
def _which_month(told: Told) -> str:
    return f"“{told['text']}”: which is the month? Type {told['either']}."


@_kind("a-year-off", "ask")
def _year_off(told: Told) -> str:
    return f"“{told['text']}” is {told['off']} for a plan of {told['season']}; {told['likely']}?"


# ---- the plan as a whole ----------------------------------------------------------------------
@_kind("no-garden", "ask")
def _no_garden(told: Told) -> str:
    head = told.get("head")
    missing = "the garden has no year" if head else "there is no line `garden Name, year`"
    write = f" Such as: `{head}`." if head else ""
    return f"{missing}: which season is this plan for?{write} Until then I take {told['year']}."


@_kind("no-place", "ask")
def _no_place(told: Told) -> str:
    return (
        f"where is this garden? Without `{told['example']}` I can't answer {told['missing']}. "
        "All the rest is answered."
    )


# ---- set aside, done, moved -----------------------------------------------------------------
@_kind("like-what", "ask", unread=True)
def _like_what(told: Told) -> str:
    return (
        f"which plant of the catalogue is {told['name']} like? Add `, like runner bean` to this "
        "line: what you don't say of it is taken from there. Not used until you do."
    )


@_kind("backwards", "ask", unread=True)
def _backwards(told: Told) -> str:
    return f"“{told['text']}”: the larger figure stands first. Which is the least? Not used."


@_kind("no-frost-to-count-from", "note")
def _no_frost_to_count_from(told: Told) -> str:
    return (
        f"“{told['text']}” is kept by how far it lies from the last frost, and the garden names "
        "none. Not used until it has `frost last …`."
    )


@_kind("no-reason", "ask")
def _no_reason(told: Told) -> str:
    return (
        f"why is {told['rule']} all right here? Add `because …`, so that you know in August. "
        "It is not set aside until then."
    )


@_kind("unknown-rule", "ask")
def _unknown_rule(told: Told) -> str:
    return f"no warning is called “{told['rule']}”.{_nearest(told)} Which is meant?"


@_kind("nothing-to-set-aside", "note")
def _nothing_to_set_aside(told: Told) -> str:
    return f"{told['name']}: nothing called {told['rule']} to set aside here now."


@_kind("not-set-aside", "stop")
def _not_set_aside(told: Told) -> str:
    return f"{told['rule']} can't be set aside, only answered: {told['answer']}"


@_kind("no-such-job", "ask")
def _no_such_job(told: Told) -> str:
    return f"{told['name']} has no job “{told['job']}”.{_nearest(told)} Which is meant?"


@_kind("matched-job", "note")
def _matched_job(told: Told) -> str:
    return f"“{told['job']}” is taken as: {told['step']}."
