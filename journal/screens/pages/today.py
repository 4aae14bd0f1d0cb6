"""Page 1: what to do and what not yet, on one ruler; the zones in figures; what was written last."""

from dataclasses import dataclass

from journal.facts.safety import one_row
from journal.line.caution import line_shows_safety
from journal.record.kinds.treatment import Treatment
from journal.screens.examples import examples
from journal.screens.page import Size
from journal.screens.paper import LastPaper, Paper, press
from journal.screens.picture import Ink, Picture, Span, Target
from journal.screens.rows import left
from journal.screens.title import title_row
from journal.screens.today.flags import draw_flags, draw_hidden_harm
from journal.screens.today.latest import draw_latest
from journal.screens.today.ruler import Ruler
from journal.screens.today.steps import draw_steps
from journal.screens.today.zones import draw_zones
from journal.screens.view import View
from journal.season.history import History
from journal.standing import Standing


@dataclass(frozen=True, slots=True)
class Today:
    """Do and not yet."""

    number: int = 1
    name: str = "today"
    keys: tuple[tuple[str, str], ...] = (
        ("Up Down", "row by row: steps, then the last entries"),
        ("Tab", "the next step"),
        ("Space", "the step in full: why, when, how much"),
        ("Enter", "on a step: its line, ready to save; on an entry: the entry, to be put right"),
        ("Delete", "on an entry: strike it"),
        ("1", "the next zone, then all again"),
    )

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page."""
        return PAPER(standing, view, size).picture(title_row(standing, view, size.width), size, view)

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """Walk, open, scroll."""
        return press(key, PAPER(standing, view, size), view, size)


PAGE = Today()


def build(standing: Standing, view: View, size: Size) -> Paper:
    """Everything there is to show, from the most pressing down."""
    paper = Paper(view, size.width)
    room = size.height - 1
    if nothing_written(standing.history):
        _welcome(paper, standing, room)
        return paper
    ruler = Ruler.fitting(standing.as_of, size.width)
    draw_steps(paper, standing, ruler, max(4, size.height // 4), named=not view.away, airy=size.height >= 30)
    if _treats(standing):
        paper.add((Span(" "), Span(one_row(standing.lawn.units), Ink.DIM)))
    draw_hidden_harm(paper, standing)
    draw_zones(paper, standing)
    if size.width >= 110:
        left_over = room - len(paper.rows) - 6
        full = left_over > 2 * _MOST_LAST
        draw_flags(paper, standing, max(0, min(8, left_over // (5 if full else 2))), full=full)
    draw_latest(paper, standing, max(1, min(_MOST_LAST, room - len(paper.rows) - 2)))
    return paper


PAPER = LastPaper(build)

_RECENT_DAYS = 7
"""So long after a treatment its safety words stand on the page."""

_EXAMPLE = 34
"""Columns for a line to type, beside what it says."""

_MOST_LAST = 16
"""Entries listed at most: what is older is for the Season page."""


def nothing_written(history: History) -> bool:
    """Whether the book holds nothing but settings."""
    return history.oldest is None


def _treats(standing: Standing) -> bool:
    """Whether a product against weeds, insects or disease is planned, or was put down in the last days."""
    day = standing.as_of.toordinal()
    tracks = (standing.history.track(zone, Treatment) for zone in standing.lawn.zone_names)
    return any(track.near(day, _RECENT_DAYS) for track in tracks) or any(
        line_shows_safety(step.line, standing.lawn) for step in standing.steps
    )


def _welcome(paper: Paper, standing: Standing, room: int) -> None:
    """A new book: what to type, in this lawn's own words."""
    paper.add()
    paper.add((Span(" "), Span("Nothing is written down yet.", Ink.STRONG)))
    paper.add((Span(" "), Span("Type what you did and press Enter. The row under the line says what it means.")))
    paper.add()
    lines = examples(standing.lawn)
    width = min(_EXAMPLE, max(len(line) for line, _ in lines) + 2)
    for line, says in lines[: max(3, room - 9)]:
        # A line longer than its column speaks for itself.
        words = "" if len(line) > width else f" {says}"
        row = (Span(" "), Span("  "), Span(left(line, width) if words else line, Ink.KEY), Span(words, Ink.DIM))
        paper.stop(row, Target(0, line=line))
    draw_zones(paper, standing)
