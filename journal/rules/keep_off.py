"""Treated ground that people and pets keep off for now."""

from collections.abc import Sequence
from datetime import date

from journal.facts.first_aid import poison_help
from journal.facts.safety import BASIS as LABEL_LAW
from journal.facts.sources import published
from journal.reckon.reentry import REENTRY, Reentry, label_hours, reentry
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use
from journal.reckon.watering_in import LONGEST_DAYS, used_within
from journal.record.kinds.sighting import Sighting
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.use_days import each_day_after_use
from journal.rules.words import on
from journal.season.history import Past
from journal.season.hours import days_of
from journal.season.water import rain_mm


def _follows(use: Use, lawn: Lawn) -> int:
    """How long it may take until its condition is met, and wet ground is off bounds again."""
    wet = round(in_force(lawn, "keep-off", "rain-days")) + 1
    hours = days_of(label_hours(use.label.reentry)) + 1
    return max(wet, hours) if use.spray else LONGEST_DAYS


@rule(
    "keep-off",
    levels=(Level.NOTE,),
    watches=REENTRY,
    turns=(*each_day_after_use(_follows, LONGEST_DAYS), after(Sighting)),
    basis=(LABEL_LAW, published("npic-yardspray", "illinois-970")),
)
def keep_off(past: Past, n: Numbers) -> Finding | None:
    """Treated ground that people and pets keep off until its re-entry condition is met."""
    recent = used_within(past, LONGEST_DAYS)
    if not recent:
        return None
    waits = [one for one in (reentry(past, use) for use in recent) if one.met is None or past.day < one.met]
    if waits:
        return _waiting(past, _newest_of_each(waits), n)
    wet = _wet_again(past, recent, n)
    return _wet(past, wet, n) if wet else None


def _newest_of_each(waits: Sequence[Reentry]) -> list[Reentry]:
    newest = {one.use.name: one for one in waits}
    return sorted(newest.values(), key=lambda one: (one.use.spray, one.use.day, one.use.name))


def _waiting(past: Past, waits: list[Reentry], n: Numbers) -> Finding:
    """Granules head it: they wait longest."""
    first = waits[0]
    put_down = "; ".join(
        f"{one.use.name}{_where(one.use)} since {on(one.use.date, past)}, {_until(one)}" for one in waits
    )
    ends = [one.met for one in waits]
    clears_on = None if None in ends else date.fromordinal(max(day for day in ends if day is not None))
    dry = "log `see dry` once it is dry"
    do = f"{_lacking(first, past)}, let it dry, and {dry}" if _lacks_water(first) else dry
    return Finding(
        level=Level.NOTE,
        headline=f"people and pets off until {first.words}",
        why=put_down,
        do=f"{do}; {poison_help(past.lawn.units)}",
        clears=_clears(clears_on, past, first),
        clears_on=clears_on,
        evidence=tuple(one.use.entry.id for one in waits),
    )


def _where(use: Use) -> str:
    return " on a spot" if use.spot else ""


def _until(one: Reentry) -> str:
    return f"the label says until {one.words}" if one.by_label else f"until {one.words}"


def _lacks_water(one: Reentry) -> bool:
    return one.water is not None and one.water.enough is None


def _lacking(one: Reentry, past: Past) -> str:
    units = past.lawn.units
    assert one.water is not None
    had = f" ({in_words(one.water.depth_mm, 'mm', units)} so far)" if one.water.depth_mm else ""
    return f"water it in: {in_words(one.wanted_mm, 'mm', units)} in all{had}, if its label says so"


def _clears(clears_on: date | None, past: Past, first: Reentry) -> str:
    if clears_on is not None:
        hours = label_hours(first.use.label.reentry)
        return f"{'the hours of the label' if hours else '`see dry`'}, or {on(clears_on, past)}"
    return "watered in, and then `see dry` or the day after"


def _wet_again(past: Past, recent: Sequence[Use], n: Numbers) -> list[Use]:
    """What was put down within the last few days, where it rains on the day and was not seen dry since."""
    days = n.days("rain-days")
    late = [use for use in recent if 0 < past.day - use.day < days]
    if not late:
        return []
    rain = rain_mm(past, past.day)
    if rain is None or rain < n["rain"]:
        return []
    seen_dry = any(one.subject == "dry" for one in past[Sighting].since(past.day))
    return [] if seen_dry else late


def _wet(past: Past, wet: list[Use], n: Numbers) -> Finding:
    n.stricter("rain")
    said = "; ".join(f"{use.name}{_where(use)} {on(use.date, past)}" for use in wet)
    tomorrow = date.fromordinal(past.day + 1)
    return Finding(
        level=Level.NOTE,
        headline="people and pets off until it is dry again",
        why=f"{said}; it rained today, and what is wet again comes off on shoes and paws",
        do=f"log `see dry` once it is dry; {poison_help(past.lawn.units)}",
        clears=f"`see dry`, or {on(tomorrow, past)}",
        clears_on=tomorrow,
        evidence=tuple(use.entry.id for use in wet),
    )
