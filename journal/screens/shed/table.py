"""The shelves as a table: a row a product, by what it is for; numbers to the right, a bar for what is left."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from rich.cells import cell_len

from journal.reckon.stock import Shelf
from journal.record.day import MONTHS
from journal.record.lawn import Lawn
from journal.record.product import PROTECTS, Product
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import left, middle, right
from journal.screens.shed.amounts import NOTHING, area_unit, area_words, kept, range_words
from journal.screens.shed.contents import contents
from journal.screens.shed.doses import amounts
from journal.standing import Standing

FEED, SEED, AGAINST, REST = "FEED", "SEED", "AGAINST WEEDS, INSECTS, DISEASE", "LIME AND THE REST"
_WHAT = {FEED: "analysis, slow", SEED: "grasses, %", AGAINST: "actives", REST: "what it is"}
_OF = {"starter": FEED, "fertilizer": FEED, "weed-and-feed": FEED, "seed": SEED, **dict.fromkeys(PROTECTS, AGAINST)}
_OF["weed-and-feed"] = FEED


def groups(products: Iterable[Product]) -> dict[str, list[Product]]:
    """Group -> its products in the order in which they came to the shed; groups without any are left out."""
    found: dict[str, list[Product]] = {name: [] for name in (FEED, SEED, AGAINST, REST)}
    for product in products:
        found[_OF.get(product.kind, REST)].append(product)
    return {name: members for name, members in found.items() if members}


_WIDEST = 60
"""Columns for what is in a product: with more of them the numbers would stand too far from the name."""


@dataclass(frozen=True, slots=True)
class Columns:
    """Widths; 0 for a column that there is no room for."""

    name: int
    what: int
    rate: int
    zones: int
    left: int
    bar: int
    covers: int
    last: int

    @classmethod
    def fitting(cls, width: int, names: Iterable[str]) -> "Columns":
        """The name takes what it needs, within reason; what is in it takes what is left over."""
        longest = max((cell_len(name) for name in names), default=10)
        if width < 110:
            name = max(10, min(longest, width // 4))
            return cls(name, max(6, width - name - 44), 15, 0, 11, 5, 0, 8)
        name, bar = max(14, min(longest, width // 5)), 6 if width < 160 else 24
        return cls(name, min(_WIDEST, width - name - bar - 76), 17, 16, 13, bar, 12, 9)

    def spelled(self, words: str) -> str:
        """Fluid ounces without their blank, as the line has them, where there is little room."""
        return words if self.covers else words.replace("fl oz", "floz")


def heading(group: str, columns: Columns, lawn: Lawn, zone: str) -> tuple[str, Row]:
    """The group's name, and the names of its columns after it."""
    before = columns.name + 1
    words = " " * max(2, before - cell_len(group)) + _WHAT[group]
    room = before + columns.what - cell_len(group)
    words = left(words if cell_len(words) <= room else "", room)
    words += " " + right("label rate", columns.rate)
    if columns.zones:
        words += " " + right(middle(zone or "all zones", columns.zones - 1), columns.zones - 1)
    words += right("left", columns.left) + " " * (columns.bar + 1)
    if columns.covers:
        words += right(f"for {area_unit(lawn)}", columns.covers)
    return group, (Span(f"{words} {right('last use', columns.last)}", Ink.DIM),)


def row(product: Product, shelf: Shelf, columns: Columns, standing: Standing, zones: tuple[str, ...]) -> Row:
    """One product as it stands on the shelf; where there is room, how much of it goes on these zones."""
    lawn = standing.lawn
    spans = [
        Span(" "),
        Span(left(middle(product.name, columns.name), columns.name), Ink.STRONG),
        Span(" "),
        Span(left(contents(product, columns.what), columns.what)),
        Span(" "),
        Span(right(columns.spelled(range_words(product.rate, lawn)), columns.rate)),
        Span(right(amounts(product, shelf, zones, standing), columns.zones) if columns.zones else "", Ink.STRONG),
        *_left(shelf, columns, lawn),
    ]
    if columns.covers:
        spans.append(Span(right(_covers(product, shelf, lawn), columns.covers)))
    spans.append(Span(f" {right(_last(shelf, standing.as_of), columns.last)}", Ink.DIM))
    return tuple(spans)


def _left(shelf: Shelf, columns: Columns, lawn: Lawn) -> Row:
    """The amount and how much of the lots that still have some; `<` where it is only the most there can be."""
    if shelf.left is None:
        return Span(right(NOTHING, columns.left)), Span(" " * (columns.bar + 1))
    mark = "<" if shelf.at_most else ""
    words = columns.spelled(f"{mark}{kept(shelf.left, lawn, liquid=shelf.liquid)}")
    open_lots = [lot for lot in shelf.lots if lot.left] or list(shelf.lots[-1:])
    whole = sum(lot.amount for lot in open_lots if lot.amount is not None)
    full = min(columns.bar, round(columns.bar * shelf.left / whole)) if whole else 0
    full = max(1, full) if shelf.left > 0 else 0
    ink = Ink.DONE if shelf.left > 0 else Ink.LATE
    number = Span(right(words, columns.left), Ink.PLAIN if shelf.left > 0 else ink)
    return number, Span(" "), Span("█" * full, ink), Span("·" * (columns.bar - full), Ink.DIM)


def _covers(product: Product, shelf: Shelf, lawn: Lawn) -> str:
    """The area that what is left is enough for at the label's low rate."""
    if not shelf.left or product.rate is None:
        return NOTHING
    return area_words(shelf.left / product.rate.low, lawn)


def _last(shelf: Shelf, as_of: date) -> str:
    """`24 Apr`; of another year `Oct 2026`."""
    if not shelf.uses:
        return NOTHING
    day = shelf.uses[-1].entry.date
    month = MONTHS[day.month - 1].title()
    return f"{day.day} {month}" if day.year == as_of.year else f"{month} {day.year}"
