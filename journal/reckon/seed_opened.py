"""Whether the soil was opened for a sowing: cored, dethatched, raked, slit or topdressed."""

import math
from datetime import date

from journal.reckon.threshold import in_force
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.seeding import Seeding
from journal.record.lawn import Lawn
from journal.season.history import Past

OPENED: tuple[type[Entry], ...] = (Seeding, Cultivation)
"""What this file looks at."""

COVERS = ("rake", "topdress")
"""What may still be done once the seed is down; a core pulled then would pull it up."""


def opened_before(past: Past, day: date) -> Cultivation | None:
    """The newest that opened the soil on that day or within the two weeks before it, as far as it is known today."""
    first = day.toordinal() - _before_days(past.lawn) + 1
    found = past[Cultivation].between(first, day.toordinal())
    return found[-1] if found else None


def is_open(past: Past, seeding: Seeding) -> bool:
    """Whether the soil was opened for that sowing, or the seed was covered since."""
    if seeding.slit or opened_before(past, seeding.date) is not None:
        return True
    return any(one.what in COVERS for one in past[Cultivation].since(seeding.day))


def _before_days(lawn: Lawn) -> int:
    return math.ceil(in_force(lawn, "seed-unopened", "before-days"))
