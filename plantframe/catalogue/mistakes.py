"""What can be wrong with an entry of the catalogue, said in one sentence."""

from __future__ import annotations


class CatalogueError(Exception):
    """An entry that cannot be read.

    file    name of the file, such as "net-frame.yaml"
    line    line of the file, counted from 1, or 0 where it is not known
    field   the words that lead to the place, such as "steps, set, hands"
    says    what is wrong with it, in plain words
    """

    def __init__(self, file: str, line: int, field: str, says: str) -> None:
        """Keep the four parts, so that a caller may word them another way."""
        self.file, self.line, self.field, self.says = file, line, field, says
        where = f"{file}, line {line}" if line else file
        super().__init__(f"{where}{', ' + field if field else ''}: {says}.")


class ExpressionError(Exception):
    """A sum in an entry that cannot be read or worked out; its text says why."""


class MissingFact(ExpressionError):  # noqa: N818 - it names what is missing, which need not be an error
    """A sum that wants a figure nobody has given.

    name    the figure's name, such as "posts.length"
    """

    def __init__(self, name: str) -> None:
        """Keep the name that was wanted."""
        self.name = name
        super().__init__(f"{name} is not known")
