"""A lawn and its diary in words, for scenarios.

`book("2026-09-06 seed three-river 9lb front", ...)` reads every line as it would have been typed on its day.
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta

from journal.line.read import read
from journal.line.setup_file import settings_from_toml
from journal.plan.step import Step
from journal.plan.steps import steps
from journal.record.entry import Entry
from journal.rules.flag import Flag
from journal.season.history import History
from journal.standing import Preflight, findings, preflight

SET_UP = date(2026, 1, 1)

LAWN = """
[lawn]
name = "North Lane"
latitude = 42.3
last_frost = "05-06"
first_frost = "10-05"
growth = ["04-10", "11-10"]
grass = ["kentucky bluegrass", "perennial ryegrass"]

[[zone]]
name = "front"
area = "2400 sqft"
irrigated = true
rate = "0.6 in/h"

[[zone]]
name = "back"
area = "3100 sqft"
irrigated = true
rate = "0.6 in/h"

[[product]]
name = "three-river"
kind = "seed"
mix = [{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]

[[product]]
name = "stone-wall"
kind = "seed"
mix = [{grass="tall fescue", percent=90}, {grass="kentucky bluegrass", percent=10}]

[[product]]
name = "quick-rye"
kind = "seed"
mix = [{grass="perennial ryegrass", percent=100}]

[[product]]
name = "oat-hill"
kind = "starter"
analysis = "18-24-6"
slow = "20% of n"

[[product]]
name = "pond-ridge"
kind = "fertilizer"
analysis = "24-0-11"

[[product]]
name = "slow-oak"
kind = "fertilizer"
analysis = "24-0-11"
slow = "60% of n"

[[product]]
name = "green-gate"
kind = "weed-and-feed"
analysis = "24-0-6"
actives = ["2,4-d", "dicamba"]

[[product]]
name = "spring-wall"
kind = "pre-emergent"
actives = ["prodiamine"]
form = "granule"

[[product]]
name = "leaf-off"
kind = "weed"
actives = ["2,4-d"]
form = "liquid"
"""


def day(text: str | date) -> date:
    """`2026-09-06`."""
    return text if isinstance(text, date) else date.fromisoformat(text)


def lawn(*changes: tuple[str, str], toml: str = LAWN, set_up: str | date = SET_UP) -> History:
    """A book that was set up on a day and holds nothing else; `changes` replace words of the set-up."""
    for old, new in changes:
        assert old in toml, old
        toml = toml.replace(old, new)
    return History.of(numbered(settings_from_toml(toml, day(set_up))))


def numbered(entries: Iterable[Entry]) -> list[Entry]:
    """With ids in the order in which they were written down."""
    return [replace(entry, id=f"{at:06}") for at, entry in enumerate(entries)]


def book(*lines: str, on: History | None = None) -> History:
    """The same, and every line read on its own day: `2026-06-14 mow 3in front`."""
    history = lawn() if on is None else on
    for line in lines:
        history = history.plus(replace(draft(history, line), id=f"{history.size:06}"))
    return history


def typed(history: History, line: str) -> History:
    """That book with one more line."""
    return book(line, on=history)


def draft(history: History, line: str) -> Entry:
    """The entry a line stands for, typed on the day that it begins with."""
    when, _, words = line.partition(" ")
    reading = read(words, history, day(when))
    assert reading.problem is None, f"{line}: {reading.problem}"
    assert reading.draft is not None
    return reading.draft


def judged(history: History, on: str | date, line: str) -> Preflight:
    """What a line would raise and clear if it were saved on that day."""
    return preflight(history, draft(history, f"{day(on)} {line}"), day(on))


def raised(history: History, on: str | date, rule: str, zone: str = "front") -> Flag | None:
    """That rule's flag in that zone on that day, or None; hidden ones don't count."""
    found = [f for f in findings(history, day(on)) if f.rule == rule and zone in f.zones and not f.hidden]
    assert len(found) <= 1, found
    return found[0] if found else None


def level(history: History, on: str | date, rule: str, zone: str = "front") -> str:
    """The level of that flag, or '' where there is none."""
    flag = raised(history, on, rule, zone)
    return flag.level.value if flag else ""


def rules_raised(history: History, on: str | date, zone: str = "front") -> set[str]:
    """The ids of all rules whose flags stand in that zone on that day."""
    return {flag.rule for flag in findings(history, day(on)) if zone in flag.zones and not flag.hidden}


def find(history: History, on: str | date, name: str, zone: str = "front") -> Step | None:
    """That step of that zone on that day, or None."""
    found = [step for step in steps(history, day(on)) if step.step == name and zone in step.zones]
    assert len(found) <= 1, found
    return found[0] if found else None


def the(history: History, on: str | date, name: str, zone: str = "front") -> Step:
    """The same, where it must be there."""
    found = find(history, on, name, zone)
    assert found is not None, f"no step {name} for {zone} on {on}"
    return found


def later(when: str | date, days: int) -> date:
    """So many days later."""
    return day(when) + timedelta(days)


def weather(first: str | date, days: int, words: str) -> list[str]:
    """The same weather on so many days: `weather 71F 48F 0in`."""
    return [f"{later(first, at)} weather {words}" for at in range(days)]
