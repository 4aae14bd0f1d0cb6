"""Degree days: the printed examples, the three methods, and four years of a real place."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import accumulate

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.citation import Known
from journal.facts.degree_days import BANDS, near
from journal.reckon.answer import Answer
from journal.reckon.calls import reckonings
from journal.reckon.declare import RECKONINGS, Needs
from journal.reckon.degree_days import F_PER_C, average, capped, sine
from journal.record.day import MonthDay
from journal.record.refusal import Refusal
from journal.season.daily import DayWeather
from tests.reckon.seattle import YEARS, seattle

SEATTLE = seattle()


def asked(words: str, days: Sequence[DayWeather] = SEATTLE) -> Answer:
    """The answer to the options as they are typed."""
    assert reckonings()
    answer = RECKONINGS["degree-days"].read(words.split()).answer(days)
    assert isinstance(answer, Answer)
    return answer


@pytest.mark.parametrize(
    ("high", "low", "degree_days"),
    [
        (74, 52, 13),  # Purdue (Patton), in Turf magazine
        (58, 40, 0),  # the same, -1 counts as 0
        (75, 27, 1),  # Virginia Tech (Goatley et al. 2007)
        (70, 50, 10),  # Iowa State, Agronomy 541, lesson 2b
        (63, 43, 3),  # Ohio State Extension, Springfield News-Sun
        (64, 62, 13),  # Ohio State Extension, Beacon Journal 2019
        (58, 58, 8),  # Michigan State: an average of 58
    ],
)
def test_printed_examples_over_50(high: float, low: float, degree_days: float) -> None:
    assert average(low, high, 50) == degree_days


@pytest.mark.parametrize(("high", "low", "degree_days"), [(90, 40, 18), (75, 27, 12.5), (58, 40, 4), (60, 44, 5)])
def test_86_over_50(high: float, low: float, degree_days: float) -> None:
    """The rule of Iowa State, Agronomy 541: above 86 counts as 86, below 50 as 50."""
    assert capped(low, high, 50, 86) == degree_days


def test_no_day_has_more_than_36_by_86_over_50() -> None:
    """Iowa State, Agronomy 541: 36 is the most that a day can bring."""
    assert capped(86, 86, 50, 86) == capped(95, 110, 50, 86) == 36


@pytest.mark.parametrize(("high", "low", "degree_days"), [(60, 44, 3.6265), (58, 40, 2.3825), (75, 27, 8.1461)])
def test_a_sine_wave_counts_the_warm_hours_of_a_cool_day(high: float, low: float, degree_days: float) -> None:
    assert sine(low, high, 50) == pytest.approx(degree_days, abs=1e-4)


@pytest.mark.parametrize(("celsius", "fahrenheit"), [(42, 75.6), (78, 140.4), (140, 252), (230, 414)])
def test_a_sum_in_celsius_is_a_sum_in_fahrenheit(celsius: float, fahrenheit: float) -> None:
    """The limits of Fidanza, Dernoeden & Zhang 1996, in both units."""
    assert celsius * F_PER_C == pytest.approx(fahrenheit, rel=1e-12)


@given(st.floats(-30, 110), st.floats(0, 50), st.floats(20, 60), st.floats(1, 50))
def test_the_methods_agree_where_they_must(low: float, swing: float, base: float, over: float) -> None:
    high = low + swing
    assert 0 <= average(low, high, base) <= sine(low, high, base) + 1e-9
    assert -1e-9 <= capped(low, high, base, base + over) <= over + 1e-9
    if low >= base:
        assert sine(low, high, base) == pytest.approx(average(low, high, base), abs=1e-9)
    if high <= base:
        assert sine(low, high, base) == average(low, high, base) == 0


@pytest.mark.parametrize(
    ("last", "totals"),
    [("05-01", (69.03, 99.45, 120.06, 173.16)), ("04-30", (69.03, 98.01, 101.61, 166.68))],
)
def test_seattle_in_spring(last: str, totals: tuple[float, ...]) -> None:
    for year, total in zip(YEARS, totals, strict=True):
        answer = asked(f"--base 50F --from {year}-01-01 --to {year}-{last}")
        assert answer.as_json()["degree_days_f"] == pytest.approx(total, abs=0.01)


@pytest.mark.parametrize(
    ("words", "span", "totals"),
    [
        ("--base 50F", ("01-01", "12-31"), (2040.1, 2464.6, 2682.4, 2773.89)),
        ("--base 50F --cap 86F", ("01-01", "12-31"), (2269.2, 2688.6, 2899.2, 3001.5)),
        ("--base 50F --cap 86F", ("01-01", "05-01"), (193, 221, 288, 381)),
        ("--base 32F", ("02-15", "05-01"), (1055.8, 1248.9, 1323.0, 1394.8)),
    ],
)
def test_seattle_by_base_and_cap(words: str, span: tuple[str, str], totals: tuple[float, ...]) -> None:
    for year, total in zip(YEARS, totals, strict=True):
        answer = asked(f"{words} --from {year}-{span[0]} --to {year}-{span[1]}").as_json()
        assert answer["degree_days_f"] == pytest.approx(total, abs=0.51 if total == round(total) else 0.051)
        assert answer["missing"] == 0


@pytest.mark.parametrize(
    ("reached", "total", "before"),
    [("2012-05-26", 205.83, 195.84), ("2013-05-09", 201.06, 189.54), ("2014-05-14", 209.88, 190.89),
     ("2015-05-07", 201.15, 195.12)],
)  # fmt: skip
def test_the_day_on_which_seattle_reaches_200(reached: str, total: float, before: float) -> None:
    day = date.fromisoformat(reached)
    year = [seen for seen in SEATTLE if seen.date.year == day.year]
    sums = list(accumulate(average(seen.low_c or 0, seen.high_c or 0, 10) * F_PER_C for seen in year))
    first = next(at for at, so_far in enumerate(sums) if so_far >= 200)
    assert year[first].date == day
    assert (sums[first], sums[first - 1]) == (pytest.approx(total, abs=0.01), pytest.approx(before, abs=0.01))


DAYS = tuple(DayWeather(date(2026, 5, 1) + timedelta(at), 23.0, 11.0) for at in range(10))


def test_days_without_both_temperatures_are_counted_as_missing() -> None:
    holes = (*DAYS[:4], DayWeather(date(2026, 5, 5), rain_mm=3.0), *DAYS[6:])
    answer = asked("--base 10C --from 2026-05-01 --to 2026-05-10", holes)
    assert answer.as_json() == {"degree_days_f": pytest.approx(8 * 7 * 1.8), "days": 8, "missing": 2}
    assert any("true sum is higher" in note for note in answer.notes)


def test_only_the_days_asked_for_count_and_each_once() -> None:
    answer = asked("--base 10C --from 2026-05-03 --to 2026-05-05", (*DAYS, DAYS[2], DAYS[3]))
    assert answer.as_json() == {"degree_days_f": pytest.approx(3 * 7 * 1.8), "days": 3, "missing": 0}


def test_without_any_day_there_is_no_sum() -> None:
    answer = asked("--base 50F --from 2026-05-01 --to 2026-05-10", ())
    assert answer.as_json() == {"degree_days_f": None, "days": 0, "missing": 10}
    assert any("No day" in note for note in answer.notes)


def test_needs_weather() -> None:
    assert RECKONINGS["degree-days"].needs is Needs.WEATHER
    read = RECKONINGS["degree-days"].read
    words = ["--base", "50F", "--from", "2026-01-01", "--to", "2026-05-01"]
    assert read(words).file == ""
    assert read([*words, "--file", "a", "b.csv"]).file == "a b.csv"


@pytest.mark.parametrize(
    ("words", "at_fault"),
    [
        ("--base 50F --from 2026-05-02 --to 2026-05-01", "--to"),
        ("--base 50F --cap 50F --from 2026-05-01 --to 2026-05-02", "--cap"),
        ("--base 50F --cap 86F --method sine --from 2026-05-01 --to 2026-05-02", "--method"),
        ("--base 50 --from 2026-05-01 --to 2026-05-02", "--base 50"),
        ("--base 500F --from 2026-05-01 --to 2026-05-02", "--base 500F"),
        ("--from 2026-05-01 --to 2026-05-02", "--base"),
        ("--base 50F --from 2026-05-32 --to 2026-05-02", "--from 2026-05-32"),
    ],
)
def test_what_cannot_be_meant_is_refused_by_name(words: str, at_fault: str) -> None:
    with pytest.raises(Refusal) as refused:
        asked(words, DAYS)
    assert refused.value.word == at_fault


def test_a_band_is_named_with_its_own_method_base_and_start_and_never_as_advice() -> None:
    answer = asked("--base 50F --from 2015-01-01 --to 2015-05-01")
    told = [note for note in answer.notes if note.startswith("Near: ")]
    assert any("155 to 211 (average, base 50 F, from 1 Jan, air)" in note and "1235" in note for note in told)
    assert any("its start not told" in note for note in told)
    assert any("None of this says what to put down" in note for note in answer.notes)


def test_a_band_of_another_method_or_base_is_not_near() -> None:
    new_year = MonthDay(1, 1)
    assert near(180, 50, "average", new_year)
    for method, base in (("capped", 50), ("sine", 50), ("average", 41)):
        assert near(180, base, method, new_year) == ()
    assert near(5, 50, "average", new_year) == ()
    assert near(180, 50, "average", MonthDay(12, 1)) == ()
    capped_notes = asked("--base 50F --cap 86F --from 2013-01-01 --to 2013-05-01").notes
    assert not [note for note in capped_notes if note.startswith("Near: ")]


def test_a_sum_with_many_days_missing_is_near_nothing_and_says_so() -> None:
    holes = [seen for seen in SEATTLE if seen.date.day > 5]
    told = asked("--base 50F --from 2015-01-01 --to 2015-05-01", holes).notes
    assert not [note for note in told if note.startswith("Near: ")]
    assert any("so many days missing" in note for note in told)


def test_it_says_where_the_days_on_file_end() -> None:
    told = asked("--base 10C --from 2026-05-01 --to 2026-06-30", DAYS).notes
    assert any("Nothing is on file after 2026-05-10" in note for note in told)


def test_every_band_cites_a_publication() -> None:
    assert all(band.basis.kind is Known.PUBLISHED and band.low_f <= band.high_f for band in BANDS)
