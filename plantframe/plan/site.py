"""What all builders of a plan share: its names, its season, its slips, and facts any block has."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.edits import rewrite
from plantframe.language.slots import When
from plantframe.language.values import Number, Span, Word
from plantframe.language.values import Season as TypedSeason
from plantframe.plan import names as naming
from plantframe.plan.dates import Dated, DateSlip, Season, check_year, resolve
from plantframe.plan.names import Names, Slips
from plantframe.plan.things import Grown, Mark, SetAside

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.files import Reading
    from plantframe.language.mistakes import Where
    from plantframe.language.reader import Block, Fact
    from plantframe.language.shapes import Slot
    from plantframe.plan.things import Spot


@dataclass(slots=True)
class Site:
    """A plan being built. `season` is settled once the garden has been read."""

    reading: Reading
    today: date
    season: Season
    slips: Slips = field(default_factory=Slips)
    names: Names = field(default_factory=Names)
    built: dict[str, int] = field(default_factory=dict)  # since when each frame stands

    # -- dates ----------------------------------------------------------------------------
    def dated(self, fact: Fact | None, name: str, *, planting: bool = False) -> Dated | None:
        """The date in a slot of a fact, or None; a slip in it is said.

        planting   a sowing or planting: one dated a year off is asked about
        """
        slot = fact.slot(name) if fact else None
        if fact is None or slot is None:
            return None
        return self.date_in(slot, fact, planting=planting)

    def date_in(self, slot: Slot, fact: Fact, *, planting: bool = False) -> Dated | None:
        """The date in one slot, or None; a slip in it is said."""
        if not isinstance(slot.value, When):
            return None
        try:
            found = resolve(slot.value, self.season)
            if planting:
                check_year(found, self.season, typed_year(slot.value))
        except DateSlip as slip:
            self.date_slip(slip, fact.place(slot))
            return None
        return found

    def date_slip(self, slip: DateSlip, where: Where) -> None:
        """Say what is wrong with a date, with the lines that would mend it."""
        edits = [rewrite(where, slip.told["text"], line) for line in slip.write]
        self.slips.say(slip.name, where, edits, **slip.told)

    def before_it_was_built(self, name: str, dated: Dated | None, fact: Fact) -> None:
        """Say of a day that it lies before the thing it tells of was built."""
        since = self.built.get(name)
        if since is None or dated is None or dated.last.year >= since:
            return
        why = f"that is before {name} was built, in {since}."
        self.slips.say("impossible-date", fact.where, text=dated.said, why=why)

    def years(self, value: object) -> tuple[int, ...]:
        """The calendar years that a typed year stands for."""
        if isinstance(value, Number):
            return (int(value.value),)
        if isinstance(value, TypedSeason):
            return (value.first,)
        if isinstance(value, Span) and isinstance(value.low, Number):
            last = value.high.value if isinstance(value.high, Number) else value.low.value
            return tuple(range(int(value.low.value), int(last) + 1))
        if isinstance(value, Word):  # last year
            return (self.season.years[0] - 1,)
        return ()

    # -- facts that any block has -----------------------------------------------------------
    def spots(self, block: Block) -> tuple[Spot, ...]:
        """Where a block says it stands."""
        slots = [slot for slot in block.head.slots if slot.name == "spot"]
        return naming.spots(block.head, slots, self.names, self.slips)

    def had(self, facts: Iterable[Fact], *, quiet: bool = False) -> tuple[Grown, ...]:
        """What grew here in years before. `quiet`: say nothing of a plant without its year."""
        out: list[Grown] = []
        for fact in facts:
            if fact.word == "had":
                out += self._had(fact, quiet=quiet)
        return tuple(out)

    def _had(self, fact: Fact, *, quiet: bool) -> Iterator[Grown]:
        """Plants with their years after them, or before them (`2025: beans`)."""
        plants = {"plant", "again"}
        years_first = bool(fact.slots) and fact.slots[0].name not in plants
        years: tuple[int, ...] = ()
        plant, dated, new = "", True, True
        for slot in fact.slots:
            if slot.name in plants:
                if not dated and not quiet:
                    self._no_year(fact, plant)
                plant, dated, new = str(slot.value), bool(years), True
            else:
                years = (*(() if new else years), *self.years(slot.value))
                dated, new = dated or not years_first, not years_first
            if plant and (slot.name in plants) == years_first:
                for year in years:
                    yield Grown(plant, year, naming.plants(plant, self.slips.own), fact)
        if not dated and not quiet:
            self._no_year(fact, plant)

    def _no_year(self, fact: Fact, plant: str) -> None:
        year = self.season.years[0] - 1
        edit = rewrite(fact.where, plant, f"{plant} in {year}")
        self.slips.say("no-year", fact.where, (edit,), text=f"had {plant}")

    def set_asides(self, facts: Iterable[Fact]) -> tuple[SetAside, ...]:
        """The warnings set aside in a block; one without a reason is not."""
        out = []
        for fact in facts:
            if fact.word != "ok":
                continue
            rule = str(fact.get("rule") or "").lower().strip().replace(" ", "-")
            reason = str(fact.get("reason") or "").strip()
            if not rule:
                example = 'ok crowded because "we thin by eating"'
                self.slips.say("nothing-after", fact.where, word="ok", example=example)
                continue
            if not reason:
                self.slips.say("no-reason", fact.where, rule=rule)
                continue
            times = fact.get("times")
            out.append(
                SetAside(
                    rule,
                    reason,
                    str(fact.get("person") or ""),
                    self.dated(fact, "on"),
                    self.until(fact),
                    times.value if isinstance(times, Number) else None,
                    str(fact.get("level") or ""),
                    fact,
                )
            )
        return tuple(out)

    def until(self, fact: Fact) -> Dated | None:
        """How long a warning is set aside: to a day, or to the end of a year."""
        if years := self.years(fact.get("until")):
            last = date(years[-1], 12, 31)
            return Dated(last, last, 0, str(years[-1]))
        return self.dated(fact, "until")

    def marks(self, facts: Iterable[Fact]) -> tuple[Mark, ...]:
        """The jobs of a block that are done, moved or left out."""
        out = []
        for fact in facts:
            job = str(fact.get("job") or "").strip()
            if fact.word not in {"done", "move", "skip"} or not job:
                continue
            day = self.dated(fact, "to" if fact.word == "move" else "on")
            reason = str(fact.get("reason") or "")
            if fact.word == "skip" and not reason:
                self.slips.say("no-reason", fact.where, rule=f"leaving out “{job}”")
            who = str(fact.get("person") or "")
            out.append(Mark(fact.word, job, day, who, reason, fact))
        return tuple(out)


def typed_year(when: When) -> int | None:
    """The year a date was typed with."""
    return when.day.year if when.day is not None else None
