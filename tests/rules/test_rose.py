"""The day on which a flag rose, found again in a book that was judged before and has grown since."""

from datetime import date

from hypothesis import given, settings
from hypothesis import strategies as st

from journal.record.entry import Entry
from journal.season.history import History
from journal.standing import findings
from tests.rules.seasons import BEGINS, SPAN, entries, kept, lawns, numbered
from tests.scenario import book, raised

days = st.lists(st.integers(0, SPAN), min_size=1, max_size=3)


def _flags(history: History, on: date) -> list[tuple[str, str, date]]:
    return [(flag.id, flag.headline, flag.rose) for flag in findings(history, on)]


@settings(max_examples=25, derandomize=True)
@given(lawns, entries(), days)
def test_a_book_that_is_judged_as_it_grows_says_what_a_new_one_says(
    name: str, diary: list[Entry], on: list[int]
) -> None:
    grown = kept(name, [])
    for entry in numbered(diary):
        findings(grown, date.fromordinal(BEGINS.toordinal() + on[0]))
        grown = grown.plus(entry)
    for ahead in on:
        day = date.fromordinal(BEGINS.toordinal() + ahead)
        assert _flags(grown, day) == _flags(kept(name, numbered(diary)), day)


def test_a_cut_that_is_written_down_late_moves_the_day_on_which_the_gap_began() -> None:
    diary = book("2026-05-01 mow 3in front")
    flag = raised(diary, "2026-06-20", "mow-gap")
    assert flag is not None
    assert flag.rose == date(2026, 5, 12)
    later = book("2026-05-20 mow 3in front", on=diary)
    flag = raised(later, "2026-06-20", "mow-gap")
    assert flag is not None
    assert flag.rose == date(2026, 5, 31)
