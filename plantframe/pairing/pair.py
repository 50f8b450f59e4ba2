"""One plant on one support, as each of the six questions is given it."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from plantframe.catalogue.names import named
from plantframe.frozen import frozen, replace
from plantframe.pairing.matches import FAIR, GOOD, OUT, Reason
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Suited
    from plantframe.pairing.climber import Climber
    from plantframe.pairing.supports import Support


@frozen
class Pair:
    """A plant and what it is tried on."""

    climber: Climber
    support: Support

    @cached_property
    def shown(self) -> Shown:
        """How figures are written for this garden."""
        return Shown(self.support.garden.imperial)

    @cached_property
    def suited(self) -> Suited | None:
        """The line of the kind's own entry that names this plant: the trade grows it on such."""
        structure = self.support.structure
        if structure is None:
            return None
        name = self.climber.entry.known_as
        return next((one for one in structure.suits if named("plant", one.plant) == (name,)), None)

    def changed(self, changes: Mapping[str, object]) -> Pair | None:
        """The same pair with some figures of the support changed."""
        support = self.support.changed(changes)
        return replace(self, support=support) if support is not None else None


def good(question: str, says: str) -> Reason:
    """Nothing speaks against it."""
    return Reason(question, GOOD, says)


def fair(question: str, says: str) -> Reason:
    """It goes, with something to know or to do."""
    return Reason(question, FAIR, says)


def out(question: str, says: str) -> Reason:
    """It does not go."""
    return Reason(question, OUT, says)
