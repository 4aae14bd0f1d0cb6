"""The story of a renovation: the front sown on 6 September, the back three weeks later, and the year that follows."""

from collections.abc import Iterator
from datetime import date, timedelta

from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.watering import Watering
from tests.scenario import day

IN = 25.4
LB = 453.59237
BOTH = ("front", "back")


def _mowings(zones: tuple[str, ...], *days: str, height: float = 3.0, clippings: str = "return") -> Iterator[Entry]:
    for text in days:
        yield Mowing(date=day(text), zones=zones, height_mm=height * IN, clippings=clippings)


def _damp(zone: str, first: str, last: str) -> Iterator[Entry]:
    at = day(first)
    while at <= day(last):
        yield Watering(date=at, zones=(zone,), minutes=10)
        yield Watering(date=at, zones=(zone,), minutes=10)
        at += timedelta(1)


def _summer() -> Iterator[Entry]:
    yield from _mowings(BOTH, "2026-06-29", "2026-07-09", "2026-07-20", "2026-08-03", "2026-08-14", "2026-08-22")
    yield from _mowings(("back",), "2026-08-31", "2026-09-10", "2026-09-18")
    yield Intention(
        date=day("2026-07-22"), zones=("front",), what="seed", product="three-river-blend", target=day("2026-09-05")
    )
    yield Intention(
        date=day("2026-07-22"), zones=("back",), what="seed", product="three-river-blend", target=day("2026-09-05")
    )


def _front() -> Iterator[Entry]:
    yield from _mowings(("front",), "2026-09-04", height=1.5, clippings="bag")
    yield Cultivation(date=day("2026-09-05"), zones=("front",), what="aerate", passes=2)
    yield Seeding(date=day("2026-09-06"), zones=("front",), product="three-river-blend", amount_g=9.6 * LB)
    yield Feeding(date=day("2026-09-07"), zones=("front",), product="oat-hill-starter", amount_g=8.3 * LB)
    yield from _damp("front", "2026-09-06", "2026-10-04")
    yield Sighting(date=day("2026-09-16"), zones=("front",), subject="emerged")
    yield Height(date=day("2026-10-05"), zones=("front",), height_mm=3.6 * IN)
    yield from _mowings(("front",), "2026-10-05", "2026-10-13", "2026-10-22", "2026-11-03", clippings="bag")


def _back() -> Iterator[Entry]:
    yield Intention(
        date=day("2026-09-14"), zones=("back",), what="seed", product="three-river-blend", target=day("2026-09-26")
    )
    yield Cultivation(date=day("2026-09-26"), zones=("back",), what="aerate", passes=2)
    yield Seeding(date=day("2026-09-27"), zones=("back",), product="three-river-blend", amount_g=12.4 * LB)
    yield from _damp("back", "2026-09-27", "2026-10-12")
    yield Feeding(date=day("2026-10-07"), zones=("back",), product="oat-hill-starter", amount_g=10.7 * LB)
    yield from _damp("back", "2026-10-14", "2026-10-25")
    yield from _mowings(("back",), "2026-10-29", "2026-11-08", clippings="bag")


def _next_year() -> Iterator[Entry]:
    yield from _mowings(("front",), "2027-04-26", "2027-05-04", "2027-05-11", "2027-05-19", "2027-05-31")
    yield from _mowings(("back",), "2027-04-26", "2027-05-04", "2027-05-11", "2027-05-19", "2027-05-27")
    yield Feeding(date=day("2027-05-29"), zones=BOTH, product="pond-ridge", amount_g=15.0 * LB)


def diary() -> tuple[Entry, ...]:
    """Every entry of the story, oldest first."""
    found = [*_summer(), *_front(), *_back(), *_next_year()]
    return tuple(sorted(found, key=lambda entry: entry.date))


def mondays(first: date, last: date) -> Iterator[date]:
    """Every Monday from the first to the last day."""
    at = first + timedelta((7 - first.weekday()) % 7)
    while at <= last:
        yield at
        at += timedelta(7)
