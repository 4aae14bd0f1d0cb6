"""A soil test every three years, and in time before a sowing that is meant."""

from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.reckon.soil_test import newest_test, speaks_until
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.soil import SoilTest
from journal.season.growth import growth_end
from journal.season.history import Past
from journal.season.stand import intentions

BEFORE_DAYS = 42
"""Six weeks before sowing: the laboratory's answer is there, and lime has begun to work. Judgment."""
EARLY_DAYS = 70
ANSWER_DAYS = 14
"""Nearer to the sowing than that the laboratory's answer comes too late for it: judgment."""
_HOW = "log what the laboratory finds, like soil ph 6.1 p low k 95ppm"


@step("soil-test", watches=(SoilTest, Seeding, Intention))
def soil_test(past: Past) -> Offer | None:
    """Six weeks before a sowing that is meant, and three years after the last one.

    Without a test on file it is offered at once, best before growth ends; it is never late but before a sowing. There
    is no line: its figures are those of a laboratory.
    """
    ends = speaks_until(past)
    if ends is None:
        return None
    newest = newest_test(past)
    opens = ends if newest else past.kept_since(SoilTest) or ends
    target = next((one.target for one in intentions(past, "seed") if one.target), None)
    near = target is not None and past.date > target - timedelta(ANSWER_DAYS)
    if target is not None and not near and (newest is None or ends <= target):
        return _before_sowing(past, newest, opens, target)
    why = f"tested {said(newest.date, past)}; again after three years" if newest else "no soil test on file"
    if past.date < opens:
        return Offer(state=State.WAITING, earliest=opens, why=why, waits_for=f"opens {said(opens, past)}")
    return Offer(state=State.OPEN, earliest=opens, latest=growth_end(past), why=why, amount=_HOW)


def _before_sowing(past: Past, newest: SoilTest | None, opens: date, target: date) -> Offer:
    """From ten weeks before it, or from when the last one no longer speaks; best by six weeks before."""
    latest = target - timedelta(BEFORE_DAYS)
    first = min(opens, target - timedelta(EARLY_DAYS))
    tested = f"tested {said(newest.date, past)}" if newest else "no soil test on file"
    waits = past.date < first
    return Offer(
        state=State.WAITING if waits else State.LATE if past.date > latest else State.OPEN,
        earliest=first,
        best=(max(first, target - timedelta(EARLY_DAYS)), latest),
        latest=latest,
        why=f"{tested}; sowing meant for {said(target, past)}",
        waits_for=f"opens {said(first, past)}" if waits else "",
        amount="" if waits else _HOW,
    )
