"""burn-treated: wood with a preservative, paint or tar on it is to be burnt."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit, LineChange

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.reader import Block
    from plantframe.plan.things import Frame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

BURN = re.compile(r"\b(?:burn|burning|burns|bonfire|incinerat\w+)\b", re.IGNORECASE)
NOT = re.compile(r"\b(?:not|never|don['\u2019]?t|no|nothing)\b[^,.;]{0,40}$", re.IGNORECASE)
COATED = re.compile(
    r"(?<![\w-])(?<!un)(?<!un-)(?<!heat-)(?<!heat )"
    r"(pressure[- ]treated|treated|creosot\w*|tarred|painted|varnished|stained|preserv\w+|"
    r"(?:old|railway|railroad) (?:sleepers?|ties)|arsenic\w*|gloss paint)\b",
    re.IGNORECASE,
)
CLEAN = re.compile(r"\b(?:untreated|bare|clean|unpainted)\b", re.IGNORECASE)
WOODEN = ("finish", "painted", "wood", "posts", "end posts", "poles", "rails", "bar", "back")


@frozen
class Facts:
    """The line that speaks of burning, and what is on the wood."""

    what: str
    coat: str
    frame: str


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Tasks and notes that speak of burning, and what the wood they speak of has on it."""
    for block, name, text in _lines(season):
        burn = BURN.search(text)
        if burn is None or NOT.search(text[: burn.start()]):
            continue
        coat, frame = _coat(text, season)
        if not coat:
            continue
        yield Finding(
            level="stop",
            where=block.where,
            block=name,
            facts=Facts(text.strip(), coat, frame),
            candidates=partial(_ways_out, block, text),
            ways=("It goes to the tip; ask there which bin is for such wood.",),
        )


def _lines(season: Season) -> Iterator[tuple[Block, str, str]]:
    """Every task and note: its block, the name it goes by, its words."""
    plan = season.plan
    for task in plan.tasks:
        if task.done is None:
            yield task.block, task.block.name, task.block.head.text.partition(" ")[2]
    for note in plan.notes:
        yield note.block, note.about or plan.garden.name, note.words


def _coat(text: str, season: Season) -> tuple[str, str]:
    """What is on the wood, and the frame it is known by where the line only names that."""
    found = COATED.search(text)
    if found is not None:
        return found[1].lower(), ""
    if CLEAN.search(text):
        return "", ""
    for name, frame in season.plan.frames.items():
        if name.lower() in text.lower() and (coat := _of_frame(frame)):
            return coat, name
    return "", ""


def _of_frame(frame: Frame) -> str:
    """What a frame's own lines say is on its wood."""
    for word in WOODEN:
        for fact in frame.facts.get(word, ()):
            if word == "painted":
                return "painted"
            found = COATED.search(fact.text)
            if found is not None and not (word == "finish" and found[1] == fact.text):
                return found[1].lower()
    return ""


def _ways_out(block: Block, text: str) -> Iterable[Edit]:
    """The same wood taken to the tip."""
    if block.word != "task" or not text.lower().startswith("burn "):
        return
    first = block.head.text.partition(",")[0]
    wood = first.split(" ", 2)[2] if len(first.split(" ", 2)) == 3 else ""
    where = block.where
    line = where.typed.replace(first, f"task take {wood} to the tip", 1)
    if wood and line != where.typed:
        yield Edit(line.strip(), (LineChange(where.file, where.line, where.typed, line),))


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    if facts.frame:
        wood = f"the wood of {facts.frame} is {facts.coat}, and its smoke and ash are poisonous"
    elif facts.coat.endswith("s"):
        wood = f"{facts.coat} make poisonous smoke and ash"
    else:
        wood = f"{facts.coat} wood makes poisonous smoke and ash"
    says = f"“{facts.what}”: {wood}."
    return Words(
        says=says,
        if_ignored="The ash poisons soil and animals, and many places forbid it.",
        told=facts.what,
        sum="Local rules say where such wood goes; they come before this.",
    )


RULE = Rule(
    name="burn-treated",
    summary="treated, painted or tarred wood is to be burnt",
    looks_at="season",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
    answered="take the wood to the tip, and say so",
)
