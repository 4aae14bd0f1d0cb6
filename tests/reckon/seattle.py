"""Four years of weather at the airport of Seattle, from NOAA, as the package vega-datasets carries them."""

import csv
import importlib.util
from datetime import date
from pathlib import Path

from journal.season.daily import DayWeather

LATITUDE = 47.4444
YEARS = (2012, 2013, 2014, 2015)


def seattle() -> tuple[DayWeather, ...]:
    """Every day of 2012 to 2015; the package itself is not imported, for it brings others with it."""
    spec = importlib.util.find_spec("vega_datasets")
    assert spec is not None
    assert spec.origin is not None
    with (Path(spec.origin).parent / "_data" / "seattle-weather.csv").open(newline="", encoding="utf-8") as file:
        return tuple(
            DayWeather(
                date.fromisoformat(row["date"].replace("/", "-")),
                float(row["temp_max"]),
                float(row["temp_min"]),
                float(row["precipitation"]),
            )
            for row in csv.DictReader(file)
        )
