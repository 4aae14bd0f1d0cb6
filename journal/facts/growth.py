"""When a cool-season lawn grows by default, and how long it may go between cuts in each part of the year."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.citation import Basis, memory, practice
from journal.facts.sources import judgment

DAYS_BEFORE_LAST_FROST = 21
DAYS_AFTER_FIRST_FROST = 35

GROWTH_BASIS = judgment(
    "counted from the average frosts; cool-season turf grows on after light frost", "isu-stop-mowing", "umn-feed"
)


@dataclass(frozen=True, slots=True)
class Growth:
    """The first and the last day of growth in one year, both in it."""

    first: date
    last: date
    basis: Basis


def default_growth(last_frost: date, first_frost: date) -> Growth:
    """Growth from the year's average last spring frost and average first autumn frost.

    It begins 21 days before the one and ends 35 days after the other. Raises ValueError if they are out of order.
    """
    if first_frost <= last_frost:
        raise ValueError("the average first frost of autumn comes after the average last frost of spring.")
    return Growth(
        last_frost - timedelta(days=DAYS_BEFORE_LAST_FROST),
        first_frost + timedelta(days=DAYS_AFTER_FIRST_FROST),
        GROWTH_BASIS,
    )


SLOW_MONTHS = (7, 8, 10)
LATE_GROWTH_DAYS = 21


@dataclass(frozen=True, slots=True)
class CutGap:
    """Days that may pass between two cuts: `days`, and the name of the `mow-gap` number that sets them."""

    number: str
    days: int
    basis: Basis


USUAL_GAP = CutGap("days", 10, practice("weekly mowing; ten days is late"))
SLOW_MONTH_GAP = CutGap(
    "slow-days",
    14,
    judgment("once in two weeks is printed for summer; October from memory of its slower growth", "purdue-ay8"),
)
LATE_GAP = CutGap("late-days", 21, memory("growth all but stops in the last three weeks"))


def cut_gap(day: date, growth_last: date) -> CutGap:
    """The gap allowed on `day`: 21 d in the last 21 days of growth, 14 d in July, August and October, else 10 d.

    Months are those of the northern half of the world: shift `day` and `growth_last` by six months in the south.
    """
    if 0 <= (growth_last - day).days < LATE_GROWTH_DAYS:
        return LATE_GAP
    return SLOW_MONTH_GAP if day.month in SLOW_MONTHS else USUAL_GAP
