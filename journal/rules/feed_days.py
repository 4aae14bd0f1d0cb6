"""Which entries are feedings to the rules on feeding, and how many days each is looked at."""

import math
from collections.abc import Iterable, Iterator

from journal.reckon.dose import doses
from journal.reckon.feeding import holds_nitrogen
from journal.reckon.feedings import FEEDINGS, FeedingDay, feeding_days
from journal.record.entry import Entry
from journal.rules.turns import After, Site, only
from journal.season.history import Past

PARTS_DAYS = 10
"""A job in parts is looked back on so much further, to have the whole of it."""

LONGEST_DAYS = 61
"""No owner can have a flag of feeding stand longer."""


def each_day_fed(rule: str, *names: str) -> tuple[After, ...]:
    """Every day from a feeding of nitrogen on, as many as the longest of these numbers of the rule says."""

    def reach(entry: Entry, site: Site) -> Iterable[int]:
        products = (site.lawn.product(dose.product) for dose in doses(entry))
        if any(product is not None and holds_nitrogen(product) for product in products):
            yield from range(max(math.ceil(site.number(rule, name)) for name in names) + 1)

    return tuple(only(kind, reach, LONGEST_DAYS) for kind in FEEDINGS)


def fed_within(past: Past, days: int) -> Iterator[FeedingDay]:
    """The zone's feedings that are less than so many days old, the newest first."""
    if not any(past[kind].within(days) for kind in FEEDINGS):
        return
    for feeding in reversed(feeding_days(past, past.day - days - PARTS_DAYS + 1)):
        if past.day - feeding.day < days:
            yield feeding


def ids(feeding: FeedingDay) -> tuple[str, ...]:
    """Its entries, as evidence."""
    return tuple(entry.id for entry in feeding.entries)
