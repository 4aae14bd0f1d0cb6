"""Page 2: the year (or seven weeks) at a glance, a lane for each kind of work, every value in words beneath."""

from dataclasses import dataclass

from journal.screens.page import Size
from journal.screens.picture import Picture
from journal.screens.season.move import moved
from journal.screens.season.page import draw
from journal.screens.view import View
from journal.standing import Standing


@dataclass(frozen=True, slots=True)
class Season:
    """What was done, what was missed, what lies ahead."""

    number: int = 2
    name: str = "season"
    keys: tuple[tuple[str, str], ...] = (
        ("Left Right", "cell by cell: weeks, or days"),
        ("Up Down", "lane by lane"),
        ("PgUp PgDn", "a month back, on"),
        ("Home End", "first, last cell"),
        ("Tab Shift+Tab", "next, previous cell in which a flag rose"),
        ("Space", "the cell's words in full"),
        ("Enter", "the line of the entry or step under the cursor"),
        ("Delete", "strike the entry under the cursor"),
        ("+", "weeks, or days"),
        ("-", "lanes, or years"),
        ("2", "the next zone, then all again"),
    )

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page."""
        return draw(standing, view, size)

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """Walk, zoom, open."""
        return moved(key, standing, view, size)


PAGE = Season()
