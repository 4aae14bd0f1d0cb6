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

    `line`, `details` and the paper `within` are worked out only where the cursor stands; `beneath` rows give way to
    the details. `holder` is the stop inside which it is shown once that is opened, -1 for one that always is.
    """

    target: Target
    lit: int = 2
    main: bool = False
    line: Callable[[], str] | None = None
    details: Callable[[], Sequence[Row]] | None = None
    beneath: int = 0
    within: "Within | None" = None
    holder: int = -1


@dataclass(frozen=True, slots=True)
class Within:
    """Rows to stand on inside a row that is opened: a target each, on row -1 while hidden, and their own paper.

    The paper is asked for when the row is opened; its stops are those of `targets`, in the same order. `in_full`: what
    the page says in its `brief` row is said there in full.
    """

    targets: tuple[Target, ...]
    paper: Callable[[], "Paper"]
    in_full: bool = False


@dataclass(frozen=True, slots=True)
class Spread:
    """The rows with the cursor among them, and what it opened. Hidden targets have row -1.

    `first` is the row above what is opened, 0 for the first of the page; `end` is the last row that belongs to it.
    """

    rows: Sequence[Row]
    targets: Sequence[Target]
    under: Target | None = None
    first: int = 0
    end: int = -1

    def top(self, view: View, room: int) -> int:
        """First row shown, so that the cursor and what it opened can be seen; the cursor goes before the rest."""
        top = max(0, min(view.top, len(self.rows) - room))
        if self.under is not None:
            if self.end >= top + room - 1 and len(self.rows) > room:
                top = min(self.end - room + 2, len(self.rows) - room)
            top = min(top, self.first)
            top = max(top, min(self.under.row - room + 2, len(self.rows) - room))
        return max(0, top)


@dataclass(slots=True)
class Paper:
    """Rows below a fixed first one, and the stops among them; `main` stops are those that Tab goes to.

    It knows nothing of the cursor: that is laid over it, so that a step of it makes nothing anew. The row `brief` is
    left blank while what it says stands in full inside a row that is opened.
    """

    view: View
    width: int
    rows: list[Row] = field(default_factory=list)
    stops: list[Stop] = field(default_factory=list)
    brief: int = -1

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
        within: Within | None = None,
    ) -> None:
        """A row to stand on; its first span is the margin. `beneath` it stand rows of its own while it is closed.

        `within` takes the place of the details where those have rows to stand on too.
        """
        placed = replace(target, row=len(self.rows), left=0, right=self.width)
        holder = len(self.stops)
        self.stops.append(Stop(placed, lit, main, line, details, len(beneath), within))
        if within is not None:
            self.stops += [Stop(inner, holder=holder) for inner in within.targets]
        self.add(row)
        self.rows += [tuple(under) for under in beneath]

    def shown(self, view: View) -> list[int]:
        """The stops that can be gone to: those inside a row only while that is opened."""
        opened = self.outer(view.row) if view.open else -1
        return [at for at, stop in enumerate(self.stops) if stop.holder < 0 or stop.holder == opened]

    def outer(self, row: int) -> int:
        """The stop itself, or the one that holds it; -1 where there is no cursor."""
        if not 0 <= row < len(self.stops):
            return -1
        holder = self.stops[row].holder
        return row if holder < 0 else holder

    def spread(self, view: View) -> Spread:
        """With the cursor where the view has it."""
        targets = [stop.target for stop in self.stops]
        outer = self.outer(view.row)
        if outer < 0:
            return Spread(self.rows, targets)
        rows, stop = [*self.rows], self.stops[outer]
        at, under, end = outer, stop, stop.target.row
        if view.open and stop.within is not None:
            paper = stop.within.paper()
            if stop.within.in_full and self.brief >= 0:
                rows[self.brief] = EMPTY_ROW
            end = _laid(rows, targets, outer, stop, paper.rows)
            inner = [replace(one.target, row=one.target.row + stop.target.row + 1) for one in paper.stops]
            targets[outer + 1 : outer + 1 + len(stop.within.targets)] = inner
            if view.row > outer:
                at, under = view.row, paper.stops[view.row - outer - 1]
        elif view.open and stop.details is not None:
            end = _laid(rows, targets, outer, stop, stop.details())
        row = rows[targets[at].row]
        margin = Span(CURSOR_MARK, Ink.CURSOR), Span(row[0].text[1:])
        marked = [Span(span.text, Ink.CURSOR) for span in row[1 : 1 + under.lit]]
        rows[targets[at].row] = (*margin, *marked, *row[1 + under.lit :])
        if under.line is not None:
            targets[at] = replace(targets[at], line=under.line())
        return Spread(rows, targets, targets[at], stop.target.row - 1 if outer else 0, end)

    def picture(self, first: Row, size: Size, view: View) -> Picture:
        """The first row, then as many of the others as fit; the last one says how many more there are."""
        spread, room = self.spread(view), max(0, size.height - 1)
        top = spread.top(view, room)
        shown = list(spread.rows[top : top + room])
        below = len(spread.rows) - top - room
        if below > 0 and shown:
            shown[-1] = ends(EMPTY_ROW, text(f" +{below + 1} more, Down ", Ink.KEY), size.width)
        placed = [t if t.row < 0 else replace(t, row=t.row - top + 1) for t in spread.targets]
        rows = page([cut(first, size.width), *shown], size.width, size.height)
        under = None if spread.under is None else placed[view.row if view.open else self.outer(view.row)]
        return Picture(rows, tuple(placed), under)


def _laid(rows: list[Row], targets: list[Target], at: int, stop: Stop, more: Sequence[Row]) -> int:
    """Put what a stop opened in the place of what stood beneath it; returns the last row that belongs to it."""
    first = stop.target.row
    rows[first + 1 : first + 1 + stop.beneath] = [tuple(row) for row in more]
    moved = len(more) - stop.beneath
    later = targets[at + 1 :]
    targets[at + 1 :] = [t if t.row < 0 else replace(t, row=t.row + moved) for t in later]
    return first + len(more)


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
    room = max(1, size.height - 1)
    shown = paper.shown(view)
    at = view.row if view.open else paper.outer(view.row)
    main = [at for at, stop in enumerate(paper.stops) if stop.main]
    match key:
        case "down" | "up" if shown:
            to = (shown.index(at) if at in shown else -1) + (1 if key == "down" else -1)
            inside = 0 <= to < len(shown)
            return view.but(row=shown[max(0, min(len(shown) - 1, to))], open=view.open and inside)
        case "home" if shown:
            return view.but(row=0, top=0)
        case "end" if shown:
            return view.but(row=shown[-1])
        case "tab" if main:
            return view.but(row=next((stop for stop in main if stop > view.row), main[0]))
        case "shift+tab" if main:
            return view.but(row=next((stop for stop in reversed(main) if stop < at), main[-1]))
        case "pagedown" | "pageup":
            way = (room - 1) * (1 if key == "pagedown" else -1)
            spread = paper.spread(view)
            if spread.under is None:
                return _scrolled(spread, view, room, way)
            return view.but(row=_nearest(spread, shown, spread.under.row + way))
        case "wheeldown" | "wheelup":
            return _scrolled(paper.spread(view), view.but(row=-1, open=False), room, 3 if key == "wheeldown" else -3)
        case "space" if at >= 0:
            return view.but(row=paper.outer(at), open=not view.open)
        case "space" if main:
            return view.but(row=main[0], open=True)
    return None


def _scrolled(spread: Spread, view: View, room: int, way: int) -> View:
    """So many rows on, never past the end."""
    return view.but(top=max(0, min(spread.top(view, room) + way, len(spread.rows) - room)))


def _nearest(spread: Spread, shown: Sequence[int], row: int) -> int:
    """The stop closest to that row, of those shown."""
    return min(shown, key=lambda stop: abs(spread.targets[stop].row - row))
