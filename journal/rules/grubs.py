"""Insect products by habit: a grub preventive where no grubs were counted."""

from datetime import timedelta

from journal.facts.rounding import reaches
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.uses import Use, uses
from journal.record.kinds.sighting import Count, Sighting
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.growth import month_here
from journal.season.history import Past

PREVENTIVES = ("chlorantraniliprole", "imidacloprid")
"""Actives put down against grubs before they hatch."""

SIGNS = ("grubs", "damage")
OTHERS = ("chinch-bugs", "billbugs", "webworms", "armyworms", "ants")
"""Insects that the same product may have been meant for."""


@rule(
    "grub-blind",
    levels=(Level.NOTE,),
    watches=(*PROTECTED, Count, Sighting),
    turns=(*(after(kind, "stands-days") for kind in PROTECTED), after(Count), after(Sighting)),
    basis=(published("umn-irac", "msu-chafer", note="treat on a count or on damage, not by habit"),),
)
def grub_blind(past: Past, n: Numbers) -> Finding | None:
    """A grub preventive was put down, and no count of the last two years called for it."""
    since = past.day - n.days("stands-days") + 1
    if not any(past[kind].since(since) for kind in PROTECTED):
        return None
    used = [use for use in uses(past, since) if _preventive(use) and not _called_for(past, use, n)]
    if not used:
        return None
    use = used[-1]
    least = in_words(n[_threshold(past, use)], "/m2", past.lawn.units)
    clears_on = use.date + timedelta(n.days("stands-days"))
    return Finding(
        level=Level.NOTE,
        headline=f"{use.name} put down, and no grubs counted",
        why=(
            f"{use.name} {on(use.date, past)}; in the two years before no count reached {least} and no damage "
            "is noted; thresholds differ by beetle and by place"
        ),
        do=(
            f"from late {month_here(past.lawn, 'August')} lift the turf in several spots and log `count grubs`; "
            "treat next year by that count"
        ),
        clears=on(clears_on, past),
        clears_on=clears_on,
        evidence=(use.entry.id,),
        numbers=(_threshold(past, use), "count-days"),
    )


def _preventive(use: Use) -> bool:
    return use.kind == "insect" and any(one.name in PREVENTIVES for one in use.actives)


def _threshold(past: Past, use: Use) -> str:
    zone = past.history.lawn(use.date).zone(past.zone)
    return "irrigated" if zone is not None and zone.irrigated else "dry"


def _called_for(past: Past, use: Use, n: Numbers) -> bool:
    """Whether a count, or damage seen, or another insect, was a reason for it by then."""
    first = use.day - n.days("count-days") + 1
    least = n[_threshold(past, use)]
    for count in past[Count].between(first, use.day):
        if count.subject in OTHERS or (count.subject == "grubs" and reaches(count.per_m2 or 0.0, least)):
            return True
    seen = past[Sighting].picked("insects and damage", _of_insects)
    return bool(seen.between(first, use.day))


def _of_insects(seen: Sighting) -> bool:
    return seen.subject in SIGNS or seen.subject in OTHERS
