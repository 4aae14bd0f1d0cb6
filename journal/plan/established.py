"""When new grass counts as lawn."""

from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import (
    STAGE,
    NewStand,
    counted_mowings,
    established_on,
    mown_by_service,
    new_stand,
    said,
    sown_said,
)
from journal.plan.step import State
from journal.reckon.threshold import in_force
from journal.season.growth import season
from journal.season.history import Past
from journal.season.stand import COUNTS_FROM_DAY, NEW_GRASS_MOWINGS, SEEDBED_DAYS

EVERY_DAYS = 7


@step("established", watches=STAGE)
def established(past: Past) -> Offer | None:
    """Day 56 and three mowings: from then on the lawn's usual rhythm."""
    stand = new_stand(past)
    if stand is None:
        return None
    day = stand.on_day(SEEDBED_DAYS)
    done = established_on(past, stand)
    if done is not None:
        return Offer(state=State.DONE, earliest=day, why=f"established {said(done, past)}")
    left = 0 if mown_by_service(past) else max(0, NEW_GRASS_MOWINGS - len(counted_mowings(past, stand)))
    return Offer(
        state=State.WAITING,
        earliest=max(day, past.date, _mown_enough(past, stand, left)),
        why=sown_said(past, stand) + (f", day {stand.age}" if stand.age >= 0 else ""),
        waits_for=_waits_for(past, day, left),
    )


def _mown_enough(past: Past, stand: NewStand, left: int) -> date:
    """When the mowings still wanted can have been done, a week apart and in season."""
    mowings = counted_mowings(past, stand)
    last = mowings[-1] if mowings else stand.on_day(COUNTS_FROM_DAY)
    done = last + timedelta(EVERY_DAYS * left)
    window = season(past.lawn, past.date)
    if not left or window is None or window[0] <= last:
        return done
    first = window[0] + timedelta(round(in_force(past.lawn, "mow-gap", "first-days")))
    return max(done, first + timedelta(EVERY_DAYS * (left - 1)))


def _waits_for(past: Past, day: date, left: int) -> str:
    reasons = [f"day {SEEDBED_DAYS} ({said(day, past)})"] if past.date < day else []
    if left:
        reasons.append(f"{left} more mowing{'s' if left > 1 else ''}")
    return " and ".join(reasons)
