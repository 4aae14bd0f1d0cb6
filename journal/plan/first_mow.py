"""The first cut of new grass, and bagging after it."""

from datetime import date, timedelta

from journal.plan.cut import cut as the_cut
from journal.plan.declare import step
from journal.plan.measure import height
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, NewStand, established_on, mown_by_service, new_stand, said
from journal.plan.step import State
from journal.reckon.clippings import CLIPPINGS, Treated, treated_clippings
from journal.reckon.cut_height import CUT_HEIGHT
from journal.reckon.first_cut import BEST_DAYS, FIRST_CUT, first_cut, first_window
from journal.reckon.near_a_cut import NEAR_A_CUT, cut_from
from journal.reckon.standing_height import HEIGHT_HOLDS_DAYS
from journal.reckon.threshold import in_force
from journal.record.kinds.sighting import Height
from journal.season.growth import season
from journal.season.history import Past


@step("first-mow", watches=(*STAGE, *FIRST_CUT, *CUT_HEIGHT, *NEAR_A_CUT))
def first_mow(past: Past) -> Offer | None:
    """Day 28, or 3.5 in measured from day 14 on; bagged, with a sharp blade."""
    stand = new_stand(past)
    if stand is None or mown_by_service(past):
        return None
    cut = first_cut(past, stand.zero)
    if cut is None and established_on(past, stand) is not None:
        return None
    if cut is not None:
        done = Offer(state=State.DONE, earliest=cut.date, title="first mow", why=f"first cut {said(cut.date, past)}")
        return done if stand.is_news else None
    window = first_window(past, stand.zero, stand.mix)
    held = cut_from(past)
    opens = window.opens if held is None else max(window.opens, held[0])
    latest = max(window.latest, opens)
    waits = past.date < opens
    measured = past[Height].last if stand.age > 0 else None
    standing = measured if measured is not None and past.day - measured.day < HEIGHT_HOLDS_DAYS else None
    offer = the_cut(past, past.lawn.height_mm, standing, opens, first=True, tail=tail_of_cut(past, bag=True))
    return Offer(
        state=State.WAITING if waits else (State.LATE if window.late(past.date) else State.OPEN),
        earliest=opens,
        best=(opens, min(latest, opens + timedelta(BEST_DAYS))),
        latest=latest,
        title="first mow",
        why=f"day {stand.age} after sowing, sharp blade" if stand.age >= 0 else "sown dormant",
        waits_for=(leaf_wanted(past) or _first_waits(past, stand, opens)) if waits else "",
        amount=offer.amount,
        verb=offer.verb,
    )


def _first_waits(past: Past, stand: NewStand, opens: date) -> str:
    days = (opens - stand.zero).days
    if days > round(in_force(past.lawn, "mow-first-early", "days")):
        return f"growth, about {said(opens, past)}"
    enough = height(in_force(past.lawn, "mow-first-early", "height"), past.lawn)
    return f"day {days} ({said(opens, past)}), or {enough} measured"


@step("bag", watches=(*STAGE, *FIRST_CUT, *CLIPPINGS))
def bag(past: Past) -> Offer | None:
    """Take the clippings away for four weeks from the first cut."""
    stand = new_stand(past)
    cut = first_cut(past, stand.zero) if stand else None
    if cut is None or mown_by_service(past):
        return None
    window = season(past.lawn, cut.date)
    last = cut.date + timedelta(_bag_days(past) - 1)
    last = max(cut.date, min(last, window[1])) if window else last
    over = past.date > last
    treated = None if over else treated_clippings(past)
    held = treated is not None and treated.stays
    if over and stand is not None and not stand.is_news:
        return None
    return Offer(
        state=State.DONE if over else State.WAITING if held else State.OPEN,
        earliest=cut.date,
        latest=last,
        title="bag clippings",
        why=f"first cut {said(cut.date, past)}; bag to {said(last, past)}{_apart(treated)}",
        waits_for=f"clippings hold {treated.use.name}: they stay on the lawn" if held and treated else "",
    )


def bagging(past: Past) -> bool:
    """Whether the clippings of the zone are to be bagged on the past's day."""
    stand = new_stand(past)
    cut = first_cut(past, stand.zero) if stand else None
    return cut is not None and (past.date - cut.date).days < _bag_days(past)


def tail_of_cut(past: Past, *, bag: bool) -> str:
    """`bag`, unless the clippings hold what was put down against weeds: those stay on the lawn."""
    treated = treated_clippings(past)
    return "return" if treated is not None and treated.stays else "bag" if bag else ""


def _apart(treated: Treated | None) -> str:
    """What is not to become of clippings that hold a starter's active."""
    return f"; {treated.use.name} in them: no compost, no mulch" if treated is not None and treated.starter else ""


def leaf_wanted(past: Past) -> str:
    """What a cut waits for while a weed product wants the leaf; '' where none does."""
    held = cut_from(past)
    if held is None:
        return ""
    return f"{held[1].name} of {said(held[1].date, past)} wants the leaf: cut from {said(held[0], past)}"


def _bag_days(past: Past) -> int:
    return round(in_force(past.lawn, "mow-clippings", "days"))
