"""The ledger in words, for a terminal of 80 columns."""

import textwrap
from collections.abc import Callable, Iterable, Iterator
from datetime import date
from typing import TypeVar

from journal.facts.local_rules import CHECK
from journal.line.words import neat
from journal.reckon.ledger import Ledger, ZoneLedger
from journal.reckon.ledger_year import Sums
from journal.record.entry import Entry
from journal.record.unit import Dimension
from journal.reports.ledger_words import amount, check_says, limit_says, local_says, short_day
from journal.reports.text import WIDTH

T = TypeVar("T")

_NAMES = 18
"""Columns for the names of the rows."""
_CELL = 13
_SINGLY = 3
"""So many alike that could not be counted are told one by one; more are told together."""


def ledger_text(found: Ledger, units: str) -> str:
    """The table, the limits, each feeding, what is not in the sums, the checks, from sowing to sowing, and money."""
    per = "square metre" if units == "metric" else "1,000 sq ft (k)"
    head = f"{found.year}, as of {short_day(found.as_of, 0)}. Amounts are per {per} of the whole zone."
    parts = [
        [head],
        *_tables(found.zones, units),
        _section("Limits", _limits(found.zones, units)),
        _section("Fed", _fed(found, units)),
        _section("Not in these sums", _unknown(found)),
        _section("Against the labels", _checks(found, units)),
        _section("More used than bought", _short(found, units)),
        _section("From sowing to sowing", _seasons(found, units)),
        _section("Money", _money(found)),
    ]
    return "\n\n".join("\n".join(part) for part in parts if part)


def _section(title: str, rows: Iterable[str]) -> list[str]:
    wrapped = [
        line for row in rows for line in textwrap.wrap(row, WIDTH, initial_indent="  ", subsequent_indent="    ")
    ]
    return [title, *wrapped] if wrapped else []


def _tables(zones: tuple[ZoneLedger, ...], units: str) -> Iterator[list[str]]:
    """As many zones side by side as fit, numbers to the right."""
    width = max([_CELL, *(len(zone.zone) for zone in zones)])
    fit = max(1, (WIDTH - _NAMES) // (width + 1))
    for at in range(0, len(zones), fit):
        side = zones[at : at + fit]
        rows = [("", [zone.zone for zone in side])]
        rows += [(name, [cell(zone) for zone in side]) for name, cell in _rows(units)]
        yield [f"{name:<{_NAMES}}" + "".join(f" {cell:>{width}}" for cell in cells) for name, cells in rows]


def _rows(units: str) -> tuple[tuple[str, Callable[[ZoneLedger], str]], ...]:
    def weight(value: float) -> str:
        return amount(value, Dimension.MASS_RATE, units)

    def depth(value: float) -> str:
        return amount(value, Dimension.LENGTH, units)

    return (
        ("area", lambda z: "not known" if z.area_m2 is None else amount(z.area_m2, Dimension.AREA, units)),
        ("nitrogen", lambda z: weight(z.sums.n)),
        ("  of it soluble", lambda z: weight(z.sums.soluble_n)),
        ("  limit", lambda z: weight(z.limit.n_g_per_m2)),
        ("  left", lambda z: _left(z, weight)),
        ("phosphate, P2O5", lambda z: weight(z.sums.p2o5)),
        ("potash, K2O", lambda z: weight(z.sums.k2o)),
        ("seed", lambda z: weight(z.sums.seed)),
        ("watered", lambda z: depth(z.sums.water_mm)),
        ("rain", lambda z: depth(z.sums.rain_mm) if z.sums.rain_on_file else "none on file"),
        ("cost", lambda z: _dollars(z.sums.cost)),
    )


def _left(zone: ZoneLedger, weight: Callable[[float], str]) -> str:
    over = zone.sums.n - zone.limit.n_g_per_m2
    if over > 0 and weight(over) != weight(0):
        return f"over {weight(over)}"
    return f"<= {weight(zone.left_g_per_m2)}" if zone.at_most else weight(zone.left_g_per_m2)


def _limits(zones: tuple[ZoneLedger, ...], units: str) -> Iterator[str]:
    said: dict[str, list[str]] = {}
    for zone in zones:
        said.setdefault(f"{limit_says(zone.limit, units)} ({zone.limit.basis.words()}).", []).append(zone.zone)
        if zone.local is not None:
            said.setdefault(f"{local_says(zone.local, units)} {CHECK}", [])
    for words, names in said.items():
        yield f"{', '.join(names)}: {words}" if names else words
    unmeasured = [zone.zone for zone in zones if zone.at_most]
    if unmeasured:
        yield f"{', '.join(unmeasured)}: less is left than this, for not every feeding was measured (<=)."


def _fed(found: Ledger, units: str) -> Iterator[str]:
    rows = [(row.entry, (row.product, row.n_g_per_m2), zone.zone) for zone in found.zones for row in zone.nitrogen]
    for entry, (product, n), zones in _by_entry(rows):
        much = "nitrogen not known" if n is None else f"{amount(n, Dimension.MASS_RATE, units)} of nitrogen"
        yield f"{short_day(entry.date, found.year):>6}  {product}, {zones}: {much}"


def _unknown(found: Ledger) -> Iterator[str]:
    rows = [(one.entry, (one.what, one.why), zone.zone) for zone in found.zones for one in zone.uncounted]
    alike: dict[tuple[str, str, str], list[date]] = {}
    for entry, (what, why), zones in _by_entry(rows):
        alike.setdefault((what, why, zones), []).append(entry.date)
    for (what, why, zones), days in alike.items():
        if len(days) > _SINGLY:
            first, last = short_day(days[0], found.year), short_day(days[-1], found.year)
            yield f"{first} to {last}  {what}, {zones}, {len(days)} times: {why}"
            continue
        for day in days:
            yield f"{short_day(day, found.year):>6}  {what}, {zones}: {why}"


def _by_entry(rows: Iterable[tuple[Entry, T, str]]) -> Iterator[tuple[Entry, T, str]]:
    """What is the same in several zones once, with their names, oldest first."""
    together: dict[tuple[str, T], tuple[Entry, list[str]]] = {}
    for entry, said, zone in rows:
        together.setdefault((entry.id, said), (entry, []))[1].append(zone)
    ordered = sorted(together.items(), key=lambda one: (one[1][0].day, one[1][0].id))
    for (_, said), (entry, zones) in ordered:
        yield entry, said, ", ".join(zones)


def _checks(found: Ledger, units: str) -> Iterator[str]:
    for check in found.checks:
        day = short_day(check.entries[0].date, found.year)
        yield f"{day:>6}  {check.product}, {', '.join(check.zones)}: {check_says(check, units)}"


def _short(found: Ledger, units: str) -> Iterator[str]:
    for shelf in found.short:
        much = neat(shelf.short, Dimension.VOLUME if shelf.liquid else Dimension.MASS, units)
        yield f"{shelf.product}: {much} went down beyond all that had been bought by then. Is a purchase missing?"


def _seasons(found: Ledger, units: str) -> Iterator[str]:
    rows: dict[str, list[str]] = {}
    for zone in found.zones:
        for season in zone.seasons:
            since = short_day(season.since, 0)
            to = f"to {short_day(season.to, 0)}" if season.to else "and still running"
            rows.setdefault(f"since {since} {to}: {_told(season.sums, units)}", []).append(zone.zone)
    for words, names in rows.items():
        yield f"{', '.join(names)}: {words}"


def _told(sums: Sums, units: str) -> str:
    def weight(value: float) -> str:
        return neat(value, Dimension.MASS_RATE, units)

    rain = f"rain {amount(sums.rain_mm, Dimension.LENGTH, units)}" if sums.rain_on_file else "no rain on file"
    water = f"watered {amount(sums.water_mm, Dimension.LENGTH, units)}"
    return (
        f"nitrogen {weight(sums.n)} (soluble {weight(sums.soluble_n)}), phosphate {weight(sums.p2o5)}, "
        f"potash {weight(sums.k2o)}, seed {weight(sums.seed)}, {water}, {rain}, cost {_dollars(sums.cost)}."
    )


def _money(found: Ledger) -> Iterator[str]:
    yield f"The lawn cost {_dollars(found.cost)}: work, and products as they were used."
    yield f"Laid out in the year: {_dollars(found.spent)}, purchases among it."


def _dollars(value: float) -> str:
    return f"${value:,.2f}"
