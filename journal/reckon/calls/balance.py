"""The water account of a zone between two dates."""

from dataclasses import dataclass
from datetime import date

from journal.facts.irrigation import (
    ALLOWED_BASIS,
    CHECKBOOK_BASIS,
    COEFFICIENT_BASIS,
    DEEP_ROOTS_BASIS,
    FAR_NORTH,
    FAR_NORTH_BASIS,
    FULL_BASIS,
    RAIN_BASIS,
    REFERENCE_BASIS,
    ROOTS_BASIS,
    SOAKING_BASIS,
)
from journal.facts.soils import SOILS
from journal.reckon.answer import Answer, figure
from journal.reckon.declare import Needs, reckoning
from journal.reckon.root_zone import Balance, RootZone, balance, root_zone, used_mm
from journal.record.day import spoken
from journal.record.quantity import show
from journal.record.refusal import Refusal, nearest
from journal.record.term import asked, day, words
from journal.record.unit import Dimension
from journal.season.daily import weather_days
from journal.season.history import History, Past
from journal.season.water import water_days

MOST_DAYS = 3660
"""No account is asked for longer."""


@reckoning(
    "balance",
    "what a zone used, what rain and watering brought, and what is missing in its root zone",
    "balance --from 2026-07-01 --to 2026-07-20 --zone front",
    needs=Needs.BOOK,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class ZoneBalance:
    """The first and the last day, both counted, and the name of a zone."""

    first: date = asked("from", day, "2026-07-01")
    last: date = asked("to", day, "2026-07-20")
    zone: str = asked("zone", words, "front")

    def answer(self, history: History, today: date) -> Answer:
        """Sums of the days between both, and the account as it stood at the end of the last."""
        if self.last < self.first:
            raise Refusal("--to", "comes before --from.")
        if self.last > today:
            raise Refusal("--to", "has not come yet.")
        if (self.last - self.first).days >= MOST_DAYS:
            raise Refusal("--from", f"at most {MOST_DAYS} days can be asked for.")
        past = history.on(self._named(history), self.last)
        first = self.first.toordinal()
        ground = root_zone(past)
        days = weather_days(past, first, past.day)
        use = None if isinstance(ground, str) else used_mm(ground, days)
        rain = [seen.rain_mm for seen in days.values() if seen.rain_mm is not None]
        came = [one.depth_mm for found in water_days(past, first, past.day).values() for one in found]
        measured = [mm for mm in came if mm is not None]
        kept = bool(use or rain) and not came
        stands = balance(past)
        length = (self.last - self.first).days + 1
        return Answer(
            (
                figure("et_mm", "used by the turf", sum(use.values()) if use else None, "mm"),
                figure("rain_mm", "rain", sum(rain) if rain else None, "mm"),
                figure("irrigation_mm", "watering", sum(measured, 0.0) if measured or kept else None, "mm"),
                figure("deficit_mm", "missing in the root zone", stands.deficit_mm, "mm"),
                figure("days_to_water", "days until it is to be watered", stands.days_to_water),
            ),
            (*_gaps(length, len(use or ()), len(rain), came.count(None)), *_notes(past, ground, stands)),
        )

    def _named(self, history: History) -> str:
        names = history.lawn(self.last).zone_names
        wanted = self.zone.casefold()
        found = next((name for name in names if name.casefold() == wanted), None)
        if found is None:
            near = nearest(wanted, names)
            raise Refusal(f"--zone {self.zone}", f"no such zone on that day; there are {', '.join(names)}.", near)
        return found


def _gaps(days: int, warm: int, rain: int, unmeasured: int) -> list[str]:
    said = []
    if warm < days:
        said.append(
            f"Temperatures are on file for {warm} of {days} days: what was used on the others is not in the sum."
        )
    if rain < days:
        said.append(f"Rain is on file for {rain} of {days} days; the others count as dry.")
    if unmeasured:
        said.append(f"Waterings without a depth, not in the sum: {unmeasured}.")
    return said


def _notes(past: Past, ground: RootZone | str, stands: Balance) -> list[str]:
    lawn, zone = past.lawn, past.lawn.zone(past.zone)
    if isinstance(ground, str) or stands.allowed_mm is None or stands.since is None:
        return [f"What is missing in the root zone is not known: {stands.why}."]
    places = 2 if lawn.units == "us" else 0
    total, allowed = (
        show(mm, Dimension.LENGTH, lawn.units, places=places) for mm in (ground.total_mm, stands.allowed_mm)
    )
    soil = SOILS[zone.soil] if zone and zone.soil else None
    said = [
        f"Counted from {spoken(stands.since, past.date)}, the first day of growth, as full: {FULL_BASIS.words()}."
        if stands.assumed
        else f"Counted from the soaking of {spoken(stands.since, past.date)}: {SOAKING_BASIS.words()}.",
        f"The roots can draw {total}, half of it ({allowed}) before it is to be watered: {ALLOWED_BASIS.words()}.",
        f"Roots: {(DEEP_ROOTS_BASIS if ground.deep_rooted else ROOTS_BASIS).words()}.",
    ]
    if soil:
        said.append(f"Soil: {soil.available_basis.words()}.")
    if stands.bridged:
        said.append(f"Days without temperatures taken like the week before them (judgment): {stands.bridged}.")
    said += [
        f"Use: {REFERENCE_BASIS.words()}; {COEFFICIENT_BASIS.words()}.",
        f"Rain: {RAIN_BASIS.words()}.",
        f"The account: {CHECKBOOK_BASIS.words()}.",
    ]
    if abs(lawn.latitude or 0) > FAR_NORTH:
        said.append(f"{FAR_NORTH_BASIS.words()}.")
    return said
