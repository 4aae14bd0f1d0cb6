"""When an established zone is to be watered, and how much: from the account of its root zone.

Nothing is watered on frozen ground, before the average last frost, or while a label keeps water off what was sprayed.
"""

import math
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.irrigation import MOST_AT_ONCE_MM
from journal.plan.declare import step
from journal.plan.measure import depth
from journal.plan.offer import Offer
from journal.plan.stage import ago, said
from journal.plan.step import State
from journal.reckon.root_zone import ROOT_ZONE, Balance, balance, tight_mm
from journal.reckon.soaking import Cycles, cycles_on, most_mm
from journal.reckon.threshold import in_force
from journal.reckon.watering import HOLDS, held, water_from
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.record.zone import Zone
from journal.season.growth import GROWING, frozen_open, growing
from journal.season.history import Past
from journal.season.stand import STAND, new_grass
from journal.season.water import water_days

KEEPS_DAYS, KEEPS_NEEDS = 14, 7
"""An owner who kept temperatures on 7 of the last 14 days is told what is lacking to go by them: judgment."""

LONGEST_RUN = 1440
"""Minutes of one entry of watering."""

PAUSE_STEP = 5
"""Pauses are given in steps of so many minutes."""


@step("water", watches=(*STAND, *GROWING, *ROOT_ZONE, *HOLDS))
def water(past: Past) -> Offer | None:
    """On the morning of the day on which half of what the roots can draw will be used; late from three quarters on.

    Late, and not before the average last frost: judgment.
    """
    zone = past.lawn.zone(past.zone)
    if zone is None or not zone.irrigated or not growing(past) or new_grass(past) or frozen_open(past):
        return None
    stands = balance(past)
    if stands.deficit_mm is None or stands.allowed_mm is None or stands.total_mm is None or stands.through is None:
        return _lacking(past, stands.why)
    found = _due(past, zone, _Account(stands.deficit_mm, stands.allowed_mm, stands.total_mm, stands.through), stands)
    return _kept_off(past, found)


def _kept_off(past: Past, offer: Offer) -> Offer:
    """The offer, or in its place the reason for which nothing is watered yet on the day it would open."""
    opens = max(offer.earliest or past.date, past.date)
    keeps = [(day, why) for day, why in held(past) if day > opens]
    if not keeps or offer.earliest is None:
        return offer
    day, why = max(keeps)
    return Offer(
        state=State.WAITING, earliest=day, why=offer.why,
        waits_for=f"{why}; water then, if no rain falls",
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Account:
    """What is missing, may be missing and can be missing, in mm, and the last day whose use is in it."""

    deficit_mm: float
    allowed_mm: float
    total_mm: float
    through: date

    @property
    def tight_mm(self) -> float:
        """From here on it is late."""
        return tight_mm(self.allowed_mm, self.total_mm)

    def spare(self, a_day: float | None, late_after: int) -> timedelta:
        """Whole days, at that use, from what may be missing until it is late: never fewer than until it can be."""
        days = math.floor((self.tight_mm - self.allowed_mm) / a_day) if a_day else 0
        return timedelta(max(days, late_after - 1))


def _lacking(past: Past, why: str) -> Offer | None:
    """What is missing, told only to an owner who keeps temperatures."""
    kept = {seen.day for seen in past.lawnwide(Weather).within(KEEPS_DAYS) if seen.high_c is not None}
    if len(kept) < KEEPS_NEEDS:
        return None
    return Offer(state=State.WAITING, why="by the weather on file", waits_for=why)


def _due(past: Past, zone: Zone, account: _Account, stands: Balance) -> Offer:
    why, a_day = _why(past, stands, account), stands.et_mm_a_day
    if stands.reached is not None:
        return _open(past, zone, account, water_from(past, stands.reached), a_day, why)
    if stands.short is not None and not water_days(past, past.day, past.day):
        return _open(past, zone, account, water_from(past, stands.short), a_day, why)
    if not a_day:
        return Offer(state=State.WAITING, why=why, waits_for="three days of temperatures in the last week")
    tomorrow = past.date + timedelta(1)
    opens = account.through + timedelta(math.ceil((account.allowed_mm - account.deficit_mm) / a_day))
    if water_days(past, past.day, past.day):
        opens = max(opens, tomorrow)
    if opens <= past.date:
        return _open(past, zone, account, past.date, a_day, why)
    more = a_day * ((opens - account.through).days - 1)
    amount, verb = _run(zone, past.lawn, min(account.total_mm, account.deficit_mm + more))
    when = "tomorrow morning" if opens == tomorrow else f"about {said(opens, past)}, in the morning"
    return Offer(
        state=State.WAITING, earliest=opens, best=(opens, opens),
        latest=opens + account.spare(a_day, _late_after(past)), why=why, waits_for=f"{when}, if no rain falls",
        amount=amount, verb=verb,
    )  # fmt: skip


def _open(past: Past, zone: Zone, account: _Account, since: date, a_day: float | None, why: str) -> Offer:
    """To be watered today, since that day."""
    amount, verb = _run(zone, past.lawn, account.deficit_mm)
    late = account.deficit_mm >= account.tight_mm and (past.date - since).days >= _late_after(past)
    latest = since + account.spare(a_day, _late_after(past))
    return Offer(
        state=State.LATE if late else State.OPEN,
        earliest=since,
        best=(since, since),
        latest=min(latest, past.date - timedelta(1)) if late else max(latest, past.date),
        why=f"{verb.removeprefix('water ').replace('min', ' min')}: {why}" if verb.endswith("min") else why,
        amount=amount,
        verb=verb,
    )


def _late_after(past: Past) -> int:
    return round(in_force(past.lawn, "water-deficit", "days"))


def _why(past: Past, stands: Balance, account: _Account) -> str:
    """`0.31 in used (estimated with California's figures), 0.45 in allowed; soaked 5 d ago, Wed 1 Jul`."""
    used, allowed = depth(account.deficit_mm, past.lawn), depth(account.allowed_mm, past.lawn)
    from_day = ago(stands.since or past.date, past)
    since = f"taken as full when growth began {from_day} (judgment)" if stands.assumed else f"soaked {from_day}"
    return f"{used} used (estimated with California's figures), {allowed} allowed; {since}"


def _run(zone: Zone, lawn: Lawn, mm: float) -> tuple[str, str]:
    """How long, in words and as the line wants it; the depth alone where no rate is known."""
    wanted = min(mm, MOST_AT_ONCE_MM)
    rates = [(circuit.name, circuit.rate_mm_h) for circuit in zone.circuits]
    if not rates and zone.rate_mm_h:
        rates = [("", zone.rate_mm_h)]
    put_down = min([wanted, *(most_mm(zone.soil, zone.slope, rate) for _, rate in rates)])
    words = depth(put_down, lawn)
    runs = [(name, cycles_on(zone.soil, zone.slope, put_down, rate)) for name, rate in rates]
    if not runs or max(found.minutes for _, found in runs) > LONGEST_RUN:
        return words, f"water {words.replace(' ', '')}"
    line = " ".join(f"{name} {_minutes(found)}min".strip() for name, found in runs)
    each = ", ".join(f"{name} {_spoken(found)}".strip() for name, found in runs)
    split = any(found.count > 1 for _, found in runs)
    if put_down < wanted:
        each, words = f"{each} today, the rest on other mornings", f"{words} of {depth(wanted, lawn)}"
    return f"{each} ({words}{'; soil intake from memory' if split else ''})", f"water {line}"


def _minutes(found: Cycles) -> int:
    return found.count * max(1, round(found.run_min))


def _spoken(found: Cycles) -> str:
    """`22 min`, or `3 cycles of 8 min, 35 min apart` where the soil takes it up more slowly."""
    if found.count == 1:
        return f"{_minutes(found)} min"
    apart = math.ceil(found.pause_min / PAUSE_STEP - 1e-9) * PAUSE_STEP
    run = max(1, round(found.run_min))
    return f"{found.count} cycles of {run} min, {apart} min apart"
