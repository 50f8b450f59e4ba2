"""Units: their size as printed, and every way they are written."""

from __future__ import annotations

import pytest

from plantframe.language.phrases import phrase, read_phrase
from plantframe.language.slots import Section, take
from plantframe.language.values import UNITS, Measure, Number, Phrase, Size, Word, plain

# NIST Special Publication 811 (2008), appendix B.8: exact factors.
PRINTED = [
    ("in", 2.54e-2),
    ("ft", 3.048e-1),
    ("yd", 9.144e-1),
    ("lb", 4.5359237e-1),
    ("oz", 2.8349523125e-2),
    ("mph", 4.4704e-1),
]


@pytest.mark.published
@pytest.mark.parametrize(("unit", "factor"), PRINTED)
def test_an_imperial_unit_is_as_large_as_printed(unit: str, factor: float) -> None:
    assert UNITS[unit][1] == pytest.approx(factor, rel=1e-12)


@pytest.mark.published
@pytest.mark.parametrize(("fahrenheit", "celsius"), [(32, 0.0), (212, 100.0), (98.6, 37.0)])
def test_degrees_fahrenheit_become_degrees_celsius(fahrenheit: float, celsius: float) -> None:
    # NIST Special Publication 811, appendix B.8: t/°C = (t/°F - 32)/1.8
    (item,) = read_phrase(f"{fahrenheit:g} F")[0]
    assert isinstance(item.value, Measure)
    assert item.value.value == pytest.approx(celsius)


WRITTEN = [
    ("length", 2.4, ["2.4 m", "2,4 m", "2.4m", "2.4 metres", "240 cm", "240 centimetres"]),
    ("length", 2.4, ["2.4\u00a0m", "2400 mm", "2.40 m", "2 m 40 cm", "2.4 meters"]),
    ("length", 0.4572, ["18 in", "18in", '18"', "18 inches", "18 in.", "1½ ft", "1 1/2 ft"]),
    ("length", 0.4572, ["18″", "18”", "18''", "1.5 feet", "a foot and a half", "18-inch"]),
    ("length", 1.9812, ["6 ft 6 in", "6'6\"", "6′ 6″", "6’6”", "6½ ft", "6 ft. 6 in.", "6ft6in"]),
    ("length", 1.9812, ["6 foot 6 inches", "6 ft and 6 in", "6'-6\"", "six and a half feet"]),
    ("length", 1.9939, ["6 ft 6½ in", "6' 6 1/2\"", "6 ft 6-1/2 in", "6'6.5\""]),
    ("length", 0.3048, ["a foot", "1 ft", "one foot", "12 in"]),
    ("length", 0.5, ["half a metre", "½ m", "50 cm"]),
    ("length", 0.01905, ["3/4 in", "¾ in", '¾"']),
    ("weight", 15.0, ["15 kg", "15 kilos", "15kg", "15 kilograms"]),
    ("weight", 4.64932, ["10 lb 4 oz", "10¼ lb", "10.25 pounds"]),
    ("work", 5.0, ["5 h", "5 hrs", "5 hours", "300 min"]),
    ("work", 1.5, ["1½ h", "an hour and a half", "90 minutes", "1 h 30 min"]),
    ("time", 14.0, ["2 weeks", "14 days", "a fortnight", "two wks"]),
    ("years", 15.0, ["15 years", "15 yrs"]),
    ("warmth", -12.0, ["-12 C", "−12 °C", "-12°C", "10.4 F"]),
    ("warmth", 36.0, ["36 C", "36°C", "96.8 °F"]),
    ("pull", 300.0, ["300 N"]),
    ("gauge", 12.5, ["12.5 gauge", "12½ swg"]),
]
CASES = [
    (typed, dimension, value) for dimension, value, all_typed in WRITTEN for typed in all_typed
]


@pytest.mark.parametrize(("typed", "dimension", "value"), CASES)
def test_a_measure_is_read_however_its_unit_is_written(
    typed: str, dimension: str, value: float
) -> None:
    items, doubts = read_phrase(typed)
    (item,) = items
    assert isinstance(item.value, Measure), items
    assert item.value.dimension == dimension
    assert item.value.value == pytest.approx(value, rel=1e-4)
    assert (item.at, item.end) == (0, len(typed))
    assert {doubt.slip for doubt in doubts} <= {"decimal-comma"}


SIZES = [
    ("2x4", (2, 4)),
    ("2X4", (2, 4)),
    ("2×4", (2, 4)),
    ("2 x 4", (2, 4)),
    ("2*4", (2, 4)),
    ("2 by 4", (2, 4)),
    ("2x4x8", (2, 4, 8)),
    ("45x95 mm", (0.045, 0.095)),
    ("45mm x 95mm", (0.045, 0.095)),
    ("45 mm x 95 mm", (0.045, 0.095)),
    ("¼ x 1-1/2 in", (0.00635, 0.0381)),
    ("6 ft 6 in x 16 ft", (1.9812, 4.8768)),
    ("6'6\" x 16'", (1.9812, 4.8768)),
    ("4'x12'", (1.2192, 3.6576)),
    ("4' × 12'", (1.2192, 3.6576)),
    ("8 ft by 6 ft", (2.4384, 1.8288)),
    ("1.2 × 6 m", (1.2, 6.0)),
    ("4 x 10 m", (4.0, 10.0)),
    ("1,2 x 7,5 m", (1.2, 7.5)),
    ("30 in x 18 ft", (0.762, 5.4864)),
]


@pytest.mark.parametrize(("typed", "sides"), SIZES)
def test_a_size_is_read_with_every_sign_between_its_sides(
    typed: str, sides: tuple[float, ...]
) -> None:
    (item,) = read_phrase(typed)[0]
    assert isinstance(item.value, Size)
    assert tuple(side.value for side in item.value.sides) == pytest.approx(sides)
    assert item.value.bare is not any(unit in typed for unit in ("m", "ft", "in", "'"))


@pytest.mark.parametrize(
    ("typed", "width_m", "depth_m", "length_m", "nominal"),
    [
        ("2x4x8", 0.0508, 0.1016, 2.4384, True),
        ("2 x 4 x 8", 0.0508, 0.1016, 2.4384, True),
        ("4x4 x 8'", 0.1016, 0.1016, 2.4384, True),
        ("2x4x2.4 m", 0.0508, 0.1016, 2.4, True),
        ("45x95x2400 mm", 0.045, 0.095, 2.4, False),
    ],
)
def test_the_third_side_of_a_stick_is_its_length(
    typed: str, width_m: float, depth_m: float, length_m: float, nominal: bool
) -> None:
    taken = take("section", phrase(typed, 1), 0, frozenset())
    assert taken is not None
    section = taken[0]
    assert isinstance(section, Section)
    assert (section.width_m, section.depth_m) == pytest.approx((width_m, depth_m))
    assert section.length_m == pytest.approx(length_m)
    assert section.nominal is nominal


def test_a_size_without_any_unit_is_a_trade_size() -> None:
    (item,) = read_phrase("2x4")[0]
    assert isinstance(item.value, Size)
    assert item.value.bare


def test_words_lose_only_what_hangs_on_them() -> None:
    items, _ = read_phrase("Net: taut!")
    assert [plain(item.value) for item in items] == ["net", "taut", ""]
    phrase = Phrase("Net: taut", 1, items[:2])
    assert phrase.words == ("net", "taut")


def test_figures_and_words_know_how_they_were_typed() -> None:
    items, _ = read_phrase("Two rows")
    first, second = (item.value for item in items)
    assert first == Number(2.0, "Two")
    assert second == Word("rows")


def test_a_fraction_between_the_sides_of_a_size_is_no_day_of_a_month() -> None:
    """A lattice strip is sold as 1/4 x 1-1/2 in (common practice)."""
    items, doubts = read_phrase("1/4 x 1-1/2 in")
    (size,) = [item.value for item in items]
    assert isinstance(size, Size)
    assert [side.value for side in size.sides] == pytest.approx([0.25 * 0.0254, 1.5 * 0.0254])
    assert doubts == ()
