"""What is on the shelf: what was bought, what was used, and what should be left of it.

Amounts are grams, or millilitres of a product that is measured by volume. What a service brought along is no use of
the owner's stock.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from journal.reckon.dose import doses, total_g, total_ml
from journal.record.dose import Dose
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.stock import Stock
from journal.record.kinds.treatment import Treatment
from journal.record.product import Product
from journal.season.history import LAWN, History, Past
from journal.season.track import Track

USES: tuple[type[Entry], ...] = (Feeding, Treatment, Seeding)
"""What takes from the shelf."""

_CRUMB = 1e-9
"""A share of a lot that is only the noise of binary fractions."""


@dataclass(frozen=True, slots=True)
class Lot:
    """One purchase. `size` is that of one pack, `cost` that of all together; None for what nobody said.

    `left` is None where the size is not known.
    """

    entry: Stock
    count: float
    size: float | None
    cost: float | None
    purity: float | None
    germination: float | None
    tested: date | None
    left: float | None

    @property
    def amount(self) -> float | None:
        """All its packs together."""
        return None if self.size is None else self.count * self.size


@dataclass(frozen=True, slots=True)
class Use:
    """What one entry took from the shelf; `amount` None where it can't be known, `short` what no lot had of it."""

    entry: Entry
    amount: float | None
    zones: tuple[str, ...]
    short: float = 0.0


@dataclass(frozen=True, slots=True)
class Shelf:
    """One product, in g, or in mL where `liquid`.

    `left` is None for a product never bought or bought in packs of unknown size. `short` is what was used though
    nothing was left of what had been bought by then. `price` is what a gram (mL) cost, over all lots with a cost.
    """

    product: str
    liquid: bool
    bought: float
    used: float
    left: float | None
    short: float
    lots: tuple[Lot, ...]
    uses: tuple[Use, ...]
    unknown_uses: int
    price: float | None

    @property
    def at_most(self) -> bool:
        """Whether `left` is only the most there can be: something was used since the first purchase, unmeasured."""
        return bool(self.lots) and any(
            use.amount is None and use.entry.day >= self.lots[0].entry.day for use in self.uses
        )

    @property
    def in_use(self) -> Lot | None:
        """The oldest lot with something left, else the newest of unknown size; None when all are used up."""
        known = next((lot for lot in self.lots if lot.left), None)
        return known or next((lot for lot in reversed(self.lots) if lot.left is None), None)


def shelf(history: History, product: str, as_of: date) -> Shelf:
    """What there is of one product at the end of that day."""
    buys = _bought(history, as_of, product).get(product, ())
    return _shelf(history, product, as_of, buys, _uses(history, as_of, product))


def shelf_on(past: Past, product: str) -> Shelf:
    """The same at the end of the past's day, kept for whoever asks again."""
    kept = past.history.kept(LAWN, past.day)
    key = ("shelf", product)
    if key not in kept:
        kept[key] = shelf(past.history, product, past.date)
    found: Shelf = kept[key]
    return found


def shelves(history: History, as_of: date) -> tuple[Shelf, ...]:
    """Every product of the shed in its order, then what was bought or used of none that the shed knows."""
    bought, used = _bought(history, as_of), _uses(history, as_of)
    known = [product.name for product in history.lawn(as_of).products]
    names = dict.fromkeys((*known, *bought))
    mine: dict[str, list[tuple[Entry, Dose]]] = {name: [] for name in names}
    for entry, dose in used:
        if dose.product in mine:
            mine[dose.product].append((entry, dose))
    return tuple(_shelf(history, name, as_of, bought.get(name, ()), mine[name]) for name in names)


def cost_of(history: History, entry: Entry, dose: Dose) -> float | None:
    """What a dose was worth: its amount at what a gram (mL) cost on average in the lots bought up to that day.

    None where no lot with a cost is on file or the amount is not known.
    """
    buys = _bought(history, entry.date, dose.product).get(dose.product, ())
    if not buys:
        return None
    liquid = _is_liquid(history, dose.product, entry.date, buys, [(entry, dose)])
    price = _price(_lot(history, buy, entry.date, liquid) for buy in buys)
    amount = _use(history, entry, dose, liquid).amount
    return None if price is None or amount is None else price * amount


def as_in_lot(product: Product, lot: Lot | None) -> Product:
    """A seed with the purity, germination and month of test of the lot at hand, where the lot's own tag says them."""
    if lot is None:
        return product
    return replace(
        product,
        purity=product.purity if lot.purity is None else lot.purity,
        germination=product.germination if lot.germination is None else lot.germination,
        tested=lot.tested or product.tested,
    )


def _bought(history: History, as_of: date, product: str = "") -> Mapping[str, list[Stock]]:
    """Purchases (of one product, or of all without one) up to that day by product, oldest first."""
    found: dict[str, Stock] = {}
    for (_, kind), track in history.tracks.items():
        if kind == Stock.kind:
            bought = _of(track, product) if product else track.entries
            found |= {buy.id: buy for buy in bought if buy.date <= as_of}
    by_product: dict[str, list[Stock]] = {}
    for buy in sorted(found.values(), key=lambda buy: (buy.day, buy.id)):
        by_product.setdefault(buy.product, []).append(buy)
    return by_product


def _uses(history: History, as_of: date, product: str = "") -> list[tuple[Entry, Dose]]:
    """What was put down of a product (of all, without one) up to that day, oldest first, each entry once."""
    kinds = {kind.kind for kind in USES}
    found: dict[str, Entry] = {}
    for (_, kind), track in history.tracks.items():
        if kind in kinds:
            entries = _of(track, product) if product else track.entries
            found |= {entry.id: entry for entry in entries if entry.date <= as_of and not entry.by_service}
    by_day = sorted(found.values(), key=lambda entry: (entry.day, entry.id))
    return [(entry, dose) for entry in by_day for dose in doses(entry) if not product or dose.product == product]


def _of(track: Track[Any], product: str) -> tuple[Any, ...]:
    """The entries of a track that buy or use that product: found once, however often it is asked for."""

    def names(entry: Entry) -> bool:
        return (isinstance(entry, Stock) and entry.product == product) or any(
            d.product == product for d in doses(entry)
        )

    return track.picked(f"of {product}", names).entries


def _shelf(
    history: History, product: str, as_of: date, buys: Iterable[Stock], used: Iterable[tuple[Entry, Dose]]
) -> Shelf:
    buys, used = tuple(buys), tuple(used)
    liquid = _is_liquid(history, product, as_of, buys, used)
    lots = [_lot(history, buy, as_of, liquid) for buy in buys]
    uses = tuple(_use(history, entry, dose, liquid) for entry, dose in used)
    uses = _draw(lots, uses)
    sizes = [lot.amount for lot in lots]
    lefts = [lot.left for lot in lots if lot.left is not None]
    return Shelf(
        product=product,
        liquid=liquid,
        bought=sum(size for size in sizes if size is not None),
        used=sum(use.amount for use in uses if use.amount is not None),
        left=sum(lefts) if lots and len(lefts) == len(lots) else None,
        short=sum(use.short for use in uses),
        lots=tuple(lots),
        uses=uses,
        unknown_uses=sum(use.amount is None for use in uses),
        price=_price(lots),
    )


def _is_liquid(
    history: History,
    product: str,
    as_of: date,
    buys: Iterable[Stock],
    used: Iterable[tuple[Entry, Dose]],
) -> bool:
    """Whether it is measured by volume: so its label says, else the purchases, else every use on file.

    A use that goes the other way than the purchases is one of unknown amount; it turns no shelf over.
    """
    facts = history.lawn(as_of).product(product)
    if facts is not None and (facts.liquid or facts.form):
        return facts.liquid
    sized = next((buy for buy in buys if buy.size_g is not None or buy.size_ml is not None), None)
    if sized is not None:
        return sized.size_g is None
    if facts is not None and facts.bag_g is not None:
        return False
    said = [dose for _, dose in used]
    weighed = any(dose.amount_g is not None or dose.rate_g_per_m2 is not None for dose in said)
    return not weighed and any(dose.amount_ml is not None or dose.rate_ml_per_m2 is not None for dose in said)


def _lot(history: History, buy: Stock, as_of: date, liquid: bool) -> Lot:
    """A purchase before anything is taken from it. Without a size it has that of the product's bag or bottle."""
    facts = history.lawn(buy.date).product(buy.product) or history.lawn(as_of).product(buy.product)
    size = buy.size_ml if liquid else buy.size_g
    if size is None and buy.size_g is None and buy.size_ml is None and facts is not None:
        size = facts.bottle_ml if liquid else facts.bag_g
    count = 1.0 if buy.count is None else buy.count
    left = None if size is None else count * size
    return Lot(buy, count, size, buy.cost, buy.purity, buy.germination, buy.tested, left)


def _use(history: History, entry: Entry, dose: Dose, liquid: bool) -> Use:
    lawn = history.lawn(entry.date)
    return Use(entry, total_ml(dose, entry, lawn) if liquid else total_g(dose, entry, lawn), entry.zones)


def _draw(lots: list[Lot], uses: Iterable[Use]) -> tuple[Use, ...]:
    """Take every use from the oldest lot that was there on its day; returns them with what no lot had."""
    return tuple(replace(use, short=short) if (short := _taken(lots, use)) else use for use in uses)


def _taken(lots: list[Lot], use: Use) -> float:
    """Takes it off the lots, and says how much of it none had."""
    wanted = use.amount or 0.0
    for at, lot in enumerate(lots):
        if lot.entry.day > use.entry.day:
            break
        if not wanted or not lot.left or not lot.amount:
            continue
        taken = min(wanted, lot.left)
        left = lot.left - taken
        lots[at] = replace(lot, left=0.0 if left <= _CRUMB * lot.amount else left)
        wanted = 0.0 if wanted - taken <= _CRUMB * wanted else wanted - taken
    unsized = any(lot.left is None and lot.entry.day <= use.entry.day for lot in lots)
    return 0.0 if unsized else wanted


def _price(lots: Iterable[Lot]) -> float | None:
    paid = [(lot.cost, lot.amount) for lot in lots if lot.cost is not None and lot.amount]
    weight = sum(amount for _, amount in paid)
    return sum(cost for cost, _ in paid) / weight if weight else None
