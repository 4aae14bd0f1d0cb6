"""Rain in the gauge and a day's weather."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import day, measure
from journal.record.unit import Dimension


@entry_kind("rain", Verb("rain", "rain in the gauge", "rain 0.6in", pin="r"), lawnwide=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Rain(Entry):
    """Depth in the gauge, for one day or spread evenly since another."""

    depth_mm: float | None = measure(Dimension.LENGTH, high=1000)
    since: date | None = day("since")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """Rain has a depth."""
        if values.get("depth_mm") is None:
            raise Refusal("rain", "how much? Write it like 0.6in or 15mm.")
        since = values.get("since")
        if since is not None and since > values["date"]:
            raise Refusal("since", "the rain can't have begun after it was read.")


@entry_kind("weather", Verb("weather", "a day's high, low and rain", "weather 71F 48F 0.2in"), lawnwide=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Weather(Entry):
    """The day's highest and lowest air temperature and its rain. Which is which is settled by size.

    `soil_c` is the soil's own temperature, measured at about two inches.
    """

    high_c: float | None = measure(Dimension.TEMPERATURE, low=-60, high=60)
    low_c: float | None = measure(Dimension.TEMPERATURE, low=-60, high=60)
    rain_mm: float | None = measure(Dimension.LENGTH, high=1000)
    soil_c: float | None = measure(Dimension.TEMPERATURE, keyword="soil", low=-30, high=50)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """Two temperatures, in either order, or rain or the soil's temperature alone."""
        high, low = values.get("high_c"), values.get("low_c")
        if high is not None and low is None:
            raise Refusal("weather", "both the high and the low are wanted, like 71F 48F.")
        if high is not None and low is not None and low > high:
            values["high_c"], values["low_c"] = low, high
        if high is None and values.get("rain_mm") is None and values.get("soil_c") is None:
            raise Refusal("weather", "give a high and a low, like 71F 48F, or the rain.")
