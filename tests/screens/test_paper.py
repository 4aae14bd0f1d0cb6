"""Rows to stand on, and rows to stand on inside one that is opened."""

from dataclasses import replace
from functools import partial

from journal.screens.page import Size
from journal.screens.paper import Paper, Within, press
from journal.screens.picture import Picture, Span, Target, plain_text
from journal.screens.rows import text
from journal.screens.view import View
from tests.screens.pretend import TODAY

SIZE = Size(40, 12)
VIEW = View(as_of=TODAY, today=TODAY)


def inside(name: str, rows: int) -> Within:
    """A heading, then so many rows to stand on."""

    def paper() -> Paper:
        inner = Paper(VIEW, SIZE.width)
        inner.add(text("   INSIDE"))
        for at in range(rows):
            inner.stop(
                (Span("   "), Span(f"{name} {at}")), Target(-1, flag=f"{name}{at}"), line=partial("l{}".format, at)
            )
        return inner

    return Within(tuple(Target(-1, flag=f"{name}{at}") for at in range(rows)), paper)


def shelves(count: int = 3, rows: int = 2) -> Paper:
    """Rows `a`, `b`, `c`, each with rows inside."""
    paper = Paper(VIEW, SIZE.width)
    paper.heading("TOP")
    for name in "abcdefgh"[:count]:
        paper.stop((Span(" "), Span(name)), Target(0, flag=name), lit=1, within=inside(name, rows))
    return paper


def drawn(paper: Paper, view: View) -> Picture:
    return paper.picture(text("first"), SIZE, view)


def lit(paper: Paper, view: View) -> str:
    """The row the cursor stands on."""
    rows = [plain_text(row) for row in drawn(paper, view).rows if plain_text(row).startswith("▸")]
    assert len(rows) == 1
    return rows[0].removeprefix("▸").strip()


def walked(paper: Paper, view: View, *keys: str) -> View:
    for key in keys:
        after = press(key, paper, view, SIZE)
        assert after is not None, key
        view = after
    return view


def test_what_is_inside_a_closed_row_is_passed_over() -> None:
    paper = shelves()
    view = walked(paper, VIEW, "down", "down")
    assert lit(paper, view) == "b"
    assert lit(paper, walked(paper, view, "up")) == "a"
    assert lit(paper, walked(paper, view, "end")) == "c"
    assert lit(paper, walked(paper, VIEW, "tab", "tab", "tab")) == "c"


def test_an_opened_row_is_walked_through_and_left_at_its_end() -> None:
    paper = shelves()
    view = walked(paper, VIEW, "down", "space")
    seen = [lit(paper, view)]
    for _ in range(3):
        view = walked(paper, view, "down")
        seen.append(lit(paper, view))
    assert seen == ["a", "a 0", "a 1", "b"]
    assert lit(paper, walked(paper, view, "up")) == "a"


def test_the_cursor_inside_has_its_own_line_and_name() -> None:
    paper = shelves()
    under = drawn(paper, walked(paper, VIEW, "down", "down", "space", "down", "down")).under
    assert under is not None
    assert (under.flag, under.line) == ("b1", "l1")


def test_closing_leaves_the_cursor_on_the_row_that_held_it() -> None:
    paper = shelves()
    view = walked(paper, VIEW, "down", "down", "space", "down")
    assert lit(paper, view) == "b 0"
    assert lit(paper, walked(paper, view, "space")) == "b"
    escaped = view.but(open=False)
    assert lit(paper, escaped) == "b"
    assert lit(paper, walked(paper, escaped, "down")) == "c"
    assert lit(paper, walked(paper, view, "shift+tab")) == "b"
    assert lit(paper, walked(paper, view, "tab")) == "c"


def test_what_is_hidden_can_be_clicked_nowhere_and_what_is_shown_in_its_row() -> None:
    paper = shelves()
    closed = drawn(paper, VIEW)
    assert [target.row for target in closed.targets] == [2, -1, -1, 3, -1, -1, 4, -1, -1]
    opened = drawn(paper, walked(paper, VIEW, "down", "space"))
    for at, name in ((0, "a"), (1, "a 0"), (2, "a 1"), (3, "b")):
        assert plain_text(opened.rows[opened.targets[at].row]).strip("▸ ") == name
    assert [target.row for target in opened.targets[4:6]] == [-1, -1]


def test_the_cursor_is_always_seen_in_what_is_longer_than_the_page() -> None:
    paper = shelves(count=4, rows=30)
    view = walked(paper, VIEW, "down", "down", "space")
    for step in range(30):
        view = walked(paper, view, "down")
        assert lit(paper, view) == f"b {step}"
    for step in range(28, -1, -1):
        view = walked(paper, view, "up")
        assert lit(paper, view) == f"b {step}"
    view = walked(paper, view, "pagedown")
    assert lit(paper, view).startswith("b ")
    assert len(drawn(paper, view).rows) == SIZE.height


def test_opening_moves_nothing_that_is_above() -> None:
    paper = shelves(rows=4)
    view = walked(paper, VIEW, "down", "down")
    before = [plain_text(row) for row in drawn(paper, view).rows]
    after = [plain_text(row) for row in drawn(paper, walked(paper, view, "space")).rows]
    assert before[:4] == after[:4]
    inner = [plain_text(row) for row in drawn(paper, walked(paper, view, "space", "down")).rows]
    assert [row.lstrip("▸ ") for row in inner] == [row.lstrip("▸ ") for row in after]


def test_the_papers_stops_are_those_that_were_promised() -> None:
    within = inside("a", 3)
    assert [replace(stop.target, row=-1, right=0) for stop in within.paper().stops] == list(within.targets)
