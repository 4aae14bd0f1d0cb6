"""A page that is read from top to bottom: rows, the stops among them, and the part that fits the window."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date

from journal.screens.page import Size
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span, Target
from journal.screens.rows import cut, ends, page, text
from journal.screens.view import View
from journal.standing import Standing

CURSOR_MARK = "▸"


@dataclass(slots=True)
class Paper:
    """Rows below a fixed first one. A stop is a row the cursor can stand on; `main` are those that Tab goes to."""

    view: View
    width: int
    rows: list[Row] = field(default_factory=list)
    targets: list[Target] = field(default_factory=list)
    main: list[int] = field(default_factory=list)
    _end: int = -1
    """Last row of what is opened under the cursor."""

    def add(self, row: Sequence[Span] = EMPTY_ROW) -> None:
        """One more row."""
        self.rows.append(tuple(row))

    def heading(self, words: str, row: Sequence[Span] = EMPTY_ROW) -> None:
        """A group's name, with what stands beside it."""
        self.add((Span(" "), Span(words, Ink.TITLE), *row))

    @property
    def here(self) -> bool:
        """Whether the next stop is the one under the cursor."""
        return self.view.row == len(self.targets)

    def stop(self, row: Sequence[Span], target: Target, *, lit: int = 2, main: bool = True) -> bool:
        """A row to stand on. Its first span is the margin; under the cursor that bears the mark and the next `lit`
        spans are reversed. True when it is to be opened.
        """
        here = self.here
        if here:
            marked = [Span(CURSOR_MARK, Ink.CURSOR), *(Span(span.text, Ink.CURSOR) for span in row[1 : 1 + lit])]
            row = (*marked, *row[1 + lit :])
            self._end = len(self.rows)
        at = len(self.rows)
        if main:
            self.main.append(len(self.targets))
        self.targets.append(Target(at, 0, self.width, target.line, target.entry, target.flag))
        self.add(row)
        return here and self.view.open

    def opened(self, rows: Sequence[Row]) -> None:
        """What is shown below the stop under the cursor."""
        self.rows += [tuple(row) for row in rows]
        self._end = len(self.rows) - 1

    @property
    def under(self) -> Target | None:
        """The target the cursor stands on."""
        return self.targets[self.view.row] if 0 <= self.view.row < len(self.targets) else None

    def top(self, room: int) -> int:
        """First row shown, so that the cursor and what it opened can be seen."""
        top = max(0, min(self.view.top, len(self.rows) - room))
        if self.under is not None:
            if self._end >= top + room - 1 and len(self.rows) > room:
                top = min(self._end - room + 2, len(self.rows) - room)
            top = min(top, max(0, self.under.row - (1 if self.view.row else self.under.row)))
        return max(0, top)

    def picture(self, first: Row, size: Size) -> Picture:
        """The first row, then as many of the others as fit; the last one says how many more there are."""
        room = max(0, size.height - 1)
        top = self.top(room)
        shown = list(self.rows[top : top + room])
        below = len(self.rows) - top - room
        if below > 0 and shown:
            shown[-1] = ends(EMPTY_ROW, text(f" +{below + 1} more, Down ", Ink.KEY), size.width)
        targets = tuple(
            Target(target.row - top + 1, target.left, target.right, target.line, target.entry, target.flag)
            for target in self.targets
        )
        rows = page([cut(first, size.width), *shown], size.width, size.height)
        under = targets[self.view.row] if self.under is not None else None
        return Picture(rows, targets, under)


class LastPaper:
    """The paper drawn last: a key is answered from what is on the screen, without building it again."""

    def __init__(self, build: Callable[[Standing, View, Size], Paper]) -> None:
        self._build = build
        self._of: tuple[Standing, View, Size] | None = None
        self._paper = Paper(View(as_of=date.min), 0)

    def __call__(self, standing: Standing, view: View, size: Size) -> Paper:
        """The paper for this standing, view and size."""
        if self._of is None or self._of[0] is not standing or self._of[1:] != (view, size):
            self._paper = self._build(standing, view, size)
            self._of = standing, view, size
        return self._paper


def press(key: str, paper: Paper, view: View, size: Size) -> View | None:
    """The view after a key on such a page, None when the key means nothing here."""
    last, room = len(paper.targets) - 1, max(1, size.height - 1)
    match key:
        case "down" | "up" if last >= 0:
            row = view.row + (1 if key == "down" else -1)
            return view.but(row=max(0, min(last, row)), open=view.open and row in range(last + 1))
        case "home" if last >= 0:
            return view.but(row=0, top=0)
        case "end" if last >= 0:
            return view.but(row=last)
        case "tab" if paper.main:
            return view.but(row=next((stop for stop in paper.main if stop > view.row), paper.main[0]))
        case "shift+tab" if paper.main:
            return view.but(row=next((stop for stop in reversed(paper.main) if stop < view.row), paper.main[-1]))
        case "pagedown" | "pageup":
            way = (room - 1) * (1 if key == "pagedown" else -1)
            if paper.under is None:
                return view.but(top=max(0, min(paper.top(room) + way, len(paper.rows) - room)))
            return view.but(row=_nearest(paper, paper.under.row + way))
        case "space" if view.row >= 0:
            return view.but(open=not view.open)
        case "space" if paper.main:
            return view.but(row=paper.main[0], open=True)
    return None


def _nearest(paper: Paper, row: int) -> int:
    """The stop closest to that row."""
    return min(range(len(paper.targets)), key=lambda stop: abs(paper.targets[stop].row - row))
