"""Days without a cut, and from when on they matter: the same count as the flag's."""

from dataclasses import dataclass
from datetime import date

from journal.facts.growth import LATE_GROWTH_DAYS, SLOW_MONTHS
from journal.reckon.cutting import dry_spell_ended
from journal.reckon.threshold import in_force
from journal.record.lawn import Lawn
from journal.screens.picture import Ink
from journal.screens.season.mark import Mark, run
from journal.screens.season.scene import Scene
from journal.season.growth import EARLY_DAYS, green_up, northern_day
from journal.season.history import Past
from journal.season.water import dry_spell

DARKEST = 1.5
"""Past the number that makes it late by half again."""


@dataclass(frozen=True, slots=True)
class Gap:
    """Days since the last cut, or since the day that counts as one; `usual` and `late` are the numbers in force.

    `since` is that day, as an ordinal, and `cut` whether it was a cut.
    """

    days: int
    since: int
    cut: bool
    usual: float
    late: float

    @property
    def shade(self) -> str:
        """'' within the usual interval, then darker past it, past the late one, and past that by half again."""
        if self.days > self.late * DARKEST:
            return "▓"
        if self.days > self.late:
            return "▒"
        return "░" if self.days > self.usual else ""


def shade_mark(shade: str) -> Mark:
    """The cell of a gap."""
    return run(shade, Ink.GAP, {"░": 10.0, "▒": 20.0, "▓": 30.0}[shade])


@dataclass(frozen=True, slots=True)
class Limits:
    """The numbers in force: usual days between cuts; late after, in the slow months, as growth ends; days before the
    first cut of a season; days and water (mm) that make a dry spell.
    """

    usual: float
    late: float
    slow: float
    last: float
    first: int
    dry_days: int
    dry_mm: float

    @classmethod
    def of(cls, lawn: Lawn) -> "Limits":
        """From the owner's own numbers, else the house's."""
        names = ("step-days", "days", "slow-days", "late-days", "first-days", "dry-days", "dry-water")
        usual, late, slow, last, first, dry_days, dry_mm = (in_force(lawn, "mow-gap", name) for name in names)
        return cls(usual, late, slow, last, int(first), int(dry_days), dry_mm)


@dataclass(frozen=True, slots=True)
class Clock:
    """What tells the gap of one zone on any day."""

    scene: Scene
    zone: str
    limits: Limits
    service: bool
    irrigated: bool

    def quiet(self, day: int) -> str:
        """Why no cut is due on a day (an ordinal), or ''."""
        if self.scene.season(day) is None:
            return "not growing" if self.scene.seasons else "when it grows is not known, set its frosts or growth"
        if self.scene.resting(self.zone, day):
            return "seen dormant"
        sowing = self.scene.sowing(self.zone, day)
        if sowing is not None and sowing.zero <= day <= sowing.bed_to:
            return "a seedbed, no cut yet"
        return "mown by a service" if self.service else ""

    def gap(self, day: int, last_cut: int | None) -> Gap | None:
        """The gap on a day whose last cut before or on it was then; None where no cut is due."""
        season = self.scene.season(day)
        kept = self.scene.mown_since[self.zone]
        if season is None or kept is None or self.quiet(day):
            return None
        this_season = last_cut is not None and last_cut >= season[0] - EARLY_DAYS
        counted = max(last_cut, season[0]) if last_cut is not None and this_season else season[0] + self.limits.first
        green = green_up(self._past(day))
        since = max(counted, kept, green.day if green else 0)
        if day < since:
            return None
        gap = Gap(day - since, since, since == last_cut, self.limits.usual, self._late(day, season[1]))
        return None if gap.days > gap.late and self.dry(day) else gap

    def dry(self, day: int) -> bool:
        """Whether a zone that is not irrigated can't have grown for want of water on file, or only just grows again."""
        return not self.irrigated and self.scene.once(("dry", self.zone, day), lambda: self._dry(day))

    def _dry(self, day: int) -> bool:
        past = self._past(day)
        return dry_spell(past, self.limits.dry_days, self.limits.dry_mm) or dry_spell_ended(past) is not None

    def _past(self, day: int) -> Past:
        return self.scene.history.on(self.zone, date.fromordinal(day))

    def _late(self, day: int, ends: int) -> float:
        if ends - day < LATE_GROWTH_DAYS:
            return self.limits.last
        north = northern_day(self.scene.lawn, date.fromordinal(day))
        return self.limits.slow if north.month in SLOW_MONTHS else self.limits.late


def clock(scene: Scene, zone: str) -> Clock:
    """The clock of a zone, with the numbers in force."""
    found = scene.lawn.zone(zone)
    limits = scene.once("limits", lambda: Limits.of(scene.lawn))
    by_service = found is not None and found.mowing == "service"
    return Clock(scene, zone, limits, by_service, found is not None and found.irrigated)
