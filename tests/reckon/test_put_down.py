"""How much goes down on each zone, reckoned by hand beside it, and which limits it would pass."""

import pytest

from journal.facts.factors import LB_PER_K_G_M2
from journal.reckon.put_down import Over, PutDown, put_down
from journal.record.unit import FLUID_OUNCE, POUND, Dimension
from journal.season.history import History
from tests.scenario import LAWN, book, day, lawn

SHED = """
[[product]]
name = "amber"
kind = "fertilizer"
analysis = "24-0-10"
slow = "60% of n"
bag = "20 lb"
rate = ["2.5 lb/k", "3.75 lb/k"]

[[product]]
name = "quick"
kind = "fertilizer"
analysis = "24-0-10"
rate = ["2.5 lb/k", "5 lb/k"]

[[product]]
name = "spray"
kind = "weed"
form = "liquid"
bottle = "32 floz"
rate = ["1.1 floz/k", "1.5 floz/k"]
"""


def shed(*changes: tuple[str, str]) -> History:
    """Front 2,400 and back 3,000 sq ft, and the three products."""
    return lawn(('area = "3100 sqft"', 'area = "3000 sqft"'), *changes, toml=LAWN + SHED)


def dose(history: History, name: str, lb_per_k: float, *zones: str, on: str = "2026-06-10") -> PutDown:
    """That product at a rate in lb (fl oz) per 1,000 sq ft."""
    product = history.lawn(day(on)).product(name)
    assert product is not None
    assert product.rate is not None
    base = FLUID_OUNCE / (POUND / LB_PER_K_G_M2) if product.liquid else LB_PER_K_G_M2
    pasts = [history.on(zone, day(on)) for zone in zones]
    return put_down(product, lb_per_k * float(base), product.rate.dimension, pasts)


def pounds(grams: float | None) -> float:
    assert grams is not None
    return grams / float(POUND)


def test_the_amounts_are_rate_times_area() -> None:
    both = dose(shed(), "amber", 2.5, "front", "back")
    assert [pounds(portion.amount) for portion in both.portions] == pytest.approx([6.0, 7.5])
    assert pounds(both.amount) == pytest.approx(13.5)


def test_the_nitrogen_is_a_share_of_the_product_and_comes_on_top_of_the_years() -> None:
    fed = book("2026-05-02 feed amber 6lb front", on=shed())
    front, back = dose(fed, "amber", 2.5, "front", "back").portions
    assert front.brings is not None
    assert front.year_n is not None
    assert back.year_n is not None
    assert front.brings.n == pytest.approx(0.6 * float(LB_PER_K_G_M2))
    assert front.brings.soluble_n == pytest.approx(0.24 * float(LB_PER_K_G_M2))
    assert front.year_n == pytest.approx(1.2 * float(LB_PER_K_G_M2))
    assert back.year_n == pytest.approx(0.6 * float(LB_PER_K_G_M2))
    assert front.over == ()


def test_a_liquid_is_measured_and_brings_nothing_that_can_be_reckoned() -> None:
    both = dose(shed(), "spray", 1.5, "front", "back")
    assert both.amount == pytest.approx(1.5 * 5.4 * float(FLUID_OUNCE))
    assert all(portion.brings is None and portion.year_n is None for portion in both.portions)


def test_without_an_area_there_is_no_amount_but_still_the_nitrogen() -> None:
    open_end = shed(('area = "2400 sqft"\n', ""))
    both = dose(open_end, "amber", 2.5, "front", "back")
    front, back = both.portions
    assert (both.amount, front.amount) == (None, None)
    assert pounds(back.amount) == pytest.approx(7.5)
    assert front.brings is not None


@pytest.mark.parametrize(
    ("name", "rate", "over"),
    [
        ("quick", 2.5, ()),  # 0.60 lb N/k, all soluble
        ("quick", 3.0, (Over.SOLUBLE,)),  # 0.72 of it, more than 0.7
        ("quick", 4.0, (Over.ONCE,)),  # 0.96, more than 0.9
        ("amber", 3.75, ()),  # 0.90, and 0.36 of it soluble
        ("amber", 4.0, (Over.ONCE,)),
    ],
)
def test_too_much_at_once_is_named_once(name: str, rate: float, over: tuple[Over, ...]) -> None:
    assert tuple(which for which, _ in dose(shed(), name, rate, "front").portions[0].over) == over


def test_new_grass_bears_less() -> None:
    sown = book("2026-09-06 seed three-river 9lb front", on=shed())
    over = dose(sown, "quick", 2.5, "front", on="2026-10-04").portions[0].over
    assert [which for which, _ in over] == [Over.SOLUBLE_NEW]


def test_the_years_limit_is_that_of_the_grass() -> None:
    fed = book(
        "2026-05-02 feed amber 9lb front", "2026-06-20 feed amber 9lb front", "2026-08-25 feed amber 6lb front",
        on=shed(),
    )  # fmt: skip
    front, back = dose(fed, "amber", 2.5, "front", "back", on="2026-09-10").portions
    assert front.year_most == pytest.approx(2.7 * float(LB_PER_K_G_M2), rel=0.01)
    assert front.year_n == pytest.approx(3.0 * float(LB_PER_K_G_M2))
    assert [which for which, _ in front.over] == [Over.YEAR]
    assert back.over == ()


def test_a_local_rule_goes_before_the_usual_most() -> None:
    ruled = book("2026-03-01 set local_most_n 0.5lb/k", "2026-03-01 set local_year_n 1lb/k", on=shed())
    portion = dose(ruled, "quick", 4.0, "front").portions[0]
    assert [which for which, _ in portion.over] == [Over.LOCAL]
    assert portion.year_most == pytest.approx(1.0 * float(LB_PER_K_G_M2))
    fed = book("2026-05-02 feed quick 6lb front", on=ruled)
    again = dose(fed, "quick", 2.5, "front").portions[0]
    assert [which for which, _ in again.over] == [Over.YEAR, Over.LOCAL]
    soluble = book("2026-03-01 set local_most_soluble 0.5lb/k", on=shed())
    assert [which for which, _ in dose(soluble, "quick", 2.5, "front").portions[0].over] == [Over.LOCAL_SOLUBLE]


def test_a_zone_of_nothing_takes_nothing() -> None:
    none = put_down(shed().lawn(day("2026-06-10")).products[-1], 1.0, Dimension.VOLUME_RATE, [])
    assert (none.portions, none.amount) == ((), None)
