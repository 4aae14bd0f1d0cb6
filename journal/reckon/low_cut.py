"""A low cut that is advised: before sowing or dethatching, so that the seed meets the soil."""

from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.season.history import Past
from journal.season.stand import intentions

LOW_CUT: tuple[type[Entry], ...] = (Seeding, Cultivation, Intention)
"""What this file looks at, besides the cut."""


def advised_low(past: Past, mowing: Mowing) -> bool:
    """Whether sowing, an intended sowing or dethatching followed the cut within the days before seeding."""
    last = mowing.day + days_before(past) - 1
    if past[Seeding].between(mowing.day, last):
        return True
    if any(c.what == "dethatch" for c in past[Cultivation].between(mowing.day, last)):
        return True
    planned = (i.target.toordinal() for i in intentions(past, "seed") if i.target)
    return any(mowing.day <= day <= last for day in planned)


def days_before(past: Past) -> int:
    """How long before sowing a low cut is advised."""
    return round(in_force(past.lawn, "mow-height", "before-seeding-days"))
