"""A product against weeds, insects or disease on grass too young for it."""

from collections.abc import Iterator
from datetime import timedelta

from journal.facts.active import Use as Purpose
from journal.facts.actives import ACTIVES, fallback
from journal.facts.citation import Known
from journal.facts.sources import published
from journal.reckon.new_grass import EVERY_DAYS, NEW_GRASS, SERVICE_FROM_DAY, Early, early_uses, expected
from journal.reckon.protection import PROTECTED
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import DEFAULT, LABEL, Numbers
from journal.rules.reach import intended
from journal.rules.turns import Site, after, only
from journal.rules.words import called, days, on
from journal.season.history import Past
from journal.season.stand import day_zero_of, emergence

_WAITS = {one.new_grass_days_after_emergence for one in ACTIVES} | {
    fallback(use).new_grass_days_after_emergence for use in Purpose
}
LONGEST_DAYS = 400


def _ages(site: Site) -> set[int]:
    """Days after emergence that a product can ask."""
    labels = {round(p.label.after_seed.days) for p in site.lawn.products if p.label.after_seed is not None}
    return _WAITS | labels


def _sown(entry: Entry, site: Site) -> Iterator[int]:
    """The days on which it may be assumed to be old enough, and those on which a service may have mown it."""
    if not isinstance(entry, Seeding):
        return
    past = site.history.on(site.zone, entry.date)
    zero = day_zero_of(site.lawn, entry)
    up = (emergence(past, entry).date - entry.date).days
    zone = site.lawn.zone(site.zone)
    mown = range(SERVICE_FROM_DAY, LONGEST_DAYS, EVERY_DAYS) if zone is not None and zone.mowing == "service" else ()
    yield from sorted({up + age for age in _ages(site)} | {(zero - entry.date).days + day for day in mown})


def _seen(entry: Entry, site: Site) -> Iterator[int]:
    if isinstance(entry, Sighting) and entry.subject == "emerged":
        yield from sorted(_ages(site))


@rule(
    "new-grass-treatment",
    levels=(Level.LOSS, Level.NOTE),
    watches=NEW_GRASS,
    turns=(
        *(after(kind, "stands-days") for kind in PROTECTED),
        after(Seeding, reach=_sown),
        after(Mowing),
        only(Sighting, reach=_seen),
        after(Sighting),
        after(Intention, reach=intended),
    ),
    basis=(published("purdue-part-3", "label-80081", note="the label goes first"),),
)
def new_grass_treatment(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """A weed, insect or disease product on grass that is too young for it."""
    since = past.day - n.days("stands-days") + 1
    if not any(past[kind].since(since) for kind in PROTECTED):
        return ()
    found = {
        early.use.name: early for early in early_uses(past, since, n.days("within-days"), n.days("with-seed-days"))
    }
    return tuple(_finding(past, early, n) for early in found.values())


def _finding(past: Past, early: Early, n: Numbers) -> Finding:
    wait, use = early.wait, early.use
    name = called(use.name)
    by_label = wait.basis.kind is Known.LABEL
    n.tell("wait", wait.days, "d", LABEL if by_label else DEFAULT, wait.basis)
    ends = use.date + timedelta(n.days("stands-days"))
    over = expected(past, early.seeding, wait)
    up = (use.date - early.emergence.date).days
    assumed = " (assumed)" if early.emergence.assumed else ""
    by = "by its label" if by_label else f"by {wait.by}, label not entered"
    return Finding(
        level=Level.NOTE if early.patch else Level.LOSS,
        subject=use.name,
        headline=f"{name} on new grass" + (f", {days(up)} up" if up > 0 else ", not up yet"),
        why=(
            f"{name} {on(use.date, past)}, sown {on(early.seeding.date, past)}"
            f"{' on a spot' if early.patch and not use.spot else ''}, up {on(early.emergence.date, past)}{assumed}, "
            f"{_cuts(early.mowings)} by then; "
            + ("it kills grass" if wait.never else f"it waits for {_asks(early)}")
            + f" {by}"
            + ("; on a spot only" if use.spot else "")
        ),
        do=(
            "put down no more of it; look for thin spots, and sow them again in season"
            if wait.never
            else f"put down no more of it before {on(over, past)}; keep the grass watered and do not mow it short"
        ),
        clears=on(ends, past) if wait.never else f"{_asks(early)}, or {on(ends, past)}",
        clears_on=ends if early.over is None else min(ends, early.over),
        evidence=(use.entry.id, early.seeding.id),
        numbers=("wait", "within-days") if wait.days else ("within-days",),
        basis=(wait.basis,),
    )


def _asks(early: Early) -> str:
    wait = early.wait
    asked = [f"{days(wait.days)} up"] if wait.days else []
    if wait.mowings:
        asked.append(f"{wait.mowings} mowing{'' if wait.mowings == 1 else 's'} from day 21")
    return " and ".join(asked)


def _cuts(count: int) -> str:
    return {0: "not mown", 1: "mown once"}.get(count, f"mown {count} times")
