"""How long a feeding wants to be left alone: one count for what is planned and for what came too soon."""

import math
from collections.abc import Iterable
from datetime import date, timedelta

from journal.facts.rounding import exceeds
from journal.reckon.feedings import FeedingDay, minimum_gap_days
from journal.reckon.threshold import in_force
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.stand import day_zero

GAPS = ("days", "days-15", "days-50", "days-80")
"""The numbers of `feed-too-soon`, by the slow share of the nitrogen."""


def gap_over(feeding: FeedingDay, lawn: Lawn) -> date:
    """The first day on which another feeding no longer comes too soon after it."""
    return feeding.date + timedelta(minimum_gap_days(feeding, lawn))


def longest_gap(lawn: Lawn) -> int:
    """The days that no feeding asks more of."""
    return max(math.ceil(in_force(lawn, "feed-too-soon", name)) for name in GAPS)


def light_days(lawn: Lawn, zero: date) -> tuple[date, date]:
    """From which day after a sowing to which one light feeding may come sooner than the gap."""
    first, last = (math.ceil(in_force(lawn, "feed-too-soon", name)) for name in ("light-from-day", "light-to-day"))
    return zero + timedelta(first), zero + timedelta(last)


def is_follow_up(past: Past, feeding: FeedingDay, fed: Iterable[FeedingDay]) -> bool:
    """Whether it is the one light feeding of new grass, `fed` being all feedings and `past` the day of this one.

    A feeding without an amount is taken for a light one.
    """
    zero = day_zero(past)
    if zero is None:
        return False
    first, last = light_days(past.lawn, zero)
    amount, light = feeding.n_g_per_m2, in_force(past.lawn, "feed-too-soon", "light")
    if not first <= feeding.date <= last or (amount is not None and exceeds(amount, light)):
        return False
    return not any(first <= other.date < feeding.date for other in fed)


def opens_again(lawn: Lawn, last: FeedingDay | None, day: date, zero: date) -> date:
    """The first day from `day` on for a light feeding of new grass, `last` being the feeding before it."""
    first, until = light_days(lawn, zero)
    if last is None or day >= gap_over(last, lawn):
        return day
    light = max(day, first)
    free = gap_over(last, lawn)
    return min(light, free) if light <= until and last.date < first else free
