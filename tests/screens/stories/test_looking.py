"""Pages, days, the cursor, and the way back."""

from dataclasses import replace
from datetime import date

import pytest

from journal.record.kinds.mowing import Mowing
from journal.screens.picture import Ink
from tests.screens.driver import opened
from tests.screens.pretend import TODAY, PretendSession


async def test_enter_puts_the_line_of_a_step_below() -> None:
    async with opened() as app:
        await app.press("down", "enter")
        assert app.line == "mow front back 3in"
        assert app.app.typed.amends == ""


async def test_the_day_judged_moves_and_comes_back() -> None:
    async with opened() as app:
        await app.press(">")
        assert "as of Mon 10 May 2027, 7 d ahead" in app.rows[0]
        await app.press(",")
        assert "as of Sun 9 May 2027" in app.rows[0]
        await app.press("0")
        assert "Mon 3 May 2027" in app.rows[0]
        assert "as of" not in app.rows[0]


async def test_esc_closes_then_drops_the_cursor_then_comes_home() -> None:
    async with opened() as app:
        await app.press(".", "down", "space")
        assert app.app.view.open
        await app.press("escape")
        assert not app.app.view.open
        await app.press("escape")
        assert app.app.view.row == -1
        await app.press("escape")
        assert app.app.view.away == 0


async def test_pages_turn_and_the_text_stays() -> None:
    async with opened() as app:
        await app.press("3")
        assert app.rows[0].startswith(" Flags")
        await app.type("mow")
        await app.press("ctrl+pageup")
        assert app.line == "mow"
        assert not app.rows[0].startswith(" Flags")


async def test_the_same_digit_again_shows_the_next_zone() -> None:
    async with opened() as app:
        await app.press("1")
        assert "front · 2,400 sq ft" in app.rows[0]
        await app.press("1", "1", "1")
        assert "6,700 sq ft" in app.rows[0]


async def test_a_digit_without_a_page_says_so() -> None:
    async with opened() as app:
        await app.press("6")
        assert "there is no page 6" in app.reading


async def test_what_another_terminal_writes_appears() -> None:
    session = PretendSession()
    async with opened(session) as app:
        session.news = [Mowing(id="9999", date=TODAY, zones=("side",), height_mm=63.5)]
        await app.app.acts.look_around()
        await app.rest()
        assert "2.5 in" in app.screen


async def test_midnight_passes() -> None:
    session = PretendSession()
    async with opened(session) as app:
        session.today = date(2027, 5, 4)
        await app.app.acts.look_around()
        await app.rest()
        assert "Tue 4 May 2027" in app.rows[0]


async def test_midnight_leaves_a_day_that_was_chosen() -> None:
    session = PretendSession()
    async with opened(session) as app:
        await app.press(">")
        session.today = date(2027, 5, 4)
        await app.app.acts.look_around()
        await app.rest()
        assert "as of Mon 10 May 2027, 6 d ahead" in app.rows[0]


async def test_ctrl_c_does_not_quit_but_says_what_does() -> None:
    async with opened() as app:
        await app.press("ctrl+c")
        assert "Ctrl+Q quits" in app.reading
        assert app.app.is_running


async def test_enter_on_a_flag_has_the_line_of_the_step_that_clears_it() -> None:
    session = PretendSession()
    session.made_flags = tuple(replace(flag, do="mow it") for flag in session.made_flags)
    async with opened(session) as app:
        await app.press("3", "down", "enter")
        assert app.line == "mow front back 3in"
        assert app.app.typed.amends == ""


async def test_enter_on_a_flag_that_nothing_clears_opens_it() -> None:
    session = PretendSession(harms=" ")
    session.made_flags = tuple(replace(flag, do="look at it") for flag in session.made_flags[1:])
    async with opened(session) as app:
        await app.press("3", "down", "enter")
        assert app.line == ""
        assert app.app.view.open
        assert "basis" in app.screen


async def test_enter_with_no_cursor_says_what_is_missing() -> None:
    async with opened() as app:
        await app.press("enter")
        assert "the cursor is on nothing yet" in app.reading


async def test_a_flag_on_the_first_page_opens_and_answers_too() -> None:
    async with opened(size=(120, 36)) as app:
        at = next(row for row, target in enumerate(app.app.picture.targets) if target.flag)
        await app.press(*["down"] * (at + 1), "space")
        assert "basis" in app.screen
        await app.press("enter")
        assert app.line == "mow front back 3in"


@pytest.mark.parametrize("keys", [("1",), ("2",), ("3",), ("?",), ("/", "m")])
async def test_away_from_today_every_page_says_so_in_words_and_colour(keys: tuple[str, ...]) -> None:
    async with opened() as app:
        await app.press("<", *keys)
        assert "as of Mon 26 Apr 2027, 7 d back" in app.rows[0]
        ink = app.app.palette.style(Ink.AWAY)
        assert any(style is not None and style.bgcolor == ink.bgcolor for _, style in app.runs[0])


async def test_a_book_that_cannot_be_written_says_so_on_every_page() -> None:
    async with opened(PretendSession(read_only="The book's folder is read-only. It is open for reading.")) as app:
        assert "open for reading" in app.reading
        for page in ("1", "2", "3"):
            await app.press(page)
            assert "READ-ONLY" in app.rows[0]


async def test_what_was_saved_stays_in_sight_while_the_next_line_is_begun() -> None:
    async with opened() as app:
        await app.press("m", "enter")
        await app.press("ctrl+z")
        await app.type("rain")
        assert "undone" not in app.hints
        await app.press("ctrl+y")
        assert "done again" in app.hints
        await app.type(" 0.2in")
        assert "done again" not in app.hints
