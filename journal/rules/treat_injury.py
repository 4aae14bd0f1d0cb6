"""Actives that hurt the grass of the zone, or the trees that stand in it."""

from datetime import timedelta

from journal.facts.actives import active, is_active
from journal.facts.citation import label
from journal.facts.injuries import Injury, injured, named
from journal.facts.mixture import is_unknown
from journal.facts.sources import published
from journal.reckon.protection import PROTECTED
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, uses
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.weather import Weather
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers, in_words
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import STAND, intentions, new_grass, sown, stand_mix

STANDS_DAYS = 30
ROOTS = "dicamba"
BARELY = 0.05
"""Degrees C: what another unit may differ by when it is rounded."""


@rule(
    "treat-injury",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*PROTECTED, *STAND, Intention),
    turns=(
        *(after(kind, STANDS_DAYS - 1) for kind in PROTECTED),
        after(Seeding),
        after(Intention, reach=intended),
    ),
    basis=(),
)
def treat_injury(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """An active that is said to injure the grass of the zone."""
    found: dict[str, tuple[Level, Use, list[Injury]]] = {}
    killed: dict[str, Use] = {}
    for use in uses(past, past.day - STANDS_DAYS + 1):
        then = past.history.on(past.zone, use.date, past.watches)
        if kills_grass(use):
            if not use.spot and not _seed_follows(past, then, use):
                killed[use.name] = use
            continue
        for level, hurt in _injuries(then, use):
            held = found.get(use.name)
            if held is None or held[0].gravity <= level.gravity:
                found[use.name] = level, use, hurt
    return (
        *(_killed(past, use) for use in killed.values()),
        *(_injury(past, level, use, hurt) for level, use, hurt in found.values()),
    )


def kills_grass(use: Use) -> bool:
    """Whether it kills whatever it meets."""
    return use.kind == "nonselective" or any(one.never_on_turf for one in use.actives)


def _seed_follows(past: Past, then: Past, use: Use) -> bool:
    """Whether the zone is to be sown anew, or was; of grass just sown another rule tells."""
    if past[Seeding].since(use.day) or intentions(past, "seed"):
        return True
    stand = sown(then)
    return stand is not None and use.day - stand.day < in_force(past.lawn, "new-grass-treatment", "within-days")


def _killed(past: Past, use: Use) -> Finding:
    clears_on = use.date + timedelta(STANDS_DAYS)
    return Finding(
        level=Level.LOSS,
        subject=use.name,
        headline=f"{use.name} kills the grass too",
        why=f"put down {on(use.date, past)} over the lawn, and no seed is meant for it",
        do=f"if a spot was meant, write `spot`; if the lawn is to be sown anew, log `intend seed` with its day for "
        f"{past.zone}",
        clears=f"seed meant or sown, or {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id,),
        basis=(label(),),
    )


def _injuries(then: Past, use: Use) -> list[tuple[Level, list[Injury]]]:
    """Those of each level; a note where nobody has said what grows there, so that it may be hurt."""
    mix = stand_mix(then)
    if is_unknown(mix):
        every = [one for part in use.actives for one in named(part.name) if not one.one_trial]
        return [(Level.NOTE, every)] if every else []
    split: dict[Level, list[Injury]] = {}
    for part in use.actives:
        for one in injured(part.name, mix):
            slight = one.one_trial or one.high_rate or (one.seedlings and not new_grass(then))
            split.setdefault(Level.NOTE if slight else Level.LOSS, []).append(one)
    return list(split.items())


def _injury(past: Past, level: Level, use: Use, hurt: list[Injury]) -> Finding:
    then = past.history.on(past.zone, use.date, past.watches)
    unknown = is_unknown(stand_mix(then))
    said = ", ".join(dict.fromkeys(f"{one.active} {one.grass}" for one in hurt))
    grasses = " and ".join(dict.fromkeys(one.grass for one in hurt))
    why = f"put down {on(use.date, past)}; said to be hurt: {said}"
    if unknown:
        why += "; what grows here is not entered"
    elif level is Level.NOTE:
        why += "; slightly, in one trial, at a high rate or as seedlings"
    clears_on = use.date + timedelta(STANDS_DAYS)
    return Finding(
        level=level,
        subject=use.name,
        headline=f"{use.name} may hurt {'the grass here' if unknown else grasses}",
        why=why,
        do=(
            f"set {past.zone} grass ..., and see whether its label names that grass"
            if unknown
            else "see whether its label names this grass before it is used again; no second use on grass that is hurt"
        ),
        clears=f"{STANDS_DAYS} days after, {on(clears_on, past)}",
        clears_on=clears_on,
        evidence=(use.entry.id,),
        basis=tuple(dict.fromkeys(one.basis for one in hurt)),
    )


@rule(
    "tree-root",
    levels=(Level.LOSS, Level.NOTE),
    watches=(*PROTECTED, Weather),
    turns=[after(kind, STANDS_DAYS - 1) for kind in PROTECTED],
    basis=(
        published(
            "delaware-trees", "ndsu-trees", note="not within the drip line; roots reach as far as a tree is high"
        ),
    ),
)
def tree_root(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """What tree roots take up, on a zone with trees; and an ester in warm air, which drifts as vapour."""
    roots: list[Use] = []
    vapour: list[tuple[Level, Use, float]] = []
    for use in uses(past, past.day - STANDS_DAYS + 1):
        ester = _is_ester(use)
        if _taken_up(use, ester=ester) and _trees(past, use):
            roots.append(use)
        if ester and use.spray and (warm := _warmth(past, use)) is not None and warm > n["ester-note"] + BARELY:
            vapour.append((Level.LOSS if warm > n["ester-loss"] + BARELY else Level.NOTE, use, warm))
    return (*_in_roots(past, roots), *_as_vapour(past, vapour, n))


def _is_ester(use: Use) -> bool:
    """Whether its label names an ester among the actives."""
    return use.product is not None and any("ester" in one.name.casefold().split() for one in use.product.actives)


def _taken_up(use: Use, *, ester: bool) -> bool:
    names = {one.name for one in use.actives}
    if ROOTS in names:
        return True
    held = [one.name for one in use.product.actives] if use.product else []
    return ester and any("ester" in name and is_active(name) and active(name).name == "triclopyr" for name in held)


def _trees(past: Past, use: Use) -> bool:
    zone = past.history.lawn(use.date).zone(past.zone)
    return zone is not None and zone.trees


def _warmth(past: Past, use: Use) -> float | None:
    """The day's high, or what was noted with the use where that is warmer."""
    noted = use.entry.temp_c if isinstance(use.entry, Treatment) else None
    highs = [one.high_c for one in past.lawnwide(Weather).between(use.day, use.day) if one.high_c is not None]
    return max((one for one in (*highs[-1:], noted) if one is not None), default=None)


def _in_roots(past: Past, found: list[Use]) -> tuple[Finding, ...]:
    """A spot is a note: whether a root was under it nobody knows."""
    if not found:
        return ()
    broad = [use for use in found if not use.spot]
    shown = broad or found
    use, clears_on = shown[-1], shown[-1].date + timedelta(STANDS_DAYS)
    what = ROOTS if ROOTS in {one.name for one in use.actives} else "triclopyr ester"
    return (
        Finding(
            level=Level.LOSS if broad else Level.NOTE,
            subject="roots",
            headline=f"{what} where trees stand",
            why=f"{use.name} {on(use.date, past)}; tree roots take {what} up, and it may last in the soil for months",
            do="keep it out of the drip line, better as far off as the tree is high; water nothing in there now",
            clears=f"{STANDS_DAYS} days after, {on(clears_on, past)}",
            clears_on=clears_on,
            evidence=tuple(one.entry.id for one in shown),
        ),
    )


def _as_vapour(past: Past, found: list[tuple[Level, Use, float]], n: Numbers) -> tuple[Finding, ...]:
    if not found:
        return ()
    gravest = max(level.gravity for level, _, _ in found)
    shown = [one for one in found if one[0].gravity == gravest]
    level, use, warm = shown[-1]
    name = "ester-loss" if level is Level.LOSS else "ester-note"
    clears_on = use.date + timedelta(STANDS_DAYS)
    said, most = (in_words(value, "C", past.lawn.units) for value in (warm, n[name]))
    return (
        Finding(
            level=level,
            subject="vapour",
            headline=f"an ester sprayed at {said}",
            why=f"{use.name} {on(use.date, past)}; above {most} an ester may drift as vapour, even days later",
            do="look at trees, vines and beds nearby; once it is warm take an amine form",
            clears=f"{STANDS_DAYS} days after, {on(clears_on, past)}",
            clears_on=clears_on,
            evidence=tuple(one[1].entry.id for one in shown),
            numbers=(name,),
        ),
    )
