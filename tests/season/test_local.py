"""A lawn under local rules: which days are closed, what sowing is a reason for, how much may be offered."""

import pytest

from journal.line.settings import check_fact
from journal.record.lawn import Lawn
from journal.record.refusal import Refusal
from journal.season.local import (
    bars_phosphorus,
    closed,
    closed_to_starter,
    closing,
    local_rules,
    most_n,
    most_soluble_n,
    soil_test_months,
    year_n,
)
from tests.scenario import book, day, draft, lawn


def under(*words: str) -> Lawn:
    """A lawn of which these words were set."""
    return book(*(f"2026-04-01 set {one}" for one in words)).lawn(day("2026-04-01"))


def test_without_rules_nothing_is_bound() -> None:
    for ground in (under(), under("local_rules none"), under("local_rules our-town")):
        assert local_rules(ground) is None
        assert not closed(ground, day("2026-12-24"))
        assert not closed_to_starter(ground, day("2026-12-24"))
        assert not bars_phosphorus(ground, None)
        assert (most_n(ground, 4.0), most_soluble_n(ground, 3.0), year_n(ground, 12.0)) == (4.0, 3.0, 12.0)
        assert soil_test_months(ground, 36) == 36


def test_a_set_by_name_in_whatever_case() -> None:
    rules = local_rules(under("local_rules US-VT"))
    assert rules is not None
    assert rules.place == "Vermont"
    assert closed(under("local_rules us-vt"), day("2028-02-29"))
    assert not closed(under("local_rules us-vt"), day("2028-04-01"))


def test_phosphate_alone_is_closed_in_connecticut() -> None:
    ground = under("local_rules us-ct")
    assert not closed(ground, day("2026-12-24"))
    assert closed_to_starter(ground, day("2026-12-24"))
    found = closing(ground, day("2027-03-10"), nitrogen=False, phosphorus=True)
    assert found is not None
    assert not found.confirmed


@pytest.mark.parametrize(("key", "over", "new"), [
    ("us-ma", False, False), ("us-wa", False, False), ("us-vt", True, False), ("us-ny", True, False),
    ("us-fl-pinellas", True, True), ("us-nh", True, True),
    ("us-il", False, False), ("us-va", False, False), ("us-fl", False, False),
])  # fmt: skip
def test_sowing_as_a_reason_for_phosphorus(key: str, over: bool, new: bool) -> None:
    ground = under(f"local_rules {key}")
    seeded = [draft(lawn(), f"2026-09-06 seed three-river 9lb front{how}") for how in ("", " new")]
    assert bars_phosphorus(ground, None) is over
    assert bars_phosphorus(ground, seeded[0]) is over  # type: ignore[arg-type]
    assert bars_phosphorus(ground, seeded[1]) is new  # type: ignore[arg-type]


def test_illinois_speaks_to_those_for_hire_and_to_owners_not_at_all() -> None:
    # 415 ILCS 65/5a
    ground = under("local_rules us-il")
    rules = local_rules(ground)
    assert rules is not None
    assert rules.phosphorus is not None
    assert rules.heeds(rules.phosphorus) is None
    assert soil_test_months(ground, 30) == 30


def test_ones_own_numbers_count_with_a_set_and_without() -> None:
    own = ("local_closed 12-01 03-01", "local_most_n 0.5lb/k", "local_most_soluble 0.3lb/k", "local_year_n 1.5lb/k",
           "local_test_months 12", "local_seeding no")  # fmt: skip
    for ground in (under(*own), under("local_rules none", *own), under("local_rules us-il", *own),
                   under("local_rules us-vt", *own), under("local_rules our-town", *own)):  # fmt: skip
        assert closed(ground, day("2027-03-01"))
        assert not closed(ground, day("2027-03-02"))
        assert most_n(ground, 9.0) == pytest.approx(0.5 * 4.882428)
        assert most_soluble_n(ground, 9.0) == pytest.approx(0.3 * 4.882428)
        assert year_n(ground, 20.0) == pytest.approx(1.5 * 4.882428)
        assert soil_test_months(ground, 36) == 12
        assert bars_phosphorus(ground, None)
    alone, named = local_rules(under(*own)), local_rules(under("local_rules us-vt", *own))
    assert alone is not None
    assert named is not None
    assert (alone.place, named.place) == ("your own local rules", "Vermont")
    assert named.least_slow_share is not None


def test_an_offer_is_never_raised_by_a_rule() -> None:
    assert most_n(under("local_rules us-fl-pinellas"), 4.0) == 4.0


@pytest.mark.parametrize(
    ("key", "text", "value"),
    [("local_slow", "20%", 20), ("local_slow", "20% of n", 20), ("local_test_months", "36", 36),
     ("local_buffer", "25ft", 7620), ("local_seeding", "yes", True)],
)  # fmt: skip
def test_the_words_of_ones_own_numbers(key: str, text: str, value: object) -> None:
    assert check_fact("lawn", key, text) == value


@pytest.mark.parametrize(
    ("key", "text"),
    [("local_closed", "12-01"), ("local_closed", "12-32 03-01"), ("local_most_n", "0.9lb"), ("local_most_n", "0lb/k"),
     ("local_slow", "101%"), ("local_test_months", "0"), ("local_test_months", "1.5"), ("local_buffer", "25"),
     ("local_seeding", "perhaps")],
)  # fmt: skip
def test_words_that_cannot_be_one(key: str, text: str) -> None:
    with pytest.raises(Refusal):
        check_fact("lawn", key, text)
