"""Which column is what: found by the header, or by the shape of the first row where there is none.

Names and shapes: NCEI, GHCN-Daily readme and readme-by_station (ncei.noaa.gov/pub/data/ghcn/daily), and the
documentation of its daily summaries (GHCND_documentation.pdf).
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from journal.record.refusal import Refusal
from journal.record.unit import UNITS, Unit
from journal.season.weather_file.found import HIGH, LOW, RAIN, WHATS

_NAMES: Mapping[str, str] = {
    name: what
    for what, names in (
        ("date", "date day yyyymmdd date_time datetime"),
        ("station", "station id station_id"),
        ("name", "name station_name"),
        ("element", "element"),
        ("value", "value data_value"),
        ("m", "m_flag mflag measurement_flag"),
        ("q", "q_flag qflag quality_flag"),
        ("time", "obs_time obstime"),
        (HIGH, "tmax temp_max tempmax max_temp high max_temperature temperature_max temp_high hi maximum"),
        (LOW, "tmin temp_min tempmin min_temp low min_temperature temperature_min temp_low lo minimum"),
        (RAIN, "prcp precipitation precip rain rainfall precipitation_sum total_precipitation"),
    )
    for name in names.split()
}

_UNIT_WORDS: Mapping[str, str] = {
    "f": "f", "degf": "f", "deg_f": "f", "fahrenheit": "f", "c": "c", "degc": "c", "deg_c": "c", "celsius": "c",
    "in": "in", "inch": "in", "inches": "in", "mm": "mm", "cm": "cm",
}  # fmt: skip

_DATED = re.compile(r"\d{8}|\d{4}[-/]\d\d?[-/]\d\d?(T.*)?")
_ELEMENT = re.compile(r"[A-Z][A-Z0-9]{3}")
_LONG = {"station": 0, "date": 1, "element": 2, "value": 3, "m": 4, "q": 5, "time": 7}


@dataclass(frozen=True, slots=True)
class Columns:
    """Places of the columns by what they hold, the units that headings name, and whether the first row is a header."""

    at: Mapping[str, int]
    units: Mapping[str, Unit]
    header: bool
    width: int

    @property
    def long(self) -> bool:
        """Whether each row holds one value of one element."""
        return "element" in self.at


def columns(line: int, first: Sequence[str]) -> Columns:
    """What the columns hold. Raises Refusal naming the line where dates or weather can't be found in it."""
    if len(first) >= 4 and _DATED.fullmatch(first[1]) and _ELEMENT.fullmatch(first[2]):
        return Columns(_LONG, {}, header=False, width=len(first))
    at: dict[str, int] = {}
    units: dict[str, Unit] = {}
    for place, heading in enumerate(first):
        what, unit = _meaning(heading)
        if not what:
            continue
        if what in at:
            raise Refusal(f"line {line}, {heading}", f"two columns for one thing: {first[at[what]]} is another.")
        at[what] = place
        if unit:
            units[what] = UNITS[unit]
    if "date" not in at:
        dated = _DATED.fullmatch(first[0]) is not None
        why = "there is no header over these columns" if dated else "no column of dates is named here"
        raise Refusal(f"line {line}, {first[0][:40]}", f"{why}: a first row like date,high,low,rain is wanted.")
    if "element" in at:
        if "value" not in at:
            raise Refusal(f"line {line}", "there is an element in each row, but no column of values.")
        return Columns(at, {}, header=True, width=len(first))
    if RAIN not in at and not (HIGH in at and LOW in at):
        raise Refusal(f"line {line}, {_shown(first)}", "neither rain nor both a high and a low are among the columns.")
    for what in [what for what in WHATS if what in at]:
        flags = _flags(first, at[what])
        if flags is not None:
            at[f"{what} flags"] = flags
    return Columns(at, units, header=True, width=len(first))


def _meaning(heading: str) -> tuple[str, str]:
    """What a heading stands for, and the unit it names; `tmax_f`, `High (F)` and `TMAX` are all highs."""
    name = re.sub(r"[^a-z0-9]+", "_", heading.casefold().replace("\u00b0", "")).strip("_")
    if name in _NAMES:
        return _NAMES[name], ""
    for word, unit in _UNIT_WORDS.items():
        what = _NAMES.get(name.removesuffix(f"_{word}"), "") if name.endswith(f"_{word}") else ""
        if what in WHATS and (what == RAIN) is (unit in ("in", "mm", "cm")):
            return what, unit
    return "", ""


def _flags(first: Sequence[str], place: int) -> int | None:
    wanted = f"{first[place]}_attributes".casefold()
    return next((at for at, heading in enumerate(first) if heading.casefold() == wanted), None)


def _shown(first: Sequence[str]) -> str:
    words = ",".join(first)
    return words if len(words) <= 60 else f"{words[:57]}..."
