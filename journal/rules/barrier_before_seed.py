"""What was put down keeps out the seed that is meant for later, and how long seed waits after any barrier."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.citation import Known
from journal.facts.sources import published
from journal.reckon.barrier import is_barrier
from journal.reckon.residue import LONGEST_DAYS, RESIDUES, Residue, residues
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LABEL, Numbers
from journal.rules.reach import intended
from journal.rules.residue import seed_waits
from journal.rules.turns import after
from journal.rules.words import called, days, on
from journal.season.history import Past
from journal.season.stand import LAPSES_DAYS, intentions, mix_of, stand_mix


@rule(
    "barrier-before-seed",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Intention, *RESIDUES),
    turns=(
        *(after(kind, "note-days", reach=seed_waits, within=LONGEST_DAYS) for kind in RESIDUES),
        after(Intention, reach=intended),
        after(Seeding),
    ),
    basis=(published("purdue-part-2", "delaware-renovation", note="waits differ; the label goes first"),),
)
def barrier_before_seed(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Seed is meant for a day on which it would still be kept out; and how long a barrier keeps it out."""
    since = past.day - LONGEST_DAYS
    if not any(past[kind].since(since) for kind in RESIDUES):
        return ()
    found: dict[str, Finding] = {}
    for meant in intentions(past, "seed"):
        for product, residue in _in_the_way(past, meant).items():
            found.setdefault(product, _clash(past, meant, residue, n))
    if any(past[kind].within(n.days("note-days")) for kind in RESIDUES):
        for residue in _put_down_lately(past, n.days("note-days")):
            if residue.product not in found:
                found[residue.product] = _told(past, residue, n)
    return tuple(found.values())


def _in_the_way(past: Past, meant: Intention) -> dict[str, Residue]:
    """Product -> its longest wait, of those that run on the day meant and today."""
    mix = mix_of(past.lawn, meant.product) or stand_mix(past)
    target = meant.target or meant.date
    return {r.product: r for r in residues(past, mix) if r.over > max(target, past.date)}


def _put_down_lately(past: Past, note_days: int) -> Iterator[Residue]:
    """Barriers of the last days that keep seed out; the newest of a product."""
    first = past.day - note_days + 1
    newest = {r.product: r for r in residues(past, stand_mix(past)) if r.entry.day >= first and r.over > past.date}
    return (r for r in newest.values() if is_barrier(past.history.lawn(r.entry.date).product(r.product)))


def _by(residue: Residue, n: Numbers) -> str:
    by_label = residue.wait.basis.kind is Known.LABEL
    n.tell("wait", residue.wait.days, "d", LABEL if by_label else DEFAULT, residue.wait.basis)
    return "the label" if by_label else f"{residue.wait.by}, label not entered"


def _clash(past: Past, meant: Intention, residue: Residue, n: Numbers) -> Finding:
    target = meant.target or meant.date
    return Finding(
        level=Level.LOSS,
        subject=residue.product,
        headline=f"{called(residue.product)} keeps out the seed meant for {on(target, past)}",
        why=(
            f"{called(residue.product)} {on(residue.entry.date, past)}; seed waits {days(residue.wait.days)} by "
            f"{_by(residue, n)}: to {on(residue.over, past)}"
        ),
        do=f"mean the seed for {on(residue.over, past)} or later, in season; if it is not down yet, leave it away",
        clears=f"the seed moved or struck, or {on(residue.over, past)}",
        clears_on=min(residue.over, target + timedelta(LAPSES_DAYS)),
        evidence=(residue.entry.id, meant.id),
        numbers=("wait",),
        basis=(residue.wait.basis,),
    )


def _told(past: Past, residue: Residue, n: Numbers) -> Finding:
    ends = residue.entry.date + timedelta(n.days("note-days"))
    return Finding(
        level=Level.NOTE,
        subject=residue.product,
        headline=f"seed waits until {on(residue.over, past)}",
        why=(
            f"{residue.product} {on(residue.entry.date, past)} keeps all seed from coming up, for "
            f"{days(residue.wait.days)} by {_by(residue, n)}"
        ),
        do="sow nothing there before; where you mean to sow sooner, use no barrier",
        clears=on(min(ends, residue.over), past),
        clears_on=min(ends, residue.over),
        evidence=(residue.entry.id,),
        numbers=("wait", "note-days"),
        basis=(residue.wait.basis,),
    )
