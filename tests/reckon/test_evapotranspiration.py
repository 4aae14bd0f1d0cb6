"""Sun, daylight and reference water use: the printed examples, and three other people's libraries."""

import importlib
import warnings
from collections.abc import Iterator
from datetime import date, timedelta
from math import radians
from types import ModuleType
from typing import Any, NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.evapotranspiration import (
    MM_PER_MJ,
    daylight,
    declination,
    radiation,
    reference_mm,
    sun_distance,
    sunset_angle,
)
from tests.reckon.seattle import LATITUDE, seattle


class Case(NamedTuple):
    """A place on a day, its two temperatures in C, and what was worked out apart from this program."""

    place: str
    latitude: float
    day: date
    low: float
    high: float
    radiation: float
    daylight: float
    reference: float

    @property
    def day_of_year(self) -> int:
        return self.day.timetuple().tm_yday


CASES = (
    Case("Seattle in April", 47.6062, date(2026, 4, 15), 5.0, 14.5, 32.36, 13.41, 2.579),
    Case("Seattle in July", 47.6062, date(2026, 7, 15), 13.5, 25.0, 40.42, 15.40, 4.766),
    Case("Atlanta", 33.749, date(2026, 5, 20), 16.0, 27.5, 40.43, 13.87, 5.088),
    Case("Phoenix", 33.4484, date(2026, 6, 21), 25.5, 41.0, 41.51, 14.22, 7.829),
    Case("Minneapolis", 44.9778, date(2026, 9, 10), 10.5, 22.0, 29.24, 12.55, 3.168),
    Case("Boston", 42.3601, date(2026, 3, 1), -4.0, 4.5, 22.43, 10.99, 1.108),
    Case("Miami", 25.7617, date(2026, 1, 15), 15.5, 24.5, 23.56, 10.56, 2.507),
    Case("Denver", 39.7392, date(2026, 8, 1), 15.0, 32.0, 38.92, 14.07, 6.219),
    Case("London", 51.5074, date(2026, 6, 21), 11.5, 21.5, 41.72, 16.40, 4.246),
    Case("Sydney", -33.8688, date(2026, 1, 15), 19.5, 27.0, 43.33, 14.01, 4.571),
    Case("the equator", 0.0, date(2026, 3, 20), 22.0, 31.0, 37.84, 12.00, 4.720),
    Case("Anchorage", 61.2181, date(2026, 12, 21), -12.0, -5.0, 1.584, 5.055, 0.03657),
    Case("Seattle on the 366th day", 47.6062, date(2028, 12, 31), 1.0, 6.0, 9.168, 8.310, 0.4098),
    Case("Kansas City", 39.0997, date(2026, 10, 15), 7.0, 20.0, 22.95, 10.94, 2.430),
)
QUIET = pytest.mark.usefixtures("quiet")
PLACES = pytest.mark.parametrize("case", CASES, ids=lambda case: case.place)


# FAO Irrigation and Drainage Paper 56, example 8 (20 degrees south, 3 September)
def test_the_sun_on_3_september_in_the_south() -> None:
    assert sun_distance(246) == pytest.approx(0.985, abs=5e-4)
    assert declination(246) == pytest.approx(0.120, abs=5e-4)
    assert sunset_angle(-20, 246) == pytest.approx(1.527, abs=5e-4)
    assert radiation(-20, 246) == pytest.approx(32.2, abs=0.05)
    assert radiation(-20, 246) == pytest.approx(32.19400, abs=1e-4)


# FAO Irrigation and Drainage Paper 56, example 9 (the same day)
def test_daylight_on_3_september_in_the_south() -> None:
    assert daylight(-20, 246) == pytest.approx(11.7, abs=0.05)
    assert daylight(-20, 246) == pytest.approx(11.66559, abs=1e-5)


# FAO Irrigation and Drainage Paper 56, example 10 (Rio de Janeiro), with the digits of the NCAR documentation
def test_rio_de_janeiro_in_may() -> None:
    assert radiation(-22.9, 135) == pytest.approx(25.111, abs=1e-3)
    assert 0.75 * radiation(-22.9, 135) == pytest.approx(18.833, abs=1e-3)
    assert daylight(-22.9, 135) == pytest.approx(10.9, abs=0.05)


# FAO Irrigation and Drainage Paper 56, examples 15 and 20 (Lyon, 15 July)
def test_lyon_in_july() -> None:
    assert radiation(45.0 + 43 / 60, 196) == pytest.approx(40.6, abs=0.05)
    assert reference_mm(14.8, 26.6, 45.7167, 196) == pytest.approx(5.0, abs=0.05)
    assert reference_mm(14.8, 26.6, 45.7167, 196) == pytest.approx(5.03306, abs=1e-5)


# FAO Irrigation and Drainage Paper 56, example 18 (Uccle, 6 July)
def test_uccle_in_july() -> None:
    assert radiation(50.8, 187) == pytest.approx(41.09, abs=5e-3)
    assert daylight(50.8, 187) == pytest.approx(16.1, abs=0.05)


@PLACES
def test_fourteen_places(case: Case) -> None:
    assert radiation(case.latitude, case.day_of_year) == pytest.approx(case.radiation, rel=5e-4)
    assert daylight(case.latitude, case.day_of_year) == pytest.approx(case.daylight, rel=5e-4)
    found = reference_mm(case.low, case.high, case.latitude, case.day_of_year)
    assert found == pytest.approx(case.reference, rel=5e-4)


@pytest.mark.parametrize("day_of_year", [1, 79, 172, 266, 355, 366])
def test_the_equator_has_twelve_hours_of_day(day_of_year: int) -> None:
    assert daylight(0, day_of_year) == pytest.approx(12, abs=1e-12)


def test_the_polar_night_has_no_sun_and_the_polar_day_no_night() -> None:
    assert radiation(80, 355) == pytest.approx(0, abs=1e-12)
    assert daylight(80, 355) == 0
    assert daylight(80, 172) == pytest.approx(24, abs=1e-12)


def test_a_day_without_swing_and_a_bitter_one_use_nothing() -> None:
    assert reference_mm(20, 20, 45, 196) == 0
    assert reference_mm(-30, -10, 60, 15) == 0


def test_a_low_above_the_high_is_refused() -> None:
    with pytest.raises(ValueError, match="low"):
        reference_mm(20, 10, 45, 196)


@given(
    st.floats(-90, 90), st.integers(1, 366), st.floats(-40, 45), st.floats(0, 30),
)  # fmt: skip
def test_never_below_nothing_nor_beyond_reason(latitude: float, day_of_year: int, low: float, swing: float) -> None:
    assert 0 <= daylight(latitude, day_of_year) <= 24 + 1e-9
    assert -1e-9 <= radiation(latitude, day_of_year) < 50
    assert 0 <= reference_mm(low, low + swing, latitude, day_of_year) < 25


# Other people's libraries


def _imported(name: str) -> ModuleType:
    """A library of others; what it warns of at import is its own business."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        return importlib.import_module(name)


@pytest.fixture
def quiet() -> Iterator[None]:
    """Others' warnings don't fail these tests."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        yield


@PLACES
@QUIET
def test_pyet_has_the_same_sun(case: Case) -> None:
    sky, pandas = _imported("pyet.meteo_utils"), _imported("pandas")
    days = pandas.DatetimeIndex([case.day])
    theirs = float(_first(sky.extraterrestrial_r(days, radians(case.latitude))))
    hours = float(_first(sky.daylight_hours(days, radians(case.latitude))))
    assert radiation(case.latitude, case.day_of_year) == pytest.approx(theirs, rel=5e-4)
    assert daylight(case.latitude, case.day_of_year) == pytest.approx(hours, rel=5e-4)


def _first(found: Any) -> Any:
    return found.iloc[0] if hasattr(found, "iloc") else found[0]


@PLACES
@QUIET
def test_pyet_uses_as_much_but_for_its_heat_of_evaporation(case: Case) -> None:
    pyet, pandas = _imported("pyet"), _imported("pandas")
    days = pandas.DatetimeIndex([case.day])
    mean, high, low = (pandas.Series([v], index=days) for v in ((case.low + case.high) / 2, case.high, case.low))
    theirs = float(_first(pyet.hargreaves(mean, high, low, radians(case.latitude), method=0, clip_zero=True)))
    heat = 2.501 - 0.002361 * (case.low + case.high) / 2  # theirs changes with the warmth, ours is 1 / 0.408
    ours = reference_mm(case.low, case.high, case.latitude, case.day_of_year)
    assert ours == pytest.approx(theirs * heat * MM_PER_MJ, rel=1e-3)
    assert ours == pytest.approx(theirs, rel=0.035)


@PLACES
@QUIET
def test_refet_has_the_same_sun(case: Case) -> None:
    refet = _imported("refet.calcs")
    theirs = float(refet.ra_daily(radians(case.latitude), case.day_of_year, method="asce"))
    assert radiation(case.latitude, case.day_of_year) == pytest.approx(theirs, rel=5e-4)


@PLACES
@QUIET
def test_astral_sees_the_sun_a_little_longer(case: Case) -> None:
    """Its day runs from the first edge of the sun to the last, through air that bends light."""
    astral, sun = _imported("astral"), _imported("astral.sun")
    observer = astral.Observer(case.latitude, 0.0)
    length = sun.sunset(observer, case.day) - sun.sunrise(observer, case.day)
    hours = length / timedelta(hours=1) % 24
    assert 0 < hours - daylight(case.latitude, case.day_of_year) < 0.4


@pytest.mark.parametrize(("year", "total"), [(2012, 799.1), (2013, 832.1), (2014, 866.3), (2015, 898.9)])
def test_four_years_of_seattle(year: int, total: float) -> None:
    use = 0.0
    for seen in seattle():
        if seen.date.year == year:
            assert seen.low_c is not None
            assert seen.high_c is not None
            use += reference_mm(seen.low_c, seen.high_c, LATITUDE, seen.date.timetuple().tm_yday)
    assert use == pytest.approx(total, abs=0.05)
