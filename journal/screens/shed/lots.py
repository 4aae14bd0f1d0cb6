"""What was bought, lot by lot, and where the last of it went."""

from datetime import date
from functools import partial

from journal.line.say import say
from journal.reckon.stock import Lot, Shelf
from journal.record.day import MONTHS
from journal.record.lawn import Lawn
from journal.record.product import Product
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Row, Span, Target
from journal.screens.rows import left, right
from journal.screens.shed.amounts import kept
from journal.screens.shed.lines import buying
from journal.screens.today.latest import entry_row
from journal.standing import Standing

MARGIN = "     "
LOTS, USES = 8, 6
"""So many of each are shown, the newest."""


def targets(product: Product, shelf: Shelf) -> tuple[Target, ...]:
    """A place to stand for buying more, for every lot, newest first, and for the last uses."""
    lots = [Target(-1, entry=lot.entry.id) for lot in _lots(shelf)]
    uses = [Target(-1, entry=use.entry.id) for use in reversed(shelf.uses[-USES:])]
    return (Target(-1, name=f"{product.name}/buy"), *lots, *uses)


def _lots(shelf: Shelf) -> tuple[Lot, ...]:
    return tuple(reversed(shelf.lots[-LOTS:]))


def draw(paper: Paper, product: Product, shelf: Shelf, standing: Standing) -> None:
    """Both lists; Enter on an entry takes its own line, to be put right."""
    lawn = standing.lawn
    places = iter(targets(product, shelf))
    paper.add()
    paper.add((Span("   "), Span("BOUGHT", Ink.TITLE), *_in_all(shelf, lawn)))
    line = partial(buying, product, lawn)
    words = buying(product, lawn).rstrip()
    paper.stop(
        (Span(MARGIN), Span(words, Ink.KEY), Span("  more of it", Ink.DIM)), next(places), lit=1, main=False, line=line
    )
    for lot in _lots(shelf):
        row = _lot(lot, shelf, lawn)
        paper.stop(row, next(places), lit=1, main=False, line=partial(say, lot.entry, lawn))
        tag = ", ".join(_tag(lot, standing.as_of))
        if tag:
            paper.add((Span(f"{MARGIN}{'':13}{tag}", Ink.DIM),))
    paper.add()
    paper.add((Span("   "), Span("LAST USES", Ink.TITLE), *(() if shelf.uses else (Span("  none", Ink.DIM),))))
    for use in reversed(shelf.uses[-USES:]):
        row = (Span(MARGIN), *entry_row(use.entry, lawn, standing.as_of)[1:])
        paper.stop(row, next(places), lit=1, main=False, line=partial(say, use.entry, lawn))


def _in_all(shelf: Shelf, lawn: Lawn) -> Row:
    """How much was bought and used in all, and why what is left may be less."""
    if not shelf.lots:
        return (Span("  nothing on file", Ink.DIM),)
    bought, used = (kept(amount, lawn, liquid=shelf.liquid) for amount in (shelf.bought, shelf.used))
    words = f"  {bought} in all, {used} used"
    if shelf.short:
        words += f", {kept(shelf.short, lawn, liquid=shelf.liquid)} of it of what was never bought"
    unknown = shelf.unknown_uses
    tail = f"; {unknown} use{'s' if unknown > 1 else ''} of unknown amount" if unknown else ""
    return Span(words, Ink.DIM), Span(tail, Ink.LATE)


def _lot(lot: Lot, shelf: Shelf, lawn: Lawn) -> Row:
    size = "size not known" if lot.size is None else f"{lot.count:g} x {kept(lot.size, lawn, liquid=shelf.liquid)}"
    cost = "" if lot.cost is None else f"${lot.cost:,.2f}"
    left_over = "" if lot.left is None else "used up" if not lot.left else kept(lot.left, lawn, liquid=shelf.liquid)
    return (
        Span(MARGIN),
        Span(left(day_words(lot.entry.date), 13)),
        Span(left(size, 15)),
        Span(right(cost, 9)),
        Span(f"{right(left_over, 12)}{' left' if lot.left else ''}", Ink.STRONG if lot.left else Ink.DIM),
    )


def _tag(lot: Lot, as_of: date) -> list[str]:
    """The seed tag of a lot, with the age of its test."""
    said = []
    if lot.purity is not None:
        said.append(f"{lot.purity:g} % pure")
    if lot.germination is not None:
        said.append(f"{lot.germination:g} % germinating")
    if lot.tested is not None:
        months = 12 * (as_of.year - lot.tested.year) + as_of.month - lot.tested.month
        said.append(f"tested {MONTHS[lot.tested.month - 1].title()} {lot.tested.year}, {months} months ago")
    return said


def day_words(day: date) -> str:
    """` 9 Oct 2026`, the numbers under each other."""
    return f"{day.day:>2} {MONTHS[day.month - 1].title()} {day.year}"
