"""Which countries and states lie in the parts of the world that lists of plants speak of."""

from __future__ import annotations

import re

_SPLIT = {
    "eastern United States": (
        "Connecticut, Delaware, District of Columbia, Florida, Georgia, Maine, Maryland, "
        "Massachusetts, New Hampshire, New Jersey, New York, North Carolina, Pennsylvania, "
        "Rhode Island, South Carolina, Vermont, Virginia, West Virginia"
    ),
    "southern United States": (
        "Alabama, Arkansas, Florida, Georgia, Kentucky, Louisiana, Mississippi, North Carolina, "
        "Oklahoma, South Carolina, Tennessee, Texas, Virginia"
    ),
    "midwestern United States": (
        "Illinois, Indiana, Iowa, Kansas, Michigan, Minnesota, Missouri, Nebraska, North Dakota, "
        "Ohio, South Dakota, Wisconsin"
    ),
    "mid-Atlantic states": (
        "Delaware, District of Columbia, Maryland, New Jersey, New York, Pennsylvania, Virginia, "
        "West Virginia"
    ),
    "western United States": (
        "Alaska, Arizona, California, Colorado, Hawaii, Idaho, Montana, Nevada, New Mexico, "
        "Oregon, Utah, Washington, Wyoming"
    ),
    "western Canada": "Alberta, British Columbia, Manitoba, Saskatchewan",
    "eastern Canada": "New Brunswick, Newfoundland, Nova Scotia, Ontario, Quebec",
    "Great Britain": "England, Scotland, Wales",
    "European Union": (
        "Austria, Belgium, Bulgaria, Croatia, Cyprus, Czechia, Denmark, Estonia, Finland, France, "
        "Germany, Greece, Hungary, Ireland, Italy, Latvia, Lithuania, Luxembourg, Malta, "
        "Netherlands, Poland, Portugal, Romania, Slovakia, Slovenia, Spain, Sweden"
    ),
    "Australia": (
        "New South Wales, Queensland, South Australia, Tasmania, Victoria, Western Australia"
    ),
}
PARTS: dict[str, tuple[str, ...]] = {
    **{name: tuple(re.split(r",\s*", text)) for name, text in _SPLIT.items()},
    "United States": (
        "eastern United States",
        "southern United States",
        "midwestern United States",
        "mid-Atlantic states",
        "western United States",
    ),
    "western North America": ("western Canada", "western United States"),
    "North America": ("United States", "eastern Canada", "western Canada"),
    "Europe": ("European Union", "Great Britain", "Norway", "Switzerland"),
    "Pacific islands": ("Hawaii",),
}


def lies_in(region: str, part: str) -> bool:
    """Whether the region a gardener names is that part of the world, or lies within it."""
    if _is_named(part, region):
        return True
    smaller = PARTS.get(part, ())
    return any(lies_in(region, one) for one in smaller)


def _is_named(name: str, region: str) -> bool:
    """The region's words name it: `Fold End, Vermont` does Vermont, West Virginia not Virginia."""
    said = region.lower()
    if name == "Virginia":
        said = said.replace("west virginia", "")
    if name == "Wales":
        said = said.replace("new south wales", "")
    return re.search(rf"\b{re.escape(name.lower())}\b", said) is not None


EUROPEAN = frozenset({"Europe", "European Union", "Great Britain", *PARTS["Great Britain"]})


def may_lie_in(latitude: float | None, longitude: float | None, part: str) -> bool:
    """Whether a garden at these degrees can lie there at all: its side of the globe and ocean."""
    if latitude is None or longitude is None:
        return True
    if latitude < 0:
        return part in {"Australia", "New Zealand", *PARTS["Australia"]}
    if part in EUROPEAN:
        return -25.0 <= longitude <= 45.0
    return longitude < -50.0
