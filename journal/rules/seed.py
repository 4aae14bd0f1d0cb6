"""Which seed: never another than the one before without meaning it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import timedelta

from journal.facts.citation import practice
from journal.facts.mixture import overlap_percent, same_seed, shares
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.stock import Stock
from journal.record.lawn import Lawn
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import blend, days, on
from journal.season.history import Past
from journal.season.stand import grass_mix, intentions, mix_of

STANDS_DAYS = 60
"""A note on something bought, or on another maker's bag, stands so long."""

_SWITCH_BASIS = practice("the same seed as before: two kinds side by side show as patches of another leaf and colour")


@dataclass(frozen=True, slots=True)
class _Sown:
    """A seed that is settled in a zone: its product, what is in it, and the sowing it rests on."""

    product: str
    mix: Mapping[str, float]
    maker: str
    evidence: str


@rule(
    "seed-switch",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Intention, Stock),
    turns=(after(Seeding, STANDS_DAYS), after(Intention, reach=intended), after(Stock, STANDS_DAYS)),
    basis=(_SWITCH_BASIS,),
    whole_lawn=True,
)
def seed_switch(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """Another seed than the one sown last."""
    found = [*_sown_otherwise(past, n), *_meant_otherwise(past, n), *_bought_otherwise(past, n)]
    return tuple({finding.subject: finding for finding in reversed(found)}.values())


def _sown_otherwise(past: Past, n: Numbers) -> Iterator[Finding]:
    settled, new = _settled(past, n)
    if settled is not None and new:
        how = f"sown {on(new[-1].date, past)}"
        yield _switch(past, settled, new[0].product, Level.LOSS, how, [s.id for s in new], n)
    elif len(past[Seeding]) == 1:
        yield from _against_grass(past, past[Seeding].all[0])
    last = past[Seeding].last
    if last is not None and not new and past.day - last.day < STANDS_DAYS:
        before = _before(past, last)
        if before is not None and _other_maker(before, _as_sown(last, past.history.lawn(last.date))):
            yield _maker_note(past, before, last)


def _settled(past: Past, n: Numbers) -> tuple[_Sown | None, list[Seeding]]:
    """The zone's seed, and the sowings of another that is not settled yet.

    A new seed is settled once it was sown in two calendar years; sowing the old one again sets it aside.
    """
    settled: _Sown | None = None
    new: list[Seeding] = []
    for seeding in past[Seeding].all:
        lawn = past.history.lawn(seeding.date)
        settled = settled or _elsewhere(past, seeding)
        if settled is None or _same(settled, seeding.product, lawn, n):
            settled, new = _as_sown(seeding, lawn), []
            continue
        new = [*(s for s in new if _same(_as_sown(s, lawn), seeding.product, lawn, n)), seeding]
        if len({s.date.year for s in new}) >= n["sowings"]:
            settled, new = _as_sown(seeding, lawn), []
    return settled, new


def _before(past: Past, seeding: Seeding) -> _Sown | None:
    """What was sown before it, in the zone or else on the lawn."""
    earlier = past[Seeding].before_last
    return _as_sown(earlier, past.history.lawn(earlier.date)) if earlier else _elsewhere(past, seeding)


def _meant_otherwise(past: Past, n: Numbers) -> Iterator[Finding]:
    """An intention to sow neither the zone's seed nor the one sown last."""
    last = _last_sown(past)
    if last is None:
        return
    settled = _settled(past, n)[0] or last
    for meant in intentions(past, "seed"):
        if not meant.product or meant.target is None:
            continue
        if not any(_same(known, meant.product, past.lawn, n) for known in (settled, last)):
            how = f"meant for {on(meant.target, past)}"
            yield _switch(past, settled, meant.product, Level.LOSS, how, [meant.id], n)


def _bought_otherwise(past: Past, n: Numbers) -> Iterator[Finding]:
    """A seed bought that no zone was sown with last."""
    for bought in past.lawnwide(Stock).within(STANDS_DAYS):
        product = past.lawn.product(bought.product)
        if product is None or product.kind != "seed":
            continue
        others = [sown for zone in past.lawn.zone_names if (sown := _last_sown(past.elsewhere(zone))) is not None]
        mine = _last_sown(past)
        if mine is None or any(_same(sown, bought.product, past.lawn, n) for sown in others):
            continue
        yield _switch(past, mine, bought.product, Level.NOTE, f"bought {on(bought.date, past)}", [bought.id], n)


def _against_grass(past: Past, seeding: Seeding) -> Iterator[Finding]:
    """Nothing was sown before: the grass that was there, as far as it is known."""
    if _elsewhere(past, seeding) is not None:
        return
    there, sown = grass_mix(past.lawn, past.zone), mix_of(past.lawn, seeding.product)
    strangers = [name for name in shares(sown) if name not in there]
    if not there or "unknown" in there or not sown or not strangers or past.day - seeding.day >= STANDS_DAYS:
        return
    yield Finding(
        level=Level.NOTE,
        subject=seeding.product,
        headline=f"{seeding.product} brings other grass than grows there",
        why=f"there: {', '.join(there)}; {seeding.product}: {blend(sown)}",
        do="sow what grows there, or the whole zone with one seed",
        clears=f"{days(STANDS_DAYS)} after sowing, or set aside",
        clears_on=seeding.date + timedelta(STANDS_DAYS),
        evidence=(seeding.id,),
    )


def _switch(
    past: Past, before: _Sown, product: str, level: Level, how: str, evidence: list[str], n: Numbers
) -> Finding:
    mix = mix_of(past.lawn, product)
    comparable = bool(before.mix) and bool(mix)
    if comparable:
        in_common = f"{overlap_percent(before.mix, mix):.0f} % in common"
    else:
        in_common = "the mix of one of them is not entered"
    return Finding(
        level=level if comparable else Level.NOTE,
        subject=product,
        headline=f"{product} is another seed than {before.product}",
        why=f"{how}; {before.product}: {blend(before.mix)}; {product}: {blend(mix)}; {in_common}",
        do=f"sow {before.product} again, or set this aside with the reason",
        clears=f"set aside, or {product} sown in {n['sowings']:.0f} years",
        evidence=(*evidence, *([before.evidence] if before.evidence else [])),
    )


def _maker_note(past: Past, before: _Sown, seeding: Seeding) -> Finding:
    return Finding(
        level=Level.NOTE,
        subject=seeding.product,
        headline=f"{seeding.product} is the same mix by another maker",
        why=f"sown {on(seeding.date, past)}; kinds of one grass differ in colour and leaf from maker to maker",
        do="compare the cultivars on both labels",
        clears=f"{days(STANDS_DAYS)} after sowing",
        clears_on=seeding.date + timedelta(STANDS_DAYS),
        evidence=(seeding.id, *([before.evidence] if before.evidence else [])),
    )


def _last_sown(past: Past) -> _Sown | None:
    """The zone's last-sown seed, the lawn's where the zone has none."""
    last = past[Seeding].last
    if last is not None:
        return _as_sown(last, past.history.lawn(last.date))
    return _newest_of([s for zone in past.lawn.zone_names if (s := past.elsewhere(zone)[Seeding].last)], past)


def _elsewhere(past: Past, seeding: Seeding) -> _Sown | None:
    """What the lawn's other zones were sown with on days before."""
    before = past.history.on(past.zone, seeding.date - timedelta(1), past.watches)
    return _newest_of([s for zone in past.lawn.zone_names if (s := before.elsewhere(zone)[Seeding].last)], past)


def _newest_of(sowings: list[Seeding], past: Past) -> _Sown | None:
    newest = max(sowings, key=lambda s: (s.day, s.id), default=None)
    return _as_sown(newest, past.history.lawn(newest.date)) if newest else None


def _as_sown(seeding: Seeding, lawn: Lawn) -> _Sown:
    product = lawn.product(seeding.product)
    return _Sown(seeding.product, mix_of(lawn, seeding.product), product.maker if product else "", seeding.id)


def _same(before: _Sown, product: str, lawn: Lawn, n: Numbers) -> bool:
    return before.product == product or same_seed(before.mix, mix_of(lawn, product), n["points"])


def _other_maker(before: _Sown, now: _Sown) -> bool:
    return bool(before.maker and now.maker) and before.maker != now.maker
