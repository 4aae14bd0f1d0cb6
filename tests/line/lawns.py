"""Two lawns, one in US units and one metric, and what was logged on them."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from journal.line.read import read
from journal.line.reading import Reading
from journal.line.setup_file import settings_from_toml
from journal.record.entry import Entry
from journal.season.history import History

TODAY = date(2027, 5, 3)
"""A Monday."""

SHED = """
[[product]]
name = "oat-hill-starter"
kind = "starter"
analysis = "18-24-6"
bag = "48 lb"
cup = "0.5 lb"
[[product]]
name = "quiet-lane"
kind = "fertilizer"
analysis = "24-0-10"
[[product]]
name = "dew-iron"
kind = "iron"
form = "liquid"
bottle = "32 floz"
[[product]]
name = "gate-barrier"
kind = "pre-emergent"
actives = [{name = "prodiamine", percent = 0.38}]
[[product]]
name = "thistle-out"
kind = "weed"
form = "liquid"
[[product]]
name = "three-river-blend"
kind = "seed"
mix = [{grass = "kentucky bluegrass", percent = 50}, {grass = "perennial ryegrass", percent = 50}]
"""

US = (
    """
[lawn]
name = "North Lane"
units = "us"
[[zone]]
name = "front"
area = "2400 sqft"
circuits = [{name = "A", share = 60, rate = "0.5 in/h"}, {name = "B", share = 40, rate = "0.9 in/h"}]
[[zone]]
name = "back"
area = "3100 sqft"
[[zone]]
name = "back-walk"
area = "300 sqft"
"""
    + SHED
)
METRIC = US.replace('"us"', '"metric"')


def a_history(toml: str = US, *entries: Entry, day: date = date(2026, 4, 1)) -> History:
    """A book set up on that day, with these entries in it."""
    named = [replace(s, id=f"s{n:03}") for n, s in enumerate(settings_from_toml(toml, day))]
    return History.of([*named, *entries])


EMPTY_BOOK = History.of(settings_from_toml('[lawn]\nname = "New"\n', TODAY))


def logged(history: History, lines: Iterable[str], today: date = TODAY) -> History:
    """The history with these lines saved one after another."""
    for line in lines:
        history = history.plus(replace(drafted(line, history, today), id=f"t{history.size:03}"))
    return history


def drafted(line: str, history: History, today: date = TODAY) -> Entry:
    """The draft a line gives; the problem is the failure when it gives none."""
    reading = read(line, history, today)
    assert reading.problem is None, f"{line!r}: {reading.problem}"
    assert reading.draft is not None
    return reading.draft


def pointed(reading: Reading) -> str:
    """The words of the line that its problem points at."""
    assert reading.problem is not None, f"{reading.text!r} was read as {reading.words}"
    assert reading.draft is None
    return reading.text[reading.problem.start : reading.problem.end]
