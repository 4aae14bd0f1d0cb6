"""The text of a file of daily weather made into days."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from fractions import Fraction

from journal.record.refusal import Refusal
from journal.record.unit import UNITS, Unit
from journal.season.daily import DayWeather
from journal.season.weather_file.columns import Columns, columns
from journal.season.weather_file.found import (
    HIGH,
    LOW,
    RAIN,
    TENTH_C,
    TENTH_MM,
    TOLD,
    WHATS,
    Sample,
    Units,
    WeatherFile,
    gaps_of,
    unit_of,
)
from journal.season.weather_file.gather import Pile, gather
from journal.season.weather_file.rows import rows
from journal.season.weather_file.units import Guess, guess, impossible

COLDEST_C, HOTTEST_C, MOST_MM = -60.0, 60.0, 1000.0
"""What a day of weather may hold at all, the same as where it is typed."""

ABSURD_HEAT = f"beyond {COLDEST_C:g} to {HOTTEST_C:g} C"
ABSURD_RAIN = f"rain below 0 or beyond {MOST_MM:g} mm"
CROSSED = "a high below the low"
LONE = "a high or a low without the other"
EMPTY = "a day without a value"

LONG = "daily values of one station, a row each"
STATION = "daily summaries of one station"
ORDER = "ordered daily summaries"
OLD_ORDER = "ordered daily summaries, older form"
PLAIN = "a plain table"

_WORDS: Mapping[Unit, str] = {
    UNITS["f"]: "F", UNITS["c"]: "C", TENTH_C: "tenths of C",
    UNITS["in"]: "inches", UNITS["mm"]: "mm", UNITS["cm"]: "cm", TENTH_MM: "tenths of mm",
}  # fmt: skip

_MORNING = 1000
"""An hour of observation up to ten o'clock, written 1000: the day ends there."""


@dataclass(frozen=True, slots=True)
class _Known:
    """The unit of every column, and how it is known."""

    units: Mapping[str, Unit]
    code: str
    sure: str


def read_days(text: str, units: Units | None = None) -> WeatherFile:
    """Read a file's text; `units` says what its numbers are in where its headings don't.

    The kind of file is found by its header or shape. Raises Refusal, and nothing else, naming the line and the word
    that can't be used; two stations in one file are refused. A day given twice with different values loses them.
    """
    found = rows(text)
    line, first = found[0]
    shape = columns(line, first)
    pile = gather(found[1:] if shape.header else found, shape)
    if not pile.read:
        raise Refusal(f"line {line}", "this is a header, and no row is under it.")
    dialect = _dialect(pile, shape)
    told = guess(_unnamed(pile, shape))
    known = _units(pile, shape, dialect, told, units)
    file = WeatherFile(
        days=(), read=pile.read, dropped={}, dialect=dialect, units="", unit_words="", sure="",
        station="".join(f"{id} {name}".strip() for id, name in pile.stations.items()), notes=_notes(pile),
    )  # fmt: skip
    if known is None:
        return _asked(file, pile, shape, told)
    days, dropped = _converted(pile, known.units)
    return replace(
        file,
        days=days,
        dropped=dropped,
        units=known.code,
        unit_words=", ".join(dict.fromkeys(_WORDS[known.units[what]] for what in WHATS if what in known.units)),
        sure=known.sure,
        sample=_sample(pile, days),
        gaps=gaps_of(days),
    )


def _unnamed(pile: Pile, shape: Columns) -> dict[date, dict[str, str]]:
    """The values whose heading names no unit."""
    if not shape.units:
        return dict(pile.days)
    return {day: {w: text for w, text in v.items() if w not in shape.units} for day, v in pile.days.items()}


def _dialect(pile: Pile, shape: Columns) -> str:
    if shape.long:
        return LONG
    if "station" not in shape.at:
        return PLAIN
    if any(station.startswith("GHCND:") for station in pile.stations):
        return OLD_ORDER
    whole = not any("." in text for values in pile.days.values() for text in values.values())
    flagged = any(f"{what} flags" in shape.at for what in WHATS)
    return STATION if whole and flagged and RAIN in shape.at else ORDER


def _units(pile: Pile, shape: Columns, dialect: str, told: Guess, given: Units | None) -> _Known | None:
    """The unit of each column; None where the owner has to be asked."""
    whats = [what for what in WHATS if what in shape.at or shape.long]
    asked = [what for what in whats if what not in shape.units]
    if not asked or not any(what in values for values in pile.days.values() for what in asked):
        chosen, sure = Units.METRIC, "named in its header" if shape.units else "no values"
    elif given is not None:
        fixed = dialect in (LONG, STATION, OLD_ORDER) and Units.TENTHS in told.possible
        why = (
            "such a file is in tenths"
            if fixed and given is not Units.TENTHS
            else impossible(_unnamed(pile, shape), given)
        )
        if why:
            raise Refusal(f"--units {given}", f"that can't be: {why}. Nothing was taken in.")
        chosen, sure = given, "as you said"
    elif dialect in (LONG, STATION, OLD_ORDER) and Units.TENTHS in told.possible:
        chosen, sure = Units.TENTHS, "by the kind of file"
    elif told.units is not None:
        chosen, sure = told.units, f"{TOLD}: {told.why}"
    else:
        return None
    units = {what: shape.units.get(what) or unit_of(what, chosen) for what in whats}
    codes = {next((code for code in Units if unit_of(what, code) == unit), "mixed") for what, unit in units.items()}
    return _Known(units, str(*codes) if len(codes) == 1 else "mixed", sure)


def _converted(pile: Pile, units: Mapping[str, Unit]) -> tuple[tuple[DayWeather, ...], dict[str, int]]:
    """The days, and everything dropped with its count: first what the rows themselves showed."""
    known: dict[tuple[str, str], float] = {}
    dropped = pile.dropped.copy()
    found = []
    for day in sorted(pile.days):
        values: dict[str, float | None] = {}
        for what, text in pile.days[day].items():
            value = known.get((what, text))
            if value is None:
                value = known[what, text] = _base(text, units[what])
            if what == RAIN and not 0 <= value <= MOST_MM:
                dropped[ABSURD_RAIN] += 1
            elif what != RAIN and not COLDEST_C <= value <= HOTTEST_C:
                dropped[ABSURD_HEAT] += 1
            else:
                values[what] = value
        high, low = values.get(HIGH), values.get(LOW)
        if high is not None and low is not None and high < low:
            dropped[CROSSED] += 2
            high = low = None
        elif (high is None) is not (low is None):
            dropped[LONE] += 1
            high = low = None
        if high is None and values.get(RAIN) is None:
            dropped[EMPTY] += 1
        else:
            found.append(DayWeather(day, high, low, values.get(RAIN)))
    return tuple(found), dict(dropped)


def _base(text: str, unit: Unit) -> float:
    """Exactly what the written number means, in C or mm."""
    return float(Fraction(text.rstrip(".")) * unit.factor + unit.offset)


def _sample(pile: Pile, days: tuple[DayWeather, ...]) -> tuple[Sample, ...]:
    """The wettest, the hottest and the coldest day: there wrong units show. The first days fill up."""
    telling = [
        max((d for d in days if d.rain_mm is not None), key=lambda d: d.rain_mm or 0.0, default=None),
        max((d for d in days if d.high_c is not None), key=lambda d: d.high_c or 0.0, default=None),
        min((d for d in days if d.low_c is not None), key=lambda d: d.low_c or 0.0, default=None),
    ]
    chosen = {day.date: day for day in (*telling, *days[:3]) if day is not None}
    return tuple(Sample(day, pile.days[day.date]) for day in sorted(list(chosen.values())[:3], key=lambda d: d.date))


def _asked(file: WeatherFile, pile: Pile, shape: Columns, told: Guess) -> WeatherFile:
    """The same file with a question in the place of its days, and what three rows would be in each of the units."""
    possible = [units for units in Units if not told.possible or units in told.possible]
    whats = [what for what in WHATS if what in shape.at or shape.long]
    readings = []
    for units in possible:
        days, _ = _converted(pile, {what: shape.units.get(what) or unit_of(what, units) for what in whats})
        readings.append((units, _sample(pile, days)))
    doubt = (
        f"Its numbers can be in {' or '.join(possible)} units."
        if told.possible
        else f"Its numbers fit no one kind of units: {told.why}."
    )
    return replace(file, doubt=doubt, readings=tuple(readings))


def _notes(pile: Pile) -> tuple[str, ...]:
    """What to know besides: traces, presumed noughts, elements not used, and when the day ends."""
    notes = []
    if pile.traces:
        notes.append(f"{pile.traces} traces of rain are taken as 0.")
    if pile.presumed:
        notes.append(f"{pile.presumed} values are noughts that its service presumed.")
    if pile.others:
        names = ", ".join(sorted(pile.others)[:8])
        notes.append(f"{pile.others.total()} rows hold what is not used here: {names}.")
    hour = pile.times.most_common(1)[0][0] if pile.times else ""
    if hour.isdecimal() and int(hour) <= _MORNING:
        notes.append(f"It was read at {hour.zfill(4)[:2]}:{hour.zfill(4)[2:]}: a high may belong to the day before.")
    return tuple(notes)
