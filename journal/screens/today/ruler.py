"""The day ruler: solid is done, hollow is ahead, x is closed. One boundary stands between yesterday and today."""

from dataclasses import dataclass
from datetime import date, timedelta

from journal.plan.step import State, Step
from journal.record.day import MONTHS
from journal.record.entry import VERBS, Entry
from journal.record.kinds.mowing import Mowing
from journal.record.unit import INCH
from journal.screens.picture import Ink, Row, Span
from journal.season.history import History

BOUNDARY = Span("│", Ink.RULE)
_GLYPHS = {
    "feed": "▆", "water": "▄", "rain": "▂", "seed": "S", "aerate": "A", "dethatch": "D", "topdress": "T", "rake": "R",
    "treat": "W", "photo": "#", "soil": "t", "see": "o", "count": "o", "height": "h",
}  # fmt: skip
_OTHER = "•"
_CM = 10
SOON_DAYS = 7
"""What opens within so many days is `soon`, not `wait`."""


@dataclass(frozen=True, slots=True)
class Ruler:
    """So many days before the day judged and so many from it on."""

    as_of: date
    back: int
    ahead: int

    @classmethod
    def fitting(cls, as_of: date, width: int) -> "Ruler":
        """28 cells at 80 columns, 49 from 110, 77 from 170: always whole weeks, the boundary taking one cell."""
        back, ahead = (7, 20) if width < 110 else (14, 34) if width < 170 else (21, 55)
        return cls(as_of, back, ahead)

    @property
    def width(self) -> int:
        """Cells, the boundary included."""
        return self.back + 1 + self.ahead

    @property
    def last(self) -> date:
        """The last day shown."""
        return self.as_of + timedelta(self.ahead - 1)

    def heading(self, *, named: bool) -> Row:
        """Mondays by their date, and today at the boundary."""
        cells = [" "] * (self.back + self.ahead)
        start = self.as_of - timedelta(self.back)
        word = "today" if named else "this day"
        taken = range(self.back, self.back + len(word) + 1)
        for at in range(len(cells)):
            day = start + timedelta(at)
            words = f"{day.day} {MONTHS[day.month - 1].title()}"
            span = range(at, at + len(words))
            side = self.back if at < self.back else len(cells)
            if day.weekday() == 0 and span.stop <= side and not set(span) & set(taken):
                cells[at : span.stop] = words
        cells[self.back : self.back + len(word)] = word
        line = "".join(cells)
        return Span(line[: self.back], Ink.DIM), BOUNDARY, Span(line[self.back :], Ink.DIM)

    def blank(self) -> Row:
        """Only the boundary."""
        return Span(" " * self.back), BOUNDARY, Span(" " * self.ahead)

    def row(self, step: Step, history: History, units: str) -> Row:
        """What was done of this step on the days behind, and its window on the days from today on."""
        done = _done(step, history, self.as_of - timedelta(self.back), self.as_of, units)
        cells: list[Span] = []
        for at in range(-self.back, self.ahead):
            day = self.as_of + timedelta(at)
            cells.append(Span(done[day], Ink.DONE) if day in done else self._cell(step, day))
        return (*cells[: self.back], BOUNDARY, *cells[self.back :])

    def _cell(self, step: Step, day: date) -> Span:
        if closed(step, self.as_of):
            shut = day >= self.as_of and (step.earliest is None or day < step.earliest)
            if shut:
                return Span("x", Ink.BARRED)
            if day < self.as_of:
                return Span(" ")
        if day == self.as_of and step.latest is not None and step.latest < day and step.state is State.LATE:
            return Span("!", Ink.LATE)
        ink = Ink.LATE if step.state is State.LATE and day < self.as_of else Ink.AHEAD
        return Span(_window(step, day), ink)


def closed(step: Step, as_of: date) -> bool:
    """Whether the step is not to be done yet: barred, waiting for something, or not due for more than a week."""
    if step.state is not State.WAITING:
        return step.state is State.BARRED
    return bool(reason(step)) or step.earliest is None or (step.earliest - as_of).days > SOON_DAYS


def reason(step: Step) -> str:
    """What keeps a step shut; '' when only its day has not come."""
    return "" if step.waits_for.startswith("opens ") else step.waits_for


def _window(step: Step, day: date) -> str:
    earliest, latest, best = step.earliest, step.latest, step.best
    if earliest is None or day < earliest or (latest is not None and day > latest):
        return " "
    if day == latest:
        return "]"
    if day == earliest:
        return "["
    if best is not None and best[0] <= day <= best[1]:
        return "="
    return "-" if latest is not None or best is not None else " "


def _done(step: Step, history: History, first: date, last: date, units: str) -> dict[date, str]:
    """Day -> glyph for the entries that this step's ready line would write."""
    verb = step.line.partition(" ")[0]
    if verb not in VERBS:
        return {}
    found, kind = VERBS[verb]
    marks: dict[date, str] = {}
    for zone in step.zones or ("",):
        track = history.track(zone, kind)
        for entry in track.entries[-120:]:
            same = not found.what or getattr(entry, "what", found.what) == found.what
            if first <= entry.date <= last and same:
                marks[entry.date] = _glyph(entry, verb, units)
    return marks


def _glyph(entry: Entry, verb: str, units: str) -> str:
    """A cut shows its height in whole inches (centimetres), everything else its letter."""
    if isinstance(entry, Mowing):
        if entry.height_mm is None:
            return _OTHER
        size = _CM if units == "metric" else float(INCH)
        return str(min(9, round(entry.height_mm / size)))
    return _GLYPHS.get(verb, _OTHER)
