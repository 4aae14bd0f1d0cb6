"""The Flags page: gravest first, everything said when opened, hidden ones small at the foot."""

from dataclasses import replace

from journal.rules.flag import Level
from journal.screens.page import Size
from journal.screens.pages.flags import PAGE, advised
from journal.screens.picture import plain_text
from journal.screens.view import View
from tests.screens.pretend import TODAY, PretendSession, flag

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


def test_an_opened_flag_says_how_to_put_it_out_of_sight() -> None:
    assert "snooze mow-gap 7d front back" in "\n".join(rows(PretendSession(), row=0, open=True))
