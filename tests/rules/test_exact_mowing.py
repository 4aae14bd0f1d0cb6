"""Cuts of old grass and new, on the days on either side of each limit.

Heights by grass: Purdue Univ., AY-8, 1998; a third at once: Cornell Gardening, The 'One-Third Rule'. The days between
two cuts are common practice.
"""

import pytest

from journal.record.kinds.mowing import Mowing
from journal.season.history import History
from tests.scenario import book, find, judged, later, lawn, level, raised, rules_raised, typed, weather

KBG_PRG = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'
METRIC = ('name = "North Lane"', 'name = "North Lane"\nunits = "metric"')
SOUTH = (("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]'))
UNDATED = (('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\n', ""), ('first_frost = "10-05"\n', ""))
SOWN = "2026-08-25"
RYE = f"{SOWN} seed quick-rye 9lb front"
BLUE = f"{SOWN} seed three-river 9lb front"
FIRSTS = {"mow-gap", "mow-first-early", "mow-first-late"}


def grass(*names: str) -> History:
    words = ", ".join(f'"{name}"' for name in names)
    return lawn((KBG_PRG, f"grass = [{words}]"))


# between two cuts


@pytest.mark.parametrize(
    ("mown", "last"),
    [
        ("2026-06-19", "2026-06-29"), ("2026-06-21", "2026-07-05"), ("2026-08-20", "2026-08-31"),
        ("2026-08-17", "2026-08-31"), ("2026-09-19", "2026-09-29"), ("2026-09-22", "2026-10-06"),
    ],
)  # fmt: skip
def test_the_month_of_the_day_itself_decides(mown: str, last: str) -> None:
    diary = book(f"{mown} mow 3in front")
    assert level(diary, last, "mow-gap") == ""
    assert level(diary, later(last, 1), "mow-gap") == "late"


def test_the_last_three_weeks_of_growth_begin_on_20_october() -> None:
    diary = book("2026-10-04 mow 3in front")
    assert level(diary, "2026-10-19", "mow-gap") == "late"
    assert level(diary, "2026-10-21", "mow-gap") == ""
    assert level(diary, "2026-10-25", "mow-gap") == ""
    assert level(diary, "2026-10-26", "mow-gap") == "late"


def test_in_the_south_january_is_slow_and_the_end_of_growth_in_may() -> None:
    diary = book("2027-01-02 mow 3in front", on=lawn(*SOUTH))
    assert level(diary, "2027-01-16", "mow-gap") == ""
    assert level(diary, "2027-01-17", "mow-gap") == "late"
    last = book("2027-04-18 mow 3in front", on=lawn(*SOUTH))
    assert level(last, "2027-05-09", "mow-gap") == ""
    assert level(last, "2027-05-10", "mow-gap") == "late"
    assert level(last, "2027-05-11", "mow-gap") == ""


def test_without_dates_of_growth_no_cut_is_late() -> None:
    diary = book("2026-06-01 mow 3in front", on=lawn(*UNDATED))
    assert rules_raised(diary, "2026-07-20") & FIRSTS == set()


def test_one_line_over_two_zones_cuts_both_and_a_strike_brings_it_back() -> None:
    diary = book("2026-06-01 mow 3in front back", "2026-06-10 mow 3in front back")
    assert level(diary, "2026-06-14", "mow-gap") == level(diary, "2026-06-14", "mow-gap", "back") == ""
    struck = diary.minus(diary.track("front", Mowing).entries[-1])
    assert level(struck, "2026-06-14", "mow-gap") == level(struck, "2026-06-14", "mow-gap", "back") == "late"


def test_a_cut_that_was_written_down_late_counts_from_its_own_day() -> None:
    diary = book("2026-06-01 mow 3in front", "2026-06-14 mow 3in front on 6/10")
    assert level(diary, "2026-06-20", "mow-gap") == ""
    assert level(diary, "2026-06-21", "mow-gap") == "late"


# height


@pytest.mark.parametrize(
    ("names", "height", "expected"),
    [
        (("tall fescue",), "4in", ""), (("tall fescue",), "4.25in", "note"), (("fine fescue",), "4in", ""),
        (("perennial ryegrass",), "3.6in", "note"), (("kentucky bluegrass",), "3.5in", ""),
        (("unknown",), "2.5in", ""), (("unknown",), "2.25in", "note"),
    ],
)  # fmt: skip
def test_up_to_the_highest_of_the_grass(names: tuple[str, ...], height: str, expected: str) -> None:
    assert level(book(f"2026-05-10 mow {height} front", on=grass(*names)), "2026-05-10", "mow-height") == expected


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("2026-05-31 mow 2.5in front", ""), ("2026-06-01 mow 2.5in front", "note"), ("2026-06-01 mow 3in front", ""),
        ("2026-08-31 mow 2.5in front", "note"), ("2026-09-01 mow 2.5in front", ""), ("2026-08-31 mow 4in front", ""),
        ("2026-10-20 mow 2in front", "note"), ("2026-10-21 mow 2in front", ""), ("2026-11-10 mow 2in front", ""),
    ],
)  # fmt: skip
def test_summer_is_cut_higher_and_the_last_three_weeks_lower(line: str, expected: str) -> None:
    assert level(book(line), line[:10], "mow-height") == expected


@pytest.mark.parametrize("rule", ["mow-height", "mow-too-low", "mow-one-third"])
@pytest.mark.parametrize(
    ("after", "quiet"),
    [
        ("2026-09-10 seed three-river 9lb front", True), ("2026-09-11 seed three-river 9lb front", False),
        ("2026-09-10 dethatch front", True), ("2026-09-11 dethatch front", False),
        ("2026-09-04 intend seed three-river 2026-09-10 front", True),
        ("2026-09-04 intend seed three-river 2026-09-11 front", False),
        ("2026-09-10 seed three-river 9lb back", False),
    ],
)  # fmt: skip
def test_a_scalp_up_to_six_days_before_sowing_or_dethatching_is_right(rule: str, after: str, quiet: bool) -> None:
    diary = book("2026-09-04 height 4in front", "2026-09-04 mow 1.25in front", after)
    assert (level(diary, "2026-09-11", rule) == "") is quiet


@pytest.mark.parametrize("rule", ["mow-height", "mow-too-low"])
def test_the_last_cut_of_november_is_told_for_two_weeks_only(rule: str) -> None:
    diary = book("2026-11-08 mow 1.5in front")
    assert level(diary, "2026-11-21", rule) != ""
    assert level(diary, "2026-11-22", rule) == ""


def test_a_metric_book_reads_in_millimetres() -> None:
    diary = book("2026-05-10 height 130mm front", "2026-05-10 mow 40mm front", on=lawn(METRIC))
    for rule in ("mow-height", "mow-too-low", "mow-one-third"):
        flag = raised(diary, "2026-05-10", rule)
        assert flag is not None
        assert "mm" in flag.headline + flag.why
        for words in (flag.headline, flag.why, flag.do, flag.clears):
            assert " in " not in words.replace(" in the", "").replace("in range", "").replace(" in that range", ""), (
                words
            )


# new grass


@pytest.mark.parametrize(
    ("measured", "mown", "expected"),
    [
        ("2026-09-08", "2026-09-09", ""), ("2026-09-08", "2026-09-08", ""), ("2026-09-07", "2026-09-09", "loss"),
        ("2026-09-10", "2026-09-09", "loss"),
    ],
)  # fmt: skip
def test_three_and_a_half_inches_from_day_14_on_let_it_be_cut(measured: str, mown: str, expected: str) -> None:
    diary = book(*sorted((RYE, f"{measured} height 3.5in front", f"{mown} mow 2.5in front")))
    assert level(diary, "2026-09-12", "mow-first-early") == expected


def test_too_early_is_told_through_day_27() -> None:
    diary = book(RYE, f"{later(SOWN, 10)} mow 3in front")
    assert level(diary, later(SOWN, 27), "mow-first-early") == "loss"
    assert level(diary, later(SOWN, 28), "mow-first-early") == ""


@pytest.mark.parametrize(("height", "expected"), [("4.5in", "loss"), ("4.6in", "note")])
def test_old_turf_above_the_seed_is_cut_high_with_a_note(height: str, expected: str) -> None:
    diary = book(BLUE, f"{later(SOWN, 9)} height {height} front", f"{later(SOWN, 10)} mow 3.5in front")
    assert level(diary, later(SOWN, 10), "mow-first-early") == expected


def test_a_spot_may_be_mown_around() -> None:
    diary = book("2026-05-01 seed quick-rye 0.5lb spot 20sqft front", "2026-05-06 mow 3in front")
    assert rules_raised(diary, "2026-05-06") & {"mow-first-early", "mow-clippings"} == set()


@pytest.mark.parametrize(("seed", "last"), [(RYE, 42), (BLUE, 56)])
def test_six_weeks_for_rye_and_eight_for_bluegrass_are_too_late(seed: str, last: int) -> None:
    diary = book(seed)
    assert level(diary, later(SOWN, last), "mow-first-late") == ""
    assert level(diary, later(SOWN, last + 1), "mow-first-late") == "late"


@pytest.mark.parametrize("cuts", [(), (5,), (22,), (30,), (22, 29), (30, 45)])
def test_never_two_of_too_early_too_late_and_overdue(cuts: tuple[int, ...]) -> None:
    for seed in (RYE, BLUE):
        diary = book("2026-08-20 mow 2in front", seed, *(f"{later(SOWN, at)} mow 3in front" for at in cuts))
        for at in range(78):
            assert len(rules_raised(diary, later(SOWN, at)) & FIRSTS) <= 1, (cuts, at)


def test_whoever_cuts_on_the_day_of_the_step_is_not_blamed() -> None:
    for seed in (RYE, BLUE):
        for tall in ("", "3.6in", "5in", "7in"):
            diary = book("2026-08-20 sharpen", seed)
            if tall:
                diary = typed(diary, f"{later(SOWN, 28)} height {tall} front")
            for at in (28, 35, 42):
                step = find(diary, later(SOWN, at), "first-mow")
                assert step is not None
                said = {(f.rule, f.level.value) for f in judged(diary, later(SOWN, at), step.line).raised}
                assert not {one for one in said if one[0].startswith("mow")}, (tall, at, step.line, said)


@pytest.mark.parametrize(("days", "expected"), [(27, "note"), (28, "")])
def test_clippings_of_new_grass_are_bagged_for_four_weeks(days: int, expected: str) -> None:
    first = later(SOWN, 30)
    diary = book(BLUE, f"{first} mow 3in bag front", f"{later(first, days)} mow 3in return front")
    assert level(diary, later(first, days), "mow-clippings") == expected


def test_after_a_weed_product_its_clippings_lead_and_habit_is_silent() -> None:
    diary = book(
        BLUE, f"{later(SOWN, 28)} mow 3in bag front", f"{later(SOWN, 33)} treat leaf-off 2floz front",
        f"{later(SOWN, 36)} mow 3in bag front",
    )  # fmt: skip
    found = rules_raised(diary, later(SOWN, 36))
    assert "clippings-treated" in found
    assert "mow-clippings" not in found
    left = typed(diary, f"{later(SOWN, 40)} mow 3in return front")
    assert "mow-clippings" not in rules_raised(left, later(SOWN, 40))


# resting


def test_a_resting_lawn_is_not_asked_for_a_cut_though_a_cut_does_not_end_the_rest() -> None:
    diary = book(
        "2026-06-20 mow 3in front", "2026-06-28 see dormant front", "2026-07-20 mow 3in front",
        *weather("2026-06-01", 70, "85F 65F 0in"),
    )  # fmt: skip
    for at in range(40):
        assert (
            rules_raised(diary, later("2026-06-28", at)) & {"mow-gap", "water-deficit", "water-week", "feed-overdue"}
            == set()
        )


def test_the_first_cut_of_a_year_is_never_a_third_too_much_by_estimate() -> None:
    diary = book("2025-11-05 mow 2.5in front", "2026-04-20 mow 2.5in front", on=lawn(set_up="2025-05-01"))
    assert level(diary, "2026-04-20", "mow-one-third") == ""


@pytest.mark.parametrize(("height", "expected"), [("4.54in", ""), ("4.56in", "loss")])
def test_a_hair_more_than_a_third_is_let_pass(height: str, expected: str) -> None:
    diary = book(f"2026-05-10 height {height} front", "2026-05-10 mow 3in front")
    assert level(diary, "2026-05-10", "mow-one-third") == expected


def test_the_plan_never_offers_a_cut_that_is_blamed() -> None:
    diary = book("2026-04-12 sharpen", *weather("2026-04-01", 9, "60F 40F 0in"))
    for at in range(214):
        day = later("2026-04-10", at)
        step = find(diary, day, "mow")
        if step is None or step.state.value not in ("open", "late") or not step.line:
            continue
        said = {flag.rule for flag in judged(diary, day, step.line).raised}
        assert not {rule for rule in said if rule in FIRSTS | {"mow-height", "mow-too-low", "mow-one-third", "mow-wet"}}
        diary = typed(diary, f"{day} {step.line}")
    assert len(diary.track("front", Mowing).entries) > 25
