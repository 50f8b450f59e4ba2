"""What a pairing comes to: six reasons, and for a reject the one fact that ruled it out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from datetime import date

    from plantframe.language.edits import Edit

# In the order in which they are asked, which is also the order in which they rank.
QUESTIONS = ("hold", "carry", "reach", "outlast", "light", "upkeep")

# A plant that is not to be planted here at all is ruled out before any of them is asked.
BARRED = "barred"
RULED_OUT_BY = (BARRED, *QUESTIONS)

# What a plan would be warned of knocks a pairing out; what it would be told as a note is fair.
GOOD, FAIR, OUT = "good", "fair", "knocked out"
VERDICTS = (GOOD, FAIR, OUT)


@frozen
class Reason:
    """The answer to one question.

    question   hold, carry, reach, outlast, light or upkeep
    verdict    good, fair or knocked out
    says       a sentence or two, the garden's noun first, then the figures
    """

    question: str
    verdict: str
    says: str


@frozen
class Pairing:
    """A plant and a support that go together.

    frame     the plan's own name for the frame or wall, "" for a kind nobody has built yet
    kind      the kind of support
    reasons   all six, in order
    cautions  what the plant does to people, walls and neighbours, where it matters here
    """

    plant: str
    frame: str
    kind: str
    reasons: tuple[Reason, ...]
    cautions: tuple[str, ...] = ()

    def reason(self, question: str) -> Reason:
        """The answer to that question."""
        return next(one for one in self.reasons if one.question == question)


@frozen
class Reject:
    """A plant and a support that do not go together.

    because      the question that knocked it out, or "barred": not to be planted here
    says         the one fact, in a sentence
    back_in      the change that lets it back in, in words; "" where none is known
    candidates   the same change as edits of the plan, the best first, where the frame is in it
    """

    plant: str
    frame: str
    kind: str
    because: str
    says: str
    back_in: str = ""
    candidates: tuple[Edit, ...] = ()


@frozen
class Turn:
    """A plant that shares the frame, or has it before or after.

    when   beside, before or after
    first, last   the days on which it is sown or planted, None where the plan cannot say
    """

    plant: str
    when: str
    says: str
    first: date | None = None
    last: date | None = None


@frozen
class Matches:
    """The answer to one asking.

    asked      the plant, want, frame, kind or place as it was asked for
    ranked     best first
    rejected   in the order of the questions that ruled them out
    remarks    what else has to be said: which clematis is meant, what was left out
    turns      what shares the frame with what grows on it, or has it before or after
    """

    asked: str
    ranked: tuple[Pairing, ...] = ()
    rejected: tuple[Reject, ...] = ()
    remarks: tuple[str, ...] = ()
    turns: tuple[Turn, ...] = ()
