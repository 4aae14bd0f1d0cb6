"""Fifty-three cells of time: the one geometry of the page. A cell is a week of the year, or a day.

A week is day-of-year // 7: every year has exactly 53 (the last of one or two days), and a date falls in the same
cell every year, so that years stack.
"""

from bisect import bisect_right
from dataclasses import dataclass
from datetime import date, timedelta

COUNT = 53
AS_OF = 36
"""The cell in which the date judged stands; 16 lie ahead of it."""


@dataclass(frozen=True, slots=True)
class Cells:
    """`starts`: the first day (an ordinal) of each cell, and the day after them all. `by_day`: a cell is a day."""

    starts: tuple[int, ...]
    by_day: bool = False

    @property
    def first(self) -> int:
        """The first day (an ordinal)."""
        return self.starts[0]

    @property
    def last(self) -> int:
        """The last day (an ordinal)."""
        return self.starts[-1] - 1

    def at(self, day: int) -> int | None:
        """The cell that a day (an ordinal) lies in; None outside."""
        if not self.starts[0] <= day < self.starts[-1]:
            return None
        return bisect_right(self.starts, day) - 1

    def span(self, cell: int) -> tuple[int, int]:
        """First and last day (ordinals) of a cell."""
        return self.starts[cell], self.starts[cell + 1] - 1


def week_of(day: date) -> int:
    """The cell of the year, 0 to 52."""
    return (day.timetuple().tm_yday - 1) // 7


def weeks(as_of: date) -> Cells:
    """36 weeks back and 16 ahead of the week that the date lies in: a year and a day's week."""
    at = as_of.year * COUNT + week_of(as_of) - AS_OF
    return Cells(tuple(_week(at + cell) for cell in range(COUNT + 1)))


def _week(index: int) -> int:
    year, week = divmod(index, COUNT)
    return date(year, 1, 1).toordinal() + 7 * week


def days(as_of: date) -> Cells:
    """36 days back and 16 ahead."""
    return _days_from(as_of.toordinal() - AS_OF)


def year_weeks(year: int) -> Cells:
    """All the weeks of a calendar year."""
    first = date(year, 1, 1).toordinal()
    return Cells((*(first + 7 * week for week in range(COUNT)), date(year + 1, 1, 1).toordinal()))


def year_days(as_of: date, year: int) -> Cells:
    """The days about the same date of another year, cell under cell (29 February stands on the 28th)."""
    leap = (as_of.month, as_of.day) == (2, 29)
    return days(date(year, 2, 28) if leap else as_of.replace(year=year))


def months_on(cells: Cells, cell: int, months: int) -> int:
    """The cell so many months later (earlier if negative), held within the 53."""
    here = date.fromordinal(cells.starts[cell])
    index = here.year * 12 + here.month - 1 + months
    year, month = divmod(index, 12)
    day = date(year, month + 1, 1) + timedelta(min(here.day, 28) - 1)
    found = cells.at(day.toordinal())
    return (COUNT - 1 if months > 0 else 0) if found is None else found


def _days_from(first: int) -> Cells:
    return Cells(tuple(range(first, first + COUNT + 1)), by_day=True)
