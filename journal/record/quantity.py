"""Text like `3in` or `0.6 in/h` to exact metric values, and back without loss."""

import re
from dataclasses import dataclass
from fractions import Fraction

from journal.record.refusal import Refusal, nearest
from journal.record.unit import UNITS, Dimension, Unit, unit_for

_SHAPE = re.compile(
    r"(\$?)([+-]?)((?:[0-9]+\s+)?[0-9]+/[0-9]+|[0-9]*\.[0-9]+|[1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\.[0-9]+)?|[0-9]+,[0-9]{1,2}(?![0-9])|[0-9]+\.?)\s*(.*)",
    re.DOTALL,
)
_MOST = 1e9
_LONGEST = 400
"""Characters of a quantity; `write` never needs as many for a number that can have been measured."""

SIGNED = frozenset({Dimension.TEMPERATURE})


@dataclass(frozen=True, slots=True)
class Quantity:
    """A value in the base unit of its dimension, and the unit it was written in."""

    value: float
    unit: Unit

    @property
    def dimension(self) -> Dimension:
        """What it measures."""
        return self.unit.dimension


def looks_like_quantity(text: str) -> bool:
    """True when the word begins as a number does: `3in`, `.5`, `$31`, `1/4in`."""
    return _SHAPE.match(text) is not None


def parse(text: str) -> Quantity:
    """Read any quantity. Raises Refusal naming the word when the number or the unit can't be used."""
    if len(text) > _LONGEST:
        raise Refusal(text[:40], "far too long for a number with a unit.")
    match = _SHAPE.fullmatch(text.strip())
    if match is None:
        raise Refusal(text, "not a number with a unit, like 3in or 12lb.")
    money, sign, digits, tail = match.groups()
    name = _known(tail.strip())
    if money:
        if tail.strip():
            raise Refusal(text, "money is written $31 or $4.50.")
        unit = UNITS["$"]
    elif not tail.strip():
        unit = Unit("", Dimension.NUMBER, Fraction(1))
    elif name:
        unit = UNITS[name]
    elif re.match(r",\d", tail):
        raise Refusal(text, "write a number without a comma, like 2400sqft or 2.5in.")
    else:
        raise Refusal(text, f"{tail.strip()} is not a unit known here.", nearest(tail.strip(), UNITS))
    try:
        number = _number(digits)
    except ZeroDivisionError:
        raise Refusal(text, "a number can't be divided by nothing.") from None
    if sign == "-":
        if unit.dimension not in SIGNED:
            raise Refusal(text, "an amount can't be below zero.")
        number = -number
    value = number * unit.factor + unit.offset
    if abs(value) > _MOST:
        raise Refusal(text, "far too large to be meant.")
    return Quantity(float(value), unit)


def _number(digits: str) -> Fraction:
    """`1 1/4`, `2,400` and `2,5`: a comma before three digits parts thousands, before fewer it is the decimal mark."""
    if "/" in digits:
        return sum((Fraction(part) for part in digits.split()), Fraction(0))
    digits = digits.replace(",", "." if re.search(r",\d{1,2}$", digits) else "")
    return Fraction(digits.rstrip("."))


def _known(tail: str) -> str:
    """The key of UNITS for a unit as typed; 'sq ft' and 'fl oz' are forgiven their blank."""
    name = re.sub(r"\s+", "", tail).casefold().replace("²", "2").replace("°", "")
    return name if name in UNITS else ""


def parse_as(text: str, *dimensions: Dimension) -> Quantity:
    """Read a quantity of one of these dimensions; a bare number only where NUMBER is among them."""
    quantity = parse(text)
    if quantity.dimension in dimensions:
        return quantity
    wanted = " or ".join(f"{_EXAMPLE[d]}" for d in dimensions)
    if quantity.dimension is Dimension.NUMBER:
        raise Refusal(text, f"a unit is missing: write it like {wanted}.")
    raise Refusal(text, f"the wrong kind of unit here: write it like {wanted}.")


_EXAMPLE: dict[Dimension, str] = {
    Dimension.LENGTH: "3in or 75mm", Dimension.MASS: "12lb or 5kg", Dimension.VOLUME: "5.5floz or 150ml",
    Dimension.AREA: "2400sqft or 220m2", Dimension.MASS_RATE: "4lb/k or 20g/m2",
    Dimension.VOLUME_RATE: "1.5floz/k or 0.5ml/m2", Dimension.RAIN_RATE: "0.6in/h or 15mm/h",
    Dimension.TEMPERATURE: "68F or 20C", Dimension.SPEED: "4mph or 2m/s", Dimension.MINUTES: "20min or 2h",
    Dimension.DAYS: "28d", Dimension.PERCENT: "40%", Dimension.PPM: "95ppm", Dimension.COUNT_RATE: "4/sqft",
    Dimension.TIMES: "2x", Dimension.MONEY: "$31", Dimension.BAGS: "1.5bag", Dimension.NUMBER: "6.1",
    Dimension.ACTIVE: "4lb/gal",
}  # fmt: skip


def in_unit(value: float, unit: Unit) -> float:
    """A base value expressed in `unit`, unrounded."""
    return float((Fraction(value) - unit.offset) / unit.factor)


def write(value: float, dimension: Dimension, system: str) -> str:
    """Text that `parse` reads back to exactly `value`: in the system's own unit if that is short, else the shortest."""
    own = unit_for(dimension, system)
    text = _exact(value, own)
    if text and len(text) <= _SHORT:
        return _spell(text, own)
    fitting = (u for u in UNITS.values() if u.dimension is dimension and u.name != "cup")  # a cup may mean a weight
    others = [(t, u) for u in fitting if (t := _exact(value, u))]
    best, unit = min([*others, *([(text, own)] if text else [])], key=lambda pair: len(pair[0]))
    return _spell(best, unit)


def write_as(value: float, unit: Unit) -> str:
    """Text in just that unit that `parse` reads back to exactly `value`, or '' when no double's digits mean it."""
    text = _exact(value, unit)
    return _spell(text, unit) if text else ""


_SHORT = 7


def _exact(value: float, unit: Unit) -> str:
    """The fewest digits that mean exactly this value in this unit, or '' when no double's worth of digits does."""
    number = float((Fraction(value) - unit.offset) / unit.factor)
    factor, offset = float(unit.factor), float(unit.offset)
    near = 1e-14 * max(abs(value), abs(offset))
    for digits in range(1, 18):
        rounded = float(f"{number:.{digits}g}")
        if abs(rounded * factor + offset - value) > near:
            continue  # not worth the exact arithmetic
        text = plain(number, digits)
        if float(Fraction(text) * unit.factor + unit.offset) == value:
            return text
    return ""


def plain(number: float, digits: int) -> str:
    """`number` to so many significant digits, never in powers of ten."""
    text = f"{number:.{digits}g}"
    if "e" in text:
        text = f"{float(text):.{max(0, digits - 1 - _exponent(text))}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _exponent(text: str) -> int:
    return int(text.partition("e")[2])


def _spell(text: str, unit: Unit) -> str:
    return f"${text}" if unit.dimension is Dimension.MONEY else f"{text}{unit.name}"


def show(value: float, dimension: Dimension, system: str, *, places: int = 1) -> str:
    """Rounded for the eye, with a blank before the unit: `3.0 in`, `12 lb`, `68 F`."""
    unit = unit_for(dimension, system)
    number = f"{in_unit(value, unit):,.{places}f}"
    return f"{number} {_PRETTY.get(unit.name, unit.name)}"


_PRETTY = {"sqft": "sq ft", "floz": "fl oz", "floz/k": "fl oz/k"}
