"""One watering that was more than the soil takes up before it runs off."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.irrigation import MOST_CYCLES, SOAK_BASIS
from journal.facts.rounding import exceeds
from journal.facts.soils import INTAKE_BASIS
from journal.reckon.soaking import cycles_on
from journal.record.kinds.watering import Watering
from journal.record.zone import Zone
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import length, on
from journal.season.history import Past

Run = tuple[float, float]
"""Rate in mm/h and minutes."""


@rule(
    "water-runoff",
    levels=(Level.NOTE,),
    watches=(Watering,),
    turns=(after(Watering, "stands-days"),),
    basis=(SOAK_BASIS, INTAKE_BASIS),
)
def water_runoff(past: Past, n: Numbers) -> Finding | None:
    """More water at once than soil and slope take up."""
    stands = n.days("stands-days")
    for watering in reversed(past[Watering].within(stands)):
        then = past.history.lawn(watering.date).zone(past.zone)
        if then is None or not then.soil or watering.spot or watering.spot_m2 is not None:
            continue
        most = [(most, run) for run in _runs(watering, then) if (most := _most_mm(then, run[0])) is not None]
        over = [(rate * minutes / 60, mm) for mm, (rate, minutes) in most if exceeds(rate * minutes / 60, mm)]
        if over:
            came, holds = max(over)
            clears_on = watering.date + timedelta(stands)
            return Finding(
                level=Level.NOTE,
                headline=f"{length(came, past)} at once is more than the soil takes up",
                why=(
                    f"watered {on(watering.date, past)}; {then.soil} {_on(then.slope)}takes about "
                    f"{length(holds, past)} in {MOST_CYCLES} cycles, by figures from memory"
                ),
                do="see whether it ran off; water in short cycles with pauses, the rest on another morning",
                clears=on(clears_on, past),
                clears_on=clears_on,
                evidence=(watering.id,),
            )
    return None


def _on(slope: str) -> str:
    return "" if slope == "none" else f"on a {slope} slope "


def _runs(watering: Watering, zone: Zone) -> Iterator[Run]:
    """Each circuit's run, or the zone's: by minutes, else by the depth at the zone's rate."""
    rates = {circuit.name.casefold(): circuit.rate_mm_h for circuit in zone.circuits}
    if watering.circuits:
        yield from ((rates[name.casefold()], mins) for name, mins in watering.circuits if name.casefold() in rates)
        return
    for rate in rates.values() or ([zone.rate_mm_h] if zone.rate_mm_h else []):
        if watering.depth_mm is not None:
            yield rate, watering.depth_mm / rate * 60
        elif watering.minutes is not None:
            yield rate, watering.minutes


def _most_mm(zone: Zone, rate_mm_h: float) -> float | None:
    """What the cycles of one morning put down without runoff, each rounded to whole minutes; None for any amount."""
    longest = cycles_on(zone.soil, zone.slope, 1.0, rate_mm_h).longest_min
    return None if longest is None else MOST_CYCLES * max(longest, round(longest), 1) / 60 * rate_mm_h
