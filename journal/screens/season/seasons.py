"""The growing seasons that a stretch of time touches, by the dates and by the weather on file."""

from datetime import date, timedelta

from journal.season.growth import EARLY_DAYS, growth_window, span
from journal.season.history import LAWN, History

Season = tuple[int, int]
"""First and last day of growth, as ordinals."""

_YEAR_DAYS = 365


def seasons(history: History, as_of: date, first: date, last: date) -> tuple[Season, ...]:
    """Seasons in order, those that may touch the days from first to last. What lies after as_of goes by dates alone."""
    lawn = history.lawn(as_of)
    found = []
    for year in range(first.year - 1, last.year + 1):
        window = growth_window(lawn, year)
        if window is None:
            return ()
        begins, ends = window[0].toordinal(), window[1].toordinal()
        if window[0] - timedelta(EARLY_DAYS) <= as_of and ends + EARLY_DAYS >= first.toordinal():
            begins, ends = _known(history, as_of, begins, ends)
        if ends >= first.toordinal() and begins <= last.toordinal():
            found.append((begins, ends))
    return tuple(found)


def _known(history: History, as_of: date, begins: int, ends: int) -> Season:
    """The same season as the weather made it, as far as it is known by as_of."""
    before_the_next = begins + _YEAR_DAYS - EARLY_DAYS - 1
    day = min(as_of.toordinal(), before_the_next)
    known = span(history.on(LAWN, date.fromordinal(day)))
    if known is None:
        return max(begins, day + 1), ends
    start, after = known
    return start, max(ends, day) if after is None else after - 1
