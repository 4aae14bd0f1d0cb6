"""A product of the shed against weeds: which one, how it is put down, and what it has to wait for."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.injuries import injured
from journal.plan.measure import depth
from journal.plan.offer import Spread
from journal.plan.stage import said
from journal.reckon.label_uses import active_names, free_again
from journal.reckon.label_year import free_of_count
from journal.reckon.near_a_cut import label_wait_days
from journal.reckon.new_grass import old_enough_on, wait_for
from journal.reckon.unknown import free_of_unknown
from journal.reckon.uses import Use, actives_of, uses
from journal.reckon.watering_in import rain_free_hours, water_in
from journal.record.dose import Dose
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.record.quantity import in_unit, plain
from journal.record.unit import Dimension, unit_for
from journal.season.growth import dormant_open
from journal.season.history import Past
from journal.season.hours import days_of
from journal.season.stand import COUNTS_FROM_DAY, stand_mix
from journal.season.water import schedules_on

YEAR = 365
TIMER_DAYS = 14
OF_ROOTS = ("dicamba", "triclopyr")
"""Actives that trees take up: Univ. of Delaware Cooperative Extension, Herbicide Damage to Trees, 2008."""


@dataclass(frozen=True, slots=True)
class Hold:
    """What keeps a product back, and to which day; None for a day that nobody can tell."""

    until: date | None
    why: str


def product_for(past: Past, kinds: Iterable[str]) -> Product | None:
    """The one used last, else the first of the shed, among those that fit the zone and its grass."""
    fits = [one for kind in kinds for one in past.lawn.products if one.kind == kind and fits_zone(past, one)]
    last = past[Treatment].last_where(lambda use: any(use.product == one.name for one in fits))
    return next((one for one in fits if last is not None and one.name == last.product), next(iter(fits), None))


def fits_zone(past: Past, product: Product) -> bool:
    """Whether nothing on file speaks against it there: no tree, no grass that it hurts, not for professionals."""
    zone = past.lawn.zone(past.zone)
    known = actives_of(product)
    if product.label.professional or any(not one.home_lawn or one.never_on_turf for one in known):
        return False
    if zone is not None and zone.trees and any(one.name in OF_ROOTS for one in known):
        return False
    mix = stand_mix(past)
    return not any(not hurt.one_trial for one in known for hurt in injured(one.name, mix))


def held(past: Past, product: Product) -> Hold | None:
    """What keeps it back today, the longest: grass too young, used lately or often enough, mown lately, at rest."""
    finds = (_too_young, _too_soon, _after_unknown, _enough, _mown, _at_rest, _timer)
    holds = [hold for find in finds if (hold := find(past, product))]
    return max(holds, key=lambda hold: hold.until or date.max, default=None)


def _too_young(past: Past, product: Product) -> Hold | None:
    old = old_enough_on(past, wait_for(product))
    return Hold(old, young(past, product, old)) if old else None


def young(past: Past, product: Product, old: date) -> str:
    """What is said of grass that is old enough for it from that day on; how soon it is mown nobody knows."""
    count = wait_for(product).mowings
    cuts = f"about {said(old, past)}, after {count} mowing{'' if count == 1 else 's'} from day {COUNTS_FROM_DAY}"
    return f"new grass: {product.name} from {cuts if count else said(old, past)}"


def _too_soon(past: Past, product: Product) -> Hold | None:
    over = free_again(past, product)
    if over is None:
        return None
    names = active_names(product)
    used = [use for use in uses(past, past.day - YEAR) if not use.spot and use.product is not None]
    alike = [use for use in used if set(names) & set(active_names(use.product or product))]
    went = f"{alike[-1].name} {said(alike[-1].date, past)}" if alike else f"{names[0]} went down"
    return Hold(over, f"{went}: again from {said(over, past)}")


def _after_unknown(past: Past, product: Product) -> Hold | None:
    found = free_of_unknown(past)
    if found is None:
        return None
    over, use = found
    return Hold(over, f"nobody knows what went down {said(use.date, past)}: {product.name} from {said(over, past)}")


def _enough(past: Past, product: Product) -> Hold | None:
    free = free_of_count(past, product)
    if free is None:
        return None
    if free == date.max:
        return Hold(None, f"the label of {product.name} allows no use")
    return Hold(
        free, f"{product.name}, or another that holds the same, went down as often as its label allows in a year"
    )


def _mown(past: Past, product: Product) -> Hold | None:
    last = past[Mowing].last
    days, _ = label_wait_days(product.label, past.lawn, "before")
    if last is None or product.kind != "weed" or past.day - last.day >= days:
        return None
    over = last.date + timedelta(days)
    return Hold(over, f"mown {said(last.date, past)}: leaf to catch it from {said(over, past)}")


def _at_rest(past: Past, product: Product) -> Hold | None:
    if product.kind != "weed" or dormant_open(past) is None:
        return None
    return Hold(None, "the grass is at rest: once it is green")


def _timer(past: Past, product: Product) -> Hold | None:
    """The timer that would wash it off; a timer that leaves no day free in two weeks has to be turned off."""
    hours = rain_free_hours(_used(past, product), past.lawn)
    if not hours:
        return None
    runs = {day for day in range(past.day, past.day + TIMER_DAYS) if schedules_on(past, day)}
    last = days_of(hours)
    free = (day for day in range(past.day, past.day + TIMER_DAYS - last) if runs.isdisjoint(range(day, day + last + 1)))
    day = next(free, past.day)
    if day == past.day:
        return None
    over = date.fromordinal(day)
    return Hold(over, f"the timer runs, and {product.name} has to stay dry: from {said(over, past)}, or with it off")


def line(past: Past, product: Product) -> tuple[str, Spread | None, str]:
    """The words of the line before the zones, what is spread, and the amount in words, at the label's low rate.

    No words where the label's rate was not entered. The amount ends with what water it wants, or not.
    """
    rate, water = product.rate, _water_after(past, product)
    if rate is None:
        return "", None, f"{product.name}: its label's rate is not entered"
    if rate.dimension is Dimension.MASS_RATE:
        spread = Spread(product, rate.low, "the label's low rate", round_down=rate.low == rate.high)
        return f"treat {product.name}", spread, water
    low, high = (volume_rate(value, past.lawn, " ") for value in (rate.low, rate.high))
    words = f"{product.name} at {low}" + (f" to {high}" if high != low else "") + ", by its label"
    return f"treat {product.name} {volume_rate(rate.low, past.lawn)}", None, "; ".join(filter(None, (words, water)))


def _water_after(past: Past, product: Product) -> str:
    """`then water 0.5 in` for what works in the soil, `then dry for 24 h` for what works on the leaf, else ''."""
    use = _used(past, product)
    hours, wanted = rain_free_hours(use, past.lawn), water_in(use, past.lawn)
    words = f"then dry for {hours:g} h" if hours else ""
    then = f"then water {depth(wanted.depth_mm, past.lawn)}" if wanted is not None else ""
    return ", ".join(filter(None, (words, then)))


def _used(past: Past, product: Product) -> Use:
    """The product as it would be put down today."""
    put = Treatment(date=past.date, zones=(past.zone,), product=product.name)
    return Use(product.name, product, product.kind, Dose(product.name), put)


def volume_rate(ml_per_m2: float, lawn: Lawn, gap: str = "") -> str:
    """`1.1floz/k` or `0.35ml/m2`."""
    unit = unit_for(Dimension.VOLUME_RATE, lawn.units)
    return f"{plain(in_unit(ml_per_m2, unit), 3)}{gap}{unit.name}"


def tail(past: Past) -> str:
    """`edge kept` where water is near: the line says that it was."""
    zone = past.lawn.zone(past.zone)
    return "edge kept" if zone is not None and zone.near_water_mm is not None else ""
