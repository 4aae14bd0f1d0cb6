"""The same active again before the label's days."""

import pytest

from journal.facts.actives import fallback
from journal.facts.house import number
from journal.reckon.label_uses import COUNTS, REPEATS, free_again
from tests.rules.treated import all_flags, flags, shed
from tests.scenario import book, day, judged, later, lawn, level, raised

ON = "2026-05-01"
RULE = "label-interval"


def again(days: int, label: str = 'repeat = "28 d"', second: str = "leaf-off 1floz front") -> dict[str, str]:
    """The second use so many days after the first, on its own day."""
    own = {"leaf-off": label} if label else {}
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, days)} treat {second}", on=shed(own))
    return flags(diary, later(ON, days), RULE)


@pytest.mark.parametrize(("days", "says"), [(1, "harm"), (27, "harm"), (28, ""), (60, "")])
def test_a_wait_of_28_days_is_over_on_day_28(days: int, says: str) -> None:
    assert again(days).get("leaf-off", "") == says


@pytest.mark.parametrize(("days", "says"), [(27, "loss"), (28, "")])
def test_a_blank_label_is_one_level_lower(days: int, says: str) -> None:
    found = again(days, "")
    assert found.get("leaf-off", "") == says


def test_it_says_that_the_label_was_not_entered() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 10)} treat leaf-off 1floz front", on=shed())
    flag = raised(diary, later(ON, 10), RULE)
    assert flag is not None
    assert flag.headline == "2,4-d again after 10 days; 28 days are wanted"
    assert "label not entered" in flag.why
    assert [(one.words, one.origin) for one in flag.numbers.values()] == [("28 d", "default")]


@pytest.mark.parametrize(
    ("product", "wait"),
    [("spring-wall 3lb", 60), ("leaf-off 1floz", 28), ("green-gate 3lb", 28), ("bare-ground 1floz", 14),
     ("grub-end 3lb", 90), ("spot-out 1floz", 14)],
)  # fmt: skip
def test_blanks_by_kind(product: str, wait: int) -> None:
    for days, says in ((wait - 1, "loss"), (wait, "")):
        diary = book(f"{ON} treat {product} front", f"{later(ON, days)} treat {product} front", on=shed())
        assert level(diary, later(ON, days), RULE) == says


def test_the_defaults_are_those_of_an_unknown_product() -> None:
    for kind, name in REPEATS.items():
        assert number(RULE, name).default == fallback(kind).repeat_days
        assert number("label-year-count", COUNTS[kind]).default == fallback(kind).max_per_year


def test_it_is_the_active_that_counts_whichever_product_holds_it() -> None:
    assert again(10, second="green-gate 3lb front") == {"green-gate": "harm"}
    assert again(10, second="spot-out 1floz front") == {}
    diary = book(f"{ON} treat leaf-mix 1floz front", f"{later(ON, 10)} feed green-gate 3lb front", on=shed())
    flag = raised(diary, later(ON, 10), RULE)
    assert flag is not None
    assert "leaf-mix and green-gate both hold 2,4-d" in flag.why


def test_the_longer_of_two_labels_holds() -> None:
    both = shed({"leaf-off": 'repeat = "14 d"', "leaf-mix": 'repeat = "30 d"'})
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 20)} treat leaf-mix 1floz front", on=both)
    assert flags(diary, later(ON, 20), RULE) == {"leaf-mix": "harm"}
    one = shed({"leaf-off": 'repeat = "14 d"'})
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 20)} treat leaf-mix 1floz front", on=one)
    assert flags(diary, later(ON, 20), RULE) == {"leaf-mix": "loss"}


def test_without_actives_the_product_itself_counts() -> None:
    lines = (f"{ON} treat plain-can 1floz front", f"{later(ON, 5)} treat plain-can 1floz front")
    assert flags(book(*lines, on=shed()), later(ON, 5), RULE) == {"plain-can": "loss"}


def test_what_nobody_knows_is_not_held_against_it() -> None:
    assert flags(book(f"{ON} treat unknown front", f"{later(ON, 5)} treat unknown front"), later(ON, 5), RULE) == {}


def test_passes_of_one_day_and_marked_parts_are_one_application() -> None:
    line = "treat leaf-off 1floz"
    own = shed({"leaf-off": 'repeat = "28 d"'})
    twice = book(f"{ON} {line} front", f"{ON} {line} front", on=own)
    assert flags(twice, ON, RULE) == {}
    parts = book(f"{ON} {line} part 1/2 front", f"{later(ON, 1)} {line} part 2/2 front", on=own)
    assert flags(parts, later(ON, 1), RULE) == {}
    same_part = book(f"{ON} {line} part 1/2 front", f"{later(ON, 1)} {line} part 1/2 front", on=own)
    assert flags(same_part, later(ON, 1), RULE) == {"leaf-off": "harm"}
    unmarked = book(f"{ON} {line} front", f"{later(ON, 1)} {line} front", on=own)
    assert flags(unmarked, later(ON, 1), RULE) == {"leaf-off": "harm"}


def test_each_part_waits_for_its_own_days() -> None:
    line = "treat leaf-off 1floz"
    own = shed({"leaf-off": 'repeat = "28 d"'})
    parts = (f"{ON} {line} part 1/2 front", f"{later(ON, 1)} {line} part 2/2 front")
    right = book(*parts, f"{later(ON, 28)} {line} part 1/2 front", f"{later(ON, 29)} {line} part 2/2 front", on=own)
    assert flags(right, later(ON, 29), RULE) == {}
    wrong = book(*parts, f"{later(ON, 28)} {line} front", on=own)
    assert flags(wrong, later(ON, 28), RULE) == {"leaf-off": "harm"}


def test_one_tank_of_two_products_is_one_use() -> None:
    assert flags(book(f"{ON} treat leaf-off 1floz + leaf-mix 1floz front", on=shed()), ON, RULE) == {}
    apart = book(f"{ON} treat leaf-off 1floz front", f"{ON} treat leaf-mix 1floz front", on=shed())
    assert flags(apart, ON, RULE) == {"leaf-mix": "loss"}


def test_a_spot_is_a_note() -> None:
    found = again(10, second="leaf-off 0.1floz spot 40sqft front")
    assert found == {"leaf-off-spot": "note"}
    own = shed({"leaf-off": 'repeat = "28 d"\nto_seed = "28 d"\nafter_seed = "3 mowings"\nmax_per_year = 9'})
    spot_first = book(f"{ON} treat leaf-off spot front", f"{later(ON, 5)} treat leaf-off 1floz front", on=own)
    assert flags(spot_first, later(ON, 5), RULE) == {"leaf-off-spot": "note"}


def test_it_clears_when_the_days_have_passed_and_at_the_latest_after_60() -> None:
    diary = book(
        f"{ON} treat leaf-off 1floz front", f"{later(ON, 10)} treat leaf-off 1floz front",
        on=shed({"leaf-off": 'repeat = "28 d"'}),
    )  # fmt: skip
    assert level(diary, later(ON, 27), RULE) == "harm"
    assert level(diary, later(ON, 28), RULE) == ""
    long = book(
        f"{ON} treat leaf-off 1floz front", f"{later(ON, 10)} treat leaf-off 1floz front",
        on=shed({"leaf-off": 'repeat = "200 d"'}),
    )  # fmt: skip
    assert level(long, later(ON, 69), RULE) == "harm"
    assert level(long, later(ON, 70), RULE) == ""


def test_each_zone_has_its_own_days() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 10)} treat leaf-off 1floz back", on=shed())
    assert level(diary, later(ON, 10), RULE, "front") == level(diary, later(ON, 10), RULE, "back") == ""


def test_the_owner_may_wait_longer_but_never_less() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 30)} treat leaf-off 1floz front", on=shed())
    assert level(diary, later(ON, 30), RULE) == ""
    stricter = book(f"{ON} set label-interval days-weed 35", on=diary)
    flag = raised(stricter, later(ON, 30), RULE)
    assert flag is not None
    assert [one.origin for one in flag.numbers.values()] == ["yours"]
    assert not number(RULE, "days-weed").allows(27)


def test_harm_holds_the_line_back_and_a_strike_clears_it() -> None:
    before = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": 'repeat = "28 d"'}))
    assert judged(before, later(ON, 10), "treat leaf-off 1floz front").holds_back
    assert not judged(before, later(ON, 28), "treat leaf-off 1floz front").holds_back


def test_a_starter_with_mesotrione_counts_for_the_next_use() -> None:
    own = shed({"seed-start": 'to_seed = "0 d"\nafter_seed = "0 d"\nrepeat = "28 d"\nmax_per_year = 2'})
    sown = book("2026-09-06 seed three-river 9lb front", "2026-09-06 feed seed-start 4lb front", on=own)
    assert level(sown, "2026-09-06", RULE) == ""
    assert level(book("2026-10-01 treat white-tip 0.1floz front", on=sown), "2026-10-01", RULE) == "harm"
    assert level(book("2026-10-04 treat white-tip 0.1floz front", on=sown), "2026-10-04", RULE) == ""


def test_from_when_on_the_label_leaves_it_free() -> None:
    history = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": 'repeat = "30 d"'}))
    mix = history.lawn(day(ON)).product("leaf-mix")
    assert mix is not None
    assert free_again(history.on("front", day(later(ON, 29))), mix) == later(ON, 30)
    assert free_again(history.on("front", day(later(ON, 30))), mix) is None
    assert free_again(history.on("back", day(later(ON, 2))), mix) is None
    assert free_again(lawn().on("front", day(ON)), mix) is None


def test_several_uses_that_are_too_soon_are_one_flag_a_product() -> None:
    diary = book(*(f"{later(ON, 5 * at)} treat leaf-off 1floz front" for at in range(4)), on=shed())
    found = all_flags(diary, later(ON, 15), RULE)
    assert len(found) == 1
    assert len(found[0].evidence) == 4
