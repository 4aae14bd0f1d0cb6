"""The story of a renovation: weeds knocked back in July, the front sown on 6 September, the back three weeks later, and
the year that follows. Every line as it was typed on its day.
"""

from collections.abc import Iterator
from datetime import date, timedelta

from journal.season.history import History
from tests.plan.garden import PRODUCTS, history
from tests.scenario import book, later

SET_UP = "2026-06-28"
SHED: dict[str, dict[str, str]] = PRODUCTS | {
    "leaf-off": {
        "kind": "weed", "actives": "2,4-d", "form": "liquid", "rate": "1.1floz/k 1.5floz/k", "rain_free": "24h",
        "reentry": "dry", "repeat": "30d", "max_per_year": "2", "to_seed": "28d", "after_seed": "3 mowings",
    },
    "spring-wall": {
        "kind": "pre-emergent", "actives": "prodiamine", "form": "granule", "rate": "2lb/k 3lb/k",
        "water_in": "0.5in", "reentry": "dry", "repeat": "60d", "max_per_year": "2",
        "to_seed": "120d", "after_seed": "60d 4 mowings",
    },
}  # fmt: skip


def _mown(words: str, *days: str) -> list[str]:
    return [f"{day} mow {words}" for day in days]


def _damp(zone: str, first: str, last: str) -> Iterator[str]:
    at = later(first, 0)
    while at <= later(last, 0):
        yield from (f"{at} water 10min {zone}", f"{at} water 10min {zone}")
        at += timedelta(1)


def _summer() -> Iterator[str]:
    yield from _mown("3in front back", "2026-06-29", "2026-07-09", "2026-07-20", "2026-08-03", "2026-08-14")
    yield "2026-07-05 see dandelion front back"
    yield "2026-07-11 photo gate-0711.jpg from gate front"
    yield "2026-07-15 soil ph 6.4 p low k 95ppm front back"
    yield "2026-07-10 intend seed three-river-blend 2026-09-05 front back"
    yield "2026-07-28 treat leaf-off 1.1floz/k front back"
    yield "2026-07-28 see dry front back"
    yield "2026-08-13 photo gate-0813.jpg from gate front"
    yield from _mown("3in front back", "2026-08-22")
    yield from _mown("3in back", "2026-08-31", "2026-09-10", "2026-09-18")


def _front() -> Iterator[str]:
    yield "2026-09-04 mow 1.5in bag front"
    yield "2026-09-05 aerate 2x front"
    yield "2026-09-06 seed three-river-blend 9.6lb front"
    yield "2026-09-07 feed oat-hill-starter 8.3lb front"
    yield from _damp("front", "2026-09-06", "2026-10-04")
    yield "2026-09-16 see emerged front"
    yield "2026-09-18 photo gate-0918.jpg from gate front"
    yield "2026-10-02 sharpen"
    yield "2026-10-05 height 3.6in front"
    yield from _mown("3in bag front", "2026-10-05", "2026-10-13", "2026-10-22", "2026-11-03")
    yield "2026-10-10 see dandelion front"
    yield "2026-10-31 treat leaf-off 1.1floz/k front"
    yield "2026-10-31 see dry front"


def _back() -> Iterator[str]:
    yield "2026-09-14 intend seed three-river-blend 2026-09-26 back"
    yield "2026-09-26 aerate 2x back"
    yield "2026-09-27 seed three-river-blend 12.4lb back"
    yield from _damp("back", "2026-09-27", "2026-10-12")
    yield "2026-10-07 feed oat-hill-starter 10.7lb back"
    yield from _damp("back", "2026-10-14", "2026-10-25")
    yield from _mown("3in bag back", "2026-10-29", "2026-11-08")


def _next_year() -> Iterator[str]:
    yield "2027-04-17 sharpen"
    yield "2027-04-24 photo gate-0424.jpg from gate front"
    yield "2027-04-27 treat spring-wall 4.8lb front"
    yield "2027-04-28 water 50min front"
    yield from _mown("3in front", "2027-04-26", "2027-05-04", "2027-05-11", "2027-05-19", "2027-05-31")
    yield from _mown("3in back", "2027-04-26", "2027-05-04", "2027-05-11", "2027-05-19", "2027-05-27")
    yield "2027-05-29 feed pond-ridge 15lb front back"


def story() -> History:
    """The book with every line of the story, oldest first."""
    lines = sorted((*_summer(), *_front(), *_back(), *_next_year()), key=lambda line: line[:10])
    return book(*lines, on=history([], products=SHED, set_up=SET_UP))


def mondays(first: date, last: date) -> Iterator[date]:
    """Every Monday from the first to the last day."""
    at = first + timedelta((7 - first.weekday()) % 7)
    while at <= last:
        yield at
        at += timedelta(7)
