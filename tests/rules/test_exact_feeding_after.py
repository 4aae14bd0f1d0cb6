"""After a feeding: watered in or washed out, new grass not fed, and an owner who does as he is told.

A quarter of an inch of water after a feeding: Purdue Univ., AY-22, 1998; a light feeding about a month after sowing:
Kansas State Univ., lawn calendar.
"""

import pytest

from journal.rules.cards import cards
from journal.standing import findings
from tests.scenario import book, day, find, judged, later, lawn, level, raised, rules_raised, the, typed, weather

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 9lb front"
STARTER = f"{SOWN} feed oat-hill 4lb/k front"


# watered in, and washed out

FILED = "2026-06-05 rain 0in"
FED = "2026-06-10 feed pond-ridge 5lb front"


def test_no_water_within_two_days_is_a_note_until_it_is_watered_or_two_weeks_are_over() -> None:
    diary = book(FILED, FED)
    assert level(diary, "2026-06-12", "feed-water-in") == ""
    assert level(diary, "2026-06-13", "feed-water-in") == "note"
    assert level(typed(diary, "2026-06-15 water 0.25in front"), "2026-06-15", "feed-water-in") == ""
    kept_up = typed(diary, "2026-06-18 rain 0in")
    assert level(kept_up, "2026-06-23", "feed-water-in") == "note"
    assert level(kept_up, "2026-06-24", "feed-water-in") == ""


@pytest.mark.parametrize(
    "water",
    ["2026-06-10 water 0.25in front", "2026-06-12 rain 0.3in", "2026-06-11 water front", "2026-06-11 water deep front"],
)
def test_water_counts_in_the_owners_favour(water: str) -> None:
    assert level(book(FILED, FED, water), "2026-06-14", "feed-water-in") == ""


def test_where_no_water_is_ever_logged_nothing_is_said() -> None:
    assert level(book(FED), "2026-06-14", "feed-water-in") == ""


def test_a_timer_waters_it_in_whether_or_not_its_depth_is_known() -> None:
    timer = "2026-06-01 schedule front 30min mon thu 6:00"
    for on in (lawn(), lawn(('rate = "0.6 in/h"', 'slope = "none"'))):
        assert level(book(timer, FED, on=on), "2026-06-14", "feed-water-in") == ""


def test_weed_and_feed_is_watered_in_once_its_rain_free_hours_are_over() -> None:
    diary = book(FILED, "2026-06-10 feed green-gate 5lb front")
    assert level(diary, "2026-06-12", "feed-water-in") == ""
    assert level(diary, "2026-06-13", "feed-water-in") == "note"
    early = typed(diary, "2026-06-10 water 0.3in front")
    assert level(early, "2026-06-13", "feed-water-in") == "note"
    assert level(typed(diary, "2026-06-12 water 0.3in front"), "2026-06-13", "feed-water-in") == ""


@pytest.mark.parametrize(
    ("rain", "expected"),
    [
        ("2026-06-10 rain 0.5in", "note"), ("2026-06-11 rain 0.5in", "note"), ("2026-06-11 rain 0.45in", ""),
        ("2026-06-12 rain 1in", ""), ("2026-06-09 rain 1in", ""),
    ],
)  # fmt: skip
def test_half_an_inch_within_a_day_may_wash_it_out(rain: str, expected: str) -> None:
    assert level(book(*sorted((FED, rain))), "2026-06-12", "feed-wash") == expected


def test_rain_before_the_feeding_washed_nothing_out() -> None:
    diary = book("2026-06-10 rain 0.6in 7:00", "2026-06-10 feed pond-ridge 5lb front 9:00")
    assert level(diary, "2026-06-10", "feed-wash") == ""
    unsure = raised(book("2026-06-10 rain 0.6in", FED), "2026-06-10", "feed-wash")
    assert unsure is not None
    assert "log the time" in unsure.do


BARRIER_IN_IT = (
    'actives = ["2,4-d", "dicamba"]', 'actives = ["prodiamine"]\nform = "granule"\n[product.label]\nwater_in = "0.5 in"'
)  # fmt: skip


@pytest.mark.parametrize(("depth", "expected"), [("0.5in", ""), ("0.6in", "note")])
def test_water_that_its_label_asks_for_washes_nothing_out(depth: str, expected: str) -> None:
    diary = book("2026-04-20 feed green-gate 6lb front", f"2026-04-21 water {depth} front", on=lawn(BARRIER_IN_IT))
    assert level(diary, "2026-04-21", "feed-wash") == expected


# new grass


def test_seedlings_not_fed_are_late_from_day_46_to_day_70() -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{sown} feed oat-hill 4lb/k front")
    assert level(diary, later(sown, 45), "seedling-feed") == ""
    assert level(diary, later(sown, 46), "seedling-feed") == "late"
    assert level(diary, later(sown, 70), "seedling-feed") == "late"
    assert level(diary, later(sown, 71), "seedling-feed") == ""


@pytest.mark.parametrize(("days", "counts"), [(20, False), (21, True), (45, True)])
def test_a_feeding_from_day_21_on_is_that_feeding(days: int, counts: bool) -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{later(sown, days)} feed pond-ridge 2.4lb front")
    assert level(diary, later(sown, 46), "seedling-feed") == ("" if counts else "late")


def test_never_in_the_last_week_of_growth_nor_in_closed_dates() -> None:
    late = book("2026-09-10 seed quick-rye 9lb front", "2026-09-10 feed oat-hill 4lb/k front")
    assert level(late, "2026-11-03", "seedling-feed") == "late"
    assert level(late, "2026-11-04", "seedling-feed") == ""
    assert level(late, "2026-11-29", "seedling-feed") == ""
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["10-20", "03-31"]'))
    shut = book(SEED.replace("three-river", "quick-rye"), STARTER, on=bound)
    assert level(shut, "2026-10-22", "seedling-feed") == ""


def test_not_within_four_weeks_of_a_late_starter() -> None:
    sown = "2026-08-12"
    diary = book(f"{sown} seed quick-rye 9lb front", f"{later(sown, 20)} feed oat-hill 4lb/k front")
    assert level(diary, later(sown, 47), "seedling-feed") == ""
    assert level(diary, later(sown, 48), "seedling-feed") == "late"


def test_not_before_the_seedlings_are_up() -> None:
    sown = "2026-08-12"
    lines = (f"{sown} seed quick-rye 9lb front", f"{sown} feed oat-hill 4lb/k front")
    up = book(*lines, f"{later(sown, 50)} see emerged front")
    assert level(up, later(sown, 50), "seedling-feed") == "late"


@pytest.mark.parametrize("sown", ["2026-08-05", "2026-08-20", "2026-09-06", "2026-09-20"])
def test_a_new_stand_hears_of_one_feeding_at_a_time(sown: str) -> None:
    """The starter to day 21, the light feeding to day 70, then the usual ones."""
    wants = {"starter-missing", "seedling-feed", "feed-overdue"}
    diary = book("2026-04-20 feed pond-ridge 7lb front", f"{sown} seed three-river 9lb front")
    for at in range(100):
        said = rules_raised(diary, later(sown, at)) & wants
        assert len(said) <= 1, (at, said)
        allowed = (
            {"starter-missing"} if at <= 21 else {"seedling-feed"} if at < 70 else {"seedling-feed", "feed-overdue"}
        )
        assert said <= allowed, (at, said)


# one card for one entry


def test_a_feeding_that_is_wrong_in_every_way_is_one_card_and_the_day_heads_it() -> None:
    bound = lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["07-10", "07-31"]'))
    lines = ("2026-07-01 feed pond-ridge 7lb front", "2026-07-04 see dormant front", "2026-07-10 weather 92F 70F 0in",
             "2026-07-10 feed pond-ridge 11lb front")  # fmt: skip
    order = ["feed-closed", "feed-dormant", "feed-heat", "feed-too-soon", "feed-dose"]
    for on, wrong in ((bound, order), (lawn(), order[1:])):
        found = [flag for flag in findings(book(*lines, on=on), day("2026-07-10")) if "front" in flag.zones]
        card = next(one for one in cards(found) if one.head.rule in order)
        assert [flag.rule for flag in card.flags] == wrong


def test_a_year_that_is_fed_is_done_and_not_late() -> None:
    fed = book(*(f"{on} feed pond-ridge 9lb front" for on in ("2026-04-12", "2026-05-20", "2026-07-01")))
    step = the(fed, "2026-09-20", "feed")
    assert (step.state.value, level(fed, "2026-09-20", "feed-overdue")) == ("done", "")
    assert "done for the year" in step.why


# obeying one flag never raises another


def test_what_an_overdue_feeding_asks_for_is_not_blamed_for_its_size() -> None:
    diary = book("2026-04-20 feed pond-ridge 7lb front")
    flag = raised(diary, "2026-06-16", "feed-overdue")
    assert flag is not None
    assert flag.do == "feed, at most 0.9 lb/k of nitrogen, 0.7 lb/k of it soluble"
    assert level(typed(diary, "2026-06-16 feed pond-ridge 7lb front"), "2026-06-16", "feed-dose") == ""


BLAMES = {
    "feed-closed",
    "feed-dormant",
    "feed-heat",
    "feed-too-soon",
    "feed-dose",
    "feed-year",
    "starter-wrong",
    "phosphate-reason",
}


@pytest.mark.parametrize(
    "lines",
    [
        ("2026-04-20 feed pond-ridge 9lb front",),
        ("2026-04-20 feed slow-oak 9lb front", "2026-06-20 feed slow-oak 9lb front"),
        (SEED,), (SEED, STARTER), (f"{later(SOWN, -20)} feed pond-ridge 9lb front", SEED),
        (SEED, f"{later(SOWN, 15)} feed oat-hill 4lb/k front"),
        ("2026-06-28 see dormant front", "2026-08-20 see green front"),
    ],
)  # fmt: skip
def test_whoever_feeds_on_the_day_it_is_called_late_is_not_blamed(lines: tuple[str, ...]) -> None:
    diary = book(*lines, *weather("2026-06-01", 90, "82F 62F 0in"), *weather("2026-07-10", 12, "91F 70F 0in"))
    for at in range(250):
        day = later("2026-04-10", at)
        if not rules_raised(diary, day) & {"feed-overdue", "starter-missing", "seedling-feed"}:
            continue
        steps = [step for name in ("feed", "starter", "seedling-feed") if (step := find(diary, day, name)) is not None]
        ready = [step for step in steps if step.line and step.state.value in ("open", "late")]
        assert ready, day
        for step in ready:
            said = {flag.rule for flag in judged(diary, day, step.line).raised}
            assert said & BLAMES == set(), (day, step.line, said)
