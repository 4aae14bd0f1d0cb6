"""Lines that come from elsewhere: put aside, pasted, found."""

from tests.screens.driver import opened


async def test_esc_puts_the_line_aside_and_up_brings_it_back() -> None:
    async with opened() as app:
        await app.type("feed pond-ridge")
        await app.press("escape")
        assert app.line == ""
        await app.press("ctrl+p")
        assert app.line == "feed pond-ridge"
        await app.press("escape")
        await app.type("fe")
        await app.press("up")
        assert app.line == "feed pond-ridge"
        await app.press("down")
        assert app.line == "fe"


async def test_several_pasted_lines_queue() -> None:
    async with opened() as app:
        await app.paste("mow 3in front\nrain 0.2in\nwater 20min back\n")
        assert app.line == "mow 3in front"
        await app.press("enter", "ctrl+p", "ctrl+p")
        assert app.line == "rain 0.2in"


async def test_a_pasted_path_becomes_a_photo() -> None:
    async with opened() as app:
        await app.paste("'/pictures/my lawn.jpg'")
        assert app.line == 'photo "/pictures/my lawn.jpg" '


async def test_finding_an_entry_by_a_part_of_its_text() -> None:
    async with opened() as app:
        await app.type("/cores")
        await app.press("escape")
        await app.type("/aerate sep")
        assert app.rows[0].startswith(" Find aerate sep ")
        assert "cultivation" in app.screen
        await app.press("enter")
        assert app.line.startswith("aerate all 2x")


async def test_an_entry_of_another_year_is_found_with_its_year() -> None:
    async with opened() as app:
        await app.type("/aerate")
        assert any(row.startswith("  5 Sep 2026") for row in app.rows)
        await app.press("escape")
        await app.type("/rain")
        assert any(row.startswith(" Sun  2 May") for row in app.rows)
