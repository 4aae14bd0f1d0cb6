"""What the rows under the line say while it is typed."""

from tests.screens.driver import opened
from tests.screens.pretend import PretendSession


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


async def test_the_safety_words_stand_where_a_weed_product_is_typed() -> None:
    async with opened() as app:
        await app.type("treat well-field 1floz side")
        assert "The label is law" in app.hints
        assert "1-800-222-1222" in app.hints
        await app.press("escape")
        await app.type("feed pond-ridge 3lb/k")
        assert "label" not in app.hints


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


async def test_a_line_far_too_long_is_refused_and_kept() -> None:
    async with opened() as app:
        await app.paste("note " + "x" * 10_000)
        await app.press("enter")
        assert len(app.line) == 10_005
        assert "10,005 characters" in app.reading


async def test_nothing_moves_while_typing() -> None:
    async with opened() as app:
        before = app.rows[:-3]
        for letter in "treat well-field 1floz side wind 4mph":
            rows = await app.press("space" if letter == " " else letter)
            assert rows[:-3] == before
            assert len(rows) == 24
