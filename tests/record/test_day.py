"""Days of the year and of the calendar, their names, and what is refused."""

from collections.abc import Callable
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.record.day import MonthDay, name_month, name_weekday, parse_day, parse_month, parse_month_day, spoken
from journal.record.refusal import Refusal, nearest


@given(st.dates(date(2001, 1, 1), date(2001, 12, 31)))
def test_a_day_of_the_year_is_read_as_written(day: date) -> None:
    found = MonthDay(day.month, day.day)
    assert parse_month_day(str(found)) == found
    assert found.on(2001) == day
    assert found.shifted(30).shifted(-30) == found
    assert abs(((found.half_a_year_on().on(2001) - day).days % 365) - 182) <= 3


def test_half_a_year_on_stays_within_the_month() -> None:
    assert MonthDay(8, 31).half_a_year_on() == MonthDay(2, 28)
    assert MonthDay(5, 6).half_a_year_on() == MonthDay(11, 6)
    assert MonthDay(12, 31).half_a_year_on() == MonthDay(6, 30)


@pytest.mark.parametrize(
    "text",
    ["02-29", "13-01", "00-10", "5/6", "0506", "", "05-06-07", "99999999999-01", "-5-06", "+5-06", "5-", "may 6"],
)
def test_no_day_of_the_year(text: str) -> None:
    with pytest.raises(Refusal, match="like 05-06"):
        parse_month_day(text)


@pytest.mark.parametrize(
    "text", ["2027-02-29", "20270503", "2027-W18-1", "2027-5-3", "", "today", "2027-05-03T10:00", "27-05-03"]
)
def test_no_day_of_the_calendar(text: str) -> None:
    with pytest.raises(Refusal, match="like 2026-06-14"):
        parse_day(text)


@pytest.mark.parametrize(
    ("read", "text"), [(parse_day, "1899-12-31"), (parse_day, "2200-01-01"), (parse_month, "0001-01")]
)
def test_a_year_far_from_any_season_is_refused(read: Callable[[str], date], text: str) -> None:
    with pytest.raises(Refusal, match="1900 to 2199"):
        read(text)


@pytest.mark.parametrize("text", ["2026", "2026-13", "2026-3", "03-2026", "2026-W1", "2026-03-01"])
def test_no_month(text: str) -> None:
    with pytest.raises(Refusal, match="like 2026-03"):
        parse_month(text)


def test_days_and_months_are_read() -> None:
    assert parse_day(" 2027-05-03 ") == date(2027, 5, 3)
    assert parse_month("2026-03") == date(2026, 3, 1)
    assert (name_month("jun"), name_month("june"), name_month("ju"), name_month("")) == (6, 6, None, None)
    assert (name_weekday("mon"), name_weekday("sunday"), name_weekday("m"), name_weekday("")) == (0, 6, None, None)
    assert spoken(date(2027, 5, 3), date(2027, 1, 1)) == "Mon 3 May"
    assert spoken(date(2026, 5, 3), date(2027, 1, 1)) == "Sun 3 May 2026"


@pytest.mark.parametrize(
    ("word", "suggestion"),
    [
        ("mwo", "mow"),
        ("fornt", "front"),
        ("bck", "back"),
        ("xyz", ""),
        ("", ""),
        ("MOW", "mow"),
        ("watr", "water"),
        ("q" * 500, ""),
    ],
)
def test_the_nearest_name_is_suggested_only_when_it_is_near(word: str, suggestion: str) -> None:
    assert nearest(word, ("mow", "front", "back", "water")) == suggestion
