"""The year in 53 cells: when the grass grows, and the average frosts in it."""

from datetime import date

from journal.record.day import MONTHS, MonthDay
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Row, Span
from journal.season.growth import season
from journal.standing import Standing

CELLS = 53
_MARGIN = 4
GROWS, RESTS = Span("━", Ink.DONE), Span("·", Ink.DIM)


def draw_year(paper: Paper, standing: Standing) -> None:
    """Months, then the season with both frosts and the day judged; nothing where no season is known."""
    window = season(standing.lawn, standing.as_of)
    if window is None:
        return
    grows = _grows(window)
    marks = {cell(day): Span(letter, Ink.AHEAD) for day, letter in _frosts(standing) if day is not None}
    cells = [marks.get(at, GROWS if at in grows else RESTS) for at in range(CELLS)]
    legend = Span("  ▼ now  L F frosts" if paper.width >= 80 else "", Ink.DIM)
    paper.add((Span(" " * _MARGIN), *_axis(week(standing.as_of))))
    paper.add((Span(" " * _MARGIN), *cells, legend))


def _axis(now: int) -> Row:
    """Each month's letter over its first week, and the week judged."""
    line = [" "] * CELLS
    for month, name in enumerate(MONTHS, 1):
        line[cell(MonthDay(month, 1))] = name[0].upper()
    return Span("".join(line[:now]), Ink.DIM), Span("▼", Ink.STRONG), Span("".join(line[now + 1 :]), Ink.DIM)


def cell(day: MonthDay) -> int:
    """Its week in a year without a leap day."""
    return week(day.on(2001))


def week(day: date) -> int:
    """The day of the year, by sevens."""
    return (day.timetuple().tm_yday - 1) // 7


def _grows(window: tuple[date, date]) -> frozenset[int]:
    """The weeks of the season; one that crosses the new year lies at both ends."""
    days = range(window[0].toordinal(), window[1].toordinal() + 1)
    return frozenset(week(date.fromordinal(day)) for day in days)


def _frosts(standing: Standing) -> tuple[tuple[MonthDay | None, str], ...]:
    return (standing.lawn.last_frost, "L"), (standing.lawn.first_frost, "F")
