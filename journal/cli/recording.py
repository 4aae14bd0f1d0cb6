"""Commands that write the book or list what is in it."""

from argparse import Namespace
from dataclasses import replace

from journal.cli.arguments import line_of
from journal.cli.out import DONE, STANDS, point, show, show_json, trouble
from journal.facts.safety import one_row
from journal.line.caution import show_safety, shows_safety
from journal.line.reading import Reading
from journal.record.entry import KINDS, Entry
from journal.record.refusal import nearest
from journal.reports.shape import entry_json, flag_json
from journal.reports.sheet import entries_csv
from journal.reports.text import entry_text, flag_text
from journal.season.track import order
from journal.session.session import HeldBack, Saved, Session
from journal.standing import Preflight


def log(session: Session, given: Namespace) -> int:
    """Save one line; with --dry-run only say what it would do."""
    return _typed(session, session.read(line_of(given.words)), given)


def set_fact(session: Session, given: Namespace) -> int:
    """`set` lines, as in the journal."""
    given.dry_run = False
    return _typed(session, session.read(f"set {line_of(given.words)}"), given)


def amend(session: Session, given: Namespace) -> int:
    """Put a line in the place of an entry."""
    if not given.words:
        return trouble("which entry? amend ID LINE; `swardbook list` shows the ids.")
    given.dry_run = False
    id = session.entry(given.words[0]).id
    return _typed(session, session.read_change(id, line_of(given.words[1:])), given)


def _typed(session: Session, reading: Reading, given: Namespace) -> int:
    draft = reading.draft
    if draft is None:
        return point(reading)
    if given.dry_run:
        return _told(session, Saved((draft,), f"would save: {reading.words}"), session.judge(reading), given)
    try:
        saved = session.save(reading)
    except HeldBack as held:
        if given.json:
            show_json(_json(draft, held.judged) | {"held": True})
        trouble(str(held))
        return STANDS
    return _told(session, saved, Preflight(saved.raised, saved.cleared), given)


def _told(session: Session, saved: Saved, judged: Preflight, given: Namespace) -> int:
    if given.json:
        show_json(_json(saved.entries[0], judged))
        return DONE
    show(saved.said)
    lawn = session.history.lawn(session.today)
    if shows_safety(saved.entries[0], lawn):
        show(one_row(lawn.units))
    for flag in judged.raised:
        show(flag_text(flag, session.today))
    for flag in judged.cleared:
        show(f"clears {flag.rule} {', '.join(flag.zones)}".rstrip())
    return DONE


def _json(entry: Entry, judged: Preflight) -> dict[str, object]:
    return {
        "entry": entry_json(entry),
        "assumed": list(entry.assumed),
        "flags": [flag_json(flag) for flag in judged.raised],
        "cleared": [flag_json(flag) for flag in judged.cleared],
    }


def undo(session: Session, given: Namespace) -> int:
    """Take back this computer's newest change, or the newest if it is of that entry."""
    return _said(session.undo_newest() if given.id is None else session.undo_entry(given.id), given)


def redo(session: Session, given: Namespace) -> int:
    """Do again what was taken back last."""
    return _said(session.redo_newest(), given)


def strike(session: Session, given: Namespace) -> int:
    """Take an entry out."""
    return _said(session.strike(given.id), given)


def _said(words: str, given: Namespace) -> int:
    if given.json:
        show_json({"said": words})
    else:
        show(words)
    return DONE


def listing(session: Session, given: Namespace) -> int:
    """The entries, oldest first, filtered."""
    if given.kind is not None and given.kind not in KINDS:
        near = nearest(given.kind, KINDS)
        return trouble(f"no kind of entry is called {given.kind}.{f' Did you mean {near}?' if near else ''}")
    lawn = session.history.lawn(session.today)
    if given.zone is not None and given.zone not in lawn.zone_names:
        near = nearest(given.zone, lawn.zone_names)
        return trouble(f"no zone is called {given.zone}.{f' Did you mean {near}?' if near else ''}")
    found = [
        entry
        for entry in _every(session)
        if (given.kind is None or entry.kind == given.kind)
        and (given.zone is None or given.zone in entry.zones)
        and (not given.since or entry.date >= given.since)
        and (not given.until or entry.date <= given.until)
    ]
    if given.json:
        show_json([entry_json(entry) for entry in found])
    elif given.csv:
        show(entries_csv(found, lawn).rstrip("\n"))
    else:
        for entry in found:
            show(entry_text(replace(entry, assumed=()), lawn))
        if show_safety(found, lawn):
            show(one_row(lawn.units))
    return DONE


def _every(session: Session) -> list[Entry]:
    found = {entry.id: entry for track in session.history.tracks.values() for entry in track.entries}
    return sorted(found.values(), key=order)


def check(session: Session, given: Namespace) -> int:
    """Read every record afresh; exit 1 when anything is damaged, missing or not understood."""
    report = session.book.check()
    problems = session.history.ground.newest.problems
    orphans = session.orphans()
    conflicts = sorted(session.book.conflicts())
    trouble_found = report.problems or bool(session.unread) or bool(problems) or bool(orphans)
    if given.json:
        show_json(
            report.as_json()
            | {"problems": trouble_found, "unread": session.unread, "settings": list(problems), "orphans": orphans}
            | {"conflicts": conflicts}
        )
        return STANDS if trouble_found else DONE
    show(f"{report.records} records in {len(report.files)} files, {session.history.size} entries.")
    for file, offset, why in report.damaged:
        show(f"damaged: {file} at byte {offset}: {why}")
    for computer, gaps in report.gaps.items():
        show(f"missing from {computer}: records {', '.join(f'{a} to {b}' if a != b else str(a) for a, b in gaps)}")
    for name in (*report.oversize, *report.newer):
        show(f"not read: {name}")
    for name, why in report.ignored:
        show(f"not read: {name}: {why}")
    if report.vanished:
        show(f"no longer on the disk: {report.vanished} changes that were read before")
    for id, why in session.unread.items():
        show(f"not understood: {id}: {why}")
    for id, name in orphans.items():
        show(f"names {name}, which the lawn has not: {id}")
    for id in conflicts:
        show(f"changed on two computers at once, the newer stands: {id}")
    for problem in problems:
        show(f"not usable: {problem}")
    if not trouble_found:
        show("Nothing is damaged.")
    return STANDS if trouble_found else DONE
