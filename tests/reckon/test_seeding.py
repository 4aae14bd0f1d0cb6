"""Pure live seed and what to spread, against examples in print."""

import pytest

from journal.reckon.seeding import bulk_g, bulk_rate_g_per_m2, pure_live_share
from tests.reckon.shed import LB, SQFT, lb_per_k, product

PENN_STATE = "Penn State Center for Turfgrass Science, Calculating the Price of Pure Live Seed"


@pytest.mark.parametrize(
    ("purity", "germination", "printed", "source"),
    [
        (92, 80, 74, PENN_STATE),
        (85, 60, 51, PENN_STATE),
        (99, 90, 89, PENN_STATE),
        (31, 80, 24.8, "Univ. of Minnesota Extension, Establishing a New Lawn: Purchasing Seed"),
        (85, 75, 64, "Texas Dept. of Transportation, Pure live seed"),
        (95, 85, 81, "Cornell Univ., Seeding rates for sports fields"),
    ],
)
def test_pure_live_seed(purity: float, germination: float, printed: float, source: str) -> None:
    assert 100 * pure_live_share(purity, germination) == pytest.approx(printed, rel=0.01), source


def test_seed_to_buy_for_a_rate_of_pure_live_seed() -> None:
    # 20,000 sq ft at 1 lb PLS, 48 % pure, 80 % germination: 52.6 lb, rounded on the way: LSU AgCenter, PLS Calculation
    seed = product(kind="seed", purity=48.0, germination=80.0, rate_basis="pls")
    grams = bulk_g(lb_per_k(1), 20_000 * SQFT, seed)
    assert grams is not None
    assert grams / LB == pytest.approx(52.6, rel=0.02)


def test_a_bulk_rate_is_spread_as_it_stands() -> None:
    assert bulk_rate_g_per_m2(20.0, product(kind="seed", purity=48.0, germination=80.0)) == 20.0


def test_a_pure_live_rate_without_purity_is_not_reckoned() -> None:
    assert bulk_rate_g_per_m2(20.0, product(kind="seed", germination=80.0, rate_basis="pls")) is None
