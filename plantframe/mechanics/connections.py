"""What nails and screws hold: withdrawal out of side grain, and one stick nailed to another.

NDS 2018, chapter 12, reference values for loads of ten years. Factors for time and damp multiply
them. Nails are not to be relied on to hold by withdrawal in end grain.
"""

from __future__ import annotations

import math

from plantframe.mechanics.units import IN_M, LBF_N, PSI_PA

_LB_PER_IN_N_PER_M = LBF_N / IN_M

# NDS 2018, 12.5: a lag screw's withdrawal from end grain; sideways load into end grain; toe-nails.
LAG_END_GRAIN_FACTOR = 0.75
LATERAL_END_GRAIN_FACTOR = 0.67
TOE_NAIL_WITHDRAWAL_FACTOR = 0.67
TOE_NAIL_LATERAL_FACTOR = 0.83

# Specific gravity of wood for connections: NDS 2018, Table 12.3.3A.
SPECIFIC_GRAVITIES = {
    "douglas fir and larch": 0.50,
    "hem-fir": 0.43,
    "spruce, pine and fir": 0.42,
    "spruce, pine and fir (south)": 0.36,
    "southern pine": 0.55,
    "western cedars": 0.36,
    "northern white cedar": 0.31,
    "redwood": 0.37,
    "eastern white pine": 0.36,
    "ponderosa pine": 0.43,
    "red oak": 0.67,
}


def nail_withdrawal_n_per_m(specific_gravity: float, diameter_m: float) -> float:
    """Pull a smooth nail holds out of side grain, N for each metre of its bite.

    Specific gravity of the wood without unit, shank diameter in m.
    Source: NDS 2018, 12.2.3, W = 1380 G^2.5 D (lb/in, in).
    """
    return 1380 * math.pow(specific_gravity, 2.5) * diameter_m / IN_M * _LB_PER_IN_N_PER_M


def screw_withdrawal_n_per_m(specific_gravity: float, diameter_m: float) -> float:
    """Pull a wood screw holds out of side grain, N for each metre of thread in the last piece.

    Specific gravity of the wood without unit, shank diameter in m.
    Source: NDS 2018, 12.2.2, W = 2850 G² D (lb/in, in).
    """
    return 2850 * specific_gravity**2 * diameter_m / IN_M * _LB_PER_IN_N_PER_M


def lag_withdrawal_n_per_m(specific_gravity: float, diameter_m: float) -> float:
    """Pull a lag screw holds out of side grain, N for each metre of thread, its tip not counted.

    Specific gravity of the wood without unit, shank diameter in m.
    Source: NDS 2018, 12.2.1, W = 1800 G^1.5 D^0.75 (lb/in, in).
    """
    return float(1800 * specific_gravity**1.5 * (diameter_m / IN_M) ** 0.75 * _LB_PER_IN_N_PER_M)


def nail_breaking_pull_n(specific_gravity: float, diameter_m: float, bite_m: float) -> float:
    """Pull at which a smooth nail comes out of dry side grain in a test, N; about a fifth is used.

    Specific gravity of the wood without unit, shank diameter and bite in m.
    Source: USDA Forest Products Laboratory, Wood Handbook, p = 54.12 G^2.5 D L (N, mm).
    """
    return 54.12e6 * math.pow(specific_gravity, 2.5) * diameter_m * bite_m


def bearing_strength_pa(specific_gravity: float) -> float:
    """Dowel bearing strength of wood under a nail or screw thinner than ¼ in, Pa.

    Specific gravity without unit. Source: NDS 2018, Table 12.3.3, Fe = 16600 G^1.84 (psi).
    """
    return 16600 * math.pow(specific_gravity, 1.84) * PSI_PA


def nail_yield_pa(diameter_m: float) -> float:
    """Bending yield strength of a common nail, Pa.

    Shank diameter in m, at most 6.93 mm (0.273 in); raises ValueError above.
    Source: NDS 2018, tables of chapter 12 (100, 90, 80, 70 ksi by thickness).
    """
    for most_in, yield_ksi in ((0.142, 100), (0.177, 90), (0.236, 80), (0.273, 70)):
        if diameter_m <= most_in * IN_M * (1 + 1e-9):
            return yield_ksi * 1000 * PSI_PA
    raise ValueError("no bending strength is printed for a nail thicker than 0.273 in")


def _reduction_factor(diameter_m: float) -> float:
    """KD of NDS 2018, Table 12.3.1B, nails below ¼ in, no unit."""
    diameter_in = diameter_m / IN_M
    return 2.2 if diameter_in <= 0.17 else 10 * diameter_in + 0.5


def lateral_modes_n(
    diameter_m: float,
    side_m: float,
    main_m: float,
    side_bearing_pa: float,
    main_bearing_pa: float,
    yield_pa: float,
) -> dict[str, float]:
    """Sideways load one nail holds between two pieces, N, for each way it may give.

    diameter_m        shank diameter, m, below 6.35 mm (¼ in)
    side_m            thickness of the piece next to the head, m
    main_m            bite in the other piece, m
    side_bearing_pa   bearing strength of the first piece, Pa
    main_bearing_pa   bearing strength of the other piece, Pa
    yield_pa          bending yield strength of the nail, Pa

    The keys are the standard's names of the modes; the least value governs.
    Source: NDS 2018, 12.3.1, Table 12.3.1A, single shear.
    """
    d, ls, lm, fs, fm, fy = (
        diameter_m,
        side_m,
        main_m,
        side_bearing_pa,
        main_bearing_pa,
        yield_pa,
    )
    kd = _reduction_factor(d)
    re, rt = fm / fs, lm / ls
    k1 = (math.sqrt(re + 2 * re**2 * (1 + rt + rt**2) + rt**2 * re**3) - re * (1 + rt)) / (1 + re)
    k2 = -1 + math.sqrt(2 * (1 + re) + 2 * fy * (1 + 2 * re) * d**2 / (3 * fm * lm**2))
    k3 = -1 + math.sqrt(2 * (1 + re) / re + 2 * fy * (2 + re) * d**2 / (3 * fm * ls**2))
    return {
        "Im": d * lm * fm / kd,
        "Is": d * ls * fs / kd,
        "II": k1 * d * ls * fs / kd,
        "IIIm": k2 * d * lm * fm / ((1 + 2 * re) * kd),
        "IIIs": k3 * d * ls * fm / ((2 + re) * kd),
        "IV": d**2 / kd * math.sqrt(2 * fm * fy / (3 * (1 + re))),
    }


def lateral_n(
    diameter_m: float,
    side_m: float,
    main_m: float,
    side_gravity_factor: float,
    main_gravity_factor: float,
) -> float:
    """Sideways load one common nail holds between two pieces of wood, N.

    diameter_m, side_m, main_m   as `lateral_modes_n`, m
    side_gravity_factor          specific gravity of the piece next to the head
    main_gravity_factor          specific gravity of the other piece

    Source: NDS 2018, 12.3.1: the least of the yield modes.
    """
    return min(
        lateral_modes_n(
            diameter_m,
            side_m,
            main_m,
            bearing_strength_pa(side_gravity_factor),
            bearing_strength_pa(main_gravity_factor),
            nail_yield_pa(diameter_m),
        ).values()
    )
