"""The named facts of a lawn, a zone and a product: which words each one takes."""

import dataclasses
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from journal.record.day import MonthDay, parse_day, parse_month, parse_month_day
from journal.record.quantity import parse_as
from journal.record.refusal import Refusal, nearest
from journal.record.unit import Dimension

Reader = Callable[[str], Any]


@dataclass(frozen=True, slots=True)
class Term:
    """One fact: its key on the line and in the set-up file, how its words are read, and an example."""

    key: str
    read: Reader
    example: str


def term(key: str, read: Reader, example: str, default: Any = None) -> Any:
    """A dataclass field that is set by `key WORDS`."""
    return dataclasses.field(default=default, metadata={"term": Term(key, read, example)})


def asked(key: str, read: Reader, example: str) -> Any:
    """The same where nothing stands in for words that are not given."""
    return dataclasses.field(metadata={"term": Term(key, read, example)})


def terms(cls: type) -> dict[str, tuple[str, Term]]:
    """Key -> (field name, term) for a class of named facts."""
    return {
        f.metadata["term"].key: (f.name, f.metadata["term"]) for f in dataclasses.fields(cls) if "term" in f.metadata
    }


def measured(*dimensions: Dimension) -> Reader:
    """Reads one quantity into its base unit."""
    return lambda words: parse_as(words, *dimensions).value


def positive(*dimensions: Dimension) -> Reader:
    """Reads one quantity that is more than nothing into its base unit."""

    def read(text: str) -> float:
        value = parse_as(text, *dimensions).value
        if value <= 0:
            raise Refusal(text, "more than nothing is wanted here.")
        return value

    return read


LONGEST_WAIT = 3660
"""Days; no label and no plan reaches further."""


def wait(text: str) -> float:
    """Reads a time in days."""
    days = parse_as(text, Dimension.DAYS).value
    if days > LONGEST_WAIT:
        raise Refusal(text, f"at most {LONGEST_WAIT} days can be meant.")
    return days


def words(text: str) -> str:
    """Any words."""
    if not text:
        raise Refusal("", "a word is wanted here.")
    return text


def one_of(*choices: str) -> Reader:
    """Reads one of these words."""

    def read(text: str) -> str:
        word = text.casefold()
        if word not in choices:
            raise Refusal(text, f"one of {', '.join(choices)} is wanted.", nearest(word, choices))
        return word

    return read


def yes_no(text: str) -> bool:
    """Reads yes or no (true, false)."""
    word = text.casefold()
    if word in ("yes", "true", "on"):
        return True
    if word in ("no", "false", "off"):
        return False
    raise Refusal(text, "yes or no is wanted.")


def number(low: float, high: float) -> Reader:
    """Reads a bare number (or a percentage) between two bounds."""

    def read(text: str) -> float:
        value = parse_as(text, Dimension.NUMBER, Dimension.PERCENT, Dimension.TIMES).value
        if not low <= value <= high:
            raise Refusal(text, f"a number from {low:g} to {high:g} is wanted.")
        return value

    return read


def signed(low: float, high: float) -> Reader:
    """Reads a number that may be below zero, between two bounds."""

    def read(text: str) -> float:
        try:
            value = float(text)
        except ValueError:
            raise Refusal(text, "a number is wanted.") from None
        if not low <= value <= high:
            raise Refusal(text, f"a number from {low:g} to {high:g} is wanted.")
        return value

    return read


def listed(text: str) -> tuple[str, ...]:
    """Items after one another, parted by `;` or a comma and a blank (2,4-D is one item)."""
    items = tuple(item.strip() for item in text.replace(", ", ";").split(";") if item.strip())
    if not items:
        raise Refusal(text, "a name is wanted here.")
    return items


def grass_names(text: str) -> tuple[str, ...]:
    """Reads names of grasses, in lower case."""
    return tuple(" ".join(item.casefold().replace("-", " ").split()) for item in listed(text))


def day(text: str) -> Any:
    """Reads 2026-06-14."""
    return parse_day(text)


def month(text: str) -> Any:
    """Reads 2026-03 as its first day."""
    return parse_month(text)


def month_day(text: str) -> MonthDay:
    """Reads 05-06."""
    return parse_month_day(text)


def month_days(text: str) -> tuple[MonthDay, MonthDay]:
    """Reads two days of the year, the earlier first in the season."""
    parts = text.replace(",", " ").replace(" to ", " ").split()
    if len(parts) != 2:
        raise Refusal(text, "two days are wanted, like 04-10 11-10.")
    return parse_month_day(parts[0]), parse_month_day(parts[1])
