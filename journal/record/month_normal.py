"""What a month is like in most years, as the owner has accepted it: `jan 30F 15F 3.1in, feb 33F 17F 2.8in`."""

from collections.abc import Iterable
from dataclasses import dataclass

from journal.record.day import MONTHS, name_month
from journal.record.quantity import in_unit, parse_as
from journal.record.refusal import Refusal, nearest
from journal.record.unit import Dimension, unit_for


@dataclass(frozen=True, slots=True)
class MonthNormal:
    """Mean daily high and low in C, the month's rain in mm; the temperatures come in pairs, None where not known."""

    month: int
    high_c: float | None = None
    low_c: float | None = None
    rain_mm: float | None = None


def month_normals(text: str) -> tuple[MonthNormal, ...]:
    """Reads months with their high, low and rain, parted by commas; in the order of the year. Raises Refusal."""
    found: dict[int, MonthNormal] = {}
    for part in text.replace(";", ",").split(","):
        if not part.strip():
            continue
        normal = _month(part.split())
        if normal.month in found:
            raise Refusal(part.strip(), "that month has been said already.")
        found[normal.month] = normal
    if not found:
        raise Refusal(text, "months are wanted, like jan 30F 15F 3.1in, feb 33F 17F 2.8in.")
    return tuple(found[month] for month in sorted(found))


def _month(words: list[str]) -> MonthNormal:
    month = name_month(words[0].casefold())
    if month is None:
        raise Refusal(words[0], "a month is wanted here, like jan.", nearest(words[0], MONTHS))
    heats: list[float] = []
    rains: list[float] = []
    for word in words[1:]:
        quantity = parse_as(word, Dimension.TEMPERATURE, Dimension.LENGTH)
        (rains if quantity.dimension is Dimension.LENGTH else heats).append(quantity.value)
    if len(heats) not in (0, 2) or len(rains) > 1 or not heats + rains:
        raise Refusal(" ".join(words), "a month takes its high, its low and its rain, like jan 30F 15F 3.1in.")
    high, low = (max(heats), min(heats)) if heats else (None, None)
    return MonthNormal(month, high, low, rains[0] if rains else None)


def written(normals: Iterable[MonthNormal], units: str) -> str:
    """The words that `month_normals` reads, rounded: F to 1, C to 0.1, inches to 0.1, mm to 1."""
    return ", ".join(" ".join([MONTHS[one.month - 1], *_amounts(one, units)]) for one in normals)


def _amounts(normal: MonthNormal, units: str) -> list[str]:
    metric = units == "metric"
    amounts = []
    for value in (normal.high_c, normal.low_c):
        if value is not None:
            number = in_unit(value, unit_for(Dimension.TEMPERATURE, units))
            amounts.append(f"{round(number, 1) + 0.0:.1f}C" if metric else f"{round(number) + 0}F")
    if normal.rain_mm is not None:
        number = in_unit(normal.rain_mm, unit_for(Dimension.LENGTH, units))
        amounts.append(f"{number:.0f}mm" if metric else f"{number:.1f}in")
    return amounts
