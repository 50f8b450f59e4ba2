"""A structure worked out with a frame's own figures: pieces, places, holds, steps."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.catalogue.expressions import Value, evaluate, names_in, number
from plantframe.catalogue.facts import Settled, key_of, settle
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Carries, Hold, Part, Step, Structure
    from plantframe.catalogue.sourced import Sourced

MOST: Final = 5000  # pieces of a part that are drawn
# Sticks, nets or cages of one part in one frame: a plan that asks for more has a slip in it, and a
# list of a million posts answers nobody.
MOST_OF_A_PART: Final = 2000


@frozen
class Placed:
    """Where one piece is drawn: m, with the ground line at y = 0 in front and side views."""

    view: str
    x: tuple[float, float]
    y: tuple[float, float]
    as_: str


@frozen
class Pieces:
    """All pieces of one part; lengths in m, None where it has none.

    length_m    of the longest
    lengths_m   of each in turn, empty where they have none
    """

    part: Part
    count: int
    width_m: float | None
    depth_m: float | None
    round: bool
    length_m: float | None
    lengths_m: tuple[float, ...]
    breadth_m: float | None
    thickness_m: float | None
    size: str
    wood: str
    places: tuple[Placed, ...]


@frozen
class Held:
    """Something to hold on to, with its thickness and spacing in m."""

    hold: Hold
    thickness_m: float
    every_m: float | None


@frozen
class Standing:
    """The figures of how it stands: m, m2, and how many share."""

    leafy_from_m: float
    leafy_to_m: float
    metres_m: float
    area_m2: float
    shares: float
    down_m: float


@frozen
class Working:
    """A step or round of care that applies here, with its minutes in all."""

    step: Step
    minutes: tuple[float, float] | None


@frozen
class Worked:
    """A structure with one frame's figures put in.

    facts    what was settled, and how
    sums     the entry's named sums
    carries  the way of carrying that applies, with span_m, or None
    """

    structure: Structure
    facts: Settled
    sums: Mapping[str, Value]
    pieces: Mapping[str, Pieces]
    holds: tuple[Held, ...]
    carries: Carries | None
    span_m: float | None
    standing: Standing
    height_m: float
    row_m: float
    ground_m: tuple[float, float]
    clear_front_m: float
    steps: tuple[Working, ...]
    down: tuple[Working, ...]

    def figure(self, text: str) -> float:
        """Work out one more of the entry's sums, such as those of `carries`."""
        return number(text, {**self.facts.values, **self.sums})


def work(structure: Structure, said: Mapping[str, object], measure: str = "") -> Worked:
    """Work a structure out.

    said      what the plan says, as for facts.settle
    measure   what the gardener measures in, as for facts.settle
    Raises ExpressionError where the figures cannot be worked with.
    """
    facts = settle(structure, said, measure=measure)
    sums = sums_of(structure, facts)
    known: dict[str, object] = {**facts.values, **sums}
    pieces = {name: _pieces(part, known) for name, part in structure.parts.items()}
    pieces = {name: one for name, one in pieces.items() if one.count > 0}
    carries = next((c for c in structure.carries if _holds_true(c.when, known)), None)
    steps = _present(structure.steps, pieces, known)
    return Worked(
        structure=structure,
        facts=facts,
        sums=sums,
        pieces=pieces,
        holds=tuple(
            Held(hold, _thickness(hold.thickness, known), _spacing(hold.every, known))
            for hold in structure.holds
            if _holds_true(hold.when, known) and hold.part in pieces
        ),
        carries=carries,
        span_m=number(carries.span, known) if carries and carries.span else None,
        standing=_standing(structure, known),
        height_m=number(structure.height, known),
        row_m=number(structure.lengthways, known),
        ground_m=(number(structure.ground_along, known), number(structure.ground_across, known)),
        clear_front_m=number(structure.clear_front, known),
        steps=steps,
        down=_present(structure.down, pieces, known),
    )


def sums_of(structure: Structure, facts: Settled) -> dict[str, Value]:
    """The named sums; one may use another, whatever their order."""
    known: dict[str, Value] = dict(facts.values)
    sums: dict[str, Value] = {}

    def value(name: str, asked_by: tuple[str, ...]) -> None:
        if name in sums:
            return
        if name in asked_by:
            raise ExpressionError(f"{name} is worked out from itself")
        text = structure.sums[name]
        for other in names_in(text):
            if other in structure.sums:
                value(other, (*asked_by, name))
        sums[name] = known[name] = evaluate(text, known)

    for name in structure.sums:
        value(name, ())
    return sums


def _holds_true(text: str, known: Mapping[str, object]) -> bool:
    return not text or bool(evaluate(text, known))


def _maybe(text: str, known: Mapping[str, object]) -> float | None:
    return number(text, known) if text else None


def _thickness(given: str | Sourced, known: Mapping[str, object]) -> float:
    return number(given, known) if isinstance(given, str) else given.usual


def _spacing(given: str | Sourced | None, known: Mapping[str, object]) -> float | None:
    return None if given is None else _thickness(given, known)


def _pieces(part: Part, known: Mapping[str, object]) -> Pieces:
    count = round(number(part.count, known))
    if count > MOST_OF_A_PART and (part.section or part.places):
        raise ExpressionError(
            f"it comes to {count:,} of the part “{part.name}”, and {MOST_OF_A_PART:,} is the most "
            "that is worked out for one frame"
        )
    word = key_of(part.section) if part.section else ""
    places = tuple(
        Placed(place.view, _pair(place.x, here), _pair(place.y, here), place.as_)
        for place in part.places
        for i in range(min(count, MOST))
        for here in ({**known, "i": i},)
    )
    lengths = _lengths(part.length, count, known)
    return Pieces(
        part=part,
        count=count,
        width_m=number(f"{word}.width", known) if word else None,
        depth_m=number(f"{word}.depth", known) if word else None,
        round=bool(number(f"{word}.round", known)) if word else False,
        length_m=max(lengths, default=None),
        lengths_m=lengths,
        breadth_m=_maybe(part.width, known) if count > 0 else None,
        thickness_m=_maybe(part.thickness, known) if count > 0 else None,
        size=_size(part.size, known),
        wood=str(evaluate(part.wood, known)) if part.wood else "",
        places=places if count > 0 else (),
    )


def _lengths(text: str, count: int, known: Mapping[str, object]) -> tuple[float, ...]:
    """The length of each piece; a sum of i may give each its own."""
    if not text or count <= 0:
        return ()
    if "i" not in names_in(text):
        return (number(text, known),) * count
    return tuple(number(text, {**known, "i": i}) for i in range(min(count, MOST)))


def _size(size: str, known: Mapping[str, object]) -> str:
    """Words to buy by; {pins.nail} in them is that fact."""
    if not (size.startswith("{") and size.endswith("}")):
        return size
    return str(evaluate(size[1:-1], known))


def _pair(sums: tuple[str, str], known: Mapping[str, object]) -> tuple[float, float]:
    return number(sums[0], known), number(sums[1], known)


def _standing(structure: Structure, known: Mapping[str, object]) -> Standing:
    stands = structure.stands
    low, high = number(stands.leafy_from, known), number(stands.leafy_to, known)
    metres = number(stands.metres, known)
    area = number(stands.area, known) if stands.area else (high - low) * metres
    shares, down = number(stands.shares, known), number(stands.down, known)
    return Standing(low, high, metres, area, shares, down)


def _present(
    steps: tuple[Step, ...], pieces: Mapping[str, Pieces], known: Mapping[str, object]
) -> tuple[Working, ...]:
    """The steps that are wanted here. One left out hands on what it came after."""
    left_out = {step.id: step.after for step in steps if not _holds_true(step.when, known)}

    def after(step_ids: tuple[str, ...]) -> dict[str, None]:
        found: dict[str, None] = {}
        for one in step_ids:
            found.update(after(left_out[one]) if one in left_out else {one: None})
        return found

    return tuple(
        Working(_with_after(step, tuple(after(step.after))), _minutes(step, pieces, known))
        for step in steps
        if step.id not in left_out
    )


def _with_after(step: Step, after: tuple[str, ...]) -> Step:
    from plantframe.frozen import replace

    return step if step.after == after else replace(step, after=after)


def _minutes(
    step: Step, pieces: Mapping[str, Pieces], known: Mapping[str, object]
) -> tuple[float, float] | None:
    if step.minutes is None:
        return None
    times = pieces[step.per].count if step.per in pieces else _times(step.per, known)
    low = step.minutes.low if step.minutes.low is not None else step.minutes.usual
    high = step.minutes.high if step.minutes.high is not None else step.minutes.usual
    return low * times, high * times


def _times(text: str, known: Mapping[str, object]) -> float:
    try:
        return number(text, known)
    except ExpressionError:
        return 0.0  # a part of which there is none here
