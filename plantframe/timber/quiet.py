"""HiGHS, made to say nothing and to do the same thing every time."""

from __future__ import annotations

from typing import Any, Final

INFINITE: Final = float("inf")


def quiet(**options: float) -> Any:  # noqa: ANN401 - HiGHS describes its own types but in part
    """A fresh solver with these options, one thread, a fixed seed and no word on the screen."""
    import highspy

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:  # noqa: N802 - HiGHS's own name
            """Hush it before the first thing it does, which would print its name."""
            self.silent()
            super().enableCallbacks()  # type: ignore[no-untyped-call]

    solver = Quiet()  # type: ignore[no-untyped-call]
    for name, value in {"threads": 1, "random_seed": 0, **options}.items():
        solver.setOptionValue(name, value)
    return solver


def kind(*, whole: bool) -> Any:  # noqa: ANN401 - as above
    """The sort of a column: whole numbers, or any."""
    import highspy

    return highspy.HighsVarType.kInteger if whole else highspy.HighsVarType.kContinuous


def feasible(solver: Any) -> bool:  # noqa: ANN401 - as above
    """Whether the last run found a solution."""
    return bool(solver.getInfo().primal_solution_status == 2)


def impossible(solver: Any) -> bool:  # noqa: ANN401 - as above
    """Whether the last run found that there is no solution."""
    import highspy

    return bool(solver.getModelStatus() == highspy.HighsModelStatus.kInfeasible)


def stop_above(solver: Any, bound: float) -> None:  # noqa: ANN401 - as above
    """Let it stop where its bound is above that: what was asked is answered then."""

    def look(event: Any) -> None:  # noqa: ANN401 - as above
        if bound < event.data_out.mip_dual_bound < INFINITE:
            event.interrupt()

    solver.cbMipInterrupt.subscribe(look)
