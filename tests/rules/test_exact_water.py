"""Water to the day and to the tenth of an inch: timers, hoses, gauges, circuits, droughts, leaves that stay dry."""

from datetime import date

import pytest

from journal.record.kinds.watering import Watering
from journal.rules.declare import RULES
from journal.rules.judge import flags_of
from journal.season.history import History
from journal.standing import findings
from tests.scenario import LAWN, book, day, later, lawn, level, raised, rules_raised, the, typed, weather

DRY_LOAM = ('irrigated = true\nrate = "0.6 in/h"', 'irrigated = false\nsoil = "loam"')
METRIC = (
    LAWN.replace("[lawn]\n", '[lawn]\nunits = "metric"\n')
    .replace('"2400 sqft"', '"220 m2"')
    .replace('"3100 sqft"', '"290 m2"')
    .replace("0.6 in/h", "15 mm/h")
)
CIRCUITS = (
    'rate = "0.6 in/h"\n\n[[zone]]\nname = "back"',
    '\n[[zone.circuit]]\nname = "A"\nshare = 60\nrate = "0.6 in/h"\n[[zone.circuit]]\nname = "B"\nshare = 40\n'
    'rate = "1.5 in/h"\n\n[[zone]]\nname = "back"',
)
SHORT_OF_WATER = {"water-week", "water-deficit", "water-unlogged", "seedbed-dry", "feed-water-in", "water-in-missing"}
"""What says that water is wanting."""


def said(history: History, first: str, days: int, zone: str = "front") -> set[str]:
    return {rule for at in range(days) for rule in rules_raised(history, later(first, at), zone)}


# an inch a week


@pytest.mark.parametrize(("depth", "found"), [("0.97in", "note"), ("0.99in", ""), ("1in", "")])
def test_an_inch_but_for_rounding(depth: str, found: str) -> None:
    assert level(book(f"2026-07-07 water {depth} front"), "2026-07-08", "water-week") == found


def test_the_week_is_the_seven_days_up_to_today() -> None:
    diary = book("2026-07-01 water 1in front", "2026-07-08 rain 0in")
    assert level(diary, "2026-07-08", "water-week") == ""
    assert level(diary, "2026-07-09", "water-week") == "note"


def test_metric_books_read_of_millimetres() -> None:
    flag = raised(book("2026-07-01 water 10mm front", on=lawn(toml=METRIC)), "2026-07-08", "water-week")
    assert flag is not None
    assert (flag.headline, flag.clears) == ("10 mm of water in 7 days", "25 mm in 7 days")


def test_the_zones_own_gauge_goes_before_the_lawns_and_both_before_the_weather_and_none_is_added() -> None:
    wet = typed(lawn(), "2026-07-06 rain 0.5in front")
    all_three = typed(typed(wet, "2026-07-06 rain 0.9in"), "2026-07-06 weather 80F 60F 1.4in")
    without_heat = typed(wet, "2026-07-06 rain 0.9in")
    flag = raised(without_heat, "2026-07-08", "water-week")
    assert flag is not None
    assert flag.headline == "0.5 in of water in 7 days"
    assert level(without_heat, "2026-07-08", "water-week", "back") == "note"
    assert level(all_three, "2026-07-08", "water-week") == ""  # with temperatures on file the account tells


def test_a_gauge_read_once_for_several_days_is_spread_over_them() -> None:
    week = book("2026-07-12 rain 1.2in since 7/1")  # a tenth a day: 0.8 of it in the days that are looked at
    flag = raised(week, "2026-07-12", "water-week")
    assert flag is not None
    assert flag.headline.startswith("0.8 in")


def test_half_a_zone_watered_is_half_the_depth_over_the_zone() -> None:
    assert level(book("2026-07-07 water 2in front 50%"), "2026-07-08", "water-week") == ""
    assert level(book("2026-07-07 water 1.8in front 50%"), "2026-07-08", "water-week") == "note"


def test_circuits_count_by_their_share() -> None:
    own = lawn(CIRCUITS)
    # 100 min at 0.6 in/h on 60 % and 24 min at 1.5 in/h on 40 %: 0.6 + 0.24 in
    assert level(book("2026-07-07 water A 100min B 24min", on=own), "2026-07-08", "water-week") == "note"
    assert level(book("2026-07-07 water A 100min B 40min", on=own), "2026-07-08", "water-week") == ""


# a timer


def _alone(history: History, on: date) -> bool:
    """Whether the rule on washed leaves speaks for itself, before anything yields to another."""
    return bool(flags_of(RULES["wash-off"], history.on("front", on, RULES["wash-off"].watches)))


def test_a_timer_is_taken_for_enough_until_it_is_turned_off_or_its_season_ends() -> None:
    runs = "2026-06-01 schedule front 20min mon wed fri 6:00 from 6/1 to 7/20"
    assert said(book(runs), "2026-06-02", 49) & SHORT_OF_WATER == set()
    off = book(runs, "2026-07-01 schedule front off")
    assert said(off, "2026-07-01", 6) & SHORT_OF_WATER == set()
    assert level(off, "2026-07-20", "water-unlogged") == "note"
    ended = book(runs)
    assert (level(ended, "2026-08-02", "water-unlogged"), level(ended, "2026-08-03", "water-unlogged")) == ("", "note")


def test_a_feeding_and_a_barrier_under_a_timer_are_watered_in_and_a_seedbed_is_damp() -> None:
    diary = book(
        "2026-05-15 schedule front 25min mon wed fri 6:00 from 5/15 to 9/30", "2026-06-02 feed pond-ridge 7lb front",
        "2026-06-09 treat spring-wall 4lb front", "2026-08-24 schedule front 5min 6:00",
        "2026-08-24 schedule front 5min 15:00", "2026-08-24 seed quick-rye 12lb front",
    )  # fmt: skip
    assert said(diary, "2026-06-03", 118) & SHORT_OF_WATER == set()
    assert "water-often" not in said(diary, "2026-05-15", 138)


def test_a_timer_is_told_of_beside_a_spray_that_has_to_stay_dry_and_the_plan_waits_for_a_dry_day() -> None:
    timer = "2026-05-15 schedule front 20min mon thu 6:00 from 5/15 to 9/30"
    seen = ("2026-06-20 see dandelion front", "2026-07-01 intend seed three-river 2026-09-05 front")
    rated = lawn(
        ('actives = ["2,4-d"]\nform = "liquid"', 'actives = ["2,4-d"]\nform = "liquid"\nrate = "1.1floz/k 1.5floz/k"')
    )
    diary = book(timer, *seen, on=rated)
    states = {}
    for at in range(7):  # Sunday 26 July to Saturday
        step = the(diary, later("2026-07-26", at), "knock-back")
        states[f"{later('2026-07-26', at):%a}"] = step.state.value
        sprayed = typed(diary, f"{later('2026-07-26', at)} treat leaf-off 2floz front")
        blamed = any(_alone(sprayed, later("2026-07-26", at + ahead)) for ahead in range(3))
        assert blamed == (step.state == "waiting"), step
    assert [name for name, state in states.items() if state == "open"] == ["Tue", "Fri", "Sat"]
    waits = the(diary, "2026-07-26", "knock-back")
    assert waits.waits_for == ("the timer runs, and leaf-off has to stay dry: from Tue 28 Jul, or with it off")
    assert "then dry for 24 h" in the(diary, "2026-07-28", "knock-back").amount


def test_a_timer_of_every_day_leaves_the_spray_to_the_owner_and_says_dry() -> None:
    rated = lawn(
        ('actives = ["2,4-d"]\nform = "liquid"', 'actives = ["2,4-d"]\nform = "liquid"\nrate = "1.1floz/k 1.5floz/k"')
    )
    diary = book(
        "2026-05-15 schedule front 20min 6:00 from 5/15 to 9/30", "2026-06-20 see dandelion front",
        "2026-07-01 intend seed three-river 2026-09-05 front", on=rated,
    )  # fmt: skip
    step = the(diary, "2026-07-27", "knock-back")
    assert (step.state.value, "then dry for 24 h" in step.amount) == ("open", True)


# too often


def test_the_fourth_date_counts_and_several_lines_of_one_morning_are_one() -> None:
    mornings = [f"{later('2026-07-01', 2 * at)} water 0.15in front {hour}:00" for at in range(3) for hour in (5, 6, 7)]
    assert level(book(*mornings), "2026-07-06", "water-often") == ""
    fourth = book(*mornings, "2026-07-06 water 0.1in front")
    assert (level(fourth, "2026-07-06", "water-often"), level(fourth, "2026-07-07", "water-often")) == ("", "note")
    assert level(fourth, "2026-07-08", "water-often") == "note"
    assert level(fourth, "2026-07-09", "water-often") == ""


def test_a_watering_struck_or_of_another_zone_is_none() -> None:
    four = book(*(f"2026-07-0{on} water 0.3in front" for on in (1, 2, 3, 4)))
    assert level(four, "2026-07-05", "water-often") == "note"
    last = four.on("front", day("2026-07-05"))[Watering].all[-1]
    assert level(four.minus(last), "2026-07-05", "water-often") == ""
    assert level(four, "2026-07-05", "water-often", "back") == ""


# drought


def test_a_drought_where_nobody_irrigates_is_one_note_until_it_rests_or_rains() -> None:
    hot = weather("2026-05-20", 80, "88F 66F 0in")
    dry = book("2026-05-20 rain 1.2in", *hot, on=lawn(DRY_LOAM))
    began = next(later("2026-05-21", at) for at in range(60) if level(dry, later("2026-05-21", at), "water-deficit"))
    assert all(level(dry, later(began, at), "water-deficit") == "note" for at in range(30))
    assert said(dry, str(began), 30) & {"water-week", "water-unlogged", "water-often"} == set()
    rests = typed(dry, f"{later(began, 3)} see dormant front")
    assert level(rests, later(began, 3), "water-deficit") == ""
    rain = typed(dry, f"{later(began, 3)} rain 2in")
    assert level(rain, later(began, 3), "water-deficit") == ""


def test_a_resting_lawn_hears_of_its_drink_and_of_nothing_else_and_a_drink_gives_it_four_weeks() -> None:
    rests = book(
        "2026-06-01 mow 3in front", "2026-06-10 mow 3in front", "2026-06-17 see dormant front",
        *weather("2026-05-20", 110, "88F 66F 0in"), on=lawn(DRY_LOAM),
    )  # fmt: skip
    assert said(rests, "2026-06-17", 28) == set()
    assert said(rests, "2026-07-15", 30) == {"dormant-thirst"}
    drink = typed(rests, "2026-07-14 water 0.5in front")
    late = [at for at in range(60) for f in _thirst(drink, later("2026-07-14", at)) if f == "late"]
    assert late[0] == 29


def _thirst(history: History, on: date) -> list[str]:
    return [f.level.value for f in findings(history, on) if f.rule == "dormant-thirst" and "front" in f.zones]


def test_what_was_sown_this_year_is_not_let_rest_for_two_weeks() -> None:
    young = book(
        "2026-04-20 seed three-river 9lb front", *(f"{on} mow 3in front" for on in ("2026-05-20", "2026-05-27")),
        "2026-06-03 mow 3in front", "2026-06-20 see dormant front", *weather("2026-06-01", 60, "88F 66F 0in"),
        on=lawn(DRY_LOAM),
    )  # fmt: skip
    assert _thirst(young, later("2026-06-20", 13)) == []
    assert _thirst(young, later("2026-06-20", 14)) == ["loss"]


# in or off


def test_what_a_barrier_wants_is_told_by_its_label_or_as_a_figure_of_ours() -> None:
    base = ("2026-04-15 treat spring-wall 4lb front", "2026-04-14 water 0.2in back", "2026-04-16 rain 0in")
    blank = raised(book(*sorted(base)), "2026-04-18", "water-in-missing")
    assert blank is not None
    assert blank.level == "note"
    assert blank.do == "water 0.5 in in all, or what its label says, and log it"
    own = lawn(('form = "granule"', 'form = "granule"\n[product.label]\nwater_in = "0.3 in"'))
    told = raised(book(*sorted(base), on=own), "2026-04-18", "water-in-missing")
    assert told is not None
    assert told.do == "water 0.3 in in all, as its label says, and log it"
    assert level(book(*sorted(base), "2026-04-17 water 0.3in front", on=own), "2026-04-18", "water-in-missing") == ""


@pytest.mark.parametrize(("days", "found"), [(2, ""), (3, "note"), (14, "note"), (15, "late")])
def test_a_barrier_is_a_note_from_the_third_day_and_late_after_two_weeks(days: int, found: str) -> None:
    put = book("2026-04-15 treat spring-wall 4lb front", *(f"{later('2026-04-15', at)} rain 0in" for at in range(16)))
    assert level(put, later("2026-04-15", days), "water-in-missing") == found


def test_water_that_one_product_wants_and_another_fears_waits_for_the_dry_hours() -> None:
    own = lawn(('form = "liquid"', 'form = "liquid"\n[product.label]\nrain_free = "24 h"'))
    tank = "2026-07-01 treat leaf-off 2floz + spring-wall 4lb front"
    assert level(book(tank, "2026-07-02 rain 0.6in", on=own), "2026-07-02", "wash-off") == "loss"
    dry = book(tank, "2026-07-02 rain 0in", "2026-07-03 rain 0.6in", on=own)
    assert rules_raised(dry, "2026-07-05") & {"wash-off", "water-in-missing"} == set()
