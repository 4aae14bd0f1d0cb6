"""How the sets of local rules write their figures down: pounds per 1,000 square feet, feet, and days of the year."""

from journal.facts.citation import Basis
from journal.facts.factors import g_per_m2, mm
from journal.facts.local_rules import Closed, Closes, Sowing, Stated
from journal.facts.sources import published
from journal.record.day import MonthDay


def second_hand(*keys: str, note: str = "") -> Basis:
    """Published, but not by those who made the law: a newspaper, an association."""
    return published(*keys, note=f"second-hand{'; ' if note else ''}{note}")


def rate(lb_per_k: float, basis: Basis) -> Stated[float]:
    """Pounds of nitrogen per 1,000 square feet, as g/m2."""
    return Stated(g_per_m2(lb_per_k), basis)


def distance(feet: float, basis: Basis) -> Stated[float]:
    """Feet, as mm."""
    return Stated(mm(12 * feet), basis)


def shut(
    first: tuple[int, int],
    last: tuple[int, int],
    basis: Basis,
    closes: Closes = Closes.BOTH,
    above_lb_per_k: float = 0.0,
) -> Stated[Closed]:
    """First and last closed day (month, day), both in it."""
    return Stated(Closed(MonthDay(*first), MonthDay(*last), closes, g_per_m2(above_lb_per_k)), basis)


def sowing(which: Sowing, basis: Basis) -> Stated[Sowing]:
    """Which sowing is a reason for phosphorus."""
    return Stated(which, basis)
