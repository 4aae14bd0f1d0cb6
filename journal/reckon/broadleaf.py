"""Broadleaf weeds of a season, and the autumn window for them: mid-September to the end of growth."""

from datetime import date

from journal.facts.new_grass import NewGrassWait, new_grass_wait
from journal.reckon.new_grass import wait_for
from journal.reckon.uses import Use, uses
from journal.record.day import MonthDay
from journal.record.kinds.sighting import Sighting
from journal.season.growth import Window, in_season, season_before
from journal.season.history import Past

OPENS = MonthDay(9, 15)
"""Purdue Univ. Turfgrass Science, How Late is Too Late to Control Broadleaf Weeds?, 2013: mid-September to November."""

BROADLEAF = (
    "broadleaf", "dandelion", "clover", "plantain", "chickweed", "ground-ivy", "violet", "spurge", "thistle", "oxalis",
    "knotweed",
)  # fmt: skip

KINDS = ("weed", "weed-and-feed")


def broadleaf_season(past: Past) -> tuple[Window, date] | None:
    """The newest season that has begun by the dates, and the day in it on which the window opens; None before any."""
    window = season_before(past.lawn, past.date)
    if window is None:
        return None
    return window, max(window[0], in_season(past.lawn, window, OPENS))


def broadleaf_seen(past: Past, window: Window) -> Sighting | None:
    """The newest sighting of one in that season, up to the past's day."""
    found = past[Sighting].picked("broadleaf weeds", _broadleaf).between(window[0].toordinal(), window[1].toordinal())
    return found[-1] if found else None


def _broadleaf(seen: Sighting) -> bool:
    return seen.subject in BROADLEAF


def treated_since(past: Past, day: date) -> Use | None:
    """The newest use of a weed product, or of one that nobody knows, from that day on; a spot counts."""
    found = [use for use in uses(past, day.toordinal()) if use.kind in KINDS or use.product is None]
    return found[-1] if found else None


def broadleaf_age(past: Past) -> NewGrassWait:
    """How old grass must be for the weed product of the shed that asks least, else for an unknown one."""
    kept = [wait_for(product) for product in past.lawn.products if product.kind in KINDS]
    return min(kept, key=lambda wait: (wait.days, wait.mowings), default=new_grass_wait((), "weed"))
