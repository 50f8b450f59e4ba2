"""jobs, calendar, log, next and start, as called from a shell."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from typing import TYPE_CHECKING, Any

import pytest

from plantframe.commands.main import main

if TYPE_CHECKING:
    from pathlib import Path

SPRING = ("--today", "2027-03-01")
TEXT = """garden Hazel End, 2027
  place 51.9 N, 2.3 W
  frost last 6 May, first 12 October
  person Isa
  person Bram
  free Saturday 6 h
  away 10 to 20 August
bed Long Bed, 1.2 m x 7.5 m
frame Bean Net, net frame, in Long Bed
  bays 2 of 8 ft
  bar 2x2
  grow pole bean, 40 plants, sow 18 May
  ready by 15 May
log 2 August, Bean Net, picked 1.4 kg, bar 5 cm low
note Bean Net: never again on a Sunday
"""


@pytest.fixture
def plan(tmp_path: Path) -> str:
    file = tmp_path / "2027.plan"
    file.write_text(TEXT, "utf-8")
    return str(file)


def said(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    """What a command prints; it is carried out."""
    assert main(words) == 0
    return capsys.readouterr().out


def data(capsys: pytest.CaptureFixture[str], *words: str) -> dict[str, Any]:
    found: dict[str, Any] = json.loads(said(capsys, *words, "--json"))
    return found


# ---- jobs ---------------------------------------------------------------------------------------
def test_the_jobs_as_data_keep_their_promise(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    found = data(capsys, "jobs", plan, *SPRING)
    promised = {"id", "says", "block", "hands", "tools", "minutes", "after", "earliest", "latest"}
    promised |= {"planned", "who", "dont_yet", "stop_point"}
    assert all(promised <= set(job) for job in found["jobs"])
    pins = next(job for job in found["jobs"] if job["id"] == "bean-net/pins")
    assert (pins["latest"], pins["slack_days"]) == ("2027-05-15", 7)
    assert sorted(pins["who"]) == ["Bram", "Isa"]


def test_a_day_says_who_does_what_and_where_to_stop(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "jobs", plan, *SPRING, "--day", "2027-05-08")
    assert "Sat 8 May 2027, morning  Bean Net" in out
    assert "Who does what, morning" in out
    assert "  Isa:  " in out
    assert "  Bram:  " in out
    assert "Where to stop if it rains, morning" in out
    assert "Mind: " in out


def test_a_persons_list_has_no_job_of_the_others(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    for name in ("Isa", "bram"):
        found = data(capsys, "jobs", plan, *SPRING, "--for", name)
        assert found["jobs"]
        others = [job for job in found["jobs"] if job["who"]]
        assert all(name.title() in job["who"] for job in others)


def test_a_stranger_is_told_who_there_is(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    assert main(["jobs", plan, *SPRING, "--for", "Nobody"]) == 2
    assert "Isa and Bram" in capsys.readouterr().err


def test_the_weeks_set_hours_against_hours(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    out = said(capsys, "jobs", plan, *SPRING, "--weeks")
    assert "12 h" in out  # six hours of two people
    assert "15 May at latest" in out
    found = data(capsys, "jobs", plan, *SPRING, "--weeks")
    assert {week["free_hours"] for week in found["weeks"]} == {12.0}


def test_the_neighbours_page_names_days_and_no_jargon(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "jobs", plan, *SPRING, "--away")
    assert out.startswith("Hazel End, 10 to 20 August\n")
    assert "pick every two or three days" in out
    for word in ("slack", "latest", "overdue", "id"):
        assert f" {word} " not in out
    assert len(out.splitlines()) <= 30


def test_without_days_away_the_page_is_refused_in_a_sentence(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    assert main(["jobs", plan, "--today", "2027-09-01", "--away"]) == 2
    assert "away 10 to 20 July" in capsys.readouterr().err


def test_before_wind_tells_the_weakest_first_and_keeps_people_away_from_it(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "jobs", plan, "--today", "2027-08-01", "--before-wind")
    assert "1.  Bean Net. A usual gale asks" in out
    assert "nobody goes near" in out
    assert data(capsys, "jobs", plan, "--today", "2027-08-01", "--before-wind")["standing"]


def test_rain_says_what_it_moves(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    out = said(capsys, "jobs", plan, *SPRING, "--rain", "2027-05-08")
    assert "Sat 8 May 2027 becomes Sat 15 May 2027" in out
    found = data(capsys, "jobs", plan, *SPRING, "--rain", "2027-05-08")
    assert {move["was"] for move in found["moved"]} == {"2027-05-08"}


# ---- calendar -----------------------------------------------------------------------------------
def test_the_calendar_goes_into_a_file_of_its_own_and_over_nothing_else(
    capsys: pytest.CaptureFixture[str], plan: str, tmp_path: Path
) -> None:
    file = tmp_path / "year.ics"
    assert "with an alarm" in said(capsys, "calendar", plan, *SPRING, "--to", str(file))
    first = file.read_bytes()
    said(capsys, "calendar", plan, "--today", "2027-04-01", "--to", str(file))
    assert file.read_bytes() != first
    for other in (plan, str(tmp_path)):
        before = (tmp_path / "2027.plan").read_bytes()
        assert main(["calendar", plan, *SPRING, "--to", other]) == 2
        assert (tmp_path / "2027.plan").read_bytes() == before


def test_neither_clock_nor_time_zone_changes_an_answer(root: Path) -> None:
    def run(zone: str, *words: str) -> bytes:
        done = subprocess.run(
            [sys.executable, "-m", "plantframe", *words, "plans/quarry-row", *SPRING],
            cwd=root,
            env={**os.environ, "TZ": zone},
            capture_output=True,
            check=True,
        )
        return done.stdout

    for words in (("calendar",), ("jobs", "--json"), ("log",), ("next",)):
        assert run("Pacific/Kiritimati", *words) == run("Etc/GMT+12", *words), words


# ---- log ----------------------------------------------------------------------------------------
def test_the_log_tells_totals_bars_beds_and_lessons(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "log", plan, "--today", "2027-11-01")
    for words in ("Picked", "1.4 kg", "Did it pay?", "Bars that hung low", "Beds by year"):
        assert words in out
    assert "pole bean (pea family)" in out
    assert "never again on a Sunday" in out
    found = data(capsys, "log", plan, "--today", "2027-11-01")
    assert found["picked"][0]["kg"] == 1.4
    assert found["bowed"][0]["low_m"] == 0.05


def test_an_empty_log_is_no_fault(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    file = tmp_path / "bare.plan"
    file.write_text("garden Hazel End, 2027\n", "utf-8")
    assert "0 lines" in said(capsys, "log", str(file), *SPRING)


# ---- next and start -----------------------------------------------------------------------------
def test_next_is_never_written_over_an_old_file(
    capsys: pytest.CaptureFixture[str], plan: str, tmp_path: Path
) -> None:
    file = tmp_path / "2028.plan"
    assert "the plan of 2028" in said(capsys, "next", plan, *SPRING, "--to", str(file))
    before = file.read_text("utf-8")
    assert main(["next", plan, *SPRING, "--to", str(file)]) == 2
    assert "there already" in capsys.readouterr().err
    assert file.read_text("utf-8") == before
    assert main(["check", str(file), "--today", "2028-01-10"]) == 0


def test_start_makes_a_plan_from_what_is_said(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "first.plan"
    words = ("--name", "Elm Yard", "--bed", "Long Bed, 1.2 m x 7.5 m", "--grow", "runner bean")
    said(capsys, "start", *words, "--to", str(file), *SPRING)
    assert "want runner bean" in file.read_text("utf-8")
    assert main(["check", str(file), *SPRING]) == 0
    assert main(["start", *words, "--to", str(file), *SPRING]) == 2


def test_start_asks_where_nothing_is_said_and_somebody_is_there(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    class Typed(io.StringIO):
        def isatty(self) -> bool:
            return True

    lines = ["Elm Yard", "52.1 N, 1.4 W", "", "6 May", "12 October", "Maud", ""]
    lines += ["Saturday 6 h", "", "cucumber", ""]
    monkeypatch.setattr(sys, "stdin", Typed("\n".join(lines) + "\n"))
    out = said(capsys, "start", *SPRING)
    assert "What is the garden called?" in out
    assert "garden Elm Yard, 2027" in out
    assert "  person Maud" in out
    assert "want cucumber" in out


def test_questions_that_are_broken_off_write_nothing(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    class Typed(io.StringIO):
        def isatty(self) -> bool:
            return True

    monkeypatch.setattr(sys, "stdin", Typed("Elm Yard\n"))
    assert main(["start", "--to", str(tmp_path / "new.plan")]) == 2
    assert "broken off" in capsys.readouterr().err
    assert not (tmp_path / "new.plan").exists()


@pytest.mark.parametrize("command", ["log", "next", "start", "calendar"])
def test_help_is_there_for_each(capsys: pytest.CaptureFixture[str], command: str) -> None:
    with pytest.raises(SystemExit) as end:
        main([command, "--help"])
    assert end.value.code == 0
    assert f"plantframe {command}" in capsys.readouterr().out


def test_check_recalls_bars_that_bowed_twice_under_the_same_plant(
    capsys: pytest.CaptureFixture[str], plan: str, tmp_path: Path
) -> None:
    before = TEXT.replace("2027", "2026")
    (tmp_path / "2026.plan").write_text(before, "utf-8")
    (tmp_path / "2027.plan").write_text("read 2026 as last year\n" + TEXT, "utf-8")
    main(["check", plan, *SPRING])
    out = " ".join(capsys.readouterr().out.split())
    assert "From your log: Bean Net: a bar of yours has bowed under pole bean twice" in out


@pytest.mark.parametrize("day", ["0001-01-01", "9999-12-31"])
@pytest.mark.parametrize("flag", ["--week", "--day", "--rain", "--today"])
def test_a_day_that_no_plan_reaches_to_is_refused_in_a_sentence(
    capsys: pytest.CaptureFixture[str], plan: str, flag: str, day: str
) -> None:
    assert main(["jobs", plan, flag, day]) == 2
    assert "no plan reaches to the year" in capsys.readouterr().err


@pytest.mark.parametrize("day", ["1900-01-01", "1999-12-31", "2027-12-31", "2200-12-31"])
@pytest.mark.parametrize(
    "words",
    [("jobs",), ("jobs", "--weeks"), ("jobs", "--walk"), ("calendar",), ("log",), ("next",)],
)
def test_a_plan_whose_season_is_over_or_far_off_gets_an_answer(
    capsys: pytest.CaptureFixture[str], plan: str, words: tuple[str, ...], day: str
) -> None:
    assert said(capsys, words[0], plan, *words[1:], "--today", day)


def test_the_heading_says_what_was_asked_for(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    out = said(capsys, "jobs", plan, "--day", "2027-12-25", *SPRING)
    assert out.startswith("Hazel End, Sat 25 December 2027: nothing to do\n")
    out = said(capsys, "jobs", plan, "--week", "2027-05-08", *SPRING)
    assert out.startswith("Hazel End, week of Mon 3 May 2027: ")


def test_a_season_that_is_over_is_said_to_be(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    main(["jobs", plan, "--today", "2029-03-01"])
    assert "That season is over" in capsys.readouterr().out


def test_who_does_what_names_the_frame_once_and_when_one_is_free(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "jobs", plan, "--day", "2027-05-08", *SPRING)
    page = out[out.index("Who does what") : out.index("Where to stop")]
    assert page.count("Bean Net") == 2
    assert "; then" not in page


@pytest.mark.parametrize("day", ["2027-05-08", "8 May 2027", "May 8, 2027", "8 may 2027"])
def test_a_day_may_be_given_as_one_writes_it(
    capsys: pytest.CaptureFixture[str], plan: str, day: str
) -> None:
    out = said(capsys, "jobs", plan, "--day", day, *SPRING)
    assert out.startswith("Hazel End, Sat 8 May 2027: ")


@pytest.mark.parametrize("day", ["31 June 2027", "8 Maybe 2027", "8 Ma 2027", "May 2027", "soon"])
def test_what_is_no_day_is_refused_in_a_sentence(
    capsys: pytest.CaptureFixture[str], plan: str, day: str
) -> None:
    assert main(["jobs", plan, "--day", day]) == 2
    assert "is no date" in capsys.readouterr().err


def test_a_helpers_list_is_of_the_days_they_are_there(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "2027.plan"
    file.write_text(TEXT.replace("  person Bram", "  person Bram, here 8 May"), "utf-8")
    out = said(capsys, "jobs", str(file), "--for", "bram", *SPRING)
    assert out.startswith("Hazel End, for Bram: ")
    assert "May 2027" in out
    assert "Any time" not in out
    assert "July" not in out.replace("until 26 July", "")


def test_a_walk_with_nothing_due_says_what_comes_next(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    out = said(capsys, "jobs", plan, "--walk", *SPRING)
    assert "Nothing is due today. Next comes Bean Net, pole bean: " in out


def test_the_table_of_weeks_stays_within_the_screen(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    nets = "".join(
        f"frame Very Long Net {n}, net frame\n  grow pole bean, 20 plants, sow 18 May\n"
        for n in range(5)
    )
    file = tmp_path / "2027.plan"
    task = "task carry the old greenhouse staging round to the barn and stack it, by 1 March\n"
    file.write_text(TEXT + nets + task, "utf-8")
    out = said(capsys, "jobs", str(file), "--weeks", *SPRING)
    assert "carry the old greenhouse …" in out
    assert max(len(line) for line in out.splitlines()) <= 80


def test_places_to_stop_are_told_in_the_order_they_come(
    capsys: pytest.CaptureFixture[str], root: Path
) -> None:
    plan = str(root / "plans" / "quarry-row" / "2027.plan")
    out = said(capsys, "jobs", plan, "--day", "2027-02-27", "--today", "2027-01-10")
    part = out[out.index("Where to stop if it rains, morning") :]
    told = [
        line.split(" in, after")[0].strip() for line in part.splitlines() if " in, after" in line
    ]
    minutes = [
        60 * int(one.split(" h")[0]) + int((one.split("h ") + ["0"])[1][:2]) for one in told[:3]
    ]
    assert minutes == sorted(minutes)
    assert len(minutes) == 3
