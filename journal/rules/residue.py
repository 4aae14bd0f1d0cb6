"""Seed sown into what a treatment left in the soil."""

from dataclasses import replace
from datetime import date, timedelta

from journal.facts.active import Use
from journal.facts.actives import ACTIVES, fallback, slit_trial_wait
from journal.facts.citation import Known
from journal.facts.sources import published
from journal.reckon.dose import doses, is_spot
from journal.reckon.residue import LONGEST_DAYS, RESIDUES, Residue, residues
from journal.record.entry import Entry
from journal.record.kinds.seeding import Seeding
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LABEL, Numbers
from journal.rules.turns import Site, after
from journal.rules.words import days, on
from journal.season.history import Past
from journal.season.stand import sown_mix

STANDS_DAYS = 60
"""What came up by then came up."""

_PUBLISHED_WAITS = frozenset(
    {
        wait
        for one in ACTIVES
        for wait in (
            one.seed_wait_days,
            one.seed_wait_split_days,
            one.seed_wait_trial_slit_days,
            *dict(one.wait_by_grass).values(),
        )
        if wait is not None
    }
    | {wait for use in Use if (wait := fallback(use).seed_wait_days) is not None}
)


def seed_waits(entry: Entry, site: Site) -> list[int]:
    """Every wait that its products can set."""
    labels = [p.label.to_seed_days for dose in doses(entry) if (p := site.lawn.product(dose.product))]
    return sorted(_PUBLISHED_WAITS | {round(wait) for wait in labels if wait is not None})


@rule(
    "seed-over-residue",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, *RESIDUES),
    turns=(after(Seeding, STANDS_DAYS - 1), *(after(kind, reach=seed_waits, within=LONGEST_DAYS) for kind in RESIDUES)),
    basis=(published("delaware-renovation", "weed-technology-2005", note="waits differ; the label goes first"),),
)
def seed_over_residue(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Sown before the wait of a treatment was over."""
    found: dict[str, tuple[date, Finding]] = {}
    for seeding in past[Seeding].within(STANDS_DAYS):
        for residue in _in_force(past, seeding):
            if residue.over <= past.date or residue.over <= seeding.date:
                continue
            held = found.get(residue.product)
            if held is None or held[0] <= residue.over:
                found[residue.product] = residue.over, _residue_finding(past, seeding, residue, n)
    return tuple(finding for _, finding in found.values())


def _in_force(past: Past, seeding: Seeding) -> list[Residue]:
    """Every wait that ran when it was sown, those of spots and of slit-seeding too."""
    history = past.history
    then = history.on(past.zone, seeding.date, past.watches)
    for entry in _spots(then):
        history = history.minus(entry).plus(replace(entry, spot=False, spot_m2=None))
    then = history.on(past.zone, seeding.date, past.watches)
    mix = sown_mix(past.lawn, past.zone, seeding)
    return [_slit(residue, seeding, past) for residue in residues(then, mix)]


def _spots(past: Past) -> list[Entry]:
    since = past.day - LONGEST_DAYS
    return [entry for kind in RESIDUES for entry in past[kind].since(since) if is_spot(entry)]


def _slit(residue: Residue, seeding: Seeding, past: Past) -> Residue:
    """Slit-seeded ground waits as long as a trial found, where that is longer."""
    product = past.history.lawn(residue.entry.date).product(residue.product)
    tried = slit_trial_wait([c.name for c in product.actives]) if product and seeding.slit else None
    if tried is None or tried.days <= residue.wait.days:
        return residue
    return replace(residue, wait=tried, over=residue.entry.date + timedelta(tried.days))


def _residue_finding(past: Past, seeding: Seeding, residue: Residue, n: Numbers) -> Finding:
    by_label = residue.wait.basis.kind is Known.LABEL
    waited = (seeding.date - residue.entry.date).days
    was_spot = next((e.spot or e.spot_m2 is not None for e in _spots(past) if e.id == residue.entry.id), False)
    n.tell("wait", residue.wait.days, "d", LABEL if by_label else DEFAULT, residue.wait.basis)
    by = "the label" if by_label else f"{residue.wait.by}, label not entered"
    return Finding(
        level=Level.NOTE if was_spot or is_spot(seeding) else Level.LOSS,
        subject=residue.product,
        headline=f"sown {days(waited)} after {residue.product}; the wait is {residue.wait.days}",
        why=(
            f"{residue.product} {on(residue.entry.date, past)}, sown {on(seeding.date, past)}; seed waits "
            f"{days(residue.wait.days)} by {by}" + ("; on a spot only" if was_spot or is_spot(seeding) else "")
        ),
        do=f"sow on {on(residue.over, past)} or later; what is sown before may not come up",
        clears=f"the wait has run out, or {days(STANDS_DAYS)} after sowing",
        clears_on=min(residue.over, seeding.date + timedelta(STANDS_DAYS)),
        evidence=(seeding.id, residue.entry.id),
        numbers=("wait",),
        basis=(residue.wait.basis,),
    )
