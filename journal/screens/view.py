"""What the user is looking at: one immutable value."""

from dataclasses import dataclass, replace
from datetime import date


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """Page number, the date judged, the zone ('' is all), the cursor, and how far the page is scrolled or opened.

    `today` is the clock's date, for pages that say how far `as_of` lies from it. `row` and `cell` count the page's
    own stops (-1: no cursor). `days` and `years` are the Season page's two switches. `read_only`: nothing can be saved.
    """

    page: int = 1
    as_of: date
    today: date | None = None
    zone: str = ""
    row: int = -1
    cell: int = -1
    top: int = 0
    open: bool = False
    days: bool = False
    years: bool = False
    help: bool = False
    read_only: bool = False

    @property
    def away(self) -> int:
        """Days from today to the date judged: below zero in the past, 0 at home."""
        return (self.as_of - self.today).days if self.today else 0

    def but(self, **changes: object) -> "View":
        """The same view with some things changed."""
        return replace(self, **changes)  # type: ignore[arg-type]
