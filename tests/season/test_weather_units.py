"""What a file's numbers are in: told by its headings or its numbers, and asked for when neither tells."""

import math
from collections.abc import Callable
from datetime import date, timedelta

import pytest

from journal.record.refusal import Refusal
from journal.season.weather_file.found import Units
from journal.season.weather_file.read import read_days

DAYS = [date(2024, 1, 1) + timedelta(n) for n in range(366)]


def year(write: Callable[[float, float, float], str], months: range = range(1, 13), south: bool = False) -> str:
    """A year like that of a cool-season lawn: highs of 0 to 30 C, a shower every third day, the largest of 30 mm."""
    rows = ["date,high,low,rain"]
    for n, day in enumerate(DAYS):
        if day.month in months:
            high = 15 - 15 * math.cos(2 * math.pi * (n - 20 + 183 * south) / 366)
            rows.append(f"{day},{write(high, high - 11, (n % 31) * (n % 3 == 0))}")
    return "\n".join(rows)


def metric(high: float, low: float, rain: float) -> str:
    return f"{high:.1f},{low:.1f},{rain:.1f}"


def us(high: float, low: float, rain: float) -> str:
    return f"{high * 1.8 + 32:.0f},{low * 1.8 + 32:.0f},{rain / 25.4:.2f}"


def tenths(high: float, low: float, rain: float) -> str:
    return f"{high * 10:.0f},{low * 10:.0f},{rain * 10:.0f}"


@pytest.mark.parametrize("south", [False, True])
@pytest.mark.parametrize(
    ("write", "units"), [(metric, "metric"), (us, "us"), (tenths, "tenths")], ids=["metric", "us", "tenths"]
)
def test_a_year_tells_by_its_numbers(write: Callable[[float, float, float], str], units: str, south: bool) -> None:
    file = read_days(year(write, south=south))
    assert (file.doubt, file.units) == ("", units)
    assert file.sure.startswith("told by its numbers: ")
    assert file.kept == 366


def test_whole_degrees_of_a_year_still_tell() -> None:
    file = read_days(year(lambda high, low, rain: f"{high:.0f},{low:.0f},{rain:.0f}"))
    assert (file.doubt, file.units) == ("", "metric")


def test_a_few_stray_values_do_not_turn_the_decision() -> None:
    rows = year(metric).splitlines()
    rows[100] = f"{DAYS[99]},999.9,5.0,0.0"
    file = read_days("\n".join(rows))
    assert (file.units, file.dropped["beyond -60 to 60 C"]) == ("metric", 1)


def test_a_winter_in_whole_degrees_is_asked_about_with_three_rows_in_each_unit() -> None:
    winter = year(lambda high, low, rain: f"{high:.0f},{low:.0f},{rain / 10:.0f}", range(1, 3))
    file = read_days(winter)
    assert (file.days, file.units) == ((), "")
    assert "us or metric or tenths" in file.doubt
    assert [units for units, _ in file.readings] == ["us", "metric", "tenths"]
    assert all(len(samples) == 3 for _, samples in file.readings)
    said = read_days(winter, Units.METRIC)
    assert (said.doubt, said.units, said.sure, said.kept) == ("", "metric", "as you said", 60)


def test_numbers_that_fit_no_units_are_asked_about() -> None:
    file = read_days("date,high,low,rain\n2026-07-01,250.5,100.5,3.0\n")
    assert file.doubt.startswith("Its numbers fit no one kind of units")


def test_headings_win_over_what_is_said() -> None:
    text = "date,tmax_f,tmin_f,rain_in\n2026-01-01,32,14,0.5\n"
    for said in (None, Units.METRIC):
        file = read_days(text, said)
        assert (file.units, file.sure) == ("us", "named in its header")
        assert file.days[0].high_c == 0.0
    mixed = read_days("date,tmax_f,tmin_f,rain\n2026-01-01,32,14,5\n", Units.METRIC)
    assert (mixed.units, mixed.unit_words, mixed.days[0].rain_mm) == ("mixed", "F, mm", 5.0)


def test_what_is_said_wins_over_what_the_numbers_tell() -> None:
    file = read_days(year(metric), Units.US)
    assert file.units == "us"
    assert max(day.high_c or -99 for day in file.days) < 0


@pytest.mark.parametrize(
    ("write", "said"),
    [(metric, "tenths"), (us, "metric"), (us, "tenths"), (tenths, "us"), (tenths, "metric")],
    ids=["fractions are no tenths", "86 is no C", "rain in fractions is no tenths", "300 is no F", "300 is no C"],
)
def test_units_that_the_numbers_rule_out_are_refused(write: Callable[[float, float, float], str], said: str) -> None:
    with pytest.raises(Refusal, match="can't be"):
        read_days(year(write), Units(said))


def test_a_kind_of_file_that_is_always_in_tenths_takes_no_other_word() -> None:
    rows = "".join(f"XX000000001,2024{d:%m%d},{what},{value},,,7,\n" for d in DAYS[:9] for what, value in LONG_DAY)
    assert read_days(rows).days[0].high_c == 21.1
    with pytest.raises(Refusal, match="tenths"):
        read_days(rows, Units.US)


LONG_DAY = (("PRCP", 127), ("TMAX", 211), ("TMIN", 89))
