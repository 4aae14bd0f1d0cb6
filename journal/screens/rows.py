"""Rows of inked text, measured in terminal cells: cut, padded and set side by side."""

from collections.abc import Iterable, Sequence

from rich.cells import cell_len, set_cell_size

from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, safe

MORE = "…"


def wide(row: Sequence[Span]) -> int:
    """Cells the row takes."""
    return sum(cell_len(span.text) for span in row)


def text(words: str, ink: Ink = Ink.PLAIN) -> Row:
    """A row of one span."""
    return (Span(words, ink),) if words else EMPTY_ROW


def clipped(words: str, width: int) -> str:
    """At most `width` cells; a cut is marked by an ellipsis."""
    words = safe(words)
    if cell_len(words) <= width:
        return words
    return set_cell_size(words, width - 1).rstrip() + MORE if width > 1 else MORE[:width]


def middle(words: str, width: int) -> str:
    """At most `width` cells of a name, cut in the middle: names that begin alike often end otherwise."""
    words = safe(words)
    if cell_len(words) <= width or width < 5:
        return clipped(words, width)
    tail = words[len(words) - (width - 1) // 2 :]
    while cell_len(tail) > (width - 1) // 2:
        tail = tail[1:]
    return set_cell_size(words, width - 1 - cell_len(tail)) + MORE + tail


def left(words: str, width: int) -> str:
    """Exactly `width` cells, text to the left."""
    words = clipped(words, width)
    return words + " " * (width - cell_len(words))


def right(words: str, width: int) -> str:
    """Exactly `width` cells, text to the right."""
    words = clipped(words, width)
    return " " * (width - cell_len(words)) + words


def cut(row: Sequence[Span], width: int) -> Row:
    """The row's first `width` cells; a cut is marked by an ellipsis."""
    if wide(row) <= width:
        return tuple(row)
    kept: list[Span] = []
    room = width
    for span in row:
        size = cell_len(span.text)
        if size >= room:
            kept.append(Span(clipped(span.text, room) if size > room else _marked(span.text, room), span.ink))
            break
        kept.append(span)
        room -= size
    return tuple(span for span in kept if span.text)


def _marked(words: str, width: int) -> str:
    return set_cell_size(words, width - 1) + MORE if width > 1 else MORE[:width]


def filled(row: Sequence[Span], width: int, ink: Ink = Ink.PLAIN) -> Row:
    """Exactly `width` cells: cut or padded with blanks."""
    short = cut(row, width)
    room = width - wide(short)
    return (*short, Span(" " * room, ink)) if room else short


def ends(start: Sequence[Span], end: Sequence[Span], width: int, ink: Ink = Ink.PLAIN) -> Row:
    """`start` at the left and `end` at the right, `end` whole as long as it fits; a blank between them."""
    end = cut(end, width)
    room = width - wide(end)
    return (*filled(start, room - 1, ink), Span(" ", ink), *end) if room > 1 else filled(end, width, ink)


def joined(rows: Iterable[Sequence[Span]], between: str = "  ", ink: Ink = Ink.PLAIN) -> Row:
    """Rows one after another on one line."""
    spans: list[Span] = []
    for row in rows:
        if row and spans:
            spans.append(Span(between, ink))
        spans += row
    return tuple(spans)


def wrapped(words: str, width: int) -> list[str]:
    """Lines of at most `width` cells, broken at blanks; a longer word is cut into pieces."""
    lines: list[str] = []
    line = ""
    for word in safe(words).split():
        while cell_len(word) > max(1, width):
            head = set_cell_size(word, max(1, width)).rstrip() or word[:1]
            if line:
                lines.append(line)
                line = ""
            lines.append(head)
            word = word[len(head) :]
        if line and cell_len(line) + 1 + cell_len(word) > width:
            lines.append(line)
            line = word
        else:
            line = f"{line} {word}" if line else word
    return [*lines, line] if line else lines


def page(rows: Sequence[Row], width: int, height: int) -> tuple[Row, ...]:
    """Exactly `height` rows, each cut to `width`."""
    fit = [cut(row, width) for row in rows[:height]]
    return (*fit, *[EMPTY_ROW] * (height - len(fit)))
