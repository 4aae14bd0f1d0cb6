"""Another day than today: every page shows what was known then, and says that it is not today."""

from datetime import date, timedelta

import pytest

from journal.cli.demo.book import entries
from journal.record.kinds.setting import Setting
from journal.screens.page import Size
from journal.screens.pages import pages
from journal.screens.picture import plain_text
from journal.screens.view import View
from journal.season.history import History
from journal.standing import standing
from tests.screens.driver import opened

DEMO = entries()
TODAY = date(2027, 5, 3)
BOOK = History.of(DEMO)
DAYS = [date(2024, 10, 1), date(2025, 9, 12), date(2026, 4, 26), date(2026, 7, 1), date(2027, 1, 15)]
SIZES = [Size(80, 21), Size(120, 33)]


def until(day: date) -> History:
    """The book as it was when that day ended; facts of the lawn hold for the whole past."""
    return History.of(entry for entry in DEMO if entry.date <= day or isinstance(entry, Setting))


def rows(history: History, day: date, number: int, size: Size, **view: object) -> list[str]:
    """A page as text."""
    page = next(page for page in pages() if page.number == number)
    seen = View(as_of=day, today=TODAY, page=number).but(**view)
    return [plain_text(row) for row in page.draw(standing(history, day), seen, size).rows]


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("number", [page.number for page in pages()])
def test_looking_back_every_page_is_that_of_a_book_that_ends_there(number: int, size: Size) -> None:
    for day in DAYS:
        assert rows(BOOK, day, number, size) == rows(until(day), day, number, size), day


@pytest.mark.parametrize("number", [page.number for page in pages()])
def test_opened_rows_know_nothing_later_either(number: int) -> None:
    for row in range(0, 12, 3):
        for day in DAYS[1:3]:
            one = rows(BOOK, day, number, Size(100, 60), row=row, open=True)
            assert one == rows(until(day), day, number, Size(100, 60), row=row, open=True), (day, row)


@pytest.mark.parametrize("number", [page.number for page in pages()])
@pytest.mark.parametrize(("ahead", "words"), [(-400, "400 d back"), (30, "30 d ahead")])
def test_every_page_says_that_it_is_not_today(number: int, ahead: int, words: str) -> None:
    assert words in rows(BOOK, TODAY + timedelta(ahead), number, Size(80, 21))[0]


def test_looking_ahead_nothing_more_is_done() -> None:
    ahead = standing(BOOK, TODAY + timedelta(40))
    assert {flag.rule for flag in ahead.flags} >= {"mow-gap"}
    assert all(facts.mown_days_ago is None or facts.mown_days_ago >= 40 for facts in ahead.zones)


@pytest.mark.parametrize("way", [">", "<"])
@pytest.mark.parametrize(
    ("line", "day"),
    [("mow 3in side", "Mon 3 May 2027"), ("mow 3in side yesterday", "Sun 2 May 2027"), ("r 0.3in -3d", "Fri 30 Apr")],
)
async def test_what_is_typed_meanwhile_has_its_own_date_written_out(way: str, line: str, day: str) -> None:
    async with opened() as app:
        await app.press(way)
        await app.type(line)
        assert day in app.reading
        assert "today" not in app.reading
        await app.press("enter")
        assert "as of" in app.rows[0]


async def test_at_home_it_is_today() -> None:
    async with opened() as app:
        await app.type("mow 3in side")
        assert "today" in app.reading


async def test_the_help_on_the_line_has_the_date_too() -> None:
    async with opened() as app:
        await app.press(">")
        await app.type("mow 3in side")
        await app.press("f1")
        assert any("saves" in row and "Mon 3 May 2027" in row for row in app.rows)
