"""Broadleaf weeds in autumn. Purdue Univ. Turfgrass Science, 2013: mid-September to late October is best."""

from tests.plan.weeds import SHED, grown
from tests.scenario import day, find, the

SEEN = "2026-06-01 see dandelion front"


def test_the_window_opens_in_mid_september_and_ends_with_growth() -> None:
    book = grown(SEEN)
    assert the(book, "2026-09-14", "broadleaf").state == "waiting"
    step = the(book, "2026-09-15", "broadleaf")
    assert (step.state, step.earliest, step.latest) == ("open", day("2026-09-15"), day("2026-11-10"))
    assert step.best == (day("2026-09-15"), day("2026-10-31"))
    assert step.line == "treat leaf-off 1.1floz/k front"
    assert the(book, "2026-11-10", "broadleaf").state == "open"
    assert the(book, "2026-11-11", "broadleaf").state == "missed"
    assert find(book, "2026-12-11", "broadleaf") is None


def test_only_where_a_weed_was_seen_this_season() -> None:
    assert find(grown(), "2026-09-20", "broadleaf") is None
    assert find(grown("2025-09-30 see dandelion front"), "2026-09-20", "broadleaf") is None
    assert find(grown(SEEN), "2026-09-20", "broadleaf", "back") is None


def test_done_where_it_was_treated() -> None:
    put = grown(SEEN, "2026-09-20 treat leaf-off 2.6floz front")
    assert the(put, "2026-09-21", "broadleaf").state == "done"
    assert find(put, "2026-10-18", "broadleaf") is None


def test_it_waits_until_new_grass_may_have_it() -> None:
    sown = "2026-09-06 seed three-river-blend 9lb front"
    step = the(grown(SEEN, sown, "2026-10-05 mow 3in front"), "2026-10-07", "broadleaf")
    assert (step.state, step.earliest) == ("waiting", day("2026-10-19"))
    assert step.waits_for == "new grass: leaf-off from about Mon 19 Oct, after 3 mowings from day 21"
    cuts = ("2026-10-05 mow 3in front", "2026-10-12 mow 3in front", "2026-10-19 mow 3in front")
    assert the(grown(SEEN, sown, *cuts), "2026-10-22", "broadleaf").state == "open"
    late = the(grown(SEEN, "2026-09-28 seed three-river-blend 9lb front"), "2026-11-05", "broadleaf")
    assert (late.state, late.line, late.waits_for[-10:]) == ("barred", "", ": in spring"[-10:])
    assert find(grown(SEEN, "2026-09-28 seed three-river-blend 9lb front"), "2026-11-12", "broadleaf") is None


def test_it_waits_after_a_mowing_and_while_the_grass_rests() -> None:
    mown = the(grown(SEEN, "2026-09-19 mow 3in front"), "2026-09-20", "broadleaf")
    assert (mown.state, mown.earliest) == ("waiting", day("2026-09-21"))
    assert the(grown(SEEN, "2026-09-19 mow 3in front"), "2026-09-21", "broadleaf").state == "open"
    rest = the(grown(SEEN, "2026-08-19 see dormant front"), "2026-09-20", "broadleaf")
    assert (rest.state, rest.earliest) == ("waiting", None)


def test_it_waits_between_two_uses_and_when_the_year_has_had_its_own() -> None:
    again = grown("2026-09-01 treat leaf-off 2.6floz front", "2026-09-10 see clover front")
    step = the(again, "2026-09-20", "broadleaf")
    assert (step.state, step.earliest) == ("waiting", day("2026-09-29"))
    twice = grown("2026-04-20 treat leaf-off 2.6floz front", "2026-06-20 treat leaf-off 2.6floz front",
                  "2026-07-10 see clover front")  # fmt: skip
    assert the(twice, "2026-09-20", "broadleaf").state == "barred"


def test_the_seed_that_is_meant_goes_first() -> None:
    step = the(grown(SEEN, "2026-08-01 intend seed three-river-blend 2026-09-25 front"), "2026-09-16", "broadleaf")
    assert (step.state, step.waits_for) == ("waiting", "the seed meant for Fri 25 Sep goes first")


def test_no_product_that_hurts_the_grass_or_the_trees() -> None:
    shed = SHED | {"leaf-off": SHED["leaf-off"] | {"actives": "2,4-d, dicamba"}}
    trees = {"front": {"area": "2400sqft", "trees": "yes"}, "back": {"area": "3100sqft"}}
    assert the(grown(SEEN, products=shed, zones=trees), "2026-09-20", "broadleaf").line == ""
    assert the(grown(SEEN, products=shed), "2026-09-20", "broadleaf").line != ""
    bent = {"renovated": "2020-09-01", "grass": "creeping bentgrass"}
    assert the(grown(SEEN, lawn=bent), "2026-09-20", "broadleaf").line == ""


def test_near_water_the_line_says_that_the_edge_was_kept() -> None:
    near = {"front": {"area": "2400sqft", "near_water": "20ft"}, "back": {"area": "3100sqft"}}
    assert the(grown(SEEN, zones=near), "2026-09-20", "broadleaf").line == "treat leaf-off 1.1floz/k front edge kept"


def test_without_a_rate_there_is_no_line() -> None:
    shed = SHED | {"leaf-off": {"kind": "weed", "actives": "2,4-d", "form": "liquid"}}
    step = the(grown(SEEN, products=shed), "2026-09-20", "broadleaf")
    assert (step.line, step.amount) == ("", "leaf-off: its label's rate is not entered")
