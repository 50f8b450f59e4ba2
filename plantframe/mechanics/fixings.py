"""Nails and screws: sizes by name, bite of a pin, how long a screw should be."""

from __future__ import annotations

from dataclasses import dataclass

from plantframe.mechanics.units import IN_M


@dataclass(frozen=True)
class Nail:
    """A nail as printed: length and shank diameter, in; m from the properties."""

    length_in: float
    diameter_in: float

    @property
    def length_m(self) -> float:
        """Length under the head, m."""
        return self.length_in * IN_M

    @property
    def diameter_m(self) -> float:
        """Diameter of the shank, m."""
        return self.diameter_in * IN_M


# Common wire nails by penny size: ASTM F1667; NDS 2018, Appendix L, Table L4.
NAILS = {
    "6d": Nail(2.0, 0.113),
    "7d": Nail(2.25, 0.113),
    "8d": Nail(2.5, 0.131),
    "10d": Nail(3.0, 0.148),
    "12d": Nail(3.25, 0.148),
    "16d": Nail(3.5, 0.162),
    "20d": Nail(4.0, 0.192),
    "30d": Nail(4.5, 0.207),
    "40d": Nail(5.0, 0.225),
    "50d": Nail(5.5, 0.244),
    "60d": Nail(6.0, 0.263),
}

# Thinner shanks of box nails, same lengths: NDS 2018, Appendix L, Table L4.
BOX_DIAMETERS_IN = {
    "6d": 0.099,
    "8d": 0.113,
    "10d": 0.128,
    "12d": 0.128,
    "16d": 0.135,
    "20d": 0.148,
    "30d": 0.148,
    "40d": 0.162,
}

# Shank and root of wood screws by gauge: NDS 2018, Appendix L, Table L3.
SCREWS_IN = {
    6: (0.138, 0.113),
    7: (0.151, 0.122),
    8: (0.164, 0.131),
    9: (0.177, 0.142),
    10: (0.190, 0.152),
    12: (0.216, 0.171),
    14: (0.242, 0.196),
    16: (0.268, 0.209),
    18: (0.294, 0.232),
    20: (0.320, 0.255),
    24: (0.372, 0.298),
}


def nail(size: str) -> Nail:
    """Return the common nail of a penny size, such as "20d".

    Raises ValueError for a size that is not in the table.
    Source: ASTM F1667; NDS 2018, Appendix L, Table L4.
    """
    if size not in NAILS:
        raise ValueError(f"no nail is called '{size}': one of {', '.join(NAILS)}, or its length")
    return NAILS[size]


def box_nail(size: str) -> Nail:
    """Return the box nail of a penny size: as long as the common one, thinner.

    Raises ValueError for a size that is not in the table.
    Source: NDS 2018, Appendix L, Table L4.
    """
    if size not in BOX_DIAMETERS_IN:
        raise ValueError(f"no box nail is called '{size}': one of {', '.join(BOX_DIAMETERS_IN)}")
    return Nail(nail(size).length_in, BOX_DIAMETERS_IN[size])


def screw_diameter_m(gauge: int) -> float:
    """Shank diameter of a wood screw by its gauge number, m.

    Raises ValueError for a gauge that is not in the table.
    Source: NDS 2018, Appendix L, Table L3.
    """
    if gauge not in SCREWS_IN:
        raise ValueError(f"no wood screw of gauge {gauge} is known: give its thickness")
    return SCREWS_IN[gauge][0] * IN_M


def bite_m(length_m: float, through_m: float) -> float:
    """Length of a nail, pin or screw left to hold in the last piece, m; never below zero.

    length_m    length of the fixing, m
    through_m   thickness of all that it goes through first, m

    Source: subtraction.
    """
    return max(0.0, length_m - through_m)


def least_screw_length_m(held_m: float) -> float:
    """Shortest screw for a piece of a thickness, m: twice as long. Thickness held in m.

    Source: common practice, no source.
    """
    return 2.0 * held_m


def end_grain_screw_length_m(held_m: float) -> float:
    """Length of a screw that holds in end grain, m: two and a half times the thickness held.

    Thickness held in m. Twice is the least there, and three times no waste.
    Source: common practice, no source.
    """
    return 2.5 * held_m
