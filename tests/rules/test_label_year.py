"""More uses in a year, and more of an active, than a label allows."""

from datetime import date

import pytest

from journal.reckon.label_amount import by_volume
from journal.reckon.label_year import free_of_count, uses_of_year
from tests.rules.treated import all_flags, flags, shed
from tests.scenario import book, day, judged, later, level, raised

COUNT, AMOUNT = "label-year-count", "label-year-amount"
TWICE = {"leaf-off": 'repeat = "1 d"\nmax_per_year = 2\nto_seed = "28 d"\nafter_seed = "3 mowings"'}
LINE = "treat leaf-off 1floz front"


def test_one_use_more_than_the_label_is_harm() -> None:
    two = book(f"2026-04-01 {LINE}", f"2026-06-01 {LINE}", on=shed(TWICE))
    assert level(two, "2026-06-01", COUNT) == ""
    flag = raised(book(f"2026-08-01 {LINE}", on=two), "2026-08-01", COUNT)
    assert flag is not None
    assert (flag.level, flag.subject) == ("harm", "leaf-off")
    assert flag.headline == "leaf-off used 3 times this year; 2 allowed by the label"
    assert [(one.words, one.origin) for one in flag.numbers.values()] == [("2", "label")]
    assert judged(two, "2026-08-01", LINE).holds_back


def test_it_stands_60_days_or_to_the_new_year() -> None:
    diary = book(*(f"2026-{on} {LINE}" for on in ("04-01", "06-01", "08-01")), on=shed(TWICE))
    assert level(diary, later("2026-08-01", 59), COUNT) == "harm"
    assert level(diary, later("2026-08-01", 60), COUNT) == ""
    late = book(*(f"2026-{on} {LINE}" for on in ("10-01", "11-01", "12-20")), on=shed(TWICE))
    assert level(late, "2026-12-31", COUNT) == "harm"
    assert level(late, "2027-01-01", COUNT) == "note"


def test_with_a_label_365_days_are_a_note() -> None:
    diary = book(f"2026-09-01 {LINE}", f"2026-10-15 {LINE}", f"2027-04-01 {LINE}", on=shed(TWICE))
    flag = raised(diary, "2027-04-01", COUNT)
    assert flag is not None
    assert flag.level == "note"
    assert "in 365 days" in flag.headline
    assert level(book(f"2026-09-01 {LINE}", f"2026-10-15 {LINE}", f"2027-09-01 {LINE}", on=shed(TWICE)),
                 "2027-09-01", COUNT) == ""  # fmt: skip


def test_day_364_is_in_the_year_and_day_365_is_not() -> None:
    for days, says in ((364, "note"), (365, "")):
        own = {"leaf-off": TWICE["leaf-off"].replace("= 2", "= 1")}
        diary = book(f"2026-03-01 {LINE}", f"{later('2026-03-01', days)} {LINE}", on=shed(own))
        assert level(diary, later("2026-03-01", days), COUNT) == says


@pytest.mark.parametrize(("product", "most"), [("leaf-off 1floz", 2), ("spring-wall 3lb", 2), ("grub-end 3lb", 1)])
def test_a_blank_label_is_a_loss_by_either_year(product: str, most: int) -> None:
    lines = [f"{later('2026-03-01', 95 * at)} treat {product} front" for at in range(most + 1)]
    assert level(book(*lines[:-1], on=shed()), later("2026-03-01", 95 * (most - 1)), COUNT) == ""
    assert level(book(*lines, on=shed()), later("2026-03-01", 95 * most), COUNT) == "loss"
    over_winter = [f"{later('2026-10-20', 95 * at)} treat {product} front" for at in range(most + 1)]
    assert level(book(*over_winter, on=shed()), later("2026-10-20", 95 * most), COUNT) == "loss"


def test_the_active_counts_whichever_product_holds_it() -> None:
    diary = book(
        "2026-04-01 feed green-gate 3lb front", f"2026-06-01 {LINE}", "2026-09-20 treat leaf-mix 1floz front", on=shed()
    )
    flag = raised(diary, "2026-09-20", COUNT)
    assert flag is not None
    assert flag.headline == "2,4-d used 3 times this year; 2 assumed, label not entered"
    assert "green-gate, leaf-off, leaf-mix" in flag.why
    assert flags(diary, "2026-09-20", COUNT) == {"leaf-mix": "loss"}


def test_spots_do_not_count_unless_the_label_counts_them() -> None:
    lines = [f"2026-{on} treat leaf-off 0.1floz spot 40sqft front" for on in ("04-01", "06-01", "08-01")]
    assert level(book(*lines, on=shed(TWICE)), "2026-08-01", COUNT) == ""
    counted = {"leaf-off": TWICE["leaf-off"] + "\nspot_counts = true"}
    assert level(book(*lines, on=shed(counted)), "2026-08-01", COUNT) == "note"
    mixed = book(*lines[:1], *(f"2026-{on} {LINE}" for on in ("05-01", "06-01", "08-01")), on=shed(counted))
    assert level(mixed, "2026-08-01", COUNT) == "harm"


def test_parts_and_a_tank_are_one_use() -> None:
    parts = book(
        f"2026-04-01 {LINE}", "2026-06-01 treat leaf-off 1floz part 1/2 front",
        "2026-06-02 treat leaf-off 1floz part 2/2 front", on=shed(TWICE),
    )  # fmt: skip
    assert level(parts, "2026-06-02", COUNT) == ""
    tank = book(f"2026-04-01 {LINE}", "2026-06-01 treat leaf-off 1floz + leaf-mix 1floz front", on=shed(TWICE))
    assert level(tank, "2026-06-01", COUNT) == ""


def test_the_owner_may_only_tighten_the_count() -> None:
    diary = book("2026-01-02 set label-year-count most 1", f"2026-04-01 {LINE}", f"2026-06-01 {LINE}", on=shed())
    flag = raised(diary, "2026-06-01", COUNT)
    assert flag is not None
    assert [one.origin for one in flag.numbers.values()] == ["yours"]


def test_the_shed_can_say_how_often_it_was_used_this_year() -> None:
    diary = book("2025-10-01 treat leaf-off 1floz front", f"2026-04-01 {LINE}", "2026-05-01 feed green-gate 3lb front",
                 on=shed())  # fmt: skip
    product = diary.lawn(day("2026-06-01")).product("leaf-off")
    assert product is not None
    assert uses_of_year(diary.on("front", day("2026-06-01")), product) == 2
    assert uses_of_year(diary.on("back", day("2026-06-01")), product) == 0


# amounts


def test_the_products_own_amount_in_a_year() -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "2 floz/k"'})
    lines = ("2026-04-01 treat leaf-mix 1floz front", "2026-06-01 treat leaf-mix 1floz front")
    assert level(book(*lines, on=own), "2026-06-01", AMOUNT) == ""
    over = book(*lines, "2026-08-01 treat leaf-mix 0.1floz front", on=own)
    flag = raised(over, "2026-08-01", AMOUNT)
    assert flag is not None
    assert flag.level == "harm"
    assert flag.headline == "2.1 fl oz/k of leaf-mix this year, more than 2 fl oz/k"


@pytest.mark.parametrize(("last", "says"), [("1.04floz", ""), ("1.05floz", "harm")])
def test_two_percent_are_rounding(last: str, says: str) -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "2 floz/k"'})
    diary = book("2026-04-01 treat leaf-mix 1floz front", f"2026-06-01 treat leaf-mix {last} front", on=own)
    assert level(diary, "2026-06-01", AMOUNT) == says


def test_mesotrione_of_a_starter_and_of_a_spray_are_added_up() -> None:
    """HortScience 53(11), 2018: 560 g/ha a year; of 4 lb/gal that is 0.367 fl oz per 1,000 sq ft."""
    label = {"white-tip": 'max_amount_per_year = "0.367 floz/k"\nrepeat = "1 d"\nmax_per_year = 9'}
    starter = "2026-09-06 feed seed-start 4lb front"
    spray = "2026-10-10 treat white-tip 0.28floz front"
    assert level(book(starter, "2026-10-10 treat white-tip 0.25floz front", on=shed(label)), "2026-10-10", AMOUNT) == ""
    flag = raised(book(starter, spray, on=shed(label)), "2026-10-10", AMOUNT)
    assert flag is not None
    assert (flag.level, flag.subject) == ("harm", "white-tip")
    assert "of mesotrione this year" in flag.headline
    assert "seed-start, white-tip" in flag.why


def test_a_blank_label_takes_what_is_published_and_is_a_loss() -> None:
    diary = book("2026-04-01 treat white-tip 0.2floz front", "2026-06-01 treat white-tip 0.15floz front", on=shed())
    assert level(diary, "2026-06-01", AMOUNT) == ""
    over = book("2026-08-01 treat white-tip 0.05floz front", on=diary)
    flag = raised(over, "2026-08-01", AMOUNT)
    assert flag is not None
    assert flag.level == "loss"
    assert "label not entered" in flag.why
    assert any("HortScience" in basis.words() for basis in flag.basis)


def test_with_a_label_365_days_of_amounts_are_a_note() -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "2 floz/k"\nrepeat = "1 d"\nmax_per_year = 9\nto_seed = "28 d"\n'
                'after_seed = "3 mowings"'})  # fmt: skip
    diary = book("2026-10-01 treat leaf-mix 1.5floz front", "2027-04-01 treat leaf-mix 1.5floz front", on=own)
    assert level(diary, "2027-04-01", AMOUNT) == "note"


def test_a_product_without_its_strength_is_named_and_not_added() -> None:
    label = {"white-tip": 'max_amount_per_year = "0.367 floz/k"'}
    own = shed(label, ('{name="mesotrione", percent=0.08}', '"mesotrione"'))
    diary = book("2026-09-06 feed seed-start 4lb front", "2026-10-10 treat white-tip 0.4floz front", on=own)
    flag = raised(diary, "2026-10-10", AMOUNT)
    assert flag is not None
    assert "seed-start could not be added" in flag.why


def test_a_limit_on_a_mixture_says_nothing_of_its_parts() -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "1 floz/k"'})
    diary = book("2026-04-01 treat leaf-mix 1floz front", "2026-07-01 treat leaf-off 1floz front", on=own)
    assert level(diary, "2026-07-01", AMOUNT) == ""


def test_halves_of_a_zone_are_not_added_and_spots_are_left_out() -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "1 floz/k"'})
    halves = book(*(f"2026-04-01 treat leaf-mix 0.5floz part {at}/2 front" for at in (1, 2)), on=own)
    assert level(halves, "2026-04-01", AMOUNT) == ""
    spots = book("2026-04-01 treat leaf-mix 1floz front", "2026-05-01 treat leaf-mix 1floz spot 40sqft front", on=own)
    assert level(spots, "2026-05-01", AMOUNT) == ""
    counted = shed({"leaf-mix": 'max_amount_per_year = "1 floz/k"\nspot_counts = true'})
    lines = ("2026-04-01 treat leaf-mix 1floz front", "2026-05-01 treat leaf-mix 0.1floz spot 40sqft front")
    assert level(book(*lines, on=counted), "2026-05-01", AMOUNT) == "harm"


def test_a_use_without_an_amount_raises_nothing_here() -> None:
    own = shed({"leaf-mix": 'max_amount_per_year = "1 floz/k"'})
    diary = book("2026-04-01 treat leaf-mix front", "2026-05-01 treat leaf-mix front", on=own)
    assert all_flags(diary, "2026-05-01", AMOUNT) == []


def test_what_is_measured_by_volume() -> None:
    products = {one.name: one for one in shed().lawn(day("2026-06-01")).products}
    assert by_volume(products["leaf-mix"])
    assert not by_volume(products["seed-start"])


def test_from_when_on_one_more_use_breaks_no_count() -> None:
    once = book(f"2026-04-01 {LINE}", on=shed(TWICE))
    twice = book(f"2026-06-01 {LINE}", on=once)
    product = once.lawn(day("2026-06-02")).product("leaf-off")
    assert product is not None
    assert free_of_count(once.on("front", day("2026-06-02")), product) is None
    assert free_of_count(twice.on("front", day("2026-06-02")), product) == day("2027-04-01")
    assert free_of_count(twice.on("front", day("2027-04-01")), product) is None
    assert level(book(f"2027-03-31 {LINE}", on=twice), "2027-03-31", COUNT) == "note"
    assert level(book(f"2027-04-01 {LINE}", on=twice), "2027-04-01", COUNT) == ""
    never = shed({"leaf-off": "max_per_year = 0"})
    banned = never.lawn(day("2026-06-02")).product("leaf-off")
    assert banned is not None
    assert free_of_count(never.on("front", day("2026-06-02")), banned) == date.max
