"""The page is as it was agreed, row by row; and whatever the book and the window, it fits."""

from collections.abc import Callable
from datetime import date, timedelta
from functools import cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import settings as limits
from hypothesis import strategies as st
from rich.cells import cell_len

from journal.screens.page import Size
from journal.screens.pages.season import PAGE
from journal.screens.picture import Ink, Picture, plain_text
from journal.screens.season.lane import every_lane
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.season.story import MAY, ground, mow, numbered, renovation, renovation_in_may, standing, years

GOLDEN = Path(__file__).with_name("golden")
SIZES = {"80x21": Size(80, 21), "120x33": Size(120, 33), "200x57": Size(200, 57)}
SINGLE_WIDTH = "×·–…┊▼▲┬─┄│░▒▓━▁▂▃▄▅▆▇█⁰¹²³⁴⁵⁶⁷⁸⁹"


@cache
def _metric() -> Standing:
    entries = [entry for entry in renovation() if entry.kind != "setting"]
    return standing(numbered([*ground(units="metric"), *entries]))


BOOKS: dict[str, Callable[[], Standing]] = {
    "renovation": cache(renovation_in_may),
    "metric": _metric,
    "empty": cache(lambda: standing([])),
    "one-entry": cache(lambda: standing(numbered([mow("2027-05-01", 3, "lawn")]))),
    "thirty-years": cache(lambda: standing(years(1998, 2027))),
}


def _draw(book: str, size: Size, **changes: object) -> Picture:
    found = BOOKS[book]()
    return PAGE.draw(found, View(page=2, as_of=found.as_of, today=found.as_of).but(**changes), size)


def _text(picture: Picture) -> str:
    return "\n".join(plain_text(row).rstrip() for row in picture.rows) + "\n"


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("book", BOOKS)
def test_the_page_is_as_agreed(book: str, size: str) -> None:
    picture = _draw(book, SIZES[size], row=1, cell=36)
    assert _text(picture) == (GOLDEN / f"{book}-{size}.txt").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("name", "changes"),
    [
        ("days", {"days": True, "row": 1, "cell": 28}),
        ("by-year", {"years": True, "top": 1, "row": 0, "cell": 17}),
        ("days-by-year", {"years": True, "days": True, "top": 1, "row": 1, "cell": 36}),
        ("front", {"zone": "front", "row": 3, "cell": 20}),
        ("opened", {"row": 2, "cell": 36, "open": True}),
        ("no-cursor", {}),
    ],
)
def test_the_other_pictures_are_as_agreed(name: str, changes: dict[str, object]) -> None:
    picture = _draw("renovation", SIZES["80x21"], **changes)
    assert _text(picture) == (GOLDEN / f"{name}.txt").read_text(encoding="utf-8")


@limits(max_examples=60)
@given(
    book=st.sampled_from(sorted(BOOKS)),
    width=st.integers(1, 240),
    height=st.integers(1, 70),
    row=st.integers(-1, 40),
    cell=st.integers(-1, 52),
    top=st.integers(0, 40),
    opened=st.booleans(),
    by_day=st.booleans(),
    by_year=st.booleans(),
)
def test_every_picture_fits_its_window(
    book: str, width: int, height: int, row: int, cell: int, top: int, opened: bool, by_day: bool, by_year: bool
) -> None:
    changes = {"row": row, "cell": cell, "top": top, "open": opened, "days": by_day, "years": by_year}
    picture = _draw(book, Size(width, height), **changes)
    assert len(picture.rows) == height
    assert max(sum(cell_len(span.text) for span in line) for line in picture.rows) <= width
    assert all(len(plain_text(line)) == cell_len(plain_text(line)) for line in picture.rows)


def test_only_plain_narrow_signs_are_drawn() -> None:
    for book in BOOKS:
        for size in SIZES.values():
            drawn = set(_text(_draw(book, size, row=2, cell=30))) - set("\n")
            assert {sign for sign in drawn if not sign.isascii()} <= set(SINGLE_WIDTH)


def test_values_change_but_nothing_moves() -> None:
    """Another cut, and every other row is the same row; numbers keep their columns."""
    size = SIZES["80x21"]
    before = _draw("renovation", size)
    more = standing([*renovation(), mow("2027-05-03", 3, "front", "back", "verge")])
    after = PAGE.draw(more, View(page=2, as_of=MAY), size)
    names = [plain_text(row)[:8] for row in before.rows[3:11]]
    assert names == [plain_text(row)[:8] for row in after.rows[3:11]]
    assert all(len(plain_text(row)) == 80 for row in (*before.rows[3:11], *after.rows[3:11]))
    numbers = [plain_text(row)[61:66] for row in after.rows[3:11]]
    assert numbers == ["    0", "    0", "  0.5", "   91", "  239", "   34", "  0.0", "   32"]


def test_rows_without_the_cursor_are_the_very_same_rows() -> None:
    """Walking the cursor makes no work for the rows it does not touch."""
    one, other = (_draw("renovation", SIZES["80x21"], row=2, cell=cell) for cell in (10, 11))
    same = [a is b for a, b in zip(one.rows[3:14], other.rows[3:14], strict=True)]
    assert same.count(False) == 2
    assert not same[2]


def test_the_cursor_has_two_marks_and_neither_is_a_hue() -> None:
    picture = _draw("renovation", SIZES["80x21"], row=4, cell=20)
    marked = [(y, span) for y, row in enumerate(picture.rows) for span in row if span.ink is Ink.CURSOR]
    assert len(marked) == 1
    y, span = marked[0]
    assert plain_text(picture.rows[y]).startswith("Seed")
    assert len(span.text) == 1
    below = [plain_text(row) for row in picture.rows if "▲" in plain_text(row)]
    assert [row.index("▲") for row in below] == [8 + 20]
    without = [span for row in _draw("renovation", SIZES["80x21"]).rows for span in row]
    assert not any(span.ink is Ink.CURSOR or "▲" in span.text for span in without)


def test_the_line_of_the_date_judged_never_stands_over_data() -> None:
    rows = [plain_text(row) for row in _draw("renovation", SIZES["80x21"]).rows]
    column = 8 + 36
    assert rows[2][column] == "▼"
    assert [row[column] for row in rows[3:11]] == ["l", "▒", "━", "x", "┊", "┊", "┊", "%"]


@pytest.mark.parametrize(
    ("width", "now", "first"),
    [(80, "11 d since 3.0", "Sep"), (67, "11 d", "Sep"), (66, "", "Sep"), (61, "", "Sep"), (60, "", "Sep")],
)
def test_when_it_is_narrow_the_numbers_go_first_and_then_cells_at_the_left(width: int, now: str, first: str) -> None:
    rows = [plain_text(row) for row in _draw("renovation", Size(width, 21)).rows]
    mow_row = next(row for row in rows if row.startswith("Mow"))
    assert mow_row.rstrip().endswith(now or ".")
    assert (first in rows[1]) is (width > 60)
    if width == 60:
        assert mow_row[8:] == next(
            plain_text(row)[9:61] for row in _draw("renovation", Size(61, 21)).rows if plain_text(row).startswith("Mow")
        )


def test_too_small_a_window_says_so() -> None:
    assert plain_text(_draw("renovation", Size(59, 21)).rows[0]) == "needs 60x16"
    assert plain_text(_draw("renovation", Size(80, 12)).rows[0]) == "needs 60x16"
    assert "Mow" in _text(_draw("renovation", Size(60, 13)))


def test_the_weather_stands_only_where_there_is_any() -> None:
    assert "Rain" in _text(_draw("renovation", SIZES["80x21"]))
    assert "Rain" not in _text(_draw("thirty-years", SIZES["80x21"]))
    assert [lane.name for lane in every_lane()] == [
        "Flags", "Mow", "Feed", "Protect", "Seed", "Soil", "Water", "Look", "High", "Rain",
    ]  # fmt: skip


def test_months_never_touch_each_other() -> None:
    start = date(2027, 1, 1)
    for step in range(0, 366, 5):
        found = standing([], start + timedelta(step))
        for size in SIZES.values():
            names = plain_text(PAGE.draw(found, View(page=2, as_of=found.as_of), size).rows[1])
            words = names.replace("Jan 2", "Jan2").split()
            assert all(len(word.strip("'")) in (2, 3, 5, 7) for word in words), names
