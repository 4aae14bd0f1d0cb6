"""How much of an active a zone had in a year, summed over every product that holds it, and how much it may have.

Amounts per area: of a product in g/m2, or mL/m2 where it is measured by volume; of an active in g/m2. Where only a
share of a zone was treated, the ground that was treated counts.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from journal.facts.actives import active, is_active
from journal.facts.citation import Basis, label
from journal.facts.sources import judgment
from journal.reckon.dose import mean_g_per_m2, rate_g_per_m2, rate_ml_per_m2, total_ml
from journal.reckon.label_uses import Round, active_names, holders
from journal.reckon.label_year import Year
from journal.reckon.protection import together
from journal.reckon.uses import Use
from journal.record.lawn import Lawn
from journal.record.product import Content, Product
from journal.record.unit import UNITS
from journal.season.history import Past

_ML_PER_L = 1000
_LB_PER_ACRE = float(UNITS["lb/acre"].factor)


@dataclass(frozen=True, slots=True)
class TooMuch:
    """More in a year than there may be, in g/m2 (mL/m2 where `by_volume`), by a label or by what is published.

    `what` is the active, or the product where its own label's limit was passed. `rounds` were added up; `left_out`
    are products that hold the active and can't be added, for want of its strength or of an amount.
    """

    what: str
    total: float
    most: float
    by_volume: bool
    by_label: bool
    rolling: bool
    basis: Basis
    rounds: tuple[Round, ...]
    left_out: tuple[str, ...]


def by_volume(product: Product) -> bool:
    """Whether its amounts are volumes."""
    return product.liquid or any(one.g_per_l is not None for one in product.actives)


def amount(one: Round, lawn_of: Past) -> float | None:
    """What an application brought of its product, on the ground that it covered; None where no amount is known.

    Of a spot that counts, what it would be over the whole zone.
    """
    rates = [(use.entry, _rate(use, lawn_of.history.lawn(use.date), one.product)) for use in one.uses]
    known = [(entry, rate) for entry, rate in rates if rate is not None]
    if len(known) < len(rates):
        return None
    return sum(rate for _, rate in known) if one.spot else together(known)


def _rate(use: Use, lawn: Lawn, product: Product) -> float | None:
    if not use.spot:
        return (rate_ml_per_m2 if by_volume(product) else rate_g_per_m2)(use.dose, use.entry, lawn)
    if not by_volume(product):
        return mean_g_per_m2(use.dose, use.entry, lawn)
    total, area = total_ml(use.dose, use.entry, lawn), lawn.area_m2(use.entry.zones)
    return total / area if total is not None and area else None


def strength(product: Product, name: str) -> float | None:
    """Grams of that active in each g, or mL, of the product; None where its label's number was not entered."""
    for one in product.actives:
        if (active(one.name).name if is_active(one.name) else one.name) == name:
            return _content(one, product)
    return None


def _content(one: Content, product: Product) -> float | None:
    if by_volume(product):
        return None if one.g_per_l is None else one.g_per_l / _ML_PER_L
    return None if one.percent is None else one.percent / 100


def too_much(past: Past, product: Product, both: Iterable[Year]) -> Iterator[TooMuch]:
    """What passed the label of that product, or the limit of any of its actives over every product that holds it."""
    for year in both:
        yield from _of_product(past, product, year)
        for name in active_names(product):
            yield from _of_active(past, name, year)


def _of_product(past: Past, product: Product, year: Year) -> Iterator[TooMuch]:
    most = product.label.max_year_amount
    if most is None:
        return
    held = [(one, amount(one, past)) for one in year.rounds if one.name == product.name]
    known = tuple((one, brought) for one, brought in held if brought is not None)
    total = sum(brought for _, brought in known)
    left = (product.name,) if len(known) < len(held) else ()
    yield TooMuch(
        product.name, total, most, by_volume(product), True, year.rolling, label(), tuple(o for o, _ in known), left
    )


def _of_active(past: Past, name: str, year: Year) -> Iterator[TooMuch]:
    held = holders(year.rounds, name)
    known: list[Round] = []
    left: list[str] = []
    total = 0.0
    for one in held:
        brought, share = amount(one, past), strength(one.product, name)
        if brought is None or share is None:
            left.append(one.name)
        else:
            known.append(one)
            total += brought * share
    limit = _limit(name, [one.product for one in held])
    if limit is not None:
        most, by_label, basis = limit
        yield TooMuch(name, total, most, False, by_label, year.rolling, basis, tuple(known), tuple(dict.fromkeys(left)))


def _limit(name: str, products: list[Product]) -> tuple[float, bool, Basis] | None:
    """Of the labels of products that hold nothing else, the strictest; else what is published of the active.

    The limit on a mixture may be due to another of its actives, so that it says nothing of this one.
    """
    labels = [
        product.label.max_year_amount * share
        for product in products
        if len(active_names(product)) == 1
        and product.label.max_year_amount is not None
        and (share := strength(product, name)) is not None
    ]
    if labels:
        return min(labels), True, label()
    one = active(name) if is_active(name) else None
    if one is None or one.yearly_lb_per_acre is None:
        return None
    return one.yearly_lb_per_acre * _LB_PER_ACRE, False, one.year_basis or judgment()
