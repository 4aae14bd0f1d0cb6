"""The first minute: questions on the line, and a book that takes `m` Enter."""

import pytest

from journal.record.kinds.mowing import Mowing
from journal.screens.setup import Setup, guess_units
from tests.screens.driver import opened
from tests.screens.pretend import TODAY, PretendSession, empty_book


async def test_six_questions_make_a_book_in_which_a_mowing_takes_two_keys() -> None:
    session = empty_book()
    async with opened(session) as app:
        assert "question 1 of 6" in app.rows[0]
        await app.type("North Lane")
        await app.press("enter")
        await app.type("us")
        await app.press("enter")
        await app.type("front 2400sqft, back 3100sqft")
        await app.press("enter")
        await app.type("05-06 10-05")
        await app.press("enter")
        assert "question 5 of 6" in app.rows[0]
        await app.press("enter", "enter")
        assert session.exists
        assert "Nothing is written down yet." in app.screen
        assert "2400" not in app.line
        await app.press("m", "enter")
        (saved,) = session.done
        assert isinstance(saved, Mowing)
        assert saved.zones == ("front", "back")


async def test_enter_alone_takes_every_default() -> None:
    session = empty_book()
    async with opened(session) as app:
        await app.press("enter", "enter", "enter", "enter", "enter", "enter")
        assert session.exists
        assert session.history.lawn(TODAY).zone_names == ("front", "back")


async def test_an_answer_that_cannot_be_used_stays_and_says_which_word() -> None:
    async with opened(empty_book()) as app:
        await app.press("enter", "enter")
        await app.type("front 2400pounds")
        await app.press("enter")
        assert app.line == "front 2400pounds"
        assert "2400pounds" in app.rows[8] + app.rows[9] + app.rows[10] + app.rows[11] + app.rows[12]
        assert "question 3 of 6" in app.rows[0]


async def test_esc_goes_back_to_the_answer_before() -> None:
    async with opened(empty_book()) as app:
        await app.type("Mill Lane")
        await app.press("enter", "escape")
        assert app.line == "Mill Lane"
        assert "question 1 of 6" in app.rows[0]


async def test_digits_and_marks_are_text_while_questions_are_asked() -> None:
    async with opened(empty_book()) as app:
        await app.type("12, ? /")
        assert app.line == "12, ? /"


async def test_a_folder_that_cannot_be_written_says_so_and_asks_again() -> None:
    class Unwritable(PretendSession):
        def set_up(self, settings: object) -> None:
            raise OSError(f"The folder is read-only: {settings!r:.9}")

    async with opened(Unwritable(entries=[], exists=False)) as app:
        await app.press("enter", "enter", "enter", "enter", "enter", "enter")
        assert "The folder is read-only" in app.screen
        assert "question 6 of 6" in app.rows[0]


def test_units_are_guessed_from_the_locale() -> None:
    assert guess_units({"LANG": "en_US.UTF-8"}) == "us"
    assert guess_units({"LANG": "de_DE.UTF-8"}) == "metric"
    assert guess_units({"LC_ALL": "fr_CA.UTF-8", "LANG": "en_US.UTF-8"}) == "metric"
    assert guess_units({}) == "us"


def test_metric_examples_follow_the_answer() -> None:
    setup = Setup("us")
    assert "sqft" in setup.asked[2].example
    assert setup.answer("x lawn")
    assert setup.answer("metric")
    assert "m2" in setup.question.example


async def test_the_word_that_was_not_taken_is_marked_and_tab_puts_what_was_meant() -> None:
    async with opened(empty_book()) as app:
        await app.press("enter", "enter", "enter", "enter")
        await app.type("bluegras")
        await app.press("enter")
        assert app.line == "bluegras"
        assert app.app.line.marked == (0, 8)
        await app.press("tab")
        assert app.line == "kentucky bluegrass"


async def test_tab_on_the_empty_line_puts_the_example_to_be_changed() -> None:
    async with opened(empty_book()) as app:
        await app.press("enter", "enter", "tab")
        assert app.line == "front 2400sqft, back 3100sqft" or app.line == "front 220m2, back 290m2"


@pytest.mark.parametrize("size", [(80, 24), (60, 16)])
async def test_every_question_is_whole_in_the_smallest_window(size: tuple[int, int]) -> None:
    async with opened(empty_book(), size=size) as app:
        for wrong in ("", "leagues", "front 3pounds", "05-06", "moss-nothing", "perhaps"):
            if wrong:
                await app.type(wrong)
                await app.press("enter")
                assert "✗" in app.screen
                assert app.line == wrong
                app.app.line.put("")
            assert "Enter alone" in app.screen
            await app.press("enter")


async def test_the_last_screen_says_what_to_type_with_ones_own_zones() -> None:
    session = empty_book()
    async with opened(session) as app:
        await app.press("enter", "enter")
        await app.type("orchard 900sqft")
        await app.press("enter", "enter", "enter", "enter")
        assert "mow 3in bag orchard -1d" in app.screen or "mow 75mm bag orchard -1d" in app.screen
        assert "set last_frost" in app.screen
