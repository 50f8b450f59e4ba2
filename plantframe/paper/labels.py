"""Labels for the shed: what is written on each bundle, so that it is found and known in spring."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.sheet import LABELS, Sheet, garden_words, plan_file
from plantframe.paper.subject import subject_of

if TYPE_CHECKING:
    from plantframe.answers.answers import Answers
    from plantframe.paper.subject import Subject

BUNDLES: Final = (
    ("poles and sticks", frozenset({"wood", "cane", "strip", "steel", "brush"})),
    ("net or cloth", frozenset({"net", "mesh", "cloth"})),
    ("pins, ties and fittings", frozenset({"nail", "bolt", "fitting", "peg", "strainer", "chain"})),
    ("wire and cord", frozenset({"wire", "rope"})),
    ("panes", frozenset({"pane"})),
)


def labels_sheet(answers: Answers) -> Sheet | None:
    """A label for each bundle of each frame that comes down; None where none does."""
    year = answers.plan.garden.seasons[1]
    labels: list[tuple[str, ...]] = []
    for frame in answers.season.frames.values():
        subject = subject_of(frame, answers.shown)
        if subject is None or frame.lasting or not subject.worked.down:
            continue
        labels += _of_frame(subject, year)
    if not labels:
        return None
    return Sheet(
        LABELS,
        "Labels",
        ("Cut along the lines; one to each bundle. Pencil on each post how high it stands.",),
        garden_words(answers),
        plan_file(answers),
        answers.today,
        labels=tuple(labels),
    )


def _of_frame(subject: Subject, year: int) -> list[tuple[str, ...]]:
    found = []
    for bundle, matters in BUNDLES:
        pieces = [
            subject.piece_words(name, one)
            for name, one in subject.worked.pieces.items()
            if one.part.of in matters
        ]
        if not pieces:
            continue
        up = subject.figure("posts.up")
        stands = (
            (f"stands {subject.shown.length(up)} above ground",)
            if up and bundle == BUNDLES[0][0]
            else ()
        )
        found.append((subject.name, f"{bundle}, {year}", *pieces, *stands))
    return found
