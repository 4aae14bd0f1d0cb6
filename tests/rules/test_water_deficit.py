"""A root zone that has used up its water.

The account is NDSU Extension's checkbook method (AE792); half of what the roots can draw may be used before watering:
New York State golf course best management practices. That it is late from three quarters on, and not before the second
day after it could be watered, is judgment.
"""

import pytest

from journal.season.history import History
from tests.scenario import LAWN, book, day, find, later, lawn, level, raised, rules_raised, the, weather

FRONT_ONLY = ('name = "back"\narea = "3100 sqft"\nirrigated = true', 'name = "back"\narea = "3100 sqft"')
LOAM = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = true\nsoil = "loam"'))
DRY = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = false\nsoil = "loam"'))
JULY = "82F 60F 0in"


def july(*lines: str, to: str = "2026-07-20", on: History = LOAM) -> History:
    """Dry weather from 20 June to that day, watered deep on 1 July: half of it is used by the 4th."""
    days = (day(to) - day("2026-06-20")).days + 1
    return book(*weather("2026-06-20", days, JULY), "2026-07-01 water deep front", *lines, on=on)


def test_it_is_late_once_the_plan_s_watering_is() -> None:
    assert level(july(), "2026-07-05", "water-deficit") == ""
    late = raised(july(), "2026-07-06", "water-deficit")
    assert late is not None
    assert late.level == "late"
    assert late.why.startswith("0.9 in used up since the soaking of Wed 1 Jul, 0.45 in may be")
    assert late.rose == day("2026-07-06")


def test_never_late_while_nothing_is_to_be_done() -> None:
    for history in (july(), july("2026-07-08 water 0.3in front"), july("2026-07-09 rain 0.5in")):
        for at in range(19):
            on = later("2026-07-02", at)
            if level(history, on, "water-deficit"):
                assert the(history, on, "water").state in ("open", "late"), on
                assert the(history, on, "water").line, on


def test_it_clears_below_half_of_what_may_be_used() -> None:
    """0.45 in may be used. On the 8th about 1 in is missing: 0.6 in leaves too much, an inch does not."""
    some = july("2026-07-08 water 0.6in front")
    assert level(some, "2026-07-08", "water-deficit") == ""  # nothing more is to be done on the day
    assert level(some, "2026-07-09", "water-deficit") == "late"
    assert the(some, "2026-07-09", "water").state in ("open", "late")
    enough = july("2026-07-08 water 0.9in front")
    assert level(enough, "2026-07-08", "water-deficit") == ""
    assert level(enough, "2026-07-09", "water-deficit") == ""


def test_who_waters_as_the_plan_says_is_never_late() -> None:
    history = july(to="2026-06-30")
    for at in range(30):
        today = later("2026-07-02", at)
        history = book(f"{later(today, -1)} weather {JULY}", on=history)
        step = the(history, today, "water")
        if step.state == "open":
            history = book(f"{today} {step.line}", on=history)
        assert rules_raised(history, today) & {"water-deficit", "water-often", "water-runoff"} == set(), today


def test_without_a_soaking_on_file_nothing_is_known() -> None:
    dry = book(*weather("2026-03-20", 90, "70F 45F 0in"), on=LOAM)
    assert the(dry, "2026-06-01", "water").state == "late"  # the plan takes it as full when growth began
    assert level(dry, "2026-06-01", "water-deficit") == ""


def test_weather_older_than_three_days_tells_nothing() -> None:
    old = july(to="2026-07-07")
    assert level(old, "2026-07-10", "water-deficit") == "late"
    assert level(old, "2026-07-11", "water-deficit") == ""


@pytest.mark.parametrize(
    "line", ["2026-07-02 see dormant front", "2026-06-10 seed three-river 9lb front", "2026-07-07 see frozen front"]
)
def test_a_resting_lawn_new_grass_and_frozen_ground_are_not_short_of_water(line: str) -> None:
    assert level(july(line), "2026-07-08", "water-deficit") == ""


def test_while_a_label_keeps_water_off_it_is_not_late() -> None:
    label = '\n[[product]]\nname = "clear-row"\nkind = "weed"\nrain_free = "48h"\n'
    shed = lawn(FRONT_ONLY, ("irrigated = true", 'irrigated = true\nsoil = "loam"'), toml=LAWN + label)
    sprayed = july("2026-07-05 treat clear-row 2floz/k front", on=shed)
    found = [level(sprayed, later("2026-07-06", at), "water-deficit") for at in range(5)]
    assert found == ["", "", "", "", "late"]  # from the 8th it may be watered, two days later it is late


def test_a_timer_is_taken_to_do_it() -> None:
    timer = july("2026-06-20 schedule front 10min mon thu 6:00")
    assert level(timer, "2026-07-15", "water-deficit") == ""


def test_where_no_rain_and_no_water_is_on_file_the_single_note_stands() -> None:
    silent = book(
        *weather("2026-05-20", 20, "70F 50F 0in"), *weather("2026-06-09", 50, "82F 60F"),
        "2026-06-08 water deep front", on=LOAM,
    )  # fmt: skip
    assert rules_raised(silent, "2026-06-20") & {"water-deficit", "water-unlogged"} == {"water-deficit"}
    assert rules_raised(silent, "2026-06-25") & {"water-deficit", "water-unlogged"} == {"water-unlogged"}


def test_where_nobody_irrigates_it_is_one_note_in_a_drought() -> None:
    diary = july(on=DRY)
    assert level(diary, "2026-07-04", "water-deficit") == ""
    note = raised(diary, "2026-07-05", "water-deficit")
    assert note is not None
    assert note.level == "note"
    assert "see dormant" in note.do
    assert {level(diary, later("2026-07-05", at), "water-deficit") for at in range(15)} == {"note"}
    assert raised(diary, "2026-07-19", "water-deficit").rose == note.rose  # type: ignore[union-attr]
    assert find(diary, "2026-07-19", "water") is None
    assert level(book("2026-07-10 see dormant front", on=diary), "2026-07-11", "water-deficit") == ""
    assert level(book("2026-07-10 rain 1.5in", on=diary), "2026-07-10", "water-deficit") == ""


def test_the_owners_own_days() -> None:
    slow = july("2026-06-20 set water-deficit days 4")
    assert level(slow, "2026-07-07", "water-deficit") == ""
    assert level(slow, "2026-07-08", "water-deficit") == "late"
    assert the(slow, "2026-07-07", "water").state == "open"
