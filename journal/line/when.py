"""Dates and times as people write them."""

import re
from calendar import isleap
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from enum import Enum

from journal.line.token import Token
from journal.record.day import OUTSIDE, keepable, name_month, name_weekday
from journal.record.refusal import Refusal

Phrase = Callable[[str, date], date | None]
"""Reads a phrase like `2 months ago`; kept outside so that the calendar library is loaded only when one is typed."""


class Lean(Enum):
    """Which year a day and month without one mean."""

    BACK = "the last that came"
    AHEAD = "the next to come"
    THIS_YEAR = "this year's"


@dataclass(frozen=True, slots=True)
class When:
    """A date, whether the owner was unsure of it, and how many words it took."""

    date: date
    about: bool
    used: int


_BACK = re.compile(r"-(\d{1,4})(d|w|wk)?$")
_SLASH = re.compile(r"(\d{1,2})/(\d{1,2})(?:/(\d{4}|\d{2}))?$")
_YEAR_FIRST = re.compile(r"(\d{4})/(\d{1,2})/(\d{1,2})$")
_DAY_FIRST = re.compile(r"(\d{1,2})\.(\d{1,2})\.(\d{4})$")
_DASHES = re.compile(r"(\d{1,2})-(\d{1,2})-(\d{4})$")
_ISO = re.compile(r"\d{4}-\d{1,2}-\d{1,2}$")
_TIME = re.compile(r"(\d{1,2}):(\d{2})(am|pm)?$|(\d{1,2})(am|pm)$")
_DAY = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?$")


@dataclass(frozen=True, slots=True)
class Reckoning:
    """How dates are understood: the clock's day, slashes or not, the year meant, and `base` where AHEAD is from."""

    today: date
    slashes: bool
    phrase: Phrase | None = None
    lean: Lean = Lean.BACK
    base: date | None = None


def find_date(tokens: Sequence[Token], at: int, how: Reckoning) -> When | None:
    """The date that begins at that word, or None. Raises Refusal for one that isn't on the calendar or allowed."""
    if tokens[at].quoted:
        return None
    found = _found(tokens, at, how)
    if found and not keepable(found.date):
        raise Refusal(" ".join(token.text for token in tokens[at : at + found.used]), OUTSIDE)
    return found


def _found(tokens: Sequence[Token], at: int, how: Reckoning) -> When | None:
    word = tokens[at].word
    about = word.startswith("~")
    if about:
        word = word[1:]
    if word == "in" and at + 1 < len(tokens) and (month := name_month(tokens[at + 1].word)):
        return When(_month_end(month, tokens[at + 1].text, how), True, 2)
    found = _relative(word, tokens[at].text, how) or _written(word, tokens[at].text, how)
    if found:
        return When(found, about, 1)
    named = _named(word, tokens, at, how)
    if named:
        return When(named.date, about, named.used)
    return _phrase(tokens, at, how)


def _month_end(month: int, typed: str, how: Reckoning) -> date:
    """The last day of a month, so that a wait counted from it is never too short; never on the wrong side of today."""
    if month == how.today.month and how.lean is Lean.BACK:
        return how.today
    first = _place(1, month, None, typed, how) if month != how.today.month else how.today.replace(day=1)
    return (first.replace(day=28) + timedelta(4)).replace(day=1) - timedelta(1)


def _relative(word: str, typed: str, how: Reckoning) -> date | None:
    today = how.today
    if word in ("today", "yesterday", "tomorrow"):
        return today + timedelta({"today": 0, "yesterday": -1, "tomorrow": 1}[word])
    if match := _BACK.match(word):
        days = int(match[1]) * (7 if match[2] and match[2].startswith("w") else 1)
        if days >= today.toordinal():
            raise Refusal(typed, OUTSIDE)
        return today - timedelta(days)
    weekday = name_weekday(word)
    if weekday is None:
        return None
    if how.lean is Lean.AHEAD:
        return today + timedelta((weekday - today.weekday()) % 7)
    return today - timedelta((today.weekday() - weekday) % 7)


def _written(word: str, as_typed: str, how: Reckoning) -> date | None:
    if _ISO.match(word):
        year, month, day = (int(part) for part in word.split("-"))
        return _calendar(year, month, day, as_typed)
    if match := _YEAR_FIRST.match(word):
        return _calendar(int(match[1]), int(match[2]), int(match[3]), as_typed)
    if match := _DAY_FIRST.match(word):
        return _calendar(int(match[3]), int(match[2]), int(match[1]), as_typed)
    match = _SLASH.match(word) or _DASHES.match(word)
    if match is None:
        return None
    if not how.slashes:
        raise Refusal(as_typed, "day or month first? Write it like 14 jun or 2026-06-14.")
    year_typed = int(match[3]) if match[3] else None
    if year_typed is not None and year_typed < 100:
        year_typed += 2000
    return _place(int(match[2]), int(match[1]), year_typed, as_typed, how)


def _named(word: str, tokens: Sequence[Token], at: int, how: Reckoning) -> When | None:
    """`14 jun`, `jun 14`, either with a year after it."""
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    day_first = _DAY.match(word)
    month = name_month(after) if day_first else name_month(word)
    number = day_first or _DAY.match(after)
    if month is None or number is None:
        return None
    year, used = None, 2
    if at + 2 < len(tokens) and re.fullmatch(r"(19|20)\d\d", tokens[at + 2].word):
        year, used = int(tokens[at + 2].word), 3
    typed = f"{tokens[at].text} {tokens[at + 1].text}"
    return When(_place(int(number[1]), month, year, typed, how), False, used)


def _phrase(tokens: Sequence[Token], at: int, how: Reckoning) -> When | None:
    for used in (3, 2):
        some = tokens[at : at + used]
        if how.phrase and len(some) == used and (some[-1].word == "ago" or some[0].word == "last"):
            found = how.phrase(" ".join(token.word for token in some), how.today)
            if found:
                return When(found, False, used)
    return None


def _place(day: int, month: int, year: int | None, typed: str, how: Reckoning) -> date:
    if year is not None:
        return _calendar(year, month, day, typed)
    base = how.base or how.today
    if how.lean is Lean.THIS_YEAR:
        return _calendar(base.year, month, day, typed)
    step = 1 if how.lean is Lean.AHEAD else -1
    if (month, day) != (2, 29):
        first = _calendar(base.year, month, day, typed)
        wrong = (first - base).days * step < 0
        return _calendar(base.year + step, month, day, typed) if wrong else first
    leap = (y for y in range(base.year, base.year + 13 * step, step) if isleap(y))
    return next(d for d in (date(y, 2, 29) for y in leap) if (d - base).days * step >= 0)


def _calendar(year: int, month: int, day: int, typed: str) -> date:
    try:
        return date(year, month, day)
    except ValueError:
        raise Refusal(typed, "there is no such day.") from None


def find_time(word: str) -> time | None:
    """`7:30`, `7:30pm`, `7am`; None when the word is no time. Raises Refusal for 25:00."""
    match = _TIME.match(word)
    if match is None:
        return None
    hour = int(match[1] or match[4])
    minute = int(match[2] or 0)
    half = match[3] or match[5]
    try:
        if half:
            if not 1 <= hour <= 12:
                raise ValueError
            hour = hour % 12 + (12 if half == "pm" else 0)
        return time(hour, minute)
    except ValueError:
        raise Refusal(word, "there is no such time.") from None
