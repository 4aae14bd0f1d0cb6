"""What is worked out once for a zone and a day is forgotten with the history it came from."""

from journal.season.history import KEPT_DAYS, Past
from journal.season.remembered import remembered
from journal.season.stand import sown
from tests.scenario import book, day, later

SOWN = book("2026-09-06 seed three-river 9lb front")


def test_work_is_done_once_for_each_zone_and_day() -> None:
    asked: list[tuple[str, int]] = []

    @remembered
    def work(past: Past) -> None:
        asked.append((past.zone, past.day))

    for zone, on in (("front", 6), ("front", 6), ("back", 6), ("front", 7), ("back", 6)):
        work(SOWN.on(zone, day(f"2026-09-0{on}")))
    assert [zone for zone, _ in asked] == ["front", "back", "front"]


def test_a_book_with_one_more_line_is_asked_anew() -> None:
    on = day("2026-09-20")
    assert sown(SOWN.on("back", on)) is None
    more = book("2026-09-08 seed three-river 9lb back", on=SOWN)
    assert sown(more.on("back", on)) is not None
    assert sown(SOWN.on("back", on)) is None


def test_it_forgets_before_it_fills_the_memory() -> None:
    history = book("2026-09-06 seed three-river 9lb front")
    for ahead in range(KEPT_DAYS + 5):
        sown(history.on("front", later("2026-09-06", ahead)))
    assert len(history._kept) <= KEPT_DAYS
