"""Flags, steps and entries as the JSON that scripts read. The keys are a promise."""

from typing import Any

from journal.plan.step import Step
from journal.record.document import full_document
from journal.record.entry import Entry
from journal.rules.flag import Flag

JSON = dict[str, Any]


def entry_json(entry: Entry) -> JSON:
    """Every field of the entry, also those not said. The words assumed stand beside it, in a list of their own."""
    return full_document(entry)


def flag_json(flag: Flag) -> JSON:
    """Dates as year-month-day, null where none; numbers by name with their words and where they came from."""
    return {
        "id": flag.id,
        "rule": flag.rule,
        "level": flag.level.value,
        "zones": list(flag.zones),
        "subject": flag.subject,
        "rose": flag.rose.isoformat(),
        "cleared": flag.cleared.isoformat() if flag.cleared else None,
        "headline": flag.headline,
        "why": flag.why,
        "do": flag.do,
        "clears": flag.clears,
        "clears_on": flag.clears_on.isoformat() if flag.clears_on else None,
        "evidence": list(flag.evidence),
        "numbers": {name: {"value": n.words, "from": n.origin} for name, n in flag.numbers.items()},
        "basis": [basis.as_json() for basis in flag.basis],
        "hidden": flag.hidden or None,
    }


def step_json(step: Step) -> JSON:
    """`best` is a pair of dates or null."""
    return {
        "step": step.step,
        "zones": list(step.zones),
        "state": step.state.value,
        "earliest": step.earliest.isoformat() if step.earliest else None,
        "best": [day.isoformat() for day in step.best] if step.best else None,
        "latest": step.latest.isoformat() if step.latest else None,
        "amount": step.amount,
        "line": step.line,
        "why": step.why,
        "waits_for": step.waits_for,
    }
