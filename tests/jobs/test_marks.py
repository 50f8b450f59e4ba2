"""Done, moved, skipped: what the gardener writes beside the work."""

from __future__ import annotations

from datetime import date

from tests.jobs.gardens import BEANS, HEAD, NET, listed, the

BED = "bed Low Bed, 1 m x 3 m\n  grow lettuce, sow 10 March\n"


def ids(jobs: tuple[object, ...]) -> set[str]:
    return {getattr(job, "id", "") for job in jobs}


def test_done_work_drops_out_with_what_went_before_it() -> None:
    found = listed(HEAD + NET + BEANS + "  done set the posts, 24 April\n")
    done = {
        "bean-net/mark",
        "bean-net/bore",
        "bean-net/ends",
        "bean-net/string",
        "bean-net/middles",
    }
    assert done <= ids(found.done)
    assert not done & ids(found.jobs)
    assert the(found, "bean-net/firm").after == ()


def test_what_a_mark_was_taken_for_is_said() -> None:
    found = listed(HEAD + NET + "  done weave the bar, 2 May\n")
    (note,) = found.mistakes
    assert (note.name, note.level, note.where.line) == ("matched-job", "note", 8)
    assert (
        note.says == "“weave the bar” is taken as: “weave the bar through the top row of meshes”."
    )


def test_the_very_words_of_a_step_want_no_note() -> None:
    found = listed(HEAD + NET + "  done thread the net on the posts, 2 May\n")
    assert not found.mistakes
    assert "bean-net/net" in ids(found.done)


def test_words_that_mean_no_job_are_asked_about_with_the_nearest() -> None:
    found = listed(HEAD + NET + "  done bar on the roof, 2 May\n")
    (slip,) = found.mistakes
    assert (slip.name, slip.level) == ("no-such-job", "ask")
    assert slip.says.startswith("Bean Net has no job “bar on the roof”. Nearest: ")
    assert slip.candidates[0].changes[0].new in {
        "  done weave the bar through the top row of meshes, 2 May",
        "  done bore the top of each post and the ends of each bar for the pins, 2 May",
        "  done cut the halved joints in the bar ends that share a post, 2 May",
    }


def test_what_was_moved_stays_moved() -> None:
    found = listed(HEAD + NET + BEANS + "  move weave the bar to 24 April\n")
    bar = the(found, "bean-net/bar")
    assert bar.earliest == bar.planned == bar.latest == date(2027, 4, 24)
    net = the(found, "bean-net/net")
    assert net.planned is not None
    assert net.planned <= date(2027, 4, 24)


def test_a_moved_task_stays_moved() -> None:
    found = listed(HEAD + "task mend the gate, by 1 April, move to 5 May\n")
    assert the(found, "task/mend-the-gate").planned == date(2027, 5, 5)


def test_what_comes_after_a_skipped_step_comes_after_what_went_before_it() -> None:
    found = listed(HEAD + NET + '  skip firm the soil because "stony ground"\n')
    assert [(job.id, job.because) for job in found.skipped] == [("bean-net/firm", "stony ground")]
    assert set(the(found, "bean-net/net").after) == {"bean-net/ends", "bean-net/middles"}


def test_a_skipped_coat_keeps_nobody_waiting() -> None:
    skip = '  finish oil\n  skip coat the feet because "they are oak"\n'
    found = listed(HEAD + NET + BEANS + skip, date(2027, 5, 15))
    assert not found.troubles
    assert the(found, "bean-net/ends").earliest == date(2027, 5, 15)


def test_a_skip_without_a_reason_leaves_the_job_on_the_list() -> None:
    assert the(listed(HEAD + NET + "  skip firm the soil\n"), "bean-net/firm")


def test_a_step_this_frame_never_had_may_be_skipped_without_a_word() -> None:
    assert not listed(HEAD + NET + '  skip stays because "sheltered"\n').mistakes


def test_marks_of_a_frame_that_stands_are_no_slip() -> None:
    found = listed(HEAD + NET + "  built 2027\n  done thread the net, 24 April\n")
    assert not found.mistakes


def test_sowing_is_marked_like_any_other_job() -> None:
    found = listed(HEAD + NET + BEANS + "  done sow the beans, 20 May\n", date(2027, 5, 25))
    assert "bean-net/sow-pole-bean" in ids(found.done)
    assert the(found, "bean-net/pole-bean-pick").earliest == date(2027, 7, 9)


def test_a_bed_has_its_marks_too() -> None:
    found = listed(HEAD + BED + "  done sow the lettuce, 12 March\n", date(2027, 3, 20))
    assert "low-bed/sow-lettuce" in ids(found.done)


def test_taking_down_that_is_half_done_goes_on_from_there() -> None:
    done = "  done lift the net off, 20 October\n"
    found = listed(HEAD + NET + "  built 2027\n  take down 18 October\n" + done, date(2027, 10, 21))
    assert {
        "bean-net/down-pull-the-pins",
        "bean-net/down-slide-the-bars-out-of-the-net",
        "bean-net/down-clear-the-vines-and-lift-the-net-off-the-posts",
    } <= ids(found.done)
    assert the(found, "bean-net/down-draw-the-posts-by-rocking-them")


def test_what_is_done_with_a_later_step_is_not_what_is_dated_after_it() -> None:
    found = listed(HEAD + NET + "  done weave the bar, 2 May\n  move thread the net to 5 May\n")
    assert the(found, "bean-net/net").planned == date(2027, 5, 5)
    assert [one.name for one in found.troubles] == ["out-of-order"]


CARED_FOR = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n  built 2018\n"


def test_strips_put_on_two_years_ago_are_not_due_and_no_line_is_a_slip() -> None:
    found = listed(HEAD + CARED_FOR + "  done unscrew the foot strips, 20 March 2025\n")
    assert not any("strips" in job.id for job in (*found.jobs, *found.done))
    assert not found.mistakes


def test_strips_put_on_this_spring_are_done() -> None:
    found = listed(HEAD + CARED_FOR + "  done unscrew the foot strips, 20 March 2027\n")
    assert [job.id for job in found.done] == ["salad-box/care-strips"]


def test_panes_washed_last_autumn_are_washed_this_autumn_again() -> None:
    found = listed(HEAD + CARED_FOR + "  done wash the panes, 20 September 2026\n")
    assert the(found, "salad-box/care-wash").planned is not None
