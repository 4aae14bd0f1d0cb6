"""What may be written after `swardbook`."""

import argparse
from collections.abc import Sequence
from datetime import date

from journal import __version__
from journal.record.day import parse_day
from journal.record.refusal import Refusal

TYPED = ("log", "amend", "set", "reckon")
"""Commands that take a line: its words may begin with a dash (`-1d`, `--area`) and hold ` -- `."""

LEVELS = ("harm", "loss", "late", "note")
"""Gravest first. Written out here: the rules are loaded only by the commands that need them."""

_FLAGS = ("--json", "--dry-run")
_VALUED = ("--book", "--today")


def a_day(text: str) -> date:
    """A date of the command line, or argparse's own error."""
    try:
        return parse_day(text)
    except Refusal as refusal:
        raise argparse.ArgumentTypeError(str(refusal)) from None


def a_year(text: str) -> int:
    """A year of the command line, or argparse's own error."""
    if not (text.isascii() and text.isdigit() and len(text) == 4 and int(text) >= 1900):
        raise argparse.ArgumentTypeError("a year is wanted, like 2026.")
    return int(text)


def a_folder(text: str) -> str:
    """A folder's name, which is never empty."""
    if not text.strip():
        raise argparse.ArgumentTypeError("a folder is wanted here.")
    return text


def parser() -> argparse.ArgumentParser:
    """All commands and options."""
    top = argparse.ArgumentParser(prog="swardbook", description="A season journal for the home lawn.")
    top.add_argument("--version", action="version", version=f"swardbook {__version__}")
    _shared(top, first=True)
    commands = top.add_subparsers(dest="command", metavar="COMMAND", title="without a command the journal opens")

    setup = _command(commands, "setup", "make a book, with or without questions")
    setup.add_argument("--from", dest="source", metavar="FILE.toml", help="take the answers from this file")
    setup.add_argument("--edit", action="store_true", help="change an existing book")
    demo = _command(commands, "demo", "open a fresh copy of the demo book")
    demo.add_argument("--keep", metavar="DIR", help="make the copy here, and leave it there")
    log = _command(commands, "log", "save a line: log mow 3in front", line=True)
    log.add_argument("--dry-run", action="store_true", help="say what it would do, save nothing")
    _command(commands, "undo", "take the newest change back").add_argument("id", nargs="?", help="of this entry")
    _command(commands, "redo", "do again what was taken back")
    _command(commands, "amend", "put a line in the place of an entry: amend ID mow 3in front", line=True)
    _command(commands, "strike", "take an entry out").add_argument("id")
    _command(commands, "set", "change a fact or a threshold: set mow-gap days 12", line=True)
    listing = _command(commands, "list", "the entries, oldest first")
    listing.add_argument("--kind", help="of this kind only")
    listing.add_argument("--zone", help="of this zone only")
    listing.add_argument("--since", type=a_day, metavar="DATE")
    listing.add_argument("--until", type=a_day, metavar="DATE")
    listing.add_argument("--csv", action="store_true", help="as a sheet")
    flags = _command(commands, "flags", "what is missed or unsafe")
    flags.add_argument("--as-of", type=a_day, metavar="DATE", help="judge this date instead of today")
    flags.add_argument("--zone", help="of this zone only")
    flags.add_argument("--all", action="store_true", help="also those out of sight")
    flags.add_argument("--fail-on", choices=LEVELS, help="exit 1 if one as grave stands")
    flags.add_argument(
        "--history", action="store_true", help="every flag since the book began: rose, cleared, how it ended"
    )
    flags.add_argument(
        "--since", type=a_day, metavar="DATE", help="with --history: leave out what was over by then (nothing is)"
    )
    flags.add_argument("--until", type=a_day, metavar="DATE", help="with --history: as it was known then (today)")
    due = _command(commands, "due", "what to do, and what not yet")
    due.add_argument("--as-of", type=a_day, metavar="DATE", help="judge this date instead of today")
    due.add_argument("--within", type=int, default=14, metavar="DAYS", help="also what opens so soon (14)")
    plan = _command(commands, "plan", "every step of the season, done and ahead")
    plan.add_argument("--as-of", type=a_day, metavar="DATE", help="judge this date instead of today")
    ledger = _command(commands, "ledger", "nitrogen, seed, water and money, zone by zone")
    ledger.add_argument("year", nargs="?", type=a_year, metavar="YEAR", help="of this year (the running one)")
    _command(
        commands, "reckon", "do a calculation: reckon spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft", line=True
    )
    weather = _command(commands, "import-weather", "take in a file of daily weather")
    weather.add_argument("file", metavar="FILE", help="daily highs, lows and rain, as weather services hand them out")
    weather.add_argument("--units", metavar="U", help="what its numbers are in, where the file leaves that in doubt")
    weather.add_argument("--dry-run", action="store_true", help="say what it holds, save nothing")
    _command(commands, "rules", "every rule with its numbers and basis")
    _command(commands, "check", "read every record afresh and name what is damaged")
    return top


def _command(
    commands: "argparse._SubParsersAction[argparse.ArgumentParser]", name: str, words: str, *, line: bool = False
) -> argparse.ArgumentParser:
    made = commands.add_parser(name, help=words, description=words[0].upper() + words[1:] + ".")
    _shared(made, first=False)
    made.add_argument("--json", action="store_true", help="one JSON document on standard output")
    if line:
        made.add_argument("words", nargs="*", metavar="LINE")
    return made


def _shared(made: argparse.ArgumentParser, *, first: bool) -> None:
    """Options that may stand before or after the command; what stands before is not undone by what does not."""
    default = None if first else argparse.SUPPRESS
    made.add_argument(
        "--book", type=a_folder, metavar="DIR", default=default, help="the book's folder ($SWARDBOOK_BOOK)"
    )
    made.add_argument(
        "--today", type=a_day, metavar="DATE", default=default, help="the clock's date ($SWARDBOOK_TODAY)"
    )


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """Read the arguments; the words of a line are kept apart first, so that no dash of theirs is an option."""
    at = next((i for i, word in enumerate(arguments) if word in TYPED), -1)
    before = arguments[:at] if at >= 0 else ()
    valued = {i + 1 for i, word in enumerate(before) if word in _VALUED}
    if at < 0 or any(not word.startswith("-") and i not in valued for i, word in enumerate(before)):
        return parser().parse_args(list(arguments))
    options, words = split(arguments[at + 1 :])
    asked = words[: words.index("--") if "--" in words else len(words)]
    if arguments[at] != "reckon" and any(word in ("-h", "--help") for word in asked):
        return parser().parse_args([*before, arguments[at], "--help"])
    found = parser().parse_args([*before, arguments[at], *options])
    found.words = words
    return found


def split(arguments: Sequence[str]) -> tuple[list[str], list[str]]:
    """Options and words of a typed line. Behind ` -- ` (a remark) only options at the very end are options."""
    rest, options = list(arguments), list[str]()
    while rest and rest[-1] in _FLAGS:
        options.append(rest.pop())
    stop = rest.index("--") if "--" in rest else len(rest)
    words: list[str] = []
    head = iter(rest[:stop])
    for word in head:
        if word in _FLAGS:
            options.append(word)
        elif word in _VALUED:
            options += [word, *([found] if (found := next(head, None)) is not None else [])]
        elif word.startswith(tuple(f"{name}=" for name in _VALUED)):
            options.append(word)
        else:
            words.append(word)
    return options, [*words, *rest[stop:]]


def line_of(words: Sequence[str]) -> str:
    """One line from the shell's words. What the shell kept together stays together, where the line would part it.

    The first word, a note and what follows `--` are text as it is.
    """
    stop = words.index("--") if "--" in words else len(words)
    if len(words) > 1 and words[0].casefold() in ("note", "n"):
        stop = 1
    kept = [f'"{word}"' if " " in word and '"' not in word else word for word in words[1:stop]]
    return " ".join([*words[:1], *kept, *words[stop:]])
