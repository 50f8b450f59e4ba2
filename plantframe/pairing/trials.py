"""One plant tried on one support: ranked, or rejected with the change that lets it back in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.language.edits import Edit, LineChange
from plantframe.pairing import changes, judging
from plantframe.pairing.cautions import already_there, cautions, is_tired
from plantframe.pairing.matches import BARRED, Pairing, Reject
from plantframe.pairing.pair import Pair, fair
from plantframe.pairing.wording import uncapital
from plantframe.season import wild

if TYPE_CHECKING:
    from plantframe.pairing.matches import Reason
    from plantframe.season.season import Season


_ANOTHER = "another plant"


@frozen
class Judged:
    """A pair with what it came to, and its place among the ranked."""

    pair: Pair
    came_to: Pairing | Reject
    place: judging.Place | None


def judge(pair: Pair, season: Season | None, *, tried: bool = True) -> Judged:
    """Ask the six questions; where one rules the pair out, look for the change that lets it in.

    tried   False leaves the looking and the cautions out, where only the verdict is wanted
    """
    climber, support = pair.climber, pair.support
    if says := wild.barred(climber.entry, support.garden.region):
        return Judged(
            pair, Reject(climber.name, support.name, support.kind, BARRED, says, _ANOTHER), None
        )
    answers = judging.reasons(pair)
    ruled_out = judging.ruled_out(answers)
    if ruled_out is not None and pair.suited is not None and not support.in_plan:
        # the trade grows it on such a frame, with something that the bare kind does not have
        for change in changes.let_back_in(pair, answers):
            better = pair.changed(change.said)
            if better is not None:
                answers = _answers_with(change.says, ruled_out, better)
        ruled_out = judging.ruled_out(answers)
    if ruled_out is None:
        lines = cautions(pair, season) if tried else ()
        pairing = Pairing(climber.name, support.name, support.kind, answers, lines)
        taken = bool(already_there(pair))
        tired = is_tired(pair, season)
        return Judged(pair, pairing, judging.place(pair, answers, taken=taken, tired=tired))
    reject = Reject(climber.name, support.name, support.kind, ruled_out.question, ruled_out.says)
    return Judged(pair, _with_way_in(reject, pair, answers, season) if tried else reject, None)


def _answers_with(says: str, ruled_out: Reason, better: Pair) -> tuple[Reason, ...]:
    """The answers of a pair that something was added to, the addition named where it was wanted."""
    return tuple(
        fair(one.question, f"With {says}: {uncapital(one.says)}")
        if one.question == ruled_out.question
        else one
        for one in judging.reasons(better)
    )


def _with_way_in(
    reject: Reject, pair: Pair, answers: tuple[Reason, ...], season: Season | None
) -> Reject:
    """A reject with the change that lets it back in."""
    frame = pair.support.worked.frame if pair.support.worked and pair.support.in_plan else None
    found = changes.let_back_in(pair, answers, changes.MOST_OFFERED if frame else 1)
    edits = [changes.as_edit(change, frame) for change in found] if frame else []
    candidates = [edit for edit in edits if edit is not None]
    if reject.because == "light" and season is not None:
        candidates += _to_the_sun(pair, season)
    says = found[0].says if found else candidates[0].says if candidates else ""
    return replace(
        reject,
        back_in=says or changes.elsewhere(pair, reject.because),
        candidates=tuple(candidates),
    )


def _to_the_sun(pair: Pair, season: Season) -> list[Edit]:
    """A frame that does not stand yet, moved to a bed with sun enough."""
    worked, need = pair.support.worked, pair.climber.sun_h
    if worked is None or need is None or not pair.support.in_plan or worked.stands:
        return []
    where = worked.frame.block.where
    spot = next((one for one in worked.frame.spots if one.thing in season.plan.beds), None)
    if spot is None or spot.thing not in where.typed:
        return []
    sunny = [
        bed
        for bed in season.beds.values()
        if bed.sun_h is not None and bed.sun_h[0] >= need[0] and bed.name != spot.thing
    ]
    return [
        Edit(
            f"in {bed.name}, which has more sun",
            (
                LineChange(
                    where.file, where.line, where.typed, where.typed.replace(spot.thing, bed.name)
                ),
            ),
        )
        for bed in sunny[: changes.MOST_OFFERED]
    ]
