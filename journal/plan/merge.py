"""Zones that share an offer become one step: one amount in all, one line."""

from collections.abc import Iterable
from dataclasses import replace

from journal.plan.measure import mass, mass_rate, rounded_mass
from journal.plan.offer import Offer, Spread
from journal.plan.step import Step, urgency
from journal.reckon.near_water import wants_edge
from journal.record.lawn import Lawn


def merged(name: str, offers: Iterable[tuple[str, Offer]], lawn: Lawn) -> tuple[Step, ...]:
    """Steps of that name from (zone, offer) pairs; equal offers together, in the order in which they came."""
    together: dict[Offer, list[str]] = {}
    for zone, offer in offers:
        together.setdefault(_edged(offer, zone, lawn), []).append(zone)
    return tuple(_step(name, tuple(zones), offer, lawn) for offer, zones in _once(together).items())


def _once(together: dict[Offer, list[str]]) -> dict[Offer, list[str]]:
    """What is done once for the whole lawn is told once: as the zone that is pressed most has it."""
    once = [offer for offer in together if offer.whole_lawn]
    if len(once) < 2:
        return together
    first = min(once, key=lambda offer: urgency(offer.state, offer.latest, offer.earliest))
    zones = [zone for offer in once for zone in together[offer]]
    return {offer: own for offer, own in together.items() if not offer.whole_lawn} | {first: zones}


def _edged(offer: Offer, zone: str, lawn: Lawn) -> Offer:
    """A feeding beside water says that the edge is kept, on the line and in words: without it, it is asked for."""
    if offer.spread is None or not offer.verb.startswith("feed ") or not wants_edge(lawn, zone):
        return offer
    words = "; ".join(filter(None, (offer.amount, "leave out the strip along the water")))
    return replace(offer, amount=words, tail=" ".join(filter(None, (offer.tail, "edge kept"))))


def _step(name: str, zones: tuple[str, ...], offer: Offer, lawn: Lawn) -> Step:
    amount, measure = offer.amount, ""
    if offer.spread is not None:
        amount, measure = _dose(offer.spread, zones, lawn)
        amount = f"{amount}; {offer.amount}" if offer.amount else amount
    words = (offer.verb, measure, "" if offer.whole_lawn else " ".join(zones), offer.tail)
    return Step(
        step=name,
        zones=zones,
        state=offer.state,
        earliest=offer.earliest,
        best=offer.best,
        latest=offer.latest,
        amount=amount,
        line=" ".join(word for word in words if word) if offer.verb else "",
        title=offer.title or name,
        why=offer.why,
        waits_for=offer.waits_for,
        meant=offer.meant,
    )


def _dose(spread: Spread, zones: tuple[str, ...], lawn: Lawn) -> tuple[str, str]:
    """How much in words, and as the line wants it: a total where the areas are known, else a rate."""
    rate = mass_rate(spread.rate_g_per_m2, lawn)
    about = f"{rate}, {spread.notes}" if spread.notes else rate
    area = lawn.area_m2(zones)
    if area is None:
        return f"{spread.product.name} at {about}", mass_rate(spread.rate_g_per_m2, lawn, "")
    total = rounded_mass(spread.rate_g_per_m2 * area, lawn, down=spread.round_down)
    words = f"{mass(total, lawn)} {spread.product.name} ({about}){_bags(spread, area)}"
    return words, mass(total, lawn, "")


def _bags(spread: Spread, area: float) -> str:
    """`, 1.4 bags`: how many of what is sold that is."""
    if not spread.product.bag_g:
        return ""
    bags = spread.rate_g_per_m2 * area / spread.product.bag_g
    count = f"{bags:.1f}" if bags >= 0.1 else f"{bags:.2f}"
    return f", {count} bag" + ("s" if bags > 1 else "")
