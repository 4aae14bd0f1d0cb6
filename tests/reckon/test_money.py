"""What a zone cost, what was laid out, and that nothing of what went down is lost between the zones."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.reckon.ledger import ledger
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.season.history import History
from tests.reckon.garden import LB, TODAY, book, zone


def cost(history: History, name: str) -> float:
    return zone(history, name).sums.cost


def lawn(history: History) -> tuple[float, float]:
    found = ledger(history, 2026, TODAY)
    return found.cost, found.spent


def test_what_was_written_on_an_entry_is_split_by_area() -> None:
    history = book("2026-09-05 aerate 2x front back rental $85")
    assert cost(history, "front") == pytest.approx(34)
    assert cost(history, "back") == pytest.approx(51)
    assert lawn(history) == pytest.approx((85, 85))


def test_a_product_costs_what_the_lots_bought_by_then_cost_on_average() -> None:
    history = book(
        "2026-04-01 buy pond-ridge 1x 40lb $40",
        "2026-05-16 feed pond-ridge 10lb front",
        "2026-08-01 buy pond-ridge 1x 40lb $60",
        "2026-08-25 feed pond-ridge 10lb front",
    )
    assert cost(history, "front") == pytest.approx(10 * 1.0 + 10 * 1.25)
    assert lawn(history) == pytest.approx((22.5, 100))


def test_a_product_that_cost_nothing_that_is_known_adds_nothing() -> None:
    history = book("2026-04-01 buy pond-ridge 1x", "2026-05-16 feed pond-ridge 10lb front")
    assert lawn(history) == (0.0, 0.0)


def test_a_bottle_is_used_up_by_the_fluid_ounce() -> None:
    history = book("2026-04-01 buy leaf-off 1x $32", "2026-05-20 treat leaf-off 3floz front wind 3mph")
    assert cost(history, "front") == pytest.approx(3)


def test_a_plan_costs_nothing_yet() -> None:
    assert lawn(book("2026-08-20 intend aerate 2026-09-05 front back rental $85")) == (0.0, 0.0)


def test_a_new_blade_is_the_lawns_and_no_zones() -> None:
    history = book("2026-04-11 blade new $24")
    assert cost(history, "front") == cost(history, "back") == 0.0
    assert lawn(history) == (24.0, 24.0)


def test_a_service_is_paid_by_its_bill_and_not_by_our_bag() -> None:
    history = book("2026-04-01 buy pond-ridge 1x $40", "2026-05-16 feed pond-ridge 10lb front by service $60")
    assert cost(history, "front") == 60.0


def test_a_bill_that_can_not_be_split_is_the_lawns_and_is_told() -> None:
    history = book(
        "2026-09-05 aerate 2x front back rental $85",
        changes=(('name = "back"\narea = "3000 sqft"', 'name = "back"'),),
    )
    assert cost(history, "front") == 0.0
    assert lawn(history) == (85.0, 85.0)
    assert [one.what for one in zone(history, "front").uncounted] == ["cost"]


_ZONES = st.sampled_from([("front",), ("back",), ("front", "back")])
_DAYS = st.dates(date(2026, 1, 1), date(2026, 12, 31))
_FED = st.builds(
    Feeding,
    date=_DAYS,
    zones=_ZONES,
    product=st.just("pond-ridge"),
    amount_g=st.floats(1, 20000),
    share=st.sampled_from([None, 40.0]),
    spot=st.booleans(),
    cost=st.sampled_from([None, 12.5]),
)
_SOWN = st.builds(Seeding, date=_DAYS, zones=_ZONES, product=st.just("three-river"), amount_g=st.floats(1, 9000))
_DONE = st.lists(st.one_of(_FED, _SOWN), max_size=12)


def told(entries: list[Feeding | Seeding]) -> History:
    """The garden with these entries, numbered as they come."""
    history = book("2026-01-01 buy pond-ridge 1x 40lb $40")
    for at, entry in enumerate(entries):
        history = history.plus(replace(entry, id=f"x{at:03}"))
    return history


@settings(max_examples=40, deadline=None)
@given(_DONE)
def test_the_zones_together_hold_what_was_put_down(entries: list[Feeding | Seeding]) -> None:
    found = ledger(told(entries), 2026, TODAY)
    n, seed = (sum(getattr(z.sums, name) * (z.area_m2 or 0.0) for z in found.zones) for name in ("n", "seed"))
    assert n == pytest.approx(0.2 * sum(e.amount_g or 0.0 for e in entries if isinstance(e, Feeding)))
    assert seed == pytest.approx(sum(e.amount_g or 0.0 for e in entries if isinstance(e, Seeding)))
    assert sum(z.sums.cost for z in found.zones) == pytest.approx(found.cost)
    bags = sum((e.amount_g or 0.0) / LB for e in entries if isinstance(e, Feeding))
    assert found.cost == pytest.approx(bags + sum(e.cost or 0.0 for e in entries))


@settings(max_examples=25, deadline=None)
@given(_DONE, st.randoms(use_true_random=False))
def test_the_order_of_writing_it_down_does_not_matter(entries: list[Feeding | Seeding], chance: object) -> None:
    other = sorted(entries, key=lambda _: chance.random())  # type: ignore[attr-defined]
    one, two = (ledger(told(order), 2026, TODAY) for order in (entries, other))
    assert (one.cost, one.spent) == pytest.approx((two.cost, two.spent))
    for left, right in zip(one.zones, two.zones, strict=True):
        for name in ("n", "soluble_n", "k2o", "seed", "cost"):
            assert getattr(left.sums, name) == pytest.approx(getattr(right.sums, name))
        assert left.left_g_per_m2 == pytest.approx(right.left_g_per_m2)
