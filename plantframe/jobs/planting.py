"""The jobs of what grows: sowing, hardening off, planting out, leading, picking, clearing."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.jobs.care import add_rounds
from plantframe.jobs.days import window_of
from plantframe.jobs.job import PICK, PLANT, SOW, TAKE_DOWN, TRAIN, Draft, Job, Window
from plantframe.season.entries import entry_of
from plantframe.season.likeness import slug
from plantframe.season.plantings import as_range
from plantframe.season.sowing import warm_soil_day, with_the_rains
from plantframe.season.units import day as shown
from plantframe.season.units import plural
from plantframe.season.work import day_in

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced
    from plantframe.jobs.drafts import Drafts
    from plantframe.plan.things import Garden
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.sowing import Ground

LASTING: Final = frozenset({"woody", "perennial"})
FROST_TENDER: Final = frozenset({"tender", "half hardy"})
HARDENING_DAYS: Final = (7, 10)  # common practice, no source
# What is sown from a day on is sown within two weeks of it (common practice, no source).
# When what lasts is planted where nobody gives a day (common practice, no source).
DORMANT: Final = (
    "From a pot it goes in whenever the ground is open and moist; bare roots only while it rests"
)
UP_IN: Final = timedelta(days=7)  # seed in the ground is out of the frost so long at least
LATE_SPRING: Final = timedelta(days=120)  # earlier than that is the end of the season before
SOWN_WITHIN: Final = timedelta(days=14)
PICKED_FOR_DAYS: Final = 28  # after the last likely first picking (common practice, no source)
CLEARED_AFTER_DAYS: Final = 7  # at least a week of picking before a crop is cleared (likewise)


@frozen
class Grown:
    """A planting with the days it is reckoned to have.

    sow, out  the windows of sowing and of planting out; None where there is no such job
    entries   the plants it can be, one where that is clear
    ends      the last day it is picked or in flower, None where it stays or nobody knows
    usual     the windows are the usual ones, reckoned from the frost
    """

    worked: WorkedPlanting
    entries: tuple[Plant, ...]
    sow: Window | None
    out: Window | None
    ends: date | None
    usual: bool

    @property
    def in_ground(self) -> Window | None:
        """When seed or plant comes to its place."""
        return self.out or self.sow

    @property
    def lasts(self) -> bool:
        """It lives for years, whichever plant it is."""
        lives = [entry.life.value if entry.life else "" for entry in self.entries]
        return bool(lives) and set(lives) <= LASTING

    def first_picking(self) -> date | None:
        """The first day there may be something to pick."""
        days = _harvest_days(self)
        anchor = _aim(self.anchor)
        return anchor + timedelta(days=days[0]) if days and anchor else None

    @property
    def anchor(self) -> Window | None:
        """What its harvest is counted from."""
        entry = self.worked.entry
        if entry is not None and entry.harvest is not None and "sowing" in entry.harvest.base:
            return self.sow or self.out
        return self.out or self.sow


@frozen
class Site:
    """Where something is planted.

    block   the name of the frame, bed or wall
    place   where that is, in words
    who     the people who pick there
    how     what its frame's kind says of planting
    framed  a frame holds it up
    """

    block: str
    place: str
    who: tuple[str, ...] = ()
    how: str = ""
    framed: bool = False


@frozen
class Growing:
    """The jobs of one planting, as ids.

    placed  with it seed or plant is in its place; "" where it is there already
    over    what must be over before the frame is cleared
    """

    grown: Grown
    placed: str
    over: tuple[str, ...]


def grown(
    planting: WorkedPlanting,
    until: date | None,
    today: date,
    *,
    there: bool,
    covered: bool = False,
) -> Grown:
    """When a planting is sown, planted and over.

    until    the day its frame comes down, None where it stays
    there    its frame stood before this season, so what lasts grows there already
    covered  it grows in a cold frame or a tunnel, and what is sown under cover is sown there
    """
    can_be = [entry_of(name) for name in planting.planting.plants]
    entries = tuple(entry for entry in can_be if entry is not None)
    own = planting.planting
    usual = own.sow is None and own.out is None
    sow = window_of(own.sow) if own.sow else None
    out = window_of(own.out) if own.out else None
    found = Grown(planting, entries, sow, out, None, usual=False)
    if sow is not None and out is None and planting.under_cover and not covered:
        found = replace(found, out=_usual_days(found, today)[1] or Window())
    if usual and not (found.lasts and there):
        sow, out = _usual_days(found, today)
        found = replace(found, sow=sow, out=out, usual=True)
    return replace(found, ends=_ends(found, until))


def _usual_days(found: Grown, today: date) -> tuple[Window | None, Window | None]:
    """The usual windows of sowing in place or of planting out.

    They are counted from the frost, or from the rains where there is none.
    """
    entry, garden = found.worked.entry, found.worked.garden
    if entry is None:
        # whichever of several plants it is: what lasts for years is planted, not sown
        return (None, Window()) if found.lasts else (Window(), None)
    wet = with_the_rains(entry, garden, today)
    if wet is not None and found.lasts:
        return None, _from_ground(wet)
    if entry.sow is not None and not found.worked.under_cover:
        window = _from_ground(wet) if wet else _from_frost(entry.sow, garden)
        return _in_warm_soil(window, entry, garden) or Window(), None
    if entry.plant_out is not None:
        if wet is not None:
            return _raised_before(_from_ground(wet), entry), _from_ground(wet)
        sow = _from_frost(entry.sow_indoors, garden) if entry.sow_indoors else None
        return sow, _from_frost(entry.plant_out, garden) or Window()
    return None, _from_ground(wet) if wet else Window()


def _from_ground(ground: Ground) -> Window:
    middle = ground.first + (ground.last - ground.first) / 2
    return Window(ground.first, middle, ground.last, ground.why)


def _raised_before(out: Window, entry: Plant) -> Window | None:
    """When what is raised first is sown, so that it is ready for its place; None if it is not."""
    raised, planted = as_range(entry.sow_indoors), as_range(entry.plant_out)
    if raised is None or planted is None:
        return None
    days = timedelta(days=round(planted.middle - raised.middle))
    first, aim, last = (
        one - days if one else None for one in (out.not_before, out.aim, out.not_after)
    )
    return Window(first, aim, last, out.said)


def _in_warm_soil(window: Window | None, entry: Plant, garden: Garden) -> Window | None:
    """The window less the days on which the soil is likely to be too cold for the seed.

    A range of print outranks the estimate of the soil; a first day alone waits for it.
    """
    warm = warm_soil_day(entry, garden)
    if window is None or warm is None or window.not_before is None or window.aim is None:
        return window
    first, last = window.not_before, window.not_after
    if first == last:
        last = max(first, warm) + SOWN_WITHIN
    if warm <= first or (last is not None and warm > last):
        return replace(window, not_after=last)
    said = f"{window.said}, once the soil is likely to be warm enough for the seed"
    return Window(warm, max(window.aim, warm), last, said)


def _from_frost(days: Sourced, garden: Garden) -> Window | None:
    """The window that a plant's own figure leaves: days from the last or the first frost."""
    frost = garden.frost_first if "first" in days.base else garden.frost_last
    if frost is None or days.is_word:
        return None
    name = "first" if "first" in days.base else "last"
    low = days.usual if days.low is None else days.low
    high = days.usual if days.high is None else days.high
    first, last = (frost.day + timedelta(days=round(one)) for one in (low, high))
    middle = frost.day + timedelta(days=round(days.usual))
    return Window(first, middle, last, f"the usual time from your {name} frost")


def _harvest_days(found: Grown) -> tuple[int, int] | None:
    """Days from sowing or planting to the first picking; None for what bears in later years."""
    harvest = found.worked.entry.harvest if found.worked.entry else None
    if harvest is None or harvest.is_word or not harvest.base.startswith("days"):
        return None
    low = harvest.usual if harvest.low is None else harvest.low
    high = harvest.usual if harvest.high is None else harvest.high
    return round(low), round(high)


def _ends(found: Grown, until: date | None) -> date | None:
    """The last day of a crop: as the plan says, at the first frost, or some weeks of picking."""
    planting, entry = found.worked.planting, found.worked.entry
    if planting.until is not None:
        return planting.until.last
    if until is not None:
        return until
    if found.lasts:
        return None
    frost = found.worked.garden.frost_first
    tender = [one.tender is not None and one.tender.value in FROST_TENDER for one in found.entries]
    if tender and all(tender) and frost is not None:
        return frost.day
    days, anchor = _harvest_days(found), _aim(found.anchor)
    if days is not None and anchor is not None:
        return anchor + timedelta(days=days[1] + PICKED_FOR_DAYS)
    return frost.day if frost is not None and entry is not None else None


def _aim(window: Window | None) -> date | None:
    return window.aim if window is not None else None


# ---- the jobs ---------------------------------------------------------------------------------
def add_planting(found: Grown, site: Site, out: Drafts) -> Growing:
    """Add the jobs of one planting under the block it stands in."""
    block = site.block
    bench = _Bench(found, block, site.place, out)
    placed = bench.put_in(site.how)
    rounds = add_rounds(
        found.worked, bench.job, _offsets(found, placed), found.ends, out, framed=site.framed
    )
    picking = [name for name in rounds if out.by_id[name].job.kind == PICK]
    if not picking and (days := _harvest_days(found)) and placed and not found.lasts:
        does = f"pick {found.worked.name}"
        name = out.add(Draft(replace(bench.job(f"{bench.slug}-pick", does), kind=PICK), does))
        out.put([placed], [name], wait=(days[0], days[0]), waits_for="the crop to ripen")
        picking = [name]
    for name in picking:
        _picked(name, found, site.who, out)
    return Growing(found, placed, (*((placed,) if placed else ()), *rounds, *picking))


def _picked(name: str, found: Grown, who: tuple[str, ...], out: Drafts) -> None:
    """Give a round of picking its people, and the day the plan itself names for the first."""
    draft = out.by_id[name]
    own = found.worked.planting
    start = day_in(own.fact, "pick", found.worked.garden)
    window = window_of(start) if start else draft.window
    job = replace(draft.job, who=who or draft.job.who, until=draft.job.until or found.ends)
    out.change(name, job=job, window=window)


def _offsets(found: Grown, placed: str) -> dict[str, tuple[str, Window | None]]:
    """What a round may be counted from: the job that begins it, and its window."""
    return {
        "sowing": (placed, found.sow or found.out),
        "planting": (placed, found.out or found.sow),
    }


class _Bench:
    """Makes the jobs that bring one planting to its place."""

    def __init__(self, found: Grown, block: str, place: str, out: Drafts) -> None:
        self.found = found
        self.block = block
        self.place = place
        self.out = out
        self.slug = slug(found.worked.planting.said)

    def job(self, name: str, does: str) -> Job:
        """A job of this planting."""
        return Job(
            f"{slug(self.block)}/{name}",
            f"{self.block}: {does}",
            self.block,
            TRAIN,
            place=self.place,
            where=self.found.worked.planting.fact.where,
        )

    def put_in(self, how: str) -> str:
        """Add sowing and planting; the id of the job with which it is in its place."""
        found = self.found
        own = found.worked.planting
        count = f", {plural(own.count, 'plant')}" if own.count else ""
        indoors = found.sow is not None and (found.out is not None or found.worked.under_cover)
        sown = ""
        if found.sow is not None:
            where = f" {own.raised or 'under cover'}" if indoors else ""
            sow = "sow" if found.entries or own.sow else "sow or plant"
            sown = self.add(SOW, "sow", f"{sow} {own.named}{where}{count}", found.sow)
            if found.out is not None:
                self.elsewhere(sown)  # it comes to its place later
            if not indoors:
                self.tell(sown, how)
                self.mind_frost(sown, found.sow, UP_IN)
                return sown
        if found.out is None:
            return sown
        does = "plant" if found.lasts else "plant out"
        planted = self.add(PLANT, "plant-out", f"{does} {own.named}{count}", found.out)
        self.tell(planted, how)
        self.mind_frost(planted, found.out, timedelta(0))
        if found.lasts and found.out == Window() and not found.worked.garden.frost_none:
            self.tell(planted, ". ".join(one.rstrip(".") for one in (how, DORMANT) if one))
        if indoors:
            hardened = self.harden()
            self.out.put([sown], [hardened])
            self.out.put(
                [hardened], [planted], wait=HARDENING_DAYS, waits_for="the plants to harden"
            )
        return planted

    def harden(self) -> str:
        """Add hardening off, in the days before planting out."""
        low, high = HARDENING_DAYS
        does = f"harden off {self.found.worked.name}: out by day, in at night"
        job = replace(self.job(f"harden-{self.slug}", does), kind=PLANT, place="")
        job = replace(job, wait=f"{low} to {high} days for the plants to harden")
        goes_out = _aim(self.found.out)
        start = goes_out - timedelta(days=high) if goes_out else None
        return self.out.add(Draft(job, f"harden off {self.found.worked.name}", Window(aim=start)))

    def add(self, kind: str, name: str, does: str, window: Window) -> str:
        """Add one job with its window."""
        reckoned = window.said if self.found.usual and window.aim else ""
        job = replace(self.job(f"{name}-{self.slug}", does), kind=kind, reckoned=reckoned)
        if window.aim is not None and not self.found.usual:
            window = replace(window, said=f"{name.replace('-', ' ')} {window.said}")
        return self.out.add(Draft(job, f"{name.replace('-', ' ')} {self.slug}", window))

    def mind_frost(self, name: str, window: Window, up_in: timedelta) -> None:
        """Say so where frost is still usual when a tender plant is out in the open."""
        found = self.found
        frost = found.worked.garden.frost_last
        tender = [
            one.tender is not None and one.tender.value in FROST_TENDER for one in found.entries
        ]
        if frost is None or window.aim is None or found.worked.under_cover:
            return
        days = (frost.day - window.aim).days
        if not tender or not all(tender) or not up_in.days < days < LATE_SPRING.days:
            return
        draft = self.out.by_id[name]
        caution = (
            f"Frost is usual here until {shown(frost.day)}: wait, or have a cover ready at night"
        )
        job = replace(draft.job, dangers=(*draft.job.dangers, caution))
        self.out.change(name, job=job)

    def elsewhere(self, name: str) -> None:
        """Take its place from a job that is done before the plant comes there."""
        self.out.change(name, job=replace(self.out.by_id[name].job, place=""))

    def tell(self, name: str, how: str) -> None:
        """Put what the frame's kind says of planting beside the job."""
        draft = self.out.by_id[name]
        self.out.change(name, job=replace(draft.job, how=how))


# ---- one crop after another ---------------------------------------------------------------------
def add_clearing(crops: Sequence[Growing], block: str, place: str, out: Drafts) -> None:
    """A crop that is over before the next of its frame begins is cleared first."""
    for first in crops:
        for then in crops:
            if not follows(first.grown, then.grown) or not then.placed:
                continue
            name = first.grown.worked.name
            own = f"{slug(block)}/clear-{slug(name)}"
            cleared = next((one for one in out.by_id if one == own), "")
            if not cleared:
                where = first.grown.worked.planting.fact.where
                says = f"{block}: clear the {name} away"
                job = Job(own, says, block, TAKE_DOWN, place=place, where=where)
                cleared = out.add(Draft(job, f"clear {name}"))
                for over in first.over:
                    picked = out.by_id[over].job.kind == PICK
                    wait = (CLEARED_AFTER_DAYS,) * 2 if picked else (0, 0)
                    out.put([over], [cleared], wait=wait, waits_for="it to be picked")
            out.put([cleared], [then.placed], because="the next crop wants the room")


def follows(first: Grown, then: Grown) -> bool:
    """Whether the second is put in when the first is already being picked."""
    ripe, begins = first.first_picking(), _aim(then.in_ground)
    return first is not then and ripe is not None and begins is not None and begins >= ripe
