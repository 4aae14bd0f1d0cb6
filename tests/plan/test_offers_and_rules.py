"""No line that is offered for a feeding or a starter is one that the flags would call harm or a loss."""

from datetime import date, timedelta

import pytest

from journal.facts.local_rules_sets import sets
from journal.plan.step import State
from journal.plan.steps import steps
from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import preflight
from tests.plan.garden import PRODUCTS, kept
from tests.scenario import day, draft, the

SHEDS: dict[str, dict[str, str]] = {
    "no label": {"analysis": "24-0-11"},
    "a heavy label": {"analysis": "24-0-11", "rate": "4lb/k 5lb/k"},
    "a heavier label": {"analysis": "24-0-11", "rate": "6lb/k 7lb/k"},
    "a little slow": {"analysis": "24-0-11", "slow": "10% of n", "rate": "2lb/k 4lb/k"},
    "mostly slow": {"analysis": "30-0-4", "slow": "60% of n", "rate": "4lb/k 5lb/k"},
    "with phosphorus": {"analysis": "24-6-11", "slow": "30% of n", "rate": "2lb/k 4lb/k"},
}
STARTERS: dict[str, dict[str, str]] = {
    "no label": {"analysis": "18-24-6"},
    "a heavy label": {"analysis": "18-24-6", "rate": "5lb/k 6lb/k"},
}
PLACES = ["none", *sets()]
MONDAYS = [date(2026, 4, 6) + timedelta(7 * at) for at in range(34)]


def _shed(feed: str, starter: str) -> dict[str, dict[str, str]]:
    seed = {"three-river-blend": PRODUCTS["three-river-blend"]}
    return seed | {
        "oat-hill": {"kind": "starter"} | STARTERS[starter],
        "big-bag": {"kind": "fertilizer"} | SHEDS[feed],
    }


def _blamed(book: History, on: date) -> list[str]:
    found = []
    for step in steps(book, on):
        if step.step in ("feed", "starter", "seedling-feed") and step.line and step.state in (State.OPEN, State.LATE):
            line = f"{on} {step.line}"
            flags = preflight(book, draft(book, line), on).raised
            found += [f"{line}: {flag.rule} {flag.level}" for flag in flags if flag.level in (Level.HARM, Level.LOSS)]
    return found


@pytest.mark.parametrize("place", PLACES)
def test_no_feeding_that_is_offered_is_blamed(place: str) -> None:
    lawn = {"local_rules": place, "late_fall": "yes"}
    sowing = "2026-09-05 seed three-river-blend 12lb front"
    for feed in SHEDS:
        shed = _shed(feed, "no label" if feed in ("no label", "mostly slow") else "a heavy label")
        may, autumn = "2026-05-20 feed big-bag 4lb/k front back", "2026-09-03 feed big-bag 2lb/k front"
        fed = kept(may, lawn=lawn, products=shed)
        blamed = [one for on in MONDAYS[::5] for one in _blamed(fed, on)]
        sown = kept(may, autumn, sowing, lawn=lawn, products=shed)
        blamed += [
            one for at in (0, 5, 9, 20, 28, 34, 46, 57, 66) for one in _blamed(sown, day("2026-09-05") + timedelta(at))
        ]
        assert blamed == [], feed


@pytest.mark.parametrize("own", [{"local_year_n": "1lb/k"}, {"local_most_n": "0.5lb/k"}, {"local_slow": "20% of n"}])
def test_nor_by_the_owners_own_local_numbers(own: dict[str, str]) -> None:
    for feed in SHEDS:
        book = kept(lawn=own, products=_shed(feed, "a heavy label"))
        assert [one for on in MONDAYS[::5] for one in _blamed(book, on)] == [], feed


def test_a_label_whose_least_is_too_much_for_the_law_has_no_line_and_says_so() -> None:
    shed = _shed("a heavy label", "a heavy label")
    step = the(kept(lawn={"local_rules": "us-md"}, products=shed), "2026-05-20", "feed")
    assert (step.line, step.amount) == (
        "", "big-bag: its label's least brings 0.96 lb N/k; Maryland allows 0.7 lb N/k of soluble nitrogen at once",
    )  # fmt: skip
    own = the(kept(lawn={"local_most_n": "0.5lb/k"}, products=shed), "2026-05-20", "feed")
    assert own.amount.endswith("your local rule allows 0.5 lb N/k at once")
    heavier = the(kept(products=_shed("a heavier label", "no label")), "2026-05-20", "feed")
    assert heavier.amount.endswith("more than 1 lb N/k at once may burn")
    assert the(kept(products=shed), "2026-05-20", "feed").line.startswith("feed big-bag")


def test_a_starter_whose_least_is_too_much_for_the_law_has_none_either() -> None:
    sown = "2026-08-29 seed three-river-blend 12lb front"
    shed = _shed("no label", "a heavy label")
    step = the(kept(sown, lawn={"local_rules": "us-md"}, products=shed), "2026-08-30", "starter")
    assert (step.line, "Maryland allows 0.7 lb N/k" in step.amount) == ("", True)
    assert the(kept(sown, products=shed), "2026-08-30", "starter").line.startswith("feed oat-hill")


def test_a_fertilizer_that_is_slow_enough_for_the_law_goes_first() -> None:
    slow = {"kind": "fertilizer", "analysis": "24-0-11", "slow": "30% of n"}
    quick = {"big-bag": {"kind": "fertilizer", "analysis": "24-0-11", "slow": "10% of n"}}
    vermont = {"local_rules": "us-vt"}
    alone = the(kept(lawn=vermont, products=quick), "2026-05-25", "feed")
    assert (alone.line, alone.amount) == ("", "big-bag: 10 % of its nitrogen is slow; Vermont asks 15 %")
    both = the(kept(lawn=vermont, products=quick | {"pond-ridge": slow}), "2026-05-25", "feed")
    assert both.line.startswith("feed pond-ridge")


def test_an_established_lawn_gets_no_phosphorus_where_the_law_wants_a_reason() -> None:
    with_p = {"big-bag": {"kind": "fertilizer", "analysis": "24-6-11", "slow": "30% of n"}}
    minnesota = {"local_rules": "us-mn"}
    alone = the(kept(lawn=minnesota, products=with_p), "2026-05-25", "feed")
    assert alone.line == ""
    assert alone.amount.startswith("big-bag holds phosphorus; Minnesota wants a soil test")
    tested = the(kept("2026-04-01 soil p low", lawn=minnesota, products=with_p), "2026-05-25", "feed")
    assert tested.line.startswith("feed big-bag")
    without = with_p | {"pond-ridge": PRODUCTS["pond-ridge"]}
    assert the(kept(lawn=minnesota, products=without), "2026-05-25", "feed").line.startswith("feed pond-ridge")
    assert the(kept(products=with_p), "2026-05-25", "feed").line.startswith("feed big-bag")


def test_best_and_latest_end_before_the_closed_days() -> None:
    shed = _shed("mostly slow", "no label")
    lawn = {"local_rules": "us-ny", "late_fall": "yes", "growth": "04-10 12-20"}
    step = the(kept("2026-09-20 feed big-bag 3lb/k front", lawn=lawn, products=shed), "2026-11-17", "feed")
    assert step.best is not None
    assert step.latest is not None
    assert max(step.best[1], step.latest) <= day("2026-11-30")


def test_the_starter_keeps_to_what_is_left_of_the_year_by_the_local_rule() -> None:
    shed = _shed("no label", "no label")
    lines = ("2026-05-20 feed big-bag 4lb/k front", "2026-09-05 seed three-river-blend 12lb front")
    step = the(kept(*lines, lawn={"local_year_n": "1lb/k"}, products=shed), "2026-09-06", "starter")
    assert (step.line, "0.96 lb N/k went down this year" in step.amount) == ("", True)
    assert the(kept(*lines, products=shed), "2026-09-06", "starter").line.startswith("feed oat-hill")


def test_the_starter_counts_what_went_down_in_the_last_week() -> None:
    lines = ("2026-09-05 feed big-bag 4lb/k front", "2026-09-05 seed three-river-blend 12lb front")
    step = the(kept(*lines, products=_shed("no label", "no label")), "2026-09-05", "starter")
    assert (step.line, step.amount) == ("", "oat-hill: 0.96 lb N/k went down in the last week")


def test_seed_waits_a_week_after_a_feeding_that_is_no_starter() -> None:
    shed = _shed("a heavy label", "no label")
    before = kept(products=shed)
    assert "sow first" in the(before, "2026-08-25", "feed").why
    assert the(before, "2026-08-25", "seed").line.startswith("seed")
    fed = kept("2026-08-25 feed big-bag 4lb/k front back", products=shed)
    for on, opens in (("2026-08-25", False), ("2026-09-01", False), ("2026-09-02", True)):
        assert (the(fed, on, "seed").state == "open") is opens
    late = kept("2026-09-18 feed big-bag 4lb/k front back", products=shed)
    assert the(late, "2026-09-19", "seed").state == "open"
