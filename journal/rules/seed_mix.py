"""What the seed's own label gives away: weeds, other crops, an old test, and grasses that show as patches."""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta

from journal.facts.grasses import ANNUAL_RYEGRASS, ROUGH_BLUEGRASS, TALL_FESCUE
from journal.facts.mixture import bluegrass_percent, shares
from journal.facts.sources import published
from journal.record.entry import Entry
from journal.record.kinds.intention import Intention
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.stock import Stock
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.rules.declare import Finding, rule
from journal.rules.flag import Level
from journal.rules.numbers import Numbers
from journal.rules.reach import intended
from journal.rules.turns import after
from journal.rules.words import on
from journal.season.history import Past
from journal.season.stand import intentions, mix_of

PATCHY = (ANNUAL_RYEGRASS, ROUGH_BLUEGRASS)


@dataclass(frozen=True, slots=True)
class _Fault:
    """One thing that speaks against a seed, and the number that it passes."""

    says: str
    number: str
    patchy: bool = False


@rule(
    "seed-mix",
    levels=(Level.LOSS, Level.NOTE),
    watches=(Seeding, Stock, Intention),
    turns=(
        after(Seeding, "stands-days"),
        after(Stock, "stands-days"),
        after(Intention, "stands-days", reach=intended),
    ),
    basis=(published("lsu-best-buy", "kentucky-germination", "psu-right-seed", "courier-reseeding", "cornell-rates"),),
)
def seed_mix(past: Past, n: Numbers) -> tuple[Finding, ...]:
    """The seed's label names weeds, an old test or grasses that show."""
    found: dict[str, Finding] = {}
    for entry in _lately(past, n):
        lawn = past.history.lawn(entry.date)
        product = lawn.product(_product(entry))
        if product is None or product.kind != "seed":
            continue
        faults = tuple(_faults(past, lawn, product, entry, n))
        if faults:
            found[product.name] = _finding(past, product, entry, faults, n)
    return tuple(found.values())


def _product(entry: Entry) -> str:
    return entry.product if isinstance(entry, Seeding | Stock | Intention) else ""


def _lately(past: Past, n: Numbers) -> list[Entry]:
    """What was bought, meant and sown of late; of one seed the sowing has the last word."""
    days = n.days("stands-days")
    meant = [one for one in intentions(past, "seed") if past.day - one.day < days]
    return [*past.lawnwide(Stock).within(days), *meant, *past[Seeding].within(days)]


def _faults(past: Past, lawn: Lawn, product: Product, entry: Entry, n: Numbers) -> Iterator[_Fault]:
    mix = shares(mix_of(lawn, product.name))
    for kind in PATCHY:
        share = mix.get(kind.name, 0.0)
        if share >= n["patchy"]:
            yield _Fault(f"{kind.name} {share:.0f} %, which shows as coarse or pale patches", "patchy", patchy=True)
    fescue = mix.get(TALL_FESCUE.name, 0.0)
    if bluegrass_percent(mix) and n["fescue-low"] <= fescue < n["fescue-high"]:
        yield _Fault(
            f"tall fescue {fescue:.0f} % with bluegrass: under {n['fescue-high']:.0f} % it clumps", "fescue-high"
        )
    if product.weed_seed is not None and product.weed_seed > n["weed"]:
        yield _Fault(f"weed seed {product.weed_seed:g} %, more than {n['weed']:g}", "weed")
    if product.other_crop is not None and product.other_crop > n["crop"]:
        yield _Fault(f"other crop {product.other_crop:g} %, more than {n['crop']:g}", "crop")
    tested = _tested(past, product, entry)
    if tested is not None and (entry.date - _month_end(tested)).days > math.ceil(n["tested-days"]):
        yield _Fault(
            f"tested in {tested:%B %Y}, more than {round(n['tested-days'] * 12 / 365)} months before", "tested-days"
        )


def _tested(past: Past, product: Product, entry: Entry) -> date | None:
    """The month of test of the lot bought, of the newest lot at hand, or of the label."""
    lots = past.history.on(past.zone, entry.date, past.watches).lawnwide(Stock)
    lot = lots.picked(f"seed lots of {product.name}", lambda bought: bought.product == product.name).last
    return (lot.tested if lot else None) or product.tested


def _month_end(month: date) -> date:
    return (month.replace(day=28) + timedelta(4)).replace(day=1) - timedelta(1)


def _finding(past: Past, product: Product, entry: Entry, faults: tuple[_Fault, ...], n: Numbers) -> Finding:
    how = {Seeding: "sown", Stock: "bought"}.get(type(entry), "planned")
    patchy = any(fault.patchy for fault in faults)
    clears_on = entry.date + timedelta(n.days("stands-days"))
    sown = isinstance(entry, Seeding)
    return Finding(
        level=Level.LOSS if patchy and not isinstance(entry, Stock) else Level.NOTE,
        subject=product.name,
        headline=f"{product.name} is not the best of seed",
        why=f"{how} {on(entry.date, past)}; " + "; ".join(fault.says for fault in faults),
        do="watch what comes up, and sow another seed next time"
        if sown
        else "take a cleaner or fresher seed if you can",
        clears=on(clears_on, past),
        clears_on=clears_on,
        evidence=(entry.id,),
        numbers=tuple(dict.fromkeys(fault.number for fault in faults)),
    )
