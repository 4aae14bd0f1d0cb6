"""A product that is opened: the label's law first, then how much, the label's numbers, what was bought and used."""

from functools import cache

from journal.facts.safety import SENTENCES
from journal.reckon.protection import is_protective
from journal.reckon.stock import Shelf
from journal.record.product import Product
from journal.screens.paper import Paper, Within
from journal.screens.picture import Ink, Span
from journal.screens.rows import wrapped
from journal.screens.shed import doses, label, lots
from journal.standing import Standing


def within(product: Product, shelf: Shelf, zones: tuple[str, ...], standing: Standing, paper: Paper) -> Within:
    """What can be stood on inside it; the rows are made when it is opened, and once."""
    targets = (
        *doses.targets(product, shelf, zones),
        *label.targets(product, standing.lawn),
        *lots.targets(product, shelf),
    )

    @cache
    def rows() -> Paper:
        inner = Paper(paper.view, paper.width)
        if is_protective(product):
            for line in wrapped(" ".join(SENTENCES), inner.width - 6):
                inner.add((Span("   "), Span(line)))
            inner.add()
        doses.draw(inner, product, shelf, zones, standing)
        inner.add(
            (Span("   "), Span("LABEL", Ink.TITLE), Span("  Enter on a row takes the line that sets it", Ink.DIM))
        )
        label.draw(inner, product, standing)
        lots.draw(inner, product, shelf, standing)
        inner.add()
        return inner

    return Within(targets, rows, in_full=is_protective(product))
