"""From arguments to a command, and from trouble to a message and an exit code."""

import gc
import importlib
import io
import os
import sys
from argparse import Namespace
from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING

from journal.cli.arguments import parse
from journal.cli.out import STANDS, trouble
from journal.record.day import parse_day
from journal.record.refusal import Refusal
from journal.session.clock import Clock
from journal.store.change import NotABook, NotSaved

if TYPE_CHECKING:
    from journal.session.session import Session

    Command = Callable[[Session, Namespace], int]

COMMANDS = {
    "log": "recording.log",
    "set": "recording.set_fact",
    "undo": "recording.undo",
    "redo": "recording.redo",
    "amend": "recording.amend",
    "strike": "recording.strike",
    "list": "recording.listing",
    "flags": "judging.flags",
    "due": "judging.due",
    "plan": "judging.plan",
    "rules": "judging.rules",
    "ledger": "ledger.ledger",
    "import-weather": "weather.import_weather",
    "check": "recording.check",
}
"""Commands on an open book, each loaded only when it is asked for."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; returns its exit code."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")  # a letter the terminal has not is no reason to fail
    given = parse(sys.argv[1:] if arguments is None else arguments)
    if arguments is None and given.command in COMMANDS:
        gc.disable()  # a command lives for a moment: looking for garbage among the entries only costs time
    try:
        code = _run(given)
        sys.stdout.flush()
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:
        if error.filename is not None:
            return trouble(f"{error.filename}: {error.strerror}.")
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        trouble(f"the result could not be written out: {error.strerror}. A line that was logged is saved all the same.")
        return STANDS
    return code


def _run(given: Namespace) -> int:
    try:
        clock = Clock(given.today or _today_of_environment())
        if given.command in COMMANDS:
            from journal.cli.starting import session_of

            return _command(COMMANDS[given.command])(session_of(given, clock).open(), given)
        from journal.cli import starting

        match given.command:
            case "setup":
                return starting.setup(given, clock)
            case "demo":
                return starting.demo(given, clock)
            case "reckon":
                from journal.cli.reckoning import reckon

                return reckon(given, clock)
        return starting.journal(given, clock)
    except (NotABook, NotSaved, Refusal) as error:
        return trouble(str(error))


def _command(place: str) -> "Command":
    module, _, name = place.partition(".")
    found: Command = getattr(importlib.import_module(f"journal.cli.{module}"), name)
    return found


def _today_of_environment() -> date | None:
    text = os.environ.get("SWARDBOOK_TODAY")
    try:
        return parse_day(text) if text else None
    except Refusal as refusal:
        raise Refusal("SWARDBOOK_TODAY", str(refusal)) from None
