"""Gardens made at random: frames of many kinds, people, hours, dates, tasks."""

from __future__ import annotations

from datetime import date

from hypothesis import strategies as st

# A kind, lines of its own, and what grows on it; kinds with waits, own orders and two-person work.
FRAMES = (
    ("frame", "net frame", "bays 2 of 8 ft\n  bar 2x2\n  finish oil", "tall pea"),
    ("frame", "net frame", "bays 1 of 6 ft\n  bar 2x2\n  stays 2, square to the row", "pole bean"),
    ("frame", "wigwam", "poles 6 of 20 mm round, 8 ft, 10 in down", "runner bean"),
    ("frame", "string drops", "bar 2x2\n  bays 2 of 6 ft", "tall tomato"),
    ("frame", "hinged lattice", "size 8 ft x 5 ft", "late clematis"),
    ("line", "cane wires", "ends braced", "summer raspberry"),
    ("fence", "mortised fence", "bays 4 of 9 ft", "climbing rose"),
    ("cover", "cold frame", "size 8 ft x 4 ft\n  lights 4\n  brace 2x4", "lettuce"),
    ("frame", "pea sticks", "", "short pea"),
    ("frame", "arch", "finish oil", "sweet pea"),
)
DAYS = st.dates(date(2027, 2, 1), date(2027, 8, 31))
WEEKDAYS = ("Monday", "Wednesday", "Saturday", "Sunday")


@st.composite
def gardens(draw: st.DrawFn) -> str:
    """A garden of one to six frames, its people and hours."""
    lines = ["garden Random End, 2027", "  place 51.9 N, 2.3 W"]
    if draw(st.booleans()):
        lines.append("  frost last 6 May, first 12 October")
    for name in draw(st.lists(st.sampled_from(("Isa", "Bram", "Tom")), unique=True)):
        saw = draw(st.sampled_from(("", ", saw", ", no saw")))
        here = ", here 8 May" if draw(st.integers(0, 4)) == 0 else ""
        lines.append(f"  person {name}, lifts {draw(st.integers(8, 30))} kg{here}{saw}")
    weekdays = draw(st.lists(st.sampled_from(WEEKDAYS), unique=True))
    lines += [f"  free {weekday} {draw(st.integers(1, 9))} h" for weekday in weekdays]
    if draw(st.booleans()):
        lines.append("  away 20 April to 12 May")
    count = draw(st.integers(1, 6))
    for number in range(count):
        word, kind, own, plant = draw(st.sampled_from(FRAMES))
        lines += [f"{word} Thing {number}, {kind}", *(f"  {own}".split("\n") if own else [])]
        when = draw(st.none() | DAYS)
        lines.append(f"  grow {plant}" + (f", plant out {when.isoformat()}" if when else ""))
        by = draw(st.none() | DAYS)
        lines += [f"  ready by {by.isoformat()}"] if by else []
        down = draw(st.none() | st.dates(date(2027, 8, 1), date(2027, 11, 30)))
        lines += [f"  take down {down.isoformat()}"] if down else []
    for number in range(draw(st.integers(0, 3))):
        by = draw(st.none() | DAYS)
        after = f", after Thing {draw(st.integers(0, count - 1))}" if draw(st.booleans()) else ""
        lines.append(f"task paint thing {number}{after}" + (f", by {by.isoformat()}" if by else ""))
    return "\n".join(lines) + "\n"
