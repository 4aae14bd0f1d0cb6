"""A blade that has lost its edge.

Every 10 hours of use: K-State Research & Extension, Keep mower blade sharpened for a healthy lawn, 2020. Twelve cuts
where no times are kept, and a sharp blade for the first cut: common practice, no source.
"""

from journal.facts.house import number
from tests.scenario import book, later, lawn, level, raised


def cuts(count: int, words: str = "mow 3in front") -> list[str]:
    return [f"{later('2026-04-20', 7 * at)} {words}" for at in range(count)]


def test_the_published_ten_hours() -> None:
    assert number("mow-blade", "minutes").default == 10 * 60


def test_twelve_cuts_since_the_book_was_begun() -> None:
    assert level(book(*cuts(11)), later("2026-04-20", 70), "mow-blade") == ""
    note = raised(book(*cuts(12)), later("2026-04-20", 77), "mow-blade")
    assert note is not None
    assert note.why == "12 cuts and no sharpening logged"


def test_sharpening_or_a_new_blade_clears_it() -> None:
    worn = book(*cuts(12))
    for line in ("2026-07-07 sharpen", "2026-07-07 blade new"):
        assert level(book(line, on=worn), "2026-07-07", "mow-blade") == ""
    again = book("2026-06-01 sharpen", *cuts(18))  # 11 since: the cut of the same day is not counted
    assert level(again, later("2026-04-20", 7 * 17), "mow-blade") == ""
    again = book(*cuts(19)[18:], on=again)
    assert level(again, later("2026-04-20", 7 * 18), "mow-blade") == "note"


def test_mowings_are_dates_and_not_zones() -> None:
    both = book(*cuts(6, "mow 3in front"), *cuts(6, "mow 3in back"))
    assert level(both, later("2026-04-20", 35), "mow-blade") == ""
    assert level(book(*cuts(12, "mow 3in front back")), later("2026-04-20", 77), "mow-blade", "back") == "note"


def test_ten_hours_where_times_are_kept() -> None:
    assert level(book(*cuts(7, "mow 3in 75min front")), later("2026-04-20", 42), "mow-blade") == ""
    assert level(book(*cuts(8, "mow 3in 75min front")), later("2026-04-20", 49), "mow-blade") == "note"
    assert level(book(*cuts(15, "mow 3in 30min front")), later("2026-04-20", 98), "mow-blade") == ""


def test_a_service_mows_with_its_own_blade() -> None:
    service = lawn(('name = "front"', 'name = "front"\nmowing = "service"'))
    assert level(book(*cuts(14), on=service), later("2026-04-20", 91), "mow-blade", "back") == ""


def test_winter_is_quiet() -> None:
    worn = book(*cuts(30))
    assert level(worn, "2026-11-10", "mow-blade") == "note"
    assert level(worn, "2026-11-11", "mow-blade") == ""


SOWN = "2026-08-25 seed three-river 9lb front"
FIRST = "2026-09-22 mow 3in bag front"


def test_the_first_cut_of_new_grass_wants_a_blade_sharpened_within_60_days() -> None:
    assert level(book(SOWN, FIRST), "2026-09-22", "mow-blade") == "note"
    assert level(book("2026-07-25 sharpen", SOWN, FIRST), "2026-09-22", "mow-blade") == ""
    assert level(book("2026-07-24 sharpen", SOWN, FIRST), "2026-09-22", "mow-blade") == "note"


def test_it_clears_by_sharpening_or_in_four_weeks() -> None:
    dull = book(SOWN, FIRST)
    assert level(dull, later("2026-09-22", 27), "mow-blade") == "note"
    assert level(dull, later("2026-09-22", 28), "mow-blade") == ""
    assert level(book("2026-09-24 sharpen", on=dull), "2026-09-24", "mow-blade") == ""


def test_a_book_younger_than_60_days_is_not_asked() -> None:
    assert level(book(SOWN, FIRST, on=lawn(set_up="2026-07-25")), "2026-09-22", "mow-blade") == ""
    assert level(book(SOWN, FIRST, on=lawn(set_up="2026-07-24")), "2026-09-22", "mow-blade") == "note"


def test_the_owners_own_numbers() -> None:
    assert level(book("2026-04-01 set mow-blade mowings 5x", *cuts(5)), later("2026-04-20", 28), "mow-blade") == "note"
