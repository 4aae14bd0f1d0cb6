"""Water on a zone: logged, run by the timer, and rained, each once."""

import pytest

from journal.season.history import History, Past
from journal.season.water import depth_mm, rain_mm, soaked, water_days, water_on_file
from tests.scenario import book, day, later, lawn

CIRCUITS = (
    'name = "front"',
    'name = "front"\ncircuits = [{name="A", share=60, rate="0.5 in/h"}, {name="B", share=40, rate="1 in/h"}]',
)


def front(history: History, on: str) -> Past:
    return history.on("front", day(on))


def depths(history: History, on: str) -> list[float | None]:
    return [
        None if w.depth_mm is None else round(w.depth_mm, 3)
        for here in water_days(front(history, on), day(on).toordinal(), day(on).toordinal()).values()
        for w in here
    ]


@pytest.mark.parametrize(
    ("words", "mm"),
    [("0.5in", 12.7), ("20min", 5.08), ("20min front 50%", 2.54), ("deep", None)],
)
def test_depth_of_a_watering(words: str, mm: float | None) -> None:
    where = "" if "front" in words else " front"
    assert depths(book(f"2026-06-01 water {words}{where}"), "2026-06-01") == [mm]


def test_circuits_count_by_their_share() -> None:
    zone = lawn(CIRCUITS, ('rate = "0.6 in/h"', ""))
    run = book("2026-06-01 water A 60min B 30min front", on=zone)
    assert depths(run, "2026-06-01") == [pytest.approx(0.6 * 12.7 + 0.4 * 12.7)]
    assert depths(book("2026-06-01 water 60min front", on=zone), "2026-06-01") == [pytest.approx(25.4 * 0.7)]


def test_without_a_rate_a_watering_still_counts() -> None:
    unknown = lawn(('rate = "0.6 in/h"', ""))
    assert depths(book("2026-06-01 water 20min front", on=unknown), "2026-06-01") == [None]


def test_a_spot_is_not_the_zone() -> None:
    assert depths(book("2026-06-01 water 20min spot 40sqft front"), "2026-06-01") == []


def test_the_timer_waters_on_its_days() -> None:
    timer = book("2026-06-01 schedule front 20min mon thu 6:00 from 6/8 to 6/22")
    days = water_days(front(timer, "2026-07-01"), day("2026-06-01").toordinal(), day("2026-07-01").toordinal())
    assert [d - day("2026-06-01").toordinal() + 1 for d in days] == [8, 11, 15, 18, 22]
    assert all(w.assumed for ws in days.values() for w in ws)


def test_the_timer_never_waters_ahead_of_the_day_judged() -> None:
    timer = book("2026-06-01 schedule front 20min 6:00")
    first = day("2026-06-01").toordinal()
    assert list(water_days(front(timer, "2026-06-02"), first, first + 8)) == [first, first + 1]


def test_a_later_timer_replaces_one_of_the_same_day_adds_and_off_ends() -> None:
    twice = book("2026-06-01 schedule front 5min 7:00", "2026-06-01 schedule front 5min 15:00")
    assert len(depths(twice, "2026-06-03")) == 2
    changed = book("2026-06-05 schedule front 20min", on=twice)
    assert len(depths(changed, "2026-06-04")) == 2
    assert len(depths(changed, "2026-06-05")) == 1
    off = book("2026-06-10 schedule off front", on=changed)
    assert len(depths(off, "2026-06-09")) == 1
    assert depths(off, "2026-06-10") == []


def rained(history: History, on: str, as_of: str = "2026-06-30") -> float | None:
    found = rain_mm(front(history, as_of), day(on).toordinal())
    return None if found is None else round(found, 3)


def test_the_gauge_beats_the_weather_and_is_never_added() -> None:
    station = book("2026-06-01 weather 70F 50F 0.5in", "2026-06-02 weather 70F 50F 0in")
    assert rained(station, "2026-06-01") == 12.7
    assert rained(station, "2026-06-02") == 0
    assert rained(station, "2026-06-03") is None
    gauge = book("2026-06-01 rain 0.2in", on=station)
    assert rained(gauge, "2026-06-01") == 5.08
    zone = book("2026-06-01 rain 0.1in front", on=gauge)
    assert rained(zone, "2026-06-01") == 2.54
    assert zone.on("back", day("2026-06-30")) is not None
    assert round(rain_mm(zone.on("back", day("2026-06-30")), day("2026-06-01").toordinal()) or 0, 2) == 5.08


def test_two_readings_of_a_day_add_and_a_long_one_is_spread() -> None:
    twice = book("2026-06-01 rain 0.2in", "2026-06-01 rain 0.3in")
    assert rained(twice, "2026-06-01") == 12.7
    spread = book("2026-06-05 rain 1in since 2026-06-02")
    assert [rained(spread, f"2026-06-0{d}") for d in (1, 2, 5, 6)] == [None, 6.35, 6.35, None]
    assert rained(spread, "2026-06-03", as_of="2026-06-04") is None


def test_depth_over_days() -> None:
    diary = book("2026-06-01 rain 0.5in", "2026-06-03 water 0.25in front", "2026-06-04 water deep front")
    first, last = day("2026-06-01").toordinal(), day("2026-06-07").toordinal()
    assert depth_mm(front(diary, "2026-06-07"), first, last) == pytest.approx(19.05)
    assert depth_mm(front(lawn(), "2026-06-07"), first, last) is None
    assert soaked(front(diary, "2026-06-07"), first, last)


def test_what_counts_as_water_on_file() -> None:
    for line in ("water front", "rain 0in", "weather 70F 50F 0in", "schedule front 20min to 6/1"):
        diary = book(f"2026-06-01 {line}")
        assert water_on_file(front(diary, "2026-06-14"))
        assert not water_on_file(front(diary, str(later("2026-06-14", 1))))
    assert not water_on_file(front(book("2026-06-01 weather 70F 50F"), "2026-06-02"))
