"""The command that shows a year's ledger."""

from argparse import Namespace

from journal.cli.out import DONE, show, show_json, trouble
from journal.reckon.ledger import ledger as reckoned
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
    units = history.lawn(found.as_of).units
    if given.json:
        show_json(ledger_json(found, units))
    else:
        show(ledger_text(found, units))
    return DONE
