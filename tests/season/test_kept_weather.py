"""Thirty years of weather are no diary: nothing is asked about the time they tell of."""

from dataclasses import replace
from datetime import date, timedelta
from functools import cache
from math import cos, pi

import pytest

from journal.record.entry import KINDS
from journal.record.kinds.weather import Weather
from journal.season.growth import thawed_on
from journal.season.history import History
from journal.season.water import WATER
from journal.session.intake import intake_id
from journal.standing import findings
from tests.scenario import book, later, lawn, level, weather

FIRST, LAST = date(1996, 1, 1), date(2025, 12, 31)
KEPT = "2026-04-20 feed pond-ridge 5lb front", "2026-05-02 mow 3in front", "2026-06-01 water 20min front"


def a_day(day: date) -> Weather:
    """A warm summer, a cold winter, a shower every third day."""
    high = 14 - 16 * cos(2 * pi * (day.timetuple().tm_yday - 20) / 365)
    rain = 9.0 if day.toordinal() % 3 == 0 else 0.0
    return Weather(id=intake_id(day), date=day, high_c=high, low_c=high - 11, rain_mm=rain)


DIARIES = {"set up in July": lawn(set_up="2026-07-15"), "a spring logged": book(*KEPT)}


@cache
def with_thirty_years(name: str) -> History:
    days = [a_day(FIRST + timedelta(n)) for n in range((LAST - FIRST).days + 1)]
    entries = {e.id: e for track in DIARIES[name].tracks.values() for e in track.entries}
    return History.of([*entries.values(), *days])


@pytest.mark.parametrize("name", DIARIES)
def test_no_new_flag_stands_on_any_day(name: str) -> None:
    for n in range(0, 240, 7):
        day = later("2026-04-01", n)
        assert findings(with_thirty_years(name), day) == findings(DIARIES[name], day), day


def test_the_diary_begins_no_earlier_for_any_kind() -> None:
    diary, full = DIARIES["a spring logged"], with_thirty_years("a spring logged")
    for kinds in ((), WATER, *((kind,) for kind in KINDS.values())):
        for zone in ("front", "back"):
            assert full.kept_for(zone, *kinds) == diary.kept_for(zone, *kinds), (kinds, zone)
    assert (full.oldest, full.kept_since) == (diary.oldest, diary.kept_since)


def test_a_gauge_is_read_by_the_owner_and_does_count() -> None:
    diary = book("2026-03-20 rain 0.4in", on=lawn(set_up="2026-05-01"))
    assert str(diary.kept_for("front", *WATER)) == "2026-03-20"


def test_a_hot_day_that_the_owner_knows_to_have_been_cool_is_cool() -> None:
    """The day's own entry holds over the one taken in, wherever weather is looked at."""
    fed = "2026-05-01 feed pond-ridge 5lb front"
    hot = book(fed, *weather("2026-06-20", 7, "88F 70F 0in"))
    assert level(hot, "2026-07-01", "feed-overdue") == ""
    cool = book(fed, *weather("2026-06-20", 7, "70F 60F 0.5in"))
    both = cool
    for n in range(7):
        both = both.plus(replace(a_day(later("2026-06-20", n)), id="", high_c=48.0, low_c=28.0, rain_mm=0.0))
    for n in range(60):
        when = later("2026-06-15", n)
        assert findings(both, when) == findings(cool, when), when


def test_frozen_ground_thaws_by_what_the_owner_saw() -> None:
    frozen = book("2026-12-01 see frozen front", *weather("2026-12-02", 10, "30F 20F 0in"))
    both = frozen
    for n in range(10):
        both = both.plus(replace(a_day(later("2026-12-02", n)), id="", high_c=15.0, low_c=5.0))
    assert thawed_on(frozen.on("front", later("2026-12-12", 0))) is None
    assert thawed_on(both.on("front", later("2026-12-12", 0))) is None
    mild = book("2026-12-01 see frozen front", *weather("2026-12-02", 10, "59F 41F 0in"))
    assert thawed_on(mild.on("front", later("2026-12-12", 0))) == later("2026-12-04", 0)
