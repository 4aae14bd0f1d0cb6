"""Keeping feet, paws and wheels off fresh seed."""

from datetime import timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import STAGE, ago, established_on, mown_by_service, new_stand, said, sown_said
from journal.plan.step import State
from journal.reckon.first_cut import FIRST_CUT, first_cut, first_window
from journal.reckon.seedbed import patch
from journal.reckon.threshold import in_force
from journal.season.history import Past
from journal.season.stand import SEEDBED_DAYS, STAND, in_seedbed

_WHO = "people, pets and wheels; a string round it helps"


@step("keep-off", watches=(*STAGE, *FIRST_CUT))
def keep_off(past: Past) -> Offer | None:
    """From the sowing to the first cut."""
    stand = new_stand(past)
    if stand is None:
        return None
    if stand.age < 0:
        return Offer(
            state=State.WAITING, earliest=stand.zero, title="keep off",
            why="sown dormant", waits_for=f"growth, about {said(stand.zero, past)}",
        )  # fmt: skip
    cut = first_cut(past, stand.zero)
    window = first_window(past, stand.zero, stand.mix)
    ends = (
        stand.on_day(_first_cut_day(past)) if mown_by_service(past) else max(stand.on_day(SEEDBED_DAYS), window.latest)
    )
    if cut is not None or past.date > ends or established_on(past, stand) is not None:
        over = f"first cut {said(cut.date, past)}" if cut else f"over since {said(ends, past)}"
        done = Offer(state=State.DONE, earliest=stand.zero, title="keep off", why=over)
        return done if stand.is_news else None
    return Offer(
        state=State.OPEN,
        earliest=stand.zero,
        latest=max(min(window.opens, ends), past.date),
        title="keep off",
        why=f"{sown_said(past, stand)}; off it until the first cut",
        amount=_WHO,
    )


@step("keep-off", watches=STAND)
def keep_off_spot(past: Past) -> Offer | None:
    """The same for a spot sown within the zone."""
    spot = patch(past)
    if spot is None or in_seedbed(past):
        return None
    return Offer(
        state=State.OPEN,
        earliest=spot.date,
        latest=max(spot.date + timedelta(_first_cut_day(past)), past.date),
        title="keep off spot",
        why=f"spot sown {ago(spot.date, past)}; off it until it is cut, from day {_first_cut_day(past)}",
        amount=_WHO,
    )


def _first_cut_day(past: Past) -> int:
    return round(in_force(past.lawn, "mow-first-early", "days"))
