"""Will the support outlast the plant's stay on it, and can it be folded or mended under it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.wording import capital
from plantframe.season.units import two_figures

if TYPE_CHECKING:
    from plantframe.pairing.matches import Reason

HALF = 0.5
MONTHS = 12


def outlasting(pair: Pair) -> Reason:
    """The support's life against the plant's stay."""
    climber, support = pair.climber, pair.support
    if support.bare_wall:
        return good("outlast", f"{support.does('outlasts', 'outlast')} {climber.said}.")
    if support.folds and climber.lasting:
        folding = _folding(pair)
        if folding is not None:
            return folding
    if not climber.lasting:
        return _gone_by_autumn(pair)
    if support.seasonal:
        return _taken_down(pair)
    return _years(pair)


def _gone_by_autumn(pair: Pair) -> Reason:
    climber, support = pair.climber, pair.support
    age = _age(pair)
    life = _life(pair)
    gone = f"{climber.said} is gone after {_stay(pair)}"
    if _comes_again(pair):
        gone = f"the top of {climber.said} is gone each autumn and comes again from the root"
    if age is not None and life is not None and age > life[1]:
        return fair(
            "outlast",
            f"{support.is_} {age} years old and such a frame serves {_lasts(pair)}: try every post "
            f"at the soil line before you trust it. {capital(gone)}.",
        )
    if life is None:
        return good("outlast", f"{capital(gone)}.")
    return good("outlast", f"{support.does('serves', 'serve')} {_lasts(pair)}; {gone}.")


def _comes_again(pair: Pair) -> bool:
    life = pair.climber.entry.life
    return life is not None and life.value in {"perennial", "woody"}


def _taken_down(pair: Pair) -> Reason:
    """A frame that comes down each autumn, and a plant that does not."""
    climber, support = pair.climber, pair.support
    comes_down = f"{support.does('comes', 'come')} down each autumn"
    if pair.suited is not None:
        return fair(
            "outlast",
            f"{comes_down} as a rule; for {climber.said}, which stays {_stay(pair)}, it is built "
            f"stouter and left standing. Such posts serve {_lasts(pair)}.",
        )
    if climber.cut_yearly and not climber.stiff:
        return fair(
            "outlast",
            f"{comes_down}; {climber.said} stays {_stay(pair)} but is cut back every year. Cut it "
            "first, and set the frame up again round its crown before it grows.",
        )
    return out(
        "outlast",
        f"{comes_down}; {climber.said} keeps its stems and stays {_stay(pair)}.",
    )


def _folding(pair: Pair) -> Reason | None:
    """A frame that folds down with the plant on it: only stems that bend, or are cut, go along."""
    climber, support = pair.climber, pair.support
    if climber.stiff:
        return out(
            "outlast",
            f"{support.does('folds', 'fold')} down off the wall; the stems of {climber.said} are "
            f"{_stems(climber.stem)} and crack at the hinge.",
        )
    if not climber.cut_yearly:
        return fair(
            "outlast",
            f"{support.does('folds', 'fold')} down off the wall; {climber.said} bends along while "
            "it is young but is not cut back every year: fold it gently, right after pruning.",
        )
    return None


def _years(pair: Pair) -> Reason:
    climber, support = pair.climber, pair.support
    stay = f"{climber.said} stays {_stay(pair)}"
    if support.worked is not None and support.worked.builders_work:
        return fair("outlast", f"{support.is_} a builder's to make lasting: say that {stay}.")
    life = _life(pair)
    if life is None:
        return good("outlast", f"{support.is_} built to stay; {stay}.")
    usual = (life[0] + life[1]) / 2
    age = _age(pair) or 0
    left = max(usual - age, 0.0)
    lasts = f"{support.does('lasts', 'last')} {_lasts(pair)}"
    if age:
        lasts += f" and is {age} years old"
    if left >= climber.stays_years:
        return good("outlast", f"{lasts}; {stay}.")
    wall = support.structure is not None and support.structure.stands.held == "wall"
    untied = climber.holds_on == "tied in" or (
        climber.holds_on in {"tendrils", "leaf stalks"} and (climber.cut_yearly or climber.tied)
    )
    if untied:
        return fair(
            "outlast", f"{lasts}; {stay}, and can be untied while posts are renewed one by one."
        )
    by = support.worked.worked.carries if support.worked and support.worked.worked else None
    if wall and by is not None and by.by in {"wire", "none"}:
        return fair(
            "outlast", f"{lasts}; {stay}. Lead it beside the wires, so that each can be renewed."
        )
    if left >= HALF * climber.stays_years:
        return fair("outlast", f"{lasts}; {stay}: expect to mend it under the plant.")
    return out(
        "outlast",
        f"{lasts}; {stay}, and you cannot change a frame under {_stems(climber.stem, noun=True)}.",
    )


def _life(pair: Pair) -> tuple[float, float] | None:
    """Years the support serves."""
    structure = pair.support.structure
    life = structure.life if structure else None
    if life is None or life.is_word:
        return None
    low = life.low if life.low is not None else life.usual
    return low, life.high if life.high is not None else life.usual


def _lasts(pair: Pair) -> str:
    life = _life(pair)
    if life is None:
        return "some years"
    low, high = (two_figures(one) for one in life)
    if low == high:
        return "a year" if low == "1" else f"{low} years"
    return f"{low} to {high} years"


def _age(pair: Pair) -> int | None:
    worked = pair.support.worked
    built = worked.frame.built if worked else None
    year = pair.support.garden.year
    return year - built if built is not None and year else None


def _stay(pair: Pair) -> str:
    """How long the plant stays, in months or years."""
    stays = pair.climber.entry.stays
    if stays is None:
        return "the season"
    low = stays.low if stays.low is not None else stays.usual
    high = stays.high if stays.high is not None else None
    if stays.usual < 1:
        first, last = (f"{one * MONTHS:.0f}" for one in (low, high if high is not None else low))
        return f"{first} months" if first == last else f"{first} to {last} months"
    if high is None:
        return f"{two_figures(low)} years and more"
    first, last = two_figures(low), two_figures(high)
    return f"{first} years" if first == last else f"{first} to {last} years"


def _stems(stem: str, *, noun: bool = False) -> str:
    """A stem's nature in words."""
    if noun:
        return "a trunk" if stem == "trunk" else "woody stems"
    return {"trunk": "as thick as an arm", "stiff": "stiff", "cane": "stiff canes"}.get(
        stem, "woody"
    )
