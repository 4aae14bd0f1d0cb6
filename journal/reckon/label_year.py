"""How often an active was used in a year, and how often its labels allow it."""

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from journal.reckon.label_uses import PARTS_DAYS, Round, active_names, default_count, holders, rounds
from journal.reckon.uses import kind_of
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.season.history import Past

YEAR_DAYS = 365


@dataclass(frozen=True, slots=True)
class Year:
    """Applications that count in a year, oldest first: of a calendar year, or of 365 days (`rolling`)."""

    rounds: tuple[Round, ...]
    rolling: bool


@dataclass(frozen=True, slots=True)
class TooOften:
    """An active used `times` where `most` are allowed, by a label or by default; `spots`: only with its spots.

    `back` is the day on which it falls back to what is allowed, if no more is put down.
    """

    active: str
    times: int
    most: int
    by_label: bool
    rolling: bool
    spots: bool
    rounds: tuple[Round, ...]
    back: date


def counts(one: Round) -> bool:
    """Whether it counts in the year: a spot only where its label says so."""
    return not one.spot or one.product.label.spot_counts


def years(past: Past) -> tuple[Year, Year]:
    """The calendar year of the past's day, and the 365 days that end with it; without spots that don't count."""
    new_year = date(past.date.year, 1, 1).toordinal()
    first = past.day - YEAR_DAYS + 1
    every = [one for one in rounds(past, min(new_year, first) - PARTS_DAYS) if counts(one)]
    return (
        Year(tuple(one for one in every if one.day >= new_year), rolling=False),
        Year(tuple(one for one in every if one.day >= first), rolling=True),
    )


def applications(found: Iterable[Round]) -> int:
    """How often: what went out of one tank went out once."""
    return len(_days(found))


def _days(found: Iterable[Round]) -> list[date]:
    return list({one.entries[0].id: one.date for one in found}.values())


def too_often(past: Past, product: Product, both: tuple[Year, Year]) -> Iterator[TooOften]:
    """Each active of that product that was used more often than a label allows, or than stands in for blank ones."""
    for name in active_names(product):
        for year in both:
            held = holders(year.rounds, name)
            yield from _over(past, name, held, rolling=year.rolling)


def _over(past: Past, name: str, held: tuple[Round, ...], *, rolling: bool) -> Iterator[TooOften]:
    times, whole = applications(held), applications(one for one in held if not one.spot)
    for most, by_label in _limits(past.lawn, held):
        if times > most:
            back = _new_year(past)
            if rolling:
                back = _days(held)[times - most - 1] + timedelta(YEAR_DAYS)
            yield TooOften(name, times, most, by_label, rolling, whole <= most, held, back)


def _limits(lawn: Lawn, held: tuple[Round, ...]) -> list[tuple[int, bool]]:
    """The strictest label's number, and the strictest that stands in for a blank one."""
    labels = [math.floor(m) for one in held if (m := one.product.label.max_per_year) is not None]
    blank = [default_count(lawn, one.kind) for one in held if one.product.label.max_per_year is None]
    return [*((min(labels), True) for _ in labels[:1]), *((min(blank), False) for _ in blank[:1])]


def free_of_count(past: Past, product: Product) -> date | None:
    """From which day on one more use of it breaks no year's count in that zone; None where none is broken today.

    `date.max` where its label allows no use at all.
    """
    found = []
    for name in active_names(product):
        for year in years(past):
            held = holders(year.rounds, name)
            days = _days(held)
            most = min(_most(past.lawn, kind_of(product), product), *(most for most, _ in _limits(past.lawn, held)), 99)
            if len(days) < most:
                continue
            if not most:
                return date.max
            found.append(days[len(days) - most] + timedelta(YEAR_DAYS) if year.rolling else _new_year(past))
    return max(found, default=None)


def _most(lawn: Lawn, kind: str, product: Product) -> int:
    most = product.label.max_per_year
    return default_count(lawn, kind) if most is None else math.floor(most)


def _new_year(past: Past) -> date:
    return date(past.date.year + 1, 1, 1)


def uses_of_year(past: Past, product: Product) -> int:
    """Applications in the calendar year that count against that product's label: of any product that shares an active.

    As `label-year-count` counts them.
    """
    calendar = years(past)[0]
    return max((applications(holders(calendar.rounds, name)) for name in active_names(product)), default=0)
