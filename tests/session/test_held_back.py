"""What would do harm is held back until the owner says so with ` !`."""

from datetime import date
from pathlib import Path

import pytest

from journal.line.setup_questions import settings_from_answers
from journal.record.kinds.treatment import Treatment
from journal.session.clock import Clock
from journal.session.session import HeldBack, Session

TODAY = date(2026, 6, 1)
LABEL = "product leaf-off kind weed form liquid rate 1.1floz/k 1.5floz/k wind_max 10mph"


@pytest.fixture
def session(tmp_path: Path) -> Session:
    """A new book with one zone and one weed product."""
    made = Session(tmp_path / "book", "test", Clock(TODAY))
    made.set_up(settings_from_answers({"zones": "front 2400sqft", "frost": "05-06 10-05"}, TODAY))
    made.save(made.read(LABEL))
    return made


def treatments(session: Session) -> int:
    return len(session.history.track("front", Treatment).entries)


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("treat leaf-off 50floz front", "its label allows 1.5 fl oz/k"),
        ("treat leaf-off 3floz front wind 14mph", "14 mph of wind"),
    ],
)
def test_harm_waits_for_the_mark(session: Session, line: str, says: str) -> None:
    with pytest.raises(HeldBack, match=says):
        session.save(session.read(line))
    assert treatments(session) == 0
    saved = session.save(session.read(f"{line} !"))
    assert treatments(session) == 1
    assert saved.entries[0].confirmed
    assert [flag.level for flag in session.standing(TODAY).flags][:1] == ["harm"]


def test_what_the_label_allows_is_saved_at_once(session: Session) -> None:
    session.save(session.read("treat leaf-off 3floz front wind 4mph"))
    assert treatments(session) == 1
