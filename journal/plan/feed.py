"""Feeding an established lawn: when the next one is due, what holds it back, and how much."""

from dataclasses import replace
from datetime import date, timedelta

from journal.facts.feeding import GRACE_DAYS
from journal.facts.rounding import reaches
from journal.plan.declare import step
from journal.plan.feed_dose import WATER_IN, dose
from journal.plan.measure import nitrogen
from journal.plan.offer import Offer
from journal.plan.seed import seed
from journal.plan.stage import STAGE, ago, said
from journal.plan.step import State
from journal.reckon.feed_due import FEED_DUE, Counted, FeedDue, feed_due, feeding_season
from journal.reckon.feed_holds import Held, Hold
from journal.reckon.feed_season import last_useful
from journal.reckon.feedings import (
    least_nitrogen,
    nitrogen_left,
    nitrogen_of_year,
    usual_fertilizer,
    year_cap,
    year_is_fed,
)
from journal.reckon.residue import RESIDUES
from journal.reckon.threshold import in_force
from journal.record.kinds.soil import SoilTest
from journal.season.growth import Window, began, next_start
from journal.season.history import Past
from journal.season.local import closed, local_rules, open_to

AHEAD_DAYS = 28


@step("feed", watches=(*STAGE, *FEED_DUE, *RESIDUES, SoilTest))
def feed(past: Past) -> Offer | None:
    """Every 6 to 8 weeks of growth or in the months' windows, until the year's nitrogen is used."""
    window = feeding_season(past)
    if window is None:
        return None
    grows = began(past) is not None
    if not grows and not 0 < (window[0] - past.date).days <= AHEAD_DAYS:
        return None
    if (grows or window[0].year == past.date.year) and year_is_fed(past):
        return Offer(state=State.DONE, why=_year_is_fed(past))
    due = feed_due(past, window)
    return None if due is None else _offered(past, due, window)


def _year_is_fed(past: Past) -> str:
    """How much of the year's nitrogen is used; and, where some is left, why it is too little."""
    fed, cap = nitrogen_of_year(past, past.date.year), year_cap(past)
    why = f"done for the year: {nitrogen(fed, past.lawn)} of {nitrogen(cap, past.lawn)}"
    product, left = usual_fertilizer(past), nitrogen_left(past)
    least = least_nitrogen(product)
    if product is None or least is None or least <= left or not reaches(left, _least_left(past)):
        return why
    return f"{why}; {product.name} brings {nitrogen(least, past.lawn)} or more by its label"


def _least_left(past: Past) -> float:
    return in_force(past.lawn, "feed-overdue", "cap-left")


def _offered(past: Past, due: FeedDue, window: Window) -> Offer:
    """The feeding with its dose, or what keeps it closed."""
    first = next(iter(due.holds), None)
    opens = max([due.opens, *(hold.until for hold in due.holds if hold.until is not None)])
    if max(opens, past.date) > last_useful(past, window):
        return _next_year(past, due, window)
    if due.window is None and due.passed is not None and not due.behind(past.date):
        passed = due.passed
        why = f"the {passed.name} window passed unfed"
        return Offer(state=State.MISSED, earliest=passed.first, latest=passed.last, why=why)
    waits = due.waits(past.date)
    known = all(hold.until is not None for hold in due.holds)
    spared = opens + timedelta(GRACE_DAYS) if opens > due.opens else opens
    best, latest = (opens, max(spared, due.best[1])), max(due.latest, spared)
    if known and local_rules(past.lawn):
        latest = (
            open_to(max(opens, past.date), latest, lambda day: closed(past.lawn, day)) if latest > opens else latest
        )
        best = (best[0], min(best[1], max(latest, opens)))
    offer = Offer(
        state=State.WAITING if waits else State.LATE if due.late(past.date) else State.OPEN,
        earliest=opens if known else None,
        best=best if known else None,
        latest=latest if known else None,
        why=_why(past, due) + ("" if waits else _or_sow(past)),
        waits_for=_held(past, first, opens) if first else f"opens {said(opens, past)}" if waits else "",
    )
    return _dosed(past, offer, max(opens, past.date), window)


def _or_sow(past: Past) -> str:
    """Where seed may go down too, whichever is done first makes the other wait; sowing first is the better order."""
    sowing = seed.find(past)
    return "; if you mean to sow, sow first: then the starter" if sowing and sowing.state is State.OPEN else ""


def _dosed(past: Past, offer: Offer, opens: date, window: Window) -> Offer:
    product = usual_fertilizer(past)
    wanted = dose(past, product, opens, window)
    if wanted is None:
        lacking = f"{product.name}: its analysis is not entered" if product else "no fertilizer in the shed"
        return replace(offer, amount=lacking)
    if wanted.lacking:
        return replace(offer, amount=wanted.lacking)
    if wanted.spread is None:
        return replace(offer, amount=f"{nitrogen(wanted.n_g_per_m2, past.lawn)}: no fertilizer in the shed")
    return replace(offer, spread=wanted.spread, verb=f"feed {wanted.spread.product.name}", amount=WATER_IN)


def _next_year(past: Past, due: FeedDue, window: Window) -> Offer:
    """No room left before growth ends."""
    start = next_start(past.lawn, window[1])
    opens = start + timedelta(round(in_force(past.lawn, "feed-overdue", "step-days"))) if start else None
    if past.lawn.feeding == "months":
        opens = start
    hold = next(iter(due.holds), None)
    reason = f"growth ends {said(window[1], past)}: next year"
    if hold is not None:
        reason = _held(past, hold, hold.until or past.date)
        reason += "; growth is over by then" if hold.why is Held.SEEDED else ""
    return Offer(state=State.WAITING, earliest=opens, why=_why(past, due), waits_for=reason)


def _why(past: Past, due: FeedDue) -> str:
    if due.counted is Counted.MONTHS:
        window = due.window or due.passed
        if window is None:
            raise AssertionError("by months there is a window")
        only = ", only if the lawn needs it" if window.optional else ""
        return f"{window.name} window, {said(window.first, past)} to {said(window.last, past)}{only}"
    counted = {
        Counted.GROWTH: "none yet this season",
        Counted.BOOK: f"none on file since {said(due.since, past)}",
        Counted.FEEDING: f"fed {ago(due.since, past)}",
    }[due.counted]
    return f"{counted}; every 6 to 8 weeks"


def _held(past: Past, hold: Hold, opens: date) -> str:
    """What holds it, in words."""
    day = said(hold.day, past) if hold.day else ""
    until = said(hold.until, past) if hold.until else ""
    match hold.why:
        case Held.RESTING:
            return f"dormant since {day}: after `see green`"
        case Held.FROZEN:
            return f"frozen since {day}: after `see thawed`"
        case Held.GREEN:
            return f"green again since {day}: let it recover to {until}"
        case Held.SEEDED:
            age = (hold.until - hold.day).days if hold.until and hold.day else 0
            return f"new grass to day {age}, {until}"
        case Held.SUMMER:
            return f"not irrigated: no feeding in high summer, from {said(opens, past)}"
        case Held.CLOSED:
            last = hold.until - timedelta(1) if hold.until else None
            return "closed by the local rule" + (f" to {said(last, past)}" if last else "")
        case Held.SOWING:
            return f"sowing meant for {day}: starter then"
        case Held.HOT:
            return "a hot week: wait for cooler days"
        case Held.HOT_DAY:
            return "a hot day: feed on a cooler one"
        case Held.COLD:
            return "frozen by the weather on file: wait for milder days"
