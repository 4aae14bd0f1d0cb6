"""The season so far in figures, zone by zone: what the pane has room for where the window is large."""

from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from statistics import median

from journal.record.entry import Entry
from journal.record.kinds.mowing import Mowing
from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import clipped, cut, left, middle, right
from journal.screens.season.figures import counted, day_words, depth_number, depth_unit, nitrogen_number
from journal.screens.season.lanes.feed import nitrogen_of
from journal.screens.season.scene import Scene
from journal.season.growth import EARLY_DAYS
from journal.season.water import rain_days, water_days

NONE = "·"
AIRY = 12
"""Rows the pane keeps above the table."""
TIGHT = 6
"""Rows it keeps above the one line."""
MOST_ZONES = 8


@dataclass(frozen=True, slots=True)
class Figures:
    """One zone's season. Days between cuts; the gap still running counts for the longest. Water in mm, None when
    nothing is on file; nitrogen in g/m2 of the calendar year, with its cap.
    """

    zone: str
    cuts: int
    median_days: float | None
    longest_days: int | None
    nitrogen: float
    cap: float
    water_mm: float | None
    rain_mm: float | None


@dataclass(frozen=True, slots=True)
class Stretch:
    """First and last day (ordinals) of the season told of, and whether it is still on."""

    first: int
    last: int
    on: bool


def season_of(scene: Scene) -> Stretch:
    """The newest season begun by the date judged; the calendar year where it is not known when grass grows."""
    begun = [season for season in scene.seasons if season[0] <= scene.today]
    if not begun:
        return Stretch(date(date.fromordinal(scene.today).year, 1, 1).toordinal(), scene.today, True)
    first, last = begun[-1]
    return Stretch(first, min(last, scene.today), scene.today <= last)


def figures(scene: Scene) -> tuple[Figures, ...]:
    """Of every zone shown, worked out once for a scene."""
    return scene.once("season figures", lambda: tuple(_of(scene, zone) for zone in scene.zones))


def _of(scene: Scene, zone: str) -> Figures:
    past, season = scene.pasts[zone], season_of(scene)
    days = sorted({cut.day for cut in past[Mowing].between(season.first - EARLY_DAYS, season.last)})
    gaps = [later - earlier for earlier, later in pairwise(days)]
    running = [season.last - days[-1]] if days and season.on else []
    poured = [one.depth_mm for here in water_days(past, season.first, season.last).values() for one in here]
    known = [depth for depth in poured if depth is not None]
    fallen = rain_days(past, season.first, season.last)
    return Figures(
        zone,
        len(days),
        median(gaps) if gaps else None,
        max([*gaps, *running], default=None),
        *nitrogen_of(scene, zone),
        sum(known) if known else None,
        sum(fallen.values()) if fallen else None,
    )


def spent(scene: Scene) -> float | None:
    """What was paid in the calendar year up to the date judged; None when no price was written down."""
    return scene.once("spent", lambda: _spent(scene))


def _spent(scene: Scene) -> float | None:
    first = date(date.fromordinal(scene.today).year, 1, 1).toordinal()
    found: dict[int, float] = {}
    for track in scene.history.tracks.values():
        for entry in _between(track.days, track.entries, first, scene.today):
            if entry.cost is not None:
                found[id(entry)] = entry.cost
    return sum(found.values()) if found else None


def _between(days: tuple[int, ...], entries: tuple[Entry, ...], first: int, last: int) -> tuple[Entry, ...]:
    return entries[bisect_left(days, first) : bisect_right(days, last)]


def summary_rows(scene: Scene, width: int, height: int) -> list[Row]:
    """The table where the pane keeps room enough above it, else one line, else nothing."""
    told = figures(scene)[:MOST_ZONES]
    if spent(scene) is None and not any(one.cuts or one.nitrogen or one.water_mm or one.rain_mm for one in told):
        return []
    if height - len(told) - 2 >= AIRY:
        return [_title(scene, width), _head(scene, width), *(_row(scene, one, width) for one in told)]
    return [_title(scene, width), _line(scene, width)] if height - 2 >= TIGHT else []


def _title(scene: Scene, width: int) -> Row:
    season = season_of(scene)
    since = day_words(season.first, scene.today)
    if not scene.seasons:
        head = f"─ This year, since {since} "
    elif season.on:
        head = f"─ This season, since {since} "
    else:
        head = f"─ Last season, {since} to {day_words(season.last, scene.today)} "
    money = spent(scene)
    tail = f" spent ${money:,.2f} in {date.fromordinal(scene.today).year} ─" if money is not None else "─"
    return cut((Span(head + "─" * max(1, width - len(head) - len(tail)) + tail, Ink.RULE),), width)


_COLUMNS = (8, 9, 10, 16, 11, 11)


def _head(scene: Scene, width: int) -> Row:
    unit = depth_unit(scene.metric)
    nitrogen = f"N {'g/m2' if scene.metric else 'lb/k'}, {date.fromordinal(scene.today).year}"
    words = ("mown", "median", "longest", nitrogen, f"water {unit}", f"rain {unit}")
    text = "".join(right(word, room) for word, room in zip(words, _COLUMNS, strict=True))
    return cut((Span(f" {left('', 11)}{text}", Ink.DIM),), width)


def _row(scene: Scene, one: Figures, width: int) -> Row:
    words = (
        f"{one.cuts}x", _days(one.median_days), _days(one.longest_days), _nitrogen(scene, one),
        _depth(scene, one.water_mm), _depth(scene, one.rain_mm),
    )  # fmt: skip
    text = "".join(right(word, room) for word, room in zip(words, _COLUMNS, strict=True))
    return cut((Span(f" {left(middle(one.zone, 11), 11)}", Ink.STRONG), Span(text)), width)


def _line(scene: Scene, width: int) -> Row:
    """All zones in one row: of each figure the one that gives most to think about."""
    told = figures(scene)
    longest = max((one.longest_days for one in told if one.longest_days is not None), default=None)
    middle = [one.median_days for one in told if one.median_days is not None]
    fed = max(told, key=lambda one: one.nitrogen / one.cap)
    parts = [f"mown {counted(max(one.cuts for one in told), 'time')}"]
    if middle:
        parts.append(f"median {_days(median(middle))}")
    if longest is not None:
        parts.append(f"longest {_days(longest)}")
    parts.append(f"N {_nitrogen(scene, fed)} {'g/m2' if scene.metric else 'lb/k'}")
    water, rain = (max((d for d in depths if d is not None), default=None) for depths in _depths(told))
    wet = [f"{name} {_depth(scene, d)}" for name, d in (("water", water), ("rain", rain)) if d is not None]
    if wet:
        parts.append(f"{' + '.join(wet)} {depth_unit(scene.metric)}")
    return (Span(" "), Span(clipped("   ".join(parts), width - 1)))


def _depths(told: tuple[Figures, ...]) -> tuple[list[float | None], list[float | None]]:
    return [one.water_mm for one in told], [one.rain_mm for one in told]


def _nitrogen(scene: Scene, one: Figures) -> str:
    return f"{nitrogen_number(one.nitrogen, scene.metric)} of {nitrogen_number(one.cap, scene.metric)}"


def _days(days: float | None) -> str:
    return NONE if days is None else f"{days:g} d"


def _depth(scene: Scene, depth: float | None) -> str:
    return NONE if depth is None else depth_number(depth, scene.metric)
