"""When a seed may be sown and have time to grow, by dates alone: the weather moves none of it."""

from datetime import date, timedelta

from journal.facts.grasses import grass
from journal.facts.mixture import Mixture, bluegrass_percent, shares
from journal.reckon.first_cut import MUCH_BLUEGRASS
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.lawn import Lawn
from journal.season.growth import season

LATE_SPRING = MonthDay(5, 20)
"""Cool-season seed sown from here on meets the summer as seedlings: Iowa State Univ. Extension, Establishing a Lawn
from Seed, names late May to mid-August; Oregon accepts it to mid-June. The days at either end are judgment."""

SUMMER = MonthDay(6, 1), MonthDay(7, 31)
LATE_SUMMER = MonthDay(8, 11)
"""The first day of the good time: the northern states print 15 August, the days before are judgment."""


def growth_left(lawn: Lawn, day: date) -> int | None:
    """Days from that day to the last of its season; None outside it, and where no dates are known."""
    window = season(lawn, day)
    return None if window is None or day < window[0] else (window[1] - day).days


def growth_wanted(lawn: Lawn, mix: Mixture, name: str) -> int:
    """Days of growth that a sowing of that mix wants: `loss-days` at least, `note-days` to be well."""
    return round(in_force(lawn, "seed-short-season", name)) + slower(lawn, mix)


def slower(lawn: Lawn, mix: Mixture) -> int:
    """The days by which a mix with half or more bluegrass is slower than others."""
    much = bluegrass_percent(mix) >= MUCH_BLUEGRASS
    return round(in_force(lawn, "seed-short-season", "bluegrass-days")) if much else 0


def last_day_to_sow(lawn: Lawn, day: date, mix: Mixture) -> date | None:
    """The last day of that day's season on which that mix has the least of growth ahead that it wants."""
    window = season(lawn, day)
    return None if window is None else window[1] - timedelta(growth_wanted(lawn, mix, "loss-days"))


def is_cool_season(mix: Mixture) -> bool:
    """Whether most of it grows in spring and autumn; a grass that is not known is taken to."""
    return sum(percent if grass(name).cool_season else -percent for name, percent in shares(mix).items()) >= 0
