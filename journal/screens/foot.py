"""The two rows under the line: what it means and would do, then what could be typed next, or the pages' keys."""

from collections.abc import Sequence

from journal.line.reading import Problem, Reading
from journal.line.words import USUAL
from journal.record.entry import Entry
from journal.rules.flag import Flag
from journal.screens.level import LEVEL_INKS
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span
from journal.screens.rows import clipped, ends, joined, text, wide
from journal.screens.session_like import CompletionLike
from journal.standing import Preflight

INDENT = Span("  ")
CLOSING = "!"
"""The word at the end of a line that saves it in spite of harm."""


def reading_row(
    reading: Reading, preflight: Preflight, width: int, *, refused: bool, cursor: int, apart: bool = False
) -> Row:
    """What the line means; at the right what saving it would raise or clear, or that Enter saves it.

    `apart`: the flag has the row below to itself.
    """
    if reading.problem is not None:
        return _problem_row(reading, reading.problem, width, refused=refused, cursor=cursor)
    if reading.draft is None:
        return EMPTY_ROW
    if refused and preflight.gravest is not None:
        return _held_back(preflight.gravest, len(preflight.raised) - 1, width)
    verdict = _verdict(reading.draft, preflight, width // 2 - 12, apart=apart)
    words = _words(reading, width - 2 - wide(verdict) - 2)
    return ends((INDENT, *words), (*verdict, Span(" ")), width)


def _problem_row(reading: Reading, problem: Problem, width: int, *, refused: bool, cursor: int) -> Row:
    """A word still being typed is not yet a mistake: it is said quietly until Enter or the next word."""
    typing = problem.end >= len(reading.text) and cursor >= len(reading.text) and not refused
    if typing:
        return (INDENT, *text(str(problem), Ink.DIM))
    why = f"{problem.word}: {problem.why}" if problem.word else problem.why
    tail = text(f"Did you mean {problem.suggestion}? Tab takes it ", Ink.KEY) if problem.suggestion else EMPTY_ROW
    return ends((Span("✗ ", Ink.LOSS), *text(why, Ink.PLAIN)), tail, width)


def _held_back(flag: Flag, more: int, width: int) -> Row:
    """Enter was pressed on a line that would do harm: the whole row says why nothing was saved."""
    head = Span(f"! {flag.level}", LEVEL_INKS[flag.level])
    tail = text(f"{f'+{more} ' if more else ''}end it in {CLOSING} to save ", Ink.STRONG)
    return ends((head, Span(f" {flag.rule}: {flag.headline}")), tail, width)


def flag_row(preflight: Preflight, width: int) -> Row:
    """The gravest flag on a row of its own; F1 has all of them."""
    gravest = preflight.gravest
    if gravest is None:
        return EMPTY_ROW
    more = f"  F1: +{len(preflight.raised) - 1} more " if len(preflight.raised) > 1 else "  F1: why "
    head = Span(f"! {gravest.level}", LEVEL_INKS[gravest.level])
    return ends((head, Span(f" {gravest.rule}: {gravest.headline}")), text(more, Ink.KEY), width)


def fits(reading: Reading, preflight: Preflight, width: int) -> bool:
    """Whether the sentence and the gravest flag are whole on one row."""
    if reading.draft is None:
        return True
    verdict = _verdict(reading.draft, preflight, 500, apart=False)
    room = width - wide(verdict) - 5
    return wide(_words(reading, room)) <= room


def _verdict(draft: Entry, preflight: Preflight, most: int, *, apart: bool) -> Row:
    """The gravest flag first, in at most so many cells; then what is cleared; then Enter."""
    parts: list[Row] = []
    gravest = preflight.gravest
    if gravest is not None and not apart:
        more = f"  +{len(preflight.raised) - 1}" if len(preflight.raised) > 1 else ""
        words = _short(f"{gravest.rule}: {gravest.headline}", max(18, most - len(more)))
        parts.append((Span(f"! {gravest.level}", LEVEL_INKS[gravest.level]), *text(f" {words}{more}")))
    elif preflight.cleared and not apart:
        rules = ", ".join(dict.fromkeys(flag.rule for flag in preflight.cleared))
        parts.append(text(f"Clears {_short(rules, max(20, most))}", Ink.DONE))
    if preflight.holds_back and not draft.confirmed:
        parts.append(joined((text(f"end it in {CLOSING}", Ink.STRONG), text("to save", Ink.PLAIN)), " "))
    else:
        parts.append((Span("Enter", Ink.KEY), *text(" changes that entry" if draft.id else " saves")))
    return joined(parts)


def _short(words: str, room: int) -> str:
    return words if len(words) <= room else words[: room - 1].rstrip(" ,;:") + "…"


_SAID = {"height_mm": "height"}


def _words(reading: Reading, room: int) -> Row:
    """The sentence, assumed words marked; where there is no room the marks are gathered at its end."""
    draft = reading.draft
    words = reading.words
    if len(words) > room and draft is not None and draft.assumed:
        bare = words.replace(f" {USUAL}", "")
        tail = f" (usual {' '.join(_SAID.get(name, name.partition('_')[0]) for name in draft.assumed)})"
        if len(bare) + len(tail) > room:
            tail = f" ({len(draft.assumed)} usual)"
        return (*text(clipped(bare, max(1, room - len(tail)))), *text(tail, Ink.USUAL))
    spans: list[Span] = []
    for at, piece in enumerate(words.split(USUAL)):
        if at:
            spans.append(Span(USUAL, Ink.USUAL))
        if piece:
            spans.append(Span(piece))
    return tuple(spans)


def candidates_row(completion: CompletionLike, at: int, begun: str, width: int) -> Row:
    """Up to six words that could come next; `at` is the one that Tab has taken, -1 before that.

    `begun` is the word at the cursor: where it is the only candidate there is nothing to choose.
    """
    if not completion.candidates or (at < 0 and completion.candidates == (begun,)):
        return (INDENT, *text("Esc puts the line aside   F1 explains the word   -- begins a remark", Ink.DIM))
    words = joined(
        (text(word, Ink.STRONG if index == at else Ink.PLAIN) for index, word in enumerate(completion.candidates))
    )
    tail = joined((text("Tab", Ink.KEY), text("takes, again: next ")), " ")
    return ends((INDENT, *words), tail, width)


def keys_row(pages: Sequence[tuple[int, str]], current: int, width: int) -> Row:
    """The pages by their digits, and the keys one forgets; the last ones go first where it is narrow."""
    spans: list[Span] = [Span(" ")]
    for number, name in pages:
        if number == current:
            spans += [Span(f" {number} {name.upper()} ", Ink.TAB), Span(" ")]
        else:
            spans += [Span(f" {number}", Ink.KEY), Span(f" {name}  ")]
    tips = [("? ", "help"), (", . ", "day"), ("Ctrl+Z ", "undo"), ("< > ", "week"), ("Enter ", "takes the row's line")]
    tail: Row = EMPTY_ROW
    for key, does in tips:
        longer = joined((tail, (Span(key, Ink.KEY), Span(does))))
        if wide(longer) + wide(spans) + 3 > width:
            break
        tail = longer
    return ends(spans, (*tail, Span(" ")), width)


def empty_row(usual: str, width: int) -> Row:
    """What may be typed, and what `m` alone would save."""
    start = joined(
        (text("type what you did:", Ink.DIM), *((Span(pin, Ink.KEY), Span(f" {verb}", Ink.DIM)) for pin, verb in _PINS))
    )
    tail = text(f"m: {usual.replace(f' {USUAL}', '')} ", Ink.DIM) if usual else EMPTY_ROW
    return ends((INDENT, *start), tail if wide(tail) + wide(start) + 6 <= width else EMPTY_ROW, width)


_PINS = (("m", "mow"), ("w", "water"), ("r", "rain"), ("f", "feed"), ("s", "see"))
