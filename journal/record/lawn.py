"""The whole lawn as it is known on a day: place, grass, zones, shed and the owner's own thresholds."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from types import MappingProxyType

from journal.record.day import MonthDay
from journal.record.month_normal import MonthNormal, month_normals
from journal.record.product import Product
from journal.record.quantity import parse_as
from journal.record.refusal import Refusal
from journal.record.term import (
    day,
    grass_names,
    measured,
    month_day,
    month_days,
    number,
    one_of,
    positive,
    signed,
    term,
    words,
    yes_no,
)
from journal.record.unit import Dimension
from journal.record.zone import Zone


def _no_numbers() -> Mapping[tuple[str, str], float]:
    return MappingProxyType({})


def _nothing_said() -> Mapping[tuple[str, str, str], str]:
    return MappingProxyType({})


def _height(text: str) -> float:
    height = parse_as(text, Dimension.LENGTH).value
    if not 5 <= height <= 300:
        raise Refusal(text, "a height of cut is wanted, like 3in or 75mm.")
    return height


def _closed(text: str) -> tuple[MonthDay, MonthDay]:
    """First and last closed day; the first may be the later in the year."""
    return month_days(text.replace(";", " "))


def _slow_percent(text: str) -> float:
    """`20%`, or as products have it `20% of n`."""
    return float(number(0, 100)(re.sub(r"\s+of\s+n$", "", text.strip(), flags=re.IGNORECASE)))


def _sign_hours(text: str) -> float:
    """`48h` or `2d`."""
    quantity = parse_as(text, Dimension.MINUTES, Dimension.DAYS)
    hours = quantity.value / 60 if quantity.dimension is Dimension.MINUTES else quantity.value * 24
    if not 0 < hours <= MOST_SIGN_HOURS:
        raise Refusal(text, f"a time of up to {MOST_SIGN_HOURS} h is wanted, like 48h.")
    return hours


def _months(text: str) -> int:
    count = number(1, 240)(text)
    if count != int(count):
        raise Refusal(text, "whole months are wanted, like 36.")
    return int(count)


MOST_SIGN_HOURS = 240
"""No notice is asked to stand longer."""

WHOLE = "lawn"
"""The zone of a book in which none has been named."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Lawn:
    """Facts in force on one day. Dates of frost and growth are None until the owner gives them.

    `local_...` is what the owner knows of the rules of the place, with a set named in `local_rules` or without:
    closed days, most nitrogen at once (all, and soluble) and in a year, the least slow share of the nitrogen, how far
    from water, for how long a soil test counts, whether overseeding is a reason for phosphorus, and for how many hours
    a sign stands after a product against weeds, insects or disease.
    All that was put down for weeds or insects is written down from `treatments_since` on.
    """

    name: str = term("name", words, "North Lane", "")
    units: str = term("units", one_of("us", "metric"), "us", "us")
    latitude: float | None = term("latitude", signed(-90, 90), "42.3")
    last_frost: MonthDay | None = term("last_frost", month_day, "05-06")
    first_frost: MonthDay | None = term("first_frost", month_day, "10-05")
    growth: tuple[MonthDay, MonthDay] | None = term("growth", month_days, "04-10 11-10")
    grass: tuple[str, ...] = term("grass", grass_names, "kentucky bluegrass, perennial ryegrass", ())
    renovated: date | None = term("renovated", day, "2025-09-06")
    kept_since: date | None = term("kept_since", day, "2026-04-01")
    treatments_since: date | None = term("treatments_since", day, "2026-01-01")
    feeding: str = term("feeding", one_of("interval", "months"), "interval", "interval")
    local_rules: str = term("local_rules", words, "none", "none")
    local_closed: tuple[MonthDay, MonthDay] | None = term("local_closed", _closed, "12-01 03-01")
    local_most_n_g_per_m2: float | None = term("local_most_n", positive(Dimension.MASS_RATE), "0.9lb/k")
    local_most_soluble_g_per_m2: float | None = term("local_most_soluble", positive(Dimension.MASS_RATE), "0.7lb/k")
    local_year_n_g_per_m2: float | None = term("local_year_n", positive(Dimension.MASS_RATE), "3.2lb/k")
    local_slow_percent: float | None = term("local_slow", _slow_percent, "20%")
    local_buffer_mm: float | None = term("local_buffer", measured(Dimension.LENGTH), "25ft")
    local_test_months: int | None = term("local_test_months", _months, "36")
    local_seeding: bool | None = term("local_seeding", yes_no, "no")
    local_sign_hours: float | None = term("local_sign", _sign_hours, "48h")
    late_fall: bool = term("late_fall", yes_no, "no", False)
    height_mm: float = term("height", _height, "3in", 76.2)
    normals: tuple[MonthNormal, ...] = term("normals", month_normals, "jan 30F 15F 3.1in, feb 33F 17F 2.8in", ())
    zones: tuple[Zone, ...] = ()
    products: tuple[Product, ...] = ()
    numbers: Mapping[tuple[str, str], float] = field(default_factory=_no_numbers)
    off: frozenset[str] = frozenset()
    said: Mapping[tuple[str, str, str], str] = field(default_factory=_nothing_said, compare=False)
    problems: tuple[str, ...] = ()

    @property
    def zone_names(self) -> tuple[str, ...]:
        """In the order in which they were set up."""
        return tuple(zone.name for zone in self.zones)

    def zone(self, name: str) -> Zone | None:
        """The zone of that name, or None."""
        return next((zone for zone in self.zones if zone.name == name), None)

    def product(self, name: str) -> Product | None:
        """The product of that name, or None."""
        return next((product for product in self.products if product.name == name), None)

    def area_m2(self, names: tuple[str, ...]) -> float | None:
        """Area of these zones together; None when any of them is not known."""
        areas = [zone.area_m2 for zone in self.zones if zone.name in names]
        return None if None in areas or not areas else sum(a for a in areas if a is not None)

    def grass_of(self, zone: str) -> tuple[str, ...]:
        """The zone's own grass, else the lawn's."""
        found = self.zone(zone)
        return found.grass if found and found.grass else self.grass
