"""Days of weather on their way into the book: once each, and never over what the owner wrote himself."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from journal.line.setup_questions import settings_from_answers
from journal.record.kinds.weather import Weather
from journal.season.daily import DayWeather, weather_days
from journal.season.history import LAWN
from journal.session.clock import Clock
from journal.session.intake import Intake, intake_id
from journal.session.session import Session
from journal.store.change import NotSaved

TODAY = date(2026, 6, 1)
DAYS = [DayWeather(date(2026, 1, 1) + timedelta(n), 10.0 + n % 20, n % 20 - 2.0, n / 8) for n in range(150)]


@pytest.fixture
def session(tmp_path: Path) -> Session:
    made = window(tmp_path)
    made.set_up(settings_from_answers({"zones": "front 2400sqft, back 3100sqft", "frost": "05-06 10-05"}, TODAY))
    return made


def window(folder: Path) -> Session:
    return Session(folder / "book", "test", Clock(TODAY))


def known(session: Session) -> list[DayWeather]:
    """The days as everything that reads weather has them."""
    past = session.history.on(LAWN, TODAY)
    return list(weather_days(past, DAYS[0].day, TODAY.toordinal()).values())


def counts(intake: Intake) -> tuple[int, int, int, int, int]:
    return len(intake.new), len(intake.changed), intake.known, intake.yours, intake.struck


def the_same_as_reopened(session: Session, folder: Path) -> bool:
    other = window(folder).open()
    tracks = session.history.track(LAWN, Weather), other.history.track(LAWN, Weather)
    return tracks[0] == tracks[1] and session.history.size == other.history.size


def changed(days: Iterable[DayWeather], by: float) -> list[DayWeather]:
    return [replace(day, rain_mm=(day.rain_mm or 0) + by) for day in days]


def test_a_second_time_changes_nothing(session: Session, tmp_path: Path) -> None:
    assert counts(session.take_in(DAYS)) == (150, 0, 0, 0, 0)
    assert known(session) == DAYS
    log = [path.read_bytes() for path in sorted((tmp_path / "book" / "log").iterdir())]
    assert counts(session.take_in(DAYS)) == (0, 0, 150, 0, 0)
    assert counts(window(tmp_path).open().take_in(DAYS)) == (0, 0, 150, 0, 0)
    assert [path.read_bytes() for path in sorted((tmp_path / "book" / "log").iterdir())] == log


def test_weighing_writes_nothing(session: Session) -> None:
    intake = session.weigh(DAYS)
    assert counts(intake) == (150, 0, 0, 0, 0)
    assert known(session) == []
    foreseen = intake.after(session.history)
    session.take_in(DAYS)
    assert foreseen.track(LAWN, Weather) == session.history.track(LAWN, Weather)


@pytest.mark.parametrize("count", [3, 150, 900])
def test_one_undo_takes_all_of_it_back_and_it_can_come_again(session: Session, tmp_path: Path, count: int) -> None:
    days = [replace(DAYS[0], date=DAYS[0].date - timedelta(n)) for n in range(count)]
    before = session.history.size
    session.take_in(days)
    assert session.history.size == before + count
    other = window(tmp_path).open()
    assert other.undo_newest().startswith("taken back: weather")
    session.refresh()
    for one in (session, other):
        assert one.history.size == before
        assert not one.history.track(LAWN, Weather).entries
    assert counts(session.take_in(days)) == (count, 0, 0, 0, 0)
    session.undo()
    session.redo()
    assert session.history.size == before + count
    assert the_same_as_reopened(session, tmp_path)


def test_a_later_file_corrects_an_earlier_one_in_one_act(session: Session, tmp_path: Path) -> None:
    session.take_in(DAYS[:100])
    later = DAYS[:20] + changed(DAYS[20:50], 1.0) + DAYS[100:]
    assert counts(session.take_in(later)) == (50, 30, 20, 0, 0)
    assert known(session) == DAYS[:20] + changed(DAYS[20:50], 1.0) + DAYS[50:]
    session.undo()
    assert known(session) == DAYS[:100]
    assert the_same_as_reopened(session, tmp_path)


def test_what_only_the_earlier_file_knew_is_kept(session: Session) -> None:
    session.take_in(DAYS)
    assert counts(session.take_in([DayWeather(DAYS[5].date, None, None, 40.0)])) == (0, 1, 0, 0, 0)
    assert known(session)[5] == replace(DAYS[5], rain_mm=40.0)
    assert counts(session.take_in([DayWeather(DAYS[5].date, 30.0, 20.0, None)])) == (0, 1, 0, 0, 0)
    assert known(session)[5] == DayWeather(DAYS[5].date, 30.0, 20.0, 40.0)


@pytest.mark.parametrize("first", ["yours", "file"])
def test_what_the_owner_logged_himself_holds_whichever_came_first(session: Session, first: str) -> None:
    for what in ("yours", "file") if first == "yours" else ("file", "yours"):
        if what == "yours":
            session.save(session.read("weather 60F 50F 0.4in on 2026-01-04"))
            session.save(session.read("weather 1in on 2026-01-05"))
        else:
            assert session.take_in(DAYS).yours == (2 if first == "yours" else 0)
    mine, rain_alone = known(session)[3:5]
    assert [mine.high_c, mine.low_c, mine.rain_mm] == pytest.approx([140 / 9, 10.0, 10.16])
    assert rain_alone == replace(DAYS[4], rain_mm=25.4)
    before = session.history.track(LAWN, Weather)
    assert counts(session.take_in(DAYS)) == (0, 0, 150, 2, 0)
    assert session.history.track(LAWN, Weather) is before


@pytest.mark.usefixtures("session")
def test_even_where_the_clock_of_the_owner_s_computer_is_far_behind(tmp_path: Path) -> None:
    early = Session(tmp_path / "book", "old", Clock(date(1999, 3, 1))).open()
    early.save(early.read("weather 60F 50F 0.4in on 1999-02-10"))
    early.take_in([DayWeather(date(1999, 2, 10), 1.0, 0.0, 0.0)])
    past = early.history.on(LAWN, date(1999, 3, 1))
    day = date(1999, 2, 10).toordinal()
    assert weather_days(past, day, day)[day].rain_mm == pytest.approx(10.16)


def test_a_day_that_was_taken_in_and_then_amended_is_the_owner_s(session: Session, tmp_path: Path) -> None:
    session.take_in(DAYS)
    session.amend(intake_id(DAYS[7].date), "weather 60F 50F 0.4in")
    assert counts(session.take_in(changed(DAYS, 1.0))) == (0, 149, 0, 1, 0)
    assert known(session)[7].rain_mm == pytest.approx(10.16)
    assert the_same_as_reopened(session, tmp_path)


def test_a_day_that_was_struck_out_stays_out(session: Session) -> None:
    session.take_in(DAYS)
    session.strike(intake_id(DAYS[7].date))
    assert counts(session.take_in(DAYS)) == (0, 0, 149, 0, 1)
    assert len(known(session)) == 149


def test_what_another_window_changed_meanwhile_is_seen_first(session: Session, tmp_path: Path) -> None:
    session.take_in(DAYS)
    other = window(tmp_path).open()
    other.amend(intake_id(DAYS[7].date), "weather 60F 50F 0.4in")
    with pytest.raises(NotSaved, match="changed meanwhile"):
        session.take_in(changed(DAYS, 1.0))
    assert known(session) == DAYS
    session.refresh()
    assert counts(session.take_in(changed(DAYS, 1.0))) == (0, 149, 0, 1, 0)
