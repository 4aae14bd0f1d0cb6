"""The session: what it writes is there, and windows see each other."""

import os
import signal
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from journal.line.setup_questions import settings_from_answers
from journal.record.kinds.mowing import Mowing
from journal.session.clock import Clock
from journal.session.session import Session
from journal.store import files
from journal.store.change import NotSaved

TODAY = date(2026, 6, 1)


@pytest.fixture
def session(tmp_path: Path) -> Session:
    """A new book with two zones."""
    made = window(tmp_path)
    made.set_up(settings_from_answers({"zones": "front 2400sqft, back 3100sqft", "frost": "05-06 10-05"}, TODAY))
    return made


def window(folder: Path) -> Session:
    """One more window on the same book."""
    return Session(folder / "book", "test", Clock(TODAY))


def mowings(session: Session) -> int:
    return len(session.history.track("front", Mowing).entries)


def test_what_one_window_saves_the_other_sees(session: Session, tmp_path: Path) -> None:
    other = window(tmp_path).open()
    session.save(session.read("mow 3in front"))
    other.save(other.read("mow 3in back"))
    assert other.refresh()
    assert not other.refresh()
    assert session.refresh()
    for one in (session, other):
        assert mowings(one) == 1
        assert one.history.size == session.history.size


def test_undo_is_of_this_window_and_newest_of_this_computer(session: Session, tmp_path: Path) -> None:
    session.save(session.read("mow 3in front"))
    other = window(tmp_path).open()
    with pytest.raises(NotSaved, match="in this window"):
        other.undo()
    assert "mow" in other.undo_newest()
    session.refresh()
    assert mowings(session) == 0
    with pytest.raises(NotSaved, match="changed since"):
        session.undo()


def test_a_harmless_line_is_saved_without_a_word_of_warning(session: Session) -> None:
    saved = session.save(session.read("m"))
    assert saved.entries[0].zones == ("front", "back")
    assert session.undo().startswith("taken back: mow")
    assert session.redo().startswith("back again: mow")
    assert mowings(session) == 1


def test_a_disk_that_says_no_changes_nothing_in_memory(session: Session, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object, **__: object) -> int:
        raise OSError(28, "No space left on device")

    before = session.history
    monkeypatch.setattr(files.Files, "write", full)
    with pytest.raises(NotSaved):
        session.save(session.read("m"))
    assert session.history is before


def test_an_unfinished_line_is_not_saved(session: Session) -> None:
    with pytest.raises(ValueError, match="no verb begins so"):
        session.save(session.read("xyz"))


def test_a_standing_is_worked_out_once(session: Session) -> None:
    assert session.standing(TODAY) is session.standing(TODAY)
    session.save(session.read("m"))
    assert session.standing(TODAY).zones[0].mown_days_ago == 0


CHILD = """
import sys
from datetime import date
from pathlib import Path
from journal.session.clock import Clock
from journal.session.session import Session
session = Session(Path(sys.argv[1]), "test", Clock(date(2026, 6, 1))).open()
while True:
    saved = session.save(session.read("mow 3in front"))
    print(saved.entries[0].id, flush=True)
"""


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="there is no SIGKILL on this system")
@pytest.mark.usefixtures("session")
def test_killed_straight_after_the_acknowledgement_the_entry_is_there(tmp_path: Path) -> None:
    root = Path(__file__).resolve().parents[2]
    child = subprocess.Popen(
        [sys.executable, "-c", CHILD, str(tmp_path / "book")], stdout=subprocess.PIPE, text=True,
        env={**os.environ, "PYTHONPATH": str(root)},
    )  # fmt: skip
    assert child.stdout is not None
    acknowledged = [child.stdout.readline().strip() for _ in range(3)]
    child.kill()
    acknowledged += [line.strip() for line in child.stdout.read().splitlines()]
    child.wait()
    child.stdout.close()
    kept = {entry.id for entry in window(tmp_path).open().history.track("front", Mowing).entries}
    assert set(acknowledged) <= kept
