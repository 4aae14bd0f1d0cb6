"""A file of weather and what it came to, in words and as the JSON that scripts read."""

import textwrap
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from journal.facts.frost import FREEZE_BASIS, LEAST_YEARS, NORMAL_BASIS, NORMAL_YEARS, YEARS_BASIS
from journal.reckon.frost import Freezes, FrostDates
from journal.reckon.normals import Normals
from journal.record.month_normal import written
from journal.record.quantity import in_unit
from journal.record.unit import UNITS
from journal.reports.text import WIDTH, table
from journal.season.weather_file.found import HIGH, LOW, RAIN, TOLD, Sample, WeatherFile
from journal.session.intake import Intake

JSON = dict[str, Any]

_SHOWN_GAPS = 3
_NAMES = {"last_frost": "last frost", "first_frost": "first frost"}


@dataclass(frozen=True, slots=True)
class Proposed:
    """What the weather on file says of frost and of the months; nothing of it holds until a line accepts it."""

    frost: FrostDates | None
    normals: Normals | None
    units: str


def weather_json(file: WeatherFile, intake: Intake, proposed: Proposed) -> JSON:
    """Keys are a promise; dates as year-month-day, days of the year as month-day, null for what can't be said."""
    return {
        "read": file.read,
        "kept": file.kept,
        "dropped": dict(file.dropped),
        "proposed": {
            "last_frost": _freezes_json(proposed.frost.last) if proposed.frost else None,
            "first_frost": _freezes_json(proposed.frost.first) if proposed.frost else None,
            "normals": _normals_json(proposed.normals, proposed.units) if proposed.normals else None,
        },
        "new": len(intake.new),
        "changed": len(intake.changed),
        "known": intake.known,
        "yours": intake.yours,
        "struck": intake.struck,
        "dialect": file.dialect,
        "station": file.station or None,
        "units": file.units,
        "unit_words": file.unit_words,
        "sure": file.sure,
        "sample": [_sample_json(sample) for sample in file.sample],
        "gaps": [[first.isoformat(), last.isoformat()] for first, last in file.gaps],
        "notes": list(file.notes),
    }


def _freezes_json(freezes: Freezes) -> JSON:
    chances = {str(chance): str(day) if day else None for chance, day in freezes.chances.items()}
    return {
        **(chances or {"10": None, "50": None, "90": None}),
        "years": freezes.years,
        "dates": [day.isoformat() for day in freezes.dates],
        "line": freezes.line or None,
    }


def _normals_json(normals: Normals, units: str) -> JSON:
    return {
        "months": [
            {
                "month": month.normal.month,
                "high_c": month.normal.high_c,
                "low_c": month.normal.low_c,
                "rain_mm": month.normal.rain_mm,
                "years": month.years,
                "rain_years": month.rain_years,
            }
            for month in normals.months
        ],
        "years": normals.years,
        "line": normals.line(units),
    }


def _sample_json(sample: Sample) -> JSON:
    day = sample.day
    us = {
        key: None if value is None else round(in_unit(value, UNITS[unit]), 2)
        for key, value, unit in (
            ("high_f", day.high_c, "f"),
            ("low_f", day.low_c, "f"),
            ("rain_in", day.rain_mm, "in"),
        )
    }
    metric = {"high_c": day.high_c, "low_c": day.low_c, "rain_mm": day.rain_mm}
    return {"date": day.date.isoformat(), **metric, **us, "as_written": dict(sample.written)}


def weather_text(file: WeatherFile, intake: Intake, proposed: Proposed, *, saved: bool) -> str:
    """What was read, how it was understood, what was left out and why, and what may be accepted."""
    sample = table(sample_rows(file.sample)).splitlines()
    rows = [*_read_rows(file), *sample, *_left_out(file), *_book_rows(intake, saved=saved)]
    return "\n".join(line for row in [*rows, "", *_proposed_rows(proposed)] for line in _wrapped(row))


def _wrapped(row: str) -> list[str]:
    """Sentences in lines of the terminal; a line to be typed, and a table, stay as they are."""
    if not row.rstrip().endswith((".", ":")) or "  " in row.strip():
        return [row]
    indent = " " * (len(row) - len(row.lstrip()) + 2)
    return textwrap.wrap(row, WIDTH, subsequent_indent=indent)


def _read_rows(file: WeatherFile) -> list[str]:
    whose = f", {file.station}" if file.station else ""
    span = f", {file.days[0].date} to {file.days[-1].date}" if file.days else ""
    rows = [
        f"{file.dialect[0].upper()}{file.dialect[1:]}{whose}.",
        f"Rows read: {file.read}. Days kept: {file.kept}{span}.",
    ]
    if file.unit_words:
        rows.append(f"Its numbers are in {file.unit_words} ({file.sure}).")
    if file.sure.startswith(TOLD):
        rows.append("Are these rows wrong? Then say --units us, metric or tenths.")
    return rows


def sample_rows(samples: Iterable[Sample]) -> list[tuple[str, ...]]:
    """One row a day: as it is written, and as it was understood in both units."""
    rows = []
    for sample in samples:
        day = sample.day
        cells = []
        for name, what, value, unit, other in (
            ("high", HIGH, day.high_c, "C", "F"),
            ("low", LOW, day.low_c, "C", "F"),
            ("rain", RAIN, day.rain_mm, "mm", "in"),
        ):
            if value is not None:
                places = 2 if other == "in" else 1
                us = in_unit(value, UNITS[other.casefold()])
                cells.append(f"{name} {sample.written.get(what, '')} = {value:.1f} {unit}, {us:.{places}f} {other}")
            else:
                cells.append("")
        rows.append((f"  {day.date}", *cells))
    return rows


def _left_out(file: WeatherFile) -> list[str]:
    rows = [f"Values dropped: {count} {reason}." for reason, count in sorted(file.dropped.items())]
    if file.gaps:
        missing = sum((last - first).days + 1 for first, last in file.gaps)
        shown = "; ".join(f"{a} to {b}" if a != b else f"{a}" for a, b in file.gaps[:_SHOWN_GAPS])
        more = f" and {len(file.gaps) - _SHOWN_GAPS} more" if len(file.gaps) > _SHOWN_GAPS else ""
        rows.append(f"Missing between: {missing} days ({shown}{more}).")
    return [*rows, *file.notes]


def _counted(count: int, what: str) -> str:
    return f"{count} {what}{'s' * (count != 1)}"


def _book_rows(intake: Intake, *, saved: bool) -> list[str]:
    head = "Saved" if saved else "Would save"
    new = _counted(len(intake.new), "new day")
    rows = [f"{head}: {new}, {len(intake.changed)} corrected. Known already: {intake.known}."]
    if intake.yours:
        rows.append(f"You logged {intake.yours} of these days yourself: what you wrote holds.")
    if intake.struck:
        rows.append(f"{intake.struck} of these days you struck out: they stay out.")
    if saved and intake.wanted:
        rows.append("`swardbook undo` takes all of it back.")
    return rows


def _proposed_rows(proposed: Proposed) -> list[str]:
    if proposed.frost is None and proposed.normals is None:
        return ["Too little weather is on file to tell frost dates or normals."]
    rows = ["Proposed from the weather on file; nothing changes until you accept it."]
    if proposed.frost is None:
        rows.append("No frost dates: no half of a year has nine tenths of its lows on file.")
    else:
        rows += [*_freezes_rows(proposed.frost.last), *_freezes_rows(proposed.frost.first)]
        rows.append(f"  A day with a low of 32 F (0 C) or less counts: {FREEZE_BASIS.words()}.")
    if proposed.normals is not None:
        rows += _normals_rows(proposed.normals, proposed.units)
    return rows


def _freezes_rows(freezes: Freezes) -> list[str]:
    name = _NAMES[freezes.key]
    if not freezes.years:
        return [f"  {name}: no such half of a year is on file whole."]
    if not freezes.chances:
        dates = ", ".join(day.isoformat() for day in freezes.dates) or "none"
        return [
            f"  {name}, {_counted(freezes.years, 'year')}: {dates}.",
            f"    {LEAST_YEARS} are needed for a date: {YEARS_BASIS.words()}.",
        ]
    without = freezes.years - len(freezes.dates)
    side = "later" if freezes.key == "last_frost" else "earlier"
    chances = ", ".join(f"{chance} in 100 {side} than {day or '-'}" for chance, day in freezes.chances.items())
    rows = [
        f"  {name}, {_counted(freezes.years, 'year')}{f' ({without} without a freeze)' if without else ''}: {chances}."
    ]
    if freezes.cut:
        rows.append("    no date can be told from it: is this weather of your own half of the world?")
    return [*rows, f"    {freezes.line}"] if freezes.line else rows


def _normals_rows(normals: Normals, units: str) -> list[str]:
    few = f" Fewer than {NORMAL_YEARS}: {NORMAL_BASIS.words()}." if normals.years < NORMAL_YEARS else ""
    months = [(f"    {written([month.normal], units)}", _counted(month.years, "year")) for month in normals.months]
    return [
        f"  normals (mean high, mean low, rain of the month), at least {_counted(normals.years, 'year')}.{few}",
        table(months),
        f"    {normals.line(units)}",
    ]
