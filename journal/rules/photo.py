"""A point from which no picture was taken for a while."""

from datetime import timedelta

from journal.reckon.photo_points import KNOWN_DAYS, PhotoPoint, photo_points
from journal.record.kinds.photo import Photo
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since, seasons
from journal.rules.words import days, on
from journal.season.growth import began, growing
from journal.season.history import Past

STANDS_DAYS = 60
"""Then it is taken for given up until the next picture or the next season."""


@rule(
    "photo-gap",
    levels=(Level.NOTE,),
    watches=(Photo, Sighting, Weather),
    turns=(
        after(Photo, "days", ("days", STANDS_DAYS), KNOWN_DAYS - 1),
        after(Sighting),
        at(seasons, "days", ("days", STANDS_DAYS)),
        at(kept_since(), "days", ("days", STANDS_DAYS)),
    ),
    basis=(),
)
def photo_gap(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A photo point without a picture for five weeks of growth."""
    points = photo_points(past)
    start = began(past) if points and growing(past) else None
    if start is None:
        return ()
    late = n.days("days")
    behind = [(point, past.day - point.since(past, start).toordinal()) for point in points]
    return tuple(_finding(past, point, late) for point, gap in behind if late < gap <= late + STANDS_DAYS)


def _finding(past: Past, point: PhotoPoint, late: int) -> Finding:
    last = point.photo
    start = began(past) or past.date
    over = point.since(past, start) + timedelta(late + STANDS_DAYS + 1)
    return Finding(
        level=Level.NOTE,
        subject=point.name,
        headline=f"no picture from {point.name} for {days(past.day - last.day)}",
        why=f"the newest is of {on(last.date, past)}; one a month from the same point shows what a day does not",
        do=f"take one from {point.name} and log it: photo FILE from {point.name}",
        clears=f"a picture from {point.name}, the end of growth, or {on(over, past)}",
        evidence=(last.id,),
    )
