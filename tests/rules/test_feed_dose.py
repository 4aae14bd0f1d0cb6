"""Too much nitrogen at once (Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023)."""

import pytest

from journal.standing import standing
from tests.scenario import LAWN, book, later, lawn, level, raised

ON = "2026-05-20"


@pytest.mark.parametrize(
    ("amount", "says"),
    [("2.9lb/k", ""), ("2.95lb/k", ""), ("3.1lb/k", "note"), ("4.2lb/k", "note"), ("4.3lb/k", "loss"), ("2lb/k", "")],
)
def test_quick_nitrogen(amount: str, says: str) -> None:
    diary = book(f"{ON} feed pond-ridge {amount} front")
    assert level(diary, ON, "feed-dose") == says
    assert level(diary, later(ON, 29), "feed-dose") == says
    assert level(diary, later(ON, 30), "feed-dose") == ""


@pytest.mark.parametrize(
    ("amount", "says"), [("3.7lb/k", ""), ("4lb/k", "note"), ("6.2lb/k", "note"), ("6.5lb/k", "loss")]
)
def test_mostly_slow_nitrogen(amount: str, says: str) -> None:
    assert level(book(f"{ON} feed slow-oak {amount} front"), ON, "feed-dose") == says


def test_two_bags_on_one_day_are_one_feeding() -> None:
    bag = "feed pond-ridge 2.5lb/k front"
    assert level(book(f"{ON} {bag}", f"{ON} {bag}"), ON, "feed-dose") == "loss"
    apart = book(f"{ON} {bag}", f"{later(ON, 1)} {bag}")
    assert level(apart, later(ON, 1), "feed-dose") == ""


def test_seedlings_take_less() -> None:
    seed = "2026-09-06 seed three-river 9lb front"
    assert level(book(seed, "2026-10-05 feed pond-ridge 2.5lb/k front"), "2026-10-05", "feed-dose") == "note"
    assert level(book(seed, "2026-10-05 feed pond-ridge 2lb/k front"), "2026-10-05", "feed-dose") == ""
    assert level(book("2026-10-05 feed pond-ridge 2.5lb/k front"), "2026-10-05", "feed-dose") == ""


def test_what_is_not_known_or_a_spot_is_not_judged() -> None:
    assert level(book(f"{ON} feed pond-ridge front"), ON, "feed-dose") == ""
    assert level(book(f"{ON} feed pond-ridge 1lb spot 20sqft front"), ON, "feed-dose") == ""


def test_the_owners_own_number() -> None:
    diary = book(f"{ON} set feed-dose most-soluble 0.5lb/k", f"{ON} feed pond-ridge 2.5lb/k front")
    assert level(diary, ON, "feed-dose") == "note"


@pytest.mark.parametrize(("amount", "says"), [("3.75lb/k", "note"), ("3.77lb/k", "note"), ("3.8lb/k", "harm")])
def test_a_local_limit_is_harm_from_the_second_decimal(amount: str, says: str) -> None:
    here = lawn(toml=LAWN.replace('name = "North Lane"', 'name = "North Lane"\nlocal_most_n = "0.9lb/k"'))
    flag = raised(book(f"{ON} feed pond-ridge {amount} front", on=here), ON, "feed-dose")
    assert flag is not None
    assert flag.level == says
    if says == "harm":
        assert flag.numbers["limit"].origin == "local rule"


def test_local_rules_that_are_not_known_are_named_once_for_the_lawn() -> None:
    diary = book(f"{ON} set local_rules our-town")
    (flag,) = [f for f in standing(diary, later(ON, 0)).flags if f.rule == "local-rules-unknown"]
    assert (flag.level, flag.zones) == ("note", ("front", "back"))
    assert "nothing of it is watched" in flag.why
    assert "local authority" in flag.do
    assert level(book(f"{ON} set local_rules none", on=diary), ON, "local-rules-unknown") == ""
    assert level(book(), ON, "local-rules-unknown") == ""


def test_known_ones_raise_no_such_note() -> None:
    assert level(book(f"{ON} set local_rules us-wi"), ON, "local-rules-unknown") == ""


def test_soluble_by_a_share_that_was_never_entered_is_one_level_lower_and_says_so() -> None:
    here = lawn(toml=LAWN.replace('name = "North Lane"', 'name = "North Lane"\nlocal_rules = "us-md"'))
    unsaid = raised(book(f"{ON} feed pond-ridge 3.34lb/k front", on=here), ON, "feed-dose")
    assert unsaid is not None
    assert unsaid.level == "loss"
    assert "`set pond-ridge slow 20% of n`" in unsaid.why
    said = raised(book(f"{ON} set pond-ridge slow 0% of n", f"{ON} feed pond-ridge 3.34lb/k front", on=here), ON,
                  "feed-dose")  # fmt: skip
    assert said is not None
    assert said.level == "harm"
    assert "not entered" not in said.why


def test_the_owners_own_number_is_not_put_in_the_mouth_of_the_law() -> None:
    for place in ("us-md", "none"):
        own = f'name = "North Lane"\nlocal_rules = "{place}"\nlocal_most_n = "0.5lb/k"'
        here = lawn(toml=LAWN.replace('name = "North Lane"', own))
        flag = raised(book(f"{ON} feed pond-ridge 2.5lb/k front", on=here), ON, "feed-dose")
        assert flag is not None
        assert "the number is your own" in flag.why
        assert "Maryland" not in flag.why
