"""What every test shares: no network, steady hypothesis, and tools that may be missing.

A check marked `browser` or `editor` needs that tool on the machine. Where it is missing the check
is left out before the run and the count is said; nothing is skipped half-way. With the tool's name
in PLANTFRAME_REQUIRE a missing tool stops the run instead, so that CI cannot go green without it.
"""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path

import hypothesis
import pytest

ROOT = Path(__file__).resolve().parent.parent

# Marker: programs that will do, best first.
TOOLS = {
    "browser": ("chromium", "chromium-browser", "google-chrome"),
    "editor": ("nvim",),
}
REQUIRE = "PLANTFRAME_REQUIRE"
LEFT_OUT = pytest.StashKey[dict[str, int]]()

# A slow machine is no fault of the garden: a time limit an example would only make noise.
hypothesis.settings.register_profile("house", deadline=None, print_blob=True)
hypothesis.settings.load_profile("house")


def found(tool: str) -> str | None:
    """Path of the first program that will do for a marker, or None."""
    return next((path for name in TOOLS[tool] if (path := shutil.which(name))), None)


def required() -> set[str]:
    """The markers whose tool must be there."""
    return set(os.environ.get(REQUIRE, "").split())


def _stay_at_home(event: str, args: tuple[object, ...]) -> None:
    """Refuse a connection that would leave the machine: the tests are offline."""
    if event != "socket.connect":
        return
    address = args[1]
    if isinstance(address, tuple) and address[0] not in ("127.0.0.1", "::1", "localhost"):
        raise ConnectionRefusedError(f"a test tried to reach {address[0]}; tests stay offline")


def pytest_configure() -> None:
    """Close the road out, and refuse a tool's name that means nothing."""
    sys.addaudithook(_stay_at_home)
    if unknown := required() - set(TOOLS):
        names = ", ".join(sorted(unknown))
        raise pytest.UsageError(f"{REQUIRE} names {names}; known are {', '.join(TOOLS)}")


def pytest_report_header() -> list[str]:
    """Say which of the tools are here."""
    return [f"{tool}: {found(tool) or 'not on this machine'}" for tool in TOOLS]


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave out what cannot run here; stop if it was required."""
    left_out: dict[str, int] = {}
    for tool, programs in TOOLS.items():
        marked = [item for item in items if item.get_closest_marker(tool)]
        if not marked or found(tool):
            continue
        if tool in required():
            raise pytest.UsageError(
                f"{REQUIRE} asks for the {tool}, {len(marked)} checks need it, "
                f"and none of {', '.join(programs)} is on this machine"
            )
        left_out[tool] = len(marked)
        config.hook.pytest_deselected(items=marked)
        items[:] = [item for item in items if item not in marked]
    config.stash[LEFT_OUT] = left_out


def pytest_report_collectionfinish(config: pytest.Config) -> list[str]:
    """Say the order and count what was left out, even in a quiet run."""
    seed = config.getoption("randomly_seed", default=None)
    return [
        f"to run in this order again: --randomly-seed={seed}",
        *(
            f"left out, for want of a real {tool} on this machine: {count}"
            for tool, count in config.stash.get(LEFT_OUT, {}).items()
        ),
    ]


@pytest.fixture(scope="session")
def root() -> Path:
    """The checkout."""
    return ROOT


@pytest.fixture(scope="session")
def browser_path() -> str:
    """A real browser, for checks marked `browser`."""
    path = found("browser")
    assert path, "mark the test with `browser`"
    return path


@pytest.fixture(scope="session")
def editor_path() -> str:
    """A real text editor, for checks marked `editor`."""
    path = found("editor")
    assert path, "mark the test with `editor`"
    return path
