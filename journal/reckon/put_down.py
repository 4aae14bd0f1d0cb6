"""How much of a product goes down on each zone at a rate, what nitrogen that brings, and which limits it would pass."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from journal.facts.rounding import exceeds, over_the_law
from journal.reckon.feeding import Nutrients, nutrients
from journal.reckon.feedings import feeding_days, nitrogen_of_year, year_cap
from journal.reckon.threshold import in_force
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.history import Past
from journal.season.local import local_rules
from journal.season.stand import new_grass

PASSES = 2
"""Granules and seed go down in two half-rate passes at right angles: common practice."""


class Over(StrEnum):
    """Which limit a dose would pass."""

    YEAR = "the year's limit"
    LOCAL = "the local rule for one feeding"
    LOCAL_SOLUBLE = "the local rule for soluble nitrogen in one feeding"
    ONCE = "the most in one feeding"
    SOLUBLE = "the most soluble in one feeding"
    SOLUBLE_NEW = "the most soluble on new grass"


@dataclass(frozen=True, slots=True)
class Portion:
    """One zone's part. Amounts in g, or mL of what is measured by volume; rates in g/m2; None where not known.

    `year_n` is the calendar year's nitrogen with this dose in it, at least that where a feeding has no amount;
    `year_most` is what the year may have. `over` names the limits passed, each with its value in g/m2.
    """

    zone: str
    area_m2: float | None
    amount: float | None
    brings: Nutrients | None
    year_n: float | None
    at_least: bool
    year_most: float
    over: tuple[tuple[Over, float], ...]


@dataclass(frozen=True, slots=True)
class PutDown:
    """A product at a rate, in g/m2 or mL/m2 from the bag or bottle: zone by zone, and in all where every area is known.

    `pack` is what a bag or bottle holds, None where the label was not entered.
    """

    rate: float
    portions: tuple[Portion, ...]
    amount: float | None
    pack: float | None


def put_down(product: Product, rate: float, dimension: Dimension, zones: Sequence[Past]) -> PutDown:
    """For a rate in the base unit of its dimension, above zero, counted from the bag as it comes."""
    portions = tuple(_portion(product, rate, dimension, past) for past in zones)
    amounts = [portion.amount for portion in portions if portion.amount is not None]
    amount = sum(amounts) if portions and len(amounts) == len(portions) else None
    pack = product.bag_g if dimension is Dimension.MASS_RATE else product.bottle_ml
    return PutDown(rate, portions, amount, pack)


def _portion(product: Product, rate: float, dimension: Dimension, past: Past) -> Portion:
    zone = past.lawn.zone(past.zone)
    area = zone.area_m2 if zone else None
    weighed = dimension is Dimension.MASS_RATE
    amount = None if area is None else rate * area
    brings = nutrients(product, rate) if weighed and product.nitrogen else None
    year_most = year_cap(past)
    year_n = nitrogen_of_year(past, past.date.year) + brings.n if brings else None
    over = tuple(_over(past, brings, year_n, year_most)) if brings and year_n is not None else ()
    at_least = brings is not None and _unmeasured(past)
    return Portion(past.zone, area, amount, brings, year_n, at_least, year_most, over)


def _unmeasured(past: Past) -> bool:
    """Whether a feeding of the calendar year has no amount."""
    first = date(past.date.year, 1, 1).toordinal()
    return any(feeding.n_g_per_m2 is None for feeding in feeding_days(past, first))


def _over(past: Past, brings: Nutrients, year_n: float, year_most: float) -> Iterator[tuple[Over, float]]:
    """The gravest limit of a single feeding, and the year's."""
    if exceeds(year_n, year_most):
        yield Over.YEAR, year_most
    lawn, local, new = past.lawn, local_rules(past.lawn), new_grass(past)
    by_law = local.heeds(local.most_n_g_per_m2) if local else None
    soluble_by_law = local.heeds(local.most_soluble_n_g_per_m2) if local else None
    most = in_force(lawn, "feed-dose", "most")
    soluble = in_force(lawn, "feed-dose", "most-soluble-new" if new else "most-soluble")
    if by_law is not None and over_the_law(brings.n, by_law):
        yield Over.LOCAL, by_law
    elif soluble_by_law is not None and over_the_law(brings.soluble_n, soluble_by_law):
        yield Over.LOCAL_SOLUBLE, soluble_by_law
    elif exceeds(brings.n, most):
        yield Over.ONCE, most
    elif exceeds(brings.soluble_n, soluble):
        yield Over.SOLUBLE_NEW if new else Over.SOLUBLE, soluble
