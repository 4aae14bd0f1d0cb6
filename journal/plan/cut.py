"""How low the next cut goes, in words and as the line wants it."""

from datetime import date

from journal.facts.mixture import low_end_mm
from journal.facts.rounding import reaches
from journal.plan.measure import height, line_height, line_height_up, line_height_within
from journal.plan.offer import Offer
from journal.plan.step import State
from journal.reckon.cut_height import cut_range
from journal.reckon.standing_height import HEIGHT_HOLDS_DAYS, raised_mm
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.sighting import Height
from journal.season.history import Past
from journal.season.stand import stand_mix

DOWN = "then down every 2 to 4 days"
"""Steps from tall grass: Purdue Univ., AY-8, 1998, cuts it down over several mowings; the days are from memory."""


def usual_mm(past: Past) -> float:
    """The height of the last cut, unless it was a scalp before sowing or none is known: then the lawn's own."""
    last = past[Mowing].last
    low = low_end_mm(stand_mix(past))
    if last is None or last.height_mm is None or not reaches(last.height_mm, low):
        return max(past.lawn.height_mm, low)
    return last.height_mm


def standing(past: Past) -> Height | None:
    """A height measured in the last two days and since the last cut."""
    measured, mown = past[Height].last, past[Mowing].last
    if measured is None or past.day - measured.day >= HEIGHT_HOLDS_DAYS:
        return None
    return None if mown is not None and mown.day >= measured.day else measured


def cut(
    past: Past, aim_mm: float, measured: Height | None, opens: date, *, first: bool = False, tail: str = ""
) -> Offer:
    """At the usual height, as far as it suits the grass on the day of the cut; never more than a third off.

    A first cut, of which nobody knows how tall the grass stands by then, says what to do where it stands tall.
    """
    lawn = past.lawn
    day = past.history.on(past.zone, max(past.date, opens), past.watches)
    fits = cut_range(day)
    aim = (
        aim_mm
        if fits.holds(aim_mm)
        else min(max(aim_mm, fits.low_mm), fits.high_mm, max(fits.usual_high_mm, fits.low_mm))
    )
    if aim == aim_mm:
        line, words = line_height(aim, lawn), height(aim, lawn)
    else:
        line, words = (line_height_within(aim, fits.low_mm, fits.high_mm, lawn, gap) for gap in ("", " "))
    stands = measured.height_mm if measured is not None else None
    least = raised_mm(day, aim, stands)
    if least is not None:
        line, cut_at = (line_height_up(least, lawn, gap) for gap in ("", " "))
        of = f"the {height(stands, lawn)} that stand" if stands is not None else "what stands by estimate"
        words = f"{cut_at}, no lower: two thirds of {of}, {DOWN}"
    elif first and stands is None:
        words = f"{words}, or at two thirds of the height where it is taller, {DOWN}"
    return Offer(
        state=State.OPEN,
        amount=f"cut at {words}{f', {tail}' if tail else ''}",
        verb=f"mow {line}{f' {tail}' if tail else ''}",
    )
