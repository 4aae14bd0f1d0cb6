"""Commands that say what stands and what is due."""

from argparse import Namespace

from journal.cli.out import DONE, STANDS, show, show_json, trouble
from journal.facts.safety import one_row
from journal.line.caution import line_shows_safety, show_safety
from journal.plan.steps import due as due_steps
from journal.record.refusal import nearest
from journal.reports.shape import flag_json, step_json
from journal.reports.text import flag_text, step_text, table
from journal.rules.catalogue import listing
from journal.rules.flag import Level
from journal.session.session import Session

FURTHEST = 3660
"""Days ahead that can be asked for."""


def flags(session: Session, given: Namespace) -> int:
    """Every flag on a date, gravest first; exit 1 with --fail-on when one as grave stands."""
    as_of = given.as_of or session.today
    standing = session.standing(as_of)
    if given.zone is not None and given.zone not in standing.lawn.zone_names:
        near = nearest(given.zone, standing.lawn.zone_names)
        return trouble(f"no zone is called {given.zone}.{f' Did you mean {near}?' if near else ''}")
    found = [*standing.flags, *(standing.hidden if given.all else ())]
    found = [flag for flag in found if given.zone is None or not flag.zones or given.zone in flag.zones]
    if given.json:
        show_json({"as_of": as_of.isoformat(), "flags": [flag_json(flag) for flag in found]})
    else:
        for flag in found:
            show(flag_text(flag, as_of) + "\n")
        if show_safety((session.entry(id) for flag in found for id in flag.evidence), standing.lawn):
            show(one_row(standing.lawn.units))
        if not found:
            show(f"Nothing stands on {as_of.isoformat()}.")
    limit = Level(given.fail_on).gravity if given.fail_on else None
    return STANDS if limit is not None and any(f.level.gravity >= limit and not f.hidden for f in found) else DONE


def due(session: Session, given: Namespace) -> int:
    """Steps not done that are open or open soon."""
    as_of = given.as_of or session.today
    if not 0 <= given.within <= FURTHEST:
        return trouble(f"--within takes a number of days from 0 to {FURTHEST}.")
    found = due_steps(session.standing(as_of).steps, as_of, given.within)
    if given.json:
        show_json({"as_of": as_of.isoformat(), "steps": [step_json(step) for step in found]})
    else:
        for step in found:
            show(step_text(step, as_of))
        lawn = session.history.lawn(as_of)
        if any(line_shows_safety(step.line, lawn) for step in found):
            show(one_row(lawn.units))
        if not found:
            show(f"Nothing is due within {given.within} days of {as_of.isoformat()}.")
    return DONE


def rules(session: Session, given: Namespace) -> int:
    """Every rule, its thresholds as they hold for this lawn, and what they rest on."""
    found = listing(session.history.lawn(session.today))
    if given.json:
        show_json(found)
        return DONE
    for rule in found:
        off = "  switched off" if rule["off"] else ""
        show(f"{rule['id']}  {' '.join(rule['levels'])}  {rule['says']}{off}")
        if rule["numbers"]:
            show(table((f"    {n['name']}", n["words"], n["origin"], n["says"]) for n in rule["numbers"]))
    return DONE
