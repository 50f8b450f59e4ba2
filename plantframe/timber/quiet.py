"""HiGHS, made to say nothing and to do the same thing every time."""

from __future__ import annotations

from typing import Any, Final

INFINITE: Final = float("inf")


def quiet(**options: float) -> Any:
    """A fresh solver with these options, one thread, a fixed seed and no word on the screen."""
    import highspy

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:  # noqa: N802 - HiGHS's own name
            """Hush it before the first thing it does, which would print its name."""
            self.silent()
            super().enableCallbacks()

    solver = Quiet()
    for name, value in {"threads": 1, "random_seed": 0, **options}.items():
        solver.setOptionValue(name, value)
    return solver


def kind(*, whole: bool) -> Any:
    """The sort of a column: whole numbers, or any."""
    import highspy

    return highspy.HighsVarType.kInteger if whole else highspy.HighsVarType.kContinuous


def feasible(solver: Any) -> bool:
    """Did the last run find a solution?"""
    return bool(solver.getInfo().primal_solution_status == 2)
