"""Keeping a seedbed damp, and weaning it."""

from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.measure import depth
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, NewStand, ago, new_stand, said, sown_said
from journal.plan.step import State
from journal.reckon.seedbed import SEEDBED_WATER, kept_dry, last_damp_day, rained, risen, waterings_wanted
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.watering import Watering
from journal.record.kinds.weather import Weather
from journal.season.growth import in_growth
from journal.season.history import Past
from journal.season.stand import in_seedbed, sown, sown_mix
from journal.season.water import WATER, rain_days, water_days

LIGHT_MM = 2.5
"""A light watering, about 0.1 in: from memory."""

DEEPER_MM = 6.4
"""A watering once the seedlings stand, about 0.25 in: from memory."""

TAPER_EVERY_DAYS = 2
"""2 to 3 times a week once it is nearly tall enough to mow: Renovating lawns in the fall, York News-Times, 2021."""


@step("damp", watches=(*STAGE, *SEEDBED_WATER, Sighting, Weather))
def damp(past: Past) -> Offer | None:
    """Two light waterings a day until the seed is up, then fewer and deeper until the first cut."""
    stand = new_stand(past)
    if stand is None:
        return None
    last = stand.on_day(last_damp_day(past.lawn, stand.mix))
    if stand.age < 0:
        return Offer(
            state=State.WAITING, earliest=stand.zero, latest=last, title="keep damp",
            why="sown dormant", waits_for=f"growth, about {said(stand.zero, past)}", amount=_twice(past),
        )  # fmt: skip
    up = risen(past, stand.zero)
    if past.date <= last and up is None:
        return _today(past, stand, last)
    if in_seedbed(past) and in_growth(past):
        dry = _stays_dry(past)
        if dry is not None:
            return _held(past, *dry, "taper water", f"day {stand.age}, fewer and deeper")
        return _taper(past, stand, last if up is None else min(last, up.date - timedelta(1)))
    if not stand.is_news:
        return None
    return Offer(
        state=State.DONE, earliest=stand.zero, latest=last, title="keep damp",
        why=f"{sown_said(past, stand)}; the damp days are over",
    )  # fmt: skip


@step("damp", watches=(Seeding, *SEEDBED_WATER))
def damp_spot(past: Past) -> Offer | None:
    """The same for a spot sown within the zone: it changes nothing else there."""
    spot = past[Seeding].last_where(lambda seeding: seeding.spot or seeding.spot_m2 is not None)
    if spot is None:
        return None
    sowing = NewStand(spot, spot.date, past.day - spot.day, sown_mix(past.lawn, past.zone, spot))
    last = sowing.on_day(last_damp_day(past.lawn, sowing.mix))
    whole = sown(past)
    if past.date > last or (whole is not None and whole.day >= spot.day):
        return None
    dry = _stays_dry(past)
    if dry is not None:
        return _held(past, *dry, "damp spot", f"spot sown {ago(spot.date, past)}; damp to {said(last, past)}")
    logged = len(past[Watering].between(past.day, past.day)) or len(water_days(past, past.day, past.day))
    needed = waterings_wanted(past, sowing.zero, sowing.mix, past.day)
    done = logged >= needed or _rained(past, past.day)
    tomorrow = past.date + timedelta(1)
    return Offer(
        state=State.WAITING if done else State.OPEN,
        earliest=tomorrow if done else past.date,
        latest=last if done else past.date,
        title="damp spot",
        why=f"spot sown {ago(spot.date, past)}; damp to {said(last, past)}",
        waits_for=_done(past, logged) if done else "",
        amount="twice a day, lightly" if done else _left(logged, needed),
        verb="water spot",
    )


def _left(logged: int, needed: int) -> str:
    """How often it is still wanted today."""
    return "once more today" if logged else ("once today" if needed == 1 else "twice today")


def _rained(past: Past, day: int) -> bool:
    return rained(past.lawn, rain_days(past, day - 1, day), day)


def _stays_dry(past: Past) -> tuple[str, date] | None:
    """The product that no water may wash off today, and the first day on which it may."""
    found = kept_dry(past, past.day).get(past.day)
    return (found[0], date.fromordinal(found[1])) if found else None


def _held(past: Past, name: str, free: date, title: str, why: str) -> Offer:
    return Offer(
        state=State.WAITING, earliest=free, title=title, why=why,
        waits_for=f"{name} is on the leaves and has to stay dry, to {said(free, past)}",
    )  # fmt: skip


def _today(past: Past, stand: NewStand, last: date) -> Offer:
    day = f"day {stand.age} of {(last - stand.zero).days}"
    dry = _stays_dry(past)
    if dry is not None:
        return _held(past, *dry, "keep damp", day)
    needed = waterings_wanted(past, stand.zero, stand.mix, past.day)
    logged = len(water_days(past, past.day, past.day).get(past.day, ()))
    if logged >= needed or _rained(past, past.day):
        tomorrow = past.date + timedelta(1)
        if tomorrow > last:
            return Offer(
                state=State.WAITING, earliest=tomorrow + timedelta(1), title="keep damp", why=day,
                waits_for=f"{_done(past, logged)}; from now on fewer and deeper", amount=_each(past, DEEPER_MM),
                verb=_line(past, DEEPER_MM),
            )  # fmt: skip
        return Offer(
            state=State.WAITING, earliest=tomorrow, best=(tomorrow, tomorrow), latest=last, title="keep damp",
            why=day, waits_for=_done(past, logged), amount=_twice(past), verb=_line(past, LIGHT_MM),
        )  # fmt: skip
    missed = _dry_yesterday(past, stand)
    return Offer(
        state=State.LATE if missed else State.OPEN,
        earliest=past.date,
        best=(past.date, past.date),
        latest=past.date,
        title="keep damp",
        why=f"{day}, no water logged yesterday" if missed else day,
        amount=f"{_left(logged, needed)}, {_each(past, LIGHT_MM)}",
        verb=_line(past, LIGHT_MM),
    )


def _done(past: Past, logged: int) -> str:
    return "rain did it today" if _rained(past, past.day) else f"watered {'twice today' if logged > 1 else 'today'}"


def _dry_yesterday(past: Past, stand: NewStand) -> bool:
    """Whether nothing fell yesterday, in a book that keeps water at all since the sowing."""
    before = past.day - 1
    since = max(stand.zero, past.kept_since(*WATER) or stand.zero).toordinal()
    if before < since:
        return False
    logged = water_days(past, since, past.day)
    if not logged or before in logged or _rained(past, before):
        return False
    return before not in kept_dry(past, before)


def _taper(past: Past, stand: NewStand, damp_until: date) -> Offer:
    """Every second day or so, deeper, until the first cut."""
    watered = water_days(past, damp_until.toordinal(), past.day)
    rained = [day for day, mm in rain_days(past, damp_until.toordinal(), past.day).items() if mm >= DEEPER_MM]
    newest = max([damp_until.toordinal(), *watered, *rained])
    due = date.fromordinal(newest + TAPER_EVERY_DAYS)
    waits = past.date < due
    return Offer(
        state=State.WAITING if waits else State.OPEN,
        earliest=due if waits else past.date,
        latest=past.date if not waits else due,
        title="taper water",
        why=f"day {stand.age}, seedlings are up: fewer and deeper until the first cut",
        waits_for=f"watered {said(date.fromordinal(newest), past)}" if waits and newest in watered else "",
        amount=f"{_each(past, DEEPER_MM)}, every second or third day",
        verb=_line(past, DEEPER_MM),
    )


def _twice(past: Past) -> str:
    return f"twice a day, {_each(past, LIGHT_MM)} each"


def _each(past: Past, mm: float) -> str:
    minutes = _minutes(past, mm)
    return f"{minutes} min ({depth(mm, past.lawn)})" if minutes else depth(mm, past.lawn)


def _minutes(past: Past, mm: float) -> int | None:
    """Minutes at the zone's own rate; None when it is not known or several circuits water it."""
    zone = past.lawn.zone(past.zone)
    if zone is None or zone.circuits or not zone.rate_mm_h:
        return None
    return max(1, round(mm / zone.rate_mm_h * 60))


def _line(past: Past, mm: float) -> str:
    minutes = _minutes(past, mm)
    return f"water {minutes}min" if minutes else "water"
