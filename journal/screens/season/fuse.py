"""The fuse that a feeding lights: how far it has burned on any day."""

from bisect import bisect_right
from dataclasses import dataclass

from journal.reckon.feedings import FeedingDay, feeding_days, overdue_days, step_days
from journal.reckon.threshold import in_force
from journal.screens.picture import Ink
from journal.screens.season.mark import BLANK, Mark, run
from journal.screens.season.scene import Scene

RULE = "feed-overdue"


@dataclass(frozen=True, slots=True)
class Burnt:
    """Days since `since` (an ordinal: the last feeding, or the day that counts as one); the numbers that hold."""

    days: int
    since: int
    feeding: FeedingDay | None
    opens: int
    late: int

    @property
    def waits(self) -> bool:
        """Whether the next feeding is not due yet."""
        return self.days < self.opens


@dataclass(frozen=True, slots=True)
class Fuse:
    """The feedings of one zone, oldest first, and what each lasts: (days till the next is offered, till it is late)."""

    scene: Scene
    zone: str
    feedings: tuple[FeedingDay, ...]
    days: tuple[int, ...]
    lasts: tuple[tuple[int, int], ...]
    unfed: tuple[int, int]
    seeded_days: float
    flagged: int | None
    """The day on which a standing flag for a late feeding rose."""

    def burnt(self, day: int) -> Burnt | None:
        """How things stand on a day (an ordinal); None between seasons, while dormant, or where nothing is counted."""
        season = self.scene.season(day)
        kept = self.scene.fed_since[self.zone]
        if season is None or kept is None or self.scene.resting(self.zone, day):
            return None
        at = bisect_right(self.days, day)
        if at and self.days[at - 1] >= season[0]:
            feeding = self.feedings[at - 1]
            return Burnt(day - feeding.day, feeding.day, feeding, *self.lasts[at - 1])
        since = max(season[0], kept)
        sowing = self.scene.sowing(self.zone, day)
        if day < since or (sowing is not None and 0 <= day - sowing.zero <= self.seeded_days):
            return None
        return Burnt(day - since, since, None, *self.unfed)

    def mark(self, day: int) -> Mark:
        """The cell that ends on that day, where nothing was fed in it. Ahead of today only what is still to burn.

        Of several zones the one that was fed last outweighs the others, unless a flag stands.
        """
        burnt = self.burnt(day)
        if burnt is None:
            return BLANK
        if burnt.waits:
            return run("━", Ink.FUSE, 3.0) if burnt.feeding else BLANK
        if day > self.scene.today:
            return BLANK
        if self.flagged is not None and day >= self.flagged:
            return run("▓", Ink.GAP, 5.0) if burnt.days > burnt.late * 1.5 else run("▒", Ink.GAP, 4.0)
        return run("░", Ink.GAP, 1.0) if burnt.days > burnt.late else run("─", Ink.FUSE, 2.0)


def fuse(scene: Scene, zone: str) -> Fuse:
    """The fuse of one zone over the scene's cells."""
    return scene.once(("fuse", zone), lambda: _fuse(scene, zone))


def _fuse(scene: Scene, zone: str) -> Fuse:
    past, lawn = scene.pasts[zone], scene.lawn
    since = min([scene.cells.first, *(first for first, _ in scene.seasons[:1])])
    feedings = feeding_days(past, since)
    flagged = [
        flag.rose.toordinal()
        for flag in scene.standing.flags
        if flag.rule == RULE and (not flag.zones or zone in flag.zones)
    ]
    return Fuse(
        scene,
        zone,
        feedings,
        tuple(feeding.day for feeding in feedings),
        tuple(_lasts(scene, feeding) for feeding in feedings),
        (int(in_force(lawn, RULE, "step-days")), int(in_force(lawn, RULE, "days"))),
        in_force(lawn, RULE, "seeded-days"),
        min(flagged, default=None),
    )


def _lasts(scene: Scene, feeding: FeedingDay) -> tuple[int, int]:
    """Days till the next is offered and till it is late: they follow from the nitrogen and its slow share."""
    key = ("lasts", feeding.n_g_per_m2, feeding.slow_share)
    return scene.once(key, lambda: (step_days(feeding, scene.lawn), overdue_days(feeding, scene.lawn)))
