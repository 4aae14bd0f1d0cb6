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


async def test_a_click_on_the_grid_puts_the_cursor_on_lane_and_cell() -> None:
    async with opened() as app:
        await app.press("2")
        lanes = [at for at, row in enumerate(app.rows) if row.startswith("Feed")]
        app.app.on_canvas_clicked(Canvas.Clicked(8 + 35, lanes[0], twice=False))
        await app.rest()
        assert (app.app.view.row, app.app.view.cell) == (2, 35)
        assert "23 Apr to 29 Apr · Feed" in app.screen
        app.app.on_canvas_clicked(Canvas.Clicked(2, lanes[0] - 1, twice=False))
        await app.rest()
        assert (app.app.view.row, app.app.view.cell) == (1, 35)
        assert app.app.focused is app.app.line


async def test_a_double_click_on_a_cell_fetches_its_line() -> None:
    async with opened(size=(120, 36)) as app:
        await app.press("2")
        mow = next(at for at, row in enumerate(app.rows) if row.startswith("Mow"))
        app.app.on_canvas_clicked(Canvas.Clicked(8 + 2 * 35, mow, twice=True))
        await app.rest()
        assert app.line.startswith("mow side 3in")
        assert app.app.typed.amends


async def test_the_wheel_walks_the_cells_of_the_season_and_scrolls_the_help() -> None:
    async with opened() as app:
        await app.press("2", "down")
        cell = app.app.view.cell
        app.app.on_canvas_wheeled(Canvas.Wheeled(-1))
        await app.rest()
        assert app.app.view.cell == cell - 1
        await app.press("?")
        top = app.rows
        app.app.on_canvas_wheeled(Canvas.Wheeled(1))
        assert await app.rest() != top
        for _ in range(40):
            app.app.on_canvas_wheeled(Canvas.Wheeled(-1))
        assert await app.rest() == top


async def test_the_wheel_never_runs_past_the_end() -> None:
    async with opened(size=(80, 16)) as app:
        for _ in range(30):
            app.app.on_canvas_wheeled(Canvas.Wheeled(1))
        end = await app.rest()
        app.app.on_canvas_wheeled(Canvas.Wheeled(1))
        assert await app.rest() == end
        for _ in range(3):
            app.app.on_canvas_wheeled(Canvas.Wheeled(-1))
        assert await app.rest() != end
