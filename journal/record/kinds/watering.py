"""Watering by hand or sprinkler, and the timer that waters by itself."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import circuits, first_day, last_day, mark, measure, weekdays
from journal.record.unit import Dimension


@entry_kind("watering", Verb("water", "water by hand or sprinkler", "water 20min back", pin="w", bare=True))
@dataclass(frozen=True, slots=True, kw_only=True)
class Watering(Entry):
    """Minutes or depth; neither means a watering of unknown depth; `deep` means wet 4 to 6 inches down."""

    minutes: float | None = measure(Dimension.MINUTES, usual=True, low=0.1, high=1440)
    depth_mm: float | None = measure(Dimension.LENGTH, low=0.1, high=300)
    deep: bool = mark("deep")
    circuits: tuple[tuple[str, float], ...] = circuits()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A stated depth, `deep` or circuit times leave no room for the usual minutes."""
        if values.get("circuits") and values.get("minutes") is not None:
            raise Refusal("minutes", "give the minutes for each circuit, or one number for the zone, not both.")


@entry_kind(
    "schedule",
    Verb("schedule", "what the timer waters", "schedule back 20min mon wed fri 6:00 from 5/15 to 9/30"),
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule(Entry):
    """Waterings that happen by themselves on `weekdays` (0 = Monday; none = every day) between two days, or `off`."""

    minutes: float | None = measure(Dimension.MINUTES, low=0.1, high=1440)
    depth_mm: float | None = measure(Dimension.LENGTH, low=0.1, high=300)
    weekdays: tuple[int, ...] = weekdays()
    since: date | None = first_day("from")
    until: date | None = last_day("to", follows="since")
    off: bool = mark("off")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A schedule says how much, unless it is switched off, and ends after it begins."""
        if not values.get("off") and values.get("minutes") is None and values.get("depth_mm") is None:
            raise Refusal("schedule", "how long does it run? Write it like 20min, or `schedule off`.")
        since, until = values.get("since"), values.get("until")
        if since and until and until < since:
            raise Refusal("to", "the schedule ends before it begins.")
