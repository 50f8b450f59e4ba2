"""Offers: candidate edits tried by going the whole way again, and shown only if they cure.

An edit is made to the text, the text is read, built, worked out and advised on anew; the finding
(or the slip) must be gone, and nothing worse may have woken.
"""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from plantframe.advice.findings import Found, severity

if TYPE_CHECKING:
    from plantframe.answers.answers import Answers
    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Mistake
    from plantframe.pairing.matches import Reject

MOST_OFFERS = 3  # as many as a person weighs at once
MOST_TRIED = 6  # a rule names its best ways first


def offers_for(answers: Answers, found: Found, most: int = MOST_OFFERS) -> tuple[Edit, ...]:
    """The edits that cure a finding and wake nothing worse, at most so many."""
    out: list[Edit] = []
    for edit in found.candidates(MOST_TRIED):
        if len(out) == most:
            break
        after = answers.tried(edit)
        if after is not None and cures(answers, after, found):
            out.append(edit)
    return tuple(out)


def cures(before: Answers, after: Answers, found: Found) -> bool:
    """The finding is gone, and nothing as grave has woken."""
    if any(one.key == found.key for one in after.advice.active):
        return False
    if not _reads_as_well(before, after):
        return False
    grave = severity(found.level)
    old = {one.key: severity(one.level) for one in before.advice.active}
    for one in after.advice.active:
        now = severity(one.level)
        was = old.get(one.key)
        if was is None and now >= max(grave, 1):
            return False
        if was is not None and now > was:
            return False
        if was is None and grave == 0:
            return False
    return True


def _reads_as_well(before: Answers, after: Answers) -> bool:
    """No slip has come in that was not there."""
    # asks and stops only: a comma read as a decimal point is no harm
    old = Counter(slip.name for slip in before.mistakes if slip.level != "note")
    new = Counter(slip.name for slip in after.mistakes if slip.level != "note")
    return not new - old


def offers_for_slip(answers: Answers, slip: Mistake) -> tuple[Edit, ...]:
    """The edits that cure a slip of the text and bring no other."""
    out: list[Edit] = []
    for edit in slip.candidates[:MOST_TRIED]:
        if len(out) == MOST_OFFERS:
            break
        after = answers.tried(edit)
        if after is None:
            continue
        old = Counter(one.name for one in answers.mistakes if one.level != "note")
        new = Counter(one.name for one in after.mistakes if one.level != "note")
        graver = {one.key for one in after.advice.active if one.level == "stop"} - {
            one.key for one in answers.advice.active
        }
        fewer = sum(new.values()) < sum(old.values()) or slip.level == "note"
        if fewer and new[slip.name] < old[slip.name] and not new - old and not graver:
            out.append(edit)
    return tuple(out)


def ways_back_in(answers: Answers, reject: Reject) -> tuple[Edit, ...]:
    """The edits that let a rejected pairing back in and wake nothing graver than a note."""
    from plantframe.pairing.advisor import is_back_in

    out: list[Edit] = []
    for edit in reject.candidates[:MOST_TRIED]:
        if len(out) == MOST_OFFERS:
            break
        after = answers.tried(edit)
        if after is None or not is_back_in(after.season, reject.plant, reject.frame):
            continue
        before = {one.key for one in answers.advice.active}
        woken = [
            one
            for one in after.advice.active
            if one.key not in before and severity(one.level) >= severity("warn")
        ]
        if not woken and _reads_as_well(answers, after):
            out.append(edit)
    return tuple(out)
