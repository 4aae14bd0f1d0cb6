"""What bars the feeding of new grass on a day, so that nothing is asked for that would be blamed."""

from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from journal.reckon.feed_gap import gap_over
from journal.reckon.feed_ground import frozen_ground, hot_day
from journal.reckon.feedings import FEEDINGS, FeedingDay, last_feeding
from journal.record.entry import Entry
from journal.season.growth import GROWING, dormant_open, out_of_growth
from journal.season.history import Past
from journal.season.local import closed, closed_to_starter

FEED_BARRED: tuple[type[Entry], ...] = (*FEEDINGS, *GROWING)
"""What this file looks at."""

_DAY = timedelta(1)
_A_YEAR = 366


class Barred(StrEnum):
    """Why."""

    CLOSED = "closed by the local rule"
    FROZEN = "frozen ground"
    DORMANT = "dormant"
    REST = "growth"
    HOT = "a hot day: feed on a cooler one"
    SOON = "too soon after the last feeding"


@dataclass(frozen=True, slots=True)
class Bar:
    """Why it is not to be fed, and the first day on which that is over; None when nobody can say."""

    why: Barred
    until: date | None = None


def ground_bar(past: Past, *, phosphorus: bool) -> Bar | None:
    """What bars the day to a feeding of any size, the weightiest first."""
    shut = closed_to_starter if phosphorus else closed
    if shut(past.lawn, past.date):
        ahead = (past.date + at * _DAY for at in range(1, _A_YEAR))
        return Bar(Barred.CLOSED, next((day for day in ahead if not shut(past.lawn, day)), None))
    if frozen_ground(past) is not None:
        return Bar(Barred.FROZEN)
    if dormant_open(past) is not None:
        return Bar(Barred.DORMANT)
    if out_of_growth(past):
        return Bar(Barred.REST)
    return Bar(Barred.HOT, past.date + _DAY) if hot_day(past) else None


def gap_bar(past: Past, last: FeedingDay | None) -> Bar | None:
    """The gap that the last feeding still asks for."""
    if last is None:
        return None
    free = gap_over(last, past.lawn)
    return Bar(Barred.SOON, free) if past.date < free else None


def starter_bar(past: Past, *, plain: bool) -> Bar | None:
    """What bars the day to the starter, or to the plain nitrogen in its place."""
    return ground_bar(past, phosphorus=not plain) or gap_bar(past, last_feeding(past))
