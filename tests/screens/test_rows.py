"""Rows are measured in cells, not in characters."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rich.cells import cell_len

from journal.screens.picture import Ink, Span, plain_text, safe
from journal.screens.rows import clipped, cut, ends, filled, left, middle, page, right, wide, wrapped

WORDS = st.text(st.characters(exclude_categories=("Cs", "Mn", "Me", "Cf")), max_size=40)
ROWS = st.lists(st.builds(Span, WORDS, st.sampled_from(Ink)), max_size=5)
WIDTH = st.integers(0, 60)


@given(WORDS, WIDTH)
def test_clipped_text_fits(words: str, width: int) -> None:
    assert cell_len(clipped(words, width)) <= width


@given(WORDS, WIDTH)
def test_left_and_right_are_exact(words: str, width: int) -> None:
    assert cell_len(left(words, width)) == width
    assert cell_len(right(words, width)) == width


@given(ROWS, WIDTH)
def test_a_cut_row_fits_and_a_filled_one_is_exact(row: list[Span], width: int) -> None:
    assert wide(cut(row, width)) <= width
    assert wide(filled(row, width)) == width


@given(ROWS, ROWS, WIDTH)
def test_both_ends_of_a_row_fit(start: list[Span], end: list[Span], width: int) -> None:
    assert wide(ends(start, end, width)) == width


@given(ROWS, st.integers(1, 40), st.integers(0, 10))
def test_a_page_has_its_height_and_no_row_is_too_wide(row: list[Span], width: int, height: int) -> None:
    rows = page([tuple(row)] * 4, width, height)
    assert len(rows) == height
    assert all(wide(one) <= width for one in rows)


@given(st.text(st.characters(categories=("L", "N")), max_size=80), st.integers(2, 30))
def test_wrapped_text_fits_and_loses_nothing(words: str, width: int) -> None:
    lines = wrapped(words, width)
    assert all(cell_len(line) <= width for line in lines)
    assert "".join(lines) == "".join(words.split())


@pytest.mark.parametrize(
    ("words", "width", "shown"),
    [("front, back", 8, "front,…"), ("front", 5, "front"), ("漢字", 3, "漢…"), ("abc", 1, "…"), ("abc", 0, "")],
)
def test_a_cut_is_marked(words: str, width: int, shown: str) -> None:
    assert clipped(words, width) == shown


def test_a_control_character_never_gets_into_a_span() -> None:
    assert plain_text((Span("a\x1b[31mb\tc"),)) == "a·[31mb·c"


@given(WORDS, WIDTH)
def test_a_name_cut_in_the_middle_fits(words: str, width: int) -> None:
    assert cell_len(middle(words, width)) <= width
    if cell_len(safe(words)) <= width:
        assert middle(words, width) == safe(words)


def test_a_name_cut_in_the_middle_keeps_both_ends() -> None:
    assert middle("the-long-bank-by-the-water", 11) == "the-l…water"
