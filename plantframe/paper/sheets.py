"""All sheets of a plan, or those of one of its frames, beds and walls."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.building_sheet import building_sheet
from plantframe.paper.planting_sheet import bed_planting_sheet, planting_sheet
from plantframe.paper.sheet import BUILDING, PLANTING, TAKING_DOWN, TRAINING
from plantframe.paper.taking_down_sheet import taking_down_sheet
from plantframe.paper.training_sheet import training_sheet

if TYPE_CHECKING:
    from collections.abc import Collection

    from plantframe.answers.answers import Answers
    from plantframe.jobs.listing import Jobs
    from plantframe.paper.sheet import Sheet
    from plantframe.plan.things import Bed, Thing
    from plantframe.season.frames import WorkedFrame

ALL_KINDS: Final = (BUILDING, PLANTING, TRAINING, TAKING_DOWN)


def frame_sheets(
    answers: Answers, jobs: Jobs, frame: WorkedFrame, kinds: Collection[str]
) -> list[Sheet]:
    """The sheets of a frame that are of some kinds and have something to say."""
    makers = {
        BUILDING: building_sheet,
        PLANTING: planting_sheet,
        TRAINING: training_sheet,
        TAKING_DOWN: taking_down_sheet,
    }
    made = [make(answers, jobs, frame) for kind, make in makers.items() if kind in kinds]
    return [sheet for sheet in made if sheet is not None]


def place_sheets(
    answers: Answers, jobs: Jobs, place: Bed | Thing, kinds: Collection[str]
) -> list[Sheet]:
    """The planting sheet of what grows in a bed or on a wall without a frame."""
    sheet = bed_planting_sheet(answers, jobs, place) if PLANTING in kinds else None
    return [sheet] if sheet is not None else []


def season_sheets(answers: Answers, jobs: Jobs, kinds: Collection[str]) -> list[Sheet]:
    """What the season asks for: no building of what stands, no taking down of what stays."""
    found = []
    for frame in answers.season.frames.values():
        wanted = set(kinds)
        if frame.stands:
            wanted.discard(BUILDING)
        if frame.lasting:
            wanted.discard(TAKING_DOWN)
        found += frame_sheets(answers, jobs, frame, wanted)
    places: tuple[Bed | Thing, ...] = (*answers.plan.beds.values(), *answers.plan.things.values())
    for place in places:
        found += place_sheets(answers, jobs, place, kinds)
    return found
