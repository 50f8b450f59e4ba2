"""From blocks and facts as read to the plan: names resolved, dates worked out, slips said."""

from __future__ import annotations

import re
from dataclasses import dataclass
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language.edits import Edit, LineChange
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.phrases import read_phrase
from plantframe.language.slots import Section, When, take
from plantframe.language.values import Day, Measure, Number, Phrase, Size, Span, Word
from plantframe.language.values import Season as TypedSeason
from plantframe.plan import names as naming
from plantframe.plan.dates import Dated, DateSlip, Season, check_year, resolve
from plantframe.plan.names import Names, Slips, rewrite
from plantframe.plan.things import (
    Away,
    Bed,
    Frame,
    Garden,
    Grown,
    Item,
    LogEntry,
    Mark,
    Note,
    Person,
    Plan,
    Planting,
    SetAside,
    Spot,
    Task,
    Thing,
    Want,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from datetime import date

    from plantframe.language.files import Reading
    from plantframe.language.reader import Block, Fact
    from plantframe.language.shapes import Slot

# Hours of direct sun in summer that a gardener's word stands for (common practice, no source).
SUN = {
    "full": (8.0, 10.0),
    "half": (4.0, 6.0),
    "morning": (4.0, 6.0),
    "afternoon": (4.0, 6.0),
    "none": (0.0, 2.0),
    "dappled": (3.0, 4.0),
}
SOILS = {
    "sand": "loose sand",
    "sandy": "loose sand",
    "loose": "loose sand",
    "wet clay": "wet clay",
    "heavy clay": "firm clay",
    "stiff clay": "stiff clay",
    "clay": "firm clay",
    "loam": "firm loam",
    "firm": "firm loam",
}


def metres(value: object) -> float | None:
    """A length's metres."""
    if isinstance(value, Measure) and value.dimension == "length":
        return value.value
    return None


def build(reading: Reading, today: date) -> tuple[Plan, tuple[Mistake, ...]]:
    """The plan of a reading and the slips found on the way.

    today   stands in for the season where the plan names none
    """
    builder = _Builder(reading, today)
    plan = builder.plan()
    return plan, tuple(builder.slips.found)


@dataclass(slots=True)
class _Heads:
    """The blocks by word, in the order read."""

    by_word: dict[str, list[Block]]

    def all(self, *words: str) -> list[Block]:
        return [block for word in words for block in self.by_word.get(word, [])]


class _Builder:
    def __init__(self, reading: Reading, today: date) -> None:
        self.reading = reading
        self.today = today
        self.slips = Slips()
        self.names = Names()
        self.season = Season((today.year, today.year))
        by_word: dict[str, list[Block]] = {}
        for block in reading.blocks:
            by_word.setdefault(block.word, []).append(block)
        self.heads = _Heads(by_word)

    # -- the whole ------------------------------------------------------------------------
    def plan(self) -> Plan:
        garden = self.garden()
        named = self.heads.all(
            "wall", "hedge", "tree", "path", "bed", "border", "frame", "line", "cover", "fence"
        )
        kept = [block for block in named if self.names.add(block, self.slips)]
        for word in ("shed", "yard", "house"):
            for block in self.heads.all(word):
                self.names.common.add(word)
                if block.name:
                    self.names.by_key.setdefault(block.name.lower(), block)
        beds = {b.name: self.bed(b) for b in kept if b.word in {"bed", "border"}}
        things = {
            block.name: self.thing(block)
            for block in kept
            if block.word in {"wall", "hedge", "tree", "path"}
        }
        for block in self.heads.all("house"):
            things[block.name or "house"] = self.thing(block)
        frames = {
            block.name: self.frame(block)
            for block in kept
            if block.word in {"frame", "line", "cover", "fence"}
        }
        for block in kept:
            naming.two_things(block, self.names, self.slips)
        plan = Plan(
            self.reading.name,
            garden,
            MappingProxyType(beds),
            MappingProxyType(things),
            MappingProxyType(frames),
            tuple(self.want(block) for block in self.heads.all("want")),
            tuple(self.task(block) for block in self.heads.all("task")),
            tuple(self.log(block) for block in self.heads.all("log")),
            tuple(self.note(block) for block in self.heads.all("note")),
            tuple(item for block in self.heads.all("shed") for item in self.items(block)),
            tuple(item for block in self.heads.all("yard") for item in self.items(block)),
            self.history(),
            frozenset(self.names.common),
        )
        self.missing_place(plan)
        return plan

    # -- values ---------------------------------------------------------------------------
    def dated(self, fact: Fact, name: str, *, planting: bool = False) -> Dated | None:
        """The date in a slot, or None; a slip in it is said."""
        slot = fact.slot(name)
        if slot is None or not isinstance(slot.value, When):
            return None
        try:
            found = resolve(slot.value, self.season)
            if planting:
                check_year(found, self.season, _typed_year(slot.value))
        except DateSlip as slip:
            self.date_slip(slip, fact, slot)
            return None
        return found

    def date_slip(self, slip: DateSlip, fact: Fact, slot: Slot) -> None:
        where = naming.at(fact.where, slot.column)
        edits = [rewrite(where, slip.told["text"], line) for line in slip.write]
        self.slips.say(slip.name, where, edits, **slip.told)

    def years(self, fact: Fact, name: str) -> list[int]:
        out = []
        for value in fact.all(name):
            if isinstance(value, Number):
                out.append(int(value.value))
            elif isinstance(value, TypedSeason):
                out.append(value.first)
            elif isinstance(value, Word):
                out.append(self.season.years[0] - 1)
        return out

    # -- the garden -----------------------------------------------------------------------
    def garden(self) -> Garden:
        blocks = self.heads.all("garden")
        if not blocks:
            self.slips.say("no-garden", Where(self.reading.main, 1), year=str(self.today.year))
            self.season = Season((self.today.year, self.today.year))
            return Garden(year=self.today.year, seasons=self.season.years, imperial=self.imperial())
        block = blocks[0]
        # a garden in places.plan and one in 2027.plan are the same garden; the season's own
        # head (the one with a year) names it, and facts of both count
        block = next((one for one in blocks if self.head_years(one)), block)
        facts = [fact for one in blocks for fact in one.facts]
        latitude, longitude = _place(facts)
        years = self.head_years(block)
        if years is None:
            years = (self.today.year, self.today.year)
            self.slips.say("no-garden", block.where, year=str(self.today.year))
        southern = latitude is not None and latitude < 0
        if southern and years[0] == years[1]:
            # one year for a southern plan is the one in which most of it is picked
            years = (years[0] - 1, years[0])
        self.season = Season(years, southern)
        frost = _first(facts, "frost")
        last = self.dated(frost, "last") if frost else None
        first = self.dated(frost, "first") if frost else None
        none = frost is not None and frost.get("none") is not None
        self.season = Season(
            years,
            southern,
            last.day if last else None,
            first.day if first else None,
            none,
        )
        wind, soil = _first(facts, "wind"), _first(facts, "soil")
        marked, timber = _first(facts, "lines marked"), _first(facts, "timber")
        power, region = _first(facts, "power"), _first(facts, "region")
        children, household = _first(facts, "children"), _first(facts, "household")
        depth, kerf = _first(facts, "frost depth"), _first(facts, "kerf")
        tools = _first(facts, "tools")
        grouped: dict[str, tuple[Fact, ...]] = {}
        for fact in facts:
            grouped[fact.word] = (*grouped.get(fact.word, ()), fact)
        return Garden(
            name=block.name,
            year=years[1] if southern else years[0],
            seasons=years,
            latitude=latitude,
            longitude=longitude,
            frost_last=last,
            frost_first=first,
            frost_late=self.dated(frost, "late") if frost else None,
            frost_none=none,
            wind=_wind(wind),
            wind_from=str(wind.get("direction") or "").removeprefix("the ") if wind else "",
            soil=_soil(soil),
            people=tuple(self.person(fact) for fact in facts if fact.word == "person"),
            free_h=_free(_first(facts, "free")),
            away=self.away(facts),
            tools=tuple(str(tool) for tool in tools.all("stuff")) if tools else (),
            power=str(power.get("text") or "") if power else "",
            household=_whole(household.get("count")) if household else None,
            children=_ages(children),
            dog=_first(facts, "dog") is not None,
            region=str(region.get("text") or "") if region else "",
            frost_depth_m=metres(depth.get("length")) if depth else None,
            lines_marked=self.dated(marked, "date") if marked else None,
            overhead=grouped.get("overhead line", ()),
            timber=str(timber.get("means") or "") if timber else "",
            kerf_m=metres(kerf.get("length")) if kerf else None,
            imperial=self.imperial(),
            facts=MappingProxyType(grouped),
            set_asides=self.set_asides(facts),
            where=block.where,
            marks=self.marks(facts),
        )

    def head_years(self, block: Block) -> tuple[int, int] | None:
        season, year = block.head.get("season"), block.head.get("year")
        if isinstance(season, TypedSeason):
            return season.first, season.second
        if isinstance(year, TypedSeason):
            return year.first, year.second
        if isinstance(year, Number):
            return int(year.value), int(year.value)
        return None

    def imperial(self) -> bool:
        """Are most lengths of the plan in feet and inches?"""
        feet = metric = 0
        for block in self.reading.blocks:
            for fact in (block.head, *block.facts):
                for slot in fact.slots:
                    for unit in _units(slot.value):
                        feet += unit in {"ft", "in", "ft in", "yd"}
                        metric += unit in {"mm", "cm", "m"}
        return feet > metric

    def person(self, fact: Fact) -> Person:
        lifts = fact.get("lifts")
        return Person(
            str(fact.get("name") or ""),
            metres(fact.get("reach")),
            lifts.value if isinstance(lifts, Measure) else None,
            fact,
        )

    def away(self, facts: Iterable[Fact]) -> tuple[Away, ...]:
        out = []
        for fact in facts:
            if fact.word != "away":
                continue
            who = str(fact.get("person") or "")
            for slot in fact.slots:
                if slot.name == "dates" and isinstance(slot.value, When):
                    try:
                        span = resolve(slot.value, self.season)
                    except DateSlip as slip:
                        self.date_slip(slip, fact, slot)
                        continue
                    out.append(Away(span.day, span.last, who))
        return tuple(out)

    def missing_place(self, plan: Plan) -> None:
        """Ask where the garden is, where an answer hangs on it."""
        garden = plan.garden
        if garden.latitude is not None or garden.frost_last is not None or garden.frost_none:
            return
        tender = [planting for planting in plan.plantings if planting.sow or planting.out]
        lights = [frame for frame in plan.frames.values() if frame.kind == "cold frame"]
        missing = []
        if tender:
            missing.append("whether frost can catch what is sown or planted")
        if lights:
            missing.append("which way the lights should face")
        if not missing:
            return
        where = garden.where or Where(self.reading.main, 1)
        example = "place 52.1 N, 1.4 W` and `frost last 6 May, first 12 October"
        self.slips.say("no-place", where, example=example, missing=" or ".join(missing))

    # -- beds and other things --------------------------------------------------------------
    def bed(self, block: Block) -> Bed:
        facts = block.facts
        size = block.head.get("size")
        length, width = _sides(size)
        if isinstance(wide := block.head.get("wide"), Measure):
            width = wide.value
        if isinstance(long := block.head.get("long"), Measure):
            length = long.value
        runs, raised = block.fact("runs"), block.fact("raised")
        sun, sun_h = _sun(block.fact("sun"))
        return Bed(
            block.word,
            block.name,
            length,
            width,
            str(runs.get("line") or "") if runs else "",
            sun,
            sun_h,
            _soil(block.fact("soil")),
            _wind(block.fact("wind")),
            metres(raised.get("length")) if raised else None,
            self.had(facts),
            self.plantings(block),
            self.spots(block),
            self.set_asides(facts),
            block,
            self.marks(facts),
        )

    def thing(self, block: Block) -> Thing:
        head = block.head
        faces, high = block.fact("faces"), block.fact("high")
        eaves, painted = block.fact("eaves"), block.fact("painted")
        surface = block.fact("surface")
        said = [str(value) for value in head.all("surface")]
        if surface is not None:
            said += [str(value) for value in surface.all("stuff")]
        sun, sun_h = _sun(block.fact("sun"))
        direction = str(faces.get("direction") or "") if faces else ""
        spots = self.spots(block)
        if block.word == "wall" and not direction:
            self.which_wall(block, spots)
        year = _whole(painted.get("year")) if painted else None
        return Thing(
            block.word,
            block.name or block.word,
            metres(head.get("high")) or (metres(high.get("length")) if high else None),
            metres(head.get("wide")) or metres(head.get("across")),
            metres(head.get("long")),
            direction,
            ", ".join(said),
            metres(eaves.get("length")) if eaves else None,
            metres(eaves.get("overhang")) if eaves else None,
            year,
            sun,
            sun_h,
            self.plantings(block),
            spots,
            self.set_asides(block.facts),
            block,
            self.marks(block.facts),
        )

    def which_wall(self, block: Block, spots: tuple[Spot, ...]) -> None:
        match = re.fullmatch(r"(?i)(north|south|east|west) wall", block.name)
        if match and not any(spot.part for spot in spots):
            side = match[1].lower()
            edits = [
                replace_end(block.where, f", faces {side}"),
                replace_end(block.where, f", on the {side} side"),
            ]
            self.slips.say("which-wall", block.where, edits, name=block.name, side=side)

    def spots(self, block: Block) -> tuple[Spot, ...]:
        slots = [slot for slot in block.head.slots if slot.name == "spot"]
        return naming.spots(slots, block.where, self.names, self.slips)

    def had(self, facts: Iterable[Fact]) -> tuple[Grown, ...]:
        out: list[Grown] = []
        for fact in facts:
            if fact.word != "had":
                continue
            plant, entries = "", ()
            for slot in fact.slots:
                if slot.name in {"plant", "again"}:
                    plant = str(slot.value)
                    entries = naming.plants(plant)
                elif slot.name in {"year", "more"}:
                    (year,) = self.years(replace(fact, slots=(slot,)), slot.name) or [0]
                    out.append(Grown(plant, year, entries, fact))
        return tuple(out)

    def history(self) -> Mapping[str, tuple[Grown, ...]]:
        """What grew in which bed in the plans brought in as last year."""
        out: dict[str, list[Grown]] = {}
        for text in self.reading.history:
            heads = [block for block in text.blocks if block.word == "garden"]
            years = next((found for one in heads if (found := self.head_years(one))), None)
            if years is None:
                continue
            for block in text.blocks:
                bed = self._bed_named(block)
                for fact in block.facts:
                    plant = fact.get("plant")
                    if fact.word not in {"grow", "plant"} or not isinstance(plant, str) or not bed:
                        continue
                    entries = naming.plants(plant)
                    out.setdefault(bed, []).append(Grown(plant, years[0], entries, fact))
                if block.word in {"bed", "border"}:
                    out.setdefault(block.name, []).extend(self.had(block.facts))
        return MappingProxyType({bed: tuple(grown) for bed, grown in out.items()})

    def _bed_named(self, block: Block) -> str:
        """The bed a block of last year's plan stands in."""
        if block.word in {"bed", "border"}:
            return block.name
        for slot in block.head.slots:
            name = getattr(slot.value, "name", "")
            if slot.name == "spot" and name and (found := self.names.find(name)):
                return found
        return ""

    # -- frames ---------------------------------------------------------------------------
    def frame(self, block: Block) -> Frame:
        facts = block.facts
        grouped: dict[str, tuple[Fact, ...]] = {}
        for fact in facts:
            grouped[fact.word] = (*grouped.get(fact.word, ()), fact)
        own = "own design" in grouped
        built, stays = block.fact("built"), block.fact("stays up")
        ready, down, on = block.fact("ready by"), block.fact("take down"), block.fact("on")
        marked = block.fact("lines marked")
        years = stays.get("years") if stays else None
        wanted = years.value if isinstance(years, Measure) else None
        if stays is not None and wanted is None:
            wanted = 10.0
        since = self.built_year(built)
        sun, sun_h = _sun(block.fact("sun"))
        return Frame(
            block.word,
            block.name,
            "" if own else self.kind(block),
            own,
            self.spots(block),
            MappingProxyType(grouped),
            self.plantings(block),
            since,
            self.dated(ready, "date") if ready else None,
            self.dated(down, "date") if down else None,
            self.dated(on, "dates") if on else None,
            wanted,
            _wind(block.fact("wind")),
            _soil(block.fact("soil")),
            sun,
            sun_h,
            self.dated(marked, "date") if marked else None,
            self.set_asides(facts),
            self.marks(facts),
            self.had(facts),
            block,
        )

    def built_year(self, built: Fact | None) -> int | None:
        if built is None:
            return None
        year = _whole(built.get("year"))
        if year is not None:
            return year
        dated = self.dated(built, "date")
        return dated.day.year if dated else self.season.years[0] - 1

    def kind(self, block: Block) -> str:
        slot = block.head.slot("kind")
        if slot is None:
            if "own design" in block.where.typed:
                return ""
            words = block.name.lower().split()
            near = [
                kind
                for kind in naming.fitting_kinds(block.word)
                if set(kind.split()) & set(words) - {"frame"}
            ][:4]
            edits = [
                rewrite(block.where, block.name, f"{block.name}, {kind}", f"a {kind}")
                for kind in near[:2]
            ]
            told = {"word": block.word, "name": block.name, "near": ", ".join(near)}
            self.slips.say("no-kind", block.where, edits, **told)
            return ""
        said = str(slot.value)
        found = naming.kinds(said)
        if len(found) == 1:
            return found[0]
        where = naming.at(block.where, slot.column)
        near = list(found) or list(naming.near_kinds(said, block.word))
        edits = [rewrite(where, said, kind) for kind in near[:2]]
        told = {"word": block.word, "kind": said, "near": ", ".join(near)}
        self.slips.say("unknown-kind", where, edits, **told)
        return ""

    def plantings(self, block: Block) -> tuple[Planting, ...]:
        """What grows here; a line `sow …` belongs to the `grow` above it."""
        out: list[Planting] = []
        for fact in block.facts:
            if fact.word in {"grow", "plant"}:
                slot = fact.slot("plant")
                if slot is not None:
                    out.append(self.planting(fact, slot, block, len(out)))
            elif fact.word in {"sow", "plant out"}:
                if not out:
                    told = {"text": fact.text, "near": "grow"}
                    self.slips.say("unknown-word", fact.where, **told)
                    continue
                now = out[-1]
                sow = self.dated(fact, "sow", planting=True) or now.sow
                later = self.dated(fact, "out", planting=True) or now.out
                raised = str(fact.get("raised") or "") or now.raised
                facts = (*now.facts, fact)
                out[-1] = replace(now, sow=sow, out=later, raised=raised, facts=facts)
        return tuple(out)

    def planting(self, fact: Fact, slot: Slot, block: Block, order: int) -> Planting:
        border = block.word == "border"
        on_frame = block.word in {"frame", "line", "cover", "fence"}
        entries = naming.plant_of(
            fact, slot, self.slips, quiet=border, ambiguous=border or on_frame
        )
        where = fact.slot("spot")
        spot = None
        if where is not None:
            (spot,) = naming.spots([where], fact.where, self.names, self.slips) or (None,)
        apart = fact.get("apart")
        if isinstance(apart, Span):
            apart = apart.low
        return Planting(
            str(slot.value),
            entries,
            str(fact.get("cultivar") or ""),
            _whole(fact.get("count")),
            metres(apart),
            self.dated(fact, "sow", planting=True),
            self.dated(fact, "out", planting=True),
            str(fact.get("raised") or ""),
            _whole(fact.get("leaders")),
            str(fact.get("pinched") or ""),
            str(fact.get("trained") or ""),
            fact.get("cut") is not None,
            self.dated(fact, "until"),
            spot,
            block.name,
            order,
            fact,
            (fact,),
        )

    def set_asides(self, facts: Iterable[Fact]) -> tuple[SetAside, ...]:
        out = []
        for fact in facts:
            if fact.word != "ok":
                continue
            rule = str(fact.get("rule") or "").lower().strip()
            reason = str(fact.get("reason") or "").strip()
            if not rule:
                self.slips.say(
                    "nothing-after",
                    fact.where,
                    word="ok",
                    example='ok crowded because "we thin by eating"',
                )
                continue
            if not reason:
                self.slips.say("no-reason", fact.where, rule=rule)
                continue
            times = fact.get("times")
            out.append(
                SetAside(
                    rule.replace(" ", "-"),
                    reason,
                    str(fact.get("person") or ""),
                    self.dated(fact, "on"),
                    self.dated(fact, "until"),
                    times.value if isinstance(times, Number) else None,
                    str(fact.get("level") or ""),
                    fact,
                )
            )
        return tuple(out)

    def marks(self, facts: Iterable[Fact]) -> tuple[Mark, ...]:
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

    # -- lines of their own -----------------------------------------------------------------
    def want(self, block: Block) -> Want:
        head = block.head
        slot = head.slot("plant")
        said = str(slot.value) if slot else ""
        entries: tuple[str, ...] = ()
        if slot is None:
            example = "want cucumber, 6 plants"
            self.slips.say("nothing-after", block.where, word="want", example=example)
        elif said.split()[0].lower() not in {"something", "anything"}:
            entries = naming.plant_of(head, slot, self.slips, quiet=False, ambiguous=False)
        spots = self.spots(block)
        return Want(
            said,
            entries,
            str(head.get("cultivar") or ""),
            _whole(head.get("count")),
            metres(head.get("row")),
            spots[0] if spots else None,
            block,
        )

    def task(self, block: Block) -> Task:
        head = block.head
        hours = head.get("hours")
        spots = self.spots(block)
        who = [str(value) for value in head.all("person")]
        hands = _whole(head.get("hands")) or (2 if head.get("both") else 1)
        return Task(
            block.name,
            self.dated(head, "by"),
            self.dated(head, "on"),
            self.dated(head, "done"),
            self.dated(head, "moved"),
            str(head.get("after") or ""),
            str(head.get("when") or ""),
            hours.value if isinstance(hours, Measure) else None,
            hands,
            tuple(who),
            spots[0] if spots else None,
            block,
        )

    def log(self, block: Block) -> LogEntry:
        """A line of the log: the date first, then anything."""
        parts = [str(slot.value).strip().rstrip(",") for slot in block.head.slots]
        text = ", ".join(parts)
        day, words = self.log_day(text, block)
        about = ""
        first = re.split(r"[,.:]", words, maxsplit=1)[0].strip()
        if first and (found := self.names.find(first)):
            about = found
            words = words[len(first) :].lstrip(" ,.:")
        measures = tuple(
            item.value
            for part in words.split(",")
            for item in read_phrase(part.strip())[0]
            if isinstance(item.value, Measure)
        )
        return LogEntry(day, about, words, measures, block)

    def log_day(self, text: str, block: Block) -> tuple[Dated | None, str]:
        items, _ = read_phrase(text.split(",")[0])
        if not items:
            return None, text
        phrase = Phrase(text.split(",")[0], 1, items)
        taken = take("date", phrase, 0, frozenset())
        if taken is None or not isinstance(taken[0], When):
            self.slips.say(
                "nothing-after",
                block.where,
                word="log (the date first)",
                example="log 2 August, Bean Net, picked 1.4 kg",
            )
            return None, text
        when, after = taken
        rest = text[items[after - 1].end :].lstrip(" ,.:;")
        try:
            return resolve(when, self.season), rest
        except DateSlip as slip:
            column = block.where.typed.find(slip.told["text"]) + 1
            where = naming.at(block.where, max(column, 1))
            edits = [rewrite(where, slip.told["text"], line) for line in slip.write]
            self.slips.say(slip.name, where, edits, **slip.told)
            return None, rest

    def note(self, block: Block) -> Note:
        text = ", ".join(str(slot.value).strip().rstrip(",") for slot in block.head.slots)
        about, colon, rest = text.partition(":")
        found = self.names.find(about) if colon else None
        return Note(found or "", rest.strip() if found else text, block)

    def items(self, block: Block) -> list[Item]:
        out = []
        for fact in block.facts:
            if fact.word != "item":
                continue
            section, size = fact.get("section"), fact.get("size")
            lengths = [value.value for value in fact.all("length") if isinstance(value, Measure)]
            if isinstance(section, Section) and section.length_m is not None:
                lengths.append(section.length_m)
            count, packs = fact.get("count"), fact.get("packs")
            price = fact.get("price")
            nail = fact.get("nail")
            number = count if isinstance(count, Number) else packs
            out.append(
                Item(
                    " ".join(str(value) for value in fact.all("stuff")),
                    number.value if isinstance(number, Number) else None,
                    section if isinstance(section, Section) else None,
                    size if isinstance(size, Size) else None,
                    tuple(lengths),
                    metres(fact.get("mesh")),
                    getattr(nail, "penny", None),
                    _amount(price),
                    fact,
                )
            )
        return out


# ---- small readings -------------------------------------------------------------------------
def replace_end(where: Where, more: str) -> Edit:
    """An edit that adds words at the end of a line."""

    line = where.typed.rstrip() + more
    return Edit(
        f"add `{more.strip(', ')}`", (LineChange(where.file, where.line, where.typed, line),)
    )


def _typed_year(when: When) -> int | None:
    if isinstance(when.day, Day):
        return when.day.year
    return None


def _first(facts: Iterable[Fact], word: str) -> Fact | None:
    return next((fact for fact in facts if fact.word == word), None)


def _place(facts: Iterable[Fact]) -> tuple[float | None, float | None]:
    found: dict[str, float] = {}
    place = _first(facts, "place")
    for value in place.all("degrees") if place else ():
        if isinstance(value, tuple):
            found.setdefault(value[0], value[1])
    return found.get("latitude"), found.get("longitude")


def _wind(fact: Fact | None) -> str:
    said = str(fact.get("class") or "") if fact else ""
    return "windy" if said == "exposed" else said


def _soil(fact: Fact | None) -> str:
    """The soil in the words of the catalogue's classes, as near as what was typed."""
    if fact is None:
        return ""
    said = " ".join([str(fact.get("state") or ""), *(str(v) for v in fact.all("stuff"))]).lower()
    if "clay" in said:
        for state in ("wet", "stiff"):
            if state in said:
                return f"{state} clay"
        return "firm clay"
    if "sand" in said or "loose" in said or "gravel" in said:
        return "loose sand"
    return "firm loam" if "loam" in said or "firm" in said else said.strip()


def _free(fact: Fact | None) -> Mapping[str, float]:
    hours: dict[str, float] = {}
    days: tuple[str, ...] = ()
    for slot in fact.slots if fact else ():
        if slot.name == "weekday" and isinstance(slot.value, tuple):
            days = slot.value
        elif slot.name == "hours" and isinstance(slot.value, Measure):
            for day in days:
                hours[day] = hours.get(day, 0.0) + slot.value.value
    return MappingProxyType(hours)


def _ages(fact: Fact | None) -> tuple[float, ...] | None:
    if fact is None:
        return None
    return tuple(value.value for value in fact.all("age") if isinstance(value, Number))


def _whole(value: object) -> int | None:
    return int(value.value) if isinstance(value, Number) else None


def _amount(value: object) -> float | None:
    if isinstance(value, Number):
        return value.value
    amount = getattr(value, "amount", None)
    return float(amount) if amount is not None else None


def _sides(size: object) -> tuple[float | None, float | None]:
    """Length and width of a bed: the longer side is its length."""
    if isinstance(size, Size):
        sides = sorted(side.value for side in size.sides)
        return sides[-1], sides[0]
    return None, None


def _sun(fact: Fact | None) -> tuple[str, tuple[float, float] | None]:
    if fact is None:
        return "", None
    hours = fact.get("hours")
    if isinstance(hours, Measure):
        return hours.text, (hours.value, hours.value)
    kind = str(fact.get("kind") or "")
    return kind, SUN.get(kind)


def _units(value: object) -> list[str]:
    if isinstance(value, Measure) and value.dimension == "length":
        return [value.unit]
    if isinstance(value, Size):
        return [side.unit for side in value.sides if isinstance(side, Measure)]
    if isinstance(value, Section) and value.nominal:
        return ["in"]
    return []
