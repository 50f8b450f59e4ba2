"""Work done, moved or left out, and warnings set aside."""

from __future__ import annotations

from plantframe.language.vocabulary.common import BUILT, LANGUAGE, PLACES, fact

LANGUAGE.topic = "Work done, and warnings set aside"

_WORKED_ON = f"{BUILT} bed border garden wall"

fact(
    "done",
    "{job}, {date:on}, by? {person}",
    blocks=_WORKED_ON,
    help="A job that is done, in the words of its step, and when.",
    example="done set the posts, 24 April",
    repeats=True,
)
fact(
    "move",
    "{job} to {date:to}, because {reason}",
    blocks=_WORKED_ON,
    help="A job moved to another day.",
    example="move weave the bar to 2 May",
    also="moved",
    repeats=True,
)
fact(
    "skip",
    "{job} because {reason}, {job}, because {reason}",
    blocks=_WORKED_ON,
    help="A job that will not be done, and why.",
    example='skip fix the stays because "sheltered corner"',
    repeats=True,
)
fact(
    "ok",
    "{rule} because {reason}, {rule}, because {reason}, at_about {number:times} times, at "
    "{note|warn|stop|ask:level}, until {date:until}, until {year:until}, {date:on}, by? {person}",
    blocks=f"{PLACES} garden want task shed yard",
    help="A warning set aside: its name, why, who and when, and how bad it was then.",
    example='ok crowded because "we thin by eating", Maud, 2 March',
    repeats=True,
)
