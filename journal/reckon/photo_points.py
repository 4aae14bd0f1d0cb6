"""The fixed points from which a zone is photographed: those of earlier pictures."""

from dataclasses import dataclass
from datetime import date

from journal.record.kinds.photo import Photo
from journal.season.history import Past

KNOWN_DAYS = 400
"""A point from which no picture was taken for so long was given up: judgment."""


@dataclass(frozen=True, slots=True)
class PhotoPoint:
    """A point and its newest picture."""

    name: str
    photo: Photo

    def since(self, past: Past, began: date) -> date:
        """From when its picture is waited for: the newest one, growth start, or the beginning of the book."""
        return max(self.photo.date, began, past.kept_since() or date.min)


def photo_points(past: Past) -> tuple[PhotoPoint, ...]:
    """Those of the zone, by name."""
    newest: dict[str, Photo] = {}
    for photo in (*past[Photo].within(KNOWN_DAYS), *past.lawnwide(Photo).within(KNOWN_DAYS)):
        name = photo.point
        if name and (name not in newest or newest[name].day <= photo.day):
            newest[name] = photo
    return tuple(PhotoPoint(name, photo) for name, photo in sorted(newest.items()))
