"""The mouse moves the cursor and never takes the focus."""

from journal.screens.canvas import Canvas
from tests.screens.driver import opened


async def test_a_click_moves_the_cursor_and_a_second_one_fetches_the_line() -> None:
    async with opened() as app:
        app.app.on_canvas_clicked(Canvas.Clicked(10, 2, twice=False))
        await app.rest()
        assert app.rows[2].startswith("▸late mow front, back")
        assert app.app.focused is app.app.line
        app.app.on_canvas_clicked(Canvas.Clicked(10, 2, twice=True))
        await app.rest()
        assert app.line == "mow front back 3in"


async def test_a_click_beside_everything_does_nothing() -> None:
    async with opened() as app:
        before = app.rows
        app.app.on_canvas_clicked(Canvas.Clicked(3, 11, twice=True))
        assert await app.rest() == before


async def test_the_wheel_scrolls() -> None:
    async with opened(size=(80, 16)) as app:
        before = app.rows
        app.app.on_canvas_wheeled(Canvas.Wheeled(1))
        assert await app.rest() != before
        app.app.on_canvas_wheeled(Canvas.Wheeled(-1))
        assert await app.rest() == before


async def test_a_real_press_of_the_button_leaves_the_focus_where_it_is() -> None:
    async with opened() as app:
        from textual.pilot import Pilot

        pilot: Pilot[int] = Pilot(app.app)
        await pilot.click("#page", offset=(10, 3))
        await app.rest()
        assert app.rows[3].startswith("▸")
        assert app.app.focused is app.app.line
