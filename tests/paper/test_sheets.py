"""What sheets say: every step and danger, three numbers, ticks that can be copied back."""

from __future__ import annotations

import pytest

from plantframe.catalogue import reading as catalogue
from plantframe.jobs.listing import jobs_of
from plantframe.paper.labels import labels_sheet
from plantframe.paper.neighbour import neighbour_sheet
from plantframe.paper.planting_line import places_m
from plantframe.paper.sheet import BUILDING, PLANTING, TAKING_DOWN, TRAINING, Sheet
from plantframe.season.units import INCH_M, Shown
from plantframe.season.work import steps_of
from tests.paper.gardens import BED, HEAD, JANUARY, KINDS, NET, PERGOLA, answers, sheets

PLAN = HEAD + BED + NET


def building(text: str = PLAN, name: str = "Bean Net") -> Sheet:
    (sheet,) = sheets(text, name, BUILDING)
    return sheet


@pytest.mark.parametrize("kind", KINDS)
def test_no_caution_of_a_step_is_left_off_its_sheet(kind: str) -> None:
    structure = catalogue.structure(kind)
    assert structure is not None
    block = "frame" if "any" in structure.blocks else structure.blocks[0]
    text = f"{HEAD}{block} Thing, {kind}\n"
    sheet = building(text, "Thing")
    steps = steps_of(answers(text).season.frames["Thing"])
    wanted = {danger.says for step in steps for danger in step.dangers}
    assert wanted <= {danger.says for danger in sheet.dangers}


def test_every_step_is_a_row_with_its_hands_time_and_tools() -> None:
    rows = building().rows
    assert [row.number for row in rows] == list(range(1, 11))
    net = next(row for row in rows if row.says.startswith("Thread the net"))
    assert net.hands == 2
    assert dict(net.notes)["not yet"] == "the bar waits until the net is on"
    assert "alone" in dict(net.notes)
    assert next(row for row in rows if "Firm the soil" in row.says).stop


def test_the_three_numbers_are_depth_spacing_and_height() -> None:
    assert [one.value for one in building().numbers] == ["18 in", "7 ft 10½ in", "6 ft 6 in"]


def test_numbers_stay_when_steps_are_ticked_off_and_ticks_show() -> None:
    marked = PLAN + "  done set the middle posts, 12 May\n"
    before, after = building(), building(marked)
    assert [row.says for row in before.rows] == [row.says for row in after.rows]
    # who has set the middle posts has set the end posts too, and so on back
    assert [row.state for row in after.rows] == ["done"] * 5 + ["done 12 May"] + [""] * 4


def test_the_line_a_tick_becomes_is_understood_when_it_is_typed() -> None:
    back = building().back
    line = back.partition(": ")[2].replace("DATE", "12 May")
    ticked = building(f"{PLAN}  {line}\n")
    assert [row.number for row in ticked.rows if row.state] == [1]


def test_the_mark_changes_with_what_the_sheet_says_and_not_with_the_day() -> None:
    (later,) = sheets(PLAN, "Bean Net", BUILDING, today=JANUARY.replace(day=12))
    assert building().mark == later.mark
    assert building(PLAN.replace("18 in down", "20 in down")).mark != later.mark


def test_what_the_check_warns_of_stands_on_the_sheet() -> None:
    squash = PLAN.replace("pole bean, 40 plants", "climbing squash, 5 plants")
    titles = {aside.title: " ".join(aside.lines) for aside in building(squash).asides}
    assert "too-heavy" in titles["Settle first"]


def test_each_warning_has_a_line_of_its_own_and_the_frame_is_not_named_again() -> None:
    squash = PLAN.replace("pole bean, 40 plants", "climbing squash, 5 plants")
    asides = building(squash.replace("18 in down", "8 in down")).asides
    at = [aside.title for aside in asides].index("Settle first")
    warned = [asides[at], *(aside for aside in asides[at + 1 :] if not aside.title)]
    assert len(warned) > 1
    assert all(len(aside.lines) == 1 for aside in warned)
    assert not any(aside.lines[0].partition(": ")[2].startswith("Bean Net:") for aside in warned)


def test_hardening_off_is_not_called_planting() -> None:
    squash = PLAN.replace("pole bean, 40 plants", "climbing squash, 5 plants, plant out 6 June")
    (sheet,) = sheets(squash, "Bean Net", PLANTING)
    card = next(aside for aside in sheet.asides if "squash" in aside.title)
    planted = [line for line in card.lines if line.startswith("Plant ")]
    assert len(planted) == 1
    assert any(line.startswith("Harden off from ") for line in card.lines)


def test_a_range_that_begins_in_inches_ends_in_them() -> None:
    shown = Shown(imperial=True)
    assert shown.lengths(35 * INCH_M, 47 * INCH_M) == "35 to 47 in"
    assert shown.lengths(12 * INCH_M, 96 * INCH_M) == "12 in to 8 ft"
    assert shown.lengths(40 * INCH_M, 50 * INCH_M) == "3 ft 4 in to 4 ft 2 in"


def test_a_pergola_is_a_list_of_questions_and_no_list_of_steps() -> None:
    sheet = building(HEAD + PERGOLA, "Walk")
    structure = catalogue.structure("pergola")
    assert structure is not None
    assert len(sheet.rows) == len(structure.questions)
    assert {danger.says for danger in structure.dangers} <= {one.says for one in sheet.dangers}
    assert any("builder" in line for line in sheet.about)


def test_a_line_that_could_not_be_read_is_told_on_the_sheet() -> None:
    sheet = building(PLAN + "  frobnicate the gusset\n")
    assert any("could not be read" in line for line in sheet.about) == bool(
        sum(slip.unread for slip in answers(PLAN + "  frobnicate the gusset\n").mistakes)
    )


def test_planting_tells_how_many_how_far_and_which_goes_where() -> None:
    (sheet,) = sheets(PLAN, "Bean Net", PLANTING)
    assert [one.value for one in sheet.numbers][:2] == ["5 in", "40"]  # 16 ft over 40
    assert sheet.drawing is not None
    assert any("Not before the frame stands" in line for line in sheet.about)
    assert any("raw beans" in danger.says for danger in sheet.dangers)


def test_plants_stand_half_a_step_from_the_ends_of_a_row() -> None:
    assert places_m(4.0, 4) == [0.5, 1.5, 2.5, 3.5]


def test_training_has_a_box_for_every_round() -> None:
    (sheet,) = sheets(PLAN, "Bean Net", TRAINING)
    assert all(len(row.weeks) == len(sheet.columns) for row in sheet.rows)
    pick = next(row for row in sheet.rows if "pick" in row.says)
    assert sum(pick.weeks) > 10


def test_taking_down_counts_what_must_come_together_and_asks_what_is_soft() -> None:
    (sheet,) = sheets(PLAN, "Bean Net", TAKING_DOWN)
    assert [(one.value, one.says) for one in sheet.numbers] == [
        ("3", "posts"),
        ("2", "bars"),
        ("3", "pins"),
    ]
    look = next(aside for aside in sheet.asides if aside.title.startswith("Look"))
    assert any("soil line" in line for line in look.lines)


def test_labels_say_how_high_and_which_year() -> None:
    sheet = labels_sheet(answers(PLAN))
    assert sheet is not None
    first = sheet.labels[0]
    assert first[:2] == ("Bean Net", "poles and sticks, 2027")
    assert "stands 6 ft 6 in above ground" in first


def test_the_neighbours_page_has_a_box_for_each_day_of_picking() -> None:
    found = answers(PLAN.replace("\nbed", "\n  away 1 to 10 August\nbed", 1), JANUARY)
    page = neighbour_sheet(found, jobs_of(found.season))
    assert page is not None
    assert page.columns == tuple(str(day) for day in range(1, 11))
    pick = next(row for row in page.rows if "pick" in row.says)
    assert sum(pick.weeks) >= 3
    assert page.about == ("Sun 1 August 2027 to Tue 10 August 2027",)


def test_without_days_away_there_is_no_neighbours_page() -> None:
    found = answers(PLAN)
    assert neighbour_sheet(found, jobs_of(found.season)) is None


def test_forty_lettuces_stand_in_rows_over_a_box_and_not_in_one_line_of_two_inches() -> None:
    """A box of 8 ft by 4 ft: 4 rows of 10, 9½ in apart in the row and 12 in between (by hand)."""
    box = (
        HEAD + "cover Seed Box, cold frame\n  size 8 ft 1 in x 4 ft\n  lights 4 of 24 in x 4 ft\n"
        "  grow lettuce, 40 plants, sow 10 March under cover\n"
    )
    (sheet,) = sheets(box, "Seed Box", "planting")
    assert [one.value for one in sheet.numbers[:2]] == ["10 in", "40"]
    assert sheet.numbers[1].says == "of lettuce, in 4 rows 12 in apart"


def test_only_what_is_pinched_is_told_to_be_pinched_at_the_top() -> None:
    roses = HEAD + "fence Rose Fence, mortised fence\n  grow climbing rose, 4 plants\n"
    beans = HEAD + BED + NET
    (rose,), (bean,) = (
        sheets(roses, "Rose Fence", "training"),
        sheets(beans, "Bean Net", "training"),
    )
    assert not any("pinch" in one.says for one in rose.numbers)
    assert any(one.says.startswith("top of the frame") for one in rose.numbers)
    assert bean.numbers
