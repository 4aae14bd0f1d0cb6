"""The flags of the past as JSON and in words. The keys are a promise."""

import textwrap
from collections.abc import Iterable
from datetime import date
from typing import Any

from journal.record.day import spoken
from journal.reports.text import WIDTH
from journal.spells import Spell, Stage, Unseen

_INDENT = 6


def spell_json(spell: Spell) -> dict[str, Any]:
    """`level` and `headline` are those of the newest stage; dates as year-month-day, null where none."""
    newest = spell.stages[-1]
    return {
        "id": spell.id,
        "rule": spell.rule,
        "level": newest.level.value,
        "zones": list(spell.zones),
        "subject": spell.subject,
        "rose": spell.rose.isoformat(),
        "cleared": spell.cleared.isoformat() if spell.cleared else None,
        "ended": spell.ended.value if spell.ended else None,
        "headline": newest.headline,
        "stages": [
            {"since": stage.since.isoformat(), "level": stage.level.value, "headline": stage.headline}
            for stage in spell.stages
        ],
        "hidden": [
            {"since": one.since.isoformat(), "until": one.until.isoformat() if one.until else None, "why": one.why}
            for one in spell.unseen
        ],
    }


def spell_text(spell: Spell, until: date) -> str:
    """Rule, zones and days, then each stage, then when it was out of sight."""
    name = " ".join(part for part in (spell.rule, spell.subject) if part)
    head = f"{name}  {', '.join(spell.zones)}  {_days(spell, until)}"
    rows = textwrap.wrap(head, WIDTH, subsequent_indent=" " * _INDENT)
    for before, stage in zip((None, *spell.stages), spell.stages, strict=False):
        rows += _wrapped(_stage_words(stage, before, spell, until))
    for one in spell.unseen:
        rows += _wrapped(_unseen_words(one, spell, until))
    return "\n".join(rows)


def _days(spell: Spell, until: date) -> str:
    rose = spoken(spell.rose, until)
    count = ((spell.cleared or until) - spell.rose).days + (0 if spell.cleared else 1)
    days = f"{count} day" if count == 1 else f"{count} days"
    if spell.cleared is None or spell.ended is None:
        return f"{rose}, stands: {days} so far"
    return f"{rose}, {spell.ended.value} {spoken(spell.cleared, spell.rose)}: {days}"


def _stage_words(stage: Stage, before: Stage | None, spell: Spell, until: date) -> str:
    if before is None:
        return f"{stage.level.value:<5} {stage.headline}"
    more = f", {stage.headline}" if stage.headline != before.headline else ""
    return f"{stage.level.value:<5} from {_from(stage.since, spell, until)}{more}"


def _unseen_words(one: Unseen, spell: Spell, until: date) -> str:
    back = f", shown again {_from(one.until, spell, until)}" if one.until else ""
    return f"hidden from {_from(one.since, spell, until)}: {one.why}{back}"


def _from(day: date, spell: Spell, until: date) -> str:
    return spoken(day, spell.rose if day.year == spell.rose.year else until)


def _wrapped(words: str) -> list[str]:
    return textwrap.wrap(words, WIDTH, initial_indent=" " * _INDENT, subsequent_indent=" " * (2 * _INDENT))


def spells_total(found: Iterable[Spell], until: date, since: date | None) -> str:
    """How many there were, and how many of them stand."""
    every = tuple(found)
    standing = sum(spell.cleared is None for spell in every)
    days = f"from {since.isoformat()} to {until.isoformat()}" if since else f"up to {until.isoformat()}"
    if not every:
        return f"Nothing was flagged {days}."
    return f"{len(every)} flag{'' if len(every) == 1 else 's'} {days}, {standing} of them standing then."
