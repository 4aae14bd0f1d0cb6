"""Whatever the book holds and however small the window, the screen stays whole."""

import re
from dataclasses import replace

import pytest
from rich.cells import cell_len

from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.rules.flag import Level
from journal.screens.ink import BARE, DARK, LIGHT, Palette
from tests.screens.driver import Driven, opened
from tests.screens.pretend import TODAY, PretendSession, empty_book, flag, lawn_settings

HOSTILE = (
    "[red]x[/red]",
    "see [/",
    "[/]",
    "[@click=app.quit]x[/]",
    '{"a": [true]}',
    "[b'x']",
    "\x1b[31mred\x1b[0m",
    "\x1b]0;title\x07",
    "\x9b31m",
    "nul\0",
    "tab\tand\nline",
    "e\u0301 👩\u200d🌾 漢字",
    "x" * 300,
)
CONTROL = re.compile("[\x00-\x1f\x7f-\x9f]")
SIZES = [(80, 24), (120, 36), (200, 60), (60, 16)]
KEYS = (
    "1", "2", "4", "down", "space", "down", "3", "down", "space", "down", "tab", "?", "escape", "end", "pagedown",
    "pageup", "home",
)  # fmt: skip


def bad_book(text: str) -> PretendSession:
    """A book whose every word of the owner's is `text`, as a damaged or foreign file could hold it."""
    session = PretendSession()
    entries = [
        Remark(id="8000", date=TODAY, text=text, line=text),
        Mowing(id="8001", date=TODAY, zones=("front",), height_mm=76.2, remark=text),
    ]
    session.news = [*entries]
    session.refresh()
    session.made_flags = (
        flag("mow-gap", Level.HARM, "front", headline=text, why=text, do=text, evidence=("8000", "8001")),
        *session.made_flags,
    )
    session.made_hidden = (flag("photo-gap", Level.NOTE, headline=text, hidden=text),)
    return session


def assert_whole(app: Driven, width: int, height: int) -> None:
    """Exactly the window's rows and columns, and nothing in them that steers a terminal."""
    rows = app.rows
    assert len(rows) == height
    for row in rows:
        assert cell_len(row) == width
        assert not CONTROL.search(row)


@pytest.mark.parametrize("text", HOSTILE)
async def test_hostile_words_are_only_words(text: str) -> None:
    async with opened(bad_book(text), size=(120, 36)) as app:
        for key in KEYS:
            await app.press(key)
            assert_whole(app, 120, 36)
        await app.press("escape", "escape", "3")
        shown = CONTROL.sub("·", text)[:40]
        assert shown in app.screen


@pytest.mark.parametrize("text", HOSTILE)
async def test_hostile_names_of_zones_and_products_are_only_words(text: str) -> None:
    """A foreign book may hold names that this program would never have taken."""
    settings = [
        replace(entry, name=text) if isinstance(entry, Setting) and entry.name in ("front", "pond-ridge") else entry
        for entry in lawn_settings()
    ]
    fed = Feeding(id="8000", date=TODAY, zones=(text,), product=text, amount_g=900.0, remark=text, line=text)
    session = PretendSession(entries=[*settings, fed, Mowing(id="8001", date=TODAY, zones=(text,), height_mm=57.15)])
    session.made_flags = (flag("mow-gap", Level.HARM, text, headline=text, why=text, do=text),)
    async with opened(session, size=(120, 36)) as app:
        for key in (*KEYS, "2", "down", "down", "enter", "escape", "1", "1"):
            await app.press(key)
            assert_whole(app, 120, 36)
        await app.press("ctrl+z", "delete")
        assert_whole(app, 120, 36)


@pytest.mark.parametrize("text", HOSTILE)
async def test_a_toast_with_hostile_words_shows_them_as_words(text: str) -> None:
    async with opened(PretendSession(fails=f"no: {text}")) as app:
        await app.type("mow 3in")
        await app.press("enter")
        assert_whole(app, 80, 24)
        assert CONTROL.sub("·", text)[:20] in app.reading


@pytest.mark.parametrize("text", HOSTILE)
async def test_hostile_typing_and_pasting(text: str) -> None:
    async with opened() as app:
        await app.paste(f"note {text}")
        assert_whole(app, 80, 24)
        await app.press("f1")
        assert_whole(app, 80, 24)
        await app.press("escape", "enter")
        assert_whole(app, 80, 24)
        await app.press("up")
        assert_whole(app, 80, 24)


@pytest.mark.parametrize("palette", [DARK, LIGHT, BARE], ids=lambda palette: palette.name)
@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
async def test_every_row_is_exactly_as_wide_as_the_window(palette: Palette, size: tuple[int, int]) -> None:
    async with opened(size=size, palette=palette) as app:
        assert_whole(app, *size)
        for key in (*KEYS, "escape", ".", ">", "0"):
            await app.press(key)
            assert_whole(app, *size)
        await app.type("treat well-field 9floz side")
        assert_whole(app, *size)
        await app.press("f1")
        assert_whole(app, *size)


@pytest.mark.parametrize("size", [(1, 1), (2, 3), (4, 2), (59, 16), (60, 15), (10, 40), (300, 3)])
async def test_small_windows_say_what_is_needed_and_keep_the_line(size: tuple[int, int]) -> None:
    async with opened() as app:
        await app.type("mow 3in")
        await app.resize(*size)
        assert_whole(app, *size)
        if size[0] >= 12:
            assert "needs 60x16" in app.screen
        await app.type(" front")
        await app.press("down", "tab", "f1", "escape")
        await app.resize(80, 24)
        assert_whole(app, 80, 24)
        assert "mow 3in front" in {app.line, *app.app.recall.lines}


@pytest.mark.parametrize("book", [empty_book, lambda: PretendSession(entries=lawn_settings())], ids=["none", "new"])
async def test_books_with_nothing_in_them(book: "type[PretendSession]") -> None:
    for size in (*SIZES, (1, 1)):
        async with opened(book(), size=size) as app:
            assert_whole(app, *size)
            for key in KEYS:
                await app.press(key)
                assert_whole(app, *size)


async def test_a_lawn_without_areas_or_frost() -> None:
    session = PretendSession()
    session.entries = [replace(e, values=()) if e.kind == "setting" else e for e in session.entries]
    session.news = [Mowing(id="9", date=TODAY)]
    session.refresh()
    async with opened(session) as app:
        for key in KEYS:
            await app.press(key)
            assert_whole(app, 80, 24)
