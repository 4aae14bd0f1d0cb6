"""Barriers against annual weeds: which uses are one, and what keeps a zone from having one in spring."""

from datetime import date

from journal.facts.active import Use as Purpose
from journal.facts.new_grass import NewGrassWait, new_grass_wait
from journal.reckon.dose import is_spot
from journal.reckon.new_grass import wait_for
from journal.reckon.uses import Use, actives_of, uses
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.product import Product
from journal.season.history import Past
from journal.season.stand import intentions

ANNUAL_WEEDS = ("crabgrass", "goosegrass", "foxtail")
"""What a barrier of spring keeps from coming up."""


def is_barrier(product: Product | None) -> bool:
    """Whether it keeps seed from coming up: by its kind, or by an active that it holds."""
    if product is None:
        return False
    if product.kind == "pre-emergent":
        return True
    return any(one.use is Purpose.PRE_EMERGENT for one in actives_of(product))


def barriers(past: Past, since: int) -> tuple[Use, ...]:
    """The barriers put down on the zone from that day (an ordinal) on, oldest first; spots are none."""
    return tuple(use for use in uses(past, since) if is_barrier(use.product) and not use.spot)


def may_be_barriers(past: Past, since: int) -> tuple[Use, ...]:
    """The same with what nobody knows the name of."""
    return tuple(use for use in uses(past, since) if use.product is None or is_barrier(use.product))


def annual_weed_seen(past: Past, first: int, last: int) -> Sighting | None:
    """The newest sighting of one between two days (ordinals)."""
    found = past[Sighting].picked("annual weeds", _annual).between(first, last)
    return found[-1] if found else None


def _annual(seen: Sighting) -> bool:
    return seen.subject in ANNUAL_WEEDS


def spring_seed(past: Past, spring: tuple[date, date]) -> date | None:
    """The day on which the zone was sown this spring, else is to be; None for neither. Spots don't count."""
    found = [s.date for s in past[Seeding].since(spring[0].toordinal()) if not is_spot(s)]
    meant = [one.target for one in intentions(past, "seed") if one.target is not None]
    return next((day for day in (*found, *meant) if spring[0] <= day <= spring[1]), None)


def barrier_age(past: Past) -> NewGrassWait:
    """How old grass must be for the barrier of the shed that asks least; for an unknown one where there is none."""
    kept = [wait_for(product) for product in past.lawn.products if product.kind == "pre-emergent"]
    return min(kept, key=lambda wait: (wait.days, wait.mowings), default=new_grass_wait((), "pre-emergent"))
