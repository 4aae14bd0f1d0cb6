"""Walking back through lines, and keeping the one that was not saved."""

from pathlib import Path

import pytest

from journal.screens.kept import Kept, kept_for
from journal.screens.recall import Recall


def walked(*lines: str) -> Recall:
    """Lines typed in this order."""
    recall = Recall()
    for line in lines:
        recall.add(line)
    return recall


def test_older_and_newer_end_where_one_began() -> None:
    recall = walked("mow", "rain 0.2in")
    assert recall.older("") == "rain 0.2in"
    assert recall.older("rain 0.2in") == "mow"
    assert recall.older("mow") is None
    assert recall.newer("mow") == "rain 0.2in"
    assert recall.newer("rain 0.2in") == ""
    assert recall.newer("") is None


def test_only_lines_that_begin_with_what_was_typed() -> None:
    recall = walked("mow front", "rain 0.2in", "mow back")
    assert recall.older("mow") == "mow back"
    assert recall.older("mow back") == "mow front"
    assert recall.newer("mow front") == "mow back"
    assert recall.newer("mow back") == "mow"


def test_a_line_typed_again_moves_up_and_is_there_once() -> None:
    assert walked("a", "b", "a").lines == ["b", "a"]


def test_the_books_own_lines_lie_below() -> None:
    recall = walked("c")
    recall.fill(["a", "b", "c", "a"])
    assert recall.lines == ["a", "b", "c"]


def test_it_does_not_grow_without_end() -> None:
    recall = walked(*(f"line {at}" for at in range(1200)))
    recall.fill(f"old {at}" for at in range(900))
    assert len(recall.lines) <= 500
    assert recall.lines[-1] == "line 1199"


def test_kept_lines_come_back_and_go(tmp_path: Path) -> None:
    kept = kept_for(tmp_path / "book", tmp_path / "state")
    assert kept.read() == []
    kept.write(["feed 3lb", "mow"])
    assert kept.read() == ["feed 3lb", "mow"]
    assert kept.path is not None
    assert kept.path.stat().st_mode & 0o777 == 0o600
    assert [file.name for file in kept.path.parent.iterdir()] == [kept.path.name]
    kept.write([])
    assert kept.read() == []


def test_two_books_keep_their_lines_apart(tmp_path: Path) -> None:
    kept_for(tmp_path / "one", tmp_path).write(["mow"])
    assert kept_for(tmp_path / "two", tmp_path).read() == []


def test_a_folder_that_cannot_be_written_says_so(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(OSError, match="file"):
        Kept(tmp_path / "file" / "line").write(["mow"])
