"""Signs that a local rule asks for: up before a product against weeds, insects or disease, and down after its hours."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use, uses
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.season.history import Past
from journal.season.hours import Within, days_of, within_hours
from journal.season.local import sign_hours

SIGNS: tuple[type[Entry], ...] = (Sighting, *PROTECTED)
"""What this file looks at."""

UP, DOWN = "sign", "sign-down"
LONGEST_DAYS = 11
"""No sign stands longer after a use."""


@dataclass(frozen=True, slots=True)
class Sign:
    """What the newest use asks for. `up` is the sighting of a sign that stood for it; None while none is on file."""

    use: Use
    hours: float
    up: Sighting | None

    @property
    def down_from(self) -> date:
        """The first day on which it may come down, no times being known."""
        return self.use.date + timedelta(days_of(self.hours) + 1)


def last_word(past: Past, until: int) -> Sighting | None:
    """The newest sighting of a sign that was put up or taken down by that day (an ordinal)."""
    return past[Sighting].last_where(lambda one: one.subject in (UP, DOWN) and one.day <= until)


def sign_wanted(past: Past) -> Sign | None:
    """For the newest use, not of a spot, that a sign still stands for on the past's day; None where none is asked."""
    hours = sign_hours(past.lawn)
    if hours is None:
        return None
    used = [use for use in uses(past, past.day - days_of(hours)) if not use.spot]
    if not used:
        return None
    use = used[-1]
    return Sign(use, hours, _stood(past, use))


def _stood(past: Past, use: Use) -> Sighting | None:
    """The sign that stood when it was put down, or was put up since."""
    before = last_word(past, use.day - 1)
    if before is not None and before.subject == UP:
        return before
    return next((one for one in past[Sighting].since(use.day) if one.subject == UP), None)


def taken_down_early(past: Past, down: Sighting) -> tuple[Use, float, Within] | None:
    """The use whose hours were not over when a sign came down; PERHAPS where both are of one day and no time tells."""
    then = past.history.on(past.zone, down.date, past.watches)
    hours = sign_hours(then.lawn)
    if hours is None:
        return None
    for use in reversed(uses(then, down.day - days_of(hours))):
        how = within_hours(use.date, use.time, down.date, down.time, hours)
        if not use.spot and how is not Within.NO:
            return use, hours, how
    return None
