"""The Today page: what stands in which group, and what the ruler shows."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from journal.plan.step import State, Step
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.screens.page import Size
from journal.screens.pages.today import PAGE
from journal.screens.picture import plain_text
from journal.screens.today.ruler import Ruler, closed
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.pretend import TODAY, PretendSession, lawn_settings

DAY = timedelta(1)


def page(standing: Standing, width: int = 80, height: int = 21, **view: object) -> list[str]:
    """The page's rows as text."""
    seen = View(as_of=standing.as_of, today=TODAY).but(**view)
    return [plain_text(row) for row in PAGE.draw(standing, seen, Size(width, height)).rows]


def ruled(step: Step, session: PretendSession | None = None) -> str:
    """The step's row of the ruler."""
    history = (session or PretendSession(entries=lawn_settings())).history
    return "".join(span.text for span in Ruler(TODAY, 7, 20).row(step, history, "us"))


def step(state: State, **more: object) -> Step:
    """A mowing of the front."""
    made = Step(step="mow", zones=("front",), state=state, earliest=None, line="mow front", title="mow")
    return replace(made, **more)  # type: ignore[arg-type]


def test_what_to_do_and_what_not_yet_stand_on_one_ruler() -> None:
    rows = page(PretendSession().standing(TODAY))
    at = rows.index(next(row for row in rows if row.startswith(" NOT YET")))
    assert [row[1:5] for row in rows[2:at]] == ["late", "open", "open", "soon"]
    assert [row[1:5] for row in rows[at + 1 : at + 4]] == ["wait", "wait", "wait"]
    assert {row.index("│") for row in rows[1 : at + 4]} == {59}


@pytest.mark.parametrize(("width", "cells"), [(60, 28), (80, 28), (120, 49), (200, 77)])
def test_the_ruler_has_whole_weeks_and_the_boundary(width: int, cells: int) -> None:
    assert Ruler.fitting(TODAY, width).width == cells


def test_a_window_is_drawn_hollow() -> None:
    window = step(State.OPEN, earliest=TODAY - DAY, best=(TODAY + DAY, TODAY + 2 * DAY), latest=TODAY + 4 * DAY)
    assert ruled(window) == "      [│-==-]               "


def test_what_is_late_is_marked_today() -> None:
    late = step(State.LATE, earliest=TODAY - 4 * DAY, latest=TODAY - DAY)
    assert ruled(late) == "   [--]│!                   "


def test_what_is_closed_is_crossed_out_to_the_day_it_opens() -> None:
    shut = step(State.BARRED, earliest=TODAY + 3 * DAY, latest=TODAY + 5 * DAY, waits_for="barrier")
    assert ruled(shut) == "       │xxx[-]              "
    assert ruled(replace(shut, earliest=None, latest=None)) == "       │" + "x" * 20


def test_what_was_done_stands_solid_with_its_height() -> None:
    open_step = step(State.OPEN, zones=("side",), line="mow side", earliest=TODAY)
    assert ruled(open_step, PretendSession())[2] == "3"


def test_a_step_due_within_a_week_is_soon_and_a_later_one_waits() -> None:
    near = step(State.WAITING, earliest=TODAY + 7 * DAY, waits_for="opens Mon 10 May")
    assert not closed(near, TODAY)
    assert closed(replace(near, earliest=TODAY + 8 * DAY), TODAY)
    assert closed(replace(near, waits_for="barrier of 12 Apr"), TODAY)


def test_a_zone_alone_shows_its_own_steps_only() -> None:
    rows = page(PretendSession().standing(TODAY), zone="side")
    assert "side · 1,200 sq ft" in rows[0]
    assert not any("water back" in row for row in rows)
    assert any("mow side" in row for row in rows)


def test_the_zone_table_marks_what_is_wrong() -> None:
    rows = page(PretendSession().standing(TODAY))
    front = next(row for row in rows if row.startswith(" front"))
    side = next(row for row in rows if row.startswith(" side"))
    assert "11 !" in front
    assert "!" not in side


def test_with_room_flags_stand_in_words() -> None:
    rows = page(PretendSession().standing(TODAY), 120, 33)
    assert " FLAGS" in rows
    assert any("mow-gap" in row and "11 days since the last mowing" in row for row in rows)


def test_with_less_room_the_last_entries_shrink_and_the_rest_is_a_key_away() -> None:
    rows = page(PretendSession().standing(TODAY), 80, 13)
    assert "more, Down" in rows[-1]
    assert len(rows) == 13


def test_going_down_shows_every_stop() -> None:
    standing = PretendSession().standing(TODAY)
    size = Size(80, 13)
    view = View(as_of=TODAY, today=TODAY)
    seen = set()
    for _ in range(30):
        view = PAGE.press("down", standing, view, size) or view
        picture = PAGE.draw(standing, view, size)
        assert picture.under is not None
        assert 1 <= picture.under.row < 13
        assert plain_text(picture.rows[picture.under.row]).startswith("▸")
        seen.add(view.row)
    assert seen == set(range(len(PAGE.draw(standing, view, size).targets)))


def test_the_safety_words_stand_where_a_weed_product_is_planned() -> None:
    assert any("The label is law" in row for row in page(PretendSession().standing(TODAY)))
    calm = PretendSession(entries=lawn_settings()).standing(TODAY)
    calm = replace(calm, steps=tuple(s for s in calm.steps if "well-field" not in s.line))
    assert not any("The label is law" in row for row in page(calm))


def test_a_new_book_says_what_to_type_with_its_own_names() -> None:
    rows = page(PretendSession(entries=lawn_settings()).standing(TODAY))
    text = "\n".join(rows)
    assert "Nothing is written down yet." in text
    assert "feed pond-ridge 2.5lb/k front" in text


def test_away_from_today_the_ruler_says_so() -> None:
    rows = page(PretendSession().standing(date(2027, 5, 10)))
    assert "as of Mon 10 May 2027, 7 d ahead" in rows[0]
    assert "this day" in rows[1]


def test_a_height_of_cut_stands_as_it_was_meant() -> None:
    standing = PretendSession().standing(TODAY)
    side = replace(standing.zones[2], cut_mm=57.15)
    rows = page(replace(standing, zones=(*standing.zones[:2], side)))
    at = next(row for row in rows if row.startswith(" side")).index("2.25")
    assert next(row for row in rows if row.startswith(" front")).index("3.0 ") == at
    plain = page(standing)
    assert next(row for row in plain if row.startswith(" side"))[16:22] == "   3.0"


def test_nothing_due_leaves_the_boundary_whole() -> None:
    rows = page(replace(PretendSession().standing(TODAY), steps=()))
    assert {row.index("│") for row in rows[1:5]} == {59}


def test_names_that_begin_alike_can_still_be_told_apart() -> None:
    first, second = ("the-long-bank-by-the-water-" + end for end in ("east", "west"))
    standing = PretendSession().standing(TODAY)
    zones = tuple(replace(standing.zones[0], zone=name) for name in (first, second))
    named = [row for row in page(replace(standing, zones=zones)) if row.startswith(" the-lon")]
    assert [row[1:16] for row in named] == ["the-lon…er-east", "the-lon…er-west"]


def test_a_metric_book_has_whole_millimetres_everywhere() -> None:
    settings = [
        replace(entry, values=tuple((key, "metric" if key == "units" else value) for key, value in entry.values))
        if entry.kind == "setting" and entry.what == "lawn" else entry
        for entry in lawn_settings()
    ]  # fmt: skip
    cut = Mowing(id="1000", date=TODAY - DAY, zones=("front",), height_mm=99.06)
    standing = PretendSession(entries=[*settings, cut]).standing(TODAY)
    rows = page(standing)
    assert any(row.endswith("front, at 99 mm") for row in map(str.rstrip, rows))
    assert next(row for row in rows if row.startswith(" front"))[16:22] == "    76"


def test_what_is_meant_for_later_comes_up_too() -> None:
    session = PretendSession()
    plan = Intention(id="2000", date=TODAY, zones=("front",), what="aerate", target=date(2027, 9, 3), rental=True)
    standing = replace(session.standing(TODAY), history=session.history.plus(plan))
    rows = page(standing, 120, 33)
    assert any(" 3 Sep  aerate front  meant" in row for row in rows)
