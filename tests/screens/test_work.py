"""How much is done for a key: widgets, rows sent, pages drawn. Counts hold on any machine."""

from collections.abc import Iterator
from contextlib import contextmanager

import pytest
from textual.geometry import Region

from journal.screens.canvas import Canvas
from journal.screens.page import Size
from journal.screens.pages import today as today_page
from journal.screens.pages.today import Today
from journal.screens.paper import Paper
from journal.screens.picture import Picture
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.driver import Driven, opened

PANE = 16
"""The first row of the Season page's words: above it stands the grid."""


@contextmanager
def _rows_sent(app: Driven, monkeypatch: pytest.MonkeyPatch) -> Iterator[list[int]]:
    """The rows of the page that were drawn anew."""
    rows: list[int] = []
    refresh = Canvas.refresh

    def counted(self: Canvas, *regions: Region, **more: bool) -> Canvas:
        if self is app.app.canvas:
            rows.extend(region.y for region in regions)
        return refresh(self, *regions, **more)

    with monkeypatch.context() as patch:
        patch.setattr(Canvas, "refresh", counted)
        yield rows


async def test_hardly_any_widget_is_mounted() -> None:
    async with opened() as app:
        await app.press("2", "3", "?", "escape", "1")
        assert len(list(app.app.screen.walk_children(with_self=True))) <= 10


@pytest.mark.parametrize("page", ["1", "3"])
async def test_a_step_of_the_cursor_draws_few_rows(page: str, monkeypatch: pytest.MonkeyPatch) -> None:
    async with opened() as app:
        await app.press(page, "down")
        with _rows_sent(app, monkeypatch) as rows:
            await app.press("down")
        assert 0 < len(rows) <= 4


@pytest.mark.parametrize("key", ["left", "up", "down"])
async def test_a_step_on_the_grid_draws_few_of_its_rows(key: str, monkeypatch: pytest.MonkeyPatch) -> None:
    async with opened() as app:
        await app.press("2", "down", "down")
        with _rows_sent(app, monkeypatch) as rows:
            await app.press(key)
        assert 0 < len([row for row in rows if row < PANE]) <= 4


async def test_typing_draws_no_page(monkeypatch: pytest.MonkeyPatch) -> None:
    drawn: list[View] = []
    draw = Today.draw

    def counted(self: Today, standing: Standing, view: View, size: Size) -> Picture:
        drawn.append(view)
        return draw(self, standing, view, size)

    monkeypatch.setattr(Today, "draw", counted)
    async with opened() as app:
        drawn.clear()
        await app.type("mow 3in front -- with the new blade")
        assert drawn == []


async def test_walking_down_the_page_builds_it_once(monkeypatch: pytest.MonkeyPatch) -> None:
    built: list[View] = []
    build = today_page.PAPER._build

    def counted(standing: Standing, view: View, size: Size) -> Paper:
        built.append(view)
        return build(standing, view, size)

    monkeypatch.setattr(today_page.PAPER, "_build", counted)
    async with opened() as app:
        await app.press("down")
        built.clear()
        await app.press(*["down"] * 8)
        assert built == []
