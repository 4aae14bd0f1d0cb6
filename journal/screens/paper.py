"""A page that is read from top to bottom: rows, the stops among them, and the part that fits the window."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from journal.screens.page import Size
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span, Target
from journal.screens.rows import cut, ends, page, text
from journal.screens.view import View
from journal.standing import Standing

CURSOR_MARK = "▸"


@dataclass(frozen=True, slots=True)
class Stop:
    """A row the cursor can stand on. Under it the first `lit` spans after the margin are reversed.

    `line` and `details` are worked out only where the cursor stands; `beneath` rows give way to the details.
    """

    target: Target
    lit: int
    main: bool
    line: Callable[[], str] | None
    details: Callable[[], Sequence[Row]] | None
    beneath: int


@dataclass(frozen=True, slots=True)
class Spread:
    """The rows with the cursor among them, and what it opened. `end` is the last row that belongs to it."""

    rows: Sequence[Row]
    targets: Sequence[Target]
    under: Target | None
    end: int

    def top(self, view: View, room: int) -> int:
        """First row shown, so that the cursor and what it opened can be seen."""
        top = max(0, min(view.top, len(self.rows) - room))
        if self.under is not None:
            if self.end >= top + room - 1 and len(self.rows) > room:
                top = min(self.end - room + 2, len(self.rows) - room)
            top = min(top, max(0, self.under.row - (1 if view.row else self.under.row)))
        return max(0, top)


@dataclass(slots=True)
class Paper:
    """Rows below a fixed first one, and the stops among them; `main` stops are those that Tab goes to.

    It knows nothing of the cursor: that is laid over it, so that a step of it makes nothing anew.
    """

    view: View
    width: int
    rows: list[Row] = field(default_factory=list)
    stops: list[Stop] = field(default_factory=list)

    def add(self, row: Sequence[Span] = EMPTY_ROW) -> None:
        """One more row."""
        self.rows.append(tuple(row))

    def heading(self, words: str, row: Sequence[Span] = EMPTY_ROW) -> None:
        """A group's name, with what stands beside it."""
        self.add((Span(" "), Span(words, Ink.TITLE), *row))

    def stop(
        self,
        row: Sequence[Span],
        target: Target,
        *,
        lit: int = 2,
        main: bool = True,
        line: Callable[[], str] | None = None,
        details: Callable[[], Sequence[Row]] | None = None,
        beneath: Sequence[Row] = (),
    ) -> None:
        """A row to stand on; its first span is the margin. `beneath` it stand rows of its own while it is closed."""
        placed = Target(len(self.rows), 0, self.width, target.line, target.entry, target.flag)
        self.stops.append(Stop(placed, lit, main, line, details, len(beneath)))
        self.add(row)
        self.rows += [tuple(under) for under in beneath]

    def spread(self, view: View) -> Spread:
        """With the cursor where the view has it."""
        targets = [stop.target for stop in self.stops]
        if not 0 <= view.row < len(self.stops):
            return Spread(self.rows, targets, None, -1)
        stop, rows = self.stops[view.row], [*self.rows]
        at, row = stop.target.row, rows[stop.target.row]
        marked = [Span(CURSOR_MARK, Ink.CURSOR), *(Span(span.text, Ink.CURSOR) for span in row[1 : 1 + stop.lit])]
        rows[at] = (*marked, *row[1 + stop.lit :])
        end = at
        if view.open and stop.details is not None:
            more = [tuple(under) for under in stop.details()]
            rows[at + 1 : at + 1 + stop.beneath] = more
            end, moved = at + len(more), len(more) - stop.beneath
            targets[view.row + 1 :] = [replace(target, row=target.row + moved) for target in targets[view.row + 1 :]]
        if stop.line is not None:
            targets[view.row] = replace(stop.target, line=stop.line())
        return Spread(rows, targets, targets[view.row], end)

    def picture(self, first: Row, size: Size, view: View) -> Picture:
        """The first row, then as many of the others as fit; the last one says how many more there are."""
        spread, room = self.spread(view), max(0, size.height - 1)
        top = spread.top(view, room)
        shown = list(spread.rows[top : top + room])
        below = len(spread.rows) - top - room
        if below > 0 and shown:
            shown[-1] = ends(EMPTY_ROW, text(f" +{below + 1} more, Down ", Ink.KEY), size.width)
        targets = tuple(replace(target, row=target.row - top + 1) for target in spread.targets)
        rows = page([cut(first, size.width), *shown], size.width, size.height)
        return Picture(rows, targets, targets[view.row] if spread.under is not None else None)


class LastPaper:
    """The paper drawn last: a key is answered from what is on the screen, without building it again."""

    def __init__(self, build: Callable[[Standing, View, Size], Paper]) -> None:
        self._build = build
        self._of: tuple[Standing, View, Size] | None = None
        self._paper = Paper(View(as_of=date.min), 0)

    def __call__(self, standing: Standing, view: View, size: Size) -> Paper:
        """The paper for this standing, view and size, wherever the cursor stands."""
        view = view.but(row=-1, cell=-1, top=0)
        if self._of is None or self._of[0] is not standing or self._of[1:] != (view, size):
            self._paper = self._build(standing, view, size)
            self._of = standing, view, size
        return self._paper


def press(key: str, paper: Paper, view: View, size: Size) -> View | None:
    """The view after a key on such a page, None when the key means nothing here."""
    last, room = len(paper.stops) - 1, max(1, size.height - 1)
    main = [at for at, stop in enumerate(paper.stops) if stop.main]
    match key:
        case "down" | "up" if last >= 0:
            row = view.row + (1 if key == "down" else -1)
            return view.but(row=max(0, min(last, row)), open=view.open and row in range(last + 1))
        case "home" if last >= 0:
            return view.but(row=0, top=0)
        case "end" if last >= 0:
            return view.but(row=last)
        case "tab" if main:
            return view.but(row=next((stop for stop in main if stop > view.row), main[0]))
        case "shift+tab" if main:
            return view.but(row=next((stop for stop in reversed(main) if stop < view.row), main[-1]))
        case "pagedown" | "pageup":
            way = (room - 1) * (1 if key == "pagedown" else -1)
            spread = paper.spread(view)
            if spread.under is None:
                return _scrolled(spread, view, room, way)
            return view.but(row=_nearest(spread, spread.under.row + way))
        case "wheeldown" | "wheelup":
            return _scrolled(paper.spread(view), view.but(row=-1, open=False), room, 3 if key == "wheeldown" else -3)
        case "space" if view.row >= 0:
            return view.but(open=not view.open)
        case "space" if main:
            return view.but(row=main[0], open=True)
    return None


def _scrolled(spread: Spread, view: View, room: int, way: int) -> View:
    """So many rows on, never past the end."""
    return view.but(top=max(0, min(spread.top(view, room) + way, len(spread.rows) - room)))


def _nearest(spread: Spread, row: int) -> int:
    """The stop closest to that row."""
    return min(range(len(spread.targets)), key=lambda stop: abs(spread.targets[stop].row - row))
