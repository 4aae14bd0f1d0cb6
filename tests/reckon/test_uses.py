"""What counts as a use of a weed, insect or disease product."""

from datetime import date

from journal.reckon.uses import uses
from tests.scenario import book


def _uses(*lines: str) -> list[tuple[str, str, bool, bool]]:
    past = book(*lines).on("front", book(*lines).oldest or book().set_up)  # type: ignore[arg-type]
    return [(one.name, one.kind, one.spray, one.leaf_applied) for one in uses(past, past.day - 30)]


def test_each_product_of_a_tank_is_a_use() -> None:
    assert _uses("2026-05-04 treat leaf-off 2floz + unknown front") == [
        ("leaf-off", "weed", True, True),
        ("unknown", "pre-emergent", True, False),
    ]


def test_weed_and_feed_logged_as_a_feeding_is_a_use_and_a_plain_fertilizer_is_none() -> None:
    assert _uses("2026-05-04 feed green-gate 6lb front") == [("green-gate", "weed-and-feed", False, True)]
    assert _uses("2026-05-04 feed pond-ridge 6lb front") == []


def test_granules_are_no_spray() -> None:
    assert _uses("2026-05-04 treat spring-wall 6lb front") == [("spring-wall", "pre-emergent", False, False)]


def test_what_works_on_the_leaves_is_a_spray_or_weed_and_feed() -> None:
    lines = {
        "treat leaf-off 2floz front": True,
        "treat green-gate 6lb front": True,
        "feed green-gate 6lb front": True,
        "treat spring-wall 6lb front": False,
        "treat unknown front": False,
    }
    for line, says in lines.items():
        past = book(f"2026-05-04 {line}").on("front", date(2026, 5, 4))
        assert [one.on_leaves for one in uses(past, past.day)] == [says], line


def test_older_uses_than_a_year_are_found_too() -> None:
    diary = book("2024-05-04 treat leaf-off 2floz front", "2026-05-04 treat leaf-off 2floz front")
    past = diary.on("front", date(2026, 6, 1))
    assert [len(uses(past, past.day - back)) for back in (10, 30, 399, 400, 900)] == [0, 1, 1, 1, 2]
