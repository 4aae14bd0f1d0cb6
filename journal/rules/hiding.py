"""Flags out of sight: snoozed for a while or set aside with a reason. They still stand, and history keeps them."""

from dataclasses import replace

from journal.record.day import spoken
from journal.record.kinds.hiding import Aside, Snooze
from journal.rules.declare import RULES
from journal.rules.flag import Flag
from journal.rules.judge import flags_of
from journal.season.history import Past

Hiding = Snooze | Aside


def hidden(flag: Flag, past: Past) -> Flag:
    """The flag of one zone, with the reason why it is out of sight, if it is.

    One that is graver now than on the day it was hidden shows again.
    """
    entry = next((one for one in reversed(_in_force(past)) if _means(one.flag, flag)), None)
    if entry is None or _graver(flag, entry, past):
        return flag
    if isinstance(entry, Aside):
        return replace(flag, hidden=f"set aside for good: {entry.remark}; strike it to bring it back")
    until = spoken(entry.until, past.date) if entry.until else ""
    return replace(flag, hidden=f"snoozed until {until}")


def _in_force(past: Past) -> list[Hiding]:
    found: list[Hiding] = [
        *past.lawnwide(Snooze).all, *past[Snooze].all, *past.lawnwide(Aside).all, *past[Aside].all,
    ]  # fmt: skip
    found = [one for one in found if isinstance(one, Aside) or (one.until is not None and past.date < one.until)]
    return sorted(found, key=lambda one: (one.day, one.id))


def _means(words: str, flag: Flag) -> bool:
    """A rule's id means all its flags; a flag's id means those of its subject in its zones."""
    rule, slash, rest = words.partition("/")
    if rule != flag.rule:
        return False
    zones, _, subject = rest.partition("/")
    return not slash or (set(flag.zones) <= set(zones.split("+")) and subject == flag.subject)


def _graver(flag: Flag, entry: Hiding, past: Past) -> bool:
    if entry.day >= past.day:
        return False
    then = past.history.on(past.zone, entry.date)
    levels = [f.level for f in flags_of(RULES[flag.rule], then) if f.subject == flag.subject]
    return bool(levels) and flag.level.gravity > max(level.gravity for level in levels)
