"""What a named set of local rules asks. None is known yet; a lawn under `none` is bound by nothing here."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from types import MappingProxyType

from journal.record.day import MonthDay
from journal.record.lawn import Lawn


@dataclass(frozen=True, slots=True)
class LocalRules:
    """`closed` is the first and last day closed to nitrogen and phosphorus, both in it; it may cross the new year.

    `seeding_allows_phosphorus` False where sowing alone is no reason for phosphorus. `most_n_g_per_m2` is the most
    nitrogen that one feeding may bring.
    """

    closed: tuple[MonthDay, MonthDay] | None = None
    seeding_allows_phosphorus: bool = True
    most_n_g_per_m2: float | None = None


LOCAL: Mapping[str, LocalRules] = MappingProxyType({})
"""By the name that the lawn's `local_rules` gives."""


def local_rules(lawn: Lawn) -> LocalRules | None:
    """The set the lawn is under, or None."""
    return LOCAL.get(lawn.local_rules)


def closed(lawn: Lawn, day: date) -> bool:
    """Whether the day is closed to nitrogen and phosphorus by a local rule."""
    rules = local_rules(lawn)
    if rules is None or rules.closed is None:
        return False
    first, last = rules.closed
    today = MonthDay(day.month, 28 if (day.month, day.day) == (2, 29) else day.day)
    return first <= today <= last if first <= last else today >= first or today <= last


def bars_phosphorus(lawn: Lawn) -> bool:
    """Whether a local rule gives sowing no leave for phosphorus."""
    rules = local_rules(lawn)
    return rules is not None and not rules.seeding_allows_phosphorus
