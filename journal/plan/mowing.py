"""The weekly cut."""

from dataclasses import replace
from datetime import date, timedelta

from journal.facts.rounding import exceeds
from journal.plan.cut import cut, standing, usual_mm
from journal.plan.declare import step
from journal.plan.first_mow import bagging, leaf_wanted, tail_of_cut
from journal.plan.measure import depth
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, NewStand, ago, established_on, mown_by_service, new_stand, said
from journal.plan.step import State
from journal.reckon.cut_height import CUT_HEIGHT, cut_range
from journal.reckon.cutting import (
    AFTER_DRY_DAYS,
    CUTTING,
    CutDue,
    cut_due,
    dry_spell_ended,
    last_fine_day,
    too_dry_to_grow,
)
from journal.reckon.first_cut import BEST_DAYS, first_cut
from journal.reckon.near_a_cut import NEAR_A_CUT, cut_from
from journal.reckon.threshold import in_force
from journal.record.kinds.mowing import Mowing
from journal.season.growth import Window, began, dormant_open, season, season_at_hand
from journal.season.history import Past
from journal.season.stand import in_seedbed

AHEAD_DAYS = 28
"""In winter the plan looks so far ahead."""

DOWN_DAYS = 2
"""Tall grass comes down in steps of 2 to 4 days: from memory."""


@step("mow", watches=(*STAGE, *CUTTING, *CUT_HEIGHT, *NEAR_A_CUT))
def mow(past: Past) -> Offer | None:
    """Every 7 days while the grass grows; later than the month's gap it is late."""
    if mown_by_service(past) or _before_first_cut(past):
        return None
    window = season(past.lawn, past.date)
    at_hand = season_at_hand(past)
    if window is None or at_hand is None:
        return None
    start = began(past)
    if start is None:
        return _next_spring(past, window[0] if past.date < window[0] else None)
    dormant = dormant_open(past)
    if dormant is not None:
        return Offer(
            state=State.WAITING, why="the lawn rests",
            waits_for=f"dormant since {said(dormant.date, past)}: cut again after `see green`",
        )  # fmt: skip
    if too_dry_to_grow(past):
        days = round(in_force(past.lawn, "mow-gap", "dry-days"))
        little = depth(in_force(past.lawn, "mow-gap", "dry-water"), past.lawn)
        return Offer(
            state=State.WAITING, why=_why(past, cut_due(past, start), start),
            waits_for=f"too dry to grow: under {little} of water in {days} d and not irrigated; cut again after rain",
        )  # fmt: skip
    return _weekly(past, start, at_hand)


def _before_first_cut(past: Past) -> bool:
    """Whether the first cut of a sowing that has begun is still to come."""
    stand = new_stand(past)
    if stand is None or stand.age < 0 or established_on(past, stand) is not None:
        return False
    return first_cut(past, stand.zero) is None and _still_new(past, stand)


def _still_new(past: Past, stand: NewStand) -> bool:
    """A sowing that was never cut stays new grass, but only in a book that was kept since."""
    return in_seedbed(past) or stand.zero >= (past.kept_since(Mowing) or stand.zero)


def _next_spring(past: Past, start: date | None) -> Offer | None:
    """Out of season: the first cut of the year, once it comes into sight."""
    if start is None:
        return None
    opens = start + timedelta(round(in_force(past.lawn, "mow-gap", "first-days")))
    if (opens - past.date).days > AHEAD_DAYS:
        return None
    offer = cut(past, usual_mm(past), None, opens, first=True)
    return Offer(
        state=State.WAITING, earliest=opens, best=(opens, opens + timedelta(BEST_DAYS)), why="first cut of the year",
        waits_for=f"growth, about {said(start, past)}", amount=offer.amount, verb=offer.verb,
    )  # fmt: skip


def _weekly(past: Past, start: date, window: Window) -> Offer | None:
    due = _coming_down(past, cut_due(past, start))
    end = max(window[1], past.date)
    if due.opens > end:
        return None
    latest = last_fine_day(past.lawn, due.since, window[1])
    wet = dry_spell_ended(past)
    latest = latest if wet is None else max(latest, wet + timedelta(AFTER_DRY_DAYS))
    latest = latest if past.date > latest else min(latest, end)
    first = (due.mown is None and due.green is None) or _long_grown(past, due)
    held = cut_from(past)
    opens = due.opens if held is None else max(due.opens, held[0])
    latest = max(latest, opens)
    offer = cut(past, usual_mm(past), standing(past), opens, first=first, tail=tail_of_cut(past, bag=bagging(past)))
    waits = past.date < opens
    return Offer(
        state=State.WAITING if waits else (State.LATE if past.date > latest else State.OPEN),
        earliest=opens,
        best=(opens, max(opens, min(latest, opens + timedelta(2)))),
        latest=latest,
        why=_why(past, due, start),
        waits_for=(leaf_wanted(past) or f"opens {said(due.opens, past)}") if waits else "",
        amount=offer.amount,
        verb=offer.verb,
    )


def _long_grown(past: Past, due: CutDue) -> bool:
    """Whether the last cut is so long ago that nobody knows how tall it stands by now."""
    return due.mown is not None and past.day - due.mown.day > in_force(past.lawn, "mow-one-third", "most-gap")


def _coming_down(past: Past, due: CutDue) -> CutDue:
    """The cut after one that had to leave the grass taller than it should be comes in a few days."""
    mown = due.mown
    if mown is None or mown.height_mm is None or due.green is not None:
        return due
    then = past.history.on(past.zone, mown.date, past.watches)
    if not exceeds(mown.height_mm, cut_range(then).usual_high_mm):
        return due
    return replace(due, opens=min(due.opens, mown.date + timedelta(DOWN_DAYS)))


def _why(past: Past, due: CutDue, start: date) -> str:
    if due.green is not None:
        return f"green again {ago(due.green, past)}"
    if due.mown is None:
        return f"none yet this season, growth since {said(start, past)}"
    return f"mown {ago(due.mown.date, past)}"
