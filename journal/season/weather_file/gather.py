"""Rows sorted by day: which value each day has, as it is written, and which values can't count.

What the flags mean: NCEI, GHCN-Daily readme (ncei.noaa.gov/pub/data/ghcn/daily/readme.txt).
"""

import re
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from journal.record.day import FIRST_YEAR, LAST_YEAR, keepable
from journal.record.refusal import Refusal
from journal.season.weather_file.columns import Columns
from journal.season.weather_file.found import HIGH, LOW, RAIN, WHATS

ELEMENTS: Mapping[str, str] = {"TMAX": HIGH, "TMIN": LOW, "PRCP": RAIN}

_FLAGS: Mapping[str, str] = {
    "D": "a duplicate", "G": "a gap in the record", "I": "not consistent with its neighbours in the record",
    "K": "the same value for too many days", "L": "a sum of several days", "M": "too large",
    "N": "a nought that is none", "O": "out of all this station has had", "R": "too far from the days around it",
    "S": "too far from the stations around it", "T": "a leap in time", "W": "too warm for the snow that fell",
    "X": "out of bounds", "Z": "found wrong by an investigation",
}  # fmt: skip

_NUMBER = re.compile(r"[+-]?(?:\d+\.?\d*|\.\d+)")
_LONGEST_NUMBER = 12
_NOTHING = frozenset({"", "m", "na", "n/a", "nan", "null", "none", "-", "--"})
_CODED = frozenset({-9999.0, -999.0, 9999.0})
"""Numbers that stand for a missing value."""

CODED = "marked as missing"
TWICE = "given twice, and differently"
AGAIN = "given twice, the same"
YEARS = f"outside the years {FIRST_YEAR} to {LAST_YEAR}"


@dataclass(slots=True)
class Pile:
    """The days while they are gathered; never leaves this package. Values are numbers as they are written."""

    days: dict[date, dict[str, str]] = field(default_factory=dict)
    dropped: Counter[str] = field(default_factory=Counter)
    others: Counter[str] = field(default_factory=Counter)
    stations: dict[str, str] = field(default_factory=dict)
    times: Counter[str] = field(default_factory=Counter)
    read: int = 0
    traces: int = 0
    presumed: int = 0
    _twice: set[tuple[date, str]] = field(default_factory=set)
    _dates: dict[str, date] = field(default_factory=dict)

    def day(self, line: int, text: str) -> date | None:
        """The day a cell names; None for one that can't be kept, which is counted."""
        found = self._dates.get(text)
        if found is None:
            found = self._dates[text] = _day(line, text)
        if keepable(found):
            return found
        self.dropped[YEARS] += 1
        return None

    def put(self, line: int, day: date, what: str, text: str, flags: Sequence[str]) -> None:
        """Take a value with its measurement flag, quality flag and time of observation, each '' where not said."""
        measured, quality, time = flags
        if text.casefold() in _NOTHING:
            return
        if quality:
            self.dropped[f"flag {quality}: {_FLAGS.get(quality, 'found wrong by its service')}"] += 1
            return
        if what == RAIN and text.casefold() == "t":
            measured, text = "T", "0"
        if not _NUMBER.fullmatch(text) or len(text) > _LONGEST_NUMBER:
            raise Refusal(f"line {line}, {text[:40]}", f"not a number for the {what}.")
        if float(text) in _CODED:
            self.dropped[CODED] += 1
            return
        if measured == "T" and what == RAIN:
            self.traces += 1
            text = "0"
        self.presumed += measured == "P"
        if time and what == HIGH:
            self.times[time] += 1
        self._set(day, what, text)

    def _set(self, day: date, what: str, text: str) -> None:
        known = self.days.setdefault(day, {})
        if (day, what) in self._twice:
            self.dropped[TWICE] += 1
        elif what not in known:
            known[what] = text
        elif float(known[what]) == float(text):
            self.dropped[AGAIN] += 1
        else:
            del known[what]
            self._twice.add((day, what))
            self.dropped[TWICE] += 2


def gather(rows: Iterable[tuple[int, list[str]]], columns: Columns) -> Pile:
    """Sort the rows under the header by day. Raises Refusal naming the line and the word that can't be used."""
    pile = Pile()
    take = _long if columns.long else _wide
    for line, cells in rows:
        if not columns.long and len(cells) != columns.width:
            raise Refusal(f"line {line}", f"{len(cells)} cells where {columns.width} are wanted: is the file whole?")
        pile.read += 1
        take(pile, line, cells, columns)
    if len(pile.stations) > 1:
        names = [f"{station} {name}".strip() for station, name in sorted(pile.stations.items())]
        shown = ", ".join(names[:4]) + (" and more" if len(names) > 4 else "")
        raise Refusal("", f"{len(names)} stations are in this file: {shown}. Make a file of one station.")
    return pile


def _long(pile: Pile, line: int, cells: list[str], columns: Columns) -> None:
    at = columns.at
    if len(cells) <= max(at["date"], at["element"], at["value"]):
        raise Refusal(f"line {line}", f"only {len(cells)} cells: is the file whole?")
    day = pile.day(line, cells[at["date"]])
    if "station" in at:
        pile.stations.setdefault(cells[at["station"]], "")
    what = ELEMENTS.get(cells[at["element"]].upper())
    if what is None:
        pile.others[cells[at["element"]][:12]] += 1
    elif day is not None:
        flags = [cells[place] if (place := at.get(key, -1)) in range(len(cells)) else "" for key in ("m", "q", "time")]
        pile.put(line, day, what, cells[at["value"]], flags)


def _wide(pile: Pile, line: int, cells: list[str], columns: Columns) -> None:
    at = columns.at
    day = pile.day(line, cells[at["date"]])
    if "station" in at:
        pile.stations.setdefault(cells[at["station"]], cells[at["name"]] if "name" in at else "")
    if day is None:
        return
    pile.days.setdefault(day, {})
    for what in WHATS:
        if what in at:
            flags = cells[at[f"{what} flags"]].split(",") if f"{what} flags" in at else []
            measured, quality, _, time = ([flag.strip() for flag in flags] + ["", "", "", ""])[:4]
            pile.put(line, day, what, cells[at[what]], (measured, quality, time))


_DAY = re.compile(r"(\d{4})(?:(\d\d)(\d\d)|-(\d\d)-(\d\d)|/(\d\d?)/(\d\d?))(?:[T ]\d\d:\d\d.*)?")


def _day(line: int, text: str) -> date:
    match = _DAY.fullmatch(text)
    try:
        if match is None:
            raise ValueError
        year, month, day = (part for part in match.groups() if part is not None)
        return date(int(year), int(month), int(day))
    except ValueError:
        raise Refusal(f"line {line}, {text[:40]}", "not a day: 2026-05-01, 2026/05/01 or 20260501 is wanted.") from None
