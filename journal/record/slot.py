"""Declaring the words of a line: each field of an entry says which words fill it."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from journal.record.unit import Dimension


class Role(StrEnum):
    """What sort of word fills a slot."""

    MEASURE = "quantity"
    CHOICE = "word"
    MARK = "mark"
    PRODUCT = "product"
    SUBJECT = "subject"
    POINT = "photo point"
    PATH = "path"
    DAY = "date"
    MONTH = "month"
    WEEKDAYS = "weekdays"
    CIRCUITS = "circuits"
    RULE = "flag"
    TEXT = "text"
    PRESET = "verb"


@dataclass(frozen=True, slots=True)
class Slot:
    """How one field is filled from the line.

    `keyword` makes it a two-word pair (`wind 4mph`); `usual` lets the last entry fill it when it is left out;
    `dose` fields repeat for each product after a `+`; `low` and `high` bound what can have been meant. A day and
    month without a year lie behind, or `ahead`, or in `this_year`, or come first after the day in the field `follows`.
    """

    role: Role
    dimensions: tuple[Dimension, ...] = ()
    choices: tuple[str, ...] = ()
    keyword: str = ""
    usual: bool = False
    kinds: tuple[str, ...] = ()
    dose: bool = False
    ahead: bool = False
    this_year: bool = False
    follows: str = ""
    low: float | None = None
    high: float | None = None


def _slot(slot: Slot, default: Any) -> Any:
    return field(default=default, metadata={"slot": slot})


def measure(
    *dimensions: Dimension,
    keyword: str = "",
    usual: bool = False,
    dose: bool = False,
    low: float | None = None,
    high: float | None = None,
) -> Any:
    """A number with a unit of one of these dimensions, kept in its base unit; None when not given.

    `low` and `high`, in that base unit, bound what can have been meant.
    """
    slot = Slot(Role.MEASURE, dimensions, keyword=keyword, usual=usual, dose=dose, low=low, high=high)
    return _slot(slot, None)


def choice(*words: str, keyword: str = "", usual: bool = False) -> Any:
    """One of these words; '' when not given."""
    return _slot(Slot(Role.CHOICE, choices=words, keyword=keyword, usual=usual), "")


def mark(*words: str) -> Any:
    """True when the word (or any of its spellings) stands on the line."""
    return _slot(Slot(Role.MARK, choices=words), False)


def preset() -> Any:
    """A word given by the verb itself: `aerate` sets what = aerate."""
    return _slot(Slot(Role.PRESET), "")


def product(kinds: Sequence[str], *, usual: bool = True) -> Any:
    """A product of the shed whose kind is one of these; '' when not given."""
    return _slot(Slot(Role.PRODUCT, kinds=tuple(kinds), usual=usual, dose=True), "")


def subject(words: Sequence[str]) -> Any:
    """A thing that was seen, from the list."""
    return _slot(Slot(Role.SUBJECT, choices=tuple(words)), "")


def point() -> Any:
    """A photo point after `from`: one or two words."""
    return _slot(Slot(Role.POINT, keyword="from"), "")


def path() -> Any:
    """A file path."""
    return _slot(Slot(Role.PATH), "")


def day(keyword: str) -> Any:
    """A date after a keyword; it lies behind."""
    return _slot(Slot(Role.DAY, keyword=keyword), None)


def target_day() -> Any:
    """The first date of the line, taken as a day that lies ahead."""
    return _slot(Slot(Role.DAY, ahead=True), None)


def first_day(keyword: str) -> Any:
    """A date after a keyword that begins a season: of this year when no year is said."""
    return _slot(Slot(Role.DAY, keyword=keyword, ahead=True, this_year=True), None)


def last_day(keyword: str, *, follows: str) -> Any:
    """A date after a keyword that ends what began on the day in the field `follows`: the first to come after it."""
    return _slot(Slot(Role.DAY, keyword=keyword, ahead=True, follows=follows), None)


def month(keyword: str) -> Any:
    """A month like 2026-03 after a keyword, as its first day."""
    return _slot(Slot(Role.MONTH, keyword=keyword), None)


def weekdays() -> Any:
    """Any number of weekday names, as a tuple of 0 (Monday) to 6."""
    return _slot(Slot(Role.WEEKDAYS), ())


def circuits() -> Any:
    """`A 20min B 12min`: pairs of a sprinkler circuit's name and minutes."""
    return _slot(Slot(Role.CIRCUITS), ())


def rule_name() -> Any:
    """The id of a rule or of one flag."""
    return _slot(Slot(Role.RULE), "")


def text() -> Any:
    """All the rest of the line."""
    return _slot(Slot(Role.TEXT), "")


def is_said(value: Any) -> bool:
    """Whether a field holds something; nought is something."""
    return value is not None and value is not False and value != "" and value != ()
