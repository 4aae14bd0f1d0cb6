"""What nobody knows of what was put down."""

import pytest

from tests.scenario import book, judged, later, lawn, level, raised

RULE = "unknown-treatment"


def test_an_unknown_product_can_be_written_down_and_says_what_is_assumed() -> None:
    found = judged(book(), "2026-04-15", "treat unknown by service front")
    (flag,) = (one for one in found.raised if one.rule == RULE)
    assert flag.level == "note"
    assert "seed waits until Wed 11 Nov" in flag.why
    assert "4 mowings" in flag.why
    assert "until Wed 13 May" in flag.why


def test_it_stands_thirty_days_or_until_the_product_is_named() -> None:
    diary = book("2026-04-15 treat unknown by service front")
    assert (level(diary, later("2026-04-15", 29), RULE), level(diary, later("2026-04-15", 30), RULE)) == ("note", "")
    assert level(book("2026-04-15 treat leaf-off 2floz front"), "2026-04-15", RULE) == ""
    assert level(book("2026-04-15 treat unknown spot front"), "2026-04-15", RULE) == ""


@pytest.mark.parametrize(("set_up", "found"), [("2026-02-08", ""), ("2026-02-09", "note"), ("2026-08-20", "note")])
def test_the_first_sowing_soon_after_the_book_begins(set_up: str, found: str) -> None:
    diary = book("2026-09-06 seed three-river 9lb front", on=lawn(set_up=set_up))
    assert level(diary, "2026-09-06", RULE) == found


def test_it_names_the_day_before_which_nothing_is_known() -> None:
    diary = book("2026-09-06 seed three-river 9lb front", on=lawn(set_up="2026-08-20"))
    flag = raised(diary, "2026-09-06", RULE)
    assert flag is not None
    assert flag.headline == "what was put down before Thu 20 Aug is not known"
    assert level(diary, later("2026-09-06", 29), RULE) == "note"
    assert level(diary, later("2026-09-06", 30), RULE) == ""


def test_an_answer_ends_it() -> None:
    diary = book("2026-09-06 seed three-river 9lb front", on=lawn(set_up="2026-08-20"))
    answered = book("2026-09-07 set treatments_since 2025-08-20", on=diary)
    assert level(answered, "2026-09-07", RULE) == ""
    logged = book("2026-01-15 treat leaf-off 2floz front", on=diary)
    assert level(logged, "2026-09-07", RULE) == ""


def test_only_the_first_sowing_and_no_spot() -> None:
    young = lawn(set_up="2026-05-01")
    later_one = book("2026-05-10 seed three-river 9lb front", "2026-09-06 seed three-river 9lb front", on=young)
    assert level(later_one, "2026-09-06", RULE) == ""
    assert level(book("2026-05-10 seed three-river 1lb spot 40sqft front", on=young), "2026-05-10", RULE) == ""
