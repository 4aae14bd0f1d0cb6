"""Rules put to zones and days, and what they find as flags."""

from collections.abc import Iterable
from datetime import date

from journal.facts.citation import Basis, Known
from journal.rules.declare import Finding, Rule
from journal.rules.flag import Flag, Level
from journal.rules.numbers import Numbers
from journal.rules.turns import sites, turn_days
from journal.season.history import History, Past

LOOK_BACK_DAYS = 60
"""The first day of a flag is looked for in stretches of so many days."""


def judged(rule: Rule, past: Past) -> tuple[tuple[Finding, Numbers], ...]:
    """What a rule finds on one day, with the numbers it read. A rule that is switched off finds harm only."""
    numbers = Numbers(rule.id, past.lawn)
    return tuple((f, numbers) for f in found(rule, past.watching(rule.watches), numbers))


def found(rule: Rule, past: Past, numbers: Numbers) -> tuple[Finding, ...]:
    """The same, with numbers that may be those of another day on the same lawn."""
    every = rule.find(past, numbers)
    return tuple(f for f in every if f.level is Level.HARM) if every and rule.id in past.lawn.off else every


def flags_of(rule: Rule, past: Past) -> tuple[Flag, ...]:
    """The rule's flags on one zone on one day."""
    return tuple(_flag(rule, past, finding, numbers) for finding, numbers in judged(rule, past))


def _flag(rule: Rule, past: Past, finding: Finding, numbers: Numbers) -> Flag:
    return Flag(
        id=flag_id(rule.id, (past.zone,), finding.subject),
        rule=rule.id,
        level=finding.level,
        zones=(past.zone,),
        subject=finding.subject,
        rose=rose(rule, past, finding.subject),
        headline=finding.headline,
        why=finding.why,
        do=finding.do,
        clears=finding.clears,
        clears_on=finding.clears_on,
        evidence=tuple(dict.fromkeys(finding.evidence)),
        numbers=numbers.used(*finding.numbers),
        basis=_once(*finding.basis, *numbers.bases(*finding.numbers), *rule.basis),
    )


def flag_id(rule: str, zones: Iterable[str], subject: str) -> str:
    """`rule/zone+zone` or `rule/zone/subject`: stable from day to day, and never with a date in it."""
    return "/".join(part for part in (rule, "+".join(zones), subject) if part)


def _once(*bases: Basis) -> tuple[Basis, ...]:
    """Each basis once; a bare judgment only where nothing says more."""
    every = tuple(dict.fromkeys(bases))
    return tuple(b for b in every if b.note or b.citations or b.kind is not Known.JUDGMENT) or every


def rose(rule: Rule, past: Past, subject: str) -> date:
    """The first day of the flag that stands on the past's day, found by going back over the days it can turn on.

    Never before the first thing on file, or before the day from which on the book is kept.
    """
    flag, spells = (rule.id, past.zone, subject), past.history.spells
    rose_on, stood_on = spells.get(flag, (past.day, past.day))
    first = _first_day(rule, past, subject, range(rose_on + 1, stood_on + 2))
    first = first or rose_on
    if past.day >= stood_on:
        spells[flag] = first, past.day
    return date.fromordinal(first)


def _first_day(rule: Rule, past: Past, subject: str, known: range) -> int:
    """The same as an ordinal; 0 where the way back leads into days on which the flag is known to have stood."""
    begun = (past.history.set_up, past.history.oldest, past.history.kept_since)
    floor = min([*(day.toordinal() for day in begun if day is not None), past.day])
    places = sites(past.history, past.lawn.zone_names if rule.whole_lawn else (past.zone,))
    first = past.day
    while first > floor:
        low = max(floor, first - LOOK_BACK_DAYS)
        for day in reversed(turn_days(rule.id, rule.turns, places, low, first - 1)):
            if first in known:
                return 0
            if not _stands(rule, past.history, past.zone, day, subject):
                return first
            first = day
    return first


def _stands(rule: Rule, history: History, zone: str, day: int, subject: str) -> bool:
    past = history.on(zone, date.fromordinal(day))
    return any(finding.subject == subject for finding, _ in judged(rule, past))
