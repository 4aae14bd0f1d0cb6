"""The words under the grid: what matters first, columns filled before anything is left out, the season in figures."""

from dataclasses import replace
from datetime import date

from journal.facts.safety import SHORT
from journal.record.entry import Entry
from journal.screens.page import Size
from journal.screens.pages.season import PAGE
from journal.screens.picture import plain_text
from journal.screens.season.cells import weeks
from journal.screens.season.scene import Scene, scene_of
from journal.screens.season.summary import figures, season_of, spent
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.season.story import (
    ALL,
    MAY,
    feed,
    ground,
    mow,
    numbered,
    renovation_in_may,
    standing,
    water,
    weather,
)


def _rows(found: Standing, size: Size, **changes: object) -> list[str]:
    view = View(page=2, as_of=found.as_of, today=found.as_of).but(**changes)
    return [plain_text(row).rstrip() for row in PAGE.draw(found, view, size).rows]


def _pane(found: Standing, size: Size, **changes: object) -> list[str]:
    rows = _rows(found, size, **changes)
    return rows[next(at for at, row in enumerate(rows) if row.startswith("─ 30 Apr")) + 1 :]


def test_without_a_cursor_the_gravest_flag_has_one_row_then_comes_what_was_done_then_what_lies_ahead() -> None:
    pane = _pane(renovation_in_may(), Size(80, 21))
    assert pane[0] == " Flags   late +1 mow-gap front, back: mow-gap stands"
    assert pane[1].startswith(" Look    1 May   front, back, at 3.9 in.")
    assert pane[3].startswith(" Mow     late    mow front, back: 11 days since the last cut")
    assert pane[3].endswith("more: Space")
    assert pane[4] == f" {SHORT}"


def test_with_a_cursor_its_lane_comes_first() -> None:
    pane = _pane(renovation_in_may(), Size(80, 21), row=2, cell=36)
    assert pane[0].startswith(" Feed    ━━━     front, back fed 20 Apr")
    assert next(row for row in pane if row.startswith(" Flags"))


def test_a_flag_under_the_cursor_is_told_in_full_once_opened() -> None:
    assert "clears: once done." in " ".join(_pane(renovation_in_may(), Size(80, 21), row=0, cell=36, open=True))


def test_columns_are_filled_before_anything_is_left_out() -> None:
    for size in (Size(120, 33), Size(200, 57)):
        for row in range(-1, 9):
            for cell in (4, 8, 20, 36, 40):
                rows = _rows(renovation_in_may(), size, row=row, cell=cell)
                more = [at for at, line in enumerate(rows) if " more: Space" in line]
                for at in more:
                    columns = rows[at - 1].split("│")
                    assert all(column.strip() for column in columns), rows[at - 1]


def test_the_season_stands_in_a_table_where_there_is_room_and_else_in_a_row() -> None:
    table = _rows(renovation_in_may(), Size(200, 57))
    head = next(at for at, row in enumerate(table) if row.startswith("─ This season, since"))
    assert [row.split()[0] for row in table[head + 2 : head + 5]] == ["front", "back", "verge"]
    row = _rows(renovation_in_may(), Size(120, 33))
    assert row[-3].startswith("─ This season, since")
    assert row[-2].startswith(" mown 4 times   median")
    assert row[-1] == f" {SHORT}"
    assert not any("This season" in row for row in _rows(renovation_in_may(), Size(80, 21)))
    assert not any("This year" in row for row in _rows(standing([]), Size(120, 33)))


def _scene(*entries: Entry, as_of: date = MAY) -> Scene:
    return scene_of(standing(numbered([*ground(), *entries]), as_of), "front", weeks(as_of))


def test_cuts_their_gaps_and_the_gap_still_running_are_counted() -> None:
    (front,) = figures(_scene(*(mow(f"2027-04-{day}", 3, *ALL) for day in (12, 17, 19)), mow("2026-10-01", 3, *ALL)))
    assert (front.cuts, front.median_days, front.longest_days) == (3, 3.5, 14)


def test_water_rain_and_nitrogen_are_summed() -> None:
    (front,) = figures(
        _scene(water("2027-04-20", 0.5, "front"), *weather(date(2027, 4, 20), date(2027, 4, 30)),
               feed("2027-04-20", "pond-ridge", 11, "front", "back"))
    )  # fmt: skip
    assert front.water_mm is not None
    assert round(front.water_mm, 1) == 12.7
    assert front.rain_mm
    assert round(front.nitrogen / 4.882, 1) == 0.5


def test_what_was_spent_is_the_years() -> None:
    paid = [replace(mow("2027-04-12", 3, "front"), cost=12.5), replace(mow("2026-04-12", 3, "front"), cost=100.0)]
    assert spent(_scene(*paid)) == 12.5
    assert spent(_scene(mow("2027-04-12", 3, "front"))) is None


def test_between_seasons_the_last_one_is_told() -> None:
    winter = _scene(mow("2026-10-01", 3, *ALL), as_of=date(2027, 1, 10))
    assert not season_of(winter).on
    rows = _rows(winter.standing, Size(120, 40))
    assert any(row.startswith("─ Last season, 10 Apr 2026 to ") for row in rows)
