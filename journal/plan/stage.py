"""Where a new stand is on its way from sowing to an established lawn, and what still counts as news of it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from journal.record.day import spoken
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height
from journal.season.history import Past
from journal.season.remembered import remembered
from journal.season.stand import (
    COUNTS_FROM_DAY,
    NEW_GRASS_MOST_DAYS,
    NEW_GRASS_MOWINGS,
    SEEDBED_DAYS,
    day_zero_of,
    sown,
    sown_mix,
)

STAGE = (Seeding, Mowing, Height)
"""What this file looks at."""

SHOWN_DAYS = 28
"""So long what is finished stays in the plan: from day 56 on, or from when the lawn was established."""


@dataclass(frozen=True, slots=True)
class NewStand:
    """A sowing that is still news: its day 0, its mix, and how many days ago that was (below 0: still to come)."""

    seeding: Seeding
    zero: date
    age: int
    mix: Mapping[str, float]

    @property
    def is_news(self) -> bool:
        """Whether its finished steps still belong into the plan."""
        return self.age < SEEDBED_DAYS + SHOWN_DAYS

    def on_day(self, days: int) -> date:
        """The date of day `days`."""
        return self.zero + timedelta(days)


@remembered
def new_stand(past: Past) -> NewStand | None:
    """The zone's last sowing, until 28 days after it is established; None before and after."""
    seeding = sown(past)
    if seeding is None:
        return None
    zero = day_zero_of(past.lawn, seeding)
    stand = NewStand(seeding, zero, past.day - zero.toordinal(), sown_mix(past.lawn, past.zone, seeding))
    done = established_on(past, stand)
    return stand if done is None or (past.date - done).days < SHOWN_DAYS else None


def counted_mowings(past: Past, stand: NewStand) -> tuple[date, ...]:
    """The days since sowing, from day 21 on, on which it was mown."""
    days = {mowing.day for mowing in past[Mowing].since(stand.zero.toordinal() + COUNTS_FROM_DAY)}
    return tuple(date.fromordinal(day) for day in sorted(days))


def mown_by_service(past: Past) -> bool:
    """Whether somebody else mows the zone, so that mowings are not waited for."""
    zone = past.lawn.zone(past.zone)
    return zone is not None and zone.mowing == "service"


def established_on(past: Past, stand: NewStand) -> date | None:
    """Day 56 or the third mowing from day 21, whichever is later, or a year; None when that is still to come.

    Eight weeks: common practice, no source. Three mowings: from memory. A year at the most: judgment.
    """
    mowings = counted_mowings(past, stand)
    if mown_by_service(past):
        done = stand.on_day(SEEDBED_DAYS)
    elif len(mowings) < NEW_GRASS_MOWINGS:
        done = stand.on_day(NEW_GRASS_MOST_DAYS)
    else:
        third = max(stand.on_day(SEEDBED_DAYS), mowings[NEW_GRASS_MOWINGS - 1])
        done = min(third, stand.on_day(NEW_GRASS_MOST_DAYS))
    return done if done <= past.date else None


def said(day: date, past: Past) -> str:
    """A date as it is spoken on the past's day."""
    return spoken(day, past.date)


def sown_said(past: Past, stand: NewStand) -> str:
    """`sown Sun 6 Sep`; for a dormant sowing also the spring day from which it counts."""
    if stand.age < 0:
        return "sown dormant"
    text = f"sown {said(stand.seeding.date, past)}"
    return text if stand.seeding.date == stand.zero else f"{text}, counted from {said(stand.zero, past)}"


def ago(day: date, past: Past) -> str:
    """`today`, or `11 d ago, Thu 22 Apr`."""
    days = past.day - day.toordinal()
    return "today" if days == 0 else f"{days} d ago, {said(day, past)}"
