"""Everything a lane draws from: a standing, the cells, the zones shown, and what is worked out once for all lanes."""

from collections.abc import Callable, Hashable, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import lru_cache
from typing import Any, TypeVar, cast

from journal.reckon.feedings import fed_since_in
from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.sighting import Sighting
from journal.record.lawn import Lawn
from journal.screens.season.cells import COUNT, Cells
from journal.screens.season.figures import is_metric
from journal.screens.season.seasons import Season, seasons
from journal.screens.season.sowings import Sowing, sowings
from journal.season.growth import next_start
from journal.season.history import LAWN, History, Past
from journal.standing import Standing

E = TypeVar("E", bound=Entry)
T = TypeVar("T")

Stretch = tuple[int, int]
"""First and last day, as ordinals, both in it."""


@dataclass(frozen=True, slots=True)
class Scene:
    """`today` is the date judged, as an ordinal; `now` its cell (52 when all cells lie before it, -1 when after)."""

    standing: Standing
    cells: Cells
    zones: tuple[str, ...]
    today: int
    now: int
    metric: bool
    mown_since: Mapping[str, int | None]
    """Zone -> the day from which on a mowing that is not logged counts as not done."""
    fed_since: Mapping[str, int | None]
    """The same for feedings."""
    pasts: Mapping[str, Past]
    """Zone ('' for what names none) -> what is known on the date judged, and no later than the cells reach."""
    seasons: tuple[Season, ...]
    """The growing seasons that the cells touch."""
    sowings: Mapping[str, tuple[Sowing, ...]]
    """Zone -> the stands that matter here, oldest first."""
    rests: Mapping[str, tuple[Stretch, ...]]
    """Zone -> the spells for which it was seen dormant."""
    _worked_out: dict[Hashable, Any] = field(default_factory=dict, compare=False, repr=False)

    def once(self, key: Hashable, make: Callable[[], T]) -> T:
        """What `make` gives, worked out once for this scene."""
        if key not in self._worked_out:
            self._worked_out[key] = make()
        return cast("T", self._worked_out[key])

    @property
    def history(self) -> History:
        """Everything kept."""
        return self.standing.history

    @property
    def lawn(self) -> Lawn:
        """The lawn on the date judged."""
        return self.standing.lawn

    def season(self, day: int) -> Season | None:
        """The growing season that a day lies in."""
        for season in self.seasons:
            if season[0] <= day <= season[1]:
                return season
        return None

    def idle_season(self, cell: int) -> bool:
        """Whether the grass is known not to grow on any day of a cell."""
        first, last = self.cells.span(cell)
        return bool(self.seasons) and not self.season(first) and not self.season(last)

    def sowing(self, zone: str, day: int) -> Sowing | None:
        """The newest sowing of a zone on that day or before."""
        for one in reversed(self.sowings[zone]):
            if one.sown <= day:
                return one
        return None

    def resting(self, zone: str, day: int) -> bool:
        """Whether a day lies in a spell for which the zone was seen dormant."""
        spells = self.rests[zone]
        return bool(spells) and any(first <= day <= last for first, last in spells)

    def past_end(self, cell: int) -> int:
        """The last day of a cell that is over, or the date judged."""
        return min(self.cells.starts[cell + 1] - 1, self.today)

    def entries(self, cell: int, *kinds: type[E]) -> tuple[E, ...]:
        """What was logged in a cell, once each, oldest first; none after the date judged."""
        first, last = self.cells.span(cell)
        seen = [past[kind] for past in self.pasts.values() for kind in kinds]
        found = {id(one): one for some in seen for one in some.between(first, last)}
        return tuple(sorted(found.values(), key=lambda one: (one.day, one.id)))

    def by_cell(self, *kinds: type[E]) -> list[list[E]]:
        """What was logged in each cell, once each."""
        found: list[list[E]] = [[] for _ in range(COUNT)]
        told: set[int] = set()
        first, last, at = self.cells.first, self.cells.last, self.cells.at
        for past in self.pasts.values():
            for kind in kinds:
                for one in past[kind].between(first, last):
                    if id(one) not in told:
                        told.add(id(one))
                        found[at(one.day) or 0].append(one)
        return found


class _Same:
    """A standing as a key: the very same one, not an equal one."""

    __slots__ = ("standing",)

    def __init__(self, standing: Standing) -> None:
        self.standing = standing

    def __hash__(self) -> int:
        return id(self.standing)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.standing is self.standing


def scene_of(standing: Standing, zone: str, cells: Cells) -> Scene:
    """The scene of one zone, or of all where it is ''. What names no zone belongs to every one.

    The newest scenes are kept: while a cursor walks, nothing is worked out twice.
    """
    return _scene_of(_Same(standing), zone, cells)


@lru_cache(maxsize=40)
def _scene_of(same: _Same, zone: str, cells: Cells) -> Scene:
    standing = same.standing
    history, as_of = standing.history, standing.as_of
    zones = (zone,) if zone in standing.lawn.zone_names else standing.lawn.zone_names
    today = as_of.toordinal()
    until = min(as_of, date.fromordinal(cells.last))
    pasts = {name: history.on(name, until) for name in (*zones, LAWN)}
    return Scene(
        standing=standing,
        cells=cells,
        zones=zones,
        today=today,
        now=COUNT - 1 if today > cells.last else -1 if today < cells.first else cells.at(today) or 0,
        metric=is_metric(standing.lawn),
        mown_since={name: _ordinal(history.kept_for(name, Mowing)) for name in zones},
        fed_since={name: _ordinal(fed_since_in(history, name)) for name in zones},
        pasts=pasts,
        seasons=seasons(history, as_of, date.fromordinal(cells.first), date.fromordinal(cells.last)),
        sowings={name: sowings(pasts[name], cells.first, cells.last) for name in zones},
        rests={name: _rests(pasts[name], cells) for name in zones},
    )


def _ordinal(day: date | None) -> int | None:
    return None if day is None else day.toordinal()


def _rests(past: Past, cells: Cells) -> tuple[Stretch, ...]:
    """From `see dormant` to the day before `see green`, the next growth start, or the end of the cells."""
    spells: list[Stretch] = []
    began: int | None = None
    for seen in past[Sighting].between(cells.first - 400, cells.last):
        if seen.subject == "dormant" and began is None:
            began = seen.day
        elif seen.subject == "green" and began is not None:
            spells.append((began, min(seen.day - 1, _wakes(past, began, cells))))
            began = None
    if began is not None:
        spells.append((began, _wakes(past, began, cells)))
    return tuple(spells)


def _wakes(past: Past, began: int, cells: Cells) -> int:
    start = next_start(past.lawn, date.fromordinal(began))
    return start.toordinal() - 1 if start else cells.last
