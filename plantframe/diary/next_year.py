"""Next year's plan from this one: what stands, what lives on, beds, lessons; crops left blank.

Files that hold only what lasts (places, shed) are read again as they are. From the rest what lasts
is copied line for line, as typed; nothing of this year's file is changed.
"""

from __future__ import annotations

import re
from pathlib import PurePath
from typing import TYPE_CHECKING, Final

from plantframe.diary.bowed import bows_of
from plantframe.diary.lessons import lessons_of
from plantframe.diary.years import SUFFIX, label_of, seasons_of
from plantframe.frozen import frozen
from plantframe.jobs.planting import LASTING
from plantframe.season.entries import entry_of
from plantframe.season.likeness import Called, best
from plantframe.season.rounds import done_marks, is_of_years
from plantframe.season.units import day as shown
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from plantframe.language.blocks import Block, Fact, Text
    from plantframe.language.files import Reading
    from plantframe.plan.things import Frame, Planting
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

GROUND: Final = frozenset({"wall", "hedge", "tree", "path", "house", "bed", "border"})
LASTS: Final = GROUND | {"shed", "yard", "variety"}
BUILT: Final = frozenset({"frame", "line", "cover", "fence"})
DIARY: Final = frozenset({"log", "note"})
# Facts that belong to one season, not to the thing.
OF_A_SEASON: Final = frozenset(
    {"ready by", "take down", "done", "move", "skip", "ok", "sow", "plant out", "away"}
    | {"lines marked", "had", "built", "step", "stood in"}
)
# Parts of a `grow` line that are over once the plant is in.
_OVER = re.compile(
    r"^(sow|sown|plant out|planted out|set out|plant|planted|until|pick(ed)? from|from|"
    r"indoors|inside|under cover|under glass|in the frame|outdoors)\b(?!.*\bplants?$)",
    re.IGNORECASE,
)


@frozen
class Carried:
    """Next year's plan.

    text      the plan; `label` its season
    stands    frames that are in it, and `down` those that are not
    """

    text: str
    label: str
    stands: tuple[str, ...]
    down: tuple[str, ...]


def next_plan(reading: Reading, season: Season) -> Carried:
    """The plan of the season after this one."""
    first, second = season.plan.garden.seasons
    years = (first + 1, second + 1)
    own, lasting = _sorted_files(reading)
    garden = season.plan.garden
    beds_kept = any(block.word in {"bed", "border"} for text in lasting for block in text.blocks)
    lines: list[str] = []
    lines += [f"read {_name(text)}" for text in lasting]
    if beds_kept:
        # beds that are read as they are learn from this year's file what grew in them
        lines.append(f"read {PurePath(reading.main).stem} as last year")
    if lines:
        lines.append("")
    lines.append(f"garden {garden.name or 'Our Garden'}, {label_of(years)}")
    lines += _garden_lines(own)
    seasons = seasons_of(reading, season.today)
    lines += [*_lessons(seasons), *_bows(seasons), ""]
    stands: list[str] = []
    down: list[str] = []
    for text in own:
        for block in text.blocks:
            kept = _block(block, text, season, history=not beds_kept)
            if kept:
                lines += [*kept, ""]
            if block.word in BUILT:
                (stands if kept else down).append(block.name)
    lines += _came_down(season, down)
    lines += _left_over(season)
    while lines and not lines[-1]:
        lines.pop()
    return Carried("\n".join(lines) + "\n", label_of(years), tuple(stands), tuple(down))


# ---- files --------------------------------------------------------------------------------------
def _sorted_files(reading: Reading) -> tuple[list[Text], list[Text]]:
    """The files of the season itself, and those that hold only what lasts.

    Logs are neither: they stay with their year.
    """
    own: list[Text] = []
    lasting: list[Text] = []
    for text in reading.texts:
        words = {block.word for block in text.blocks}
        if text.file == reading.main or not (words <= LASTS | {"garden"}) or _names_a_year(text):
            if not words <= DIARY or text.file == reading.main:
                own.append(text)
        elif _has_crops(text):
            own.append(text)
        elif words:
            lasting.append(text)
    return own, [text for text in lasting if _read_from(text, own, reading)]


def _names_a_year(text: Text) -> bool:
    return any(
        block.word == "garden" and (block.head.get("year") or block.head.get("season"))
        for block in text.blocks
    )


def _has_crops(text: Text) -> bool:
    return any(fact.word in {"grow", "plant"} for block in text.blocks for fact in block.facts)


def _read_from(text: Text, own: Sequence[Text], reading: Reading) -> bool:
    """Whether one of the season's own files reads it, not only another that lasts."""
    wanted = {_file(one.name) for file in own for one in file.imports if not one.history}
    return PurePath(text.file).name in wanted or text.file in wanted or len(reading.texts) == 1


def _file(name: str) -> str:
    return name if name.endswith(SUFFIX) else name + SUFFIX


def _name(text: Text) -> str:
    return text.file.removesuffix(SUFFIX)


# ---- blocks -------------------------------------------------------------------------------------
def _garden_lines(own: Iterable[Text]) -> list[str]:
    """What the season's own files say of the garden, less what was of this year only."""
    return [
        fact.where.typed.rstrip()
        for text in own
        for block in text.blocks
        if block.word == "garden"
        for fact in block.facts
        if fact.word not in OF_A_SEASON and fact.where.line != block.where.line
    ]


def _block(block: Block, text: Text, season: Season, *, history: bool) -> list[str]:
    """The lines of a block that go on into the next season; none where it does not."""
    if block.word in BUILT:
        frame = season.plan.frames.get(block.name)
        if frame is None or not stays(frame, season):
            return []
        lines = [
            *_kept_lines(block, text, frame.plantings),
            *_stood(block, season),
            *_own_had(block),
            *_rounds_done(season.frames[frame.name], season),
        ]
        built = next((fact for fact in block.facts if fact.word == "built"), None)
        in_head = built is not None and built.where.line == block.where.line
        if built is None:
            told = "" if _marked_done(frame) else " (if it was)"
            lines.append(f"  built {_this_year(season)}{told}")
        elif not in_head:
            lines.append(built.where.typed.rstrip())
        return lines
    if block.word in {"bed", "border"}:
        bed = season.plan.beds.get(block.name)
        lines = _kept_lines(block, text, bed.plantings if bed else ())
        return [*lines, *(_had(block.name, season) if history else _own_had(block))]
    if block.word in LASTS:
        thing = season.plan.things.get(block.name or block.word)
        return _kept_lines(block, text, thing.plantings if thing else ())
    return []


def _stood(block: Block, season: Season) -> Iterator[str]:
    """The beds it stood in before; a move without its year was this season's."""
    for fact in block.facts:
        if fact.word != "stood in" or fact.where.line == block.where.line:
            continue
        line = fact.where.typed.rstrip()
        dated = any(slot.name in {"year", "date"} for slot in fact.slots)
        bed = fact.slot("bed")
        if not dated and bed is not None:
            remark = f" ({fact.remark})" if fact.remark else ""
            line = f"  moved from {bed.value} in {_this_year(season)}{remark}"
        yield line


def _rounds_done(frame: WorkedFrame, season: Season) -> list[str]:
    """Rounds of several years that were done, with their day: the next is counted from it."""
    tasks = [task for task in season.tasks_about(frame.frame.name) if task.done]
    found = []
    for care in frame.structure.care if frame.structure else ():
        if not is_of_years(care):
            continue
        called = [Called(care.id, care.do)]
        done = [(mark.day.day, mark.job) for mark in done_marks(frame, care) if mark.day]
        meant = [one for one in tasks if best(one.what, called) == 0]
        done += [(one.done.day, one.what) for one in meant if one.done]
        if done:
            day, job = max(done)
            found.append(f"  done {job}, {shown(day)} {day.year}")
    return found


def _kept_lines(block: Block, text: Text, plantings: Sequence[Planting]) -> list[str]:
    """A block's lines as typed, with its remarks, less what was of this season only."""
    by_line: dict[int, list[Fact]] = {}
    for fact in block.facts:
        by_line.setdefault(fact.where.line, []).append(fact)
    grows = {one.fact.where.line: one for one in plantings}
    lines = []
    for number in range(block.where.line, block.last_line + 1):
        typed = text.lines[number - 1].rstrip()
        planting = grows.get(number)
        if planting is not None and number != block.where.line:
            lines += [_lives_on(typed, planting)] if lives_on(planting) else []
        elif number == block.where.line or not typed.strip():
            lines += [typed] if typed else []
        elif number not in by_line:
            lines += [typed] if typed.lstrip().startswith("(") else []
        elif not any(fact.word in OF_A_SEASON for fact in by_line[number]):
            lines.append(typed)
    return lines


def stays(frame: Frame, season: Season) -> bool:
    """Whether a frame still stands next season: it stands for years, or did before this one."""
    if frame.take_down is not None:
        return False
    worked = season.frames[frame.name]
    if worked.stands:
        return True
    return bool(worked.lasting) and worked.structure is not None


def _marked_done(frame: Frame) -> bool:
    """Whether the plan tells of building it; else that it stands is only likely."""
    return any(mark.kind == "done" for mark in frame.marks)


def lives_on(planting: Planting) -> bool:
    """Whether a planting is there again next year, whichever plant it is."""
    entries = [entry for name in planting.plants if (entry := entry_of(name)) is not None]
    lives = {entry.life.value if entry.life else "" for entry in entries}
    return bool(lives) and lives <= LASTING


def _lives_on(typed: str, planting: Planting) -> str:
    """Its line without the days on which it was put in."""
    indent = typed[: len(typed) - len(typed.lstrip())]
    parts = [part.strip() for part in planting.fact.text.split(",")]
    kept = [part for place, part in enumerate(parts) if not place or not _OVER.match(part)]
    remark = f" ({planting.fact.remark})" if planting.fact.remark else ""
    return f"{indent}{', '.join(kept)}{remark}"


def _this_year(season: Season) -> int:
    return season.plan.garden.seasons[0]


# ---- beds ---------------------------------------------------------------------------------------
def _had(bed: str, season: Season) -> list[str]:
    """What a bed grew, this season's crops among it."""
    this = season.plan.garden.seasons[0]
    grown: dict[int, dict[str, None]] = {}
    for one in season.history(bed):
        grown.setdefault(one.year, {}).setdefault(one.plant)
    for planting in season.growing_in(bed):
        if not lives_on(planting.planting):
            grown.setdefault(this, {}).setdefault(planting.name)
    years: dict[str, list[str]] = {}
    for year in sorted(grown):
        for plant in grown[year]:
            years.setdefault(plant, []).append(str(year))
    return [f"  had {plant} in {', '.join(when)}" for plant, when in years.items()]


def _own_had(block: Block) -> list[str]:
    return [
        fact.where.typed.rstrip()
        for fact in block.facts
        if fact.word == "had" and fact.where.line != block.where.line
    ]


# ---- remarks ------------------------------------------------------------------------------------
def _lessons(seasons: Sequence[Season]) -> list[str]:
    """What was learned, this year and before, as remarks under the garden; the same but once."""
    told: dict[tuple[str, str], str] = {}
    for lesson in lessons_of(seasons):
        about = f"{lesson.about}: " if lesson.about else ""
        line = _remark(f"{lesson.season}: {about}{lesson.words}")
        told.setdefault((lesson.about, lesson.words.lower()), line)
    return list(told.values())


def _bows(seasons: Sequence[Season]) -> list[str]:
    """Each pairing under which a bar hung low, with its years, so that it is thought of."""
    years: dict[tuple[str, str], list[str]] = {}
    for season in reversed(seasons):
        for bow in bows_of(season):
            for plant in bow.plants:
                when = years.setdefault((plant, bow.kind), [])
                when += [bow.season] if bow.season not in when else []
    return [
        _remark(f"a bar bowed under {plant} on a {kind} in {listed(when)}")
        for (plant, kind), when in years.items()
    ]


def _came_down(season: Season, down: Sequence[str]) -> list[str]:
    """What came down is in the shed again, to be counted."""
    lines = []
    for name in down:
        frame = season.plan.frames.get(name)
        if frame is None:
            continue
        if season.frames[name].structure is None and frame.take_down is None:
            lines.append(_remark(f"{name}: this year's plan does not say whether it stays"))
            continue
        parts = [
            fact.text
            for word in ("posts", "poles", "stakes", "bar", "net", "hoops")
            for fact in frame.facts.get(word, ())
        ]
        if parts:
            lines.append(_remark(f"{name} came down; back in the shed, to be counted: {parts[0]}"))
            lines += [_remark(f"and {part}") for part in parts[1:]]
    return [*lines, ""] if lines else []


def _left_over(season: Season) -> list[str]:
    """The gardener's own tasks that were not marked as done."""
    tasks = [task.what for task in season.plan.tasks if task.done is None]
    return [_remark(f"Not marked as done in {_this_year(season)}: {what}") for what in tasks]


def _remark(words: str) -> str:
    """A remark line: it begins with a bracket and goes to the line's end."""
    plain = " ".join(words.split()).rstrip(").( ")
    return f"({plain}.)"
