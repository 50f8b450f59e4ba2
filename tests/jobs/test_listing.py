"""The whole list: addresses, southern gardens, odd plans, and what is loaded for it."""

from __future__ import annotations

import subprocess
import sys
from datetime import date
from typing import TYPE_CHECKING

import pytest

from tests.jobs.gardens import BEANS, HEAD, NET, SOUTH, listed, place, the

if TYPE_CHECKING:
    from pathlib import Path


def test_an_address_stays_while_block_and_step_keep_their_names() -> None:
    before = {job.id for job in listed(HEAD + NET + BEANS).jobs}
    wider = NET.replace("bays 2", "bays 3")
    more = f"{HEAD}task order seed\nframe New Arch, arch\n{wider}{BEANS}  wind windy\n"
    assert before <= {job.id for job in listed(more).jobs}


def test_no_two_jobs_share_an_address() -> None:
    twice = "task oil the spade\ntask oil the spade\nframe Bean-Net, net frame\n"
    found = [job.id for job in listed(HEAD + NET + BEANS + twice).jobs]
    assert len(found) == len(set(found))


def test_a_southern_season_runs_from_spring_to_autumn() -> None:
    plan = "  grow runner bean, sow 25 October\n"
    found = listed(SOUTH + NET + plan, date(2026, 7, 1))
    assert the(found, "bean-net/sow-runner-bean").planned == date(2026, 10, 25)
    assert the(found, "bean-net/pins").planned == date(2026, 10, 18)
    down = the(found, "bean-net/down-pull-the-pins").planned
    assert down is not None
    assert date(2027, 5, 20) <= down <= date(2027, 6, 10)
    assert not found.troubles


def test_a_garden_without_frost_still_has_its_order() -> None:
    head = "garden Reef End, 2027\n  place 17 S, 145 E\n  frost none\n"
    found = listed(f"{head}{NET}  grow yardlong bean\n")
    assert place(found, "drop in the pins") < place(found, "sow yardlong bean")


@pytest.mark.parametrize(
    "text",
    [
        "",
        "garden\n",
        "frame\n",
        "frame Bean Net, net frame\n  bays 0 of 0 ft\n",
        "frame Bean Net, net frame\n  posts 2x2, 1 ft, 3 ft down\n  grow bean\n",
        "task\n",
        "garden X, 2027\ntask after\ntask a after a\n",
        "garden X, 2027\nframe A, own design\n  step\n  step after\n  piece\n",
        "garden X, 2027\nframe A\n  own design\n  step a after a\n  step a after b\n",
        "garden X, 2027\n  done the thing, 31 June\n  move to 5 May\n  skip because\n",
        "garden X, 2027\nframe A, net frame\n  move net to 5 May\n  done thread the net\n",
        "garden X, 2027\ncover C, cold frame\n  on 15 April to 1 October\n  take down 3 March\n",
        "garden X, 2027\n  free Sunday 0 h\n  away 1 January to 31 December\n" + NET + BEANS,
    ],
)
def test_half_a_plan_gives_half_a_list_and_never_a_fault(text: str) -> None:
    found = listed(text)
    seen: set[str] = set()
    for job in found.jobs:
        assert set(job.after) <= seen
        seen.add(job.id)


def test_the_graph_is_loaded_for_the_list_alone(root: Path) -> None:
    code = (
        "import sys; from tests.jobs.gardens import HEAD, NET, season; "
        "from plantframe.jobs.gathering import gather; gather(season(HEAD + NET)); "
        "before = 'networkx' in sys.modules; "
        "from plantframe.jobs.listing import jobs_of; jobs_of(season(HEAD + NET)); "
        "sys.exit(0 if not before and 'networkx' in sys.modules else 1)"
    )
    assert subprocess.run([sys.executable, "-c", code], cwd=root, check=False).returncode == 0
