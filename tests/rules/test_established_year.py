"""A whole year of an old lawn by an owner who does it right: nothing is said that he would have to excuse."""

import pytest

from journal.season.history import History
from tests.rules.treated import shed
from tests.scenario import book, day, find, judged, later, lawn, level, raised, rules_raised, the, typed, weather

LOAM = ('rate = "0.6 in/h"', 'rate = "0.6 in/h"\nsoil = "clay"\nslope = "gentle"')
KBG_PRG = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'
FESCUE = (KBG_PRG, 'grass = ["tall fescue"]')
NOTICES = {"keep-off", "label-unknown", "photo-gap", "barrier-before-seed"}
"""Told of anybody: until when to keep off, what the label left blank, from when on it may be sown."""
DRY = ("irrigated = true", "irrigated = false")


def stood(history: History, first: str, days: int) -> set[str]:
    """The rules of all flags in front on any of so many days."""
    return {rule for at in range(days) for rule in rules_raised(history, later(first, at))}


def test_weeks_of_cuts_cycle_and_soak_a_split_barrier_grubs_in_july_and_weeds_in_october() -> None:
    cuts = [f"{later('2026-04-22', 7 * at)} mow 3in return front back" for at in range(29)]
    soaks = [
        f"{later('2026-05-04', 3 * at)} water 0.15in front back {hour}:00" for at in range(46) for hour in (5, 6, 7)
    ]
    air = [
        *weather("2026-03-01", 45, "50F 34F 0in"), *weather("2026-04-15", 46, "64F 44F 0.02in"),
        *weather("2026-05-31", 31, "78F 58F 0.02in"), *weather("2026-07-01", 40, "88F 66F 0.02in"),
        *weather("2026-08-10", 72, "72F 52F 0.02in"), *weather("2026-10-21", 30, "52F 36F 0.02in"),
    ]  # fmt: skip
    done = [
        "2026-04-15 sharpen", "2026-06-24 sharpen", "2026-08-25 sharpen",
        "2026-04-16 treat spring-wall 2lb front back", "2026-04-17 water 0.5in front back",
        "2026-06-16 treat spring-wall 2lb front back", "2026-06-17 water 0.5in front back",
        "2026-07-07 treat grub-off 3lb front back 19:00", "2026-07-07 water 0.5in front back 20:00",
        "2026-05-25 feed slow-oak 1.5lb/k front back", "2026-05-26 water 0.3in front back",
        "2026-08-22 feed pond-ridge 2.8lb/k front back",
        "2026-10-08 feed pond-ridge 2.8lb/k front back", "2026-10-09 water 0.3in front back",
        "2026-07-06 see no-flowers front back", "2026-06-28 count grubs 12/sqft front back",
        "2026-04-20 treat leaf-off spot rtu front 10:00 wind 5mph temp 62F",
    ]  # fmt: skip
    labels = {
        "spring-wall": 'repeat = "60 d"\nmax_per_year = 2\nto_seed = "210 d"\nafter_seed = "4 mowings"\n'
        'water_in = "0.5 in"\n'
        'reentry = "dry"',
        "grub-off": 'repeat = "90 d"\nmax_per_year = 1\nto_seed = "0 d"\nafter_seed = "4 mowings"\nwater_in = "0.5 in"',
    }
    diary = book(*sorted([*air, *cuts, *soaks, *done], key=lambda line: line[:10]), on=shed(labels))
    for on in (later("2026-03-20", at) for at in range(270)):
        assert rules_raised(diary, on) - NOTICES == set(), on


def test_the_split_half_of_a_barrier_is_not_past_and_a_cold_morning_is_not_too_cold_for_it() -> None:
    cold = weather("2026-04-01", 20, "44F 30F 0in")
    diary = book(*cold, "2026-04-15 treat spring-wall 2lb front", "2026-06-20 treat spring-wall 2lb front", on=shed())
    for on in ("2026-04-15", "2026-06-20"):
        assert rules_raised(diary, on) & {"treat-cold", "barrier-past"} == set()


def test_a_grub_granule_in_the_heat_of_july_is_not_too_hot() -> None:
    hot = weather("2026-07-01", 14, "94F 72F 0in")
    assert level(book(*hot, "2026-07-07 treat grub-off 3lb front", on=shed()), "2026-07-07", "treat-hot") == ""


@pytest.mark.parametrize("day_of_month", [1, 5, 10, 15, 20, 25, 30])
def test_no_feeding_is_asked_for_in_a_hot_july(day_of_month: int) -> None:
    hot = weather("2026-06-28", 34, "88F 68F 0in")
    on = f"2026-07-{day_of_month:02}"
    diary = book("2026-05-01 feed pond-ridge 9lb front", *hot)
    if day_of_month >= 10:
        assert level(diary, on, "feed-overdue") == ""
        step = find(diary, on, "feed")
        assert step is None or step.state.value == "waiting"


@pytest.mark.parametrize("slow", [0, 20, 60, 85])
def test_whoever_feeds_on_the_day_the_step_opens_does_not_feed_too_soon(slow: int) -> None:
    own = lawn(('slow = "60% of n"', f'slow = "{slow}% of n"'))
    diary = book("2026-04-25 feed slow-oak 9lb front", on=own)
    for at in range(1, 120):
        on = later("2026-04-25", at)
        step = find(diary, on, "feed")
        if step is not None and step.state.value in ("open", "late") and step.line:
            assert at >= max(42, {0: 28, 20: 42, 60: 56, 85: 84}[slow])
            assert {f.rule for f in judged(diary, on, step.line).raised} & {
                "feed-too-soon",
                "feed-dose",
                "feed-year",
            } == set()
            return
    raise AssertionError("it never opened")


def test_the_plan_feeds_a_year_within_its_cap_and_then_says_so() -> None:
    diary, at = lawn(), 0
    for at in range(230):
        on = later("2026-04-01", at)
        step = find(diary, on, "feed")
        if step is not None and step.state.value in ("open", "late") and step.line:
            diary = typed(diary, f"{on} {step.line}")
            assert rules_raised(diary, on) & {"feed-year", "feed-dose", "feed-too-soon", "feed-dormant"} == set(), on
    assert level(diary, "2026-12-31", "feed-year") == ""


@pytest.mark.parametrize(("height", "changes"), [("3.75in", (FESCUE,)), ("4in", (FESCUE,)), ("4in", ())])
def test_tall_fescue_and_a_summer_cut_are_right_at_four_inches(
    height: str, changes: tuple[tuple[str, str], ...]
) -> None:
    assert level(book(f"2026-07-05 mow {height} front", on=lawn(*changes)), "2026-07-05", "mow-height") == ""


# winter


def test_a_winter_after_a_poor_autumn_goes_quiet_before_christmas_and_stays_so() -> None:
    diary = book(
        "2026-06-10 see crabgrass front", "2026-08-20 see grubs front", "2026-09-01 treat grub-end 2lb front",
        "2026-09-20 see dandelion front", "2026-09-25 seed stone-wall 40lb front", "2026-11-07 mow 1.5in front",
        on=shed(),
    )  # fmt: skip
    named = {"barrier-missed", "broadleaf-missed", "mow-height", "mow-too-low", "grub-blind", "seed-mix", "mow-gap",
             "feed-overdue", "seedling-feed", "mow-blade", "not-emerged", "water-unlogged"}  # fmt: skip
    for at in range(105):
        assert rules_raised(diary, later("2026-12-24", at)) & named == set(), later("2026-12-24", at)


def test_an_empty_winter_book_says_nothing_at_all() -> None:
    assert stood(lawn(set_up="2026-11-15"), "2026-11-15", 145) <= {"growth-unknown"}


# begun in mid-July


@pytest.mark.parametrize("changes", [(), (DRY,), (LOAM,), (FESCUE,)])
def test_a_book_begun_in_july_says_nothing_in_its_first_week(changes: tuple[tuple[str, str], ...]) -> None:
    young = lawn(*changes, set_up="2026-07-15")
    assert stood(young, "2026-07-15", 7) == set()


def test_what_went_down_in_spring_is_said_afterwards_and_counts() -> None:
    young = lawn(set_up="2026-07-15")
    told = book("2026-07-15 treat spring-wall 3lb front on 4/15", "2026-07-15 treat leaf-off 1floz front on 5/10",
                "2026-07-15 treat leaf-off 1floz front on 6/20", on=young)  # fmt: skip
    assert rules_raised(told, "2026-07-15") & {"mow-gap", "feed-overdue", "water-week", "barrier-missed"} == set()
    sown = judged(told, "2026-09-05", "seed three-river 4lb front")
    assert "seed-over-residue" in {flag.rule for flag in sown.raised}
    third = typed(told, "2026-07-20 treat leaf-off 1floz front")
    assert level(third, "2026-07-20", "label-year-count") == "loss"


def test_a_date_that_is_only_about_right_counts_from_its_latest_day() -> None:
    young = lawn(set_up="2026-07-15")
    about = book("2026-07-15 treat unknown by service front on ~4/15", on=young)
    assert "seed-over-residue" in {
        flag.rule for flag in judged(about, "2026-09-05", "seed three-river 4lb front").raised
    }


def test_an_unanswered_question_after_spring_products_is_told_with_the_first_sowing() -> None:
    raised_by = judged(lawn(set_up="2026-07-15"), "2026-09-05", "seed three-river 4lb front").raised
    assert "unknown-treatment" in {flag.rule for flag in raised_by}


def test_rest_is_not_nagged_and_green_again_begins_a_fresh_count() -> None:
    diary = book("2026-06-20 mow 3in front", "2026-06-28 see dormant front", "2026-08-30 see green front")
    assert stood(diary, "2026-06-28", 28) & {"mow-gap", "feed-overdue", "water-week", "water-deficit"} == set()
    assert stood(diary, "2026-08-30", 8) & {"mow-gap", "feed-overdue"} == set()


def test_the_step_says_what_holds_it() -> None:
    diary = book("2026-05-01 feed pond-ridge 9lb front", *weather("2026-06-28", 20, "90F 70F 0in"))
    step = the(diary, "2026-07-10", "feed")
    assert step.state.value == "waiting"
    assert step.waits_for or step.why
    assert raised(diary, day("2026-07-10"), "feed-overdue") is None
