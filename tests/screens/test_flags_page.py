"""The Flags page: gravest first, everything said when opened, hidden ones small at the foot."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest

from journal.line.settings import RULES
from journal.record.kinds.hiding import Snooze
from journal.rules.flag import Flag, Level
from journal.screens.page import Size
from journal.screens.pages.flags import PAGE, advised
from journal.screens.pages.today import PAGE as TODAY_PAGE
from journal.screens.picture import plain_text
from journal.screens.telling import aside_line, snooze_line
from journal.screens.view import View
from journal.standing import standing
from tests.scenario import book, day
from tests.screens.driver import opened
from tests.screens.pretend import TODAY, PretendSession, diary, flag, lawn_settings

SIZE = Size(100, 40)


def rows(session: PretendSession, **view: object) -> list[str]:
    """The page as text."""
    seen = View(as_of=TODAY, today=TODAY, page=3).but(**view)
    return [plain_text(row) for row in PAGE.draw(session.standing(TODAY), seen, SIZE).rows]


def test_the_gravest_stands_first() -> None:
    session = PretendSession()
    grave = flag("label-rate", Level.HARM, "side", headline="above the label's high rate")
    session.made_flags = (*session.made_flags, grave)
    levels = [row.split()[0] for row in rows(session) if row[1:5] in ("harm", "loss", "late", "note")]
    assert levels == ["harm", "late", "note", "note"]


def test_an_opened_flag_says_everything() -> None:
    text = "\n".join(rows(PretendSession(), row=0, open=True))
    for words in ("why", "Mow before it is longer", "a mowing", "front, back, at 3 in", "10 d, default", "a bulletin"):
        assert words in text


def test_hidden_flags_stand_at_the_foot_with_their_reason() -> None:
    session = PretendSession()
    session.made_hidden = (flag("seed-switch", Level.LOSS, "side", headline="x", hidden="wanted a darker blend"),)
    shown = rows(session)
    at = next(at for at, row in enumerate(shown) if "OUT OF SIGHT" in row)
    assert "wanted a darker blend" in shown[at + 1]


def test_nothing_wrong_is_said_too() -> None:
    session = PretendSession()
    session.made_flags = ()
    assert "Nothing is flagged on Mon 3 May." in "\n".join(rows(session))


def test_the_line_in_the_advice_is_the_answer() -> None:
    flag = PretendSession().made_flags[0]
    assert advised(flag) == "mow front back 3in"
    assert advised(replace(flag, do="mow")) == ""


def test_an_opened_flag_has_the_lines_that_put_it_out_of_sight() -> None:
    text = "\n".join(rows(PretendSession(), row=0, open=True))
    assert "for a week: snooze mow-gap 7d front back" in text
    assert "for good: aside mow-gap front back -- your reason" in text


def test_a_flag_that_is_one_of_several_of_its_rule_is_hidden_by_its_own_id() -> None:
    named = {"subject": "stone-wall", "id": "seed-switch/front/stone-wall"}
    one = flag("seed-switch", Level.LOSS, "front", headline="x", **named)
    assert snooze_line(one) == "snooze seed-switch/front/stone-wall 7d"
    assert aside_line(one) == "aside seed-switch/front/stone-wall -- "
    spaced = replace(one, subject="two words", id="seed-switch/front/two words")
    assert snooze_line(spaced) == "snooze seed-switch 7d front"


@pytest.mark.parametrize("line", [snooze_line, aside_line])
def test_the_lines_that_hide_can_be_read_and_hide_that_flag(line: Callable[[Flag], str]) -> None:
    kept = book(
        "2026-09-06 seed three-river 9lb front back", "2027-08-01 intend seed stone-wall 2027-09-04 front back",
        "2027-08-01 buy quick-rye 1x 20lb",
    )  # fmt: skip
    on = "2027-08-02"
    flags = [one for one in standing(kept, day(on)).flags if one.rule in RULES]
    assert {"feed-overdue", "seed-switch"} <= {one.rule for one in flags}
    for shown in flags:
        after = standing(book(f"{on} {line(shown)}{'as we like it' * line(shown).endswith(' ')}", on=kept), day(on))
        assert shown.id not in {one.id for one in after.flags}, shown.id
        assert {one.id for one in after.flags} < {one.id for one in standing(kept, day(on)).flags}


async def test_delete_on_a_flag_has_the_line_that_hides_it_and_saves_nothing() -> None:
    async with opened() as app:
        await app.press("3", "down", "delete")
        assert app.line == "snooze mow-gap 7d front back"


async def test_the_lines_inside_an_opened_flag_can_be_taken() -> None:
    async with opened() as app:
        await app.press("3", "down", "space", "down", "enter")
        assert app.line == "snooze mow-gap 7d front back"
        await app.press("escape", "3", "down", "space", "down", "down", "enter")
        assert app.line == "aside mow-gap front back -- "


async def test_a_flag_out_of_sight_has_the_entry_that_hides_it_and_comes_back_by_delete() -> None:
    hiding = Snooze(id="2000", date=TODAY, zones=("side",), flag="seed-switch", until=TODAY + timedelta(7))
    session = PretendSession(entries=[*lawn_settings(), *diary(), hiding])
    session.made_flags = ()
    session.made_hidden = (flag("seed-switch", Level.LOSS, "side", headline="x", hidden="snoozed until Mon 10 May"),)
    async with opened(session) as app:
        await app.press("3", "down", "enter")
        assert app.line == "snooze side seed-switch 2027-05-10 on 2027-05-03"
        assert app.app.typed.amends == "2000"
        await app.press("escape", "down", "delete")
        assert "2000" not in {entry.id for entry in session.entries}


def test_flags_of_one_entry_stand_on_one_card() -> None:
    session = PretendSession()
    session.made_flags = (
        flag("feed-dose", Level.NOTE, "front", headline="a little much", evidence=("1001",)),
        flag("feed-closed", Level.HARM, "front", headline="closed days", evidence=("1001",)),
        flag("photo-gap", Level.NOTE, "", headline="no photo"),
    )
    shown = [row for row in rows(session) if row[1:5] in ("harm", "note")]
    assert [row[5:30].strip() for row in shown] == ["feed-closed  front", "└ feed-dose  front", "photo-gap"]


@pytest.mark.parametrize("size", [Size(80, 21), Size(120, 33)])
def test_harm_that_was_set_aside_stays_in_sight_on_the_first_page(size: Size) -> None:
    session = PretendSession()
    session.made_hidden = (
        flag("label-rate", Level.HARM, "side", headline="x", hidden="set aside for good: spot only"),
        flag("seed-switch", Level.LOSS, "side", headline="x", hidden="set aside for good: darker"),
    )
    seen = View(as_of=TODAY, today=TODAY)
    text = "\n".join(plain_text(row) for row in TODAY_PAGE.draw(session.standing(TODAY), seen, size).rows)
    assert "harm label-rate side  set aside for good: spot only" in text
    assert "darker" not in text
