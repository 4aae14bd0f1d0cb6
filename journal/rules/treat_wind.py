"""Spraying in too much wind, or in none."""

from datetime import timedelta

from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.dawn import near_dawn_or_dusk
from journal.reckon.dose import doses
from journal.reckon.protection import protects, sprayed, wind_limit
from journal.record.kinds.treatment import Treatment
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import called, on
from journal.season.history import Past

WIND_STANDS_DAYS = 7
BARELY = 0.01
"""Wind in m/s: what another unit may differ by when it is rounded."""


@rule(
    "treat-windy",
    levels=(Level.HARM, Level.NOTE),
    watches=(Treatment,),
    turns=(after(Treatment, WIND_STANDS_DAYS - 1),),
    basis=(LABEL_LAW,),
)
def treat_windy(past: Past, n: Numbers) -> Finding | None:
    """Sprayed in more wind than the label, or good practice, allows."""
    blown = [(_level(past, entry, n), entry) for entry in past[Treatment].within(WIND_STANDS_DAYS)]
    gravest = max((level.gravity for level, _ in blown if level is not None), default=None)
    if gravest is None:
        return None
    found = [(level, entry) for level, entry in blown if level is not None and level.gravity == gravest]
    level, entry = found[-1]
    lawn = past.history.lawn(entry.date)
    limit = n.tightest("most", of_label=wind_limit(entry, lawn))
    calm, wind = n["calm"], entry.wind_m_s or 0.0
    spray = sprayed(entry, lawn)
    decides, most = ("most", limit) if wind > limit + BARELY else ("calm", calm)
    said, bound = (in_words(value, "m/s", past.lawn.units) for value in (wind, most))
    clears_on = entry.date + timedelta(WIND_STANDS_DAYS)
    return Finding(
        level=level,
        headline=f"{'sprayed' if spray else 'granules spread'} in {said} of wind",
        why=f"{_names(entry)} {on(entry.date, past)}; {'spray drifts' if spray else 'dust drifts'} above {bound}",
        do="wait for a calmer hour; keep people and pets off where it may have drifted, and look at what grows there",
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry.id for _, entry in found),
        numbers=(decides,),
    )


def _names(entry: Treatment) -> str:
    """All that was in the tank."""
    return " and ".join(dict.fromkeys(called(dose.product) for dose in doses(entry)))


def _level(past: Past, entry: Treatment, n: Numbers) -> Level | None:
    """Harm above the label's wind, a note above what is calm; granules are only ever a note."""
    lawn = past.history.lawn(entry.date)
    if entry.wind_m_s is None or not protects(entry, lawn):
        return None
    if entry.wind_m_s > n.tightest("most", of_label=wind_limit(entry, lawn)) + BARELY:
        return Level.HARM if sprayed(entry, lawn) else Level.NOTE
    return Level.NOTE if entry.wind_m_s > n["calm"] + BARELY and sprayed(entry, lawn) else None


@rule(
    "treat-still",
    levels=(Level.NOTE,),
    watches=(Treatment,),
    turns=(after(Treatment, WIND_STANDS_DAYS - 1),),
    basis=(published("stewardship-weather"),),
)
def treat_still(past: Past, n: Numbers) -> Finding | None:
    """Sprayed in still air near dawn or dusk, when a fine spray hangs and drifts."""
    still = [entry for entry in past[Treatment].within(WIND_STANDS_DAYS) if _hangs(past, entry, n)]
    if not still:
        return None
    entry = still[-1]
    wind, least = (in_words(value, "m/s", past.lawn.units) for value in (entry.wind_m_s or 0.0, n["least"]))
    when = "no time noted" if entry.time is None else f"at {entry.time:%H:%M}, near dawn or dusk"
    clears_on = entry.date + timedelta(WIND_STANDS_DAYS)
    return Finding(
        level=Level.NOTE,
        headline=f"sprayed in {wind} of wind",
        why=f"{_names(entry)} {on(entry.date, past)}, {when}; below {least} a spray may hang and drift far",
        do="spray when there is a light, steady wind" + (", and write the time down" if entry.time is None else ""),
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(one.id for one in still),
    )


def _hangs(past: Past, entry: Treatment, n: Numbers) -> bool:
    lawn = past.history.lawn(entry.date)
    if entry.wind_m_s is None or entry.wind_m_s >= n["least"] - BARELY:
        return False
    if not protects(entry, lawn) or not sprayed(entry, lawn):
        return False
    return entry.time is None or near_dawn_or_dusk(entry.date, entry.time, lawn.latitude, n["hours"])
