"""What the weather on file tells of frosts and of the months, and the lines that accept it."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.facts.frost import FREEZE_BASIS, LEAST_YEARS, NORMAL_BASIS, YEARS_BASIS
from journal.reckon.frost import Freezes, FrostDates, frost_dates
from journal.reckon.normals import Normals, normals
from journal.record.kinds.weather import Rain, Weather
from journal.record.lawn import Lawn
from journal.screens.ground.basis import basis_in_full
from journal.screens.ground.fact import Fact, Stand, dated, month_day
from journal.season.daily import weather_days
from journal.season.history import LAWN, History
from journal.season.track import Track

LEAST_SEEN = 2
"""Years from which on what they tell is worth a row."""
NAME = "  your weather"


@dataclass(frozen=True, slots=True)
class Told:
    """What the whole of the weather tells; None where it is too little."""

    frosts: FrostDates | None = None
    months: Normals | None = None


class LastTold:
    """The answer given last, and what it was made of: as long as no weather and no rain is added it holds."""

    def __init__(self) -> None:
        self._of: tuple[Track[Any], Track[Any], int, float | None] | None = None
        self._told = Told()

    def __call__(self, history: History, as_of: date, latitude: float | None) -> Told:
        """What the weather up to that day tells. A later day of which nothing is on file changes nothing."""
        weather, rain = history.track(LAWN, Weather), history.track(LAWN, Rain)
        end = min(as_of.toordinal(), max((*weather.days[-1:], *rain.days[-1:]), default=0))
        made = self._of
        if made is None or made[0] is not weather or made[1] is not rain or made[2:] != (end, latitude):
            self._told = told(history, as_of, latitude)
            self._of = weather, rain, end, latitude
        return self._told


TOLD = LastTold()


def told(history: History, as_of: date, latitude: float | None) -> Told:
    """Frosts and months out of every day of weather up to that day."""
    track = history.track(LAWN, Weather)
    if not track.days or track.days[0] > as_of.toordinal():
        return Told()
    days = weather_days(history.on(LAWN, as_of), track.days[0], as_of.toordinal())
    return Told(frost_dates(days.values(), latitude), normals(days.values()))


def proposals(found: Told, lawn: Lawn, as_of: date) -> Mapping[str, Fact]:
    """Fact of the lawn -> what the weather says of it, as a row to stand beneath it."""
    rows: dict[str, Fact] = {}
    for freezes in (found.frosts.last, found.frosts.first) if found.frosts else ():
        if freezes.years >= LEAST_SEEN:
            rows[freezes.key] = _frost(freezes, getattr(lawn, freezes.key), as_of)
    if found.months is not None and found.months.years >= LEAST_SEEN:
        rows["normals"] = _months(found.months, lawn)
    return rows


def _frost(freezes: Freezes, said: Any, as_of: date) -> Fact:
    which = "last" if freezes.key == "last_frost" else "first"
    even = freezes.chances.get(50)
    seen = ", ".join(dated(day, as_of) for day in freezes.dates)
    more: list[tuple[str, str]] = [("frosts", seen or "none in any of these years")]
    if even is None:
        few = freezes.years < LEAST_YEARS
        words = seen if few else "none in most years"
        more += basis_in_full(YEARS_BASIS) if few else []
    elif freezes.cut:
        words = "frosts right through: weather of your own half of the world?"
    else:
        early, late = (freezes.chances.get(chance) for chance in ((90, 10) if which == "last" else (10, 90)))
        span = " to ".join(month_day(day) for day in (early, late) if day is not None)
        words = f"{freezes.years} yr {span}, half by {month_day(even)}"
        side = "after" if which == "last" else "before"
        said_of = (f"{chance} % {side} {month_day(day)}" for chance, day in freezes.chances.items() if day is not None)
        more.insert(0, ("chance", "; ".join(said_of)))
    agrees = even is not None and said == even
    return Fact(
        name=NAME,
        value=words,
        stand=Stand.WORKED,
        known=f"of {freezes.years} yr{', agrees' if agrees else ''}",
        line=freezes.line,
        use=f"the average {which} frost, as the days on file have it; nothing holds until you accept it",
        more=(*more, *basis_in_full(FREEZE_BASIS)),
        offered=bool(freezes.line) and not agrees,
    )


def _months(found: Normals, lawn: Lawn) -> Fact:
    count = len(found.months)
    return Fact(
        name=NAME,
        value=f"{count} month{'s' * (count > 1)} on file",
        stand=Stand.WORKED,
        known=f"of {found.years} yr",
        line=found.line(lawn.units),
        use="mean high, low and rain of each month; nothing holds until you accept it",
        more=tuple(basis_in_full(NORMAL_BASIS)),
    )
