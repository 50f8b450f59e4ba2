"""pair: what suits what, six questions answered aloud, and every reject with its one fact."""

from __future__ import annotations

import sys
from collections import Counter
from typing import TYPE_CHECKING, Any

from plantframe.answers.offers import ways_back_in
from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.frozen import frozen, replace
from plantframe.pairing import advisor
from plantframe.pairing.border import PROPS
from plantframe.pairing.matches import BARRED, FAIR, QUESTIONS
from plantframe.season.units import listed

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.pairing.matches import Matches, Pairing, Reject
    from plantframe.plan.things import Want

SHARED = 4  # said of as many rejects as this, it is said once for all
DOUBT = "Sources differ"
STANDS_ALONE = " stands on its own and wants "  # what it wants is another thing for each
IN_FULL = 3  # pairings told with all six answers; the others are named with what to know of them


# What has a frame beside, after and before what grows on it, as a heading says it.
TURNS = {
    "beside": "These can share it",
    "after": "These can follow in the same year",
    "before": "These can come first in the same year",
}


@frozen
class Asking:
    """One asking and its answer. `want` is what the plan wants, where that was asked."""

    matches: Matches
    want: str = ""


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser, "?")
    parser.add_argument("name", metavar="NAME", nargs="?", help="a plant, a frame, a bed or a wall")
    parser.add_argument(
        "--plant", metavar="NAME", help="without a plan: every kind of frame for it"
    )
    parser.add_argument("--structure", metavar="KIND", help="without a plan: every plant for it")


def run(given: argparse.Namespace, today: date) -> int:
    """Print the pairings that were asked for."""
    from plantframe.commands.screen import Screen

    answers: Answers | None = None
    if given.plant:
        if given.plan:
            answers = one_answer(given.plan, today)
        season = answers.season if answers else None
        askings = [Asking(advisor.for_plant(season, given.plant))]
    elif given.structure:
        askings = [Asking(advisor.for_structure(given.structure))]
    elif given.plan:
        answers = one_answer(given.plan, today)
        askings = asked_of(answers, given.name)
    else:
        raise Refused("What about? Give a plan, or --plant NAME, or --structure KIND.")
    if len(askings) == 1 and not askings[0].matches.ranked and not askings[0].matches.rejected:
        raise Refused(" ".join(askings[0].matches.remarks))
    if given.json:
        data = [as_data(answers, one) for one in askings]
        write_json(data[0] if len(data) == 1 else data)
        return FINE
    screen = Screen.of(sys.stdout)
    for place, one in enumerate(askings):
        if place:
            screen.line()
            screen.line()
        show(answers, one, screen)
    return FINE


def asked_of(answers: Answers, name: str | None) -> list[Asking]:
    """The askings: each want of the plan, or whatever a name means."""
    plan, season = answers.plan, answers.season
    if name is None:
        wants = [want for want in plan.wants if want.plants or want.spot]
        if not wants:
            raise Refused(
                f"{plan.name} has no line `want …`. Name a plant, a frame, a bed or a wall of it."
            )
        return [_of_want(answers, want) for want in wants]
    key = name.lower()
    for want in plan.wants:
        if want.said.lower() == key:
            return [_of_want(answers, want)]
    frame = next((one for one in plan.frames if one.lower() == key), None)
    if frame is not None:
        return [Asking(advisor.for_frame(season, frame))]
    place = next((one for one in (*plan.beds, *plan.things) if one.lower() == key), None)
    if place is not None:
        return [Asking(advisor.for_place(season, place))]
    matches = advisor.for_plant(season, name)
    if not matches.ranked and not matches.rejected:
        kinds = advisor.for_structure(name)
        if kinds.ranked or kinds.rejected:
            return [Asking(kinds)]
    return [Asking(matches)]


def _of_want(answers: Answers, want: Want) -> Asking:
    if not want.plants and want.spot is not None and want.spot.thing:
        return Asking(advisor.for_place(answers.season, want.spot.thing), want.said)
    return Asking(advisor.for_want(answers.season, want), want.said)


# ---- on the screen --------------------------------------------------------------------------
def show(answers: Answers | None, asking: Asking, screen: Screen) -> None:
    """Print one answer."""
    matches = asking.matches
    screen.line(screen.strong(f"{matches.asked[:1].upper()}{matches.asked[1:]}"))
    for remark in matches.remarks:
        screen.wrapped(remark, "")
    for place, pairing in enumerate(matches.ranked[:IN_FULL], start=1):
        screen.line()
        _in_full(matches, pairing, place, screen)
    rest = matches.ranked[IN_FULL:]
    if rest:
        screen.heading("These go too")
        _in_short(matches, rest, screen)
    _turns(matches, screen)
    if matches.rejected:
        screen.heading("Ruled out")
        _ruled_out(answers, matches, screen)


def _ruled_out(answers: Answers | None, matches: Matches, screen: Screen) -> None:
    """The rejects: what is not to be planted at all, then those of a frame, what is alike once."""
    for says in dict.fromkeys(one.says for one in matches.rejected if one.because == BARRED):
        screen.wrapped(f"- {says}", "", "  ")
    rejected = tuple(one for one in matches.rejected if one.because != BARRED)
    if not rejected:
        return
    matches = replace(matches, rejected=rejected)
    usual = Counter(_instead(reject) for reject in rejected).most_common(1)[0]
    shared = usual[0] if usual[1] >= SHARED else ""
    doubts = _doubt_of_all(rejected)
    alike: dict[tuple[str, ...], list[Reject]] = {}
    for reject in rejected:
        alike.setdefault(_fact_of(reject), []).append(reject)
    for first, *others in alike.values():
        _reject(answers, matches, first, screen, shared, doubts)
        if others:
            _so_too(first, others, screen)
    if doubts:
        screen.wrapped(doubts, "")
    if shared:
        screen.wrapped(f"In their place: {shared.removesuffix(' instead')}.", "")


def _called(matches: Matches, pairing: Pairing | Reject) -> str:
    """The half of a pair that was not asked for: the frame for a plant, the plant for a frame."""
    where = pairing.frame or pairing.kind
    kind = f" ({pairing.kind})" if pairing.frame and pairing.kind != pairing.frame else ""
    everything: tuple[Pairing | Reject, ...] = (*matches.ranked, *matches.rejected)
    others = {one.plant for one in everything}
    supports = {(one.frame, one.kind) for one in everything}
    if len(others) == 1 and (len(supports) > 1 or matches.asked.lower() == pairing.plant.lower()):
        return f"{where}{kind}"
    if len(supports) == 1:
        return pairing.plant
    if where in PROPS:
        return f"{pairing.plant}, {where}"
    return f"{pairing.plant} on {where}{kind}"


def _in_full(matches: Matches, pairing: Pairing, place: int, screen: Screen) -> None:
    screen.line(screen.strong(f"{place}. {_called(matches, pairing)}"))
    width = max(len(name) for name in QUESTIONS)
    for reason in pairing.reasons:
        mark = " (mind)" if reason.verdict == FAIR else ""
        screen.labelled(f"{reason.question:{width}}", f"{reason.says}{mark}", "   ")
    for caution in pairing.cautions:
        screen.labelled(f"{'mind':{width}}", caution, "   ")


def _in_short(matches: Matches, rest: tuple[Pairing, ...], screen: Screen) -> None:
    """The others by name, each with what is to be minded of it; what most share is said once."""
    minded = {
        pairing: [reason.says for reason in pairing.reasons if reason.verdict == FAIR]
        + list(pairing.cautions)
        for pairing in rest
    }
    counts = Counter(says for told in minded.values() for says in set(told))
    shared = [says for says, count in counts.items() if count > max(len(rest) / 2, 1)]
    for says in shared:
        screen.wrapped(f"For most of them: {says}", "")
    plain = []
    for pairing in rest:
        told = [says for says in minded[pairing] if says not in shared]
        if told:
            screen.wrapped(f"- {_called(matches, pairing)}: {' '.join(told[:2])}", "", "  ")
        else:
            plain.append(_called(matches, pairing))
    if plain:
        screen.wrapped(f"- with nothing else to mind: {listed(plain)}.", "", "  ")


def _turns(matches: Matches, screen: Screen) -> None:
    """What shares the frame, and what has it before and after."""
    for when, heading in TURNS.items():
        told = [turn for turn in matches.turns if turn.when == when]
        if told:
            screen.heading(heading)
        says: dict[str, list[str]] = {}
        for turn in told:
            says.setdefault(turn.says, []).append(turn.plant)
        for words, plants in says.items():
            screen.wrapped(f"- {listed(plants)}: {words}", "", "  ")


def _reject(
    answers: Answers | None,
    matches: Matches,
    reject: Reject,
    screen: Screen,
    shared: str,
    doubts: str,
) -> None:
    text = f"{_called(matches, reject)}: {reject.says.removesuffix(doubts).rstrip()}"
    edits = ways_back_in(answers, reject) if answers is not None and reject.frame else ()
    if edits:
        text += f" Back in with: {listed([edit.says for edit in edits], 'or')}."
    elif _instead(reject) and _instead(reject) != shared:
        text += f" Back in with: {reject.back_in}."
    screen.wrapped(f"- {text}", "", "  ")


def _fact_of(reject: Reject) -> tuple[str, ...]:
    """What tells the fact that ruled out one plant from another's, whatever the plant.

    One that an edit of the plan would let back in is told by itself, with its edit.
    """
    if reject.frame and reject.candidates:
        return reject.frame, reject.kind, reject.because, reject.plant
    says = reject.says.partition(STANDS_ALONE)[0]
    for name in (reject.plant, f"{reject.plant[:1].upper()}{reject.plant[1:]}"):
        says = says.replace(name, "")
    return reject.frame, reject.kind, reject.because, says


def _so_too(first: Reject, others: list[Reject], screen: Screen) -> None:
    """The other plants that the same fact rules out, with what holds them where that differs."""
    usual = _instead(first)
    told = []
    for one in others:
        instead = _instead(one)
        other = instead.removesuffix(" instead") if instead != usual else ""
        told.append(f"{one.plant} ({other})" if other else one.plant)
    screen.wrapped(f"So too: {listed(told)}.", "  ")


def _instead(reject: Reject) -> str:
    """The change that lets a reject back in, where it is no edit of the plan."""
    return "" if reject.frame and reject.candidates else reject.back_in


def _doubt_of_all(rejected: tuple[Reject, ...]) -> str:
    """What is said at the end of several rejects in the same words: that sources differ."""
    ends = [one.says[one.says.index(DOUBT) :] for one in rejected if DOUBT in one.says]
    usual = Counter(ends).most_common(1)
    return usual[0][0] if usual and usual[0][1] >= SHARED else ""


# ---- as data --------------------------------------------------------------------------------
def as_data(answers: Answers | None, asking: Asking) -> dict[str, Any]:
    """An answer as data: the promise of the commands page."""
    from plantframe.commands.check import offer_data

    matches = asking.matches
    return {
        "want": asking.want or matches.asked,
        "remarks": list(matches.remarks),
        "ranked": [
            {
                "plant": one.plant,
                "frame": one.frame,
                "kind": one.kind,
                "reasons": {reason.question: reason.says for reason in one.reasons},
                "mind": [reason.question for reason in one.reasons if reason.verdict == FAIR],
                "cautions": list(one.cautions),
            }
            for one in matches.ranked
        ],
        "turns": [
            {
                "plant": turn.plant,
                "when": turn.when,
                "first": turn.first.isoformat() if turn.first else None,
                "last": turn.last.isoformat() if turn.last else None,
                "says": turn.says,
            }
            for turn in matches.turns
        ],
        "rejected": [
            {
                "plant": one.plant,
                "frame": one.frame,
                "kind": one.kind,
                "because": one.because,
                "says": one.says,
                "back_in": one.back_in,
                "offers": [
                    offer_data(edit)
                    for edit in (ways_back_in(answers, one) if answers and one.frame else ())
                ],
            }
            for one in matches.rejected
        ],
    }
