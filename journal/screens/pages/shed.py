"""Page 4: what is in the shed, how much of it is left, what its label says, and how much goes down on each zone."""

from dataclasses import dataclass
from functools import partial

from journal.facts.safety import one_row
from journal.reckon.protection import is_protective
from journal.reckon.stock import Shelf, shelves
from journal.record.product import Product
from journal.screens.page import Size
from journal.screens.paper import LastPaper, Paper, press
from journal.screens.picture import Ink, Picture, Span, Target
from journal.screens.rows import text
from journal.screens.shed.doses import dosed, missing, rates
from journal.screens.shed.first import first_lines
from journal.screens.shed.lines import putting, setting
from journal.screens.shed.opened import within
from journal.screens.shed.table import AGAINST, Columns, groups, heading, row
from journal.screens.title import title_row
from journal.screens.view import View
from journal.standing import Standing


@dataclass(frozen=True, slots=True)
class Shed:
    """The shelves."""

    number: int = 4
    name: str = "shed"
    keys: tuple[tuple[str, str], ...] = (
        ("Up Down", "product by product; in an opened one row by row"),
        ("Tab", "the next product"),
        ("Space", "open, close: how much on each zone, the label's numbers, what was bought and used"),
        ("Enter", "on a product or an amount: the line that puts it down; on a number of the label: the line that "
                  "sets it; on an entry: the entry, to be put right"),
        ("Delete", "on an entry: strike it"),
        ("4", "the next zone, then all again"),
    )  # fmt: skip

    def draw(self, standing: Standing, view: View, size: Size) -> Picture:
        """The whole page."""
        about = f"Shed · {view.zone or 'all zones'}"
        return _paper(standing, view, size).picture(title_row(standing, view, size.width, about), size, view)

    def press(self, key: str, standing: Standing, view: View, size: Size) -> View | None:
        """Walk, open, scroll."""
        return press(key, _paper(standing, view, size), view, size)


PAGE = Shed()


def build(standing: Standing, view: View, size: Size) -> Paper:
    """A table by what the products are for."""
    paper, lawn = Paper(view, size.width), standing.lawn
    if not lawn.products:
        _empty(paper, standing)
        return paper
    found = {shelf.product: shelf for shelf in shelves(standing.history, standing.as_of)}
    columns = Columns.fitting(size.width, (product.name for product in lawn.products))
    zones = (view.zone,) if view.zone else lawn.zone_names
    table = groups(lawn.products)
    warned, at_most = _warned(table), any(shelf.at_most for shelf in found.values())
    # Blank rows between the groups go first where there is little room.
    rows = 2 * len(table) + len(lawn.products) + bool(warned) + 2 * at_most - 1
    airy = rows < size.height
    for at, (group, products) in enumerate(table.items()):
        if at and airy:
            paper.add()
        paper.heading(*heading(group, columns, lawn, view.zone))
        if group == warned:
            paper.brief = len(paper.rows)
            paper.add((Span(" "), Span(one_row(lawn.units), Ink.DIM)))
        for product in products:
            shelf = found[product.name]
            paper.stop(
                row(product, shelf, columns, standing, zones),
                Target(0, name=product.name),
                lit=1,
                line=partial(_ready, product, shelf, zones, standing),
                within=within(product, shelf, zones, standing, paper),
            )
    if at_most:
        if airy:
            paper.add()
        paper.add((Span(" "), Span("<", Ink.STRONG), Span(" at most: some of it was put down unmeasured", Ink.DIM)))
    return paper


PAPER = LastPaper(build)


def _paper(standing: Standing, view: View, size: Size) -> Paper:
    """The table is the same whether a product is opened or not."""
    return PAPER(standing, view.but(open=False), size)


def _warned(found: dict[str, list[Product]]) -> str:
    """The group under which the safety words stand: their own, else the first with something they hold for."""
    if AGAINST in found:
        return AGAINST
    return next((group for group, products in found.items() if any(map(is_protective, products))), "")


def _ready(product: Product, shelf: Shelf, zones: tuple[str, ...], standing: Standing) -> str:
    """The product at its label's low rate on the zones looked at; what is missing for that comes first."""
    key, label = missing(product, shelf), product.rate
    if key or label is None:
        return setting(product, key, standing.lawn)
    _, rate, how = rates(product)[0]
    dose = dosed(product, label, shelf, rate, zones, standing)
    return putting(product, dose, label.dimension, standing.lawn, how)


def _empty(paper: Paper, standing: Standing) -> None:
    """What to type, as a bag or a tag would have it."""
    paper.add()
    paper.add((Span(" "), Span("The shed is empty.", Ink.STRONG)))
    paper.add((Span(" "), Span("Type a product as its label has it and press Enter; what was bought comes after.")))
    paper.add()
    for line, says in first_lines(standing.lawn):
        paper.stop((Span(" "), Span(line, Ink.KEY), Span("")), Target(0, line="product ", name=line), lit=1)
        paper.add(text(f"   {says}", Ink.DIM))
