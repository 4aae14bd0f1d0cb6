"""The first row of every page: the lawn, the day judged, and how many flags stand."""

from journal.record.day import spoken
from journal.record.quantity import show
from journal.record.unit import Dimension
from journal.rules.flag import Level
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import clipped, cut, wide
from journal.screens.view import View
from journal.standing import Standing


def title_row(standing: Standing, view: View, width: int, about: str = "") -> Row:
    """Left the lawn (or `about`), in the middle the day, at the right the counts; away from today it says so."""
    ink = Ink.AWAY if view.away else Ink.BAR
    locked = "READ-ONLY · " if view.read_only else ""
    start = f" {locked}{about or lawn_words(standing, view)}"
    day, end = day_words(view), f"{counts_words(standing)} "
    room = width - len(end) - len(day)
    apart = 2 if room >= 8 else 1
    if room < wide((Span(start),)) + 2 * apart:
        start = clipped(start, max(0, room - 2 * apart))
    gap = max(apart, (width - len(day)) // 2 - wide((Span(start),)))
    gap = min(gap, max(apart, width - len(end) - apart - len(day) - wide((Span(start),))))
    line = start + " " * gap + day
    line += " " * max(1, width - wide((Span(line),)) - len(end)) + end
    return cut((Span(line, ink),), width)


def lawn_words(standing: Standing, view: View) -> str:
    """`North Lane · 6,700 sq ft`, or the zone that is looked at."""
    lawn = standing.lawn
    name = lawn.name or "The lawn"
    names = (view.zone,) if view.zone else lawn.zone_names
    area = lawn.area_m2(names)
    size = f" · {show(area, Dimension.AREA, lawn.units, places=0)}" if area else ""
    return f"{name} · {view.zone}{size}" if view.zone else f"{name}{size}"


def day_words(view: View) -> str:
    """The day judged with its year, and how far away it is."""
    day = spoken(view.as_of, view.as_of)
    words = f"{day} {view.as_of.year}"
    if not view.away:
        return words
    days = abs(view.away)
    way = "back" if view.away < 0 else "ahead"
    return f"as of {words}, {days} d {way}"


def counts_words(standing: Standing) -> str:
    """`1 late 0 loss 2 note`; harm is named first and only when there is some."""
    counts = standing.counts
    levels = (Level.LATE, Level.LOSS, Level.NOTE)
    words = "  ".join(f"{counts.get(level, 0)} {level}" for level in levels)
    harm = counts.get(Level.HARM, 0)
    return f"{harm} HARM  {words}" if harm else words
