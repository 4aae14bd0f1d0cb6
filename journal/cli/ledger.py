"""The command that shows a year's ledger."""

from argparse import Namespace
from collections.abc import Iterator

from journal.cli.out import DONE, show, show_json, trouble
from journal.facts.safety import one_row
from journal.line.caution import show_safety
from journal.reckon.ledger import Ledger
from journal.reckon.ledger import ledger as reckoned
from journal.record.entry import Entry
from journal.reports.ledger import ledger_text
from journal.reports.ledger_json import ledger_json
from journal.session.session import Session


def ledger(session: Session, given: Namespace) -> int:
    """What every zone got in a year, what is left of the limit, what could not be counted, and money."""
    history, today = session.history, session.today
    year: int = today.year if given.year is None else given.year
    if year > today.year:
        return trouble(f"{year} has not begun: the ledger goes up to today, {today.isoformat()}.")
    begun = min((day for day in (history.oldest, history.set_up) if day is not None), default=today)
    if year < begun.year:
        return trouble(f"nothing is on file of {year}: this book begins on {begun.isoformat()}.")
    found = reckoned(history, year, today)
    lawn = history.lawn(found.as_of)
    if given.json:
        show_json(ledger_json(found, lawn.units))
    else:
        show(ledger_text(found, lawn.units))
        if show_safety(_entries(found), lawn):
            show(f"\n{one_row(lawn.units)}")
    return DONE


def _entries(found: Ledger) -> Iterator[Entry]:
    for zone in found.zones:
        yield from (row.entry for row in zone.nitrogen)
        yield from (one.entry for one in zone.uncounted)
    yield from (entry for check in found.checks for entry in check.entries)
