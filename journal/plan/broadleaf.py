"""The autumn window for broadleaf weeds, where any were seen this season."""

from datetime import date, timedelta

from journal.facts.new_grass import new_grass_wait
from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.plan.weed_product import held, line, product_for, tail
from journal.reckon.broadleaf import broadleaf_age, broadleaf_season, broadleaf_seen, treated_since
from journal.reckon.new_grass import NEW_GRASS, old_enough_on
from journal.reckon.residue import wait_before_seed
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.kinds.watering import Schedule
from journal.record.product import Product
from journal.season.growth import Window, in_season
from journal.season.history import Past
from journal.season.stand import intentions, mix_of, stand_mix

SHOWN_DAYS = 28
BEST_TO = MonthDay(10, 31)
"""Mid-September to late October: Purdue Univ. Turfgrass Science, 2013."""


@step("broadleaf", watches=(*NEW_GRASS, Schedule))
def broadleaf(past: Past) -> Offer | None:
    """In autumn the weed carries it to the root; new grass has to be old enough."""
    found = broadleaf_season(past)
    seen = broadleaf_seen(past, found[0]) if found else None
    if found is None or seen is None:
        return None
    window, opens = found
    late = (past.date - window[1]).days
    if late > round(in_force(past.lawn, "broadleaf-missed", "stands-days")):
        return None
    used = treated_since(past, min(seen.date, opens))
    if used is not None:
        if past.day - used.day >= SHOWN_DAYS:
            return None
        return Offer(state=State.DONE, earliest=used.date, why=f"{used.name} {said(used.date, past)}")
    why = f"{seen.subject} seen {said(seen.date, past)}"
    if late > 0:
        return _missed(past, window, opens, why)
    return _offer(past, window, opens, why)


def _missed(past: Past, window: Window, opens: date, why: str) -> Offer | None:
    then = past.history.on(past.zone, window[1], past.watches)
    if old_enough_on(then, broadleaf_age(then)) is not None:
        return None
    return Offer(state=State.MISSED, earliest=opens, latest=window[1], why=f"{why}; over since {said(window[1], past)}")


def _offer(past: Past, window: Window, opens: date, why: str) -> Offer:
    product = product_for(past, ("weed",))
    verb, spread, amount = line(past, product) if product else ("", None, "a broadleaf product, none in the shed")
    state, earliest, waits_for = _when(past, window, opens, product)
    first = max(opens, earliest or opens)
    best = (first, max(first, min(window[1], in_season(past.lawn, window, BEST_TO))))
    return Offer(
        state=state, earliest=earliest, best=best, latest=window[1], why=why, waits_for=waits_for,
        amount=amount, verb=verb if state is not State.BARRED else "", tail=tail(past) if verb else "",
        spread=spread if state is not State.BARRED else None,
    )  # fmt: skip


def _when(past: Past, window: Window, opens: date, product: Product | None) -> tuple[State, date | None, str]:
    """Seed that is meant goes first; then grass too young, and what the product itself waits for."""
    first = _seed_first(past, max(past.date, opens), product)
    if first:
        return State.WAITING, None, first
    hold = held(past, product) if product else None
    if product is None:
        old = old_enough_on(past, new_grass_wait((), "weed"))
        if old is not None and old > max(past.date, opens):
            return State.WAITING, old, f"new grass: from {said(old, past)}"
    if hold is not None and (hold.until is None or hold.until > max(past.date, opens)):
        if hold.until is not None and hold.until > window[1]:
            return State.BARRED, hold.until, f"{hold.why}: in spring"
        return State.WAITING, hold.until, hold.why
    if past.date < opens:
        return State.WAITING, opens, f"opens {said(opens, past)}"
    return State.OPEN, opens, ""


def _seed_first(past: Past, day: date, product: Product | None) -> str:
    for meant in intentions(past, "seed"):
        mix = mix_of(past.lawn, meant.product) or stand_mix(past)
        wait = wait_before_seed(product.name, past.lawn, mix) if product else None
        days = wait.days if wait is not None else 28
        if meant.target is not None and meant.target < day + timedelta(days):
            return f"the seed meant for {said(meant.target, past)} goes first"
    return ""
