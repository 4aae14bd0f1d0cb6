"""Granules over a lawn, as typed, against worked examples in print (the source beside each)."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.reckon.feeding import product_for_nitrogen
from journal.reckon.spreading import spreading
from tests.reckon.called import figures, notes
from tests.reckon.shed import LB, SQFT, lb_per_k, product

GEORGIA = "Univ. of Georgia (Waltz), Fertilizer Calculations for Attractive, Healthy Lawns"
FLORIDA = "UF/IFAS ENH-73, Yearly Calendar for St. Augustinegrass Care and Culture, 1995"
CAROLINA = "NC State Ext., Caring for Your Lawn and the Environment"
NEBRASKA = "Univ. of Nebraska-Lincoln Ext., Lawn Fertilizer Calculations"
TEXAS = "Texas A&M Turf (Gray), rotary spreader calibration"
MASSACHUSETTS = "UMass Ext. Turf Program, Rotary Spreader Calibration Procedures"
KANSAS = "K-State Ext. (Eckert) in Rural Messenger, Fertilize at the right time"
MISSOURI = "Univ. of Missouri Ext. (Fresenburg), news release on leaving clippings"
SULIS = "Univ. of Minnesota Ext. SULIS, Getting What You Paid For"
VIRGINIA = "Virginia Coop. Ext. in Progress-Index, Fall fertility strategies for home lawns, 2017"
SCHLOSSBERG = "Schlossberg (Penn State), A Practical Method of Rotary Spreader Calibration, NC Turfgrass, 2023"
RUTGERS = "Rutgers Univ., drop-spreader calibration"
RAMSEY = "Ask Extension, Ramsey County, Minnesota, question 603771"
GREENBOOK = "Label of a pre-emergent granule holding dithiopyr, 50 lb bag over 8,772 sq ft"

SPREAD = "spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft"


@pytest.mark.parametrize(
    ("analysis", "printed_lb", "within", "source"),
    [
        ("10-10-10", 10, 0.05, GEORGIA), ("12-4-8", 8.3, 0.05, GEORGIA), ("5-10-15", 20, 0.05, GEORGIA),
        ("16-4-8", 6.3, 0.06, GEORGIA), ("33-0-0", 3, 0.05, GEORGIA), ("16-4-8", 6.25, 0.005, FLORIDA),
        ("24-6-6", 4.17, 0.005, CAROLINA), ("6-2-0", 17, 0.5, CAROLINA), ("14-3-6", 7, 0.5, CAROLINA),
        ("20-5-5", 5, 0.5, CAROLINA), ("26-3-4", 4, 0.5, CAROLINA), ("35-3-5", 3, 0.5, CAROLINA),
        ("28-3-6", 3.57, 0.005, NEBRASKA), ("21-0-0", 4.76, 0.005, TEXAS), ("20-5-10", 5, 0.005, MASSACHUSETTS),
        ("20-0-0", 5, 0.005, KANSAS), ("20-5-12", 5, 0.005, MISSOURI),
    ],
)  # fmt: skip
def test_product_for_one_pound_of_nitrogen(analysis: str, printed_lb: float, within: float, source: str) -> None:
    found = figures(f"spread --analysis {analysis} --n 1lb/k --area 1000sqft")
    assert found["product_lb_per_1000sqft"] == pytest.approx(printed_lb, abs=within), source
    assert found["n_lb_per_1000sqft"] == pytest.approx(1, rel=1e-12)


@pytest.mark.parametrize(
    ("line", "key", "printed", "within", "source"),
    [
        ("--analysis 28-3-6 --n 1lb/k --area 6000sqft", "product_lb", 21.42, 0.02, NEBRASKA),
        ("--analysis 24-6-6 --n 1lb/k --area 5000sqft", "product_lb", 20.8, 0.05, CAROLINA),
        ("--analysis 20-5-10 --n 1lb/k --area 1000sqft", "per_pass_lb", 2.50, 0.005, MASSACHUSETTS),
        ("--analysis 100-0-0 --n 0.9lb/k --area 1000sqft", "per_pass_lb", 0.45, 0.001, RUTGERS),
        ("--analysis 0-0-22 --amount 9.1lb --area 1000sqft", "k2o_lb_per_1000sqft", 2, 0.01, SCHLOSSBERG),
        ("--analysis 10-0-0 --amount 50lb --area 8772sqft", "product_lb_per_1000sqft", 5.70, 0.005, GREENBOOK),
    ],
)
def test_figures_in_print(line: str, key: str, printed: float, within: float, source: str) -> None:
    assert figures(f"spread {line}")[key] == pytest.approx(printed, abs=within), source


@pytest.mark.parametrize(
    ("bag", "analysis", "printed", "source"),
    [
        ("40lb", "10-6-4", (4, 2.4, 1.6), CAROLINA),
        ("60lb", "30-4-4", (18, 2.4, 2.4), SULIS),
        ("50lb", "10-10-10", (5, 5, 5), VIRGINIA),
        ("6.25lb", "16-4-8", (1, 0.25, 0.5), FLORIDA),
    ],
)
def test_what_a_bag_brings(bag: str, analysis: str, printed: tuple[float, float, float], source: str) -> None:
    found = figures(f"spread --analysis {analysis} --amount {bag} --area 1000sqft")
    brought = [found[f"{food}_lb_per_1000sqft"] for food in ("n", "p2o5", "k2o")]
    assert brought == pytest.approx(printed, abs=0.001), source


def test_two_products_one_after_the_other() -> None:
    # 3,500 sq ft want 3.5 lb N and 1.75 lb P2O5: about 8 lb of 21-22-4, then 5.6 lb of 32-0-4. (RAMSEY; it rounds.)
    first = figures("spread --analysis 21-22-4 --amount 8lb --area 3500sqft")
    then = figures("spread --analysis 32-0-4 --amount 5.6lb --area 3500sqft")
    assert 3.5 * first["p2o5_lb_per_1000sqft"] == pytest.approx(1.75, abs=0.02), RAMSEY
    assert 3.5 * (first["n_lb_per_1000sqft"] + then["n_lb_per_1000sqft"]) == pytest.approx(3.5, abs=0.05), RAMSEY


def test_our_own_arithmetic() -> None:
    found = figures(f"{SPREAD} --slow-n 9.6% --bag 50lb --price 42")
    assert found == {
        "product_lb_per_1000sqft": 3.75,
        "product_lb": 30.75,
        "per_pass_lb": 15.375,
        "bags": 0.615,
        "bag_covers_sqft": pytest.approx(13333.3333, abs=1e-4),
        "n_lb_per_1000sqft": 0.9,
        "soluble_n_lb_per_1000sqft": 0.54,
        "p2o5_lb_per_1000sqft": 0.0,
        "k2o_lb_per_1000sqft": 0.4125,
        "cost": 25.83,
        "cost_per_lb_n": 3.5,
    }
    assert figures(f"{SPREAD} --bag 50lb --price $28".replace("24-0-11", "46-0-0"))["cost_per_lb_n"] == pytest.approx(
        1.2174, abs=1e-4
    )


def test_the_share_of_the_nitrogen_and_of_the_product_are_two_ways_to_say_one_thing() -> None:
    assert figures(f"{SPREAD} --slow-share 40%") == figures(f"{SPREAD} --slow-n 9.6%")
    assert figures(f"{SPREAD} --slow-share 40 % of n") == figures(f"{SPREAD} --slow-n 9.6")


def test_metric_is_as_welcome() -> None:
    us = figures(f"{SPREAD} --bag 50lb --price 42")
    metric = figures(
        "spread --analysis 24-0-11 --n 43.941848724kg/ha --area 761.804928m2 --bag 22.6796185kg --price 42"
    )
    assert metric == pytest.approx(us, rel=1e-9)


@given(st.floats(0.01, 4), st.floats(10, 1e6), st.integers(1, 60), st.integers(1, 8))
def test_backward_from_the_amount_is_forward_again(n: float, area: float, percent: int, passes: int) -> None:
    bag = product(analysis=(percent, 0, 0), bag_g=20_000.0)
    rate = product_for_nitrogen(bag, lb_per_k(1) * n)
    assert rate is not None
    spread = spreading(bag, rate, area, passes)
    food = spread.nutrients
    assert food is not None
    assert food.n == pytest.approx(lb_per_k(1) * n, rel=1e-12)
    assert spread.per_pass_g * passes == pytest.approx(spread.product_g, rel=1e-12)
    assert spread.product_g / area == pytest.approx(spread.rate_g_per_m2, rel=1e-12)
    assert spread.bags is not None
    assert spread.bag_covers_m2 is not None
    assert spread.bags * spread.bag_covers_m2 == pytest.approx(area, rel=1e-12)


def test_without_a_bag_or_an_analysis_that_stays_unknown() -> None:
    spread = spreading(product(), 20.0, 100.0)
    assert (spread.bags, spread.bag_covers_m2, spread.nutrients) == (None, None, None)
    assert (spread.product_g, spread.per_pass_g) == (2000.0, 1000.0)
    assert spreading(product(bag_g=50 * LB), lb_per_k(3.75), 8200 * SQFT).bags == pytest.approx(0.615)


@pytest.mark.parametrize(
    ("options", "told", "untold"),
    [
        ("--n 0.9lb/k --slow-share 40%", [], ["More nitrogen at once", "More soluble"]),
        ("--n 0.9lb/k", ["More soluble nitrogen", "No slow-release share was said"], ["More nitrogen at once"]),
        ("--n 0.9lb/k --slow-share 10%", ["More soluble nitrogen"], ["No slow-release share was said"]),
        ("--n 1.2lb/k --slow-share 80%", ["More nitrogen at once than 0.9 lb/k (4.4 g/m2)"], ["More soluble"]),
        ("--n 0.7lb/k", ["right angles", "The label's own rate goes first"], ["More"]),
    ],
)
def test_what_is_much_at_once_is_told(options: str, told: list[str], untold: list[str]) -> None:
    said = notes(f"spread --analysis 24-0-11 {options} --area 1000sqft")
    assert [words for words in told if words not in said] == []
    assert [words for words in untold if words in said] == []


@pytest.mark.parametrize(
    ("passes", "words"),
    [(1, "Two passes at half the rate"), (2, "half the rate and go over it twice"), (4, "a part in 4 of the rate")],
)
def test_passes_run_crosswise(passes: int, words: str) -> None:
    said = notes(f"{SPREAD} --passes {passes}")
    assert words in said
    assert "right angles" in said


@pytest.mark.parametrize(("price", "words"), [("", "Buy 2 bags."), (" --price 42", "Buy 2 bags: $84.00.")])
def test_bags_are_bought_whole(price: str, words: str) -> None:
    assert words in notes(f"{SPREAD} --bag 20lb{price}")


def test_a_phosphorus_fertilizer_sends_to_the_local_rule() -> None:
    assert "Vermont" not in notes(SPREAD)
    assert "local rule goes first" in notes("spread --analysis 18-24-6 --n 0.5lb/k --area 1000sqft")


REFUSED: list[tuple[str, str, str]] = [
    ("--n 0.9lb/k --area 1000sqft", "--analysis", "is missing"),
    ("--analysis 24-0-11 --n 0.9lb/k", "--area", "is missing"),
    ("--analysis 24-0-11 --area 1000sqft", "--n", "--amount"),
    ("--analysis 24-0-11 --n 0.9lb/k --amount 3lb --area 1000sqft", "--amount", "already"),
    ("--analysis 0-0-50 --n 0.9lb/k --area 1000sqft", "--n", "no nitrogen"),
    ("--analysis 24-0 --n 0.9lb/k --area 1000sqft", "--analysis 24-0", "18-24-6"),
    ("--analysis 60-30-20 --n 1lb/k --area 1000sqft", "--analysis 60-30-20", "above 100"),
    (f"{SPREAD[7:]} --slow-n 30", "--slow-n", "more than the 24 %"),
    (f"{SPREAD[7:]} --slow-n 9 --slow-share 40", "--slow-n", "already"),
    (f"{SPREAD[7:]} --slow-share 140%", "--slow-share 140%", "above 100"),
    (f"{SPREAD[7:]} --price 42", "--price", "how large a bag"),
    (f"{SPREAD[7:]} --bag 50lb --price 0", "--price 0", "a price"),
    (f"{SPREAD[7:]} --bag 50lb --price 42kg", "--price 42kg", "wrong kind"),
    (f"{SPREAD[7:]} --bag 0lb", "--bag 0lb", "more than nothing"),
    (f"{SPREAD[7:]} --bag 50floz", "--bag 50floz", "wrong kind"),
    (f"{SPREAD[7:]} --passes 0", "--passes 0", "from 1 to 8"),
    (f"{SPREAD[7:]} --passes 1.5", "--passes 1.5", "from 1 to 8"),
    (f"{SPREAD[7:]} --area 90sqft", "--area", "already"),
    ("--analysis 24-0-11 --n 0.9 --area 1000sqft", "--n 0.9", "a unit is missing"),
    ("--analysis 24-0-11 --n 0.9lb --area 1000sqft", "--n 0.9lb", "wrong kind"),
    ("--analysis 24-0-11 --n 0lb/k --area 1000sqft", "--n 0lb/k", "more than nothing"),
    ("--analysis 24-0-11 --n -1lb/k --area 1000sqft", "--n -1lb/k", "below zero"),
    ("--analysis 24-0-11 --n 90lb/k --area 1000sqft", "--n 90lb/k", "can't be meant"),
    ("--analysis 24-0-11 --n 1lb/k --area 9000acre", "--area 9000acre", "can't be meant"),
    ("--analysis 24-0-11 --n 1lb/k --area nansqft", "--area nansqft", "not a number"),
    ("--analysis 24-0-11 --amount 500lb --area 1sqft", "--amount", "so small an area"),
    ("--analysis 0.001-0-0 --n 9lb/k --area 1000sqft", "--analysis", "too little nitrogen"),
    ("--analysis 24-0-11 --n 1lb/k --area 0.00001sqft", "--area 0.00001sqft", "too little to be measured"),
    ("--analysis 24-0-11 --n --area 1000sqft", "--n", "a value is wanted"),
    ("--analysis 24-0-11 --nn 1lb/k --area 1000sqft", "--nn", "not asked here"),
    ("1000sqft --analysis 24-0-11", "1000sqft", "an option is wanted before it"),
]


@pytest.mark.parametrize(("options", "word", "why"), REFUSED)
def test_what_can_not_be_used_is_refused_by_its_word(options: str, word: str, why: str, refused: Any) -> None:
    refused(f"spread {options}", word, why)
