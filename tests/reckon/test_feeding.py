"""Plant food by weight, checked against worked examples in print (the source beside each) and against our own."""

import pytest

from journal.reckon.feeding import (
    holds_nitrogen,
    holds_phosphate,
    is_starter,
    nutrients,
    product_for_nitrogen,
)
from tests.reckon.shed import LB, SQFT, lawn, lb_per_k, product

GEORGIA = "Univ. of Georgia, Fertilizer Calculations for Attractive, Healthy Lawns"
FLORIDA = "UF/IFAS ENH-73, Yearly Calendar for St. Augustinegrass Care and Culture, 1995"
CAROLINA = "NC State Ext., Caring for Your Lawn and the Environment"
NEBRASKA = "Univ. of Nebraska-Lincoln Ext., Lawn Fertilizer Calculations"
TEXAS = "Texas A&M Turf, rotary spreader calibration"
MASSACHUSETTS = "UMass Ext. Turf Program, Rotary Spreader Calibration Procedures"
KANSAS = "K-State Ext. in Rural Messenger, Fertilize at the right time"
MISSOURI = "Univ. of Missouri Ext., news release on leaving clippings"


@pytest.mark.parametrize(
    ("percent", "printed_lb", "within", "source"),
    [
        (10, 10, 0.05, GEORGIA),
        (12, 8.3, 0.05, GEORGIA),
        (5, 20, 0.05, GEORGIA),
        (16, 6.25, 0.005, FLORIDA),
        (33, 3, 0.05, GEORGIA),
        (24, 4.17, 0.005, CAROLINA),
        (6, 17, 0.5, CAROLINA),
        (14, 7, 0.5, CAROLINA),
        (26, 4, 0.5, CAROLINA),
        (35, 3, 0.5, CAROLINA),
        (28, 3.57, 0.005, NEBRASKA),
        (21, 4.76, 0.005, TEXAS),
        (20, 5, 0.005, MASSACHUSETTS),
        (20, 5, 0.005, KANSAS),
        (20, 5, 0.005, MISSOURI),
    ],
)
def test_product_for_one_pound_of_nitrogen(percent: float, printed_lb: float, within: float, source: str) -> None:
    grams = product_for_nitrogen(product(analysis=(percent, 0, 0)), lb_per_k(1))
    assert grams is not None
    assert grams / lb_per_k(1) == pytest.approx(printed_lb, abs=within), source


def test_the_whole_lawn_of_6000_square_feet() -> None:
    # 28-3-6 at 1 lb N over 6,000 sq ft is 21.42 lb: Univ. of Nebraska-Lincoln Ext., Lawn Fertilizer Calculations
    grams = product_for_nitrogen(product(analysis=(28, 3, 6)), lb_per_k(1))
    assert grams is not None
    assert grams * 6000 * SQFT / LB == pytest.approx(21.42, abs=0.02)


@pytest.mark.parametrize(
    ("bag_lb", "analysis", "printed", "source"),
    [
        (40, (10, 6, 4), (4, 2.4, 1.6), "NC State Ext., Caring for Your Lawn and the Environment"),
        (60, (30, 4, 4), (18, 2.4, 2.4), "Univ. of Minnesota Ext., Getting What You Paid For"),
        (50, (10, 10, 10), (5, 5, 5), "Virginia Coop. Ext. in Progress-Index, Fall fertility strategies, 2017"),
        (6.25, (16, 4, 8), (1, 0.25, 0.5), FLORIDA),
    ],
)
def test_what_a_bag_holds(
    bag_lb: float, analysis: tuple[float, float, float], printed: tuple[float, float, float], source: str
) -> None:
    held = nutrients(product(analysis=analysis), bag_lb)
    assert held is not None
    assert (held.n, held.p2o5, held.k2o) == pytest.approx(printed, abs=0.001), source


def test_soluble_nitrogen_from_a_percentage_of_the_product() -> None:
    # derived: 3.75 lb per 1,000 sq ft of 24 % N with 9.6 % slow brings 0.54 lb soluble N
    held = nutrients(product(analysis=(24, 0, 11), slow_n_percent=9.6), lb_per_k(3.75))
    assert held is not None
    assert held.soluble_n == pytest.approx(lb_per_k(0.54))
    assert held.k2o == pytest.approx(lb_per_k(0.4125))


def test_a_product_that_says_nothing_of_slow_release_counts_as_soluble() -> None:
    held = nutrients(product(analysis=(30, 0, 0)), 10)
    assert held is not None
    assert held.soluble_n == held.n == pytest.approx(3)


def test_without_an_analysis_nothing_is_reckoned() -> None:
    assert nutrients(product(kind="fertilizer"), 10) is None
    assert product_for_nitrogen(product(analysis=(0, 0, 50)), 4) is None


@pytest.mark.parametrize(
    ("facts", "starts"),
    [
        ({"kind": "starter"}, True),
        ({"kind": "fertilizer", "analysis": (18, 24, 6)}, True),
        ({"kind": "fertilizer", "analysis": (20, 10, 5)}, True),
        ({"kind": "fertilizer", "analysis": (20, 9.9, 5)}, False),
        ({"kind": "fertilizer", "analysis": (1, 0.67, 0)}, False),
        ({"kind": "fertilizer", "analysis": (0, 46, 0)}, False),
        ({"kind": "fertilizer"}, False),
    ],
)
def test_what_counts_as_a_starter(facts: dict[str, object], starts: bool) -> None:
    assert is_starter(product(**facts), lawn()) is starts


def test_a_phosphorus_fertilizer_has_more_than_two_thirds_of_a_percent() -> None:
    # 0.5 % is none, more than 0.67 % is one: 10 V.S.A. s.1266b
    assert not holds_phosphate(product(analysis=(24, 0.5, 11)), lawn())
    assert not holds_phosphate(product(analysis=(24, 0.67, 11)), lawn())
    assert holds_phosphate(product(analysis=(24, 0.68, 11)), lawn())


def test_a_fertilizer_without_an_analysis_is_taken_to_hold_nitrogen_and_lime_is_not() -> None:
    assert holds_nitrogen(product(kind="fertilizer"))
    assert not holds_nitrogen(product(kind="lime"))
    assert not holds_nitrogen(product(kind="fertilizer", analysis=(0, 0, 50)))
