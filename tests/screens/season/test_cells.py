"""Fifty-three cells hold every day of a year once, and the same date always falls in the same one."""

from datetime import date, timedelta

import pytest

from journal.screens.season.cells import AS_OF, COUNT, days, months_on, week_of, weeks, year_days, year_weeks

YEARS = (2023, 2024, 2025, 2026, 2027, 2028, 2100)


def _every_day(year: int) -> list[date]:
    first = date(year, 1, 1)
    return [first + timedelta(day) for day in range((date(year + 1, 1, 1) - first).days)]


@pytest.mark.parametrize("year", YEARS)
def test_a_year_is_53_weeks_of_seven_days_and_a_rest(year: int) -> None:
    cells = year_weeks(year)
    lengths = [cells.starts[cell + 1] - cells.starts[cell] for cell in range(COUNT)]
    assert lengths[:52] == [7] * 52
    assert lengths[52] == len(_every_day(year)) - 364
    assert [cells.at(day.toordinal()) for day in _every_day(year)] == [week_of(day) for day in _every_day(year)]


def test_a_date_up_to_february_keeps_its_week_in_a_leap_year_and_later_ones_move_by_a_day() -> None:
    assert week_of(date(2027, 2, 28)) == week_of(date(2028, 2, 28)) == 8
    assert week_of(date(2027, 5, 3)) == (122 // 7)
    assert week_of(date(2028, 5, 3)) == (123 // 7)
    assert week_of(date(2027, 12, 31)) == week_of(date(2028, 12, 31)) == 52
    assert week_of(date(2028, 12, 30)) == 52
    assert week_of(date(2027, 12, 30)) == 51


@pytest.mark.parametrize("as_of", [date(2027, 5, 3), date(2028, 2, 29), date(2027, 12, 31), date(2028, 1, 1)])
def test_the_date_judged_stands_in_cell_36(as_of: date) -> None:
    assert weeks(as_of).at(as_of.toordinal()) == AS_OF
    assert days(as_of).at(as_of.toordinal()) == AS_OF
    assert days(as_of).span(AS_OF) == (as_of.toordinal(), as_of.toordinal())


def test_the_weeks_of_the_page_are_the_weeks_of_the_years() -> None:
    cells = weeks(date(2027, 5, 3))
    assert date.fromordinal(cells.first) == date(2026, 8, 27)
    assert date.fromordinal(cells.last) == date(2027, 8, 26)
    turn = cells.at(date(2026, 12, 31).toordinal())
    assert turn is not None
    assert cells.span(turn) == (date(2026, 12, 31).toordinal(),) * 2
    assert cells.at(date(2027, 1, 1).toordinal()) == turn + 1


def test_outside_there_is_no_cell() -> None:
    cells = weeks(date(2027, 5, 3))
    assert cells.at(cells.first) == 0
    assert cells.at(cells.first - 1) is None
    assert cells.at(cells.last) == COUNT - 1
    assert cells.at(cells.last + 1) is None


def test_the_same_days_of_another_year_stand_under_each_other() -> None:
    assert year_days(date(2027, 5, 3), 2025).at(date(2025, 5, 3).toordinal()) == AS_OF
    assert year_days(date(2028, 2, 29), 2027).at(date(2027, 2, 28).toordinal()) == AS_OF


def test_a_month_on_is_the_same_day_of_the_next_month() -> None:
    cells = weeks(date(2027, 5, 3))
    april = cells.at(date(2027, 4, 9).toordinal()) or 0
    assert months_on(cells, april, 1) == cells.at(date.fromordinal(cells.starts[april]).replace(month=5).toordinal())
    assert months_on(cells, 0, -1) == 0
    assert months_on(cells, COUNT - 1, 1) == COUNT - 1
