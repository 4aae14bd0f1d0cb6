"""The help tells the truth: what it names exists, and what exists is named."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

from journal.line.read import read
from journal.line.setup_questions import settings_from_answers
from journal.record.kinds.setting import Setting
from journal.screens.acts import Acts
from journal.screens.examples import examples
from journal.screens.help import shown
from journal.screens.keys import DIGITS, ON_EMPTY, ON_TEXT, TABLE
from journal.screens.pages import pages
from journal.season.history import History
from tests.screens.driver import opened
from tests.screens.pretend import ANSWERS, TODAY, PretendSession, lawn_settings

DEEDS = {name.removeprefix("do_") for name in dir(Acts) if name.startswith("do_")}


def test_every_key_does_something_that_exists_and_everything_has_a_key() -> None:
    named = {act.partition(" ")[0] for act in (*ON_EMPTY.values(), *ON_TEXT.values())}
    assert named == DEEDS


def test_no_key_means_two_things() -> None:
    for side in ("empty", "typing"):
        keys = [key for row in TABLE for key in getattr(row, side)]
        assert len(keys) == len(set(keys))


_SPOKEN = {
    "ctrl+pageup": "Ctrl+PgUp", "ctrl+pagedown": "PgDn", "pageup": "PgUp", "pagedown": "PgDn", "escape": "Esc",
    "shift+tab": "Shift+Tab", "ctrl+c": "Ctrl+Q",
}  # fmt: skip


def test_every_bound_key_stands_in_the_help() -> None:
    for row in TABLE:
        words = f"{row.shown} {row.on_empty}"
        for key in {**row.empty, **row.typing}:
            if row.shown == DIGITS or (key in ("=", "_") and row.shown == "+ -"):
                continue
            spoken = _SPOKEN.get(key, key.replace("ctrl+", "Ctrl+"))
            assert spoken.casefold() in words.casefold(), f"{key} in {words}"


async def test_the_help_shows_every_row_of_the_table() -> None:
    async with opened(size=(200, 100)) as app:
        await app.press("?")
        for row in TABLE:
            assert shown(row.shown) in app.screen
        for page in pages():
            if page.number == 1:
                for key, _ in page.keys:
                    assert key in app.screen


async def test_the_help_scrolls_to_its_end_and_no_further() -> None:
    async with opened() as app:
        await app.press("?", "end")
        assert "Poison help" in app.screen
        before = app.rows
        await app.press("pagedown", "down")
        assert app.rows == before
        await app.press("?")
        assert "DO" in app.screen


def test_the_help_names_no_page_that_is_not_there() -> None:
    assert shown(DIGITS) == " ".join(str(page.number) for page in pages())
    assert shown("Esc") == "Esc"


METRIC = {**ANSWERS, "units": "metric", "zones": "yard 200m2, bank"}
BARE_LAWN = {"name": "x", "zones": "yard"}


@pytest.mark.parametrize("answers", [ANSWERS, METRIC, BARE_LAWN], ids=["us", "metric", "bare"])
@pytest.mark.parametrize("products", [True, False], ids=["products", "none"])
def test_every_example_can_be_read(answers: dict[str, str], products: bool) -> None:
    settings: list[Setting] = list(settings_from_answers(answers, TODAY))
    settings += [setting for setting in lawn_settings() if setting.what == "product"] if products else []
    history = History.of([replace(setting, id=f"{at:03}") for at, setting in enumerate(settings)])
    lines = examples(history.lawn(TODAY))
    assert len(lines) >= 8
    for line, _ in lines:
        reading = read(line, history, TODAY)
        assert reading.problem is None, f"{line}: {reading.problem}"


async def test_help_on_the_word_under_the_cursor() -> None:
    session = PretendSession(harms="9floz")
    async with opened(session) as app:
        await app.type("treat well-field 9floz side")
        await app.press("f1")
        assert "TREAT" in app.screen
        assert "above the label's high rate." in app.screen
        assert "Read the label" in app.screen
        await app.press("escape")
        assert app.line == "treat well-field 9floz side"
        assert "TREAT" not in app.screen


def test_a_page_is_found_by_its_file() -> None:
    from journal.screens import pages as package

    files = {file.stem for file in Path(package.__file__).parent.glob("*.py")} - {"__init__"}
    assert {page.name for page in pages()} == files
    assert [page.number for page in pages()] == sorted({page.number for page in pages()})


async def test_the_pages_stand_at_the_foot() -> None:
    async with opened() as app:
        for page in pages():
            assert re.search(rf"\b{page.number} {page.name}\b", app.hints, re.IGNORECASE)


async def test_every_flag_of_the_draft_stands_over_the_page_with_its_numbers_and_basis() -> None:
    async with opened(PretendSession(harms="9floz"), size=(120, 40)) as app:
        await app.type("treat well-field 9floz side")
        await app.press("f1")
        for words in ("why", "do", "clears", "days: 10 d, default", "a bulletin says"):
            assert words in app.screen
        await app.press("escape")


async def test_the_help_on_the_line_scrolls_and_the_text_stays() -> None:
    async with opened(PretendSession(harms="9floz"), size=(80, 16)) as app:
        await app.type("treat well-field 9floz side")
        await app.press("f1")
        top = app.rows
        assert await app.press("pagedown") != top
        assert await app.press("pageup") == top
        assert app.line == "treat well-field 9floz side"
