"""Feeding an established lawn: when the next one is due, what holds it back, and how much."""

from dataclasses import dataclass, replace
from datetime import date, timedelta

from journal.facts.mixture import nitrogen_cap
from journal.plan.declare import step
from journal.plan.feed_dose import cap_left, dose, last_useful, nitrogen_used, usual_product
from journal.plan.feed_window import MONTHS_LATE_DAYS, MonthWindow, feeding_window, rest_over
from journal.plan.measure import nitrogen
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, ago, said
from journal.plan.step import State
from journal.reckon.feedings import FEEDINGS, FeedingDay, last_feeding, minimum_gap_days, overdue_days, step_days
from journal.reckon.threshold import in_force, in_force_by_slow_share
from journal.record.kinds.intention import Intention
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.season.growth import Window, began, dormant_open, frozen_open, next_start, season
from journal.season.history import Past
from journal.season.local import closed
from journal.season.stand import day_zero, intentions, stand_mix

AHEAD_DAYS = 28
BEST_DAYS = 14
HOT_WEEK, HOT_NEEDED = 7, 5
"""The week's highs are averaged where at least 5 of them are on file: judgment."""


@dataclass(frozen=True, slots=True)
class _Rhythm:
    """When the next feeding opens, is best and late, and why."""

    opens: date
    best: tuple[date, date]
    latest: date
    late_from: date
    why: str


@dataclass(frozen=True, slots=True)
class _Hold:
    """What holds a feeding back, and from when it no longer does (None: nobody can say).

    `outlasts` is added where that comes after the last useful day of the season.
    """

    reason: str
    until: date | None
    outlasts: str = ""


@step("feed", watches=(*STAGE, *FEEDINGS, Sighting, Weather, Intention))
def feed(past: Past) -> Offer | None:
    """Every 6 to 8 weeks of growth or in the months' windows, until the year's nitrogen is used."""
    window = season(past.lawn, past.date)
    if window is None:
        return None
    start = began(past)
    if start is None and not 0 < (window[0] - past.date).days <= AHEAD_DAYS:
        return None
    if start is not None and cap_left(past) < in_force(past.lawn, "feed-overdue", "cap-left"):
        return Offer(
            state=State.DONE, why=f"done for the year: {nitrogen(nitrogen_used(past), past.lawn)} of "
            f"{nitrogen(nitrogen_cap(stand_mix(past)).nitrogen_cap_g_per_m2, past.lawn)}",
        )  # fmt: skip
    last = last_feeding(past)
    if past.lawn.feeding == "months":
        return _by_months(past, last, window)
    return _offered(past, _interval(past, last, max(start or window[0], window[0])), window)


def _interval(past: Past, last: FeedingDay | None, start: date) -> _Rhythm:
    """Counted from the last feeding, from growth start, and from when the book was kept: the latest decides."""
    kept = past.history.kept_since
    usual = timedelta(round(in_force(past.lawn, "feed-overdue", "step-days")))
    late = timedelta(round(in_force(past.lawn, "feed-overdue", "days")))
    rows = [(start + usual, start + late, "none yet this season")]
    if kept is not None:
        rows.append((kept + usual, kept + late, f"none on file since {said(kept, past)}"))
    if last is not None:
        opens, latest = (last.date + timedelta(days(last, past.lawn)) for days in (step_days, overdue_days))
        rows.append((opens, latest, f"fed {ago(last.date, past)}"))
    opens, latest, why = max(rows, key=lambda row: row[0])
    latest = max(opens, *(row[1] for row in rows))
    best = (opens, min(latest, opens + timedelta(BEST_DAYS)))
    return _Rhythm(opens, best, latest, latest + timedelta(1), f"{why}; every 6 to 8 weeks")


def _by_months(past: Past, last: FeedingDay | None, window: Window) -> Offer | None:
    found = feeding_window(past, last, window)
    if found is None:
        return None
    if found.missed:
        why = f"the {found.name} window passed unfed"
        return Offer(state=State.MISSED, earliest=found.first, latest=found.last, why=why)
    return _offered(past, _month_rhythm(past, last, found), window)


def _month_rhythm(past: Past, last: FeedingDay | None, found: MonthWindow) -> _Rhythm:
    opens = found.first
    if last is not None:
        opens = max(opens, last.date + timedelta(minimum_gap_days(last, past.lawn)))
    late_from = date.max if found.optional else found.last - timedelta(MONTHS_LATE_DAYS - 1)
    why = f"{found.name} window, {said(found.first, past)} to {said(found.last, past)}"
    return _Rhythm(
        opens, (opens, max(opens, found.last - timedelta(MONTHS_LATE_DAYS))), max(opens, found.last), late_from,
        why + (", only if the lawn needs it" if found.optional else ""),
    )  # fmt: skip


def _offered(past: Past, rhythm: _Rhythm, window: Window) -> Offer:
    """The feeding with its dose, or what keeps it closed."""
    rhythm, held = _released(past, rhythm)
    holds = [held, *_holds(past, rhythm)] if held else _holds(past, rhythm)
    hold = holds[0] if holds else None
    until = [held.until for held in holds if held.until is not None]
    opens = max([rhythm.opens, *until])
    if max(opens, past.date) > last_useful(past, window):
        return _next_year(past, rhythm, hold, window)
    product = usual_product(past)
    wanted = dose(past, product, max(opens, past.date), window)
    waiting = hold is not None or past.date < opens
    known = hold is None or hold.until is not None
    offer = Offer(
        state=State.WAITING if waiting else (State.LATE if past.date >= rhythm.late_from else State.OPEN),
        earliest=opens if known else None,
        best=(opens, max(opens, rhythm.best[1])) if known else None,
        latest=max(rhythm.latest, opens) if known else None,
        why=rhythm.why,
        waits_for=hold.reason if hold else (f"opens {said(opens, past)}" if waiting else ""),
    )
    if wanted is None:
        lacking = f"{product.name}: its analysis is not entered" if product else "no fertilizer in the shed"
        return replace(offer, amount=lacking)
    if wanted.spread is None:
        return replace(offer, amount=f"{nitrogen(wanted.n_g_per_m2, past.lawn)}: no fertilizer in the shed")
    return replace(offer, spread=wanted.spread, verb=f"feed {wanted.spread.product.name}")


def _next_year(past: Past, rhythm: _Rhythm, hold: _Hold | None, window: Window) -> Offer:
    """No room left before growth ends."""
    start = next_start(past.lawn, window[1])
    opens = start + timedelta(round(in_force(past.lawn, "feed-overdue", "step-days"))) if start else None
    if past.lawn.feeding == "months":
        opens = start
    reason = hold.reason + hold.outlasts if hold else f"growth ends {said(window[1], past)}: next year"
    return Offer(
        state=State.WAITING, earliest=opens, why=rhythm.why,
        waits_for=reason,
    )  # fmt: skip


def _released(past: Past, rhythm: _Rhythm) -> tuple[_Rhythm, _Hold | None]:
    """The rhythm once new grass and summer rest let go, two weeks from there; and which of them still holds."""
    zero = day_zero(past)
    free = zero + timedelta(round(in_force(past.lawn, "feed-overdue", "seeded-days")) + 1) if zero else rhythm.opens
    opens = rest_over(past, max(rhythm.opens, free))
    if opens == rhythm.opens:
        return rhythm, None
    latest = max(rhythm.latest, opens + timedelta(BEST_DAYS))
    later = replace(
        rhythm, opens=opens, best=(opens, max(rhythm.best[1], opens + timedelta(BEST_DAYS))), latest=latest,
        late_from=max(rhythm.late_from, latest + timedelta(1)) if rhythm.late_from != date.max else date.max,
    )  # fmt: skip
    if past.date >= opens:
        return later, None
    if zero and past.date < free:
        day = (free - zero).days
        return later, _Hold(f"new grass to day {day}, {said(free, past)}", opens, "; growth is over by then")
    return later, _Hold(f"not irrigated: no feeding in high summer, from {said(opens, past)}", opens)


def _holds(past: Past, rhythm: _Rhythm) -> list[_Hold]:
    """Everything else that holds the feeding back today or on the day it opens, the weightiest first."""
    found = (_resting(past), _frozen(past), _shut(past, rhythm), _sowing_ahead(past, rhythm), _heat(past))
    return [hold for hold in found if hold is not None]


def _resting(past: Past) -> _Hold | None:
    dormant = dormant_open(past)
    return _Hold(f"dormant since {said(dormant.date, past)}: after `see green`", None) if dormant else None


def _frozen(past: Past) -> _Hold | None:
    seen = frozen_open(past)
    return _Hold(f"{seen.subject} since {said(seen.date, past)}: after `see thawed`", None) if seen else None


def _shut(past: Past, rhythm: _Rhythm) -> _Hold | None:
    """A local rule that closes the day."""
    opens = max(past.date, rhythm.opens)
    free = next((day for day in (opens + timedelta(at) for at in range(367)) if not closed(past.lawn, day)), None)
    if free == opens:
        return None
    return _Hold("closed by the local rule" + (f" to {said(free - timedelta(1), past)}" if free else ""), free)


def _sowing_ahead(past: Past, rhythm: _Rhythm) -> _Hold | None:
    """Shortly before sowing the starter is the feeding: one now would come too close to it."""
    meant = next((one.target for one in intentions(past, "seed") if one.target), None)
    if meant is None:
        return None
    product = usual_product(past)
    gap = in_force_by_slow_share(past.lawn, "feed-too-soon", "days", product.slow if product else None)
    if meant - timedelta(gap) > max(past.date, rhythm.opens) or meant < past.date - timedelta(AHEAD_DAYS):
        return None
    free = meant + timedelta(round(in_force(past.lawn, "feed-overdue", "seeded-days")) + 1)
    return _Hold(f"sowing meant for {said(meant, past)}: starter then", free)


def _heat(past: Past) -> _Hold | None:
    highs = [w.high_c for w in past.lawnwide(Weather).within(HOT_WEEK) if w.high_c is not None]
    if len(highs) < HOT_NEEDED or sum(highs) / len(highs) < in_force(past.lawn, "feed-overdue", "hot-high"):
        return None
    return _Hold("a hot week: wait for cooler days", past.date + timedelta(1))
