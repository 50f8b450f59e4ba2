"""Exact conversions from the inch, pound and foot of American standards to SI.

Source: the international yard and pound agreement of 1959 (inch 25.4 mm, pound 0.45359237 kg)
and standard gravity 9.80665 m/s², as in NIST Special Publication 811. All else follows from them.
"""

IN_M = 0.0254
FT_M = 12 * IN_M
LB_KG = 0.45359237
STANDARD_GRAVITY_M_PER_S2 = 9.80665
LBF_N = LB_KG * STANDARD_GRAVITY_M_PER_S2
PSI_PA = LBF_N / IN_M**2
PSF_PA = LBF_N / FT_M**2
PSF_PER_FT_PA_PER_M = PSF_PA / FT_M
PLF_N_PER_M = LBF_N / FT_M
MPH_M_PER_S = 5280 * FT_M / 3600
PCF_N_PER_M3 = LBF_N / FT_M**3

# Outdoors two figures are all a load deserves, so the rounded value serves in sums of practice.
GRAVITY_M_PER_S2 = 9.81
