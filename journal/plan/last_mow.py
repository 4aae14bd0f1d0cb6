"""The last cut of the year."""

from datetime import timedelta

from journal.plan.cut import usual_mm
from journal.plan.declare import step
from journal.plan.measure import height
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, mown_by_service, new_stand, said
from journal.plan.step import State
from journal.reckon.cut_height import CUT_HEIGHT, cut_range
from journal.reckon.first_cut import FIRST_CUT, first_cut
from journal.reckon.threshold import in_force
from journal.record.kinds.mowing import Mowing
from journal.season.growth import GROWING, dormant_open, in_growth, season
from journal.season.history import Past

LAST_DAYS = 7
"""The last cut comes in the last week of growth: judgment. Iowa State Univ. Extension mows until it stops."""


@step("last-mow", watches=(*STAGE, *FIRST_CUT, *GROWING, *CUT_HEIGHT))
def last_mow(past: Past) -> Offer | None:
    """Keep cutting until growth ends; the last cut at the usual height or half an inch lower, on which advice differs.

    Half an inch to an inch lower: Univ. of Maryland Extension, Lawn Maintenance Calendar; the same height: Ask
    Extension, question 158965.
    """
    window = season(past.lawn, past.date)
    if window is None or mown_by_service(past) or not in_growth(past) or dormant_open(past):
        return None
    left = (window[1] - past.date).days
    if not 0 <= left < in_force(past.lawn, "mow-height", "late-days"):
        return None
    stand = new_stand(past)
    if stand is not None and first_cut(past, stand.zero) is None:
        return None
    opens = window[1] - timedelta(LAST_DAYS - 1)
    mown = past[Mowing].last
    done = mown is not None and mown.date >= opens
    state = State.DONE if done else State.OPEN if past.date >= opens else State.WAITING
    return Offer(
        state=state, earliest=opens, best=(opens, window[1]), latest=window[1], title="last mow",
        why=f"growth ends about {said(window[1], past)}",
        waits_for=f"the last week of growth, from {said(opens, past)}" if state is State.WAITING else "",
        amount="" if done else _height(past),
    )  # fmt: skip


def _height(past: Past) -> str:
    """`usual 3 in, or 2.5 in as some advise; no leaves left lying`."""
    usual = usual_mm(past)
    lower = max(cut_range(past).low_mm, usual - in_force(past.lawn, "mow-height", "last"))
    either = f", or {height(lower, past.lawn)} as some advise" if lower < usual else ""
    return f"cut as long as it grows, at the usual {height(usual, past.lawn)}{either}; mulch or rake the leaves"
