"""The soil tests of a zone, and when the newest no longer speaks."""

from datetime import date, timedelta

from journal.reckon.starter import soil_test_days
from journal.record.kinds.soil import SoilTest
from journal.season.history import Past


def newest_test(past: Past) -> SoilTest | None:
    """The newest that names the zone, or the whole lawn."""
    tests = [test for test in (past[SoilTest].last, past.lawnwide(SoilTest).last) if test is not None]
    return max(tests, key=lambda test: (test.day, test.id), default=None)


def speaks_until(past: Past) -> date | None:
    """The first day on which no test speaks any more; None where nobody can say.

    Without a test it is counted from the day from which on the book is kept: one before that may have been made.
    """
    newest, kept = newest_test(past), past.kept_since(SoilTest)
    known = [day for day in (newest.date if newest else None, kept) if day is not None]
    return max(known) + timedelta(soil_test_days(past.lawn)[0]) if known else None
