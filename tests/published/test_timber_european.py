"""Graded European timber: classes, design strengths and a slender beam.

Sources: EN 338:2003; EN 1995-1-1, Table 3.1 and 3.2; a French textbook on the design of timber
structures to Eurocode 5 (2nd printing 2008), Example 2.3.2. All values as coded or asserted in
public repositories; the pages themselves not seen.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import timber_en
from tests.published.printed import agrees

pytestmark = pytest.mark.published

# EN 338:2003: fm, ft0, fc0, fv N/mm²; E0,mean, E0.05 kN/mm²; density, mean density kg/m³.
CLASSES = [
    ("C14", 14, 8, 16, 1.7, 7.0, 4.7, 290, 350),
    ("C16", 16, 10, 17, 1.8, 8.0, 5.4, 310, 370),
    ("C18", 18, 11, 18, 2.0, 9.0, 6.0, 320, 380),
    ("C24", 24, 14, 21, 2.5, 11.0, 7.4, 350, 420),
    ("D30", 30, 18, 23, 3.0, 10.0, 8.0, 530, 640),
]


@pytest.mark.parametrize("row", CLASSES, ids=lambda row: row[0])
def test_strength_classes_are_as_printed(row: tuple[str, *tuple[float, ...]]) -> None:
    name, *values = row
    assert timber_en.CLASSES[name] == timber_en.StrengthClass(*values)


@pytest.mark.parametrize(
    ("strength_mpa", "service_class", "load", "material", "design"),
    [
        (24, 1, "medium", "solid", "14.769"),  # C24, bending
        (21, 2, "short", "solid", "14.538"),  # C24, pressure along the grain
        (2.2, 3, "permanent", "solid", "0.84615"),  # C18, pressure across the grain
        (2.5, 1, "medium", "solid", "1.53846"),  # C24, shear
        (28, 1, "long", "glued laminated", "15.68"),  # GL28h, bending
    ],
)
def test_design_strengths_are_as_printed(
    strength_mpa: float, service_class: int, load: str, material: str, design: str
) -> None:
    # EN 1995-1-1, 2.4.1 and Table 3.1.
    found_pa = timber_en.design_strength_pa(
        strength_mpa * 1e6,
        timber_en.duration_factor(service_class, load),
        material_factor=timber_en.MATERIAL_FACTORS[material],
    )
    assert agrees(found_pa / 1e6, design)


@pytest.mark.parametrize(
    ("load", "dry", "outdoors"),
    [
        ("permanent", 0.6, 0.5),
        ("long", 0.7, 0.55),
        ("medium", 0.8, 0.65),
        ("short", 0.9, 0.7),
        ("instantaneous", 1.1, 0.9),
    ],
)
def test_duration_factors_are_as_printed(load: str, dry: float, outdoors: float) -> None:
    # EN 1995-1-1, Table 3.1, solid timber.
    assert timber_en.duration_factor(1, load) == dry
    assert timber_en.duration_factor(2, load) == dry
    assert timber_en.duration_factor(3, load) == outdoors


def test_a_slender_beam_loses_the_printed_share() -> None:
    # Textbook to Eurocode 5, Example 2.3.2: C24, 50 by 200 mm, 5 m.
    effective_m = timber_en.effective_length_m(5, 0.2)
    slenderness = timber_en.slenderness_ratio(24e6, 7400e6, 0.05, 0.2, effective_m)
    assert agrees(slenderness, "1.277")
    assert agrees(timber_en.stability_factor(slenderness), "0.602")
