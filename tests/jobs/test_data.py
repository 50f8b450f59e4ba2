"""The jobs as data: the names that scripts rely on."""

from __future__ import annotations

import json

from plantframe.jobs.choosing import of_frame
from plantframe.jobs.data import as_data
from tests.jobs.gardens import BEANS, HEAD, NET, listed

PROMISED = {
    *("id", "says", "block", "hands", "tools", "minutes", "after", "earliest", "latest"),
    *("planned", "who", "dont_yet", "stop_point"),
}
FOUND = listed(HEAD + NET + BEANS + "  done bore the posts\ntask order seed\n")


def test_every_job_has_the_names_that_were_promised() -> None:
    data = as_data(FOUND)
    assert len(data["jobs"]) == len(FOUND.jobs)
    assert all(set(job) >= PROMISED for job in data["jobs"])


def test_days_are_dates_and_what_is_not_known_is_nothing() -> None:
    jobs = {job["id"]: job for job in as_data(FOUND)["jobs"]}
    assert jobs["bean-net/sow-pole-bean"]["planned"] == "2027-05-18"
    assert jobs["task/order-seed"]["planned"] is None
    net = jobs["bean-net/net"]
    assert net["minutes"] == 40
    assert net["minutes_range"] == [40, 40]
    assert net["dont_yet"] == "the bar waits until the net is on"
    assert net["after"] == ["bean-net/firm"]


def test_what_was_made_of_marks_goes_with_it() -> None:
    data = as_data(FOUND)
    assert "bean-net/bore" in data["done"]
    assert data["mistakes"][0]["name"] == "matched-job"
    assert data["troubles"] == []


def test_some_of_the_jobs_may_be_given_alone() -> None:
    data = as_data(FOUND, of_frame(FOUND.jobs, "Bean Net"))
    assert {job["block"] for job in data["jobs"]} == {"Bean Net"}


def test_it_is_plain_data_and_the_same_each_time() -> None:
    assert json.dumps(as_data(FOUND)) == json.dumps(as_data(FOUND))
