"""Whatever a cell shows, the words say: no value is in the grid alone."""

import re
from collections.abc import Callable
from datetime import date
from functools import cache

import pytest

from journal.screens.page import Size
from journal.screens.pages.season import PAGE
from journal.screens.picture import plain_text
from journal.screens.season.cells import COUNT, days, weeks
from journal.screens.season.lane import Lane, drawn, every_lane
from journal.screens.season.mark import Mark
from journal.screens.season.scene import Scene, scene_of
from journal.screens.view import View
from journal.standing import Standing
from tests.screens.season.story import MAY, renovation_in_may, standing, years

SMALL = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹", "0123456789")

MEANS: dict[str, str] = {
    "░": "usual|past", "▒": "late after", "▓": "late after", "━": "not before", "─": "the window opened",
    ".": "one cut a week", "x": "closed to seed until|seed waits to", "~": "keep damp", "-": "new grass|seedbed|by ",
    "[": "opens", "]": "by ", "=": "best", "B": "gate-barrier", "W": "dock-and-clover", "S": "sown:", "e": "emerged:",
    "E": "became established", "A": "aerate", "o": "crabgrass|emerged|at 3.9 in", "#": "jpg", "t": "pH 6.1",
    "l": "mow-gap", '"': "moles", "n": "photo-gap", "%": "at 3.9 in", "0": "0.0 in", "?": "not known",
}  # fmt: skip


@cache
def _books() -> dict[str, Standing]:
    return {"renovation": renovation_in_may(), "years": standing(years(2025, 2027), MAY)}


def _expected(lane: Lane, mark: Mark) -> str:
    """A pattern that the words must match."""
    text = mark.texts[0]
    if lane.name == "Mow" and text[0].isdigit():
        number = text.translate(SMALL)
        return rf"at {number[0]}\.{number[1:]} in" if number[1:] else rf"at {number} in"
    if lane.name == "High":
        return rf"mean {int(text)}\b|high of {int(text)}\b"
    if text[0] in "▁▂▃▄▅▆▇█":
        return r"\d\.\d lb N/k" if lane.name == "Feed" else r"\d\.\d in"
    return MEANS[text[0]]


def _words(lane: Lane) -> Callable[[Scene, int], str]:
    return lambda scene, cell: " ".join(said.text for said in lane.words(scene, cell) if not said.idle)


@pytest.mark.parametrize("book", ["renovation", "years"])
@pytest.mark.parametrize("by_day", [False, True])
def test_every_mark_is_put_in_words(book: str, by_day: bool) -> None:
    scene = scene_of(_books()[book], "", days(MAY) if by_day else weeks(MAY))
    told = 0
    for lane in every_lane():
        if not lane.on_file(scene):
            continue
        for cell, mark in enumerate(drawn(lane, scene).strip.marks):
            if mark.drawn(1).strip():
                words = _words(lane)(scene, cell)
                seen = f"{lane.name} cell {cell}: {mark.texts[0]!r} but {words!r}"
                assert re.search(_expected(lane, mark), words), seen
                told += 1
    assert told > 20


def test_the_zones_of_a_lane_are_told_apart_in_words() -> None:
    scene = scene_of(_books()["renovation"], "", weeks(MAY))
    mow = every_lane()[1]
    rows = drawn(mow, scene).zones
    assert [row.label for row in rows] == ["front", "back", "verge"]
    for row in rows:
        for cell, mark in enumerate(row.marks):
            if mark.drawn(1) in "░▒▓":
                assert re.search(rf"\b{row.label}\b|all zones", _words(mow)(scene, cell)), (row.label, cell)


def test_the_pane_says_what_the_lane_says_wherever_the_cursor_stands() -> None:
    book = _books()["renovation"]
    scene = scene_of(book, "", weeks(MAY))
    for row, lane in enumerate(lane for lane in every_lane() if lane.on_file(scene)):
        for cell in range(0, COUNT, 3):
            view = View(page=2, as_of=MAY, row=row, cell=cell, open=True)
            pane = _joined(plain_text(line) for line in PAGE.draw(book, view, Size(80, 30)).rows)
            for said in lane.words(scene, cell):
                assert _joined([said.text]).rstrip(".") in pane, (lane.name, cell)


def _joined(lines: object) -> str:
    return " ".join(" ".join(lines).split())  # type: ignore[call-overload]


def test_what_is_not_there_is_said_too() -> None:
    scene = scene_of(standing([], date(2027, 1, 10)), "", weeks(date(2027, 1, 10)))
    for lane in every_lane():
        for cell in (0, 36, 52):
            assert lane.words(scene, cell), lane.name
