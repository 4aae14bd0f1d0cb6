"""Four years of weather at Seattle's airport, 2012 to 2015: the table seattle-weather.csv of the package vega-datasets.

Public-domain data of NOAA, station USW00024233; mm and C. The package itself is never imported: it would load pandas.
"""

from importlib.util import find_spec
from pathlib import Path


def seattle_csv() -> Path:
    """Where the table lies."""
    found = find_spec("vega_datasets")
    assert found is not None, "vega-datasets is not installed"
    assert found.submodule_search_locations
    return Path(found.submodule_search_locations[0]) / "_data" / "seattle-weather.csv"


SEATTLE = seattle_csv()
