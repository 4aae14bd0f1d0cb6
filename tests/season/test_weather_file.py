"""Files of daily weather: every form means the same day, and every value that is left out is counted."""

from datetime import date, timedelta

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from journal.record.refusal import Refusal
from journal.season.daily import DayWeather
from journal.season.weather_file.found import Units, WeatherFile
from journal.season.weather_file.read import read_days
from tests.reckon.seattle import seattle
from tests.seattle import SEATTLE

# The same invented day in each of the forms that NCEI's readme files describe.
LONG = """\
XX000000001,20260501,PRCP,127,,,7,0700
XX000000001,20260501,TMAX,211,,,7,0700
XX000000001,20260501,TMIN,89,,,7,0700
"""
HEADED = "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n" + LONG
STATION = (
    '"STATION","DATE","LATITUDE","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"\n'
    '"XX000000001","2026-05-01","42.0","EXAMPLE FIELD","  127",",,7,0700","  211",",,7","   89",",,7"\n'
)
ORDER = '"STATION","NAME","DATE","PRCP","TAVG","TMAX","TMIN"\n"XX000000001","EXAMPLE FIELD, US","2026-05-01",'
METRIC = f'{ORDER}"12.7","15.5","21.1","8.9"\n'
US = f'{ORDER}"0.50","60","70","48"\n'
OLD_ORDER = "STATION,STATION_NAME,DATE,PRCP,TMAX,TMIN\nGHCND:XX000000001,EXAMPLE FIELD,20260501,127,211,89\n"
PLAIN = "date,precipitation,temp_max,temp_min\n2026/05/01,12.7,21.1,8.9\n"

THE_DAY = DayWeather(date(2026, 5, 1), 21.1, 8.9, 12.7)


def plain(*rows: str, header: str = "date,rain,high,low") -> WeatherFile:
    return read_days("\n".join([header, *rows]), Units.METRIC)


@pytest.mark.parametrize("text", [LONG, HEADED, STATION, METRIC, OLD_ORDER, PLAIN])
def test_every_form_means_the_same_day(text: str) -> None:
    file = read_days(text)
    assert file.days == (THE_DAY,)
    assert (file.doubt, dict(file.dropped)) == ("", {})


def test_an_order_in_us_units_means_the_same_day_to_its_own_precision() -> None:
    (day,) = read_days(US).days
    assert [day.high_c, day.low_c, day.rain_mm] == pytest.approx([21.1, 8.9, 12.7], abs=0.05)
    assert read_days(US).units == "us"


def test_tenths_are_read_as_the_seattle_table_was_made_from_them() -> None:
    # github.com/domoritz, gist acb8c13d5dadeb19636c: the raw rows of the first two days of seattle-weather.csv
    raw = (
        "STATION,STATION_NAME,DATE,PRCP,TMAX,TMIN,AWND\n"
        "GHCND:USW00024233,SEATTLE TACOMA,20120101,0,128,50,47\n"
        "GHCND:USW00024233,SEATTLE TACOMA,20120102,109,106,28,45\n"
        "GHCND:USW00024233,SEATTLE TACOMA,20120103,-9999,-9999,-9999,-9999\n"
    )
    file = read_days(raw)
    assert file.days == read_days(SEATTLE.read_text(encoding="utf-8")).days[:2]
    assert file.days[1] == DayWeather(date(2012, 1, 2), 10.6, 2.8, 10.9)
    assert file.dropped == {"marked as missing": 3, "a day without a value": 1}


def test_the_seattle_table_by_year() -> None:
    file = read_days(SEATTLE.read_text(encoding="utf-8"))
    assert (file.read, file.kept, file.gaps, dict(file.dropped)) == (1461, 1461, (), {})
    rain = {year: sum(d.rain_mm or 0 for d in file.days if d.date.year == year) for year in range(2012, 2016)}
    assert [round(mm, 1) for mm in rain.values()] == [1226.0, 828.0, 1232.8, 1139.2]
    assert file.days == seattle()


def test_the_three_rows_shown_are_the_wettest_the_hottest_and_the_coldest_day() -> None:
    file = read_days(SEATTLE.read_text(encoding="utf-8"))
    assert [str(sample.day.date) for sample in file.sample] == ["2013-12-07", "2014-08-11", "2015-03-15"]
    assert file.sample[2].written["rain"] == "55.9" == str(file.sample[2].day.rain_mm)


def test_a_value_with_a_quality_flag_is_dropped_and_the_flag_told() -> None:
    # GHCN-Daily readme: X "failed bounds check", T in the measurement flag "trace of precipitation"
    file = read_days(
        f"{LONG}XX000000001,20260502,TMAX,999,,X,7,0700\nXX000000001,20260502,TMIN,80,,,7,0700\n"
        "XX000000001,20260502,PRCP,0,T,,7,0700\n"
    )
    assert file.days == (THE_DAY, DayWeather(date(2026, 5, 2), None, None, 0.0))
    assert file.dropped == {"flag X: out of bounds": 1, "a high or a low without the other": 1}
    assert "1 traces of rain are taken as 0." in file.notes


def test_the_flags_of_a_station_file_stand_beside_their_values() -> None:
    text = STATION + '"XX000000001","2026-05-02","42.0","EXAMPLE FIELD","    0","T,,7","  999",",X,7","   80",",,7"\n'
    assert read_days(text).days[1] == DayWeather(date(2026, 5, 2), None, None, 0.0)
    assert read_days(text).dropped["flag X: out of bounds"] == 1


def test_a_morning_reading_is_told() -> None:
    assert any("07:00" in note for note in read_days(LONG).notes)
    assert not any("read at" in note for note in read_days(LONG.replace("0700", "2400")).notes)


def test_elements_of_no_use_are_counted_and_left() -> None:
    file = read_days(f"{LONG}XX000000001,20260501,SNWD,0,,,7,\nXX000000001,20260501,TAVG,150,,,7,\n")
    assert file.days == (THE_DAY,)
    assert "2 rows hold what is not used here: SNWD, TAVG." in file.notes


def test_words_for_nothing_and_for_a_trace() -> None:
    file = plain("2026-05-01,T,70,50", "2026-05-02,M,20,10", "2026-05-03,,21,11", "2026-05-04,-9999,,")
    assert [day.rain_mm for day in file.days] == [0.0, None, None]
    assert file.dropped == {
        "beyond -60 to 60 C": 1, "a high or a low without the other": 1, "marked as missing": 1,
        "a day without a value": 1,
    }  # fmt: skip


def test_a_day_given_twice() -> None:
    file = plain("2026-05-01,1,20,10", "2026-05-01,1.0,20,10", "2026-05-02,1,20,10", "2026-05-02,2,20,10")
    assert [day.rain_mm for day in file.days] == [1.0, None]
    assert file.dropped == {"given twice, the same": 5, "given twice, and differently": 2}


def test_what_can_not_be_is_dropped_with_its_reason() -> None:
    file = plain("2026-05-01,1,10,20", "2026-05-02,-1,20,10", "2026-05-03,2000,61,10", "1890-05-04,1,20,10")
    assert file.days == (DayWeather(date(2026, 5, 1), None, None, 1.0), DayWeather(date(2026, 5, 2), 20.0, 10.0, None))
    assert file.dropped == {
        "a high below the low": 2, "rain below 0 or beyond 1000 mm": 2, "beyond -60 to 60 C": 1,
        "a high or a low without the other": 1, "a day without a value": 1, "outside the years 1900 to 2199": 1,
    }  # fmt: skip


def test_days_in_any_order_and_the_gaps_between_them() -> None:
    file = plain("2026-05-09,1,20,10", "2026-05-05,1,20,10", "2026-05-04,1,20,10")
    assert [day.date.day for day in file.days] == [4, 5, 9]
    assert file.gaps == ((date(2026, 5, 6), date(2026, 5, 8)),)


@pytest.mark.parametrize(
    "text",
    [
        "\ufeffdate,rain,high,low\r\n2026-05-01,12.7,21.1,8.9\r\n",
        "# from the garden\n\nDate;Rain;High;Low\n2026-05-01;12,7;21,1;8,9\n",
        "date\ttmax\ttmin\tprcp\tremark\n20260501\t21.1\t8.9\t12.7\twindy, cold\n",
        'DATE,"Temp Max (\u00b0C)",temp_min_c,Rainfall mm\n2026-05-01T00:00:00,"21.1"," 8.9",12.7\n',
        "day,high_f,low_f,rain_in\n2026/5/1,69.98,48.02,0.5\n",
        "date,max_temp_f,min_temp_f,precip_mm\n2026-05-01,69.98,48.02,12.7\n",
        "date,rain_cm,high_c,low_c\n2026-05-01,1.27,21.1,8.9",
    ],
)
def test_odd_forms_of_a_plain_table(text: str) -> None:
    (day,) = read_days(text).days
    assert day.date == THE_DAY.date
    assert [day.high_c, day.low_c, day.rain_mm] == pytest.approx([21.1, 8.9, 12.7])


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "the file is empty"),
        ("\ufeff\r\n \n", "the file is empty"),
        ("hello\n", "line 1, hello: no column of dates"),
        ("date,rain,high,low\n", "line 1: this is a header, and no row is under it"),
        ("2026-05-01,12.7,21.1,8.9\n", "line 1, 2026-05-01: there is no header"),
        ("date,amount,payee\n2026-05-01,3,x\n", "line 1, date,amount,payee: neither rain"),
        ("date,high\n2026-05-01,70\n", "neither rain nor both"),
        ("date,rain,precip\n2026-05-01,1,1\n", "line 1, precip: two columns for one thing: rain"),
        ("date,rain\n2026-05-01,1\n2026-13-01,1\n", "line 3, 2026-13-01: not a day"),
        ("date,rain\n05/01/2026,1\n", "line 2, 05/01/2026: not a day"),
        ("date,rain\n2026-05-01,lots\n", "line 2, lots: not a number for the rain"),
        ("date,rain\n2026-05-01\n", "line 2: 1 cells where 2 are wanted"),
        ("date,rain\n2026-05-01,1,2\n", "line 2: 3 cells where 2 are wanted"),
        ('date,rain\n2026-05-01,"1\n', "not a row of cells"),
        ("date,rain\n2026-05-01,\0\n", "line 2: this is no text"),
        ("ID,DATE,ELEMENT\nX,20260501,TMAX\n", "no column of values"),
        (f"{LONG}XX1,20260502\n", "line 4: only 2 cells"),
        (f"{LONG}XX000000002,20260502,TMAX,200,,,7,\n", "2 stations are in this file: XX000000001, XX000000002."),
        (f'{METRIC}"XX2","OTHER","2026-05-02","1.0",,"21.1","8.9"\n', "XX000000001 EXAMPLE FIELD, US, XX2 OTHER."),
    ],
)
def test_a_file_that_can_not_be_used_is_told_by_line_and_word(text: str, words: str) -> None:
    with pytest.raises(Refusal) as caught:
        read_days(text)
    assert words in str(caught.value)


_WORDS = """
date DATE tmax TMIN rain PRCP PRCP_ATTRIBUTES STATION ELEMENT VALUE 2026-05-01 20260502 TMAX 127 -9999 T 1e9 0.5 . -
\u00b2 \u0663 nan ,,X 0700 "
"""
_CELLS = st.sampled_from(["", *_WORDS.split()])
_ROWS = st.lists(_CELLS | st.text(max_size=6), min_size=1, max_size=8).map(",".join)
_TABLES = st.lists(_ROWS, max_size=8).map("\n".join)


def days_or_refusal(text: str, units: Units | None) -> WeatherFile | Refusal:
    try:
        return read_days(text, units)
    except Refusal as refusal:
        return refusal


@settings(deadline=None)
@given(st.text() | _TABLES, st.sampled_from([None, *Units]))
@example("date,rain\n2026-05-01,\u0663.5\n", None)
@example("X,20260501,TMAX,1\nX,20260501,TMAX,2,,,,\u00b2", None)
@example(f"date,rain\n2026-05-01,{'9' * 400}\n", None)
@example("date,rain\n" + "x" * 200_000, None)
def test_no_text_raises_anything_else(text: str, units: Units | None) -> None:
    file = days_or_refusal(text, units)
    if isinstance(file, Refusal):
        assert file.why
        return
    assert all(one.date < other.date for one, other in zip(file.days, file.days[1:], strict=False))
    assert all(d.rain_mm is None or 0 <= d.rain_mm <= 1000 for d in file.days)
    assert all((d.high_c is None) is (d.low_c is None) for d in file.days)
    assert not (file.doubt and file.days)


def test_a_day_is_the_same_whatever_the_file_is_written_in() -> None:
    days = [DayWeather(date(2026, 4, 1) + timedelta(n), 10.0 + n / 2, n / 2 - 5.0, n / 2) for n in range(50)]
    metric = [f"{d.date},{d.rain_mm},{d.high_c},{d.low_c}" for d in days]
    tenths = [f"{d.date},{(d.rain_mm or 0) * 10:g},{(d.high_c or 0) * 10:g},{(d.low_c or 0) * 10:g}" for d in days]
    header = "date,rain,high,low"
    assert read_days("\n".join([header, *metric])).days == tuple(days)
    assert read_days("\n".join([header, *tenths])).days == tuple(days)
