"""Days of weather on their way into the book: what is new, what is known, and what stays as the owner has it.

Every day taken in is an entry of its own with an id made from its date, so that a second file finds it again. Such an
id sorts before every id made by a clock. Where a day has both an entry taken in and one that was typed, the typed one
is therefore the later of the two in a track, and whoever reads weather takes the later.
"""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from journal.record.entry import Entry
from journal.record.kinds.weather import Weather
from journal.season.daily import DayWeather
from journal.season.history import History

_TAKEN_IN = "0000W"
"""Only a clock that stands in the first days of 1970 makes an id before this."""


def intake_id(day: date) -> str:
    """The id of the entry that holds a day's weather out of a file."""
    return f"{_TAKEN_IN}{day:%Y%m%d}"


@dataclass(frozen=True, slots=True)
class Intake:
    """What days of weather mean to a book: entries to add, and to put in the place of what an earlier file said.

    `known` counts the days that the book has just so. `yours` counts days of which the owner wrote something himself:
    that is never touched, and holds. `struck` counts days that he struck out: they stay out.
    """

    new: tuple[Entry, ...]
    changed: tuple[Entry, ...]
    known: int
    yours: int
    struck: int

    @property
    def wanted(self) -> tuple[Entry, ...]:
        """Everything to be written, as one act."""
        return self.new + self.changed

    def after(self, history: History) -> History:
        """The book as it would be with them."""
        replaced = {entry.id for entry in self.wanted}
        standing = {e.id: e for track in history.tracks.values() for e in track.entries if e.id not in replaced}
        return History.of([*standing.values(), *self.wanted])


def sort_in(days: Sequence[DayWeather], entries: Mapping[str, Entry], struck: Collection[str]) -> Intake:
    """Compare days with the entries that stand, by id.

    A later file corrects what an earlier one said of a day; what only the earlier one knew is kept. An entry that the
    owner has since amended has a line of its own, and is his.
    """
    typed = {e.date for e in entries.values() if isinstance(e, Weather) and (e.line or not e.id.startswith(_TAKEN_IN))}
    new: list[Entry] = []
    changed: list[Entry] = []
    known = yours = out = 0
    for day in days:
        id = intake_id(day.date)
        entry = Weather(id=id, date=day.date, high_c=day.high_c, low_c=day.low_c, rain_mm=day.rain_mm)
        old = entries.get(id)
        yours += day.date in typed or (old is not None and bool(old.line))
        if id in struck:
            out += 1
        elif old is None:
            new.append(entry)
        elif isinstance(old, Weather) and not old.line:
            entry = _filled(entry, old)
            if entry == old:
                known += 1
            else:
                changed.append(entry)
    return Intake(tuple(new), tuple(changed), known, yours, out)


def _filled(entry: Weather, old: Weather) -> Weather:
    """With what only the older one knows; temperatures come in pairs."""
    if entry.high_c is None or entry.low_c is None:
        entry = replace(entry, high_c=old.high_c, low_c=old.low_c)
    return replace(entry, rain_mm=old.rain_mm) if entry.rain_mm is None else entry
