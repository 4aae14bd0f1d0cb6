"""A day's weather, put together from entries of weather and from the gauge."""

import pytest

from journal.season.daily import DayWeather, weather_days
from journal.season.history import History
from tests.scenario import book, day


def days(history: History, first: str, last: str, zone: str = "front") -> dict[int, DayWeather]:
    """What is known of the days between both."""
    return weather_days(history.on(zone, day(last)), day(first).toordinal(), day(last).toordinal())


def test_the_newest_temperatures_of_a_day_and_the_gauge_before_the_forecast() -> None:
    history = book(
        "2026-07-01 weather 80F 60F 0.2in", "2026-07-01 weather 86F 59F", "2026-07-01 rain 0.5in",
        "2026-07-03 rain 1in", "2026-07-04 weather 0.1in",
    )  # fmt: skip
    found = days(history, "2026-07-01", "2026-07-05")
    assert [one.date for one in found.values()] == [day("2026-07-01"), day("2026-07-03"), day("2026-07-04")]
    first, gauge, wet = found.values()
    assert (first.high_c, first.low_c) == (pytest.approx(30), pytest.approx(15))
    assert first.rain_mm == pytest.approx(12.7)
    assert (gauge.high_c, gauge.low_c, gauge.rain_mm) == (None, None, pytest.approx(25.4))
    assert (wet.high_c, wet.rain_mm) == (None, pytest.approx(2.54))
    assert all(at == one.day for at, one in found.items())


def test_nothing_later_than_the_day_itself_is_seen() -> None:
    history = book("2026-07-01 weather 80F 60F", "2026-07-02 weather 81F 60F")
    past = history.on("front", day("2026-07-01"))
    assert list(weather_days(past, past.day - 9, past.day + 9)) == [past.day]
