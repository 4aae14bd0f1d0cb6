"""Reckonings for people: the figures in US and metric units, the notes beneath, and what may be asked."""

import math
import re
import textwrap
from collections.abc import Iterable
from itertools import groupby

from journal.reckon.answer import PRICES, Answer, Figure
from journal.reckon.declare import Reckoning
from journal.record.quantity import in_unit
from journal.record.unit import METRIC, UNITS, US, Dimension, Unit
from journal.reports.text import WIDTH

_DIGITS = 3
"""Significant figures; scales, tapes and jugs give no more."""

_ALSO = {
    "gal/acre": ("l/ha",), "acre": ("ha", "m2"), "l/ha": ("gal/acre",), "m": ("ft",),
    "$/lb": ("$/kg",),
}  # fmt: skip
"""The other system's units for one, largest first, where the dimension's own would not do."""
_METRIC_SIZES = {Dimension.MASS: ("kg", "g"), Dimension.VOLUME: ("l", "ml")}
_US_SIZES = {Dimension.VOLUME: ("gal", "floz")}
_METRIC_NAMES = frozenset({*METRIC.values(), "g", "l", "m", "cm", "ha", "kg/ha", "l/ha", "kg/100m2", "km/h"})


def typed_units(words: Iterable[str]) -> str:
    """The system of the units in typed options: `metric` where there are such and no US ones, else `us`."""
    names = {name for word in words for name in _TYPED_UNIT.findall(word.casefold())}
    metric = names & _METRIC_NAMES
    us = {name for name in names - metric if name in UNITS and UNITS[name].dimension in METRIC}
    return "metric" if metric and not us else "us"


_TYPED_UNIT = re.compile(r"(?:^|(?<=\d)) ?([a-z][a-z0-9/]*)(?=$|[,;x ])")
"""A unit behind a number, or alone as a word of its own (`--unit mm`)."""


def answer_text(answer: Answer, units: str = "us") -> str:
    """Figures in columns, at most 80 cells wide, the units of that system (`us`, `metric`) first, then the notes.

    What can't be given is left out.
    """
    rows = []
    for says, alike in groupby((f for f in answer.figures if f.value is not None), key=lambda f: f.says):
        first = next(alike)
        pair = _pair(first, units)
        rows.append((says, *_parts(pair[0]), f"({' '.join(_parts(pair[1]))})" if len(pair) > 1 else ""))
    widths = [max((len(row[i]) for row in rows), default=0) for i in range(3)]
    lines = [
        f"{says:<{widths[0]}}  {number:>{widths[1]}} {unit:<{widths[2]}}  {other}".rstrip()
        for says, number, unit, other in rows
    ]
    notes = [line for note in answer.notes for line in textwrap.wrap(note, WIDTH - 2, subsequent_indent="  ")]
    return "\n".join([*lines, *(["", *notes] if notes else [])])


def _pair(figure: Figure, units: str) -> list[tuple[float, Unit | None]]:
    """The value in its own unit and, where there is one, in the other system's; that of `units` first."""
    value, own = figure.value, figure.unit
    if value is None or own is None:
        return [(value or 0.0, None)]
    other = _other(value, own)
    found: list[tuple[float, Unit | None]] = [(value, own), *([(value, other)] if other else [])]
    return found if (own.name in _METRIC_NAMES) is (units == "metric") else found[::-1]


def _other(value: float, own: Unit) -> Unit | None:
    metric = own.name in _METRIC_NAMES
    table, sizes = (US, _US_SIZES) if metric else (METRIC, _METRIC_SIZES)
    names = _ALSO.get(own.name) or sizes.get(own.dimension) or tuple(filter(None, [table.get(own.dimension)]))
    units = [UNITS.get(name) or PRICES[name] for name in names]
    fitting = (unit for unit in units if abs(in_unit(value, unit)) >= 1)
    return next(fitting, units[-1] if units else None)


def _parts(one: tuple[float, Unit | None]) -> tuple[str, str]:
    """Number and unit as they are shown."""
    value, unit = one
    if unit is None:
        return _measured(value), ""
    number = in_unit(value, unit)
    if unit.dimension is Dimension.MONEY:
        return f"${number:,.2f}", unit.name.removeprefix("$").replace("/", "a ")
    return _measured(number), _spelled(unit)


def _spelled(unit: Unit) -> str:
    return unit.name.replace("sqft", "sq ft").replace("floz", "fl oz")


def _measured(number: float) -> str:
    """Three significant figures, whole from 100 up, no idle noughts: 13,333, 30.8, 3.75, 0.412."""
    if not number:
        return "0"
    places = max(0, _DIGITS - 1 - math.floor(math.log10(abs(number))))
    text = f"{number:,.{places}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def reckonings_text(found: Iterable[Reckoning]) -> str:
    """Every reckoning with what it does and a whole example."""
    blocks = []
    for one in found:
        blocks += [*textwrap.wrap(f"{one.name}: {one.says}", WIDTH), *_typed(one.example)]
    return "\n".join([*blocks, "", "swardbook reckon NAME --help shows what may be asked."])


def options_text(one: Reckoning) -> str:
    """The options of one reckoning: how each is typed, what it means, which have to be given."""
    width = max(len(option.example) for option in one.options.values())
    rows = []
    for option in one.options.values():
        must = "must be given" if option.needed and not option.gathered else ""
        again = "may come again" if option.gathered and not option.bare else ""
        words = "; ".join(part for part in (one.explains.get(option.name, ""), must, again) if part)
        row = f"  {option.example:<{width}}  {words}".rstrip()
        rows += textwrap.wrap(row, WIDTH, subsequent_indent=" " * (width + 4))
    return "\n".join([*textwrap.wrap(f"{one.name}: {one.says}.", WIDTH), "", *rows, "", *_typed(one.example)])


def _typed(example: str) -> list[str]:
    """As it is typed, carried on behind a backslash where one row is too short: both can be pasted into a shell."""
    rows = [""]
    for part in re.split(" (?=--)", f"  swardbook reckon {example}"):
        if rows[-1] and len(f"{rows[-1]} {part} \\") > WIDTH:
            rows.append(f"    {part}")
        else:
            rows[-1] = f"{rows[-1]} {part}" if rows[-1] else part
    return [*(f"{row} \\" for row in rows[:-1]), rows[-1]]
