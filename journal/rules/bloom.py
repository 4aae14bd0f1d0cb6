"""Insect products on a lawn in flower."""

from datetime import timedelta

from journal.facts.active import Use as Purpose
from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use
from journal.reckon.watering_in import used_within
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after
from journal.rules.words import called, on
from journal.season.growth import southern
from journal.season.history import Past
from journal.season.hours import Within, days_of, within_hours
from journal.season.stand import FLOWERING_DAYS

STANDS_DAYS = 7
_FLOWERS = range(4, 11)
"""April to October; half a year on in the south."""


@rule(
    "bloom",
    levels=(Level.HARM, Level.NOTE),
    watches=(*PROTECTED, Mowing, Sighting),
    turns=tuple(after(kind, STANDS_DAYS - 1) for kind in (*PROTECTED, Mowing, Sighting)),
    basis=(LABEL_LAW, published("illinois-955", "uga-c1127", "larson-2015")),
)
def bloom(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """An insect product put down where flowers stood open, or may have."""
    found: dict[str, tuple[Level, Use, Sighting | None]] = {}
    for use in used_within(past, STANDS_DAYS):
        if use.product is not None and not _against_insects(use):
            continue
        judged = _judge(past, use, n["hours"])
        if judged is not None and use.product is None:
            judged = (Level.NOTE, judged[1]) if judged[1] is not None else None
        if judged is not None and (use.name not in found or found[use.name][0].gravity <= judged[0].gravity):
            found[use.name] = judged[0], use, judged[1]
    return tuple(_finding(past, *row, n) for row in found.values())


def _against_insects(use: Use) -> bool:
    return use.kind == "insect" or any(one.use is Purpose.INSECT for one in use.actives)


def _judge(past: Past, use: Use, hours: float) -> tuple[Level, Sighting | None] | None:
    seen = _seen_before(past, use)
    since = None if seen is None or seen.subject == "no-flowers" else seen
    mown = _mown_before(past, use, hours, since)
    if mown is Within.YES or (seen is not None and since is None):
        return None
    if since is not None:
        closed = past[Mowing].between(since.day + 1, use.day - 1)
        if not closed:
            return (Level.HARM if mown is Within.NO else Level.NOTE), since
    return (Level.NOTE, None) if _in_bloom_season(past, use) else None


def _seen_before(past: Past, use: Use) -> Sighting | None:
    """The last word on flowers that still counts on the day of the use."""
    seen = [
        one
        for one in past[Sighting].between(use.day - FLOWERING_DAYS + 1, use.day)
        if one.subject in ("flowering", "no-flowers")
    ]
    return seen[-1] if seen else None


def _mown_before(past: Past, use: Use, hours: float, since: Sighting | None) -> Within:
    """Whether flower heads were cut off in the hours before; a cut before they were seen in flower is none."""
    found = Within.NO
    first = use.day - days_of(hours) if since is None else max(use.day - days_of(hours), since.day)
    for mowing in past[Mowing].between(first, use.day):
        how = within_hours(mowing.date, mowing.time, use.date, use.time, hours)
        if how is Within.YES:
            return how
        found = how if how is Within.PERHAPS else found
    return found


def _in_bloom_season(past: Past, use: Use) -> bool:
    month = use.date.month
    return ((month + 5) % 12 + 1 if southern(past.lawn) else month) in _FLOWERS


def _finding(past: Past, level: Level, use: Use, seen: Sighting | None, n: Numbers) -> Finding:
    clears_on = use.date + timedelta(STANDS_DAYS)
    where = " on a spot" if use.spot else ""
    no_cut = f"no cut is known from the {n['hours']:g} h before"
    if seen is not None:
        why = f"flowers seen {on(seen.date, past)}, {called(use.name)}{where} {on(use.date, past)}; {no_cut}"
    else:
        why = f"{use.name}{where} {on(use.date, past)}; {no_cut}, and `see no-flowers` is not logged"
    if level is Level.HARM:
        headline = f"{use.name} on flowers that bees visit"
        do = "mow the flower heads off now unless the label says to wait, and keep off anything that opens"
    elif use.product is None:
        headline = "what nobody knows went on flowers that bees visit"
        do = "ask what it was; if it kills insects, mow the flower heads off now unless its label says to wait"
    else:
        headline = f"{use.name}: anything in flower?"
        do = (
            "look for clover and dandelion in flower; mow them off first, or log `see no-flowers`; if it was mown "
            "before, log both times"
        )
    return Finding(
        level=level,
        subject=use.name,
        headline=headline,
        why=why,
        do=do,
        clears=f"a week after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id, *((seen.id,) if seen is not None else ())),
    )
