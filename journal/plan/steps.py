"""The whole plan on one day."""

from datetime import date, timedelta

from journal.plan.aerate import aerate
from journal.plan.barrier import barrier
from journal.plan.blade import sharpen
from journal.plan.broadleaf import broadleaf
from journal.plan.declare import Declared
from journal.plan.established import established
from journal.plan.feed import feed
from journal.plan.first_mow import bag, first_mow
from journal.plan.irrigation import water
from journal.plan.keep_off import keep_off, keep_off_spot
from journal.plan.knock_back import knock_back
from journal.plan.last_mow import last_mow
from journal.plan.merge import merged
from journal.plan.mowing import mow
from journal.plan.photo import photo
from journal.plan.seed import seed
from journal.plan.seedling_feed import seedling
from journal.plan.sign import sign
from journal.plan.soil_test import soil_test
from journal.plan.starter import starter
from journal.plan.step import State, Step, urgency
from journal.plan.water import damp, damp_spot
from journal.season.history import History

PLAN: tuple[Declared, ...] = (
    soil_test, knock_back, aerate, seed, starter, damp, damp_spot, keep_off, keep_off_spot, first_mow, bag, seedling,
    established, sharpen, mow, last_mow, water, feed,
    barrier, broadleaf, sign, photo,
)  # fmt: skip
"""Every step, in the order of a renovation."""


def steps(history: History, as_of: date) -> tuple[Step, ...]:
    """Every step of every zone on that day, zones that share one together; what is lost by waiting comes first."""
    lawn = history.lawn(as_of)
    found: list[Step] = []
    for declared in PLAN:
        offers = [
            (zone, offer)
            for zone in lawn.zone_names
            if (offer := declared.find(history.on(zone, as_of, declared.watches))) is not None
        ]
        found += merged(declared.name, offers, lawn)
    return tuple(sorted(found, key=lambda step: urgency(step.state, step.latest, step.earliest)))


def due(steps: tuple[Step, ...], as_of: date, within_days: int) -> tuple[Step, ...]:
    """Those still to be done that open within so many days of the date; a step that nothing can open is left out.

    Watering that can't be told is there all the same, without a date: the owner has to see what is lacking.
    One that is barred is told too where the owner means to do it within these days: not before is half the answer.
    """
    last = as_of + timedelta(within_days)
    ahead = [step for step in steps if step.state not in (State.DONE, State.MISSED)]
    return tuple(step for step in ahead if _opens_by(step, last) or _barred_by(step, last) or _lacks(step))


def _opens_by(step: Step, last: date) -> bool:
    return step.earliest is not None and step.earliest <= last


def _lacks(step: Step) -> bool:
    return step.step == water.name and step.state is State.WAITING and step.earliest is None


def _barred_by(step: Step, last: date) -> bool:
    return step.state is State.BARRED and step.meant is not None and step.meant <= last
