"""A job, what must go before it, and the days it may fall on."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.likeness import short

if TYPE_CHECKING:
    from datetime import date

    from plantframe.language.mistakes import Where

BUILD: Final = "build"
SOW: Final = "sow"
PLANT: Final = "plant out"
TRAIN: Final = "train"
PICK: Final = "pick"
TAKE_DOWN: Final = "take down"
CARE: Final = "look after"
LINES: Final = "buried lines"
OWN: Final = "task"

# What the weather or the plant sets the day of; the rest is put on a day that is free.
BY_THE_PLANT: Final = frozenset({SOW, PLANT, TRAIN, PICK})

# Work is put as late as leaves this in hand before what it serves (common practice, no source).
IN_HAND: Final = timedelta(days=7)

OPEN, DONE, SKIPPED = "open", "done", "skipped"


@frozen
class Job:
    """One job of the list, or one round that comes again.

    id          block and step, the same as long as both keep their names: bean-net/bar
    says        what is done, the garden's noun first
    block       the name of the frame, bed or task it belongs to
    kind        build, sow, plant out, train, pick, take down, look after, buried lines, task
    minutes     from and to for the hands named, None where nobody can say
    after       ids of the jobs that must be done first
    earliest, latest   the days between which it fits; None where nothing sets one
    planned     the day it is down for, None where any day will do, or where its days are long over
    alone       how one person does what wants two
    wait        what must pass after it: 7 to 14 days for the feet to air
    how         a hint on doing it
    place       where it is done: at the bench, in Long Bed
    every_days  from and to, of a job that comes round
    until       the last day of a job that comes round
    whenever    what calls for it, where no date does: after a gale
    reckoned    what its days are reckoned from where the plan gives none
    overdue     its days are over and it is not marked as done
    because     why the gardener leaves it out, of a job that is skipped
    weight_kg   what its hands lift between them, 0 where that is nothing to speak of
    half        morning or afternoon of the planned day, "" where the day is not parted
    begins      minutes into that half-day, None where it takes none of the hours for building
    short       fewer hands are there than it wants: the one-person way
    days        the days it is worked on, where it is parted over several
    """

    id: str
    says: str
    block: str
    kind: str
    hands: int = 1
    tools: tuple[str, ...] = ()
    minutes: tuple[float, float] | None = None
    after: tuple[str, ...] = ()
    earliest: date | None = None
    latest: date | None = None
    planned: date | None = None
    who: tuple[str, ...] = ()
    dont_yet: str = ""
    stop_point: bool = False
    alone: str = ""
    wait: str = ""
    how: str = ""
    dangers: tuple[str, ...] = ()
    place: str = ""
    power: bool = False
    every_days: tuple[int, int] | None = None
    until: date | None = None
    whenever: str = ""
    reckoned: str = ""
    overdue: bool = False
    because: str = ""
    where: Where | None = None
    weight_kg: float = 0.0
    half: str = ""
    begins: float | None = None
    short: bool = False
    days: tuple[date, ...] = ()

    @property
    def does(self) -> str:
        """What is done, without the block's name."""
        return self.says.removeprefix(f"{self.block}: ")

    @property
    def brief(self) -> str:
        """The first clause of what is done, with the plant it is done to: `pole bean: pick`."""
        plant, colon, rest = self.does.partition(": ")
        return f"{plant}: {short(rest)}" if colon else short(plant)


@frozen
class Window:
    """The days the plan itself leaves a job, before the others have their say.

    not_before, not_after   None where it sets none
    aim                     the day meant, None where any day between will do
    wanted                  a day it had better be done by, though nothing is late that misses it
    said                    the gardener's words for it: ready by 15 May
    """

    not_before: date | None = None
    aim: date | None = None
    not_after: date | None = None
    said: str = ""
    wanted: date | None = None


@frozen
class Draft:
    """A job before its days are worked out.

    called   the short name a mark may use for it
    state    open, or not listed: done, kept for its day; skipped, kept for what it comes after
    pinned   the day the gardener moved it to, or did it on
    in_time  the plant sets its time of year: after it, it is too late
    """

    job: Job
    called: str = ""
    window: Window = Window()
    state: str = OPEN
    pinned: date | None = None
    in_time: bool = False

    @property
    def id(self) -> str:
        """The job's address."""
        return self.job.id


@frozen
class Before:
    """One job goes before another.

    wait       days between them, the fewest and the most
    waits_for  what those days are for
    because    why, in plain words
    own        the gardener's line that says so; None where the trade does
    """

    first: str
    then: str
    wait: tuple[int, int] = (0, 0)
    waits_for: str = ""
    because: str = ""
    own: Where | None = None


@frozen
class Trouble:
    """Something about order or days that cannot be as written.

    name   circle, out-of-order, too-late, short-wait or overdue
    says   what it is, naming the jobs
    jobs   their ids
    where  the line of the plan that it hangs on
    """

    name: str
    says: str
    jobs: tuple[str, ...]
    where: Where | None = None
