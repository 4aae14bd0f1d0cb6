"""Taking in a file of daily weather."""

import sys
import time
from argparse import Namespace
from dataclasses import replace
from datetime import date
from pathlib import Path

from journal.cli.out import DONE, show, show_json, trouble
from journal.reckon.frost import frost_dates
from journal.reckon.normals import normals
from journal.record.day import FIRST_YEAR
from journal.record.refusal import Refusal, nearest
from journal.reports.text import table
from journal.reports.weather import Proposed, sample_rows, weather_json, weather_text
from journal.season.daily import weather_days
from journal.season.history import LAWN, History
from journal.season.weather_file.found import Units, WeatherFile
from journal.season.weather_file.read import read_days
from journal.session.session import Session

LARGEST = 64 * 1024 * 1024
"""Bytes; a century of one station's days, each value in a row of its own, is a tenth of it."""

PATIENCE = 1.0
"""Seconds after which somebody at a terminal is told what goes on."""


def import_weather(session: Session, given: Namespace) -> int:
    """Read the file, write its days down as one act, and propose frost dates and normals from all that is on file."""
    began = time.monotonic()
    units = _units(given.units)
    text = _text(given.file)
    try:
        file = read_days(text, units)
    except Refusal as refusal:
        raise Refusal(", ".join(filter(None, (given.file, refusal.word))), refusal.why) from None
    if file.doubt:
        return _ask(given.file, file)
    file = _until(file, session.today)
    if time.monotonic() - began > PATIENCE and sys.stderr.isatty():
        print(f"{file.kept} days are read; on to the book.", file=sys.stderr, flush=True)
    intake = session.weigh(file.days) if given.dry_run else session.take_in(file.days)
    history = intake.after(session.history) if given.dry_run else session.history
    proposed = _proposed(history, session.today)
    if given.json:
        show_json(weather_json(file, intake, proposed))
    else:
        show(weather_text(file, intake, proposed, saved=not given.dry_run))
    return DONE


def _units(word: str | None) -> Units | None:
    if word is None:
        return None
    try:
        return Units(word.casefold())
    except ValueError:
        why = "us (F and inches), metric (C and mm) or tenths (of C and of mm) is wanted."
        raise Refusal(f"--units {word}", why, nearest(word, Units)) from None


def _text(name: str) -> str:
    """The file's text: UTF-8, or UTF-16 with its mark, or one byte a letter. Raises Refusal for what is no text."""
    path = Path(name)
    if path.is_dir():
        raise Refusal(name, "this is a folder; a file is wanted.")
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
    except OSError as error:
        raise Refusal(name, f"{error.strerror}.") from None
    except ValueError as error:
        raise Refusal(name, f"{error}.") from None
    if len(data) > LARGEST:
        raise Refusal(name, f"larger than {LARGEST // 1024**2} MiB: a file of one station is wanted.")
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return data.decode("utf-16", errors="replace")
    if b"\0" in data:
        raise Refusal(name, "this is no text file.")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("latin-1")  # only names of stations are more than plain letters


def _until(file: WeatherFile, today: date) -> WeatherFile:
    """Without days that lie ahead: those are a forecast."""
    days = tuple(day for day in file.days if day.date <= today)
    ahead = len(file.days) - len(days)
    return replace(file, days=days, dropped={**file.dropped, "a day that lies ahead": ahead}) if ahead else file


def _ask(name: str, file: WeatherFile) -> int:
    rows = [f"{name}: {file.doubt} Say which with --units:"]
    for units, samples in file.readings:
        rows += [f"  --units {units}", table(sample_rows(samples)) or "  no value can be meant so"]
    return trouble("\n".join(rows))


def _proposed(history: History, today: date) -> Proposed:
    past = history.on(LAWN, today)
    days = weather_days(past, date(FIRST_YEAR, 1, 1).toordinal(), today.toordinal()).values()
    return Proposed(frost_dates(days, past.lawn.latitude), normals(days), past.lawn.units)
