"""Amounts of a product in the units of the book: rounded as one measures them out, spelled for the page or the line."""

from collections.abc import Callable, Sequence

from journal.plan.measure import mass, rounded_mass_by
from journal.reckon.put_down import PutDown
from journal.record.lawn import Lawn
from journal.record.product import Range
from journal.record.quantity import in_unit, plain, write
from journal.record.unit import Dimension, unit_for

NOTHING = "·"
"""Where there is no number."""

_VOLUME_STEPS = {"us": ((10, 0.1), (50, 0.5)), "metric": ((10, 0.5), (200, 1.0), (1000, 5.0))}
_LAST_VOLUME_STEP = {"us": 1.0, "metric": 10.0}
_SPOKEN = {"floz": "fl oz", "ml": "mL", "floz/k": "fl oz/k", "ml/m2": "mL/m2"}


def measured_out(dose: PutDown, lawn: Lawn, how: Callable[[float], int], *, liquid: bool) -> float:
    """What goes on all the zones of a dose, as one can weigh or pour it zone by zone; in the unit of the book."""
    amounts = [portion.amount for portion in dose.portions if portion.amount is not None]
    return sum(_measured_out(amount, lawn, how, liquid=liquid) for amount in amounts)


def _measured_out(amount: float, lawn: Lawn, how: Callable[[float], int], *, liquid: bool) -> float:
    if not liquid:
        return rounded_mass_by(amount, lawn, how)
    exact = in_unit(amount, unit_for(Dimension.VOLUME, lawn.units))
    step = next((step for below, step in _VOLUME_STEPS[lawn.units] if exact < below), _LAST_VOLUME_STEP[lawn.units])
    return max(1, how(exact / step)) * step


def poured(amount: float, lawn: Lawn, *, liquid: bool, gap: str = " ") -> str:
    """An amount already in the unit of the book: `6.3 lb`, `11.1 fl oz`; without a gap as the line wants it."""
    if not liquid:
        return mass(amount, lawn, gap)
    unit = unit_for(Dimension.VOLUME, lawn.units).name
    return f"{plain(amount, 6)}{gap}{_SPOKEN[unit] if gap else unit}"


def aligned(amounts: Sequence[float], lawn: Lawn, *, liquid: bool) -> list[str]:
    """Amounts already in the unit of the book, with the decimals under each other: `17.0 lb`, `6.3 lb`."""
    unit = unit_for(Dimension.VOLUME if liquid else Dimension.MASS, lawn.units).name
    places = max((len(plain(amount, 6).partition(".")[2]) for amount in amounts), default=0)
    return [f"{amount:,.{places}f} {_SPOKEN.get(unit, unit)}" for amount in amounts]


def kept(amount: float | None, lawn: Lawn, *, liquid: bool) -> str:
    """Grams or millilitres on the shelf: `10.0 lb`, `23.5 fl oz`, `4.54 kg`, `695 mL`."""
    if amount is None:
        return NOTHING
    unit = unit_for(Dimension.VOLUME if liquid else Dimension.MASS, lawn.units)
    number = in_unit(amount, unit)
    places = {"kg": 2, "ml": 0}.get(unit.name, 1)
    return f"{number:,.{places}f} {_SPOKEN.get(unit.name, unit.name)}"


def rate_words(rate: float, dimension: Dimension, lawn: Lawn) -> str:
    """`2.5 lb/k`, `17 g/m2`, `1.5 fl oz/k`: to three digits."""
    unit = unit_for(dimension, lawn.units)
    return f"{plain(in_unit(rate, unit), 3)} {_SPOKEN.get(unit.name, unit.name)}"


def range_words(rate: Range | None, lawn: Lawn) -> str:
    """`2.5-3.75 lb/k`, or the one rate that a label gives."""
    if rate is None:
        return NOTHING
    low, high = (rate_words(value, rate.dimension, lawn) for value in (rate.low, rate.high))
    return low if low == high else f"{low.partition(' ')[0]}-{high}"


def line_rate(rate: float, dimension: Dimension, lawn: Lawn) -> str:
    """A rate as the line wants it, exact where the label gave it so."""
    exact = write(rate, dimension, lawn.units)
    if len(exact) <= _SHORT:
        return exact
    unit = unit_for(dimension, lawn.units)
    return f"{plain(in_unit(rate, unit), 3)}{unit.name}"


_SHORT = 12
"""Letters of a rate that somebody wrote on a label."""


def area_words(area_m2: float | None, lawn: Lawn) -> str:
    """`2,510`, in the unit that the column names."""
    return NOTHING if area_m2 is None else f"{in_unit(area_m2, unit_for(Dimension.AREA, lawn.units)):,.0f}"


def area_unit(lawn: Lawn) -> str:
    """`sq ft` or `m2`."""
    return "m2" if lawn.units == "metric" else "sq ft"
