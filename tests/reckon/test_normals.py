"""What each month is like in most years, and the words by which the owner accepts it."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.normals import normals
from journal.record.month_normal import MonthNormal, month_normals, written
from journal.record.refusal import Refusal
from journal.season.daily import DayWeather
from tests.reckon.seattle import seattle


def month(first: str, high: float, low: float, rain: float, days: int = 31) -> list[DayWeather]:
    return [DayWeather(date.fromisoformat(first) + timedelta(n), high, low, rain) for n in range(days)]


def test_a_month_is_the_mean_of_its_years() -> None:
    found = normals([*month("2024-01-01", 2.0, -8.0, 1.0), *month("2025-01-01", 4.0, -4.0, 3.0)])
    assert found is not None
    (january,) = found.months
    assert january.normal == MonthNormal(1, 3.0, -6.0, 62.0)
    assert (january.years, january.rain_years) == (2, 2)


def test_three_days_may_miss_their_temperatures_and_none_its_rain() -> None:
    found = normals(month("2024-01-01", 2.0, -8.0, 1.0, days=28))
    assert found is not None
    assert found.months[0].normal == MonthNormal(1, 2.0, -8.0, None)
    assert normals(month("2024-01-01", 2.0, -8.0, 1.0, days=27)) is None
    assert normals([]) is None


def test_the_rain_of_seattle_s_months_makes_up_its_years() -> None:
    # vega-datasets, seattle-weather.csv: 1226.0, 828.0, 1232.8 and 1139.2 mm in four years
    found = normals(seattle())
    assert found is not None
    assert sum(m.normal.rain_mm or 0 for m in found.months) == pytest.approx((1226.0 + 828.0 + 1232.8 + 1139.2) / 4)
    assert (len(found.months), found.years) == (12, 4)


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_accepting_line_is_read_as_it_was_written(units: str) -> None:
    found = normals(seattle())
    assert found is not None
    words = found.line(units).removeprefix("set normals ")
    assert written(month_normals(words), units) == words


@given(
    st.lists(st.tuples(st.integers(-60, 60), st.integers(-60, 60), st.integers(0, 900)), min_size=1, max_size=12),
    st.sampled_from(["us", "metric"]),
)
def test_any_normals_come_back_from_their_words(rows: list[tuple[int, int, int]], units: str) -> None:
    made = [MonthNormal(at, max(a, b), min(a, b), rain) for at, (a, b, rain) in enumerate(rows, 1)]
    read = month_normals(written(made, units))
    assert written(read, units) == written(made, units)
    for one, other in zip(read, made, strict=True):
        assert one.high_c == pytest.approx(other.high_c, abs=0.3)
        assert one.rain_mm == pytest.approx(other.rain_mm, abs=1.3)


def test_months_in_words() -> None:
    found = month_normals("feb 33F 17F 2.8in, january 15F 30F; mar 90mm")
    assert [normal.month for normal in found] == [1, 2, 3]
    assert [found[0].high_c, found[0].low_c, found[1].rain_mm] == pytest.approx([-10 / 9, -85 / 9, 71.12])
    assert found[0].rain_mm is None
    assert found[2] == MonthNormal(3, None, None, 90.0)


@pytest.mark.parametrize(
    ("words", "why"),
    [
        ("", "months are wanted"),
        ("jam 30F 15F", "jam: a month is wanted"),
        ("jan", "its high, its low and its rain"),
        ("jan 30F", "its high, its low and its rain"),
        ("jan 30F 15F 3in 2in", "its high, its low and its rain"),
        ("jan 30 15", "30: a unit is missing"),
        ("jan 30F 15F, jan 30F 15F", "said already"),
    ],
)
def test_words_that_are_no_months_are_refused(words: str, why: str) -> None:
    with pytest.raises(Refusal) as caught:
        month_normals(words)
    assert why in str(caught.value)
