"""Somebody on treated ground too soon."""

from datetime import date, timedelta

from journal.facts.first_aid import BASIS, help_lines
from journal.facts.safety import BASIS as LABEL_LAW
from journal.reckon.reentry import REENTRY, Reentry, reentry, trod
from journal.reckon.uses import Use
from journal.reckon.watering_in import LONGEST_DAYS, used_within
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.hours import Within

STANDS_DAYS = 14


@rule(
    "reentry",
    levels=(Level.HARM, Level.NOTE),
    watches=REENTRY,
    turns=(after(Sighting, STANDS_DAYS - 1), *(after(kind) for kind in REENTRY)),
    basis=(LABEL_LAW, BASIS),
)
def reentry_too_soon(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """People or pets on treated ground before its re-entry condition was met."""
    found: dict[str, list[tuple[Within, Use, Sighting]]] = {}
    for seen in past[Sighting].within(STANDS_DAYS):
        if seen.subject != "traffic":
            continue
        then = past.history.on(past.zone, seen.date, past.watches)
        for use in used_within(then, LONGEST_DAYS):
            how = trod(then, use, seen)
            if how is not Within.NO:
                found.setdefault(use.name, []).append((how, use, seen))
    return tuple(_finding(past, rows, n) for rows in found.values())


def _finding(past: Past, rows: list[tuple[Within, Use, Sighting]], n: Numbers) -> Finding:
    sure = [row for row in rows if row[0] is Within.YES]
    _, use, seen = (sure or rows)[-1]
    asked = reentry(past.history.on(past.zone, seen.date, past.watches), use)
    told = "" if sure else "; which came first is not known, nor at what time"
    clears_on = seen.date + timedelta(STANDS_DAYS)
    aid = f"the label's own first aid first; {help_lines(past.lawn.units)}"
    return Finding(
        level=Level.HARM if sure else Level.NOTE,
        subject=use.name,
        headline=f"people or pets on it before it was {asked.words}"
        if not asked.by_label
        else ("people or pets on it before the label allows"),
        why=(
            f"{use.name}{' on a spot' if use.spot else ''} {on(use.date, past)}, traffic {on(seen.date, past)}; "
            f"{'the label says: until ' if asked.by_label else 'keep off until '}{asked.words}"
            f"{_water(asked, seen.date, n)}{told}"
        ),
        do=(f"{aid}; keep everybody off" if sure else f"log the time of both, like 9:00; if anybody was on it: {aid}"),
        clears=f"two weeks after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=tuple(entry_id for _, one, trodden in (sure or rows) for entry_id in (one.entry.id, trodden.id)),
        numbers=("depth",),
    )


def _water(asked: Reentry, day: date, n: Numbers) -> str:
    """What granules still lacked on that day."""
    if asked.water is None or (asked.water.enough is not None and asked.water.enough <= day.toordinal()):
        return ""
    n.stricter("depth")
    units = n.lawn.units
    had = in_words(asked.water.depth_mm, "mm", units) if asked.water.depth_mm else "none"
    return f", {in_words(asked.wanted_mm, 'mm', units)} of water wanted, {had} on file"
