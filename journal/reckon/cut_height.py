"""How low and how high a lawn may be cut on a day."""

from dataclasses import dataclass

from journal.facts.mixture import high_end_mm
from journal.facts.rounding import exceeds, reaches
from journal.reckon.standing_height import STANDING, two_thirds_mm
from journal.reckon.threshold import in_force
from journal.record.day import MonthDay
from journal.record.entry import Entry
from journal.season.growth import northern_day, season_at_hand
from journal.season.history import Past
from journal.season.stand import STAND, grass_mix, sown, sown_mix

CUT_HEIGHT: tuple[type[Entry], ...] = (*STAND, *STANDING)
"""What this file looks at."""

SUMMER = (MonthDay(6, 1), MonthDay(8, 31))
MOWER_STEP_MM = 6.35
"""A mower is set in steps, of a quarter inch at the most."""


@dataclass(frozen=True, slots=True)
class CutRange:
    """Lowest and highest cut in mm, what moved them in words, and the `mow-height` numbers that decided.

    `usual_high_mm` is the highest of a lawn that is not coming down from a height that got out of hand.
    """

    low_mm: float
    high_mm: float
    usual_high_mm: float
    reasons: tuple[str, ...]
    numbers: tuple[str, ...]

    def holds(self, mm: float) -> bool:
        """Whether that height lies within, but for the rounding of units."""
        return reaches(mm, self.low_mm) and not exceeds(mm, self.high_mm)


def cut_range(past: Past) -> CutRange:
    """The range on the past's day.

    Shade and summer raise the high end by both, the low end by the larger; the last cuts may be lower. The high end
    is the grass's own unless the owner set one, and higher still where more than a third of what stands would go.
    """
    lawn = past.lawn

    def number(name: str) -> float:
        return in_force(lawn, "mow-height", name)

    seeding = sown(past)
    mix = grass_mix(lawn, past.zone) or (sown_mix(lawn, past.zone, seeding) if seeding else {})
    high = number("high") if ("mow-height", "high") in lawn.numbers else max(number("high"), high_end_mm(mix))
    numbers, reasons, raised = ["low", "high"], [], []
    zone = lawn.zone(past.zone)
    if zone is not None and zone.sun == "shade":
        numbers.append("shade")
        reasons.append("shade")
        raised.append(number("shade"))
    if SUMMER[0] <= northern_day(lawn, past.date) <= SUMMER[1]:
        numbers.append("summer")
        reasons.append("summer")
        raised.append(number("summer"))
    low = number("low") + max(raised, default=0.0)
    window = season_at_hand(past)
    if window is not None and 0 <= (window[1] - past.date).days < number("late-days"):
        numbers += ["last", "late-days"]
        reasons.append("last cuts")
        low -= number("last")
    high += sum(raised)
    usual_high, tall = high, two_thirds_mm(past)
    if tall is not None and tall > high:
        reasons.append("a third at a time")
        high = tall + MOWER_STEP_MM
    return CutRange(low, high, usual_high, tuple(reasons), tuple(numbers))
