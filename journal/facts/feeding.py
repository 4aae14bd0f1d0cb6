"""The feeding months of cool-season lawns, when feeding rests, and how much nitrogen goes down at once."""

from dataclasses import dataclass

from journal.facts.citation import Basis, memory
from journal.facts.factors import g_per_m2
from journal.facts.sources import judgment, published
from journal.record.day import MonthDay


@dataclass(frozen=True, slots=True)
class FeedingMonths:
    """First and last day of the year, both in it, for the northern half of the world.

    `optional` for a feeding that a healthy lawn can do without.
    """

    name: str
    first: MonthDay
    last: MonthDay
    optional: bool = False


SPRING = FeedingMonths("spring", MonthDay(5, 1), MonthDay(6, 10), optional=True)
EARLY_AUTUMN = FeedingMonths("early autumn", MonthDay(8, 20), MonthDay(9, 30))
LATE_AUTUMN = FeedingMonths("late autumn", MonthDay(10, 1), MonthDay(11, 10))
ONCE = FeedingMonths("autumn", MonthDay(8, 20), MonthDay(10, 15))

MONTHS_BASIS: Basis = judgment(
    "publications print some twenty programmes; all have early autumn in common, the edges are ours",
    "umd-schedule", "virginia-2003", "purdue-fall-n", "umn-feed",
)  # fmt: skip
"""Of all four; fine fescue is fed once: the same table."""

LAST_DAYS = 7
"""A window that is still unfed is late in so many last days: judgment."""

PASSED_DAYS = 21
"""So long a feeding is late after its window has closed, and so long after that it is shown as missed: judgment."""

SUMMER_REST = (MonthDay(6, 15), MonthDay(8, 14))
"""A lawn that is not irrigated is not fed in high summer: judgment; several programmes print none from June on."""

GREEN_DAYS = 14
"""So long a lawn that has turned green again after a rest is not fed: judgment."""

GRACE_DAYS = 14
"""So long a feeding is not late once what held it back has ended: judgment."""

HOT_DAYS, HOT_NEEDS = 7, 5
"""The week's highs are averaged where at least 5 of them are on file: judgment."""

MOST = g_per_m2(0.9)
MOST_BASIS: Basis = published("umd-schedule", "pennsylvania-6813")
"""The most nitrogen in one feeding."""

MOST_SOLUBLE = g_per_m2(0.7)
MOST_SOLUBLE_BASIS: Basis = published("umd-schedule", "pennsylvania-6813")
"""The most soluble nitrogen in one feeding."""

MOST_SOLUBLE_NEW = g_per_m2(0.5)
MOST_SOLUBLE_NEW_BASIS: Basis = memory("seedlings burn sooner")
"""The most soluble nitrogen in one feeding of new grass."""
