"""Days that hang on a use of a product against weeds, insects or disease."""

from collections.abc import Callable, Iterator

from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use, uses_in
from journal.record.entry import Entry
from journal.record.lawn import Lawn
from journal.rules.turns import After, Site, only


def each_day_after_use(days: Callable[[Use, Lawn], int], most: int) -> tuple[After, ...]:
    """The day of each use and so many more, by the use; below 0 for none. No more than `most`."""

    def reach(entry: Entry, site: Site) -> Iterator[int]:
        past = site.history.on(site.zone, entry.date)
        last = max((days(use, site.lawn) for use in uses_in(past, (entry,))), default=-1)
        yield from range(min(last, most) + 1)

    return tuple(only(kind, reach, most) for kind in PROTECTED)
