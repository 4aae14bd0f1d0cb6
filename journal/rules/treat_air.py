"""Leaf products put down in heat, in cold, or on grass at rest."""

from collections.abc import Callable
from datetime import date, timedelta

from journal.facts.citation import label
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use, uses
from journal.record.entry import Entry
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.growth import dormant_open
from journal.season.history import Past

STANDS_DAYS = 7
DORMANT_STANDS_DAYS = 14
BARELY = 0.05
"""Degrees C: what another unit may differ by when it is rounded."""

_WATCHES: tuple[type[Entry], ...] = (*PROTECTED, Weather)
_TURNS = tuple(after(kind, STANDS_DAYS - 1) for kind in PROTECTED)

Judged = tuple[Level, Use, float, str]
"""How bad, what was put down, in how much warmth (C), and the number that decides."""


@rule(
    "treat-hot",
    levels=(Level.LOSS,),
    watches=_WATCHES,
    turns=_TURNS,
    basis=(label("the air it is meant for"),),
)
def treat_hot(past: Past, n: Numbers) -> Finding | None:
    """A leaf spray or a weed-and-feed on a day too hot for it, or on the day before one."""

    def judge(use: Use) -> Judged | None:
        most = _limit(use, 1)
        high = _warmest(past, use)
        if high is None or high <= n.stricter("most", of_label=most) + BARELY:
            return None
        return Level.LOSS, use, high, "most"

    found = _worst(past, STANDS_DAYS, judge)
    if not found:
        return None
    _, use, high, _ = found[-1]
    most = n.stricter("most", of_label=_limit(use, 1))
    return _finding(
        past, found, "most",
        headline=f"{use.name} in {_degrees(high, past)} of heat",
        why=(
            f"put down {on(use.date, past)}; above {_degrees(most, past)} that day or the next the grass may burn and "
            "vapour drifts"
        ),
        do="no more of it before it is cooler; keep traffic off, and let the grass recover before anything else",
    )  # fmt: skip


@rule(
    "treat-cold",
    levels=(Level.LOSS, Level.NOTE),
    watches=_WATCHES,
    turns=_TURNS,
    basis=(label("the air it is meant for"),),
)
def treat_cold(past: Past, n: Numbers) -> Finding | None:
    """A leaf spray or a weed-and-feed on a day too cold for it to work."""

    def judge(use: Use) -> Judged | None:
        high = _high(past, use, use.day)
        if high is None:
            return None
        least = n.stricter("least", of_label=_limit(use, 0))
        if high >= least - BARELY:
            return None
        loss = high < min(n["loss"], least) - BARELY
        return (Level.LOSS, use, high, "loss") if loss else (Level.NOTE, use, high, "least")

    found = _worst(past, STANDS_DAYS, judge)
    if not found:
        return None
    _, use, high, number = found[-1]
    least = n.stricter("least", of_label=_limit(use, 0))
    return _finding(
        past, found, number,
        headline=f"{use.name} on a day of {_degrees(high, past)}",
        why=(
            f"put down {on(use.date, past)}; below {_degrees(least, past)} little of it is taken up, though some "
            "mixtures work in cooler air"
        ),
        do="look in two weeks whether it worked; before it is put down again its label's days have to be over",
    )  # fmt: skip


@rule(
    "treat-dormant",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*PROTECTED, Sighting),
    turns=[after(kind, DORMANT_STANDS_DAYS - 1) for kind in PROTECTED],
    basis=(published("purdue-drought", note="wait while less than half of the lawn is green"),),
)
def treat_dormant(past: Past, n: Numbers) -> Finding | None:
    """A leaf-applied weed product on grass that rests."""

    def judge(use: Use) -> Judged | None:
        if not use.against_weeds or dormant_open(past.history.on(past.zone, use.date, past.watches)) is None:
            return None
        return (Level.NOTE if use.spot else Level.LOSS), use, 0.0, ""

    found = _worst(past, DORMANT_STANDS_DAYS, judge)
    if not found:
        return None
    use = found[-1][1]
    seen = dormant_open(past.history.on(past.zone, use.date, past.watches))
    since = f"; dormant since {on(seen.date, past)}" if seen else ""
    spot = ", on a spot" if use.spot else ""
    hurt = "" if use.kind == "nonselective" else ", and the grass is hurt"
    return _finding(
        past, found, "",
        headline=f"{use.name} on dormant grass",
        why=f"put down {on(use.date, past)}{spot}{since}: weeds at rest take little of it up{hurt}",
        do="no more weed products before it is green again; then log see green",
        stands=DORMANT_STANDS_DAYS,
        also=(seen.id,) if seen else (),
    )  # fmt: skip


def _worst(past: Past, within: int, judge: Callable[[Use], Judged | None]) -> list[Judged]:
    """The gravest of what was put on the leaves in the last so many days, oldest first."""
    found = [one for use in uses(past, past.day - within + 1) if use.on_leaves and (one := judge(use)) is not None]
    gravest = max((one[0].gravity for one in found), default=0)
    return [one for one in found if one[0].gravity == gravest]


def _limit(use: Use, end: int) -> float | None:
    return None if use.label.temp_c is None else use.label.temp_c[end]


def _warmest(past: Past, use: Use) -> float | None:
    """The highest of that day and the next, as far as they are known."""
    highs = (_high(past, use, use.day), _high(past, use, use.day + 1))
    return max((high for high in highs if high is not None), default=None)


def _high(past: Past, use: Use, day: int) -> float | None:
    """A day's high; for the day of use the warmth noted with it stands in where no high is known."""
    known = [entry.high_c for entry in past.lawnwide(Weather).between(day, day) if entry.high_c is not None]
    if known:
        return known[-1]
    return use.entry.temp_c if isinstance(use.entry, Treatment) and day == use.day else None


def _degrees(celsius: float, past: Past) -> str:
    return in_words(celsius, "C", past.lawn.units)


def _finding(
    past: Past, found: list[Judged], number: str, *, headline: str, why: str, do: str, stands: int = STANDS_DAYS,
    also: tuple[str, ...] = (),
) -> Finding:  # fmt: skip
    level, use, _, _ = found[-1]
    clears_on: date = use.date + timedelta(stands)
    return Finding(
        level=level,
        headline=headline,
        why=why,
        do=do,
        clears=f"{stands} days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(*(one[1].entry.id for one in found), *also),
        numbers=(number,) if number else (),
    )
