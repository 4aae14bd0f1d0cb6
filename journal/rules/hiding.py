"""Flags out of sight: snoozed for a while or set aside with a reason. They still stand, and history keeps them."""

from dataclasses import replace
from datetime import date

from journal.record.day import spoken
from journal.record.kinds.hiding import Aside, Snooze
from journal.rules.declare import RULES
from journal.rules.flag import Flag, Level
from journal.rules.judge import judged
from journal.season.history import Past

Hiding = Snooze | Aside


def hidden(flag: Flag, past: Past) -> Flag:
    """The flag of one zone, with the reason why it is out of sight, if it is.

    One that is graver now than on the day it was hidden shows again.
    """
    entry = hiding(flag.rule, flag.subject, flag.level, past)
    return flag if entry is None else replace(flag, hidden=hidden_words(entry, past.date))


def hiding(rule: str, subject: str, level: Level, past: Past) -> Hiding | None:
    """The newest entry that puts that flag of the past's zone out of sight on the past's day."""
    entry = next((one for one in reversed(_in_force(past)) if means(one.flag, rule, past.zone, subject)), None)
    return None if entry is None or _graver(rule, subject, level, entry, past) else entry


def hidden_words(entry: Hiding, on: date) -> str:
    """Why a flag is out of sight, as said on that day."""
    if isinstance(entry, Aside):
        return f"set aside for good: {entry.remark}; strike it to bring it back"
    return f"snoozed until {spoken(entry.until, on) if entry.until else ''}"


def hidings(past: Past) -> list[Hiding]:
    """All that was snoozed or set aside in the zone by the past's day, in the order in which it was written down."""
    found: list[Hiding] = [
        *past.lawnwide(Snooze).all, *past[Snooze].all, *past.lawnwide(Aside).all, *past[Aside].all,
    ]  # fmt: skip
    return sorted(found, key=lambda one: (one.day, one.id))


def means(words: str, rule: str, zone: str, subject: str) -> bool:
    """A rule's id means all its flags; a flag's id means those of its subject in its zones."""
    named, slash, rest = words.partition("/")
    if named != rule:
        return False
    zones, _, about = rest.partition("/")
    return not slash or (zone in zones.split("+") and about == subject)


def _in_force(past: Past) -> list[Hiding]:
    return [one for one in hidings(past) if isinstance(one, Aside) or (one.until is not None and past.date < one.until)]


def _graver(rule: str, subject: str, level: Level, entry: Hiding, past: Past) -> bool:
    if entry.day >= past.day:
        return False
    then = past.history.on(past.zone, entry.date)
    levels = [found.level for found, _ in judged(RULES[rule], then) if found.subject == subject]
    return bool(levels) and level.gravity > max(one.gravity for one in levels)
