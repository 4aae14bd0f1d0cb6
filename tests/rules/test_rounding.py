"""A measure given in other units is the same measure: 75 mm is 3 in, 90 mm is 3.5 in; and the plan keeps the range."""

import pytest

from journal.season.history import History
from tests.scenario import book, later, lawn, level, the, weather

SOWN = "2026-08-25"
SEED = f"{SOWN} seed three-river 9lb front"


@pytest.mark.parametrize(
    ("line", "fine"),
    [
        ("2026-07-10 mow 75mm front", True),
        ("2026-07-10 mow 74mm front", False),
        ("2026-05-10 mow 90mm front", True),
        ("2026-05-10 mow 91mm front", False),
        ("2026-05-10 mow 63mm front", True),
        ("2026-05-10 mow 62mm front", False),
    ],
)
def test_a_cut_in_millimetres(line: str, fine: bool) -> None:
    assert level(book(line), line[:10], "mow-height") == ("" if fine else "note")


@pytest.mark.parametrize(("height", "expected"), [("88mm", ""), ("87mm", "loss")])
def test_a_height_that_lets_it_be_cut(height: str, expected: str) -> None:
    tall = book(SEED, f"{later(SOWN, 17)} height {height} front", f"{later(SOWN, 18)} mow 3in front")
    assert level(tall, later(SOWN, 18), "mow-first-early") == expected


@pytest.mark.parametrize(("height", "expected"), [("116mm", "loss"), ("117mm", "note")])
def test_old_turf_that_stands_tall(height: str, expected: str) -> None:
    tall = book(SEED, f"{later(SOWN, 8)} height {height} front", f"{later(SOWN, 8)} mow 3in front")
    assert level(tall, later(SOWN, 8), "mow-first-early") == expected


@pytest.mark.parametrize(("rain", "expected"), [("2.5mm", ""), ("2.4mm", "late")])
def test_rain_that_covers_a_day(rain: str, expected: str) -> None:
    wet = [f"{later(SOWN, at)} water 5min front" for at in (1, 2, 3) for _ in range(2)]
    diary = book(SEED, *wet, *weather(SOWN, 9, "80F 62F 0in"), f"{later(SOWN, 4)} rain {rain}")
    assert level(diary, later(SOWN, 5), "seedbed-dry") == expected


@pytest.mark.parametrize(("rain", "expected"), [("12.5mm", "late"), ("12.4mm", "")])
def test_water_that_ends_a_dry_spell(rain: str, expected: str) -> None:
    dry = lawn(("irrigated = true", "irrigated = false"))
    diary = book("2026-06-20 mow 3in front", f"2026-07-01 rain {rain}", on=dry)
    assert level(diary, "2026-07-05", "mow-gap") == expected


METRIC = lawn(('name = "North Lane"', 'name = "North Lane"\nunits = "metric"'))
SHADE = lawn(('name = "front"', 'name = "front"\nsun = "shade"'))


@pytest.mark.parametrize("set_up", [lawn(), METRIC, SHADE], ids=["inches", "metric", "shade"])
@pytest.mark.parametrize("usual", ["2.25in", "2.5in", "3in", "4in", "5in", "58mm", "90mm"])
def test_the_height_that_is_suggested_is_never_blamed(usual: str, set_up: History) -> None:
    for mown in ("2026-05-01", "2026-05-29", "2026-07-10", "2026-08-28", "2026-10-15", "2026-10-30"):
        diary = book(f"{mown} mow {usual} front", on=set_up)
        on = later(mown, 7)
        line = the(diary, on, "mow").line
        assert level(book(f"{on} {line}", on=diary), on, "mow-height") == "", (mown, line)


def test_a_usual_height_within_the_range_is_kept_as_it_is() -> None:
    low = book("2026-10-25 mow 2.25in front")
    assert the(low, "2026-11-02", "mow").line == "mow 2.25in front"
    assert the(low, "2026-11-02", "mow").amount == "cut at 2.25 in"
    assert the(book("2026-05-02 mow 2.25in front"), "2026-05-10", "mow").line == "mow 2.5in front"
    assert the(book("2026-05-28 mow 2.5in front"), "2026-06-04", "mow").line == "mow 3in front"


def test_grass_that_stands_far_too_tall_comes_down_by_thirds() -> None:
    tall = book("2026-05-02 mow 3in front", "2026-05-20 height 6.5in front")
    step = the(tall, "2026-05-20", "mow")
    assert step.line == "mow 4.5in front"
    assert level(book(f"2026-05-20 {step.line}", on=tall), "2026-05-20", "mow-height") == ""
    assert level(book("2026-05-20 mow 4.5in front", "2026-05-02 mow 3in front"), "2026-05-20", "mow-height") == "note"
