"""The water of a zone: how much of what the roots can reach is gone, and how much may go."""

from journal.line.words import neat
from journal.reckon.root_zone import Balance, balance
from journal.record.unit import Dimension
from journal.screens.ground.fact import dated, named
from journal.screens.picture import Ink, Row, Span
from journal.screens.today.ruler import BOUNDARY
from journal.season.history import Past

CELLS = 30
GONE, HELD, ALLOWED = "·", "█", "┃"


def water_rows(past: Past, width: int) -> list[Row]:
    """The account as a bar and in words, or why there is none."""
    found = balance(past)
    if found.deficit_mm is None or found.allowed_mm is None or not found.total_mm:
        return named([("water", f"not known: {found.why}")], width)
    units = past.lawn.units
    gone, may, holds = (_depth(mm, units) for mm in (found.deficit_mm, found.allowed_mm, found.total_mm))
    use = f"{_depth(found.et_mm_a_day, units)} a day of late; " if found.et_mm_a_day is not None else ""
    start = "the first day of growth, taken as full," if found.assumed else "the soaking of"
    since = f"; counted since {start} {dated(found.since, past.date)}" if found.since else ""
    bridged = f", {found.bridged} days without temperatures bridged" if found.bridged else ""
    said = [
        ("water", f"{gone} gone; {may} may go before it is watered; the roots reach {holds}"),
        ("use", f"{use}{_when(found)}{since}{bridged}"),
    ]
    gone_share, allowed_share = found.deficit_mm / found.total_mm, found.allowed_mm / found.total_mm
    return [(Span("     "), BOUNDARY, Span(" " * 10), *bar(gone_share, allowed_share)), *named(said, width)]


def bar(gone: float, allowed: float) -> Row:
    """The root zone: held, gone, and the mark beyond which it should not fall; shares of all that it can hold."""
    held, mark = round((1 - gone) * CELLS), min(CELLS - 1, round((1 - allowed) * CELLS))
    cells = [
        Span(ALLOWED, Ink.STRONG) if at == mark else Span(HELD, Ink.WATER) if at < held else Span(GONE, Ink.DIM)
        for at in range(CELLS)
    ]
    low = Span(" ! low" if gone > allowed else "", Ink.LATE)
    return (*cells, low, Span(f"  {HELD} held  {ALLOWED} water here", Ink.DIM))


def _when(found: Balance) -> str:
    if found.days_to_water is None:
        return "how long it lasts is not known"
    if found.days_to_water < 0.5:
        return "time to water"
    return f"water in about {found.days_to_water:.0f} d"


def _depth(mm: float, units: str) -> str:
    return neat(round(mm, 1) if units == "metric" else round(mm / 25.4, 2) * 25.4, Dimension.LENGTH, units)
