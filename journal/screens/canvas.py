"""The one widget that draws: rows of inked text, repainted only where they changed."""

from itertools import groupby

from rich.cells import cell_len
from rich.segment import Segment
from textual.events import Click, MouseScrollDown, MouseScrollUp, Resize
from textual.geometry import Region
from textual.message import Message
from textual.strip import Strip
from textual.widget import Widget

from journal.screens.ink import Palette
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span
from journal.screens.rows import cut


class Canvas(Widget, can_focus=False):
    """Draws what it is shown. Text goes to the terminal as it is: never read as markup, never a control character."""

    ALLOW_SELECT = False

    class Clicked(Message):
        """A press on a cell; `twice` when it is the second in a row."""

        def __init__(self, x: int, y: int, *, twice: bool) -> None:
            super().__init__()
            self.x, self.y, self.twice = x, y, twice

    class Wheeled(Message):
        """The wheel turned: 1 is down."""

        def __init__(self, way: int) -> None:
            super().__init__()
            self.way = way

    class Sized(Message):
        """It has another size now: what it shows has to be made anew."""

    def __init__(self, palette: Palette, ground: str = "", id: str | None = None) -> None:
        super().__init__(id=id)
        self.palette, self.ground = palette, ground
        self.rows: tuple[Row, ...] = ()

    def show(self, rows: tuple[Row, ...]) -> None:
        """Draw these rows; only those that differ from what stands there are sent to the terminal."""
        old, self.rows = self.rows, rows
        width = self.size.width
        for y in range(max(len(old), len(rows))):
            before = old[y] if y < len(old) else EMPTY_ROW
            after = rows[y] if y < len(rows) else EMPTY_ROW
            if before != after:
                self.refresh(Region(0, y, width, 1))

    def render_line(self, y: int) -> Strip:
        """One row, exactly as wide as the widget."""
        width = self.size.width
        row = cut(self.rows[y], width) if y < len(self.rows) else EMPTY_ROW
        segments = [
            Segment("".join(span.text for span in group), self.palette.style(ink, self.ground))
            for ink, group in groupby(row, _ink)
        ]
        room = width - sum(cell_len(segment.text) for segment in segments)
        if room > 0:
            segments.append(Segment(" " * room, self.palette.style(_fill(row), self.ground)))
        return Strip(segments, width)

    def on_resize(self, _event: Resize) -> None:
        """Rows are made for a width."""
        self.post_message(self.Sized())

    def on_click(self, event: Click) -> None:
        """Moves the cursor; never takes focus."""
        event.stop()
        self.post_message(self.Clicked(int(event.x), int(event.y), twice=event.chain > 1))

    def on_mouse_scroll_down(self, event: MouseScrollDown) -> None:
        """Scrolls the page on."""
        event.stop()
        self.post_message(self.Wheeled(1))

    def on_mouse_scroll_up(self, event: MouseScrollUp) -> None:
        """Scrolls the page back."""
        event.stop()
        self.post_message(self.Wheeled(-1))


def _ink(span: Span) -> Ink:
    return span.ink


def _fill(row: Row) -> Ink:
    """A bar runs on to the edge; anything else ends in plain paper."""
    return row[-1].ink if row and row[-1].ink in (Ink.BAR, Ink.AWAY) else Ink.PLAIN
