"""How days and hours count, when a flag goes out, and what is taken for a feeding, a sowing or a mixture.

Day 0 is the day of the thing itself; a wait of N days is over on day N.
"""

from datetime import date

import pytest

from journal.facts.house import number
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.treatment import Treatment
from journal.spells import End, spells
from tests.rules.lawns import NAME, SOWN
from tests.rules.treated import alone, shed
from tests.scenario import book, later, lawn, level, raised, rules_raised, typed

# days


@pytest.mark.parametrize(
    ("rule", "line", "stands"),
    [
        ("mow-too-low", "mow 1in front", 14), ("mow-height", "mow 1in front", 14),
        ("feed-dose", "feed pond-ridge 11lb front", 30), ("feed-buffer", "feed pond-ridge 5lb front", 7),
        ("phosphate-reason", "feed oat-hill 5lb front", 30), ("amount-missing", "feed pond-ridge front", 60),
        ("bloom", "treat grub-off 3lb front", 7), ("buffer", "treat leaf-off 1floz front", 7),
        ("label-unknown", "treat leaf-off 1floz front", 60), ("feed-closed", "feed pond-ridge 5lb front", 30),
    ],
)  # fmt: skip
def test_what_stands_n_days_stands_on_days_0_to_n_less_1(rule: str, line: str, stands: int) -> None:
    near = ('name = "front"', 'name = "front"\nnear_water = "10 ft"')
    closed = (NAME, f'{NAME}\nlocal_closed = ["06-10", "06-10"]')
    diary = book(f"2026-06-10 {line}", on=shed(None, near, closed))
    assert rule in rules_raised(diary, "2026-06-10")
    assert rule in rules_raised(diary, later("2026-06-10", stands - 1))
    assert rule not in rules_raised(diary, later("2026-06-10", stands))


@pytest.mark.parametrize(("on", "closed"), [("10-14", False), ("10-15", True), ("03-31", True), ("04-01", False)])
def test_the_first_and_the_last_closed_day_are_both_closed(on: str, closed: bool) -> None:
    bound = lawn((NAME, f'{NAME}\nlocal_closed = ["10-15", "03-31"]'))
    when = f"{'2026' if on > '06' else '2027'}-{on}"
    assert (level(book(f"{when} feed pond-ridge 5lb front", on=bound), when, "feed-closed") == "harm") is closed


def test_more_than_ten_days_begins_on_day_11_and_29_february_is_a_day() -> None:
    leap = book("2028-04-20 mow 3in front", on=lawn(set_up="2027-01-01"))
    assert level(leap, "2028-04-30", "mow-gap") == ""
    assert level(leap, "2028-05-01", "mow-gap") == "late"
    fed = book("2028-02-01 feed pond-ridge 5lb front", on=lawn(set_up="2027-01-01"))
    assert level(fed, "2028-03-01", "feed-dormant") == "loss"
    assert level(fed, "2028-03-02", "feed-dormant") == ""


# hours


def test_hours_count_only_where_both_say_when() -> None:
    for mown, found in (("2026-06-11 mow 3in front 9:00", ""), ("2026-06-11 mow 3in front 7:00", "note"),
                        ("2026-06-11 mow 3in front", "note"), ("2026-06-12 mow 3in front", "")):  # fmt: skip
        diary = book("2026-06-10 rain 0.6in 8:00", mown)
        assert level(diary, mown[:10], "mow-wet") == found, mown


def test_48_hours_without_times_reach_to_the_second_date() -> None:
    diary = book("2026-06-01 rain 0in", "2026-06-10 feed pond-ridge 5lb front")
    assert level(diary, "2026-06-12", "feed-water-in") == ""
    assert level(diary, "2026-06-13", "feed-water-in") == "note"
    assert level(typed(diary, "2026-06-12 water 0.3in front"), "2026-06-13", "feed-water-in") == ""


def test_an_unknown_order_asks_for_the_time_and_punishes_no_further_than_a_note() -> None:
    label = {"leaf-off": 'rain_free = "24 h"\nmow_before = "1 d"\nmow_after = "1 d"'}
    lines = {
        "wash-off": ("2026-06-10 treat leaf-off 1floz front", "2026-06-10 rain 0.5in"),
        "feed-wash": ("2026-06-10 feed pond-ridge 5lb front", "2026-06-10 rain 0.6in"),
        "mow-wet": ("2026-06-10 mow 3in front", "2026-06-10 rain 0.6in"),
        "reentry": ("2026-06-10 treat leaf-off 1floz front", "2026-06-10 see traffic front"),
    }
    for rule, pair in lines.items():
        flag = raised(book(*pair, on=shed(label)), "2026-06-10", rule)
        assert flag is not None, rule
        assert flag.level == "note", rule
        assert "time" in flag.do or "time" in flag.why, (rule, flag)


def test_the_running_day_of_a_seedbed_is_not_judged() -> None:
    diary = book(f"{SOWN} seed three-river 9lb front", f"{SOWN} water 0.1in front", f"{SOWN} water 0.1in front",
                 "2026-09-06 rain 0in", "2026-09-07 rain 0in", "2026-09-08 rain 0in")  # fmt: skip
    assert level(diary, "2026-09-07", "seedbed-dry") == ""
    assert level(diary, "2026-09-08", "seedbed-dry") == "late"


# when it goes out

EVENTS = {
    "once": (
        "2026-04-15 treat spring-wall 3lb front",
        "2026-04-20 treat leaf-off 1floz front wind 20mph",
        "2026-04-21 rain 0.6in",
        "2026-04-22 mow 1in bag front",
        "2026-04-25 feed oat-hill 9lb front",
        "2026-05-01 seed stone-wall 30lb front",
        "2026-05-02 feed pond-ridge 8lb front",
        "2026-05-03 see traffic front",
        "2026-05-05 treat grub-off 3lb front",
        "2026-05-05 see flowering front",
        "2026-05-06 treat bare-ground 1floz front",
        "2026-05-07 treat unknown by service front",
    ),
    "late": (
        "2026-10-20 seed three-river 20lb front",
        "2026-10-21 feed pond-ridge 12lb front",
        "2026-10-25 mow 1in front",
    ),
    "seen": (
        "2026-06-01 see grubs front",
        "2026-06-01 see crabgrass front",
        "2026-06-01 see dandelion front",
        "2026-06-01 see sick front",
        "2026-06-01 see exposure front",
        "2026-06-01 see frozen front",
        "2026-06-02 rain 0in",
    ),
}
AS_LONG_AS_IT_HOLDS = {"mow-gap", "mow-first-late", "feed-overdue", "feed-year", "water-unlogged"}


@pytest.mark.parametrize("name", EVENTS)
def test_what_was_done_once_is_not_told_for_more_than_sixty_days(name: str) -> None:
    diary = book(*EVENTS[name], on=shed())
    told = [one for one in spells(diary, date(2027, 4, 9)) if one.rule not in AS_LONG_AS_IT_HOLDS]
    assert len({one.rule for one in told}) >= 3
    for one in told:
        assert one.cleared is not None, one
        assert (one.cleared - one.rose).days <= 60, one


@pytest.mark.parametrize(
    ("rule", "kind", "line", "better"),
    [
        ("mow-too-low", Mowing, "mow 1in front", "mow 3in front"),
        ("feed-dose", Feeding, "feed pond-ridge 5lb front", "feed pond-ridge 2lb front"),
        ("treat-windy", Treatment, "treat leaf-off 1floz front wind 20mph", "treat leaf-off 1floz front wind 5mph"),
    ],
)
def test_a_strike_or_an_amended_line_clears_at_once(rule: str, kind: type[Entry], line: str, better: str) -> None:
    bad = book(f"2026-06-10 {line}", on=shed())
    assert level(bad, "2026-06-10", rule) != ""
    struck = bad.minus(bad.track("front", kind).entries[-1])
    assert level(struck, "2026-06-10", rule) == ""
    assert level(typed(struck, f"2026-06-10 {better}"), "2026-06-10", rule) == ""


def test_what_is_late_lapses_when_growth_ends() -> None:
    (overdue,) = [one for one in spells(lawn(), date(2026, 12, 31)) if one.rule == "mow-gap" and one.cleared]
    assert (overdue.cleared, overdue.ended) == (date(2026, 11, 11), End.LAPSED)


# nothing is late before the book was begun


def test_a_sowing_from_before_the_book_is_not_asked_for_its_starter() -> None:
    young = lawn(set_up="2026-09-20")
    diary = book("2026-09-20 seed three-river 9lb front on 9/6", on=young)
    for at in range(30):
        assert rules_raised(diary, later("2026-09-20", at)) & {"starter-missing", "seedbed-dry"} == set()
    assert level(diary, "2026-09-20", "seedling-feed") == ""


def test_a_feeding_before_the_book_brings_no_cut_and_a_date_of_ones_own_does() -> None:
    young = lawn(set_up="2026-07-15")
    fed = book("2026-07-15 feed pond-ridge 7lb front on 4/20", on=young)
    assert level(fed, "2026-07-15", "mow-gap") == ""
    own = lawn((NAME, f'{NAME}\nkept_since = "2026-04-01"'), set_up="2026-07-15")
    assert level(own, "2026-07-15", "mow-gap") == "late"


def test_without_any_water_on_file_one_note_stands_for_all() -> None:
    dryness = {"water-week", "water-deficit", "seedbed-dry", "feed-water-in", "water-in-missing", "water-unlogged"}
    fed = book("2026-06-01 feed pond-ridge 5lb front", "2026-06-01 treat spring-wall 3lb front", on=shed())
    for at in range(60):
        assert rules_raised(fed, later("2026-06-03", at)) & dryness <= {"water-unlogged"}
    assert level(fed, "2026-06-16", "water-unlogged") == "note"


# numbers


def test_no_number_of_ones_own_loosens_what_a_label_says() -> None:
    """A label of 28 days: 20 are too few whatever the owner sets."""
    repeat = shed({"leaf-off": 'repeat = "28 d"'})
    assert not number("label-interval", "days-weed").allows(14)
    for days, own, found in ((20, 28, "harm"), (27, 40, "harm"), (40, 40, "")):
        again = later("2026-05-01", days)
        diary = book(f"2026-04-01 set label-interval days-weed {own}", "2026-05-01 treat leaf-off 1floz front",
                     f"{again} treat leaf-off 1floz front", on=repeat)  # fmt: skip
        assert level(diary, again, "label-interval") == found, (days, own)


def test_a_blank_label_is_one_level_lower_in_some_rules_and_says_so() -> None:
    diary = book("2026-06-10 treat leaf-off 1floz front", "2026-06-11 rain 0.5in", "2026-06-11 mow 3in front",
                 "2026-06-20 treat leaf-off 1floz front", on=shed())  # fmt: skip
    for rule, found, on in (("wash-off", "note", "2026-06-11"), ("mow-near-treatment", "note", "2026-06-11"),
                            ("label-interval", "loss", "2026-06-20")):  # fmt: skip
        before_it_is_absorbed = alone(diary, on, rule)
        assert [str(flag.level) for flag in before_it_is_absorbed] == [found], rule
        assert "label not entered" in before_it_is_absorbed[0].why, rule


def test_and_keeps_its_level_in_others() -> None:
    near = book("2026-08-20 treat leaf-off 1floz front", f"{SOWN} seed three-river 4lb front", on=shed())
    assert level(near, SOWN, "seed-over-residue") == "loss"
    wind = book("2026-06-10 treat leaf-off 1floz front wind 20mph", on=shed())
    assert level(wind, "2026-06-10", "treat-windy") == "harm"
    walked = book("2026-06-10 treat leaf-off 1floz front 8:00", "2026-06-10 see traffic front 9:00", on=shed())
    assert level(walked, "2026-06-10", "reentry") == "harm"
    bees = book("2026-07-01 see flowering front", "2026-07-06 treat grub-off 3lb front", on=shed())
    assert level(bees, "2026-07-06", "bloom") == "harm"
    cut = book(f"{SOWN} seed three-river 4lb front", "2026-10-10 treat leaf-off 1floz front", on=shed())
    assert level(cut, "2026-10-10", "new-grass-treatment") == "loss"


@pytest.mark.parametrize(("pounds", "found"), [(9.18, ""), (9.2, "note"), (10.2, "note"), (10.25, "loss")])
def test_two_in_a_hundred_are_rounding_for_a_dose(pounds: float, found: str) -> None:
    tenths = lawn(('analysis = "24-0-11"\nslow = "60% of n"', 'analysis = "24-0-11"\nslow = "40% of n"'))
    assert level(book(f"2026-05-10 feed slow-oak {pounds}lb front", on=tenths), "2026-05-10", "feed-dose") == found
