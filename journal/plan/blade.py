"""When the mower's blade is to be sharpened."""

import math
from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, mown_by_service, new_stand, said
from journal.plan.step import State
from journal.reckon.blade import BLADE, Wear, sharp_for, wear
from journal.reckon.first_cut import FIRST_CUT, first_cut, first_window
from journal.reckon.threshold import in_force
from journal.season.growth import GROWING, in_growth
from journal.season.history import Past

AHEAD_DAYS = 14
"""So long before the first cut of new grass it is told."""

AHEAD_CUTS = 3
"""So many cuts before it is due it is told."""


@step("sharpen", watches=(*STAGE, *FIRST_CUT, *GROWING, *BLADE))
def sharpen(past: Past) -> Offer | None:
    """After ten hours of mowing, or twelve cuts where no times are kept; and before the first cut of new grass."""
    if mown_by_service(past) or not in_growth(past):
        return None
    return _before_first_cut(past) or _worn(past)


def _before_first_cut(past: Past) -> Offer | None:
    stand = new_stand(past)
    if stand is None or stand.age < 0 or first_cut(past, stand.zero) is not None:
        return None
    window = first_window(past, stand.zero, stand.mix)
    opens = max(window.opens, past.date)
    if window.opens > past.date + timedelta(AHEAD_DAYS) or sharp_for(past, opens):
        return None
    earliest = window.opens - timedelta(AHEAD_DAYS)
    return Offer(
        state=State.OPEN, earliest=earliest, best=(earliest, window.opens), latest=max(window.latest, past.date),
        title="sharpen blade", why=f"before the first cut of new grass, from {said(window.opens, past)}",
        amount="a dull blade pulls seedlings out", verb="sharpen", whole_lawn=True,
    )  # fmt: skip


def _worn(past: Past) -> Offer | None:
    found = wear(past)
    if found is None or found.last is None:
        return None
    if found.share >= 1:
        return Offer(
            state=State.OPEN, earliest=found.worn, title="sharpen blade", why=_since(past, found), verb="sharpen",
            whole_lawn=True,
        )  # fmt: skip
    left = math.ceil((1 - found.share) * found.dates / found.share - 1e-6)
    if left > AHEAD_CUTS:
        return None
    due: date = found.last + timedelta(left * round(in_force(past.lawn, "mow-gap", "step-days")))
    return Offer(
        state=State.WAITING, earliest=max(due, past.date), title="sharpen blade", why=_since(past, found),
        waits_for=f"{left} more cut{'s' if left > 1 else ''}", whole_lawn=True,
    )  # fmt: skip


def _since(past: Past, found: Wear) -> str:
    if found.sharpened is None:
        return f"{found.cuts}, no sharpening logged"
    return f"{found.cuts} since it was sharpened {said(found.sharpened.date, past)}"
