"""Owners who do on its day exactly what the plan says, from July to the next June, on two zones sown weeks apart.

Nothing that they do or leave is a harm, a loss or late. What notes are left are listed, each with its reason.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta

import pytest

from journal.plan.step import State, Step
from journal.plan.steps import steps
from journal.rules.flag import Flag, Level
from journal.season.history import History
from journal.standing import findings, preflight
from tests.plan.garden import ZONES, kept
from tests.plan.renovation import SHED
from tests.scenario import day, draft, later, typed

BEGUN, ENDS = "2026-07-01", "2027-06-30"

NOTES = {
    "keep-off": "told of whatever was put down, until it is dry, or watered in and dry",
    "barrier-before-seed": "every barrier says for two weeks from when on seed may follow it",
    "seed-short-season": "sown with fewer than nine weeks of growth left and in time all the same, as the plan said",
    "mow-blade": "told with the cut that wears the blade out; the step to sharpen it opens with that cut",
}
"""The rules whose notes an owner who obeys may hear, and why."""

TIMER = ("schedule front back 20min mon thu 6:00 from 5/15 to 9/30", "schedule front back 20min mon thu 6:00 from 5/1")
HIGHS = dict(zip(range(1, 13), (34, 37, 47, 58, 69, 78, 82, 80, 73, 60, 48, 37), strict=True))


@dataclass
class Owner:
    """Someone with the plan at hand. `sows` is the day on which each zone is meant to be sown."""

    sows: dict[str, str]
    weather: bool = False
    changes: dict[str, object] = field(default_factory=dict)
    book: History = field(init=False)
    sown: dict[str, date] = field(default_factory=dict)
    told: list[str] = field(default_factory=list)
    notes: set[str] = field(default_factory=set)
    did: set[str] = field(default_factory=set)
    waits: dict[date, list[str]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        lawn = {"treatments_since": "2025-06-01"}
        self.book = kept(products=SHED, lawn=lawn, set_up=BEGUN, **self.changes)
        for zone, on in self.sows.items():
            self.log(day(BEGUN), f"intend seed three-river-blend {on} {zone}")
        self.log(day(BEGUN), "see dandelion front back")
        self.log(day(BEGUN), "see crabgrass front back")

    def lives(self) -> None:
        """A day at a time, to the end."""
        on = day(BEGUN)
        while on <= day(ENDS):
            for line in self._happens(on):
                self.log(on, line)
            self._obeys(on)
            self._hears(on, findings(self.book, on))
            on += timedelta(1)

    def _happens(self, on: date) -> Iterator[str]:
        """What comes of itself, and what was to be done the day after something else."""
        if self.weather:
            high = HIGHS[on.month]
            yield f"weather {high}F {high - 20}F {'0.4in' if self._rains(on) else '0in'}"
        if (on.month, on.day) in ((7, 1), (5, 1)):
            yield TIMER[on.year == 2027]
        yield from (f"see emerged {zone}" for zone, sown in self.sown.items() if (on - sown).days == 14)
        yield from self.waits.pop(on, [])

    def _obeys(self, on: date) -> None:
        seen: set[str] = set()
        for _ in range(14):
            todo = next((step for step in self._due(on) if self._line(step, on) not in {"", *seen}), None)
            if todo is None:
                return
            line = self._line(todo, on)
            seen |= {line} if todo.step != "damp" else set()
            self.log(on, line)
            self._then(on, todo, line)
        raise AssertionError(f"{on}: there is no end of things to do")

    def _due(self, on: date) -> list[Step]:
        return [step for step in steps(self.book, on) if step.state in (State.OPEN, State.LATE)]

    def _line(self, step: Step, on: date) -> str:
        """What to type: the step's own line, on the day meant, or in the best days."""
        if step.step == "soil-test":
            return f"soil ph 6.4 p low k 95ppm {' '.join(step.zones)}"
        if step.step == "seed":
            zones = [zone for zone in step.zones if on >= day(self.sows.get(zone, ENDS))]
            return f"seed three-river-blend 4lb/k {' '.join(zones)}" if zones else ""
        if step.best is not None and on < step.best[0]:
            return ""
        return "" if "then dry" in step.amount and (self._rains(on) or self._rains(later(on, 1))) else step.line

    def _rains(self, on: date) -> bool:
        """What the sky does, and the forecast tells."""
        return self.weather and on.toordinal() % 6 == 0

    def _then(self, on: date, step: Step, line: str) -> None:
        """What the step told besides."""
        zones = " ".join(step.zones)
        if step.step == "seed":
            self.sown |= {zone: on for zone in step.zones if zone in line}
        if "then water 0.5 in" in step.amount:
            self.log(on, f"water 50min {zones}")
            self.waits.setdefault(later(on, 1), []).append(f"see dry {zones}")
        elif "water it in" in step.amount and not (self._rains(on) or self._rains(later(on, 1))):
            self.log(on, f"water 25min {zones}")
        elif line.startswith("treat "):
            self.log(on, f"see dry {zones}")

    def log(self, on: date, line: str) -> None:
        self._hears(on, preflight(self.book, draft(self.book, f"{on} {line}"), on).raised, line)
        self.book = typed(self.book, f"{on} {line}")
        self.did.add(line.split()[0])

    def _hears(self, on: date, flags: tuple[Flag, ...], line: str = "") -> None:
        for flag in flags:
            if flag.level is Level.NOTE:
                self.notes.add(flag.rule)
            else:
                self.told.append(f"{on} {line}: {flag.level} {flag.rule}, {flag.headline}")


CLAY = {"zones": {name: facts | {"soil": "clay"} for name, facts in ZONES.items()}}
OWNERS: dict[str, Callable[[], Owner]] = {
    "sown in August and September": lambda: Owner({"front": "2026-08-16", "back": "2026-09-06"}),
    "sown early and late in September": lambda: Owner({"front": "2026-09-06", "back": "2026-09-21"}),
    "the same, with weather on file": lambda: Owner({"front": "2026-09-06", "back": "2026-09-21"}, weather=True),
    "on clay, with weather": lambda: Owner(
        {"front": "2026-08-20", "back": "2026-09-10"}, weather=True, changes=dict(CLAY)
    ),
    "one zone only": lambda: Owner({"front": "2026-09-06"}),
}


@pytest.mark.parametrize("name", OWNERS)
def test_nothing_is_held_against_an_owner_who_obeys(name: str) -> None:
    owner = OWNERS[name]()
    owner.lives()
    assert owner.told == []
    assert owner.notes <= set(NOTES), owner.notes - set(NOTES)
    assert set(owner.sown) == set(owner.sows)
    assert owner.did >= {"mow", "seed", "feed", "treat", "aerate", "soil", "sharpen", "water"}
