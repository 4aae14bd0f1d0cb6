"""The first cut of new grass, bagging after it, and the weekly cut."""

from datetime import date, timedelta

from journal.facts.mixture import low_end_mm
from journal.facts.rounding import reaches
from journal.plan.declare import step
from journal.plan.measure import depth, height, line_height, line_height_up, line_height_within
from journal.plan.offer import Offer
from journal.plan.stage import (
    STAGE,
    NewStand,
    ago,
    established_on,
    first_cut,
    mown_by_service,
    new_stand,
    said,
    tall_enough,
)
from journal.plan.step import State
from journal.reckon.cut_height import HEIGHT_HOLDS_DAYS, cut_range
from journal.reckon.cutting import (
    AFTER_DRY_DAYS,
    CUTTING,
    CutDue,
    cut_due,
    dry_spell_ended,
    last_fine_day,
    too_dry_to_grow,
)
from journal.reckon.threshold import in_force
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.weather import Weather
from journal.season.growth import Window, began, dormant_open, season, season_at_hand
from journal.season.history import Past
from journal.season.stand import in_seedbed, stand_mix

BAG_DAYS = 28
"""Bag for so long from the first cut: common practice, no source."""

LATE_DAY, LATE_DAY_BLUEGRASS = 42, 56
"""The last good days for the first cut: judgment; 3 weeks are printed, 8 for bluegrass are from memory."""

BEST_DAYS = 7
AHEAD_DAYS = 28
"""In winter the plan looks so far ahead."""


@step("first-mow", watches=(*STAGE, Sighting, Weather))
def first_mow(past: Past) -> Offer | None:
    """Day 28, or 3.5 in measured from day 14 on; bagged, with a sharp blade."""
    stand = new_stand(past)
    if stand is None or mown_by_service(past):
        return None
    cut = first_cut(past, stand)
    if cut is None and established_on(past, stand) is not None:
        return None
    if cut is not None:
        done = Offer(state=State.DONE, earliest=cut.date, title="first mow", why=f"first cut {said(cut.date, past)}")
        return done if stand.is_news else None
    opens, latest = _first_window(past, stand)
    waits = past.date < opens
    measured = past[Height].last if stand.age > 0 else None
    standing = measured if measured is not None and past.day - measured.day < HEIGHT_HOLDS_DAYS else None
    offer = _cut(past, past.lawn.height_mm, standing, opens, bag=True)
    return Offer(
        state=State.WAITING if waits else (State.LATE if past.date > latest else State.OPEN),
        earliest=opens,
        best=(opens, min(latest, opens + timedelta(BEST_DAYS))),
        latest=latest,
        title="first mow",
        why=f"day {stand.age} after sowing, sharp blade" if stand.age >= 0 else "sown dormant",
        waits_for=_first_waits(past, stand, opens) if waits else "",
        amount=offer.amount,
        verb=offer.verb,
    )


def _first_window(past: Past, stand: NewStand) -> tuple[date, date]:
    """First and last good day; carried over to spring when growth ends before it could be cut."""
    lawn = past.lawn
    opens = stand.on_day(round(in_force(lawn, "mow-first-early", "days")))
    measured = tall_enough(past, stand)
    if measured is not None:
        opens = min(opens, measured.date)
    latest = stand.on_day(LATE_DAY_BLUEGRASS if stand.much_bluegrass else LATE_DAY)
    tall = in_force(lawn, "mow-first-early", "tall")
    if measured is not None and (measured.height_mm or 0) >= tall:
        latest = min(latest, measured.date)
    window = season(lawn, past.date)
    sown_in = season(lawn, stand.zero)
    if window is None or sown_in is None:
        return opens, max(opens, latest)
    if opens > sown_in[1] or past.date > sown_in[1]:
        start = window[0] if window[0] > sown_in[1] else (season(lawn, sown_in[1] + timedelta(1)) or window)[0]
        seen = began(past)
        start = min(start, seen) if seen is not None and seen > sown_in[1] else start
        spring = start + timedelta(round(in_force(lawn, "mow-gap", "first-days")))
        return spring, spring + timedelta(BEST_DAYS)
    return opens, max(opens, min(latest, sown_in[1]))


def _first_waits(past: Past, stand: NewStand, opens: date) -> str:
    days = (opens - stand.zero).days
    if days > round(in_force(past.lawn, "mow-first-early", "days")):
        return f"growth, about {said(opens, past)}"
    enough = height(in_force(past.lawn, "mow-first-early", "height"), past.lawn)
    return f"day {days} ({said(opens, past)}), or {enough} measured"


@step("bag", watches=STAGE)
def bag(past: Past) -> Offer | None:
    """Take the clippings away for four weeks from the first cut."""
    stand = new_stand(past)
    cut = first_cut(past, stand) if stand else None
    if cut is None or mown_by_service(past):
        return None
    window = season(past.lawn, cut.date)
    last = cut.date + timedelta(BAG_DAYS - 1)
    last = max(cut.date, min(last, window[1])) if window else last
    over = past.date > last
    if over and stand is not None and not stand.is_news:
        return None
    return Offer(
        state=State.DONE if over else State.OPEN,
        earliest=cut.date,
        latest=last,
        title="bag clippings",
        why=f"first cut {said(cut.date, past)}; bag to {said(last, past)}",
    )


def bagging(past: Past) -> bool:
    """Whether the clippings of the zone are to be bagged on the past's day."""
    stand = new_stand(past)
    cut = first_cut(past, stand) if stand else None
    return cut is not None and (past.date - cut.date).days < BAG_DAYS


@step("mow", watches=(*STAGE, *CUTTING))
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
    return first_cut(past, stand) is None and _still_new(past, stand)


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
    offer = _cut(past, _usual_mm(past), None, opens, bag=False)
    return Offer(
        state=State.WAITING, earliest=opens, best=(opens, opens + timedelta(BEST_DAYS)), why="first cut of the year",
        waits_for=f"growth, about {said(start, past)}", amount=offer.amount, verb=offer.verb,
    )  # fmt: skip


def _weekly(past: Past, start: date, window: Window) -> Offer | None:
    due = cut_due(past, start)
    end = max(window[1], past.date)
    if due.opens > end:
        return None
    latest = last_fine_day(past.lawn, due.since, window[1])
    wet = dry_spell_ended(past)
    latest = latest if wet is None else max(latest, wet + timedelta(AFTER_DRY_DAYS))
    latest = latest if past.date > latest else min(latest, end)
    offer = _cut(past, _usual_mm(past), _standing(past), due.opens, bag=bagging(past))
    waits = past.date < due.opens
    return Offer(
        state=State.WAITING if waits else (State.LATE if past.date > latest else State.OPEN),
        earliest=due.opens,
        best=(due.opens, max(due.opens, min(latest, due.opens + timedelta(2)))),
        latest=latest,
        why=_why(past, due, start),
        waits_for=f"opens {said(due.opens, past)}" if waits else "",
        amount=offer.amount,
        verb=offer.verb,
    )


def _why(past: Past, due: CutDue, start: date) -> str:
    if due.green is not None:
        return f"green again {ago(due.green, past)}"
    if due.mown is None:
        return f"none yet this season, growth since {said(start, past)}"
    return f"mown {ago(due.mown.date, past)}"


def _usual_mm(past: Past) -> float:
    """The height of the last cut, unless it was a scalp before sowing or none is known: then the lawn's own."""
    last = past[Mowing].last
    low = low_end_mm(stand_mix(past))
    if last is None or last.height_mm is None or not reaches(last.height_mm, low):
        return max(past.lawn.height_mm, low)
    return last.height_mm


def _standing(past: Past) -> Height | None:
    """A height measured in the last two days and since the last cut."""
    measured, mown = past[Height].last, past[Mowing].last
    if measured is None or past.day - measured.day >= HEIGHT_HOLDS_DAYS:
        return None
    return None if mown is not None and mown.day >= measured.day else measured


def _cut(past: Past, usual_mm: float, standing: Height | None, opens: date, *, bag: bool) -> Offer:
    """At the usual height, as far as it suits the grass on the day of the cut; never more than a third off."""
    lawn = past.lawn
    day = past.history.on(past.zone, max(past.date, opens), past.watches)
    fits = cut_range(day)
    aim = usual_mm if fits.holds(usual_mm) else min(max(usual_mm, fits.low_mm), fits.high_mm)
    if aim == usual_mm:
        cut, words = line_height(aim, lawn), height(aim, lawn)
    else:
        cut, words = (line_height_within(aim, fits.low_mm, fits.high_mm, lawn, gap) for gap in ("", " "))
    if standing is not None and standing.height_mm is not None:
        least = standing.height_mm * 2 / 3
        if least > aim and not reaches(aim, least):
            cut, spoken_cut = (line_height_up(least, lawn, gap) for gap in ("", " "))
            words = f"{spoken_cut}, no lower: two thirds of the {height(standing.height_mm, lawn)} that stand"
    return Offer(
        state=State.OPEN,
        amount=f"cut at {words}{', bag' if bag else ''}",
        verb=f"mow {cut}{' bag' if bag else ''}",
    )
