"""What counts as one feeding, how much nitrogen it brought, and how long it lasts."""

from datetime import date, timedelta

import pytest

from journal.reckon.feedings import (
    FeedingDay,
    feeding_days,
    last_feeding,
    minimum_gap_days,
    nitrogen_of_year,
    overdue_days,
    step_days,
)
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import Treatment
from journal.season.history import Past
from tests import scenario
from tests.reckon.shed import LB, SQFT, book, lawn, lb_per_k

MAY = date(2026, 5, 20)


def fed(product: str, rate_lb: float | None = None, on: date = MAY, **facts: object) -> Feeding:
    rate = None if rate_lb is None else lb_per_k(rate_lb)
    said = {"zones": ("front",), **facts}
    return Feeding(id=f"2{product}{on}{len(facts)}", date=on, product=product, rate_g_per_m2=rate, **said)  # type: ignore[arg-type]


def past(*entries: Entry, on: date = date(2026, 8, 1), zone: str = "front") -> Past:
    return book(*entries).on(zone, on)


def feedings(*entries: Entry, **where: object) -> tuple[FeedingDay, ...]:
    return feeding_days(past(*entries, **where), 0)  # type: ignore[arg-type]


def test_one_product_on_one_day_is_one_feeding() -> None:
    (one,) = feedings(fed("ridge", 3))
    assert one.date == MAY
    assert one.n_g_per_m2 == pytest.approx(lb_per_k(0.72))
    assert one.soluble_n_g_per_m2 == pytest.approx(lb_per_k(0.432))
    assert one.slow_share == pytest.approx(0.4)
    assert not one.starter


def test_two_passes_on_one_day_are_one_feeding() -> None:
    (one,) = feedings(fed("ridge", 1.5), fed("ridge", 1.5, setting=4.0))
    assert one.n_g_per_m2 == pytest.approx(lb_per_k(0.72))
    assert len(one.entries) == 2


def test_two_products_on_one_day_are_summed_and_their_slow_shares_weighed() -> None:
    (one,) = feedings(fed("coated", 2), fed("quick", 1))
    assert one.n_g_per_m2 == pytest.approx(lb_per_k(0.7))
    assert one.slow_share == pytest.approx(0.8 * 0.4 / 0.7)


def test_two_days_are_two_feedings_oldest_first() -> None:
    later = MAY + timedelta(1)
    assert [one.date for one in feedings(fed("ridge", 3, later), fed("ridge", 3))] == [MAY, later]


def test_a_job_in_two_parts_on_following_days_is_one_feeding_on_its_last_day() -> None:
    (one,) = feedings(fed("ridge", 3, part="1/2"), fed("ridge", 3, MAY + timedelta(1), part="2/2"))
    assert one.date == MAY + timedelta(1)
    assert one.n_g_per_m2 == pytest.approx(lb_per_k(0.72))


def test_below_a_fifth_of_a_pound_nothing_was_fed() -> None:
    assert len(feedings(fed("quick", 0.2 / 0.3 * 0.99))) == 1
    assert feedings(fed("quick", 0.2 / 0.3 * 0.97)) == ()
    assert len(feedings(fed("quick", 0.2 / 0.3))) == 1


def test_less_than_half_the_zone_is_no_feeding() -> None:
    assert feedings(fed("ridge", 3, share=49.0)) == ()
    (half,) = feedings(fed("ridge", 3, share=50.0))
    assert half.n_g_per_m2 == pytest.approx(lb_per_k(0.72))


@pytest.mark.parametrize("product", ["potash", "chalk"])
def test_potash_and_lime_are_no_feeding(product: str) -> None:
    assert feedings(fed(product, 10)) == ()


def test_a_spot_is_no_feeding() -> None:
    assert feedings(fed("ridge", 3, spot=True)) == ()
    assert feedings(fed("ridge", 3, spot=True, spot_m2=10.0)) == ()


def test_starter_iron_with_nitrogen_corn_gluten_and_weed_and_feed_count() -> None:
    assert feedings(fed("begin", 4))[0].starter
    assert len(feedings(fed("iron-6", 4))) == 1
    gluten = Treatment(id="3", date=MAY, zones=("front",), product="gluten", rate_g_per_m2=lb_per_k(20))
    assert feedings(gluten)[0].n_g_per_m2 == pytest.approx(lb_per_k(2))
    tank = Treatment(
        id="4", date=MAY, zones=("front",), product="weeder", amount_ml=50.0,
        also=(Dose("both", rate_g_per_m2=lb_per_k(3)),),
    )  # fmt: skip
    assert feedings(tank)[0].n_g_per_m2 == pytest.approx(lb_per_k(0.75))


@pytest.mark.parametrize("entry", [fed("ridge"), fed("plain", 3), fed("ridge", zones=("side",), amount_g=500.0)])
def test_a_feeding_of_unknown_amount_counts_for_the_interval_only(entry: Feeding) -> None:
    (one,) = feedings(entry, zone=entry.zones[0])
    assert one.n_g_per_m2 is None
    assert one.soluble_n_g_per_m2 is None


def test_only_what_lies_before_the_day_and_since_is_seen() -> None:
    entries = (fed("ridge", 3), fed("ridge", 3, date(2026, 9, 1)))
    assert [one.date for one in feedings(*entries)] == [MAY]
    assert feeding_days(past(*entries), date(2026, 5, 21).toordinal()) == ()
    assert last_feeding(past(*entries, on=date(2030, 1, 1))).date == date(2026, 9, 1)  # type: ignore[union-attr]
    assert last_feeding(past()) is None


def test_the_year_sums_everything_spots_and_trifles_too() -> None:
    entries = (
        fed("ridge", 3),
        fed("quick", 0.1, date(2026, 6, 1)),
        fed("quick", None, date(2026, 6, 2), spot=True, spot_m2=24 * SQFT, amount_g=1 * LB),
        fed("ridge", 3, date(2025, 10, 1)),
        fed("ridge", 3, date(2026, 9, 1)),
    )
    spot = 0.3 / 2.4
    assert nitrogen_of_year(past(*entries), 2026) == pytest.approx(lb_per_k(0.72 + 0.03 + spot))
    assert nitrogen_of_year(past(*entries), 2025) == pytest.approx(lb_per_k(0.72))


def test_a_total_over_two_zones_feeds_each_by_its_area() -> None:
    entry = Feeding(id="2", date=MAY, zones=("front", "back"), product="ridge", amount_g=18 * LB)
    assert nitrogen_of_year(past(entry), 2026) == pytest.approx(lb_per_k(0.72))
    assert nitrogen_of_year(past(entry, zone="back"), 2026) == pytest.approx(lb_per_k(0.72))


def a_feeding(n_lb: float | None, slow: float | None) -> FeedingDay:
    n = None if n_lb is None else lb_per_k(n_lb)
    return FeedingDay(MAY, n, n, slow, (), starter=False)


@pytest.mark.parametrize(
    ("n_lb", "slow", "gap", "step", "late"),
    [
        (0.9, 0.0, 28, 42, 56),
        (0.9, None, 28, 42, 56),
        (0.9, 0.149, 28, 42, 56),
        (0.9, 0.15, 42, 42, 70),
        (0.9, 0.49, 42, 42, 70),
        (0.9, 0.5, 56, 56, 84),
        (0.9, 0.8, 84, 84, 112),
        (2.0, 0.0, 28, 42, 56),
        (None, 0.8, 84, 84, 112),
        (0.45, 0.30, 21, 42, 70),  # derived: half a feeding needs half the gap of 42 days
        (0.72, 0.20, 34, 42, 70),  # derived: 33.6 days, rounded up
    ],
)
def test_gaps_by_slow_share_and_dose(n_lb: float | None, slow: float | None, gap: int, step: int, late: int) -> None:
    feeding = a_feeding(n_lb, slow)
    assert (minimum_gap_days(feeding, lawn()), step_days(feeding, lawn()), overdue_days(feeding, lawn())) == (
        gap, step, late,
    )  # fmt: skip


def test_the_owner_s_own_number_goes_first() -> None:
    own = Setting(id="05", date=MAY, what="rule", name="feed-too-soon", values=(("days", "35d"),))
    mine = book(own).lawn(MAY)
    assert minimum_gap_days(a_feeding(0.9, 0.0), mine) == 35
    assert minimum_gap_days(a_feeding(0.9, 0.8), mine) == 84


def test_the_two_parts_of_a_job_are_typed_on_following_days() -> None:
    parts = ("2026-05-20 feed pond-ridge 3lb part 1/2 front", "2026-05-21 feed pond-ridge 3lb part 2/2 front")
    done = scenario.book(*parts)
    (one,) = feeding_days(done.on("front", date(2026, 5, 30)), MAY.toordinal() - 30)
    assert (one.date, len(one.entries)) == (date(2026, 5, 21), 2)
    assert one.n_g_per_m2 == pytest.approx(lb_per_k(0.6))
