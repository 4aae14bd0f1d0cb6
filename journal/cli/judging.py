"""Commands that say what stands and what is due."""

from argparse import Namespace
from datetime import date
from typing import Any

from journal.cli.out import DONE, STANDS, UNUSABLE, show, show_json, trouble
from journal.facts.safety import one_row
from journal.line.caution import line_shows_safety, show_safety
from journal.plan.step import Step
from journal.plan.steps import due as due_steps
from journal.reckon.protection import PROTECTED
from journal.record.kinds.treatment import Treatment
from journal.record.lawn import Lawn
from journal.record.refusal import nearest
from journal.reports.flag_history import spell_json, spell_text, spells_total
from journal.reports.shape import flag_json, step_json
from journal.reports.text import flag_text, step_text, table
from journal.rules.cards import cards
from journal.rules.catalogue import listing
from journal.rules.declare import RULES
from journal.rules.flag import Level
from journal.rules.numbers import YOURS
from journal.session.session import Session
from journal.spells import first_day, spells

FURTHEST = 3660
"""Days ahead that can be asked for."""


def flags(session: Session, given: Namespace) -> int:
    """Every flag on a date, gravest first; exit 1 with --fail-on when one as grave stands."""
    if given.history:
        return _past_flags(session, given)
    if given.since is not None or given.until is not None:
        return trouble("--since and --until go with --history; one date is judged with --as-of.")
    as_of = given.as_of or session.today
    standing = session.standing(as_of)
    if not _has_zone(standing.lawn, given.zone):
        return UNUSABLE
    found = [*standing.flags, *(standing.hidden if given.all else ())]
    found = [flag for flag in found if given.zone is None or not flag.zones or given.zone in flag.zones]
    if given.json:
        heads = {flag.id: card.head.id for card in cards(found) for flag in card.flags}
        told = [flag_json(flag) | {"card": heads[flag.id]} for flag in found]
        show_json({"as_of": as_of.isoformat(), "flags": told})
    else:
        for card in cards(found):
            for flag in card.flags:
                show(flag_text(flag, as_of) + "\n")
        if show_safety((session.entry(id) for flag in found for id in flag.evidence), standing.lawn):
            show(one_row(standing.lawn.units))
        if not found:
            show(f"Nothing stands on {as_of.isoformat()}.")
    limit = Level(given.fail_on).gravity if given.fail_on else None
    return STANDS if limit is not None and any(f.level.gravity >= limit and not f.hidden for f in found) else DONE


def _past_flags(session: Session, given: Namespace) -> int:
    """Every flag that stood at any time, oldest first."""
    if given.as_of is not None or given.all or given.fail_on is not None:
        return trouble("--history tells of all flags at all times: --as-of, --all and --fail-on do not go with it.")
    until: date = given.until or session.today
    since: date | None = given.since
    if since is not None and since > until:
        return trouble(f"--since {since.isoformat()} lies after --until {until.isoformat()}.")
    if not _has_zone(session.history.lawn(until), given.zone):
        return UNUSABLE
    found = spells(session.history, until, since, None if given.zone is None else (given.zone,))
    if given.json:
        begun = since or first_day(session.history)
        show_json(
            {
                "as_of": until.isoformat(),
                "since": begun.isoformat() if begun else None,
                "flags": [spell_json(spell) for spell in found],
            }
        )
        return DONE
    for spell in found:
        show(spell_text(spell, until) + "\n")
    lawn = session.history.lawn(until)
    if any(Treatment.kind in RULES[spell.rule].watches for spell in found) and _treated(session, lawn):
        show(one_row(lawn.units))
    show(spells_total(found, until, since))
    return DONE


def _treated(session: Session, lawn: Lawn) -> bool:
    """Whether the book tells of anything put down against weeds, insects or disease."""
    tracks = (session.history.track(zone, kind) for zone in lawn.zone_names for kind in PROTECTED)
    return any(show_safety(track.entries, lawn) for track in tracks)


def _has_zone(lawn: Lawn, zone: str | None) -> bool:
    """Whether the lawn has that zone, where one was named; says so if not."""
    if zone is None or zone in lawn.zone_names:
        return True
    near = nearest(zone, lawn.zone_names)
    trouble(f"no zone is called {zone}.{f' Did you mean {near}?' if near else ''}")
    return False


def due(session: Session, given: Namespace) -> int:
    """Steps not done that are open or open soon."""
    as_of = given.as_of or session.today
    if not 0 <= given.within <= FURTHEST:
        return trouble(f"--within takes a number of days from 0 to {FURTHEST}.")
    found = due_steps(session.standing(as_of).steps, as_of, given.within)
    return _told(session, found, as_of, given, f"Nothing is due within {given.within} days of {as_of.isoformat()}.")


def plan(session: Session, given: Namespace) -> int:
    """Every step, done, missed and far ahead too."""
    as_of = given.as_of or session.today
    return _told(session, session.standing(as_of).steps, as_of, given, "Nothing is planned.")


def _told(session: Session, found: tuple[Step, ...], as_of: date, given: Namespace, nothing: str) -> int:
    if given.json:
        show_json({"as_of": as_of.isoformat(), "steps": [step_json(step) for step in found]})
        return DONE
    for step in found:
        show(step_text(step, as_of))
    lawn = session.history.lawn(as_of)
    if any(line_shows_safety(step.line, lawn) for step in found):
        show(one_row(lawn.units))
    if not found:
        show(nothing)
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
            show(table(_number(number) for number in rule["numbers"]))
    show("A number is set with `swardbook set RULE NAME VALUE`; the value `default` takes your own back.")
    return DONE


def _number(number: dict[str, Any]) -> tuple[str, ...]:
    """Name, value, whose it is, the range, how the default is known, what it is for."""
    name, whose, known = f"    {number['name']}", number["origin"], number["basis"]["kind"]
    whose = f"{whose}, default {number['default_words']}" if whose == YOURS else whose
    return name, number["words"], whose, number["range_words"], known, number["says"]
