"""When to feed, how much, and what holds it back."""

import pytest

from journal.plan.step import State
from tests.plan.garden import PRODUCTS, ZONES, kept
from tests.scenario import day, find, the, typed

FED = "2026-05-22 feed pond-ridge 3lb/k front"
DRY = {"front": {"area": "2400sqft"}}


def shed(**facts: str) -> dict[str, dict[str, str]]:
    """The shed with another pond-ridge in it."""
    return PRODUCTS | {"pond-ridge": {"kind": "fertilizer", **facts}}


@pytest.mark.parametrize(
    ("slow", "opens", "last"),
    [
        ("10% of n", "2026-07-03", "2026-07-17"),
        ("40% of n", "2026-07-03", "2026-07-31"),
        ("60% of n", "2026-07-17", "2026-08-14"),
        ("80% of n", "2026-08-14", "2026-09-11"),
    ],
)
def test_the_slow_share_of_the_last_feeding_sets_the_days(slow: str, opens: str, last: str) -> None:
    book = kept(FED, products=shed(analysis="24-0-11", slow=slow))
    step = the(book, opens, "feed")
    assert (step.state, step.earliest, step.latest) == (State.OPEN, day(opens), day(last))
    assert the(book, "2026-06-20", "feed").state is State.WAITING


def test_a_day_after_the_last_it_is_late() -> None:
    book = kept(FED)
    assert the(book, "2026-07-31", "feed").state is State.OPEN
    assert the(book, "2026-08-01", "feed").state is State.LATE


def test_the_first_feeding_is_six_weeks_into_growth_or_into_the_book() -> None:
    assert the(kept(), "2026-05-01", "feed").earliest == day("2026-05-22")
    assert the(kept(set_up="2026-07-15"), "2026-07-15", "feed").earliest == day("2026-08-26")


def test_it_says_how_much_of_what_and_how_many_bags() -> None:
    step = the(kept(), "2026-05-22", "feed")
    assert step.zones == ("front", "back")
    assert step.amount == "15 lb pond-ridge (2.8 lb/k, 0.68 lb N/k), 0.3 bag; water it in, or feed before rain"
    assert step.line == "feed pond-ridge 15lb front back"


def test_the_year_s_nitrogen_is_shared_among_the_feedings_that_are_left() -> None:
    # 2.7 lb in four feedings, then what two feedings of 0.96 left, in two; never above 0.9
    assert "0.68 lb N/k" in the(kept(), "2026-05-22", "feed").amount
    book = kept("2026-05-22 feed pond-ridge 4lb/k front", "2026-07-03 feed pond-ridge 4lb/k front")
    assert "0.48 lb N/k" in the(book, "2026-08-14", "feed").amount
    alone = kept("2026-05-22 feed pond-ridge 2lb/k front")
    assert "0.9 lb N/k" in the(alone, "2026-09-20", "feed").amount


def test_quick_nitrogen_is_held_to_seven_tenths() -> None:
    book = kept(FED, products=shed(analysis="30-0-0"))
    assert "0.7 lb N/k" in the(book, "2026-09-20", "feed").amount


def test_the_label_s_range_holds() -> None:
    low = shed(analysis="10-0-0", slow="80% of n", rate="3lb/k 4lb/k")
    assert "(4 lb/k, 0.4 lb N/k)" in the(kept(products=low), "2026-06-01", "feed").amount


def test_what_is_fed_moves_it_on() -> None:
    book = kept(FED)
    step = the(book, "2026-07-10", "feed")
    after = typed(book, f"2026-07-10 {step.line}")
    assert the(after, "2026-07-10", "feed").earliest == day("2026-08-21")


def test_when_the_year_is_used_up_it_is_done() -> None:
    book = kept("2026-05-01 feed pond-ridge 5.4lb/k front", "2026-07-01 feed pond-ridge 5.4lb/k front")
    step = the(book, "2026-09-20", "feed")
    assert (step.state, step.line) == (State.DONE, "")
    assert step.why == "done for the year: 2.6 lb N/k of 2.7 lb N/k"


def test_new_grass_waits_to_day_70() -> None:
    book = kept("2026-04-20 seed three-river-blend 9lb front")
    step = the(book, "2026-06-28", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-06-29"))
    assert step.waits_for == "new grass to day 70, Mon 29 Jun"
    assert the(book, "2026-06-29", "feed").state is State.OPEN


def test_new_grass_of_september_waits_for_next_year() -> None:
    step = the(kept("2026-09-06 seed three-river-blend 9lb front"), "2026-10-10", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2027-05-22"))
    assert step.waits_for == "new grass to day 70, Sun 15 Nov; growth is over by then"


def test_a_dormant_lawn_is_not_fed() -> None:
    step = the(kept(FED, "2026-07-01 see dormant front"), "2026-08-05", "feed")
    assert (step.state, step.earliest, step.latest) == (State.WAITING, None, None)
    assert step.waits_for == "dormant since Wed 1 Jul: after `see green`"


def test_a_lawn_without_irrigation_rests_in_high_summer() -> None:
    step = the(kept(FED, zones=DRY), "2026-07-10", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-08-15"))
    assert the(kept(FED, zones=DRY), "2026-08-15", "feed").state is State.OPEN
    assert the(kept(FED), "2026-07-10", "feed").state is State.OPEN


def test_a_hot_week_holds_it_back() -> None:
    week = [f"2026-07-0{at} weather 88F 64F" for at in range(4, 10)]
    assert the(kept(FED, *week), "2026-07-10", "feed").state is State.WAITING
    assert the(kept(FED, *week[:4]), "2026-07-10", "feed").state is State.OPEN
    assert the(kept(FED, *[line.replace("88F", "84F") for line in week]), "2026-07-10", "feed").state is State.OPEN


def test_before_a_sowing_the_starter_is_the_next_feeding() -> None:
    book = kept(FED, "2026-07-22 intend seed three-river-blend 2026-09-05 front")
    step = the(book, "2026-08-20", "feed")
    assert step.state is State.WAITING
    assert step.waits_for.startswith("sowing meant for Sat 5 Sep: starter then")
    assert the(book, "2026-07-24", "feed").state is State.OPEN


def test_none_in_the_last_three_weeks_of_growth_unless_the_owner_feeds_late() -> None:
    book = kept("2026-09-01 feed pond-ridge 3lb/k front")
    assert the(book, "2026-10-20", "feed").state is State.OPEN
    step = the(book, "2026-10-21", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2027-05-22"))
    late = kept("2026-09-01 feed pond-ridge 3lb/k front", lawn={"late_fall": "yes"})
    assert the(late, "2026-10-25", "feed").state is State.OPEN
    assert find(book, "2026-12-01", "feed") is None


def test_an_unknown_amount_counts_for_the_interval() -> None:
    assert the(kept("2026-05-22 feed pond-ridge front"), "2026-06-20", "feed").earliest == day("2026-07-03")


def test_an_empty_shed_says_how_much_nitrogen_is_wanted() -> None:
    step = the(kept(products={}), "2026-05-22", "feed")
    assert (step.state, step.line) == (State.OPEN, "")
    assert step.amount == "0.68 lb N/k: no fertilizer in the shed"


def test_a_starter_or_weed_and_feed_is_not_the_usual_fertilizer() -> None:
    both = PRODUCTS | {"both": {"kind": "weed-and-feed", "analysis": "25-0-5"}}
    book = kept("2026-05-22 feed both 3lb/k front", products=both)
    assert the(book, "2026-07-10", "feed").line.startswith("feed pond-ridge ")


def test_a_book_kept_by_months_feeds_in_the_windows() -> None:
    months = {"feeding": "months"}
    spring = the(kept(lawn=months), "2026-05-10", "feed")
    assert (spring.state, spring.earliest, spring.latest) == (State.OPEN, day("2026-05-01"), day("2026-06-10"))
    assert the(kept(lawn=months), "2026-06-10", "feed").state is State.OPEN
    summer = the(kept(lawn=months), "2026-07-10", "feed")
    assert (summer.state, summer.earliest) == (State.WAITING, day("2026-08-20"))
    assert the(kept(lawn=months), "2026-09-23", "feed").state is State.OPEN
    assert the(kept(lawn=months), "2026-09-24", "feed").state is State.LATE


def test_by_months_a_fed_window_gives_way_to_the_next_after_the_gap() -> None:
    book = kept("2026-09-10 feed pond-ridge 3.75lb/k front", lawn={"feeding": "months"})
    step = the(book, "2026-09-20", "feed")
    assert (step.state, step.earliest, step.latest) == (State.WAITING, day("2026-10-22"), day("2026-11-10"))


def test_fine_fescue_by_months_is_fed_once() -> None:
    fescue = {"feeding": "months", "grass": "fine fescue"}
    step = the(kept(lawn=fescue), "2026-05-10", "feed")
    assert (step.earliest, step.latest) == (day("2026-08-20"), day("2026-10-15"))
    fed = kept("2026-09-01 feed pond-ridge 3lb/k front", lawn=fescue)
    assert find(fed, "2026-09-20", "feed") is None


def test_a_window_that_passed_unfed_is_late_for_three_weeks_and_then_missed() -> None:
    fescue = kept(lawn={"feeding": "months", "grass": "fine fescue"})
    assert the(fescue, "2026-10-15", "feed").state is State.LATE
    assert the(fescue, "2026-11-05", "feed").state is State.LATE
    assert the(fescue, "2026-11-06", "feed").state is State.MISSED
    assert find(fescue, "2026-11-11", "feed") is None
    begun = kept(lawn={"feeding": "months", "grass": "fine fescue"}, set_up="2026-09-01")
    assert find(begun, "2026-10-20", "feed") is None


def test_frozen_ground_is_not_fed() -> None:
    step = the(kept("2026-06-01 see frozen front"), "2026-06-02", "feed")
    assert (step.state, step.waits_for) == (State.WAITING, "frozen since Mon 1 Jun: after `see thawed`")


def test_a_local_rule_that_closes_the_day_holds_everything_back() -> None:
    book = kept(FED, "2026-09-20 seed three-river-blend 12lb back", lawn={"local_closed": "06-01 09-30"})
    step = the(book, "2026-07-10", "feed")
    assert (step.state, step.earliest) == (State.WAITING, day("2026-10-01"))
    assert step.waits_for == "closed by the local rule to Wed 30 Sep"
    assert the(book, "2026-09-22", "starter", "back").waits_for == "closed by the local rule"
    assert the(book, "2026-10-02", "starter", "back").state is State.LATE


def test_a_slow_feeding_before_growth_began_still_keeps_its_gap() -> None:
    book = kept("2026-04-02 feed pond-ridge 3.75lb/k front", products=shed(analysis="24-0-11", slow="80% of n"))
    assert the(book, "2026-05-30", "feed").earliest == day("2026-06-25")


def test_the_owner_s_own_number_goes_first() -> None:
    book = kept("2026-05-01 set feed-overdue step-days-15 35d", FED, zones={"front": ZONES["front"]})
    assert the(book, "2026-06-20", "feed").earliest == day("2026-06-26")
