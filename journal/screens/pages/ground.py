"""Page 5: what the book believes about the lawn, on whose authority, and the line that changes it."""

from dataclasses import dataclass

from journal.screens.page import Size
from journal.screens.paper import LastPaper, Paper, press
from journal.screens.picture import Picture
from journal.screens.title import title_row
from journal.screens.view import View
from journal.standing import Standing


@dataclass(frozen=True, slots=True)
class GroundPage:
    """Place, zones, soil, local rules, house numbers."""

    number: int = 5
    name: str = "ground"
    keys: tuple[tuple[str, str], ...] = (
        ("Up Down", "fact by fact"),
        ("Tab", "the next group; among the house numbers the next family of rules"),
        ("Space", "the fact in full: what it is for, who said it and when, its sources"),
        ("Enter", "the line that changes it, ready to edit"),
        ("Delete", "on a soil test: strike it"),
        ("5", "the next zone with all its facts, then all again"),
    )

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page."""
        about = f"Ground · {view.zone or 'all zones'}"
        return PAPER(standing, view, size).picture(title_row(standing, view, size.width, about), size, view)

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """Walk, open, scroll."""
        return press(key, PAPER(standing, view, size), view, size)


def _build(standing: Standing, view: View, size: Size) -> Paper:
    """Its parts are loaded when it is first looked at: the book opens on another page."""
    from journal.screens.ground.paper import build

    return build(standing, view, size)


PAPER = LastPaper(_build)
PAGE = GroundPage()
