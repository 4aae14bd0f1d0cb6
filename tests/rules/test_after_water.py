"""Water after a treatment: too soon on a leaf, and too little for what works in the soil."""

from datetime import timedelta

import pytest

from journal.facts.house import number
from journal.reckon.uses import uses
from journal.reckon.watering_in import rain_free_hours, water_in, watered_from
from journal.season.history import History
from tests.rules.treated import alone, flags, shed
from tests.scenario import book, day, judged, level, raised

SIX_HOURS = {"leaf-off": 'rain_free = "6 h"'}
A_DAY = {"leaf-off": 'rain_free = "24 h"'}
SPRAYED = "2026-05-04 treat leaf-off 1floz front"
BARRIER = "2026-04-20 treat spring-wall 3lb front"
GRUBS = "2026-07-06 treat grub-off 3lb front"
RATE = ('area = "1000 sqft"\nirrigated = true\nrate = "0.6 in/h"', 'area = "1000 sqft"\nirrigated = true')


def _use(line: str, labels: dict[str, str] | None = None) -> tuple[History, float, int]:
    """The book, the rain-free hours of its one use, and the days until it may be watered."""
    history = book(line, on=shed(labels))
    past = history.on("front", day("2026-12-01"))
    (use,) = uses(past, day("2026-01-01").toordinal())
    return history, rain_free_hours(use, past.lawn), (watered_from(use, past.lawn) - use.date) // timedelta(1)


def test_rain_free_hours_are_the_labels_else_a_day_and_only_on_leaves() -> None:
    assert _use(SPRAYED)[1:] == (24, 2)
    assert _use(SPRAYED, SIX_HOURS)[1:] == (6, 1)
    assert _use(BARRIER)[1:] == (0, 0)
    assert _use("2026-09-06 feed seed-start 4lb front")[1:] == (0, 0)
    assert _use("2026-05-04 feed green-gate 4lb front")[1:] == (24, 2)


def test_the_published_hours_and_depth_are_the_defaults() -> None:
    """24 h without rain: Iowa State Univ. Extension. Half an inch: label of a prodiamine granule, Univ. of Illinois."""
    assert number("wash-off", "hours").default == 24
    assert number("water-in-missing", "depth").default == pytest.approx(12.7)
    assert number("water-in-missing", "late-days-barrier").default == 14


def test_rain_the_day_after_a_spray_is_a_loss_by_its_label_and_a_note_without() -> None:
    rain = "2026-05-05 rain 0.4in"
    assert level(book(SPRAYED, rain, on=shed(A_DAY)), "2026-05-05", "wash-off") == "loss"
    default = book(SPRAYED, rain, on=shed())
    (flag,) = alone(default, "2026-05-05", "wash-off")
    assert str(flag.level) == "note"
    assert "label not entered" in flag.why
    assert level(default, "2026-05-05", "wash-off") == ""
    assert level(default, "2026-05-05", "label-unknown") == "note"


def test_two_days_after_it_is_over() -> None:
    assert level(book(SPRAYED, "2026-05-06 rain 0.4in", on=shed(A_DAY)), "2026-05-06", "wash-off") == ""
    long = shed({"leaf-off": 'rain_free = "48 h"'})
    assert level(book(SPRAYED, "2026-05-06 rain 0.4in", on=long), "2026-05-06", "wash-off") == "loss"


def test_rain_of_the_same_day_asks_for_the_time() -> None:
    flag = raised(book(SPRAYED, "2026-05-04 rain 0.4in", on=shed(A_DAY)), "2026-05-04", "wash-off")
    assert flag is not None
    assert str(flag.level) == "note"
    assert "log the time" in flag.do


@pytest.mark.parametrize(("at", "found"), [("8:00", ""), ("14:00", "loss"), ("15:30", "")])
def test_hours_count_where_both_carry_a_time(at: str, found: str) -> None:
    sprayed = "2026-05-04 treat leaf-off 1floz front 9:00"
    assert (
        level(book(sprayed, f"2026-05-04 water 20min front {at}", on=shed(SIX_HOURS)), "2026-05-04", "wash-off")
        == found
    )


def test_a_drizzle_washes_nothing_and_the_owner_may_say_how_much_does() -> None:
    drizzle = book(SPRAYED, "2026-05-05 rain 0.02in", on=shed(A_DAY))
    assert level(drizzle, "2026-05-05", "wash-off") == ""
    assert level(book("2026-01-02 set wash-off water 0.3mm", on=drizzle), "2026-05-05", "wash-off") == "loss"


def test_wash_off_stands_two_weeks() -> None:
    washed = book(SPRAYED, "2026-05-05 rain 0.4in", on=shed(A_DAY))
    assert level(washed, "2026-05-18", "wash-off") == "loss"
    assert level(washed, "2026-05-19", "wash-off") == ""


def test_spots_are_included_and_soil_products_are_not() -> None:
    spot = book("2026-05-04 treat leaf-off spot rtu front", "2026-05-05 rain 0.4in", on=shed(A_DAY))
    assert level(spot, "2026-05-05", "wash-off") == "loss"
    barrier = book(BARRIER, "2026-04-21 rain 0.6in", on=shed())
    assert level(barrier, "2026-04-21", "wash-off") == ""


def test_a_starter_with_an_active_at_seeding_is_never_washed_off() -> None:
    sown = book(
        "2026-09-06 seed three-river 4lb front", "2026-09-06 feed seed-start 4lb front", "2026-09-07 water 10min front",
        on=shed(),
    )  # fmt: skip
    assert level(sown, "2026-09-07", "wash-off") == ""


def test_rain_spread_over_a_week_may_have_fallen_on_any_day() -> None:
    spread = book(SPRAYED, "2026-05-09 rain 1.2in since 2026-05-03", on=shed(A_DAY))
    assert level(spread, "2026-05-09", "wash-off") == "note"


def test_the_timer_that_goes_on_running_is_told() -> None:
    timed = book("2026-05-01 schedule front 20min mon tue", SPRAYED, on=shed(A_DAY))
    flag = raised(timed, "2026-05-05", "wash-off")
    assert flag is not None
    assert "timer" in flag.headline


def test_a_draft_of_water_is_warned_of_before_it_is_saved() -> None:
    found = judged(book(SPRAYED, on=shed(A_DAY)), "2026-05-05", "water 20min front")
    assert [str(flag.level) for flag in found.raised if flag.rule == "wash-off"] == ["loss"]


def test_on_a_seedbed_its_dryness_is_not_told_until_the_hours_are_over() -> None:
    lines = [f"2026-09-{at:02} water 10min front" for at in range(6, 16)]
    sown = book("2026-09-06 seed quick-rye 6lb front", *lines, *(f"2026-09-{at:02} rain 0in" for at in range(6, 25)),
                "2026-09-16 treat white-tip 0.1floz front", on=shed())  # fmt: skip
    assert level(sown, "2026-09-17", "seedbed-dry") == ""
    assert level(sown, "2026-09-18", "seedbed-dry") == ""
    assert level(sown, "2026-09-19", "seedbed-dry") != ""


def test_a_barrier_without_water_is_a_note_from_the_third_day_and_late_after_two_weeks() -> None:
    dry = book(BARRIER, *(f"2026-0{month}-{at:02} rain 0in" for month, at in _days()), on=shed())
    assert level(dry, "2026-04-22", "water-in-missing") == ""
    assert level(dry, "2026-04-23", "water-in-missing") == "note"
    assert level(dry, "2026-05-04", "water-in-missing") == "note"
    assert level(dry, "2026-05-05", "water-in-missing") == "late"


def _days() -> list[tuple[int, int]]:
    return [(4, at) for at in range(20, 31)] + [(5, at) for at in range(1, 32)] + [(6, at) for at in range(1, 31)]


def test_all_water_since_counts_together_and_clears_it() -> None:
    little = book(BARRIER, "2026-04-22 rain 0.2in", "2026-04-26 water 0.2in front", on=shed())
    assert level(little, "2026-04-27", "water-in-missing") == "note"
    enough = book("2026-04-28 rain 0.1in", on=little)
    assert level(enough, "2026-04-27", "water-in-missing") == "note"
    assert level(enough, "2026-04-28", "water-in-missing") == ""


def test_water_of_the_day_itself_counts_for_the_owner_unless_it_came_first() -> None:
    same = book(BARRIER, "2026-04-20 water 0.5in front", on=shed())
    assert level(same, "2026-04-23", "water-in-missing") == ""
    before = book("2026-04-20 water 0.5in front 7:00", "2026-04-20 treat spring-wall 3lb front 9:00", on=shed())
    assert level(before, "2026-04-23", "water-in-missing") == "note"


def test_an_insect_product_is_late_after_two_days() -> None:
    dry = book(GRUBS, "2026-07-07 rain 0in", on=shed())
    assert level(dry, "2026-07-08", "water-in-missing") == ""
    assert level(dry, "2026-07-09", "water-in-missing") == "late"


def test_the_labels_depth_and_deadline_come_first() -> None:
    label = {"spring-wall": 'water_in = "0.25 in"\nwater_in_within = "7 d"'}
    dry = book(BARRIER, "2026-04-21 rain 0in", "2026-04-29 rain 0in", on=shed(label))
    assert level(dry, "2026-04-27", "water-in-missing") == "note"
    assert level(dry, "2026-04-28", "water-in-missing") == "late"
    watered = book("2026-04-29 water 0.25in front", on=dry)
    assert level(watered, "2026-04-29", "water-in-missing") == ""
    none = book(BARRIER, "2026-04-21 rain 0in", on=shed({"spring-wall": 'water_in = "0 in"'}))
    assert level(none, "2026-04-29", "water-in-missing") == ""


def test_granules_walked_on_before_they_were_watered_in_are_harm() -> None:
    dry = book(BARRIER, "2026-04-21 rain 0in", "2026-04-24 see traffic front", on=shed())
    assert level(dry, "2026-04-23", "water-in-missing") == "note"
    assert level(dry, "2026-04-24", "water-in-missing") == "harm"
    watered = book("2026-04-25 water 0.5in front", on=dry)
    assert level(watered, "2026-04-25", "water-in-missing") == ""


def test_what_went_down_on_the_leaf_starts_its_clock_when_the_hours_are_over() -> None:
    both = ('actives = ["2,4-d", "dicamba"]\nform = "granule"', 'actives = ["2,4-d", "prodiamine"]\nform = "granule"')
    on = shed(None, both)
    dry = book("2026-04-20 treat green-gate 3lb front", "2026-04-21 rain 0in", on=on)
    assert level(dry, "2026-04-24", "water-in-missing") == ""
    assert level(dry, "2026-04-25", "water-in-missing") == "note"


def test_without_a_water_diary_nothing_is_said() -> None:
    assert level(book(BARRIER, on=shed()), "2026-05-20", "water-in-missing") == ""


def test_a_timer_waters_in_whether_or_not_its_depth_is_known() -> None:
    for on in (shed(), shed(None, ('rate = "0.6 in/h"', 'slope = "none"'))):
        timed = book("2026-04-01 schedule front 30min", BARRIER, on=on)
        assert level(timed, "2026-05-10", "water-in-missing") == ""


def test_a_watering_of_unknown_depth_asks_how_deep() -> None:
    hosed = book(BARRIER, "2026-04-21 water front", on=shed(None, ('rate = "0.6 in/h"', 'slope = "none"')))
    flag = raised(hosed, "2026-04-24", "water-in-missing")
    assert flag is not None
    assert str(flag.level) == "note"
    assert "how deep" in flag.do
    deep = book(BARRIER, "2026-04-21 water deep front", on=shed())
    assert level(deep, "2026-04-24", "water-in-missing") == ""


def test_it_never_stands_longer_than_sixty_days() -> None:
    dry = book(BARRIER, *(f"2026-0{month}-{at:02} rain 0in" for month, at in _days()), on=shed())
    assert level(dry, "2026-06-18", "water-in-missing") == "late"
    assert level(dry, "2026-06-19", "water-in-missing") == ""


def test_who_wants_water_and_how_much() -> None:
    lines = [
        BARRIER,
        GRUBS,
        SPRAYED,
        "2026-05-10 treat unknown by service front",
        "2026-06-01 treat spot-out 1floz front",
    ]
    past = book(*lines, on=shed()).on("front", day("2026-12-01"))
    found = {use.name: water_in(use, past.lawn) for use in uses(past, day("2026-01-01").toordinal())}
    assert {name for name, one in found.items() if one is not None} == {"spring-wall", "grub-off"}


def test_water_too_soon_for_a_leaf_and_too_little_for_the_soil_are_both_told() -> None:
    both = ('actives = ["2,4-d", "dicamba"]\nform = "granule"', 'actives = ["2,4-d", "prodiamine"]\nform = "granule"')
    rained = book("2026-04-20 treat green-gate 3lb front", "2026-04-21 rain 0.3in", on=shed(None, both))
    assert [flag.subject for flag in alone(rained, "2026-04-26", "wash-off")] == ["green-gate"]
    assert flags(rained, "2026-04-26", "water-in-missing") == {"green-gate": "note"}
