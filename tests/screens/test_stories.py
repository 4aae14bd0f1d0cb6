"""What a person does with the keyboard, from the first letter to the saved entry."""

import asyncio
import threading
from dataclasses import replace
from datetime import date
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


async def test_the_reading_says_in_words_what_will_be_saved_and_what_was_assumed() -> None:
    async with opened(size=(120, 36)) as app:
        await app.type("mow 3in front")
        assert "mow front, at 3 in, bagged (usual), today" in app.reading
        assert "Clears mow-gap" in app.reading
        assert "Enter saves" in app.reading


async def test_on_a_narrow_screen_the_assumed_words_are_gathered() -> None:
    async with opened() as app:
        await app.type("mow front side back")
        assert "Enter saves" in app.reading
        assert "(2 usual)" in app.reading
        await app.press("f1")
        assert "bagged (usual)" in app.screen


async def test_a_flag_without_room_beside_the_sentence_has_the_row_below() -> None:
    async with opened(PretendSession(harms="1.5in")) as app:
        await app.type("mow 1.5in front side")
        assert "mow front, side, at 1.5 in" in app.reading
        assert app.hints.startswith("! harm label-rate: above the label's high rate.")
        await app.press("space")
        assert "Tab takes" in app.hints
        assert "! harm" in app.reading


async def test_a_word_that_cannot_be_read_is_kept_marked_and_answered() -> None:
    session = PretendSession()
    async with opened(session) as app:
        await app.type("mow frnot 3in")
        before = app.rows
        await app.press("enter")
        assert app.line == "mow frnot 3in"
        assert session.done == []
        assert "front" in app.reading
        assert app.app.line.marked == (4, 9)
        assert app.rows[0] == before[0]


async def test_a_word_still_being_typed_is_not_yet_called_wrong() -> None:
    async with opened() as app:
        await app.type("mow 3")
        assert not app.reading.startswith("✗")
        assert app.app.line.marked == (0, 0)
        await app.press("enter")
        assert app.reading.startswith("✗")
        assert app.line == "mow 3"


async def test_tab_takes_the_suggestion_where_nothing_completes() -> None:
    async with opened() as app:
        await app.type("mow frnot")
        await app.press("enter", "tab")
        assert app.line == "mow front"


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


async def test_the_safety_words_stand_where_a_weed_product_is_typed() -> None:
    async with opened() as app:
        await app.type("treat well-field 1floz side")
        assert "The label is law" in app.hints
        assert "1-800-222-1222" in app.hints
        await app.press("escape")
        await app.type("feed pond-ridge 3lb/k")
        assert "label" not in app.hints


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


async def test_right_and_tab_take_the_ghost() -> None:
    async with opened() as app:
        await app.type("mow fro")
        assert app.app.line.ghost == "nt"
        await app.press("right")
        assert app.line == "mow front"
        await app.press("escape")
        await app.type("feed ")
        await app.press("tab")
        first = app.line
        await app.press("tab")
        second = app.line
        assert first != second
        assert first.startswith("feed ")
        assert second.startswith("feed ")
        await app.press("shift+tab")
        assert app.line == first


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


async def test_a_line_far_too_long_is_refused_and_kept() -> None:
    async with opened() as app:
        await app.paste("note " + "x" * 10_000)
        await app.press("enter")
        assert len(app.line) == 10_005
        assert "10,005 characters" in app.reading


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


async def test_finding_an_entry_by_a_part_of_its_text() -> None:
    async with opened() as app:
        await app.type("/cores")
        await app.press("escape")
        await app.type("/aerate sep")
        assert app.rows[0].startswith(" Find aerate sep ")
        assert "cultivation" in app.screen
        await app.press("enter")
        assert app.line.startswith("aerate all 2x")


async def test_ctrl_c_does_not_quit_but_says_what_does() -> None:
    async with opened() as app:
        await app.press("ctrl+c")
        assert "Ctrl+Q quits" in app.reading
        assert app.app.is_running


async def test_nothing_moves_while_typing() -> None:
    async with opened() as app:
        before = app.rows[:-3]
        for letter in "treat well-field 1floz side wind 4mph":
            rows = await app.press("space" if letter == " " else letter)
            assert rows[:-3] == before
            assert len(rows) == 24
