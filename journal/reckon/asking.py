"""Readers of the options of reckonings. What nobody can have meant is refused: the bounds are judgment."""

import re

from journal.record.quantity import parse, parse_as
from journal.record.refusal import Refusal
from journal.record.term import Reader
from journal.record.unit import Dimension

LAWN, BIN, TANK = "100acre", "20000kg", "20000l"
"""The largest lawn, the heaviest load and the fullest tank that are believed."""

LONGEST_SIDE = "2000m"

_LEAST = 1e-4
"""In base units (mm, g, mL, m2, g/m2, mL/m2): nobody measures a lawn finer."""


def up_to(most: str, *dimensions: Dimension) -> Reader:
    """Reads one quantity above nothing and no larger than `most`, into its base unit."""
    limit = parse(most).value

    def read(text: str) -> float:
        value = parse_as(text, *dimensions).value
        if value <= 0:
            raise Refusal(text, "more than nothing is wanted here.")
        if value < _LEAST:
            raise Refusal(text, "far too little to be measured.")
        if value > limit:
            raise Refusal(text, f"above {most}, which can't be meant here.")
        return value

    return read


def money(text: str) -> float:
    """Reads money, with or without its sign."""
    value = parse_as(text, Dimension.MONEY, Dimension.NUMBER).value
    if not 0.01 <= value <= 100_000:
        raise Refusal(text, "a price is wanted, like 42 or $42.")
    return value


def share_of_nitrogen(text: str) -> float:
    """Reads `40%` or `40% of n` as a share, 0 to 1."""
    bare = re.sub(r"\s*of\s*n(itrogen)?\s*$", "", text.casefold())
    quantity = parse_as(bare, Dimension.PERCENT, Dimension.NUMBER)
    value = quantity.value
    if value > 100:
        raise Refusal(text, "a share can't be above 100 %.")
    if quantity.dimension is Dimension.NUMBER and 0 < value < 1:
        raise Refusal(text, f"is that {100 * value:g} % or {value:g} %? Write {100 * value:g}% or {value:g}%.")
    return value / 100


def whole(low: int, high: int) -> Reader:
    """Reads a whole number between two bounds."""

    def read(text: str) -> int:
        if not (text.isascii() and text.isdigit()) or len(text) > 9 or not low <= int(text) <= high:
            raise Refusal(text, f"a whole number from {low} to {high} is wanted.")
        return int(text)

    return read


_METRIC = ("mm", "cm", "m")
_TIMES = re.compile(r"\s*[x×]\s*")
_BETWEEN = re.compile(r"""\s*,\s*|(?<=[a-z"])\s+(?=[\d.])""")


def sides(count: int) -> Reader:
    """Reads so many lengths into mm, like `40ft,60ft` or `12m x 8m`: above nothing, all US or all metric."""

    def read(text: str) -> tuple[float, ...]:
        words = text.casefold().strip()
        parts = [part for part in (_TIMES if _TIMES.search(words) else _BETWEEN).split(words) if part]
        if len(parts) != count:
            raise Refusal(text, _WANTED[count])
        length = up_to(LONGEST_SIDE, Dimension.LENGTH)
        for part in parts:
            length(part)
        found = [parse_as(part, Dimension.LENGTH) for part in parts]
        for part, quantity in zip(parts, found, strict=True):
            if (quantity.unit.name in _METRIC) != (found[0].unit.name in _METRIC):
                raise Refusal(part, f"feet and metres are mixed here: {parts[0]} goes before it.")
        return tuple(quantity.value for quantity in found)

    return read


_WANTED = {1: "one length is wanted, like 12ft.", 2: "two lengths are wanted, like 40ft,60ft."}
