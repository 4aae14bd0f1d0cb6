"""Totals and rates over zones, shares, parts and spots."""

from datetime import date

import pytest

from journal.reckon.dose import (
    covered_share,
    doses,
    mean_g_per_m2,
    rate_g_per_m2,
    rate_ml_per_m2,
    split,
    total_g,
    total_ml,
    treated_m2,
)
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.treatment import Treatment
from tests.reckon.shed import LB, SQFT, lawn, lb_per_k

DAY = date(2026, 5, 20)


def fed(**facts: object) -> Feeding:
    return Feeding(date=DAY, product="ridge", **{"zones": ("front",), **facts})  # type: ignore[arg-type]


def first(entry: Entry) -> Dose:
    return doses(entry)[0]


def test_a_total_over_two_zones_lies_evenly_on_both() -> None:
    entry = fed(zones=("front", "back"), amount_g=15 * LB)
    assert rate_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(2.5))
    assert split(15 * LB, ("front", "back"), lawn()) == pytest.approx({"front": 6 * LB, "back": 9 * LB})


def test_a_rate_makes_a_total() -> None:
    entry = fed(zones=("front", "back"), rate_g_per_m2=lb_per_k(4))
    assert total_g(first(entry), entry, lawn()) == pytest.approx(24 * LB)


def test_a_zone_without_an_area_takes_a_rate_but_no_total() -> None:
    rate, total = fed(zones=("side",), rate_g_per_m2=20.0), fed(zones=("front", "side"), amount_g=500.0)
    assert rate_g_per_m2(first(rate), rate, lawn()) == 20.0
    assert total_g(first(rate), rate, lawn()) is None
    assert rate_g_per_m2(first(total), total, lawn()) is None
    assert split(500.0, ("front", "side"), lawn()) is None


def test_a_share_is_denser_where_it_lies_and_thinner_over_all() -> None:
    entry = fed(amount_g=2.4 * LB, share=40.0)
    assert covered_share(entry) == pytest.approx(0.4)
    assert rate_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(2.5))
    assert mean_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(1))


def test_one_part_of_two_covers_half() -> None:
    entry = fed(amount_g=6 * LB, part="1/2")
    assert covered_share(entry) == 0.5
    assert rate_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(5))
    assert mean_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(2.5))


def test_a_spot_of_known_size() -> None:
    entry = fed(amount_g=0.5 * LB, spot=True, spot_m2=40 * SQFT)
    assert treated_m2(entry, lawn()) == pytest.approx(40 * SQFT)
    assert rate_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(12.5))
    assert mean_g_per_m2(first(entry), entry, lawn()) == pytest.approx(lb_per_k(0.5 / 2.4))


def test_a_spot_of_unknown_size_has_a_total_but_no_rate() -> None:
    entry = fed(amount_g=100.0, spot=True)
    assert rate_g_per_m2(first(entry), entry, lawn()) is None
    assert total_g(first(entry), entry, lawn()) == 100.0
    assert mean_g_per_m2(first(entry), entry, lawn()) == pytest.approx(100.0 / (2400 * SQFT))


def test_a_tank_of_two_products_is_two_doses() -> None:
    entry = Treatment(
        date=DAY, zones=("front",), product="weeder", amount_ml=100.0, also=(Dose("both", rate_ml_per_m2=0.5),)
    )
    one, other = doses(entry)
    assert rate_ml_per_m2(one, entry, lawn()) == pytest.approx(100.0 / (2400 * SQFT))
    assert total_ml(other, entry, lawn()) == pytest.approx(0.5 * 2400 * SQFT)


def test_a_mowing_puts_nothing_down() -> None:
    assert doses(Mowing(date=DAY, zones=("front",))) == ()
