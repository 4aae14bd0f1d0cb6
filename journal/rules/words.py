"""The words of flags: dates, lengths and mixes as the owner's book writes them."""

from collections.abc import Mapping
from datetime import date

from journal.record.day import spoken
from journal.record.kinds.treatment import UNKNOWN
from journal.record.quantity import in_unit
from journal.record.unit import Dimension, unit_for
from journal.season.history import Past


def called(product: str) -> str:
    """`leaf-off`, or `an unknown product`."""
    return "an unknown product" if product == UNKNOWN else product


def on(day: date | int, past: Past) -> str:
    """`Mon 3 May`, as spoken on the past's day."""
    return spoken(day if isinstance(day, date) else date.fromordinal(day), past.date)


def length(mm: float, past: Past) -> str:
    """`3.25 in` or `82 mm`."""
    unit = unit_for(Dimension.LENGTH, past.lawn.units)
    text = f"{in_unit(mm, unit):.{2 if unit.name == 'in' else 0}f}"
    return f"{text.rstrip('0').rstrip('.') if '.' in text else text} {unit.name}"


def days(count: int) -> str:
    """`1 day`, `11 days`."""
    return f"{count} day" if count == 1 else f"{count} days"


def blend(mix: Mapping[str, float]) -> str:
    """`kentucky bluegrass 50 %, perennial ryegrass 50 %`, the largest first."""
    parts = sorted(mix.items(), key=lambda item: (-item[1], item[0]))
    return ", ".join(f"{name} {percent:.0f} %" for name, percent in parts) or "mix not entered"
