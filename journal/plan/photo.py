"""A picture a month from each point, while the grass grows."""

import math
from datetime import date, timedelta

from journal.plan.declare import step
from journal.plan.offer import Offer
from journal.plan.stage import said
from journal.plan.step import State
from journal.reckon.photo_points import PhotoPoint, photo_points
from journal.reckon.threshold import in_force
from journal.record.kinds.photo import Photo
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.weather import Weather
from journal.season.growth import began, dormant_open, next_start
from journal.season.history import Past


@step("photo", watches=(Photo, Sighting, Weather))
def photo(past: Past) -> Offer | None:
    """Monthly from every point that earlier pictures were taken from. What file it is only the owner knows: no line."""
    points = photo_points(past)
    if not points:
        return None
    start = began(past)
    if start is None:
        return _waiting(next_start(past.lawn, past.date), "growth")
    if dormant_open(past):
        return _waiting(None, "green grass: after `see green`")
    opens, late = (math.ceil(in_force(past.lawn, "photo-gap", name)) for name in ("step-days", "days"))
    opens = min(opens, late)
    since = {point: point.since(past, start) for point in points}
    first = min(since.values()) + timedelta(opens)
    latest = min(since.values()) + timedelta(late)
    due = [point for point in points if past.date >= since[point] + timedelta(opens)]
    if not due:
        return Offer(
            state=State.WAITING, earliest=first, best=(first, latest), latest=latest,
            why=_newest(past, points), waits_for=f"opens {said(first, past)}",
        )  # fmt: skip
    return Offer(
        state=State.LATE if past.date > latest else State.OPEN,
        earliest=first,
        best=(first, latest),
        latest=latest,
        why=_newest(past, tuple(due)),
        amount=f"log it like photo FILE from {due[0].name}",
    )


def _waiting(opens: date | None, waits_for: str) -> Offer:
    return Offer(state=State.WAITING, earliest=opens, why="monthly while the grass grows", waits_for=waits_for)


def _newest(past: Past, points: tuple[PhotoPoint, ...]) -> str:
    """`gate: Mon 3 May; roof: Mon 10 May`: the newest picture of each."""
    return "; ".join(f"{point.name}: {said(point.photo.date, past)}" for point in points)
