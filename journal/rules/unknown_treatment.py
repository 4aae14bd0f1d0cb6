"""What nobody knows of what was put down: a product without a name, or the time before the book."""

from datetime import date, timedelta

from journal.facts.actives import fallback
from journal.facts.sources import judgment
from journal.reckon.dose import is_spot
from journal.reckon.unknown import AGAIN_DAYS, MOWINGS, SEED_DAYS, too_soon_after, unknown_uses
from journal.reckon.uses import Use
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.turns import after, at, kept_since
from journal.rules.words import days, on
from journal.season.history import Past

RESIDUE = "residue"

_BARRIER = fallback("pre-emergent")


@rule(
    "unknown-treatment",
    levels=(Level.NOTE,),
    watches=(Treatment, Feeding, Seeding),
    turns=(
        after(Treatment, "stands-days"),
        after(Seeding, "stands-days"),
        at(kept_since(Treatment)),
        after(Feeding),
    ),
    basis=(judgment("read as the product that waits longest; its label goes first"),),
)
def unknown_treatment(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A product that nobody knows was put down, or seed where nobody knows what lies in the soil."""
    found = (_nameless(past, n), _before_the_book(past, n))
    return tuple(finding for finding in found if finding is not None)


def _nameless(past: Past, n: Numbers) -> Finding | None:
    since = past.day - n.days("stands-days") + 1
    if not past[Treatment].since(since):
        return None
    unknown = unknown_uses(past, since)
    return _taken_as_slow(past, unknown[-1], n) if unknown else None


def _taken_as_slow(past: Past, use: Use, n: Numbers) -> Finding:
    seed, again = use.date + timedelta(SEED_DAYS), use.date + timedelta(AGAIN_DAYS)
    ends = use.date + timedelta(n.days("stands-days"))
    n.tell("seed", SEED_DAYS, "d", "default", _BARRIER.basis)
    sooner = too_soon_after(past, use)
    came = f"; {sooner[-1].name} came {on(sooner[-1].date, past)}" if sooner else ""
    return Finding(
        level=Level.NOTE,
        subject=UNKNOWN,
        headline=(
            f"nobody knows what was put down {on(use.date, past)}"
            if use.name == UNKNOWN
            else f"{use.name} is not in the shed: nothing is known of it"
        ),
        why=(
            f"it is taken for what waits longest: seed waits until {on(seed, past)}, new grass for "
            f"{MOWINGS} mowings, anything else on weeds until {on(again, past)}{came}"
        ),
        do=f"ask who did it{' (a service keeps records)' if use.entry.by_service else ''}, and amend the entry with "
        "the product; its own label goes first",
        clears=f"the product's name, or {on(ends, past)}",
        clears_on=ends,
        evidence=(use.entry.id, *(one.entry.id for one in sooner)),
        numbers=("seed", "stands-days"),
    )


def _before_the_book(past: Past, n: Numbers) -> Finding | None:
    """The first sowing, so soon after the book begins that what lies in the soil is not known."""
    first = past[Seeding].picked("whole sowings", _whole).first_since(0) if past[Seeding] else None
    if first is None or past.day - first.day >= n.days("stands-days"):
        return None
    known = _known_from(past)
    if known is None or (first.date - known).days >= n.days("residue-days") or first.date < known:
        return None
    ends = first.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        subject=RESIDUE,
        headline=f"what was put down before {on(known, past)} is not known",
        why=(
            f"sown {on(first.date, past)}; some barriers keep seed out for {days(n.days('residue-days'))}, and this "
            "book does not tell of so long"
        ),
        do=(
            "if nothing went down for weeds in the year before, say so with `set treatments_since`; else log it on its "
            "day, as `treat unknown by service` if need be"
        ),
        clears=f"an answer, or {on(ends, past)}",
        clears_on=ends,
        evidence=(first.id,),
        numbers=("residue-days", "stands-days"),
    )


def _whole(seeding: Seeding) -> bool:
    return not is_spot(seeding)


def _known_from(past: Past) -> date | None:
    known = [day for day in (past.kept_since(Treatment), past.lawn.treatments_since) if day is not None]
    return min(known, default=None)
