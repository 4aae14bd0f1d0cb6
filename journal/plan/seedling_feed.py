"""The light feeding of new grass, about a month after sowing."""

from dataclasses import replace
from datetime import timedelta

from journal.plan.declare import step
from journal.plan.feed_barred import barred
from journal.plan.feed_dose import WATER_IN, Ceiling, brought, ceilings, phosphorus_unasked, too_quick
from journal.plan.measure import nitrogen
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, NewStand, new_stand, said, sown_said
from journal.plan.step import State
from journal.reckon.feed_seedling import SEEDLING_FEED, SeedlingFeed, most_for_seedlings, seedling_feed
from journal.reckon.feedings import nitrogen_left, usual_fertilizer
from journal.reckon.threshold import in_force
from journal.record.kinds.soil import SoilTest
from journal.season.history import Past
from journal.season.local import most_n, most_soluble_n

SPRING = "a light feeding in spring instead"
_NOTHING = 1e-9


@step("seedling-feed", watches=(*STAGE, *SEEDLING_FEED, SoilTest))
def seedling(past: Past) -> Offer | None:
    """Half a pound of nitrogen, from day 28 to day 45; given up on day 70, and a week before growth ends."""
    stand = new_stand(past)
    due = seedling_feed(past) if stand is not None and stand.is_news else None
    if stand is None or due is None:
        return None
    best = due.late_from - timedelta(1)
    if due.fed is not None:
        return Offer(state=State.DONE, earliest=due.opens, latest=best, why=f"fed {said(due.fed.date, past)}")
    if past.date > min(due.last, due.useful):
        return _missed(past, stand, due)
    if due.spent:
        return Offer(state=State.DONE, why="the year's nitrogen is used")
    offer = Offer(state=State.WAITING, why=sown_said(past, stand), title="light feed")
    if not due.fits:
        return replace(offer, waits_for=f"growth ends {said(due.growth_ends, past)}: {SPRING}")
    waits = _waits_for(past, due)
    latest = min(max(best, due.opens), due.last, due.useful)
    late = not waits and due.late(past.date)
    offer = replace(
        offer,
        state=State.WAITING if waits else State.LATE if late else State.OPEN,
        why=f"{offer.why}; of use to {said(min(due.last, due.useful), past)}" if late else offer.why,
        earliest=due.opens,
        best=(due.opens, latest),
        latest=latest,
        waits_for=waits,
    )
    return _dosed(past, offer)


def _missed(past: Past, stand: NewStand, due: SeedlingFeed) -> Offer | None:
    """Nothing to miss in a book that was begun only then, and nothing was missed that never had its day."""
    if past.date < due.opens and past.date <= due.last:
        return Offer(
            state=State.WAITING, why=sown_said(past, stand),
            waits_for=f"growth ends {said(due.growth_ends, past)}: {SPRING}", title="light feed",
        )  # fmt: skip
    until = min(due.last, due.useful)
    if due.late_from > until and due.fits:
        return None
    return Offer(
        state=State.MISSED, earliest=due.opens if due.fits else None, latest=until if due.fits else None,
        why=f"{f'not fed by {said(until, past)}' if due.fits else 'no day for it before growth ends'}: {SPRING}",
        title="light feed",
    )  # fmt: skip


def _waits_for(past: Past, due: SeedlingFeed) -> str:
    if past.date < due.opens:
        return f"day {(due.opens - due.zero).days}, {said(due.opens, past)}"
    if due.emerged is None:
        return "seedlings: after `see emerged`"
    return barred(past, due.bar) if due.bar is not None else ""


def _dosed(past: Past, offer: Offer) -> Offer:
    """At most half a pound of nitrogen, and no more soluble than seedlings bear."""
    lawn, product = past.lawn, usual_fertilizer(past)
    most = min(most_n(lawn, most_for_seedlings(past)), nitrogen_left(past))
    if product is None:
        return replace(offer, amount=f"{nitrogen(most, lawn)}: no fertilizer in the shed")
    if not product.nitrogen:
        return replace(offer, amount=f"{product.name}: its analysis is not entered")
    soluble = most_soluble_n(lawn, in_force(lawn, "feed-dose", "most-soluble-new"))
    wanted = min(most, soluble / max(_NOTHING, 1 - (product.slow or 0.0)))
    if lacking := too_quick(lawn, product) or phosphorus_unasked(past, product):
        return replace(offer, amount=lacking)
    gentle = Ceiling(most_for_seedlings(past), f"{nitrogen(most_for_seedlings(past), lawn)} is the most for seedlings")
    found = brought(past, product, wanted, gentle, *ceilings(past, product))
    if found.spread is None:
        return replace(offer, amount=found.lacking)
    return replace(offer, spread=found.spread, verb=f"feed {product.name}", amount=WATER_IN)
