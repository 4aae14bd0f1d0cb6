"""Weeds knocked back before seed, early enough that the seed need not wait."""

from datetime import date, timedelta

from journal.facts.actives import fallback
from journal.facts.mixture import Mixture
from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.plan.weed_product import held, line, product_for, tail
from journal.reckon.broadleaf import treated_since
from journal.reckon.new_grass import NEW_GRASS
from journal.reckon.residue import wait_before_seed
from journal.record.kinds.watering import Schedule
from journal.record.product import Product
from journal.season.history import Past
from journal.season.stand import intentions, mix_of, stand_mix, weed_seen

WEEKS_BEFORE = 28
"""Opens so long before its last day: Univ. of Delaware Cooperative Extension, 2008, wants four weeks of lead."""

BEST_DAYS = 14
COUNTS_DAYS = 56
"""A weed product so long before the last day was the knock-back: judgment."""


@step("knock-back", watches=(*NEW_GRASS, Schedule))
def knock_back(past: Past) -> Offer | None:
    """A weed product so early that its wait is over on the day meant for the seed."""
    seen = weed_seen(past)
    meant = next((m for m in intentions(past, "seed") if m.target is not None and m.target >= past.date), None)
    if seen is None or meant is None or meant.target is None:
        return None
    product = product_for(past, ("weed",))
    latest = meant.target - timedelta(_wait(past, product, mix_of(past.lawn, meant.product) or stand_mix(past)))
    used = treated_since(past, latest - timedelta(COUNTS_DAYS))
    if used is not None:
        return Offer(state=State.DONE, earliest=used.date, why=f"{used.name} {said(used.date, past)}")
    opens = latest - timedelta(WEEKS_BEFORE)
    why = f"{seen.subject} seen {said(seen.date, past)}; seed meant for {said(meant.target, past)}"
    if past.date > latest:
        return Offer(
            state=State.MISSED, earliest=opens, latest=latest, why=f"{why}: it had to be by {said(latest, past)}"
        )
    verb, spread, amount = line(past, product) if product else ("", None, "a weed product, none in the shed")
    state, earliest, waits_for = _when(past, product, opens, latest)
    barred = state is State.BARRED
    return Offer(
        state=state, earliest=earliest, best=(latest - timedelta(BEST_DAYS), latest), latest=latest, why=why,
        waits_for=waits_for, amount=amount, verb="" if barred else verb, tail=tail(past) if verb and not barred else "",
        spread=None if barred else spread,
    )  # fmt: skip


def _wait(past: Past, product: Product | None, mix: Mixture) -> int:
    wait = wait_before_seed(product.name, past.lawn, mix) if product else None
    return wait.days if wait is not None else fallback("weed").seed_wait_days or 0


def _when(past: Past, product: Product | None, opens: date, latest: date) -> tuple[State, date | None, str]:
    hold = held(past, product) if product else None
    if hold is not None and (hold.until is None or hold.until > max(past.date, opens)):
        if hold.until is not None and hold.until > latest:
            return State.BARRED, hold.until, f"{hold.why}: too late before the seed"
        return State.WAITING, hold.until, hold.why
    if past.date < opens:
        return State.WAITING, opens, f"opens {said(opens, past)}"
    return State.OPEN, opens, ""
