"""What is typed becomes an entry, or comes back."""

import asyncio
import threading
from dataclasses import replace
from pathlib import Path

from journal.record.kinds.mowing import Mowing
from tests.screens.driver import opened
from tests.screens.pretend import TODAY, PretendSession, lawn_settings


async def test_a_usual_mowing_takes_two_keys() -> None:
    session = PretendSession()
    async with opened(session) as app:
        await app.press("m", "enter")
        (saved,) = session.done
        assert isinstance(saved, Mowing)
        assert saved.date == TODAY
        assert app.line == ""
        assert "mow" in app.reading
        assert "Ctrl+Z undo" in app.reading


async def test_a_usual_mowing_takes_two_keys_on_a_new_book_too() -> None:
    session = PretendSession(entries=lawn_settings())
    async with opened(session) as app:
        await app.press("m", "enter")
        assert len(session.done) == 1


async def test_harm_is_saved_only_with_a_closing_mark() -> None:
    session = PretendSession(harms="9floz")
    async with opened(session) as app:
        await app.type("treat well-field 9floz side")
        assert "! harm label-rate" in app.reading
        assert "end it in !" in app.reading
        await app.press("enter")
        assert session.done == []
        assert app.line == "treat well-field 9floz side"
        await app.type(" !")
        await app.press("enter")
        assert len(session.done) == 1


async def test_undo_and_redo_leave_the_text_alone() -> None:
    session = PretendSession()
    async with opened(session) as app:
        await app.press("m", "enter")
        await app.type("water 20")
        await app.press("ctrl+z")
        assert app.line == "water 20"
        assert len(session.undone) == 1
        await app.press("ctrl+y")
        assert session.undone == []
        await app.press("escape", "ctrl+z")
        assert "undone: mowing" in app.reading


async def test_undo_with_nothing_to_undo_says_so() -> None:
    async with opened() as app:
        await app.press("ctrl+z")
        assert "Nothing was logged in this window yet." in app.reading


async def test_a_save_that_fails_gives_the_line_back() -> None:
    session = PretendSession(fails="The disk is full.")
    async with opened(session) as app:
        await app.type("mow 3in front")
        await app.press("enter")
        assert app.line == "mow 3in front"
        assert "not saved: The disk is full." in app.reading
        assert app.prompt == "!"
        session.fails = ""
        await app.press("enter")
        assert app.line == ""
        assert app.prompt == ">"
        assert len(session.done) == 1


async def test_the_line_is_free_while_the_book_is_saving() -> None:
    go_on = threading.Event()
    session = PretendSession(before_save=lambda: None)
    session.before_save = lambda: go_on.wait(5) and None
    async with opened(session) as app:
        app.app.acts.answer("x")
        await app.type("mow 3in")
        app.app.acts.answer("enter")
        await asyncio.sleep(0)
        assert app.prompt == "~"
        assert app.line == ""
        app.app.line.put("rain 0.2in")
        go_on.set()
        await app.rest()
        assert app.line == "rain 0.2in"
        assert app.prompt == ">"


async def test_a_failed_line_waits_until_the_line_is_free() -> None:
    go_on = threading.Event()
    session = PretendSession(fails="The disk is full.")
    session.before_save = lambda: go_on.wait(5) and None
    async with opened(session) as app:
        await app.type("mow 3in")
        app.app.acts.answer("enter")
        await asyncio.sleep(0)
        app.app.line.put("rain 0.2in")
        go_on.set()
        await app.rest()
        assert app.line == "rain 0.2in"
        assert "The disk is full." in app.screen
        await app.press("escape")
        assert app.line == "mow 3in"


async def test_an_entry_is_fetched_put_right_and_saved_in_its_place() -> None:
    session = PretendSession()
    async with opened(session) as app:
        await app.press("end", "enter")
        assert app.app.typed.amends
        entry = next(e for e in session.entries if e.id == app.app.typed.amends)
        await app.type(" -- checked")
        await app.press("enter")
        again = next(e for e in session.entries if e.id == entry.id)
        assert again == replace(entry, remark="checked", line=again.line, assumed=again.assumed)


async def test_amending_says_so_and_ends_when_the_line_is_emptied() -> None:
    session = PretendSession()
    before = len(session.entries)
    async with opened(session) as app:
        await app.press("end", "enter")
        assert "Enter changes that entry" in app.screen
        await app.press("ctrl+u")
        assert app.app.typed.amends == ""
        assert "what you type now is a new one" in app.screen
        await app.press("m")
        assert "changes that entry" not in app.screen
        await app.press("enter")
        assert len(session.entries) == before + 1


async def test_delete_strikes_the_entry_under_the_cursor() -> None:
    session = PretendSession()
    before = len(session.entries)
    async with opened(session) as app:
        await app.press("end", "delete")
        assert len(session.entries) == before - 1
        assert "struck" in app.reading
        assert "Ctrl+Z undo" in app.reading


async def test_delete_with_the_cursor_on_no_entry_strikes_nothing() -> None:
    session = PretendSession()
    before = len(session.entries)
    async with opened(session) as app:
        await app.press("down", "delete")
        assert len(session.entries) == before
        assert "on no entry" in app.reading


async def test_an_unsaved_line_is_there_next_time(tmp_path: Path) -> None:
    kept = tmp_path / "state" / "line.txt"
    async with opened(kept=kept) as app:
        await app.type("feed pond-ridge 3lb")
        await app.press("ctrl+q")
        app.app.keep()
    assert kept.stat().st_mode & 0o777 == 0o600
    async with opened(kept=kept) as app:
        assert app.line == "feed pond-ridge 3lb"
        await app.press("escape", "ctrl+q")
        app.app.keep()
    assert not kept.exists()
