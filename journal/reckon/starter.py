"""When plain nitrogen takes the place of a starter: phosphorus is barred, or there is enough of it."""

from journal.facts.rounding import exceeds, reaches
from journal.reckon.dose import doses
from journal.reckon.feeding import holds_phosphate
from journal.reckon.feedings import FeedingDay
from journal.reckon.threshold import in_force
from journal.record.kinds.soil import SoilTest
from journal.season.history import Past
from journal.season.local import bars_phosphorus

SOIL_TEST_DAYS = 3 * 365
"""So long a soil test speaks for or against phosphorus: judgment."""
ENOUGH = ("medium", "high", "very-high")


def phosphorus_barred(past: Past, day: int) -> bool:
    """Whether a local rule speaks against phosphorus on that day, or a soil test less than three years old then."""
    if bars_phosphorus(past.lawn):
        return True
    tests = [t for t in (*past[SoilTest].all, *past.lawnwide(SoilTest).all) if t.p]
    newest = max(tests, key=lambda t: (t.day, t.id), default=None)
    return newest is not None and day - newest.day < SOIL_TEST_DAYS and newest.p in ENOUGH


def is_plain_starter(past: Past, feeding: FeedingDay) -> bool:
    """Whether a feeding without phosphorus is of a starter's size, 0.4 to 0.9 lb N per 1,000 sq ft, or not said."""
    products = [past.lawn.product(dose.product) for entry in feeding.entries for dose in doses(entry)]
    if any(product is not None and holds_phosphate(product, past.lawn) for product in products):
        return False
    low, high = (in_force(past.lawn, "starter-missing", name) for name in ("plain-low", "plain-high"))
    amount = feeding.n_g_per_m2
    return amount is None or (reaches(amount, low) and not exceeds(amount, high))
