"""The local rules a lawn is under: the set named, with the owner's own numbers laid over it."""

from collections.abc import Callable
from datetime import date, timedelta
from functools import lru_cache
from operator import attrgetter
from typing import Any

from journal.facts.local_rules import Closed, LocalRules, OwnRules, Sowing, Stated, laid_over
from journal.facts.local_rules_sets import named
from journal.record.kinds.seeding import Seeding
from journal.record.lawn import Lawn
from journal.record.product import Product

_own: Callable[[Lawn], tuple[Any, ...]] = attrgetter(
    "local_closed",
    "local_most_n_g_per_m2",
    "local_most_soluble_g_per_m2",
    "local_year_n_g_per_m2",
    "local_slow_percent",
    "local_buffer_mm",
    "local_test_months",
    "local_seeding",
    "local_sign_hours",
)
_NOTHING = _own(Lawn())
_ALIKE = 1e-6
"""Shares that differ by less are the same."""


def local_rules(lawn: Lawn) -> LocalRules | None:
    """Those of the place, or the owner's own numbers alone; None where neither is known."""
    own = _own(lawn)
    return None if lawn.local_rules == "none" and own == _NOTHING else _laid(lawn.local_rules, own)


@lru_cache(maxsize=64)
def _laid(name: str, own: tuple[Any, ...]) -> LocalRules | None:
    found = named(name)
    if own == _NOTHING:
        return found
    closed_days, most, soluble, year, slow, buffer, months, seeding, sign = own
    return laid_over(
        OwnRules(
            closed=closed_days,
            most_n_g_per_m2=most,
            most_soluble_n_g_per_m2=soluble,
            year_n_g_per_m2=year,
            least_slow_share=None if slow is None else slow / 100,
            buffer_mm=buffer,
            soil_test_months=months,
            seeding=seeding,
            sign_hours=sign,
        ),
        found,
    )


def closing(
    lawn: Lawn, day: date, *, nitrogen: bool, phosphorus: bool, n_g_per_m2: float | None = None
) -> Stated[Closed] | None:
    """What closes the day to a product that brings these, a confirmed one first; None where it is open.

    Dates that are not confirmed are among them: `LocalRules.holds` tells them apart. Where it is known how much
    nitrogen goes down, a span that means only more than that does not close the day.
    """
    rules = local_rules(lawn)
    if rules is None:
        return None
    found = [
        span
        for span in rules.closed
        if rules.heeds(span) is not None
        and span.value.holds(day)
        and span.value.shuts(nitrogen=nitrogen, phosphorus=phosphorus)
        and not (span.value.above_n_g_per_m2 and n_g_per_m2 is not None and n_g_per_m2 <= span.value.above_n_g_per_m2)
    ]
    return min(found, key=lambda span: not span.confirmed, default=None)


def closed(lawn: Lawn, day: date) -> bool:
    """Whether a local rule closes the day to nitrogen, as far as is known: a feeding waits."""
    return closing(lawn, day, nitrogen=True, phosphorus=False) is not None


def closed_to_starter(lawn: Lawn, day: date) -> bool:
    """The same for a starter, which brings phosphorus too."""
    return closing(lawn, day, nitrogen=True, phosphorus=True) is not None


def bars_phosphorus(lawn: Lawn, seeding: Seeding | None) -> bool:
    """Whether a local rule gives that sowing no leave for phosphorus; without one, overseeding is asked about."""
    rules = local_rules(lawn)
    which = rules.heeds(rules.sowing) if rules is not None else None
    if which is None or which is Sowing.ANY:
        return False
    return which is not Sowing.NEW or seeding is None or not seeding.new


def barred_without_reason(lawn: Lawn) -> bool:
    """Whether a local rule wants a reason for phosphorus: an established lawn gets none as a matter of course."""
    rules = local_rules(lawn)
    return rules is not None and (rules.heeds(rules.sowing) is not None or rules.heeds(rules.phosphorus) is not None)


def least_slow_share(lawn: Lawn, product: Product) -> float | None:
    """The slow share of its nitrogen, 0 to 1, that a local rule asks of a product; None where it asks nothing of it."""
    rules = local_rules(lawn)
    if rules is None or not product.nitrogen or (rules.slow_in_granules_only and product.liquid):
        return None
    return rules.heeds(rules.least_slow_share)


def slow_enough(lawn: Lawn, product: Product) -> bool:
    """Whether it is as slow as a local rule asks, as far as is known: a share that was never entered passes."""
    least = least_slow_share(lawn, product)
    return least is None or product.slow is None or product.slow >= least - _ALIKE


def open_to(first: date, last: date, shut: Callable[[date], bool]) -> date:
    """The last day before the next closed one, from the first, an open one, on; no later than the last."""
    day = first
    while day < last and not shut(day + timedelta(1)):
        day += timedelta(1)
    return day


def soil_test_months(lawn: Lawn, usual: int) -> int:
    """For how many months a soil test counts: as the local rule says, else as usual."""
    rules = local_rules(lawn)
    months = rules.heeds(rules.soil_test_months) if rules is not None else None
    return usual if months is None else months


def sign_hours(lawn: Lawn) -> float | None:
    """For how many hours a sign stands after a product against weeds, insects or disease; None where none is asked."""
    rules = local_rules(lawn)
    return rules.heeds(rules.sign_hours) if rules is not None else None


def most_n(lawn: Lawn, usual: float) -> float:
    """The most nitrogen to offer at once in g/m2: the local rule's number where that is less."""
    rules = local_rules(lawn)
    return usual if rules is None else _less(usual, rules.heeds(rules.most_n_g_per_m2))


def most_soluble_n(lawn: Lawn, usual: float) -> float:
    """The same for soluble nitrogen."""
    rules = local_rules(lawn)
    return usual if rules is None else _less(usual, rules.heeds(rules.most_soluble_n_g_per_m2))


def year_n(lawn: Lawn, usual: float) -> float:
    """The same for the nitrogen of a calendar year."""
    rules = local_rules(lawn)
    return usual if rules is None else _less(usual, rules.heeds(rules.year_n_g_per_m2))


def _less(usual: float, limit: float | None) -> float:
    return usual if limit is None else min(usual, limit)
