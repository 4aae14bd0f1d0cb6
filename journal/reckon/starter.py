"""When plain nitrogen takes the place of a starter: phosphorus is barred, or there is enough of it."""

import math

from journal.facts.house import number
from journal.facts.rounding import exceeds, reaches
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_phosphate
from journal.reckon.feedings import FeedingDay
from journal.reckon.threshold import in_force
from journal.record.kinds.soil import SoilTest
from journal.record.lawn import Lawn
from journal.season.history import Past
from journal.season.local import bars_phosphorus, soil_test_months
from journal.season.stand import sown

LONGEST_TEST_DAYS = 20 * 365
ENOUGH = ("medium", "high", "very-high")
SHORT = ("very-low", "low")
_PUBLISHED_DAYS = math.ceil(number("soil-test-stale", "days").default)


def phosphorus_barred(past: Past, day: int) -> bool:
    """Whether a soil test that counts on that day says there is enough, or a local rule bars it and no test is short.

    A test that shows the need is a reason for phosphorus under every local rule known.
    """
    newest = _newest_test(past)
    usual, _ = soil_test_days(past.lawn)
    if newest is not None and newest.p in ENOUGH and day - newest.day < usual:
        return True
    return bars_phosphorus(past.lawn, sown(past)) and not need_shown(past, day)


def need_shown(past: Past, day: int) -> bool:
    """Whether a soil test that counts on that day by the local rule says that phosphorus is short."""
    newest = _newest_test(past)
    return newest is not None and newest.p in SHORT and day - newest.day < soil_test_days(past.lawn)[1]


def _newest_test(past: Past) -> SoilTest | None:
    tests = [t for t in (*past[SoilTest].all, *past.lawnwide(SoilTest).all) if t.p]
    return max(tests, key=lambda t: (t.day, t.id), default=None)


def soil_test_days(lawn: Lawn) -> tuple[int, int]:
    """For how many days a soil test counts: against phosphorus, as usual, and for it, by the local rule.

    Where no local rule says, no owner's number makes a test speak for phosphorus for longer than is published.
    """
    usual = math.ceil(in_force(lawn, "soil-test-stale", "days"))
    months = soil_test_months(lawn, 0)
    return usual, months * 365 // 12 if months else min(usual, _PUBLISHED_DAYS)


def is_plain_starter(past: Past, feeding: FeedingDay) -> bool:
    """Whether a feeding without phosphorus is of a starter's size, 0.4 to 0.9 lb N per 1,000 sq ft, or not said."""
    products = [past.lawn.product(dose.product) for entry in feeding.entries for dose in doses(entry)]
    if any(product is not None and holds_phosphate(product, past.lawn) for product in products):
        return False
    low, high = (in_force(past.lawn, "starter-missing", name) for name in ("plain-low", "plain-high"))
    amount = feeding.n_g_per_m2
    return amount is None or (reaches(amount, low) and not exceeds(amount, high))
