"""HOW MUCH: what goes down on each zone at the label's low and high rate, and which limits that would pass."""

from collections.abc import Callable, Iterator, Sequence
from functools import partial

from journal.plan.measure import nitrogen, to_less, to_more
from journal.reckon.put_down import PASSES, Over, Portion, PutDown, put_down
from journal.reckon.seeding import bulk_rate_g_per_m2, pure_live_share
from journal.reckon.stock import Shelf, as_in_lot
from journal.record.lawn import Lawn
from journal.record.product import Product, Range
from journal.record.quantity import in_unit
from journal.record.unit import Dimension, unit_for
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import left, middle, right
from journal.screens.shed.amounts import (
    NOTHING,
    aligned,
    area_unit,
    area_words,
    kept,
    measured_out,
    poured,
    rate_words,
)
from journal.screens.shed.lines import putting, setting, verb
from journal.standing import Standing

MARGIN = "     "
_AT_ONCE = frozenset(Over) - {Over.YEAR}


Rate = tuple[str, float, Callable[[float], int]]
"""Name, rate in its base unit, and how what it asks for is rounded: never below the low rate nor above the high."""


def rates(product: Product) -> tuple[Rate, ...]:
    """As the label has them; none where it was not entered."""
    rate = product.rate
    if rate is None:
        return ()
    if rate.low == rate.high:
        return (("label rate", rate.low, round),)
    return ("low rate", rate.low, to_more), ("high rate", rate.high, to_less)


def groups(names: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    """All the zones together, where there are several, and then each."""
    each = tuple((name,) for name in names)
    return each if len(each) < 2 else (names, *each)


def missing(product: Product, shelf: Shelf) -> str:
    """The key of the label without which nothing can be reckoned; '' when all is there."""
    if not verb(product):
        return "kind"
    if product.rate is None or (product.form and product.liquid != (product.rate.dimension is Dimension.VOLUME_RATE)):
        return "rate"
    if product.kind == "seed" and product.rate_basis == "pls":
        lot = as_in_lot(product, shelf.in_use)
        return "purity" if not lot.purity else "germination" if not lot.germination else ""
    return ""


def targets(product: Product, shelf: Shelf, zones: tuple[str, ...]) -> tuple[Target, ...]:
    """A place to stand for every rate of every group of zones."""
    if missing(product, shelf):
        return (Target(-1, name=f"{product.name}/how much"),)
    return tuple(
        Target(-1, name=f"{product.name}/{name}/{' '.join(group)}")
        for name, _, _ in rates(product)
        for group in groups(zones)
    )


def dosed(
    product: Product, label: Range, shelf: Shelf, rate: float, zones: Sequence[str], standing: Standing
) -> PutDown:
    """A rate of the label on these zones, for seed from the lot at hand: as much as must come out of the bag."""
    pasts = [standing.history.on(zone, standing.as_of) for zone in zones]
    return put_down(product, _from_the_bag(product, shelf, rate), label.dimension, pasts)


def _from_the_bag(product: Product, shelf: Shelf, rate: float) -> float:
    """A rate of pure live seed as the seed of the lot at hand; every other rate as it is."""
    if product.kind != "seed":
        return rate
    return bulk_rate_g_per_m2(rate, as_in_lot(product, shelf.in_use)) or rate


def amounts(product: Product, shelf: Shelf, zones: tuple[str, ...], standing: Standing) -> str:
    """`17-25.5 lb`: what goes on these zones together; `·` where the label or an area is missing."""
    lawn, label, area = standing.lawn, product.rate, standing.lawn.area_m2(zones)
    if label is None or area is None or missing(product, shelf):
        return NOTHING
    liquid = label.dimension is Dimension.VOLUME_RATE
    doses = [(dosed(product, label, shelf, rate, zones, standing), how) for _, rate, how in rates(product)]
    said = [poured(measured_out(dose, lawn, how, liquid=liquid), lawn, liquid=liquid) for dose, how in doses]
    return said[0] if len(said) < 2 or said[0] == said[1] else f"{said[0].partition(' ')[0]}-{said[1]}"


def draw(paper: Paper, product: Product, shelf: Shelf, zones: tuple[str, ...], standing: Standing) -> None:
    """A block a rate: every group of zones with its line, and beneath it what would be too much."""
    lawn, label, key = standing.lawn, product.rate, missing(product, shelf)
    places = iter(targets(product, shelf, zones))
    if key or label is None:
        paper.heading("  HOW MUCH")
        says = f"set {product.name} {key}"
        row = (Span(MARGIN), Span(says, Ink.KEY), Span(f"  first: {_NEEDED[key]}"))
        paper.stop(row, next(places), lit=1, main=False, line=partial(setting, product, key, lawn))
        paper.add()
        return
    liquid = label.dimension is Dimension.VOLUME_RATE
    for name, rate, how in rates(product):
        found = [dosed(product, label, shelf, rate, group, standing) for group in groups(zones)]
        _heading(paper, f"at the {name}, {rate_words(rate, label.dimension, lawn)}", found[0], lawn, liquid=liquid)
        weighed = [measured_out(dose, lawn, how, liquid=liquid) for dose in found]
        for dose, whole, said in zip(found, weighed, _amounts(found, weighed, lawn, liquid=liquid), strict=True):
            line = partial(putting, product, dose, label.dimension, lawn, how)
            paper.stop(_row(paper, dose, whole, said, lawn, liquid=liquid), next(places), lit=1, main=False, line=line)
        for words in _warnings(found[0], weighed[0], shelf, lawn):
            paper.add((Span(MARGIN), Span("! ", Ink.LATE), Span(words)))
    for words in _notes(product, shelf):
        paper.add((Span(MARGIN), Span(words, Ink.DIM)))
    paper.add()


_NEEDED = {
    "kind": "what it is, like fertilizer, seed or lime",
    "rate": "low and high, by weight for granules, by volume for a liquid",
    "purity": "the rate means pure live seed; copy purity and germination off the tag",
    "germination": "the rate means pure live seed; copy germination off the tag",
}

_AREA, _AMOUNT, _PACKS, _PASS, _NITROGEN, _YEAR = 7, 11, 8, 10, 8, 14


def _name(paper: Paper) -> int:
    """Columns for the name of a zone."""
    return 13 if paper.width < 110 else 24


def _heading(paper: Paper, words: str, dose: PutDown, lawn: Lawn, *, liquid: bool) -> None:
    paper.add((Span("   "), Span("HOW MUCH", Ink.TITLE), Span(f"  {words}")))
    columns = " " * _name(paper) + right(area_unit(lawn), _AREA) + right("amount", _AMOUNT)
    if dose.pack is not None:
        columns += right("bottles" if liquid else "bags", _PACKS)
    if not liquid:
        columns += right(f"each of {PASSES}", _PASS)
    if any(portion.brings for portion in dose.portions):
        columns += right(unit_for(Dimension.MASS_RATE, lawn.units).name.replace("/", " N/"), _NITROGEN)
        columns += right("year's N", _YEAR)
    paper.add((Span(MARGIN), Span(columns, Ink.DIM)))


def _amounts(
    found: Sequence[PutDown], whole: Sequence[float], lawn: Lawn, *, liquid: bool
) -> Iterator[tuple[str, str]]:
    """(in all, in each pass) of every dose; '' for the passes of a liquid, and where an area is not known."""
    passes = aligned([amount / PASSES for amount in whole], lawn, liquid=liquid)
    for dose, amount, part in zip(found, aligned(whole, lawn, liquid=liquid), passes, strict=True):
        yield ("", "") if dose.amount is None else (amount, "" if liquid else part)


def _row(paper: Paper, dose: PutDown, whole: float, said: tuple[str, str], lawn: Lawn, *, liquid: bool) -> Row:
    unit = unit_for(Dimension.VOLUME if liquid else Dimension.MASS, lawn.units)
    together = len(dose.portions) > 1
    name = "all zones" if together else dose.portions[0].zone if dose.portions else ""
    areas = [portion.area_m2 for portion in dose.portions]
    area = None if None in areas else sum(one for one in areas if one is not None)
    amount, each = said
    row: list[Span] = [
        Span(MARGIN),
        Span(left(middle(name, _name(paper) - 1), _name(paper)), Ink.STRONG),
        Span(right(area_words(area, lawn), _AREA)),
    ]
    if not amount:
        return (*row, *_no_area(dose, lawn))
    row.append(Span(right(amount, _AMOUNT), Ink.STRONG))
    if dose.pack is not None:
        row.append(Span(right(f"{whole / in_unit(dose.pack, unit):.2f}", _PACKS)))
    if each:
        row.append(Span(right(each, _PASS)))
    return (*row, *_nitrogen(dose.portions, lawn, together=together))


def _no_area(dose: PutDown, lawn: Lawn) -> Row:
    """How to give the zone an area; for several together the one that has none."""
    without = next((portion.zone for portion in dose.portions if portion.area_m2 is None), "")
    example = "220m2" if lawn.units == "metric" else "2400sqft"
    return Span("   area not known: ", Ink.LATE), Span(f"set {without} area {example}", Ink.KEY)


def _nitrogen(portions: tuple[Portion, ...], lawn: Lawn, *, together: bool) -> Row:
    """What it brings and where that takes the year; together only what it brings, the same everywhere."""
    first = portions[0]
    if first.brings is None or first.year_n is None:
        return EMPTY_ROW
    over = {which for portion in portions for which, _ in portion.over}
    brings = f"{_in_book(first.brings.n, lawn):.{2 if lawn.units == 'us' else 1}f}"
    row = [Span(right(brings, _NITROGEN)), Span(" !" if over & _AT_ONCE else "  ", Ink.LATE)]
    if not together:
        year, most = (_in_book(value, lawn) for value in (first.year_n, first.year_most))
        row.append(Span(right(f"{'>' if first.at_least else ''}{year:.1f} of {most:.1f}", _YEAR - 2)))
        row.append(Span(" !" if Over.YEAR in over else "", Ink.LATE))
    return tuple(row)


def _in_book(g_per_m2: float, lawn: Lawn) -> float:
    return in_unit(g_per_m2, unit_for(Dimension.MASS_RATE, lawn.units))


def _warnings(dose: PutDown, whole: float, shelf: Shelf, lawn: Lawn) -> Iterator[str]:
    """What would be too much, each once with the zones it holds for."""
    found: dict[tuple[Over, float], list[str]] = {}
    for portion in dose.portions:
        for limit in portion.over:
            found.setdefault(limit, []).append(portion.zone)
    for (which, most), zones in found.items():
        where = "" if len(zones) == len(dose.portions) else f": {', '.join(zones)}"
        yield f"{_TOO_MUCH[which].format(nitrogen(most, lawn))}{where}"
    unmeasured = [portion.zone for portion in dose.portions if portion.at_least]
    if unmeasured:
        yield f"a feeding of this year has no amount, so the year's may be more: {', '.join(unmeasured)}"
    unit = unit_for(Dimension.VOLUME if shelf.liquid else Dimension.MASS, lawn.units)
    wanted = whole * float(unit.factor)
    if shelf.left is not None and dose.amount is not None and wanted > shelf.left:
        short = kept(wanted - shelf.left, lawn, liquid=shelf.liquid)
        yield f"{short} more than what is left{' at most' if shelf.at_most else ''}"


_TOO_MUCH = {
    Over.YEAR: "takes the year over its limit of {}",
    Over.LOCAL: "more than the local rule allows at once, {}",
    Over.LOCAL_SOLUBLE: "more soluble than the local rule allows at once, {}",
    Over.ONCE: "more than {} at once",
    Over.SOLUBLE: "more than {} soluble at once",
    Over.SOLUBLE_NEW: "more than {} soluble at once on new grass",
}


def _notes(product: Product, shelf: Shelf) -> Iterator[str]:
    """How the amounts are meant."""
    if product.rate is None:
        return
    if product.rate.dimension is Dimension.VOLUME_RATE:
        yield "in as much water as the label says"
        return
    lot = as_in_lot(product, shelf.in_use)
    if product.kind == "seed" and product.rate_basis == "pls" and lot.purity and lot.germination:
        share = 100 * pure_live_share(lot.purity, lot.germination)
        yield (
            f"the rate is pure live seed: {lot.purity:g} % pure x {lot.germination:g} % germinating "
            f"= {share:.1f} % of the bag"
        )
    yield "two passes at right angles, half of it in each"
