"""All names and synonyms, from the small index that is written beforehand."""

from __future__ import annotations

import json
from functools import lru_cache
from pathlib import Path
from typing import Final, TypedDict

INDEX: Final = Path(__file__).parent / "names.json"


class StructureNames(TypedDict):
    """What the reader of plans has to know of a structure before it is used.

    blocks  the words it heads a block with: frame, line, cover, fence, border, any
    facts   its fact words -> how a line of each is written, "" where the language says it
    words   those that only it knows -> their shape, one sentence of help, and an example
    """

    blocks: list[str]
    facts: dict[str, str]
    words: dict[str, tuple[str, str, str]]


class Index(TypedDict):
    """The index. own, also, group: kind -> tidy name -> names of entries.

    own is an entry's own name, also its synonyms, group the looser words that may mean
    several ("bean").
    """

    own: dict[str, dict[str, list[str]]]
    also: dict[str, dict[str, list[str]]]
    group: dict[str, dict[str, list[str]]]
    structures: dict[str, StructureNames]


@lru_cache(maxsize=1)
def index() -> Index:
    """The index as written; empty where it is missing."""
    empty: Index = {"own": {}, "also": {}, "group": {}, "structures": {}}
    try:
        read: Index = json.loads(INDEX.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return empty
    return read


def all_names(kind: str) -> list[str]:
    """Every name and synonym of a kind, for near names and for completion."""
    read = index()
    every = {*read["own"].get(kind, {}), *read["also"].get(kind, {}), *read["group"].get(kind, {})}
    return sorted(every)


@lru_cache(maxsize=4096)
def named(kind: str, text: str) -> tuple[str, ...]:
    """The entries of a kind that a text can mean.

    An entry's own name wins over a synonym, a synonym over a looser word; the text as it
    stands wins over its singular.
    """
    read = index()
    for form in singular_forms(tidy(text)):
        for names in (read["own"], read["also"], read["group"]):
            if found := names.get(kind, {}).get(form):
                return tuple(found)
    return ()


_SIGNS: Final = str.maketrans(
    {"’": "'", "‘": "'", "-": " ", "–": " ", "\u00a0": " ", "\u2011": " "}
)


def tidy(text: str) -> str:
    """A name as it is compared: small letters, single spaces, no hyphens."""
    return " ".join(text.casefold().translate(_SIGNS).split())


def stem_of(name: str) -> str:
    """The file name of an entry, without its ending: lamb's lettuce in lambs-lettuce."""
    return tidy(name).replace(" ", "-").replace("'", "")


@lru_cache(maxsize=4096)
def singular_forms(text: str) -> tuple[str, ...]:
    """What a name may be looked for as, the likeliest first.

    As it stands, then in the singular (last word, or first and last), then without its
    article: "the beans" may be bean, and an "a frame" is first looked for as it stands.
    """
    words = text.split()
    if not words:
        return ()
    forms: dict[str, None] = {text: None}
    for last in _singulars(words[-1]):
        forms[" ".join([*words[:-1], last])] = None
    for first in _singulars(words[0]) if len(words) > 1 else ():
        for last in _singulars(words[-1]):
            forms[" ".join([first, *words[1:-1], last])] = None
    if words[0] in {"a", "an", "the"} and len(words) > 1:
        forms.update(dict.fromkeys(singular_forms(" ".join(words[1:]))))
    return tuple(forms)


def _singulars(word: str) -> list[str]:
    """What a word may be one of: tomatoes, chillies, berries, leaves, squashes, beans, peas."""
    forms = [word]
    for ending, short in (("ies", "y"), ("ves", "f"), ("es", ""), ("s", "")):
        if word.endswith(ending) and len(word) > len(ending) + 1:
            forms.append(word[: -len(ending)] + short)
    if word.endswith(("shes", "ches", "xes", "sses")):
        forms.append(word[:-2])
    return forms
