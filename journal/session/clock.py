"""The clock: what `today` means. Everything below takes the date from here."""

from dataclasses import dataclass
from datetime import UTC, date, datetime


@dataclass(frozen=True, slots=True)
class Clock:
    """The machine's own date, or one that was set and stands still."""

    fixed: date | None = None

    def today(self) -> date:
        """The date that a line without one means."""
        return self.fixed or datetime.now().astimezone().date()

    def now(self) -> datetime:
        """The real time, for stamps; never the set date."""
        return datetime.now(UTC)
