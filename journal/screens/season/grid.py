"""Rows of marks: the label, the cells, the number now."""

from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import left, middle
from journal.screens.season.cells import COUNT
from journal.screens.season.layout import LABEL, SHORT_NOW, Layout
from journal.screens.season.mark import Now, Strip
from journal.screens.season.scene import Scene

AS_OF_LINE = "┊"
CURSOR = "▲"


def strip_row(strip: Strip, scene: Scene, plan: Layout, *, cursor: int | None, inner: bool = False) -> Row:
    """One row. `cursor` is the cell it stands on, if it stands in this row; `inner` sets the label one column in.

    The strip is one that the scene keeps.
    """
    if cursor is None:
        return scene.once(("row", id(strip), inner, plan), lambda: _row(strip, scene, plan, None, inner=inner))
    return _row(strip, scene, plan, cursor, inner=inner)


def _row(strip: Strip, scene: Scene, plan: Layout, cursor: int | None, *, inner: bool) -> Row:
    margin = " " if inner else ""
    label = left(margin + middle(strip.label, LABEL - 1 - len(margin)), LABEL - 1) + " "
    spans = [Span(label, _label_ink(lit=cursor is not None, inner=inner))]
    line = scene.now if scene.cells.at(scene.today) is not None else -1
    text, ink = "", Ink.PLAIN
    for cell in range(plan.hidden, COUNT):
        mark = strip.marks[cell]
        drawn, tint = mark.drawn(plan.cell), mark.ink
        if cell == cursor:
            tint = Ink.CURSOR
        elif drawn.isspace():
            drawn, tint = (AS_OF_LINE.ljust(plan.cell), Ink.RULE) if cell == line else (drawn, Ink.PLAIN)
        if tint is not ink and text:
            spans.append(Span(text, ink))
            text = ""
        text, ink = text + drawn, tint
    spans.append(Span(text, ink))
    if plan.now:
        spans.append(Span(now_text(strip.now, plan.now), strip.now.ink))
    return tuple(spans)


def _label_ink(*, lit: bool, inner: bool) -> Ink:
    return Ink.KEY if lit else Ink.DIM if inner else Ink.PLAIN


def now_text(now: Now, width: int) -> str:
    """The number to the right of its four columns, so that numbers stand under each other; words only if whole."""
    if width <= SHORT_NOW:
        return now.narrow.rjust(width)
    long = f" {now.number:>4} {f'{now.unit} {now.words}'.strip()}"
    return (long if len(long) <= width else f" {now.number:>4} {now.unit}").ljust(width)[:width]


def rule_row(plan: Layout) -> Row:
    """A line as wide as the grid."""
    return Span(" " * LABEL), Span("─" * plan.grid, Ink.RULE)


def cursor_row(plan: Layout, cell: int) -> Row:
    """The second mark of the cursor, under its cell; blank where there is none."""
    if cell < plan.hidden:
        return ()
    return Span(" " * plan.column(cell)), Span(CURSOR * plan.cell, Ink.KEY)
