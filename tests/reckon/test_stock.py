"""What should be left on the shelf, and of which lot."""

from datetime import date
from itertools import permutations

import pytest

from journal.reckon.stock import Shelf, as_in_lot, shelf, shelves
from journal.record.kinds.setting import Setting
from journal.season.history import History
from tests.reckon.garden import FLOZ, LB, TODAY, book
from tests.scenario import draft, numbered


def on_shelf(history: History, product: str = "pond-ridge", as_of: date = TODAY) -> Shelf:
    return shelf(history, product, as_of)


def left_lb(history: History, product: str = "pond-ridge", as_of: date = TODAY) -> float:
    left = on_shelf(history, product, as_of).left
    assert left is not None
    return left / LB


def test_two_bags_less_what_was_fed() -> None:
    found = on_shelf(book("2026-04-20 buy pond-ridge 2x 48lb $62", "2026-05-01 feed pond-ridge 12lb front back"))
    assert found.bought / LB == pytest.approx(96)
    assert found.used / LB == pytest.approx(12)
    assert found.left == pytest.approx(84 * LB)
    assert (found.short, found.at_most, found.unknown_uses) == (0.0, False, 0)


def test_a_purchase_without_a_size_takes_the_bag_of_the_shed_and_one_of_it() -> None:
    assert left_lb(book("2026-04-20 buy pond-ridge $31")) == pytest.approx(40)
    assert on_shelf(book("2026-04-20 buy leaf-off 3x"), "leaf-off").left == pytest.approx(96 * FLOZ)


def test_half_a_bag_is_half_its_weight() -> None:
    assert left_lb(book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge half bag front")) == pytest.approx(
        20
    )


def test_a_rate_takes_what_the_area_asks() -> None:
    history = book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge 4lb/k front back")
    assert left_lb(history) == pytest.approx(20)


def test_what_was_never_bought_has_been_used_and_nothing_is_known_to_be_left() -> None:
    found = on_shelf(book("2026-05-01 feed pond-ridge 12lb front"))
    assert found.used / LB == pytest.approx(12)
    assert found.left is None
    assert (found.lots, found.price) == ((), None)


def test_a_use_of_unknown_amount_leaves_at_most_so_much() -> None:
    found = on_shelf(book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge front"))
    assert found.left == pytest.approx(40 * LB)
    assert (found.unknown_uses, found.at_most) == (1, True)


def test_a_use_of_unknown_amount_before_the_first_purchase_took_nothing_from_it() -> None:
    found = on_shelf(book("2026-04-01 feed pond-ridge front", "2026-04-20 buy pond-ridge 1x"))
    assert (found.unknown_uses, found.at_most) == (1, False)


def test_more_used_than_bought_is_told() -> None:
    found = on_shelf(book("2026-04-20 buy pond-ridge 1x 10lb", "2026-05-01 feed pond-ridge 12lb front"))
    assert found.left == 0.0
    assert found.short / LB == pytest.approx(2)


def test_a_later_purchase_does_not_pay_for_what_was_used_before_it() -> None:
    history = book("2026-05-01 feed pond-ridge 12lb front", "2026-06-01 buy pond-ridge 1x")
    assert left_lb(history) == pytest.approx(40)
    assert on_shelf(history).short / LB == pytest.approx(12)


def test_what_is_bought_and_used_on_one_day_was_bought_first() -> None:
    history = book("2026-05-01 feed pond-ridge 12lb front", "2026-05-01 buy pond-ridge 1x")
    assert left_lb(history) == pytest.approx(28)
    assert on_shelf(history).short == 0.0


def test_the_shelf_of_a_day_knows_nothing_later() -> None:
    history = book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge 12lb front")
    assert left_lb(history, as_of=date(2026, 4, 30)) == pytest.approx(40)
    assert on_shelf(history, as_of=date(2026, 4, 19)).left is None


def test_a_pack_of_unknown_size_leaves_the_rest_unknown() -> None:
    found = on_shelf(book("2026-04-20 buy three-river $84", "2026-09-05 seed three-river 9lb front"), "three-river")
    assert (found.left, found.short) == (None, 0.0)
    assert found.in_use is not None


def test_the_oldest_lot_goes_first() -> None:
    history = book(
        "2026-04-20 buy pond-ridge 1x 10lb",
        "2026-05-20 buy pond-ridge 1x 20lb",
        "2026-06-01 feed pond-ridge 14lb front",
    )
    lefts = [(lot.left or 0.0) / LB for lot in on_shelf(history).lots]
    assert lefts == pytest.approx([0, 16])


def test_seed_is_sown_by_the_tag_of_the_lot_in_use() -> None:
    lines = [
        "2025-08-01 buy three-river 1x 10lb pure 97 germ 88 tested 2025-05",
        "2026-08-01 buy three-river 1x 10lb pure 96 germ 85 tested 2026-06",
        "2025-09-05 seed three-river 9lb front",
    ]
    history = book(*lines)
    product = history.lawn(TODAY).product("three-river")
    assert product is not None
    found = as_in_lot(product, on_shelf(history, "three-river").in_use)
    assert (found.purity, found.germination, found.tested) == (97, 88, date(2025, 5, 1))
    spent = book(*lines, "2026-09-05 seed three-river 4lb front")
    found = as_in_lot(product, on_shelf(spent, "three-river").in_use)
    assert (found.purity, found.germination, found.tested) == (96, 85, date(2026, 6, 1))


def test_a_lot_without_a_tag_leaves_the_product_its_numbers() -> None:
    history = book("2026-08-01 buy three-river 1x 10lb germ 85")
    product = history.lawn(TODAY).product("three-river")
    assert product is not None
    found = as_in_lot(product, on_shelf(history, "three-river").in_use)
    assert (found.purity, found.germination) == (95, 85)
    assert as_in_lot(product, None) == product


def test_a_tank_of_two_products_takes_from_both_bottles() -> None:
    history = book(
        "2026-04-20 buy leaf-off 1x",
        "2026-04-20 buy leaf-on 1x 16floz",
        "2026-05-20 treat leaf-off 3floz + leaf-on 1floz front wind 3mph",
    )
    assert on_shelf(history, "leaf-off").left == pytest.approx(29 * FLOZ)
    assert on_shelf(history, "leaf-on").left == pytest.approx(15 * FLOZ)
    assert on_shelf(history, "leaf-on").liquid


def test_what_is_only_ever_measured_by_volume_is_a_liquid_without_a_word_from_its_label() -> None:
    history = book("2026-04-20 buy soak-in 1x 32floz $16", "2026-07-01 treat soak-in 8floz front")
    assert on_shelf(history, "soak-in").left == pytest.approx(24 * FLOZ)
    assert on_shelf(history, "soak-in").price == pytest.approx(0.5 / FLOZ)


def test_a_spot_takes_what_went_into_the_can() -> None:
    history = book("2026-04-20 buy leaf-off 1x", "2026-06-20 treat leaf-off 0.2floz spot 150sqft front wind 3mph")
    assert on_shelf(history, "leaf-off").left == pytest.approx(31.8 * FLOZ)


def test_a_service_brings_its_own() -> None:
    history = book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge 12lb front by service $60")
    assert left_lb(history) == pytest.approx(40)


def test_the_price_is_the_mean_of_the_lots_with_a_cost() -> None:
    history = book(
        "2026-04-20 buy pond-ridge 1x 40lb $40", "2026-05-20 buy pond-ridge 2x 20lb $60", "2026-06-01 buy pond-ridge 1x"
    )
    assert on_shelf(history).price == pytest.approx(100 / (80 * LB))


def test_the_shelves_hold_everything_of_the_shed_in_its_order() -> None:
    history = book("2026-04-20 buy pond-ridge 1x", "2026-05-01 feed pond-ridge 12lb front back")
    found = shelves(history, TODAY)
    assert [one.product for one in found] == [product.name for product in history.lawn(TODAY).products]
    assert found[0] == on_shelf(history)
    assert all(one == shelf(history, one.product, TODAY) for one in found)


def test_the_order_in_which_it_was_written_down_does_not_matter() -> None:
    history = book()
    entries = [
        draft(history, line)
        for line in (
            "2026-04-20 buy pond-ridge 1x 10lb $12",
            "2026-05-20 buy pond-ridge 1x 20lb $20",
            "2026-05-01 feed pond-ridge 8lb front",
            "2026-06-01 feed pond-ridge 14lb front back",
        )
    ]
    seen = set()
    for order in permutations(entries):
        told = History.of([*history.track("", Setting).entries, *numbered(order)])
        found = on_shelf(told)
        seen.add((found.left, found.short, found.price, tuple(lot.left for lot in found.lots)))
    assert len(seen) == 1


def test_an_odd_use_turns_no_shelf_over() -> None:
    bought = ("2026-04-19 product odd-one kind fertilizer", "2026-04-20 buy odd-one 1x 32floz $9")
    found = on_shelf(book(*bought, "2026-05-01 feed odd-one 2lb front"), "odd-one")
    assert found.liquid
    assert found.left == pytest.approx(32 * FLOZ)
    assert (found.unknown_uses, found.at_most) == (1, True)
