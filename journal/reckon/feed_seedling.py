"""The light feeding of new grass, about a month after sowing: one count for the plan and for what is late."""

import math
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.rounding import reaches
from journal.reckon.feed_barred import FEED_BARRED, Bar, gap_bar, ground_bar
from journal.reckon.feed_gap import light_days, opens_again
from journal.reckon.feeding import holds_phosphate
from journal.reckon.feedings import FeedingDay, fed_since, feeding_days, last_feeding, nitrogen_left, usual_fertilizer
from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.season.growth import season
from journal.season.history import Past
from journal.season.stand import Emergence, day_zero, emerged_on, sown

SEEDLING_FEED: tuple[type[Entry], ...] = (Seeding, *FEED_BARRED)
"""What this file looks at."""


@dataclass(frozen=True, slots=True)
class SeedlingFeed:
    """When it opens, from when on it is late, and its last day; `fed` once it is done.

    `useful` is the last day before growth ends too soon, `spent` whether the year's nitrogen is used. `bar` is what
    keeps it shut on the past's own day, where that alone does.
    """

    seeding: Seeding
    zero: date
    opens: date
    late_from: date
    last: date
    growth_ends: date
    useful: date
    emerged: Emergence | None
    spent: bool
    fed: FeedingDay | None = None
    bar: Bar | None = None

    @property
    def fits(self) -> bool:
        """Whether there is a day for it before growth ends."""
        return self.opens <= min(self.last, self.useful)

    def may(self, on: date) -> bool:
        """Whether it is to be done that day."""
        if self.fed is not None or self.spent or self.bar is not None or self.emerged is None:
            return False
        return self.opens <= on <= min(self.last, self.useful)

    def late(self, on: date) -> bool:
        """Whether it may be done that day and should have been done before."""
        return self.may(on) and on >= self.late_from


def seedling_feed(past: Past) -> SeedlingFeed | None:
    """That of the zone's newest sowing, whatever its age; None without one, and where growth is not known."""
    seeding, zero = sown(past), day_zero(past)
    window = season(past.lawn, zero) if zero else None
    if seeding is None or zero is None or window is None:
        return None
    first = zero.toordinal()
    fed = next(iter(feeding_days(past, first + _days(past, "counts-from-day"))), None)
    before = last_feeding(past) if fed is None else None
    kept = fed_since(past) or zero
    late_from = max(zero, kept) + timedelta(_days(past, "late-day") + 1)
    return SeedlingFeed(
        seeding=seeding,
        zero=zero,
        opens=_opens(past, zero, before),
        late_from=late_from,
        last=zero + timedelta(_days(past, "to-day")),
        growth_ends=window[1],
        useful=window[1] - timedelta(_days(past, "before-end-days")),
        emerged=emerged_on(past),
        spent=not reaches(nitrogen_left(past), in_force(past.lawn, "feed-overdue", "cap-left")),
        fed=fed,
        bar=_bar(past, zero, before),
    )


def most_for_seedlings(past: Past) -> float:
    """The most nitrogen in g/m2 that it brings."""
    return min(in_force(past.lawn, "seedling-feed", "most"), in_force(past.lawn, "feed-too-soon", "light"))


def _days(past: Past, name: str) -> int:
    return math.ceil(in_force(past.lawn, "seedling-feed", name))


def _opens(past: Past, zero: date, before: FeedingDay | None) -> date:
    """Never while only a starter is right, nor soon after the starter, nor before the gap unless it is light."""
    free = math.ceil(in_force(past.lawn, "starter-wrong", "to-day")) + 1
    day = zero + timedelta(max(_days(past, "open-day"), free))
    if before is not None and before.starter:
        day = max(day, before.date + timedelta(_days(past, "after-starter-days")))
    return opens_again(past.lawn, before, day, zero)


def _bar(past: Past, zero: date, before: FeedingDay | None) -> Bar | None:
    product = usual_fertilizer(past)
    ground = ground_bar(past, phosphorus=product is not None and holds_phosphate(product, past.lawn))
    if ground is not None:
        return ground
    first, last = light_days(past.lawn, zero)
    light = first <= past.date <= last and (before is None or before.date < first)
    return None if light else gap_bar(past, before)
