"""The water that a well-watered field would use on a day, from the day's two temperatures."""

from dataclasses import dataclass
from datetime import date

from journal.facts.irrigation import FAR_NORTH, FAR_NORTH_BASIS, REFERENCE_BASIS
from journal.reckon.answer import Answer, figure
from journal.reckon.declare import reckoning
from journal.reckon.evapotranspiration import daylight, radiation, reference_mm
from journal.reckon.water_options import air_temperature
from journal.record.refusal import Refusal
from journal.record.term import asked, day, signed


@reckoning(
    "et0",
    "the reference water use of one day, from its high and low",
    "et0 --lat 45.7167 --date 2026-07-15 --tmin 14.8C --tmax 26.6C",
    explains={"lat": "degrees, south below zero", "tmin": "the day's low", "tmax": "the day's high"},
)
@dataclass(frozen=True, slots=True, kw_only=True)
class ReferenceUse:
    """Latitude in degrees, temperatures in C."""

    latitude: float = asked("lat", signed(-90, 90), "45.7167")
    date: date = asked("date", day, "2026-07-15")
    low_c: float = asked("tmin", air_temperature, "14.8C")
    high_c: float = asked("tmax", air_temperature, "26.6C")

    def answer(self) -> Answer:
        """Radiation above the air, hours of daylight, and the use in mm."""
        if self.low_c > self.high_c:
            raise Refusal("--tmin", "the day's low is above its high.")
        day_of_year = self.date.timetuple().tm_yday
        return Answer(
            (
                figure("ra_mj", "sun above the air, MJ a m2", radiation(self.latitude, day_of_year)),
                figure("daylight_h", "daylight, hours", daylight(self.latitude, day_of_year)),
                figure(
                    "et0_mm",
                    "reference water use",
                    reference_mm(self.low_c, self.high_c, self.latitude, day_of_year),
                    "mm",
                ),
            ),
            self._notes(),
        )

    def _notes(self) -> tuple[str, ...]:
        far = (f"{FAR_NORTH_BASIS.words()}.",) if abs(self.latitude) > FAR_NORTH else ()
        return (
            f"By two temperatures alone (Hargreaves and Samani): {REFERENCE_BASIS.words()}.",
            "Single days are rough; judge by the sum of five days or a week. Turf uses a share of it.",
            *far,
        )
