"""The guided set-up: a question at a time on the same line, drawn as a page."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from journal.line.setup_questions import Question, entries_from_answers, questions
from journal.record.entry import Entry
from journal.record.refusal import Refusal
from journal.screens.page import Size
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span
from journal.screens.rows import cut, left, page, text, wrapped


@dataclass(slots=True)
class Setup:
    """Answers so far and the question that stands; `wrong` says why the last answer was not taken.

    `refusal` is that same refusal where it is about a word of the answer.
    """

    units: str
    answers: dict[str, str] = field(default_factory=dict)
    at: int = 0
    wrong: str = ""
    refusal: Refusal | None = None

    @property
    def asked(self) -> tuple[Question, ...]:
        """All questions; once the units are known the examples follow them."""
        return questions(self.answers.get("units") or self.units)

    @property
    def question(self) -> Question:
        """The one that stands."""
        return self.asked[self.at]

    @property
    def over(self) -> bool:
        """Whether all are answered."""
        return self.at >= len(self.asked)

    def answer(self, words: str) -> bool:
        """Take the answer, or the default for an empty one; False (and `wrong` set) when it can't be used."""
        answer = words.strip() or self.question.default
        try:
            self.question.read(answer)
        except Refusal as refusal:
            self.wrong, self.refusal = str(refusal), refusal
            return False
        self.answers[self.question.key] = answer
        self.at, self.wrong, self.refusal = self.at + 1, "", None
        return True

    def marked(self, line: str) -> tuple[int, int]:
        """Where the word that was not taken stands in the line; nowhere once it was changed."""
        word = self.refusal.word if self.refusal is not None else ""
        at = line.casefold().find(word.casefold()) if word else -1
        return (at, at + len(word)) if at >= 0 else (0, 0)

    def offered(self, line: str) -> tuple[int, int, str] | None:
        """What Tab puts where: what was probably meant, or the example on the empty line, to be changed."""
        if not line:
            return 0, 0, self.question.example
        start, end = self.marked(line)
        if self.refusal is None or not self.refusal.suggestion or start == end:
            return None
        return start, end, self.refusal.suggestion

    def back(self) -> str:
        """One question back; its answer, to be changed."""
        self.wrong, self.refusal = "", None
        self.at = max(0, self.at - 1)
        return self.answers.pop(self.question.key, "")

    def settings(self, today: date) -> tuple[Entry, ...]:
        """What the answers make. Raises Refusal."""
        return entries_from_answers(self.answers, today, self.units)


def guess_units(environ: Mapping[str, str]) -> str:
    """US units where the locale is American, else metric."""
    locale = environ.get("LC_ALL") or environ.get("LC_MEASUREMENT") or environ.get("LANG") or "en_US"
    return "us" if locale.split(".")[0] in ("en_US", "C", "POSIX", "es_US") else "metric"


def setup_rows(setup: Setup, size: Size) -> tuple[Row, ...]:
    """The questions answered so far, and the one that stands."""
    bar = f" A new lawn book · question {min(setup.at + 1, len(setup.asked))} of {len(setup.asked)}"
    rows: list[Row] = [(Span(bar, Ink.BAR),), EMPTY_ROW]
    asked = [] if setup.over else _standing(setup, size.width)
    answered = [
        (Span(f"   {left(question.key, 8)}", Ink.DIM), Span("  "), *text(setup.answers.get(question.key, ""), Ink.DONE))
        for question in setup.asked[: setup.at]
    ]
    room = max(0, size.height - len(rows) - len(asked) - 1)
    shown = answered[len(answered) - room :] if room < len(answered) else answered
    rows += [*shown, EMPTY_ROW] if shown else []
    return page([cut(row, size.width) for row in [*rows, *asked]], size.width, size.height)


_FIRST = "Six short questions; nothing is written before the last is answered."


def _standing(setup: Setup, width: int) -> list[Row]:
    question = setup.question
    rows: list[Row] = [(Span("   "), Span(line, Ink.STRONG)) for line in wrapped(question.ask, width - 6)]
    rows += [(Span("   "), Span(line, Ink.DIM)) for line in wrapped(question.why, width - 6)]
    rows.append(EMPTY_ROW)
    rows.append((Span("   "), Span("Enter alone  ", Ink.DIM), Span(question.default, Ink.KEY)))
    if question.example != question.default:
        rows.append((Span("   "), Span("for example  ", Ink.DIM), Span(question.example)))
    if not setup.at and not setup.wrong:
        rows += [EMPTY_ROW, (Span("   "), Span(_FIRST, Ink.DIM))]
    if setup.wrong:
        rows.append(EMPTY_ROW)
        rows += [
            (Span("   "), Span("✗ " if not at else "  ", Ink.LOSS), Span(line))
            for at, line in enumerate(wrapped(setup.wrong, width - 8))
        ]
    return rows
