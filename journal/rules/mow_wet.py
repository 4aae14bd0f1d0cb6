"""Mowing on wet ground."""

from datetime import timedelta

from journal.facts.rounding import exceeds
from journal.facts.sources import published
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.weather import Rain, Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import length, on
from journal.season.history import Past
from journal.season.hours import Within, days_of, within_hours
from journal.season.water import rain_days


@rule(
    "mow-wet",
    levels=(Level.NOTE,),
    watches=(Mowing, Rain, Weather),
    turns=(
        after(Mowing, "stands-days"),
        after(Weather),
        after(Rain),
    ),
    basis=(published("ncsu-lee", "ufl-clay", "osu-lancaster", note="one of them calls it more a matter of footing"),),
)
def mow_wet(past: Past, n: Numbers) -> Finding | None:
    """Mown soon after heavy rain."""
    last = past[Mowing].last
    if last is None or past.day - last.day >= n.days("stands-days"):
        return None
    wet = _rained(past, last, n)
    if wet is None:
        return None
    day, depth, sure = wet
    clears_on = last.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline="mown on wet ground" if sure else "perhaps mown on wet ground",
        why=(
            f"mown {on(last.date, past)}, {length(depth, past)} of rain {on(day, past)}"
            + ("" if sure else "; which came first is not written down")
        ),
        do=(
            "look for ruts and clumps, and wait until the ground bears you"
            if sure
            else "give the cut and the rain a time, like 9:30, if it was mown first; else look for ruts and clumps"
        ),
        clears=f"the next cut, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(last.id,),
        numbers=("rain", "hours"),
    )


def _rained(past: Past, cut: Mowing, n: Numbers) -> tuple[int, float, bool] | None:
    """The day of the rain (an ordinal), its depth in mm, and whether it surely came before the cut."""
    first = cut.day - days_of(n["hours"])
    for day, depth in sorted(rain_days(past, first, cut.day).items(), reverse=True):
        if not exceeds(depth, n["rain"]):
            continue
        gauge = next((r for r in (*past[Rain].between(day, day), *past.lawnwide(Rain).between(day, day))), None)
        read = gauge.time if gauge is not None else None
        found = within_hours(cut.date + timedelta(day - cut.day), read, cut.date, cut.time, n["hours"])
        if found is not Within.NO:
            return day, depth, found is Within.YES
    return None
