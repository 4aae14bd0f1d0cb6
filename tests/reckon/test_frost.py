"""Frost dates out of the days on file, with chances only where enough years are."""

from collections.abc import Iterator
from datetime import date, timedelta

from journal.reckon.frost import frost_dates
from journal.record.day import MonthDay
from journal.season.daily import DayWeather
from tests.reckon.seattle import seattle


def year(
    number: int, *frozen: str, low: float = 5.0, first: str = "01-01", last: str = "12-31"
) -> Iterator[DayWeather]:
    """A year without a freeze but on the days named."""
    day = date.fromisoformat(f"{number}-{first}")
    while day <= date.fromisoformat(f"{number}-{last}"):
        yield DayWeather(day, 20.0, -1.0 if f"{day:%m-%d}" in frozen else low, None)
        day += timedelta(1)


def years(first: int, count: int, spring: str = "04-01", autumn: str = "10-20") -> list[DayWeather]:
    """Years whose frosts lie a day later each."""
    days: list[DayWeather] = []
    for nth in range(count):
        last = date.fromisoformat(f"2001-{spring}") + timedelta(nth)
        early = date.fromisoformat(f"2001-{autumn}") + timedelta(nth)
        days += year(first + nth, "02-02", f"{last:%m-%d}", f"{early:%m-%d}", "12-12")
    return days


def test_seattle_of_four_years_gives_the_dates_and_no_chance() -> None:
    # vega-datasets, seattle-weather.csv (NOAA, station USW00024233): lows at or below 0 C
    found = frost_dates(seattle(), 47.4)
    assert found is not None
    assert [f"{day:%m-%d}" for day in found.last.dates] == ["03-19", "03-04", "02-09", "03-04"]
    assert [f"{day:%m-%d}" for day in found.first.dates] == ["11-10", "11-21", "11-12", "11-23"]
    assert (found.last.years, found.last.chances, found.last.line) == (4, {}, "")


def test_chances_of_eleven_years() -> None:
    found = frost_dates(years(2000, 11))
    assert found is not None
    # Eleven days in a row: the 1st, 5th and 9th of ten steps between the first and the last.
    assert found.last.chances == {10: MonthDay(4, 10), 50: MonthDay(4, 6), 90: MonthDay(4, 2)}
    assert found.first.chances == {10: MonthDay(10, 21), 50: MonthDay(10, 25), 90: MonthDay(10, 29)}
    assert found.last.line == "set last_frost 04-06"
    assert found.first.line == "set first_frost 10-25"


def test_nine_years_are_too_few() -> None:
    found = frost_dates(years(2000, 9))
    assert found is not None
    assert (found.last.years, found.last.chances, len(found.last.dates)) == (9, {}, 9)
    assert frost_dates(years(2000, 10)).last.chances  # type: ignore[union-attr]


def test_the_order_of_the_days_does_not_matter() -> None:
    assert frost_dates(reversed(years(2000, 11))) == frost_dates(years(2000, 11))


def test_a_low_of_nought_is_a_freeze_and_one_just_above_is_none() -> None:
    # weather.gov/jan/frostfreeze: the freeze threshold is 32 F, met or fallen below
    for low, dates in ((0.0, 1), (0.01, 0)):
        days = [*year(2020, low=5.0)]
        days[60] = DayWeather(days[60].date, 10.0, low)
        found = frost_dates(days)
        assert found is not None
        assert len(found.last.dates) == dates


def test_a_half_year_with_too_few_days_does_not_count() -> None:
    found = frost_dates([*year(2020, "04-01", last="08-15")])
    assert found is not None
    assert (found.last.years, found.first.years) == (1, 0)
    assert frost_dates(year(2020, "02-01", first="02-01", last="05-30")) is None
    assert frost_dates([]) is None
    assert frost_dates([DayWeather(date(2020, 1, 1), None, None, 3.0)]) is None


def test_a_year_without_a_freeze_is_better_than_any() -> None:
    mild = [day for number in range(2011, 2016) for day in year(number)]
    found = frost_dates([*years(2000, 11), *mild])
    assert found is not None
    assert (found.last.years, len(found.last.dates)) == (16, 11)
    assert found.last.chances[10] == MonthDay(4, 10)  # between the 14th and the 15th of 16 days: 04-09.5
    assert found.last.chances[90] is None
    assert found.first.chances[90] is None
    none_at_all = frost_dates([day for number in range(2000, 2012) for day in year(number)])
    assert none_at_all is not None
    assert none_at_all.last.line == ""


def test_south_of_the_equator_the_halves_change_places() -> None:
    found = frost_dates([day for nth in range(10) for day in year(2000 + nth, "05-20", "07-01", "09-15")], -37.8)
    assert found is not None
    assert found.last.line == "set last_frost 09-15"
    assert found.first.line == "set first_frost 05-20"


def test_a_leap_day_stands_for_the_day_before() -> None:
    found = frost_dates([day for nth in range(10) for day in year(2000 + 4 * nth, "02-29", "11-01")])
    assert found is not None
    assert found.last.line == "set last_frost 02-28"


def test_weather_of_the_other_half_of_the_world_proposes_no_frost() -> None:
    north = [day for nth in range(12) for day in _cold_winters(2000 + nth)]
    found = frost_dates(north, 42.0)
    assert found is not None
    assert found.last.line == "set last_frost 03-31"
    wrong = frost_dates(north, -37.8)
    assert wrong is not None
    assert (wrong.last.cut, wrong.first.cut) == (True, True)
    assert (wrong.last.line, wrong.first.line) == ("", "")


def _cold_winters(number: int) -> Iterator[DayWeather]:
    """Frost every night from November to March."""
    for day in year(number):
        yield DayWeather(day.date, 10.0, -3.0 if day.date.month in (11, 12, 1, 2, 3) else 8.0, None)
