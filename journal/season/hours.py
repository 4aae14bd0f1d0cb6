"""Whether one thing came within so many hours after another, when half the entries carry no time of day."""

import math
from datetime import date, datetime, time
from enum import Enum


class Within(Enum):
    """NO, YES, or PERHAPS: on the same date, and nobody wrote down which came first."""

    NO = "no"
    PERHAPS = "perhaps"
    YES = "yes"


def within_hours(first: date, at: time | None, then: date, then_at: time | None, hours: float) -> Within:
    """Whether `then` lies from 0 to so many hours after `first`.

    Hours count only where both carry a time. Else 24 hours are the same date and the next, 48 the two next, and a
    wait of 12 hours or less is over with its own date. Of two things on one date PERHAPS is said: a rule that
    punishes asks for the time then, one that wants water takes it as given.
    """
    if at is not None and then_at is not None:
        gone = datetime.combine(then, then_at) - datetime.combine(first, at)
        return Within.YES if 0 <= gone.total_seconds() <= hours * 3600 else Within.NO
    days = (then - first).days
    if days == 0:
        return Within.PERHAPS
    return Within.YES if 0 < days <= days_of(hours) else Within.NO


def days_of(hours: float) -> int:
    """The whole days that so many hours reach beyond their own date when no times are known: 24 is 1, 48 is 2."""
    return 0 if hours <= 12 else math.ceil(hours / 24)
