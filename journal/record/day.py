"""Days of the year, and the names of months and weekdays."""

import re
from dataclasses import dataclass
from datetime import date, timedelta

from journal.record.refusal import Refusal

MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
FULL_MONTHS = (
    "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november",
    "december",
)  # fmt: skip
FULL_WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


@dataclass(frozen=True, slots=True, order=True)
class MonthDay:
    """A day that comes back every year, like an average last frost. 29 February is not one."""

    month: int
    day: int

    def __post_init__(self) -> None:
        date(2001, self.month, self.day)

    def __str__(self) -> str:
        return f"{self.month:02}-{self.day:02}"

    def on(self, year: int) -> date:
        """That day in that year."""
        return date(year, self.month, self.day)

    def shifted(self, days: int) -> "MonthDay":
        """So many days later (earlier if negative), counted in a year without a leap day."""
        then = date(2001, self.month, self.day) + timedelta(days)
        return MonthDay(then.month, then.day)

    def half_a_year_on(self) -> "MonthDay":
        """The same season south of the equator: six months later, at the month's last day if it is shorter."""
        month = (self.month + 5) % 12 + 1
        last = (date(2001 + (month == 12), month % 12 + 1, 1) - timedelta(1)).day
        return MonthDay(month, min(self.day, last))


def parse_month_day(text: str) -> MonthDay:
    """`05-06`, month then day."""
    match = re.fullmatch(r"(\d{1,2})-(\d{1,2})", text.strip())
    try:
        if match is None:
            raise ValueError
        return MonthDay(int(match[1]), int(match[2]))
    except ValueError:
        raise Refusal(text, "not a day of the year: write month and day like 05-06.") from None


def parse_day(text: str) -> date:
    """`2026-06-14`."""
    try:
        if not re.fullmatch(r"\d{4}-\d\d-\d\d", text.strip()):
            raise ValueError
        found = date.fromisoformat(text.strip())
    except ValueError:
        raise Refusal(text, "not a day of the calendar: write year, month and day like 2026-06-14.") from None
    if not keepable(found):
        raise Refusal(text, OUTSIDE)
    return found


FIRST_YEAR, LAST_YEAR = 1900, 2199
OUTSIDE = f"only the years {FIRST_YEAR} to {LAST_YEAR} can be meant."


def keepable(day: date) -> bool:
    """Whether a day lies in the years that can be meant, so that days added to it or taken off stay on the calendar."""
    return FIRST_YEAR <= day.year <= LAST_YEAR


def parse_month(text: str) -> date:
    """`2026-03`, as its first day."""
    try:
        if not re.fullmatch(r"\d{4}-\d\d", text.strip()):
            raise ValueError
        found = date.fromisoformat(f"{text.strip()}-01")
    except ValueError:
        raise Refusal(text, "not a month: write year and month like 2026-03.") from None
    if not keepable(found):
        raise Refusal(text, OUTSIDE)
    return found


def name_month(word: str) -> int | None:
    """1 to 12 for `jun` or `june`, else None."""
    for names in (MONTHS, FULL_MONTHS):
        if word in names:
            return names.index(word) + 1
    return None


def name_weekday(word: str) -> int | None:
    """0 (Monday) to 6 for `mon` or `monday`, else None."""
    for names in (WEEKDAYS, FULL_WEEKDAYS):
        if word in names:
            return names.index(word)
    return None


def spoken(day: date, today: date) -> str:
    """`Mon 3 May`, with the year only when it is not this one."""
    words = f"{WEEKDAYS[day.weekday()].title()} {day.day} {MONTHS[day.month - 1].title()}"
    return words if day.year == today.year else f"{words} {day.year}"
