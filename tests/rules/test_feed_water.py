"""Water after a feeding. A quarter of an inch within a day, and none before heavy rain: Town of Mashpee, Massachusetts,
nitrogen bylaw, 2014; half an inch for urea, within 2 to 5 days: North Dakota State Univ. Extension, Understanding Urea.
Two days, and half an inch as too much, are judgment.
"""

import pytest

from journal.facts.factors import mm
from journal.facts.house import number
from tests.scenario import LAWN, book, later, lawn, level, raised

ON = "2026-06-10"
FED = f"{ON} feed pond-ridge 3lb/k front"
KEPT = "2026-06-09 water 0.3in front"


def dry(day: int, *lines: str, fed: str = FED) -> str:
    return level(book(KEPT, fed, *lines), later(ON, day), "feed-water-in")


def test_numbers_are_those_in_print() -> None:
    for name in ("feed-water-in", "feed-heat"):
        water = number(name, "water")
        assert (water.default, water.basis.citations[0].key) == (mm(0.25), "mashpee-2014")
    assert number("feed-wash", "days").default == 1


def test_no_quarter_inch_by_the_end_of_the_second_day() -> None:
    assert (dry(2), dry(3)) == ("", "note")
    nought = f"{later(ON, 8)} rain 0in"
    assert (dry(13, nought), dry(14, nought)) == ("note", "")
    assert dry(3, f"{later(ON, 2)} water 0.25in front") == ""
    assert dry(3, f"{later(ON, 2)} water 0.2in front") == "note"
    assert dry(3, f"{later(ON, 1)} rain 0.1in", f"{later(ON, 2)} water 0.15in front") == ""


def test_water_clears_it_even_late() -> None:
    assert dry(6, f"{later(ON, 6)} rain 0.3in") == ""


def test_unknown_depth_a_deep_soak_and_the_timer_count_for_the_owner() -> None:
    assert dry(3, f"{later(ON, 1)} water front") == ""
    assert dry(3, f"{later(ON, 1)} water deep front") == ""
    timer = book("2026-06-01 schedule front 20min 6:00", FED)
    assert level(timer, later(ON, 5), "feed-water-in") == ""


def test_water_of_the_same_day_counts_unless_it_is_known_to_have_come_before() -> None:
    assert dry(3, f"{ON} water 0.3in front") == ""
    assert dry(3, f"{ON} water 0.3in front 6:00", fed=f"{FED} 9:00") == "note"
    assert dry(3, f"{ON} water 0.3in front 17:00", fed=f"{FED} 9:00") == ""


def test_a_zone_of_which_no_water_is_kept_is_not_asked() -> None:
    assert level(book(FED), later(ON, 5), "feed-water-in") == ""
    kept = book(KEPT, FED)
    assert level(kept, later(ON, 12), "feed-water-in") == "note"
    assert level(kept, later(ON, 13), "feed-water-in") == ""


def test_weed_and_feed_has_to_dry_first() -> None:
    fed = f"{ON} feed green-gate 3lb/k front"
    assert dry(3, f"{ON} water 0.3in front", fed=fed) == "note"
    assert dry(3, f"{later(ON, 1)} water 0.3in front", fed=fed) == ""
    slow = lawn(
        toml=LAWN.replace('actives = ["2,4-d", "dicamba"]', 'actives = ["2,4-d"]\n[product.label]\nrain_free = "48 h"')
    )
    diary = book(KEPT, fed, f"{later(ON, 1)} water 0.3in front", on=slow)
    assert (level(diary, later(ON, 3), "feed-water-in"), level(diary, later(ON, 4), "feed-water-in")) == ("", "note")


def test_the_owner_may_give_it_longer() -> None:
    own = "2026-01-02 set feed-water-in days 4d"
    assert level(book(own, KEPT, FED), later(ON, 4), "feed-water-in") == ""
    assert level(book(own, KEPT, FED), later(ON, 5), "feed-water-in") == "note"


@pytest.mark.parametrize(
    ("line", "expected"),
    [("2026-06-10 rain 0.5in", "note"), ("2026-06-11 rain 0.5in", "note"), ("2026-06-11 rain 0.4in", ""),
     ("2026-06-12 rain 2in", ""), ("2026-06-09 rain 2in", ""), ("2026-06-11 water 0.6in front", "note"),
     ("2026-06-11 weather 70F 50F 0.7in", "note"), ("2026-06-11 water front", "")],
)  # fmt: skip
def test_half_an_inch_within_a_day_may_wash_it_out(line: str, expected: str) -> None:
    assert level(book(FED, line), "2026-06-12", "feed-wash") == expected


def test_where_the_order_is_not_known_it_asks_for_the_time() -> None:
    flag = raised(book(FED, f"{ON} rain 0.6in"), ON, "feed-wash")
    assert flag is not None
    assert (flag.level, "log the time" in flag.do, "not known" in flag.why) == ("note", True, True)
    before = book(f"{FED} 16:00", f"{ON} rain 0.6in 14:00")
    assert level(before, ON, "feed-wash") == ""
    after = raised(book(f"{FED} 9:00", f"{ON} rain 0.6in 20:00"), ON, "feed-wash")
    assert after is not None
    assert "not known" not in after.why


def test_watering_on_two_days_and_the_timers_runs_are_no_storm() -> None:
    assert level(book(FED, f"{ON} water 0.3in front", f"{later(ON, 1)} water 0.3in front"), ON, "feed-wash") == ""
    timer = book("2026-06-01 schedule front 60min 6:00", FED)
    assert level(timer, later(ON, 2), "feed-wash") == ""


def test_it_stands_thirty_days_and_the_owner_may_set_the_depth() -> None:
    rain = f"{later(ON, 1)} rain 0.6in"
    assert level(book(FED, rain), later(ON, 29), "feed-wash") == "note"
    assert level(book(FED, rain), later(ON, 30), "feed-wash") == ""
    assert level(book("2026-01-02 set feed-wash water 1in", FED, rain), later(ON, 2), "feed-wash") == ""
