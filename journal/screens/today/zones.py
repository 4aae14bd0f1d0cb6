"""The zone table: a row a zone, numbers to the right, a bar only where there is a limit."""

from collections.abc import Iterable
from datetime import date

from journal.record.day import MONTHS
from journal.record.quantity import in_unit
from journal.record.unit import Dimension, unit_for
from journal.rules.flag import Flag, Level
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import clipped, left, middle, right
from journal.standing import Standing, ZoneFacts

NO_NUMBER = "·"
_NEW = 120
"""Days after a sowing in which its age is shown even where there is little room."""
_WATER_FULL_MM = 38.1
"""The water bar is full at an inch and a half in seven days."""


def draw_zones(paper: Paper, standing: Standing) -> None:
    """Headings, then the zones in the order in which they were set up."""
    units = standing.lawn.units
    bar = 12 if paper.width < 110 else 24
    facts = [zone for zone in standing.zones if not paper.view.zone or zone.zone == paper.view.zone]
    if not facts:
        return
    name = min(16, max(8, *(len(zone.zone) + 1 for zone in facts)))
    cap = _one_cap(facts, units)
    unit = "lb/k" if units == "us" else "g/m2"
    area = "sq ft" if units == "us" else "m2"
    water = f"water 7 d, {_unit(Dimension.LENGTH, units)}"
    words = f"{left('', name - 4)}{right(area, 7)} {right('cut', 5)} {right('days', 5)}    "
    words += f"{left(f'N {unit}{cap}', 5 + bar + 1)}  {left(water, 15 if bar == 12 else 22)} stage"
    cuts = _cuts(facts, units)
    paper.add()
    paper.add((Span(" "), Span("ZONE", Ink.TITLE), Span(words, Ink.DIM)))
    for zone in facts:
        paper.add(_row(zone, standing.flags, units, name, bar, paper.width, standing.as_of, cuts[zone.zone]))


def _row(
    zone: ZoneFacts, flags: tuple[Flag, ...], units: str, name: int, bar: int, width: int, as_of: date, cut: str
) -> Row:
    late = _worst(flags, zone.zone, ("mow-gap",))
    fed = _worst(flags, zone.zone, ("feed-year", "feed-overdue"))
    dry = _worst(flags, zone.zone, ("water-deficit", "water-week", "seedbed-dry"))
    nitrogen = in_unit(zone.n_g_per_m2, unit_for(Dimension.MASS_RATE, units))
    share = zone.n_g_per_m2 / zone.n_cap_g_per_m2 if zone.n_cap_g_per_m2 else 0.0
    row = [
        Span(" "),
        Span(left(middle(zone.zone, name - 1), name), Ink.STRONG),
        Span(right(_number(zone.area_m2, Dimension.AREA, units, 0), 7)),
        Span(right(cut, 6)),
        Span(right(NO_NUMBER if zone.mown_days_ago is None else f"{zone.mown_days_ago}", 6)),
        Span(" ! " if late else "   ", Ink.LATE),
        Span(right(f"{nitrogen:.1f}", 4)),
        Span(" "),
        *_bar(share, bar, Ink.DONE if share <= 1 else Ink.LOSS),
        Span(" !" if fed else "  ", Ink.LATE),
        Span(right(_number(zone.water_mm_7d, Dimension.LENGTH, units, 1 if units == "us" else 0), 5)),
    ]
    if bar > 12:
        row += [Span(" "), *_bar((zone.water_mm_7d or 0.0) / _WATER_FULL_MM, 10, Ink.WATER)]
    row.append(Span(" low  " if dry else "      ", Ink.LATE))
    stage = zone.stage
    if zone.sown_on is not None:
        age = (as_of - zone.sown_on).days
        if bar > 12:
            stage += f", sown {_day(zone.sown_on, as_of)}"
        elif age < _NEW:
            stage += f", day {age}"
    used = sum(len(span.text) for span in row)
    row.append(Span(clipped(stage, max(0, width - used - 1)), Ink.DIM))
    return tuple(row)


def _day(day: date, as_of: date) -> str:
    """`6 Sep`, with the year where it is another."""
    words = f"{day.day} {MONTHS[day.month - 1].title()}"
    return words if day.year == as_of.year else f"{words} {day.year}"


def _bar(share: float, cells: int, ink: Ink) -> Row:
    """Filled to the share; the rest is dotted."""
    full = max(0, min(cells, round(share * cells)))
    full = max(full, 1) if share > 0 else full
    return Span("█" * full, ink), Span("·" * (cells - full), Ink.DIM)


def _worst(flags: Iterable[Flag], zone: str, rules: tuple[str, ...]) -> bool:
    """Whether one of these rules stands against the zone."""
    return any(f.rule in rules and zone in f.zones and f.level is not Level.NOTE for f in flags)


def _number(value: float | None, dimension: Dimension, units: str, places: int) -> str:
    return NO_NUMBER if value is None else f"{in_unit(value, unit_for(dimension, units)):,.{places}f}"


def _cuts(facts: list[ZoneFacts], units: str) -> dict[str, str]:
    """Zone -> its height of cut as it was meant, the points under each other: `3.0 `, `2.25`; whole millimetres."""
    if units != "us":
        return {zone.zone: _number(zone.cut_mm, Dimension.LENGTH, units, 0) for zone in facts}
    fine = {zone.zone: _number(zone.cut_mm, Dimension.LENGTH, units, 2) for zone in facts}
    if all(words.endswith("0") or words == NO_NUMBER for words in fine.values()):
        return {zone: words.removesuffix("0") for zone, words in fine.items()}
    return {zone: f"{words[:-1]} " if words.endswith("0") else words for zone, words in fine.items()}


def _unit(dimension: Dimension, units: str) -> str:
    return unit_for(dimension, units).name


def _one_cap(facts: list[ZoneFacts], units: str) -> str:
    caps = {zone.n_cap_g_per_m2 for zone in facts}
    if len(caps) != 1:
        return " of the year's"
    return f" of {in_unit(caps.pop(), unit_for(Dimension.MASS_RATE, units)):.1f}"
