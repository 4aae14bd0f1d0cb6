"""Dates as they are written, on both sides of New Year and of a leap day."""

from datetime import date, time

import pytest

from journal.line.read import Known, read
from journal.record.entry import Entry
from journal.record.kinds.hiding import Snooze
from journal.record.kinds.intention import Intention
from journal.record.kinds.remark import Remark
from journal.record.kinds.setting import Setting
from journal.record.kinds.watering import Schedule
from journal.record.kinds.weather import Rain
from tests.line.lawns import METRIC, TODAY, US, a_history, drafted, pointed

BOOK = a_history(US)
METRIC_BOOK = a_history(METRIC)

# written, today, the day meant
DATES = [
    ("today", "2027-05-03", "2027-05-03"),
    ("yesterday", "2027-05-03", "2027-05-02"),
    ("yesterday", "2027-01-01", "2026-12-31"),
    ("yesterday", "2028-03-01", "2028-02-29"),
    ("-1d", "2027-01-01", "2026-12-31"),
    ("-3d", "2027-05-03", "2027-04-30"),
    ("-3", "2027-05-03", "2027-04-30"),
    ("-2w", "2027-01-05", "2026-12-22"),
    ("-2wk", "2027-01-05", "2026-12-22"),
    ("mon", "2027-05-03", "2027-05-03"),
    ("tue", "2027-05-03", "2027-04-27"),
    ("Sunday", "2027-05-03", "2027-05-02"),
    ("fri", "2027-01-02", "2027-01-01"),
    ("thu", "2027-01-02", "2026-12-31"),
    ("5/3", "2027-05-03", "2027-05-03"),
    ("5/4", "2027-05-03", "2026-05-04"),
    ("12/31", "2027-01-01", "2026-12-31"),
    ("1/1", "2026-12-31", "2026-01-01"),
    ("1/2", "2027-01-01", "2026-01-02"),
    ("6/14/26", "2027-05-03", "2026-06-14"),
    ("6/14/2026", "2027-05-03", "2026-06-14"),
    ("14 jun", "2027-05-03", "2026-06-14"),
    ("jun 14", "2027-05-03", "2026-06-14"),
    ("14th June", "2027-07-03", "2027-06-14"),
    ("june 14 2025", "2027-07-03", "2025-06-14"),
    ("14 jun 2025", "2027-07-03", "2025-06-14"),
    ("2026-06-14", "2027-05-03", "2026-06-14"),
    ("2026-6-4", "2027-05-03", "2026-06-04"),
    ("2/29", "2027-05-03", "2024-02-29"),
    ("29 feb", "2028-02-29", "2028-02-29"),
    ("29 feb", "2028-02-28", "2024-02-29"),
    ("feb 29", "2029-01-01", "2028-02-29"),
    ("2/29", "2103-05-03", "2096-02-29"),
]
ABOUT = [
    ("~4/15", "2027-05-03", "2027-04-15"),
    ("~mon", "2027-05-04", "2027-05-03"),
    ("in april", "2027-05-03", "2027-04-30"),
    ("in jun", "2027-05-03", "2026-06-30"),
    ("in december", "2027-01-01", "2026-12-31"),
    ("in may", "2027-05-03", "2027-05-03"),
    ("in may", "2027-05-20", "2027-05-20"),
]


def on(line: str, today: str, metric: bool = False) -> Entry:
    return drafted(line, METRIC_BOOK if metric else BOOK, date.fromisoformat(today))


@pytest.mark.parametrize(("written", "today", "meant"), DATES)
def test_a_date_means_that_day(written: str, today: str, meant: str) -> None:
    for line in (f"mow {written}", f"mow on {written} front", f"mow front 3in {written}", f"m {written} bag"):
        entry = on(line, today)
        assert entry.date.isoformat() == meant
        assert not entry.about


@pytest.mark.parametrize(("written", "today", "meant"), ABOUT)
def test_a_date_nobody_is_sure_of_is_marked(written: str, today: str, meant: str) -> None:
    entry = on(f"mow {written}", today)
    assert entry.date.isoformat() == meant
    assert entry.about


@pytest.mark.parametrize(("written", "today", "meant"), [row for row in DATES if "/" not in row[0]])
def test_without_slashes_they_mean_the_same_in_a_metric_book(written: str, today: str, meant: str) -> None:
    assert on(f"mow {written}", today, metric=True).date.isoformat() == meant


@pytest.mark.parametrize(
    ("written", "meant"),
    [("7:30", time(7, 30)), ("07:05", time(7, 5)), ("7:30pm", time(19, 30)), ("12am", time(0)), ("12pm", time(12)),
     ("7am", time(7)), ("0:00", time(0)), ("23:59", time(23, 59))],
)  # fmt: skip
def test_a_time_of_day(written: str, meant: time) -> None:
    assert on(f"mow 5/1 {written}", "2027-05-03").time == meant
    assert on(f"water {written} front", "2027-05-03").time == meant


@pytest.mark.parametrize(
    ("written", "today", "target"),
    [("9/4", "2027-05-03", "2027-09-04"), ("9/4", "2027-09-04", "2027-09-04"), ("9/4", "2027-09-05", "2028-09-04"),
     ("1/5", "2026-12-31", "2027-01-05"), ("2/29", "2027-05-03", "2028-02-29"), ("on 9/4", "2027-05-03", "2027-09-04"),
     ("sat", "2027-05-03", "2027-05-08"), ("mon", "2027-05-03", "2027-05-03"), ("tomorrow", "2027-12-31", "2028-01-01"),
     ("4 sep", "2027-05-03", "2027-09-04"), ("in september", "2027-05-03", "2027-09-30"),
     ("10d", "2027-12-28", "2028-01-07"),
     ("in may", "2027-05-20", "2027-05-31")],
)  # fmt: skip
def test_a_plan_is_for_the_next_such_day_and_is_written_down_today(written: str, today: str, target: str) -> None:
    entry = on(f"intend seed three {written} front", today)
    assert isinstance(entry, Intention)
    assert entry.target is not None
    assert (entry.target.isoformat(), entry.date.isoformat()) == (target, today)


def test_a_plan_made_some_days_ago_names_both_days() -> None:
    entry = on("intend seed three 9/4 on 5/1", "2027-05-03")
    assert isinstance(entry, Intention)
    assert (entry.target, entry.date) == (date(2027, 9, 4), date(2027, 5, 1))
    assert pointed(read("intend seed three 9/4 2027-09-05", BOOK, TODAY)) == "2027-09-05"


@pytest.mark.parametrize(
    ("today", "since", "until"),
    [("2027-05-03", "2027-05-15", "2027-09-30"), ("2027-06-20", "2027-05-15", "2027-09-30"),
     ("2027-10-10", "2027-05-15", "2027-09-30")],
)  # fmt: skip
def test_a_schedule_begins_this_year_and_ends_after_it_began(today: str, since: str, until: str) -> None:
    for line in (
        "schedule back 20min mon wed fri 6:00 from 5/15 to 9/30",
        "schedule back 20min mon wed fri 6:00 to 9/30 from 5/15",
        "schedule from 15 may to 30 sep 20min back fri wed mon 6:00",
    ):
        entry = on(line, today)
        assert isinstance(entry, Schedule)
        assert (str(entry.since), str(entry.until), entry.date.isoformat()) == (since, until, today)
        assert (entry.weekdays, entry.time) == ((0, 2, 4), time(6))


def test_a_schedule_may_run_over_new_year() -> None:
    entry = on("schedule back 20min from 11/15 to 2/28", "2027-12-01")
    assert isinstance(entry, Schedule)
    assert (entry.since, entry.until) == (date(2027, 11, 15), date(2028, 2, 28))
    ending = on("schedule back 20min to 9/30", "2027-05-03")
    assert isinstance(ending, Schedule)
    assert ending.until == date(2027, 9, 30)


def test_rain_since_a_day_lies_behind() -> None:
    entry = on("rain 2in since 12/28", "2027-01-02")
    assert isinstance(entry, Rain)
    assert entry.since == date(2026, 12, 28)


def test_a_flag_is_hidden_for_days_or_until_a_date() -> None:
    for line in ("snooze mow-gap 7d", "snooze mow-gap 1wk", "snooze mow-gap 5/10", "snooze mow-gap 10 may"):
        entry = on(line, "2027-05-03")
        assert isinstance(entry, Snooze)
        assert (entry.until, entry.date) == (date(2027, 5, 10), TODAY)


@pytest.mark.parametrize(
    ("written", "today", "since"),
    [("4/1", "2027-05-03", "2027-04-01"), ("10/1", "2027-05-03", "2027-10-01"),
     ("2027-04-01", "2027-05-03", "2027-04-01"),
     ("1 apr", "2027-05-03", "2027-04-01")],
)  # fmt: skip
def test_a_change_from_a_day_is_of_this_year(written: str, today: str, since: str) -> None:
    entry = on(f"set front area 2100sqft from {written}", today)
    assert isinstance(entry, Setting)
    assert str(entry.since) == since
    assert entry.date.isoformat() == today


def test_a_setting_written_down_later_lies_behind() -> None:
    assert on("set front area 2100sqft on 12/25", "2027-05-03").date == date(2026, 12, 25)
    assert pointed(read("set front area 2100sqft on 2027-12-25", BOOK, TODAY)) == "2027-12-25"


@pytest.mark.parametrize(
    ("line", "day", "text"),
    [("note moles along the fence", "2027-05-03", "moles along the fence"), ("note 5/1 moles", "2027-05-01", "moles"),
     ("note on 5/1 moles", "2027-05-01", "moles"), ("note yesterday moles", "2027-05-02", "moles"),
     ("note 1/2 bag left", "2027-05-03", "1/2 bag left"), ("note 31 feb is no day", "2027-05-03", "31 feb is no day"),
     ("note on and off", "2027-05-03", "on and off"), ("note it's 3in -- or 4 !", "2027-05-03", "it's 3in -- or 4 !"),
     ("note  two   blanks", "2027-05-03", "two   blanks")],
)  # fmt: skip
def test_a_note_is_all_that_follows_its_date(line: str, day: str, text: str) -> None:
    entry = on(line, "2027-05-03")
    assert isinstance(entry, Remark)
    assert (entry.date.isoformat(), entry.text) == (day, text)


def test_a_note_in_a_metric_book_may_begin_with_a_fraction() -> None:
    entry = on("note 3/4 of the back is moss", "2027-05-03", metric=True)
    assert isinstance(entry, Remark)
    assert entry.text == "3/4 of the back is moss"


def test_a_fraction_with_a_unit_is_no_date() -> None:
    for line in ("topdress 1/4 in front", "topdress 1/4in front"):
        entry = on(line, "2027-05-03")
        assert entry.date == TODAY
        assert getattr(entry, "depth_mm", None) == 6.35


def test_longer_phrases_are_read_by_whoever_can() -> None:
    def phrase(words: str, today: date) -> date | None:
        assert today == TODAY
        days = {"2 months ago": date(2027, 3, 3), "last spring": date(2026, 4, 1), "an age ago": date(1, 1, 1)}
        return days.get(words)

    known = Known(phrase=phrase)
    for line, day in (("mow 2 months ago", date(2027, 3, 3)), ("mow last spring front", date(2026, 4, 1))):
        draft = read(line, BOOK, TODAY, known).draft
        assert draft is not None
        assert draft.date == day
    assert pointed(read("mow an age ago", BOOK, TODAY, known)) == "an age ago"
    assert pointed(read("mow 2 months ago", BOOK, TODAY)) == "2"
