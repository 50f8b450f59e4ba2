"""How near a gardener's words for a job come to the words of the job itself."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

# Words that say nothing of which job is meant.
SMALL: Final = frozenset(
    {"a", "an", "the", "of", "in", "on", "to", "at", "with", "by", "for", "and", "or", "up", "it"}
    | {"its", "is", "are", "them", "then", "off", "out", "from", "into", "all", "each", "every"}
    | {"my", "our", "new", "put", "do", "done", "did", "get", "finish", "job", "work"}
)
# Words of one kind of work: each stands for the others. A word may do several kinds of work.
ALIKE: Final = (
    frozenset({"set", "drive", "push", "sink", "erect", "plant"}),
    frozenset({"tie", "lash", "bind", "fix", "fasten"}),
    frozenset({"screw", "nail", "fix", "fasten", "staple", "clip"}),
    frozenset({"thread", "hang"}),
    frozenset({"firm", "ram", "heel", "tread", "tamp"}),
    frozenset({"bore", "drill"}),
    frozenset({"coat", "brush", "paint", "oil", "stain", "treat"}),
    frozenset({"dig", "open", "hole"}),
    frozenset({"cut", "saw"}),
    frozenset({"pole", "cane", "stake", "post", "upright", "leg"}),
)
# A bare `posts` means setting them: nobody says so of boring or of pencil lines.
UPRIGHTS: Final = frozenset({"post", "pole", "cane", "stake"})

ENOUGH = 2 / 3  # of the gardener's words; half will do where the verb is the job's own
HALF = 0.5
SAME_TEXT = 0.9
SAME_WORD = 0.8


@frozen
class Called:
    """What a job may be called by.

    id    its own short name: net
    says  its words: thread the net on the posts, in and out of the meshes
    """

    id: str
    says: str


def best(words: str, jobs: Sequence[Called]) -> int | None:
    """Which of the jobs these words mean, None where none comes near.

    Of equals the later: who has set the middle posts has set the end posts too.
    """
    found = meant(words, jobs)
    return found[-1] if found else None


def meant(words: str, jobs: Sequence[Called]) -> tuple[int, ...]:
    """All jobs that these words mean equally well: `set the posts`, end posts and middle ones."""
    wanted = _content(words)
    if not wanted:
        return ()
    if len(wanted) == 1 and any(_same(wanted[0], root_of(word)) for word in UPRIGHTS):
        wanted = (*wanted, root_of("set"))
    graded = [_likeness(words, wanted, job) for job in jobs]
    top = max((grade for grade in graded if grade is not None), default=None)
    return tuple(at for at, grade in enumerate(graded) if top is not None and grade == top)


def near(words: str, jobs: Iterable[Called]) -> tuple[str, ...]:
    """At most four jobs to name to somebody whose words mean none of them."""
    wanted = _content(words)
    graded = [(_shared(wanted, _content(f"{job.id} {job.says}")), job) for job in jobs]
    order = sorted(graded, key=lambda pair: -pair[0])  # of equals the earlier job first
    return tuple(dict.fromkeys(short(job.says) for share, job in order if share > 0))[:4]


def short(says: str) -> str:
    """The first clause of a job's words: what a line of the plan calls it by."""
    return re.split(r"[,;:(]", says, maxsplit=1)[0].strip()


def slug(name: str) -> str:
    """A name as it stands in a job's address: `Bean Net` -> bean-net."""
    return re.sub(r"[\W_]+", "-", name.lower().replace("'", "").replace("’", "")).strip("-")


def _likeness(
    words: str, wanted: tuple[str, ...], job: Called
) -> tuple[bool, float, bool, bool] | None:
    """How like: the same text; the share of words; the job's own name; its verb. None: not like."""
    own, clauses = _words_of(job)
    share = _shared(wanted, own)
    verb = any(clause and _same(wanted[0], clause[0]) for clause in clauses)
    if share < HALF or (share < ENOUGH and not verb):
        return None
    named = bool(_shared(wanted, _content(job.id)))
    return _same_text(words, job), share, named, verb


@lru_cache(maxsize=512)
def _words_of(job: Called) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """All words of a job, and those of each clause."""
    clauses = tuple(_content(part) for part in re.split(r"[,;:]| and | then ", job.says))
    return _content(f"{job.id} {job.says}"), clauses


def _same_text(words: str, job: Called) -> bool:
    import difflib

    said = " ".join(words.lower().split())
    return any(
        difflib.SequenceMatcher(None, said, text.lower()).ratio() >= SAME_TEXT
        for text in (job.says, short(job.says), job.id)
    )


def _shared(wanted: tuple[str, ...], own: tuple[str, ...]) -> float:
    """The share of the wanted words that the job has too."""
    if not wanted:
        return 0.0
    return sum(any(_same(word, other) for other in own) for word in wanted) / len(wanted)


@lru_cache(maxsize=8192)
def _same(one: str, other: str) -> bool:
    """Whether two words say the same here: one root, one kind of work, or a slip of the pen."""
    import difflib

    if one == other:
        return True
    if any(one in group and other in group for group in _ROOTS):
        return True
    long_enough = len(one) > 3 and len(other) > 3
    return long_enough and difflib.SequenceMatcher(None, one, other).ratio() >= SAME_WORD


@lru_cache(maxsize=1024)
def _content(text: str) -> tuple[str, ...]:
    """The roots of the words that say something."""
    words = re.findall(r"[^\W\d_]+(?:['’][^\W\d_]+)?|\d+", text.lower())
    return tuple(root_of(word) for word in words if word not in SMALL)


def root_of(word: str) -> str:
    """A word without its ending: weaving, weaves and weave have one root."""
    for ending in ("ing", "ed", "es", "s"):
        stem = word.removesuffix(ending)
        if stem != word and len(stem) >= 3 and set(stem) & set("aeiouy"):
            word = stem
            break
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "sl":
        word = word[:-1]
    return word.removesuffix("e") if len(word) > 2 else word


_ROOTS: Final = tuple(frozenset(root_of(word) for word in group) for group in ALIKE)
