"""Conversions against the defining figures of the inch, the pound and standard gravity."""

from __future__ import annotations

import pytest

from plantframe.mechanics import units


@pytest.mark.parametrize(
    ("found", "printed", "digits"),
    [
        # NIST Special Publication 811, appendix B, conversion factors (from memory).
        (units.LBF_N, 4.448222, 1e-6),
        (units.PSI_PA, 6894.757, 1e-3),
        (units.PSF_PA, 47.88026, 1e-5),
        (units.PLF_N_PER_M, 14.59390, 1e-5),
        (units.MPH_M_PER_S, 0.44704, 1e-9),
        (units.PCF_N_PER_M3, 157.0875, 1e-4),
    ],
)
def test_a_unit_converts_as_the_handbook_has_it(
    found: float, printed: float, digits: float
) -> None:
    assert found == pytest.approx(printed, abs=digits)


def test_soil_pressure_per_foot_is_pressure_over_a_foot() -> None:
    # 100 psf per ft is 15.7 kPa per m.
    assert pytest.approx(15.7e3, abs=50) == 100 * units.PSF_PER_FT_PA_PER_M
