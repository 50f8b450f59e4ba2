"""A part of an entry as it is read: key by key, knowing where it stands in its file."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.sourced import Sourced, sourced


class Page:
    """One mapping of an entry; every key must be asked for, and `done` says which was not."""

    def __init__(self, raw: object, file: str, *path: str) -> None:
        """Take the mapping found at a path of a file."""
        self.file, self.path = file, path
        self._asked: set[str] = set()
        if not isinstance(raw, Mapping):
            raise self.wrong("it wants words with values under them")
        self.raw: Mapping[str, object] = {str(key): value for key, value in raw.items()}

    def wrong(self, says: str, key: str = "") -> CatalogueError:
        """The mistake, with the place it stands at."""
        path = (*self.path, key) if key else self.path
        return CatalogueError(self.file, 0, ", ".join(path), says)

    def take(self, key: str) -> object:
        """What stands under a key, or None."""
        self._asked.add(key)
        return self.raw.get(key)

    def done(self) -> None:
        """Refuse a key that nothing has asked for."""
        for key in self.raw:
            if key not in self._asked:
                raise self.wrong("no entry has this word", key)

    def rest(self) -> list[str]:
        """The keys that nothing has asked for so far."""
        return [key for key in self.raw if key not in self._asked]

    def text(self, key: str, default: str = "") -> str:
        """Plain words."""
        value = self.take(key)
        if value is None:
            return default
        if not isinstance(value, str):
            raise self.wrong(f"it wants words, not {value!r}", key)
        return value.strip()

    def needed(self, key: str) -> str:
        """Plain words that must be there."""
        if not (text := self.text(key)):
            raise self.wrong(f"it has no {key!r}")
        return text

    def texts(self, key: str) -> tuple[str, ...]:
        """A list of plain words, or one."""
        value = self.take(key)
        if value is None:
            return ()
        if isinstance(value, str):
            return (value,)
        if not isinstance(value, list) or not all(isinstance(one, str) for one in value):
            raise self.wrong("it wants a list of words", key)
        return tuple(value)

    def expression(self, key: str, default: str = "") -> str:
        """A sum, or a bare figure."""
        value = self.take(key)
        if value is None:
            return default
        if isinstance(value, bool) or not isinstance(value, str | int | float):
            raise self.wrong("it wants a sum", key)
        return str(value)

    def whole(self, key: str, default: int) -> int:
        """A whole figure."""
        value = self.take(key)
        if value is None:
            return default
        if isinstance(value, bool) or not isinstance(value, int):
            raise self.wrong(f"it wants a whole figure, not {value!r}", key)
        return value

    def flag(self, key: str) -> bool:
        """Yes or no; no where nothing stands."""
        value = self.take(key)
        if value is None:
            return False
        if not isinstance(value, bool):
            raise self.wrong("it wants yes or no", key)
        return value

    def figure(self, key: str, basis: str = "") -> Sourced | None:
        """A value with its origin, or None; a bare figure or word where the basis is given."""
        value = self.take(key)
        if value is None:
            return None
        return self.as_figure(value, key, basis)

    def as_figure(self, value: object, key: str, basis: str = "") -> Sourced:
        """Read what was taken as a value with its origin."""
        if not isinstance(value, Mapping):
            if not basis:
                raise self.wrong("it wants a value with its basis", key)
            value = {"value": value}
        try:
            return sourced(value, basis)
        except ValueError as error:
            raise self.wrong(str(error), key) from None

    def minutes(self, key: str, basis: str) -> Sourced | None:
        """A figure of minutes, or None."""
        value = self.take(key)
        if value is None:
            return None
        if not isinstance(value, Mapping):
            value = {"value": value, "unit": "min"}
        return self.as_figure(value, key, basis)

    def page(self, key: str) -> Page | None:
        """The mapping under a key, or None."""
        value = self.take(key)
        return None if value is None else Page(value, self.file, *self.path, key)

    def pages(self, key: str) -> Iterator[tuple[str, Page]]:
        """The mappings under a key, each with its own name or number in a list.

        Words alone in a list stand for {do: the words}.
        """
        value = self.take(key)
        if value is None:
            return
        if isinstance(value, Mapping):
            for name, one in value.items():
                yield str(name), Page(one, self.file, *self.path, key, str(name))
        elif isinstance(value, list):
            for number, one in enumerate(value, 1):
                name = str(one.get("id", number)) if isinstance(one, Mapping) else str(number)
                inner = {"do": one} if isinstance(one, str) else one
                yield name, Page(inner, self.file, *self.path, key, name)
        else:
            raise self.wrong("it wants a list", key)
