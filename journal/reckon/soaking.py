"""Water put down in short runs with pauses, so that the soil takes it up before it runs off.

Rate above intake: the longest run is 60 x storage / (rate - intake) minutes, the pause lasts until what stands on the
surface has gone in, at least run x (rate - intake) / intake. Advised by Texas A&M Water University, Irrigation: Cycle
and Soak; the arithmetic follows from what rate, intake and storage mean.
"""

import math
from dataclasses import dataclass

from journal.facts.irrigation import MOST_CYCLES
from journal.facts.soils import SOILS, storage_mm


@dataclass(frozen=True, slots=True)
class Cycles:
    """`minutes` in all, in `count` runs of `run_min` with at least `pause_min` between them.

    `longest_min` is the longest run without runoff; None where the soil takes up all that comes.
    """

    minutes: float
    longest_min: float | None
    count: int
    run_min: float
    pause_min: float


def cycles(depth_mm: float, rate_mm_h: float, intake_mm_h: float, storage_mm: float) -> Cycles:
    """The runs that put down that depth. All must be above 0, `storage_mm` only where the rate is above the intake."""
    minutes = depth_mm / rate_mm_h * 60
    over = rate_mm_h - intake_mm_h
    if over <= 0:
        return Cycles(minutes, None, 1, minutes, 0.0)
    longest = 60 * storage_mm / over
    count = max(1, math.ceil(minutes / longest - 1e-9))
    run = minutes / count
    return Cycles(minutes, longest, count, run, run * over / intake_mm_h if count > 1 else 0.0)


def most_mm(soil: str, slope: str, rate_mm_h: float) -> float:
    """The depth in mm that the cycles of one morning put down without runoff; infinite where the soil keeps up."""
    longest = cycles_on(soil, slope, 1.0, rate_mm_h).longest_min
    return math.inf if longest is None else MOST_CYCLES * longest / 60 * rate_mm_h


def cycles_on(soil: str, slope: str, depth_mm: float, rate_mm_h: float) -> Cycles:
    """The same on a soil and slope known by their words, by design values from memory."""
    ground = SOILS[soil]
    return cycles(depth_mm, rate_mm_h, ground.intake_mm_h, storage_mm(ground, slope))
