"""Totals and rates: how much of a product lies on each square metre, over several zones, a share, a part or a spot."""

from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn


def doses(entry: Entry) -> tuple[Dose, ...]:
    """Every product an entry put down, with its amount as it was said; none for an entry that puts nothing down."""
    match entry:
        case Feeding() | Treatment():
            first = Dose(entry.product, entry.amount_g, entry.amount_ml, entry.rate_g_per_m2, entry.rate_ml_per_m2)
            return (first, *(entry.also if isinstance(entry, Treatment) else ()))
        case Seeding():
            return (Dose(entry.product, amount_g=entry.amount_g, rate_g_per_m2=entry.rate_g_per_m2),)
    return ()


def is_spot(entry: Entry) -> bool:
    """True when only a spot was treated, whether or not its size was given."""
    return entry.spot or entry.spot_m2 is not None


def covered_share(entry: Entry) -> float:
    """The share of each zone that was covered, above 0 to 1: `front 40%`, or one part of two, three, ...

    A spot says nothing here: it covers no share worth the name and counts 0.
    """
    if is_spot(entry):
        return 0.0
    share = 1.0 if entry.share is None else entry.share / 100
    return share / parts(entry)


def parts(entry: Entry) -> int:
    """In how many parts the work was split: 2 for `part 1/2`, 1 where nothing was said."""
    _, slash, count = entry.part.partition("/")
    return max(1, int(count)) if slash and count.isdigit() else 1


def treated_m2(entry: Entry, lawn: Lawn) -> float | None:
    """Square metres that were treated, all zones together; None when the size of a zone or spot is not known."""
    if is_spot(entry):
        return entry.spot_m2
    area = lawn.area_m2(entry.zones)
    return None if area is None else area * covered_share(entry)


def rate_g_per_m2(dose: Dose, entry: Entry, lawn: Lawn) -> float | None:
    """Grams on each square metre that was treated; None when that can't be known."""
    return _rate(dose.amount_g, dose.rate_g_per_m2, treated_m2(entry, lawn))


def rate_ml_per_m2(dose: Dose, entry: Entry, lawn: Lawn) -> float | None:
    """Millilitres on each square metre that was treated; None when that can't be known."""
    return _rate(dose.amount_ml, dose.rate_ml_per_m2, treated_m2(entry, lawn))


def total_g(dose: Dose, entry: Entry, lawn: Lawn) -> float | None:
    """Grams in all, all zones together; None when that can't be known."""
    return _total(dose.amount_g, dose.rate_g_per_m2, treated_m2(entry, lawn))


def total_ml(dose: Dose, entry: Entry, lawn: Lawn) -> float | None:
    """Millilitres in all, all zones together; None when that can't be known."""
    return _total(dose.amount_ml, dose.rate_ml_per_m2, treated_m2(entry, lawn))


def mean_g_per_m2(dose: Dose, entry: Entry, lawn: Lawn) -> float | None:
    """Grams on each square metre of the zones named, had they been spread over the whole of them."""
    whole = lawn.area_m2(entry.zones)
    if not is_spot(entry):
        rate = rate_g_per_m2(dose, entry, lawn)
        return None if rate is None else rate * covered_share(entry)
    total = total_g(dose, entry, lawn)
    return None if total is None or not whole else total / whole


def split(total: float, zones: tuple[str, ...], lawn: Lawn) -> dict[str, float] | None:
    """A total over several zones, each its part by area; None when any area is not known."""
    whole = lawn.area_m2(zones)
    if not whole:
        return None
    areas = {zone.name: zone.area_m2 or 0.0 for zone in lawn.zones if zone.name in zones}
    return {name: total * area / whole for name, area in areas.items()}


def _rate(amount: float | None, rate: float | None, area: float | None) -> float | None:
    if rate is not None:
        return rate
    return amount / area if amount is not None and area else None


def _total(amount: float | None, rate: float | None, area: float | None) -> float | None:
    if amount is not None:
        return amount
    return rate * area if rate is not None and area is not None else None
