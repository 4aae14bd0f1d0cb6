"""From everything that is looked at to the rows of the page and of the foot: pure, and the only place that chooses."""

from dataclasses import dataclass, replace
from datetime import date

from journal.facts.safety import one_row
from journal.line.caution import shows_safety
from journal.line.reading import Reading
from journal.line.words import in_words
from journal.screens.find import find_picture
from journal.screens.foot import candidates_row, empty_row, fits, flag_row, keys_row, reading_row
from journal.screens.help import help_picture, word_help_picture
from journal.screens.page import Page, Size
from journal.screens.pages import pages
from journal.screens.picture import EMPTY_ROW, Ink, Picture, Row, Span
from journal.screens.rows import cut, ends, page, text
from journal.screens.session_like import SessionLike
from journal.screens.setup import Setup, setup_rows
from journal.screens.typed import Typed
from journal.screens.view import View
from journal.standing import Standing

LEAST_WIDTH, LEAST_HEIGHT = 60, 13
"""The least a page can be drawn in; with the three rows at the foot the terminal has 60x16."""
TOO_SMALL = "needs 60x16"


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """What is looked at, what is typed, what was said last."""

    page: Page
    standing: Standing | None
    view: View
    setup: Setup | None
    typed: Typed
    line: str
    cursor: int
    word_help: bool
    word_top: int
    toast: Row
    failure: str
    session: SessionLike

    @property
    def over(self) -> bool:
        """Whether something that follows the typing lies over the page."""
        return self.setup is not None or self.word_help or self.typed.finding

    @property
    def reading(self) -> Reading:
        """What the line means. While another day is looked at, its own date is written out: it is not that day's."""
        reading = self.typed.reading
        if not self.view.away or reading.draft is None:
            return reading
        lawn = self.session.history.lawn(self.session.today)
        return replace(reading, words=in_words(reading.draft, lawn, date.min))

    @property
    def marked(self) -> tuple[int, int]:
        """The word in question on the line; none while it is still being typed."""
        if self.setup is not None:
            return self.setup.marked(self.line)
        problem = self.typed.reading.problem
        if problem is None or not self.line:
            return 0, 0
        typing = problem.end >= len(self.line) and self.cursor >= len(self.line)
        return (0, 0) if typing and not self.typed.refused else (problem.start, problem.end)


def draw_page(seen: Seen, size: Size) -> Picture:
    """The page, or what lies over it."""
    if size.width < LEAST_WIDTH or size.height < LEAST_HEIGHT:
        return Picture(page([text(TOO_SMALL, Ink.STRONG)], size.width, size.height))
    if seen.setup is not None:
        return Picture(setup_rows(seen.setup, size))
    if seen.standing is None:
        return Picture(page([], size.width, size.height))
    if seen.typed.finding:
        return find_picture(seen.line, seen.standing, seen.view, size)
    if seen.word_help:
        view = seen.view.but(top=seen.word_top)
        return word_help_picture(seen.reading, seen.typed.preflight, seen.cursor, seen.standing, view, size)
    if seen.view.help:
        return help_picture(seen.page, seen.standing, seen.view, size)
    return seen.page.draw(seen.standing, seen.view, size)


def draw_foot(seen: Seen, size: Size, room: Size) -> tuple[Row, Row]:
    """The reading and what could come next; on an empty line what was said last, and the keys."""
    width = size.width
    if width < LEAST_WIDTH or room.height < LEAST_HEIGHT:
        return (cut(text(TOO_SMALL, Ink.STRONG), width) if room.height < 1 else EMPTY_ROW), EMPTY_ROW
    first, second = _foot(seen, width)
    return cut(first, width), cut(second, width)


def _foot(seen: Seen, width: int) -> tuple[Row, Row]:
    if seen.setup is not None:
        return _setup_foot(seen.setup, seen.line, width)
    numbers = [(page.number, page.name) for page in pages()]
    if seen.standing is None:
        return EMPTY_ROW, keys_row(numbers, seen.view.page, width)
    if not seen.line:
        return _said_last(seen, width), keys_row(numbers, seen.view.page, width)
    if seen.typed.finding:
        return text("  Up Down choose, Enter takes it, Esc leaves", Ink.DIM), keys_row(numbers, seen.view.page, width)
    typed = seen.typed
    draft = typed.reading.draft
    safety = draft is not None and shows_safety(draft, seen.standing.lawn)
    choosing = safety or typed.refused or typed.taken >= 0 or seen.line.endswith(" ")
    reading = seen.reading
    apart = not choosing and bool(typed.preflight.raised) and not fits(reading, typed.preflight, width)
    first = reading_row(reading, typed.preflight, width, refused=typed.refused, cursor=seen.cursor, apart=apart)
    if seen.failure:
        first = (Span("! ", Ink.LOSS), Span(f"not saved: {seen.failure}", Ink.STRONG))
    if seen.toast:
        return first, seen.toast
    if safety:
        return first, (Span("  "), Span(one_row(seen.standing.lawn.units), Ink.STRONG))
    if apart:
        return first, flag_row(typed.preflight, width)
    return first, candidates_row(typed.completion, typed.taken, seen.line.rpartition(" ")[2], width)


def _said_last(seen: Seen, width: int) -> Row:
    if seen.failure:
        return Span("! ", Ink.LOSS), Span(f"not saved: {seen.failure}", Ink.STRONG)
    if seen.toast:
        return seen.toast
    if seen.view.away:
        way = "what stood then" if seen.view.away < 0 else "what will be due if nothing is done"
        return (Span("  "), *text(f"{way}; 0 or Esc returns to today", Ink.DIM))
    usual = seen.session.read("m").words
    return empty_row(usual, width)


def _setup_foot(setup: Setup, line: str, width: int) -> tuple[Row, Row]:
    if setup.over:
        return text("  making the book", Ink.DIM), EMPTY_ROW
    takes = f"Enter takes: {line.strip() or setup.question.default}"
    offered = setup.offered(line)
    tail = text(f"Tab puts: {offered[2]} ", Ink.KEY) if offered is not None else EMPTY_ROW
    first = ends((Span("  "), *text(takes, Ink.DIM)), tail, width)
    return first, ends(text("  Enter next   Esc one question back", Ink.DIM), text("Ctrl+Q quit ", Ink.DIM), width)
