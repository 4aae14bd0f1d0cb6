"""Degree days between two dates."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date

from journal.facts.degree_days import AVERAGE, CAPPED, CAPPED_BASIS, SINE, Band, near
from journal.reckon.answer import Answer, figure
from journal.reckon.declare import Needs, reckoning
from journal.reckon.degree_days import F_PER_C, average, capped, sine
from journal.reckon.water_options import air_temperature
from journal.record.day import MONTHS, MonthDay
from journal.record.quantity import in_unit, plain
from journal.record.refusal import Refusal
from journal.record.term import asked, day, one_of, term, words
from journal.record.unit import UNITS
from journal.season.daily import DayWeather

FEW_MISSING = 0.1
"""With more of the days missing than this share, the sum is not compared with anything: judgment."""


@reckoning(
    "degree-days",
    "warmth above a base, summed from one day to another",
    "degree-days --base 50F --from 2026-01-01 --to 2026-05-01",
    needs=Needs.WEATHER,
    explains={
        "cap": "set both temperatures between base and cap first, as in 86/50",
        "method": "average, or sine for the warm hours of cool days",
        "file": "a file of daily weather; without one, the book's own",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class DegreeDays:
    """Temperatures in C; the first and the last day, both counted."""

    base_c: float = asked("base", air_temperature, "50F")
    cap_c: float | None = term("cap", air_temperature, "86F")
    first: date = asked("from", day, "2026-01-01")
    last: date = asked("to", day, "2026-05-01")
    method: str = term("method", one_of(AVERAGE, SINE), AVERAGE, AVERAGE)
    file: str = term("file", words, "weather.csv", "")

    def answer(self, days: Sequence[DayWeather]) -> Answer:
        """The sum, of how many days it is, and how many had no temperatures."""
        if self.last < self.first:
            raise Refusal("--to", "comes before --from.")
        if self.cap_c is not None and self.cap_c <= self.base_c:
            raise Refusal("--cap", "must be above the base.")
        if self.cap_c is not None and self.method == SINE:
            raise Refusal("--method", "sine has no cap here: leave one of the two away.")
        of_day = self._of_day()
        counted = {
            seen.day: of_day(seen.low_c, seen.high_c)
            for seen in days
            if self.first <= seen.date <= self.last and seen.low_c is not None and seen.high_c is not None
        }
        missing = (self.last - self.first).days + 1 - len(counted)
        total = sum(counted.values()) * F_PER_C if counted else None
        return Answer(
            (
                figure("degree_days_f", "degree days (F)", total),
                figure("days", "days counted", len(counted)),
                figure("missing", "days without temperatures", missing),
            ),
            self._notes(total, missing, max(counted, default=0)),
        )

    def _of_day(self) -> Callable[[float, float], float]:
        base, cap = self.base_c, self.cap_c
        if cap is not None:
            return lambda low, high: capped(low, high, base, cap)
        simple = sine if self.method == SINE else average
        return lambda low, high: simple(low, high, base)

    def _notes(self, total: float | None, missing: int, newest: int) -> tuple[str, ...]:
        method = self.method if self.cap_c is None else CAPPED
        said = [_HOW[method]]
        if total is None:
            return (*said, "No day in it has both temperatures.")
        said.append(f"In Celsius that is {plain(total / F_PER_C, 4)} degree days.")
        if missing:
            said.append("The true sum is higher: days without temperatures add nothing here.")
        if newest < self.last.toordinal():
            said.append(f"Nothing is on file after {date.fromordinal(newest)}: the sum ends there.")
        if missing > FEW_MISSING * ((self.last - self.first).days + 1):
            return (*said, "With so many days missing it is not set beside what is published of plants.")
        start = MonthDay(self.first.month, self.first.day)
        bands = near(total, round(in_unit(self.base_c, UNITS["f"]), 6), method, start)
        said += [f"Near: {_told(band)}" for band in bands]
        if bands:
            said.append(
                "A figure holds for its own base, method, start and region; sources differ by two or three times. "
                "None of this says what to put down; your own dates of other years tell more."
            )
        return tuple(said)


_HOW = {
    AVERAGE: "Each day is the mean of high and low less the base, never below 0.",
    CAPPED: f"High and low are each set between base and cap first: {CAPPED_BASIS.words()}.",
    SINE: "Each day is a sine wave through low and high, of which the part above the base counts.",
}


def _told(band: Band) -> str:
    """`crabgrass starts to come up, 70 to 140 (average, base 50 F, from 1 Jan, air): publication.`"""
    span = f"{band.low_f:.0f}" if band.low_f == band.high_f else f"{band.low_f:.0f} to {band.high_f:.0f}"
    start = f"from {band.start.day} {MONTHS[band.start.month - 1].title()}" if band.start else "its start not told"
    how = f"{band.method}, base {band.base_f:g} F, {start}, {band.medium}"
    return f"{band.event}, {span} ({how}): {band.basis.words()}."
