"""What a lane hands over to be drawn: a mark in each cell, the number now, and the same in words."""

from collections.abc import Sequence
from dataclasses import dataclass

from journal.record.entry import Entry
from journal.screens.picture import Ink


@dataclass(frozen=True, slots=True)
class Mark:
    """One cell. `texts` from the fullest to one character: the fullest that fits is drawn, then filled with `fill`.

    `weight` ranks marks of several zones in one cell: the heaviest is shown.
    """

    texts: tuple[str, ...]
    ink: Ink = Ink.PLAIN
    fill: str = " "
    weight: float = 0.0

    def drawn(self, width: int) -> str:
        """Exactly `width` columns."""
        for text in self.texts:
            short = width - len(text)
            if short >= 0:
                return text + self.fill * short if short else text
        return self.fill * width


BLANK = Mark(("",))


def run(char: str, ink: Ink, weight: float = 0.0) -> Mark:
    """A mark that fills its cell."""
    return Mark((char,), ink, char, weight)


def heaviest(rows: Sequence[tuple[Mark, ...]]) -> tuple[Mark, ...]:
    """Of several zones the heaviest mark in each cell, the first zone's where they weigh the same."""
    shown = rows[0]
    for row in rows[1:]:
        shown = tuple(b if b.weight > a.weight else a for a, b in zip(shown, row, strict=True))
    return shown


@dataclass(frozen=True, slots=True)
class Now:
    """A lane's number on the date judged: at most 4 columns, its unit, and words where there is room for them.

    `short` stands for number and unit where there is room for 5 columns only.
    """

    number: str = ""
    unit: str = ""
    words: str = ""
    short: str = ""
    ink: Ink = Ink.PLAIN

    @property
    def narrow(self) -> str:
        """At most 5 columns."""
        spaced = self.short or f"{self.number} {self.unit}".strip()
        return spaced if len(spaced) <= 5 else f"{self.number}{self.unit}"[:5]


@dataclass(frozen=True, slots=True)
class Strip:
    """One row of the grid: 53 marks."""

    label: str
    marks: tuple[Mark, ...]
    now: Now = Now()


@dataclass(frozen=True, slots=True)
class Drawn:
    """A lane: its row, and a row for each zone where they differ."""

    strip: Strip
    zones: tuple[Strip, ...] = ()


@dataclass(frozen=True, slots=True)
class Said:
    """One sentence about a cell. `logged` is the entry it tells of, `flag` and `line` what Enter may take up.

    `brief` is the same for one row ('' where the sentence is brief enough), `ahead` marks what is still to be done.
    `idle` marks a sentence that says there is nothing: it is told only where the cursor stands.
    """

    text: str
    when: str = ""
    ink: Ink = Ink.PLAIN
    logged: Entry | None = None
    flag: str = ""
    line: str = ""
    idle: bool = False
    brief: str = ""
    ahead: bool = False


def idle(text: str) -> Said:
    """Nothing here, and why."""
    return Said(text, ink=Ink.DIM, idle=True)
