"""Seed on ground that was not opened: common practice; seed is covered 0.1 to 0.3 in deep (Ohio State Univ. Extension,
Reseeding thin patches, 2022).
"""

import pytest

from tests.scenario import book, later, lawn, level, raised

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 6lb front"


def test_nothing_was_done_before() -> None:
    flag = raised(book(SEED), SOWN, "seed-unopened")
    assert flag is not None
    assert (flag.level, flag.clears_on) == ("note", later(SOWN, 30))
    assert [level(book(SEED), later(SOWN, at), "seed-unopened") for at in (29, 30)] == ["note", ""]


@pytest.mark.parametrize("work", ["aerate 2x", "dethatch", "rake", "topdress 0.25in"])
@pytest.mark.parametrize(("days", "opens"), [(14, False), (13, True), (0, True)])
def test_opened_in_the_fourteen_days_before(work: str, days: int, opens: bool) -> None:
    diary = book(f"{later(SOWN, -days)} {work} front", SEED)
    assert level(diary, SOWN, "seed-unopened") == ("" if opens else "note")


def test_slits_bare_soil_and_spots_want_no_more() -> None:
    assert level(book(f"{SOWN} seed three-river slit 6lb front"), SOWN, "seed-unopened") == ""
    assert level(book(f"{SOWN} seed three-river new 6lb front"), SOWN, "seed-unopened") == ""
    assert level(book(f"{SOWN} seed three-river 0.4lb spot 40sqft front"), SOWN, "seed-unopened") == ""


def test_what_it_advises_clears_it() -> None:
    for work in ("rake", "topdress 0.25in"):
        assert level(book(SEED, f"{later(SOWN, 2)} {work} front"), later(SOWN, 2), "seed-unopened") == ""
    assert level(book(SEED, f"{later(SOWN, 2)} aerate front"), later(SOWN, 2), "seed-unopened") == "note"


def test_another_zone_was_opened() -> None:
    assert level(book("2026-09-05 aerate 2x back", SEED), SOWN, "seed-unopened") == "note"


def test_what_was_done_before_the_book_began_is_not_asked() -> None:
    for begun, expected in (("2026-08-24", "note"), ("2026-08-25", "")):
        assert level(book(SEED, on=lawn(set_up=begun)), SOWN, "seed-unopened") == expected


def test_the_owners_own_days() -> None:
    diary = book("2026-08-01 set seed-unopened before-days 30", "2026-08-10 aerate 2x front", SEED)
    assert level(diary, SOWN, "seed-unopened") == ""
