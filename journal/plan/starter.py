"""Starter fertilizer at sowing."""

from datetime import timedelta

from journal.plan.declare import step
from journal.plan.feed_barred import barred
from journal.plan.feed_dose import Ceiling, FeedDose, brought, ceilings, too_quick
from journal.plan.measure import nitrogen
from journal.plan.offer import Offer, Spread
from journal.plan.stage import STAGE, NewStand, new_stand, said, sown_said
from journal.plan.step import State
from journal.reckon.feed_barred import FEED_BARRED, starter_bar
from journal.reckon.feeding import holds_nitrogen, holds_phosphate, is_starter
from journal.reckon.feedings import fed_since, feeding_days, nitrogen_between
from journal.reckon.new_grass import NEW_GRASS, too_young
from journal.reckon.starter import is_plain_starter, phosphorus_barred
from journal.reckon.threshold import in_force
from journal.record.kinds.feeding import FEEDS, Feeding
from journal.record.kinds.soil import SoilTest
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.history import Past
from journal.season.local import most_n, most_soluble_n, slow_enough
from journal.season.stand import is_dormant

GOOD_DAYS = 7
"""The starter goes down on day 0 to 7: common practice, no source."""


@step("starter", watches=(*STAGE, *NEW_GRASS, *FEED_BARRED, SoilTest))
def starter(past: Past) -> Offer | None:
    """Once, on day 0 to 7; where phosphorus is barred or there enough, plain nitrogen takes its place.

    It waits while nothing grows. Of dormant seed it is counted from growth start, and is never late.
    """
    stand = new_stand(past)
    if stand is None or not stand.is_news:
        return None
    lawn = past.lawn
    before = round(in_force(lawn, "starter-missing", "before-days"))
    plain = phosphorus_barred(past, past.day)
    found = [
        feeding
        for feeding in feeding_days(past, stand.zero.toordinal() - before)
        if feeding.starter or (plain and is_plain_starter(past, feeding))
    ]
    latest, given_up = stand.on_day(GOOD_DAYS), round(in_force(lawn, "starter-missing", "to-day"))
    if found:
        return Offer(
            state=State.DONE, earliest=stand.zero, latest=latest, why=f"starter fed {said(found[0].date, past)}"
        )
    if stand.age > given_up:
        if _before_the_book(past, stand, given_up):
            return None
        return Offer(
            state=State.MISSED, earliest=stand.zero, latest=latest,
            why=f"no starter by day {given_up}, {said(stand.on_day(given_up), past)}",
        )  # fmt: skip
    product = _product(past, plain=plain)
    wanted_dose = starter_dose(past, product) if product else None
    spread = wanted_dose.spread if wanted_dose else None
    bar = starter_bar(past, plain=plain) if stand.age >= 0 else None
    wanted = "a fertilizer without phosphorus" if plain else "a starter"
    return Offer(
        state=State.WAITING if bar else _state(past, stand),
        earliest=stand.zero,
        best=(stand.zero, latest),
        latest=latest,
        why=sown_said(past, stand),
        waits_for=barred(past, bar) if bar else _waits_for(past, stand),
        amount=""
        if spread
        else wanted_dose.lacking
        if wanted_dose
        else f"{wanted}, none in the shed; about {nitrogen(in_force(lawn, 'feed-dose', 'most-soluble-new'), lawn)}",
        verb=f"feed {product.name}" if product and spread else "",
        spread=spread,
    )


def _waits_for(past: Past, stand: NewStand) -> str:
    return f"growth, about {said(stand.zero, past)}" if stand.age < 0 else ""


def _state(past: Past, stand: NewStand) -> State:
    if stand.age < 0:
        return State.WAITING
    if is_dormant(past.lawn, stand.seeding):
        return State.OPEN
    counted_from = max(stand.zero, fed_since(past) or stand.zero)
    return State.LATE if past.date > counted_from + timedelta(GOOD_DAYS) else State.OPEN


def _before_the_book(past: Past, stand: NewStand, days: int) -> bool:
    kept = fed_since(past)
    return kept is not None and stand.on_day(days) < kept


def _product(past: Past, *, plain: bool) -> Product | None:
    """The one used last, else the first in the shed that will do: a starter, or a fertilizer without phosphorus.

    One that is slow enough for the local rule goes first.
    """

    def fits(product: Product | None) -> bool:
        if product is None or product.kind not in FEEDS or not holds_nitrogen(product) or too_young(past, product):
            return False
        if plain:
            return product.kind == "fertilizer" and not holds_phosphate(product, past.lawn)
        return is_starter(product, past.lawn)

    last = past[Feeding].last_where(lambda feeding: fits(past.lawn.product(feeding.product)))
    named = [past.lawn.product(last.product)] if last else []
    labelled = sorted(past.lawn.products, key=lambda product: product.kind != "starter")
    found = [product for product in (*named, *labelled) if product is not None and fits(product)]
    return min(found, key=lambda product: not slow_enough(past.lawn, product), default=None)


def starter_dose(past: Past, product: Product) -> FeedDose:
    """The most that stays gentle on seedlings with what was just fed, within the label's range and the local rule's."""
    lawn = past.lawn
    if not product.nitrogen:
        label = product.rate if product.rate and product.rate.dimension is Dimension.MASS_RATE else None
        if label is None:
            return FeedDose(0.0, None, f"{product.name}: its analysis and rate are not entered")
        return FeedDose(0.0, Spread(product, label.high, "the label's rate"))
    quick = max(1e-9, 1 - (product.slow or 0.0))
    most = most_n(lawn, in_force(lawn, "feed-dose", "most"))
    soluble = most_soluble_n(lawn, in_force(lawn, "feed-dose", "most-soluble-new"))
    gentle = min(most, soluble / quick)
    if barred := too_quick(lawn, product):
        return FeedDose(gentle, None, barred)
    return brought(past, product, gentle, *ceilings(past, product), *_fed_lately(past, gentle))


def _fed_lately(past: Past, gentle: float) -> tuple[Ceiling, ...]:
    """What went down in the last week counts with the starter."""
    fed = nitrogen_between(past, past.day - GOOD_DAYS, past.day)
    if not fed:
        return ()
    return (Ceiling(gentle - fed, f"{nitrogen(fed, past.lawn)} went down in the last week"),)
