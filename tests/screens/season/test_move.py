"""The keys of the page."""

from datetime import date
from functools import cache

from journal.screens.page import Size
from journal.screens.pages import page_numbered
from journal.screens.pages.season import PAGE
from journal.screens.picture import plain_text
from journal.screens.season.cells import AS_OF, COUNT, week_of
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.season.story import MAY, renovation_in_may, standing

SIZE = Size(80, 21)
START = View(page=2, as_of=MAY, today=MAY)


@cache
def _book() -> Standing:
    return renovation_in_may()


def _press(view: View, *keys: str, size: Size = SIZE) -> View:
    for key in keys:
        view = PAGE.press(key, _book(), view, size) or view
    return view


def _place(view: View) -> tuple[int, int]:
    return view.row, view.cell


def test_the_page_is_found_by_its_number() -> None:
    assert page_numbered(2) is PAGE


def test_the_cursor_comes_in_on_mow_in_the_week_judged() -> None:
    for key in ("up", "down", "left", "right"):
        assert _place(_press(START, key)) == (1, AS_OF)


def test_arrows_walk_cell_by_cell_and_lane_by_lane_and_stop_at_the_edges() -> None:
    here = _press(START, "left")
    assert _place(_press(here, "left", "left", "right")) == (1, AS_OF - 1)
    assert _place(_press(here, "down", "down", "up")) == (2, AS_OF)
    assert _place(_press(here, *["up"] * 5)) == (0, AS_OF)
    assert _place(_press(here, *["down"] * 20)) == (9, AS_OF)
    assert _place(_press(here, *["right"] * 60)) == (1, COUNT - 1)
    assert _place(_press(here, "home")) == (1, 0)
    assert _place(_press(here, "end")) == (1, COUNT - 1)


def test_a_page_is_a_month() -> None:
    here = _press(START, "left")
    assert _press(here, "pageup").cell == AS_OF - 5
    assert _press(here, "pageup", "pagedown").cell in (AS_OF - 1, AS_OF)


def test_tab_goes_to_where_flags_rose_and_round() -> None:
    first = _press(START, "tab")
    assert _place(first) == (0, 34)
    assert _place(_press(first, "tab")) == (0, 36)
    assert _place(_press(first, "tab", "tab")) == (0, 34)
    assert _place(_press(first, "shift+tab")) == (0, 36)
    assert PAGE.press("tab", standing([]), START, SIZE) is None


def test_space_opens_and_closes() -> None:
    opened = _press(START, "right", "space")
    assert opened.open
    rows = [plain_text(row) for row in PAGE.draw(_book(), opened, SIZE).rows]
    assert sum(row.startswith(("Mow", "Feed", "Seed")) for row in rows) == 1
    assert not _press(opened, "space").open


def test_plus_keeps_the_day_and_minus_the_lane() -> None:
    here = _press(START, "right", "down", "down", "left", "left")
    in_days = _press(here, "plus")
    assert in_days.days
    assert _place(in_days) == (3, AS_OF - (MAY - date(2027, 4, 16)).days)
    years = _press(here, "minus")
    assert (years.years, years.top, years.row, years.cell) == (True, 3, 0, week_of(date(2027, 4, 16)))
    assert _place(_press(years, "minus")) == _place(here)
    assert _press(START, "plus").cell == -1
    assert _press(START, "minus", "minus") == START


def test_over_the_years_up_is_back() -> None:
    years = _press(START, "right", "minus")
    assert _press(years, "up").row == 1
    assert _press(years, "up", "up", "up").row == 1
    assert _press(years, "up", "down").row == 0
    assert PAGE.press("tab", _book(), years, SIZE) is None


def test_a_key_without_meaning_is_not_taken() -> None:
    assert PAGE.press("x", _book(), START, SIZE) is None
    assert PAGE.press("left", _book(), START, Size(20, 5)) is None


def test_enter_takes_up_the_entry_and_delete_strikes_it() -> None:
    under = PAGE.draw(_book(), START.but(row=1, cell=9), SIZE).under
    assert under is not None
    assert under.line == "mow all 2.8in bag on 2026-11-01"
    struck = next(e for e in _book().history.track("front", type(_mowing())).entries if e.id == under.entry)
    assert struck.date == date(2026, 11, 1)


def _mowing() -> object:
    return _book().history.tracks["front", "mowing"].entries[0]


def test_enter_takes_up_the_step_where_nothing_was_done() -> None:
    under = PAGE.draw(_book(), START.but(row=1, cell=36), SIZE).under
    assert under is not None
    assert (under.line, under.entry) == ("mow front back 3in", "")
    ahead = PAGE.draw(_book(), START.but(row=2, cell=42), SIZE).under
    assert ahead is not None
    assert ahead.line == "feed pond-ridge 11lb front back"


def test_a_flag_is_under_the_cursor_where_it_rose() -> None:
    under = PAGE.draw(_book(), START.but(row=0, cell=34), SIZE).under
    assert under is not None
    assert under.flag == "photo-gap/front"


def test_targets_are_numbered_as_the_rows_the_cursor_walks() -> None:
    picture = PAGE.draw(_book(), START, SIZE)
    labels = [plain_text(picture.rows[target.row])[:4].strip() for target in picture.targets]
    assert labels == ["Flag", "Mow", "Feed", "Prot", "Seed", "Soil", "Wate", "Look", "High", "Rain"]
    assert {(target.left, target.right) for target in picture.targets} == {(0, 80)}
    years = PAGE.draw(_book(), START.but(years=True, top=1), SIZE)
    assert [plain_text(years.rows[target.row])[:4] for target in years.targets] == ["2027", "2026"]
