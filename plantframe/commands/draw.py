"""draw: a frame from the front with its measures, or a bed with its rows and shade, as SVG."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.commands.screen import beside
from plantframe.season.units import listed

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterator
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.paper.drawing import Drawing
    from plantframe.paper.subject import Subject
    from plantframe.plan.things import Bed

CUTTING = "cutting"


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser, "?")
    add = parser.add_argument
    add("name", metavar="NAME", nargs="?", help="a frame or a bed; all of them go to a folder")
    add("--structure", metavar="KIND", help="without a plan: a kind of structure, ordinary size")
    add("--cutting", action="store_true", help="which board gives which pieces")
    add("--to", metavar="FOLDER", help="write files there instead of printing")


def run(given: argparse.Namespace, today: date) -> int:
    """Draw what was asked for."""
    from plantframe.paper.scale import TooLargeError

    try:
        if given.structure:
            subject = _kind(given.structure)
            if given.json:
                write_json(frame_data(subject))
            else:
                _out([(subject.name, _of_subject(subject, _kind_about(subject)))], given.to)
            return FINE
        if given.plan is None:
            raise Refused("Name a plan, or --structure and a kind.")
        answers = one_answer(given.plan, today)
        if given.json:
            write_json({"plan": answers.plan.name, **_data(answers, given)})
            return FINE
        drawn = list(_asked_for(answers, given))
    except TooLargeError as error:
        raise Refused(f"It cannot be drawn: {error}.") from None
    _out(drawn, given.to)
    return FINE


def _asked_for(answers: Answers, given: argparse.Namespace) -> Iterator[tuple[str, Drawing]]:
    """Each drawing with the name of its file."""
    from plantframe.paper.cutting_drawing import cutting_drawings

    if given.cutting:
        from plantframe.timber.cutting import cutting_of

        found = cutting_drawings(cutting_of(answers.season), answers.plan.garden)
        if not found:
            raise Refused("No frame that is still to be built wants sawn wood.")
        yield from ((f"{CUTTING} {name}", drawing) for name, drawing in found)
        return
    if given.name:
        yield _one(answers, given.name)
        return
    if given.to is None:
        raise Refused(f"Name what to draw, or a folder with --to. {_there_are(answers)}")
    from plantframe.paper.scale import TooLargeError

    for name in (*answers.season.frames, *answers.plan.beds):
        try:
            drawn = _drawn(answers, name)
        except TooLargeError as error:
            beside(f"plantframe: {name} is left out: {error}.")
            continue
        if drawn is not None:
            yield name, drawn


def _one(answers: Answers, asked: str) -> tuple[str, Drawing]:
    """The frame or bed of a name, whatever the capitals."""
    name = _known(answers, asked)
    drawn = _drawn(answers, name)
    if drawn is None:
        raise Refused(f"It cannot be drawn: {_why_not(answers, name)}.")
    return name, drawn


def _why_not(answers: Answers, name: str) -> str:
    if name in answers.plan.beds:
        return f"the plan does not say how large {name} is"
    if answers.season.frames[name].frame.own_design:
        return f"no line such as `piece 4 of 2x2, 1.9 m` says what {name} is made of"
    return f"the plan does not say of a kind that I know what {name} is, or its figures clash"


def _known(answers: Answers, asked: str) -> str:
    known = {name.lower(): name for name in (*answers.plan.beds, *answers.season.frames)}
    if asked.lower() not in known:
        raise Refused(f"No frame or bed here is called “{asked}”. {_there_are(answers)}")
    return known[asked.lower()]


def _there_are(answers: Answers) -> str:
    names = [*answers.season.frames, *answers.plan.beds]
    return f"There are {listed(names)}." if names else "The plan has none."


def _drawn(answers: Answers, name: str) -> Drawing | None:
    from plantframe.paper.bed_drawing import bed_drawing
    from plantframe.paper.subject import subject_of

    about = _about(answers, name)
    if name in answers.season.frames:
        frame = answers.season.frames[name]
        subject = subject_of(frame, answers.shown)
        if subject is None and frame.frame.own_design:
            from plantframe.paper.pieces_drawing import pieces_drawing

            imperial = answers.shown.imperial
            return pieces_drawing(answers.season, frame, about, garden_imperial=imperial)
        return _of_subject(subject, about) if subject is not None else None
    return bed_drawing(answers, answers.plan.beds[name], about)


def _of_subject(subject: Subject, about: list[str]) -> Drawing:
    from plantframe.paper.frame_drawing import frame_drawing

    drawn = frame_drawing(subject, about)
    if drawn is None:
        raise Refused(f"{subject.name}: its kind says nothing of where its parts stand.")
    return drawn


def _about(answers: Answers, name: str) -> list[str]:
    from plantframe.paper.job_rows import about_of
    from plantframe.paper.pages import long_day
    from plantframe.paper.sheet import garden_words, plan_file

    frame = answers.season.frames.get(name)
    lines = [about_of(frame)] if frame is not None else []
    stamp = f"{garden_words(answers)}; {plan_file(answers)}; drawn for {long_day(answers.today)}"
    return [*lines, stamp]


def _kind(asked: str) -> Subject:
    """A kind of structure at its ordinary sizes."""
    from plantframe.catalogue import reading as catalogue
    from plantframe.catalogue.mistakes import CatalogueError
    from plantframe.catalogue.names import all_names
    from plantframe.paper.subject import subject_of_kind
    from plantframe.season.units import Shown

    names = catalogue.structures_named(asked)
    if len(names) != 1:
        near = names or catalogue.near(asked, all_names("structure"))
        tail = f" Nearest: {listed(list(near), 'or')}." if near else ""
        raise Refused(f"No one kind of structure is called “{asked}”.{tail}")
    try:
        structure = catalogue.structure(names[0])
    except CatalogueError as error:
        raise Refused(str(error)) from None
    subject = subject_of_kind(structure, Shown()) if structure is not None else None
    if subject is None:
        raise Refused(f"{asked}: its ordinary sizes do not work out.")
    return subject


def _kind_about(subject: Subject) -> list[str]:
    return ["at its ordinary sizes; a plan's own figures take their place", subject.structure.says]


def _out(drawn: list[tuple[str, Drawing]], to: str | None) -> None:
    """Print one drawing, or write each into a file of its own."""
    from plantframe.commands.printing import write_files
    from plantframe.paper.drawing import stacked
    from plantframe.paper.files import Names

    if to is None:
        names = listed([name for name, _ in drawn])
        sys.stdout.write(stacked([drawing for _, drawing in drawn]).svg(names))
        return
    called = Names()
    write_files(to, [(called.of(name, ending="svg"), drawing.svg(name)) for name, drawing in drawn])


# ---- as data --------------------------------------------------------------------------------
def _data(answers: Answers, given: argparse.Namespace) -> dict[str, Any]:
    from plantframe.paper.subject import subject_of

    wanted = _known(answers, given.name) if given.name else None
    frames, beds = [], []
    for name, frame in answers.season.frames.items():
        subject = subject_of(frame, answers.shown)
        if subject is not None and wanted in {None, name}:
            frames.append(frame_data(subject))
    for name, bed in answers.plan.beds.items():
        if wanted in {None, name}:
            beds.append(_bed_data(answers, bed))
    return {"frames": frames, "beds": [bed for bed in beds if bed]}


def frame_data(subject: Subject) -> dict[str, Any]:
    """What a drawing of a frame tells, without the lines."""
    from plantframe.paper.numbers import numbers_of
    from plantframe.paper.pegs import pegs_of
    from plantframe.paper.squareness import checks_of

    pegs = pegs_of(subject)
    return {
        "name": subject.name,
        "kind": subject.structure.name,
        "numbers": [{"value": one.value, "says": one.says} for one in numbers_of(subject)],
        "parts": [
            subject.piece_words(name, pieces) for name, pieces in subject.worked.pieces.items()
        ],
        "pegs": None
        if pegs is None
        else {
            "of": pegs.of,
            "how": pegs.how,
            "heads": list(pegs.heads),
            "rows": [list(row) for row in pegs.rows],
            "check": pegs.check or None,
        },
        "true_if": list(checks_of(subject)),
    }


def _bed_data(answers: Answers, bed: Bed) -> dict[str, Any] | None:
    from plantframe.paper.ground import ground_of, overlaps

    ground = ground_of(answers.season, bed)
    if ground is None:
        return None
    return {
        "name": bed.name,
        "length_m": round(ground.length_m, 3),
        "width_m": round(ground.width_m, 3),
        "runs": bed.runs or None,
        "rows": [
            {
                "name": row.name,
                "grows": row.grows or None,
                "from_m": round(ground.length_m / 2 - row.along_m[1], 3),
                "to_m": round(ground.length_m / 2 - row.along_m[0], 3),
                "high_m": round(row.high_m, 3),
                "placed": row.placed,
            }
            for row in ground.rows
        ],
        "overlaps": [
            {"one": one, "other": other, "shared_m": round(shared, 3)}
            for one, other, shared in overlaps(ground)
        ],
    }
