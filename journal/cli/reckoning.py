"""The command `reckon`: calculations. A book is opened only for those that ask something of it."""

import re
from argparse import Namespace
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from journal.cli.out import DONE, show, show_json, trouble
from journal.cli.starting import session_of
from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings
from journal.reckon.declare import Needs, Reckoning
from journal.record.kinds.weather import Rain, Weather
from journal.record.refusal import Refusal, nearest
from journal.reports.reckoned import answer_text, options_text, reckonings_text, typed_units
from journal.season.daily import DayWeather, weather_days
from journal.season.history import LAWN
from journal.season.weather_file.read import read_days
from journal.session.clock import Clock

_HELP = ("-h", "--help")


def reckon(given: Namespace, clock: Clock) -> int:
    """One reckoning; all of them listed without a name; its options with --help."""
    words = [_printable(word) for word in given.words]
    if not words or words[0] in _HELP:
        return _listed(given)
    found = {one.name: one for one in reckonings()}
    one = found.get(words[0].casefold())
    if one is None:
        why = f"no reckoning is called so; there are {', '.join(found)}."
        return _pointed(Refusal(words[0], why, nearest(words[0], found)), words)
    if any(word in _HELP for word in words[1:]):
        show(options_text(one))
        return DONE
    try:
        answer, units = _answer(one, words[1:], given, clock)
    except Refusal as refusal:
        return _pointed(refusal, words)
    if given.json:
        show_json(answer.as_json())
    else:
        show(answer_text(answer, units))
    return DONE


def _listed(given: Namespace) -> int:
    if given.json:
        keys = ("name", "says", "example")
        show_json([{key: getattr(one, key) for key in keys} for one in reckonings()])
    else:
        show(reckonings_text(reckonings()))
    return DONE


def _pointed(refusal: Refusal, words: Sequence[str]) -> int:
    """The trouble, with what was typed and a mark under the word in question, where it stands there."""
    text = " ".join(words)
    start, end = _place(refusal.word, text)
    if end <= start or len(text) > 200:
        return trouble(str(refusal))
    return trouble(f"{refusal}\n  {text}\n  {' ' * start}{'^' * (end - start)}")


def _printable(word: str) -> str:
    return "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in word)


def _place(word: str, text: str) -> tuple[int, int]:
    """Where the word stands: the value behind an option rather than the option; (0, 0) where it is not found."""
    head, _, value = word.partition(" ")
    heads = list(re.finditer(rf"(?<!\S){re.escape(head)}(?![^\s=])", text))
    if not heads:
        return 0, 0
    option = heads[-1]
    at = text.find(value, option.end()) if value else -1
    return option.span() if at < 0 else (at, at + len(value))


def _answer(one: Reckoning, words: Sequence[str], given: Namespace, clock: Clock) -> tuple[Answer, str]:
    """The answer, with what it needs fetched, and the system of units to give it in: the book's, else that typed.

    A file that was named is read without any book.
    """
    asks: Any = one.read(words)
    answer: Callable[..., Answer] = asks.answer
    if one.needs is Needs.NOTHING:
        return answer(), typed_units(words)
    if one.needs is Needs.WEATHER:
        file: str = getattr(asks, "file", "")
        return answer(_days_of_file(file) if file else _days_of_book(given, clock)), typed_units(words)
    session = session_of(given, clock).open()
    return answer(session.history, session.today), session.history.lawn(session.today).units


def _days_of_book(given: Namespace, clock: Clock) -> Sequence[DayWeather]:
    """Every day that the book's weather and gauge know anything of."""
    session = session_of(given, clock).open()
    past = session.history.on(LAWN, session.today)
    firsts = [seen.track.entries[0].day for seen in (past.lawnwide(Weather), past.lawnwide(Rain)) if seen]
    return tuple(weather_days(past, min(firsts), past.day).values()) if firsts else ()


def _days_of_file(name: str) -> Sequence[DayWeather]:
    """The days of a weather file. Raises Refusal naming the file or the line of it that can't be used."""
    try:
        text = Path(name).expanduser().read_text(encoding="utf-8-sig")
    except (OSError, ValueError) as error:
        raise Refusal(f"--file {name}", f"can't be read: {error}") from None
    try:
        found = read_days(text)
    except Refusal as refusal:
        raise Refusal(f"--file {name}", str(refusal)) from None
    if found.doubt:
        raise Refusal(f"--file {name}", f"{found.doubt} swardbook import-weather --units takes it into the book.")
    return found.days
