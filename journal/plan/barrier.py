"""The barrier against crabgrass in spring; seed goes before it."""

from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.plan.weed_product import line, product_for, tail, young
from journal.reckon.barrier import annual_weed_seen, barrier_age, barriers, spring_seed
from journal.reckon.barrier_window import BarrierWindow, barrier_window, counts_from, degree_days, spring_of
from journal.reckon.new_grass import NEW_GRASS, old_enough_on, wait_for
from journal.reckon.residue import wait_before_seed
from journal.reckon.threshold import in_force
from journal.record.kinds.weather import Weather
from journal.record.product import Product
from journal.season.history import Past
from journal.season.stand import intentions, mix_of, stand_mix

SHOWN_DAYS = 28
"""So long one that is done stays in the plan."""

BEST_FROM, BEST_TO = 21, 7
"""Days before the last frost, where no weather tells: judgment."""


@step("barrier", watches=(*NEW_GRASS, Weather))
def barrier(past: Past) -> Offer | None:
    """Once, while crabgrass is about to come up; not where seed is sown, meant or still young."""
    spring = spring_of(past.lawn, past.date)
    window = barrier_window(past) if past.date <= spring[1] else None
    if window is None:
        return None
    done = barriers(past, spring[0].toordinal())
    if done:
        return _done(past, done[-1].name, done[-1].date)
    if not _wanted(past) or past.date >= window.closes + timedelta(_stands(past)):
        return None
    product = product_for(past, ("pre-emergent",))
    barred = _seed_first(past, spring, window, product)
    if barred:
        return Offer(state=State.BARRED, waits_for=barred, why="seed goes before a barrier", latest=_last(window))
    if window.closed:
        return Offer(
            state=State.MISSED, earliest=window.opens, latest=_last(window),
            why=f"its time was to {said(_last(window), past)}",
        )  # fmt: skip
    return _offer(past, window, product)


def _stands(past: Past) -> int:
    return round(in_force(past.lawn, "barrier-missed", "stands-days"))


def _done(past: Past, name: str, day: date) -> Offer | None:
    if (past.date - day).days >= SHOWN_DAYS:
        return None
    return Offer(state=State.DONE, earliest=day, why=f"{name} {said(day, past)}")


def _wanted(past: Past) -> bool:
    """Whether there is a reason for one: the weed was seen, one went down last year, or the shed holds one."""
    first = past.day - round(in_force(past.lawn, "barrier-missed", "weed-days"))
    if annual_weed_seen(past, first, past.day) is not None or barriers(past, first):
        return True
    return any(product.kind == "pre-emergent" for product in past.lawn.products)


def _last(window: BarrierWindow) -> date:
    return window.closes - timedelta(1) if window.closed else window.closes


def _seed_first(past: Past, spring: tuple[date, date], window: BarrierWindow, product: Product | None) -> str:
    """Why there is none this spring; '' where there may be."""
    sowing = spring_seed(past, spring)
    if sowing is not None:
        when = "sown" if sowing <= past.date else "seed meant for"
        return f"{when} {said(sowing, past)}: not this spring"
    old = old_enough_on(past, wait_for(product) if product else barrier_age(past))
    if old is not None and old > max(_last(window), past.date):
        return f"new grass, too young before {said(old, past)}: not this spring"
    day = max(past.date, window.opens, old or past.date)
    for meant in intentions(past, "seed"):
        over = day + timedelta(_keeps_out(past, product, meant.product))
        if meant.target is not None and meant.target < over:
            return f"it would keep seed out to {said(over, past)}, and seed is meant for {said(meant.target, past)}"
    return ""


def _keeps_out(past: Past, product: Product | None, seed: str = "") -> int:
    mix = mix_of(past.lawn, seed) or stand_mix(past)
    wait = wait_before_seed(product.name if product else "unknown", past.lawn, mix)
    return wait.days if wait is not None else 0


def _offer(past: Past, window: BarrierWindow, product: Product | None) -> Offer:
    verb, spread, amount = line(past, product) if product else ("", None, "a barrier, none in the shed")
    old = old_enough_on(past, wait_for(product) if product else barrier_age(past))
    opens = max(window.opens, old) if old else window.opens
    waits = past.date < opens
    best = (window.frost - timedelta(BEST_FROM), window.frost - timedelta(BEST_TO))
    if window.by_weather or best[1] < opens:
        best = (opens, max(opens, window.closes))
    keeps_out = said(max(past.date, opens) + timedelta(_keeps_out(past, product)), past)
    return Offer(
        state=State.WAITING if waits else State.OPEN,
        earliest=opens,
        best=(max(opens, best[0]), best[1]),
        latest=max(opens, window.closes),
        why=f"{_told_by(past, window)}; no seed after it before {keeps_out}",
        waits_for=_waits_for(past, window, product, old) if waits else "",
        amount=amount,
        verb=verb,
        tail=tail(past) if verb else "",
        spread=spread,
    )


def _told_by(past: Past, window: BarrierWindow) -> str:
    warmth = degree_days(past, past.date)
    if window.opened and window.by_weather and (warmth or 0.0) <= in_force(past.lawn, "barrier-past", "from"):
        return "the soil has been warm enough for five days"
    if not window.by_weather or warmth is None:
        return f"an estimate by the last frost, {said(window.frost, past)}"
    most = in_force(past.lawn, "barrier-past", "most")
    since = said(counts_from(past.lawn, past.date), past)
    return f"{warmth:.0f} degree days (F) over 32 F since {since}; over at {most:.0f}"


def _waits_for(past: Past, window: BarrierWindow, product: Product | None, old: date | None) -> str:
    if old is not None and old > window.opens:
        return young(past, product, old) if product else f"new grass: from {said(old, past)}"
    if window.by_weather:
        return f"{in_force(past.lawn, 'barrier-past', 'from'):.0f} degree days, about {said(window.opens, past)}"
    return f"opens about {said(window.opens, past)}"
