"""Feeding: nitrogen as a block, then a fuse that burns down to the next feeding.

`━` not yet, `─` the window is open, `░` past the number that makes it late; darker only where a flag says so, since a
feeding is often held back for good reasons. Between seasons the fuse goes out. What brings no nitrogen worth counting
stands as a letter: `l` lime, `i` iron, `s` supplement, `f` any other.
"""

from datetime import date

from journal.line.words import summary
from journal.reckon.feedings import FeedingDay, nitrogen_of_year, year_cap
from journal.record.entry import Entry
from journal.record.kinds.feeding import Feeding
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import (
    LB_PER_K,
    METRIC_FULL_N,
    block,
    counted,
    day_words,
    nitrogen,
    nitrogen_number,
    tenths,
    zone_words,
)
from journal.screens.season.fuse import Burnt, fuse
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import Drawn, Mark, Now, Said, Strip, heaviest, idle
from journal.screens.season.scene import Scene

STEPS = ("starter", "seedling-feed", "feed")
_SMALL = {"lime": "l", "iron": "i", "supplement": "s"}


def _fed(here: list[FeedingDay], fill: str, metric: bool) -> Mark:
    if any(feeding.n_g_per_m2 is None for feeding in here):
        return Mark(("?",), Ink.STRONG, fill, weight=15.0)
    total = sum(feeding.n_g_per_m2 or 0.0 for feeding in here)
    full = METRIC_FULL_N if metric else LB_PER_K
    digit = (f"{total:.0f}" if total < 9.5 else "+") if metric else tenths(total / LB_PER_K)
    high = block(total / full)
    return Mark((f"{high}{digit}", high), Ink.FUSE, fill, weight=20.0 + total)


def _zone(scene: Scene, zone: str) -> list[Mark]:
    burning, window, small = fuse(scene, zone), ahead(scene, STEPS, (zone,)), _small(scene, zone)
    fed: dict[int, list[FeedingDay]] = {}
    for feeding in burning.feedings:
        cell = scene.cells.at(feeding.day)
        if cell is not None:
            fed.setdefault(cell, []).append(feeding)
    marks = []
    for cell in range(COUNT):
        day = scene.past_end(cell) if cell <= scene.now else scene.cells.starts[cell + 1] - 1
        if cell in fed:
            marks.append(_fed(fed[cell], burning.mark(day).fill, scene.metric))
        elif cell > scene.now:
            marks.append(window.get(cell) or burning.mark(day))
        else:
            marks.append(small.get(cell) or burning.mark(day))
    return marks


def _small(scene: Scene, zone: str) -> dict[int, Mark]:
    """Everything fed to a zone, as a letter: shown where it was no feeding."""
    found = {}
    for entry in scene.pasts[zone][Feeding].between(scene.cells.first, scene.cells.last):
        product = scene.lawn.product(entry.product)
        letter = _SMALL.get(product.kind, "f") if product else "f"
        found[scene.cells.at(entry.day) or 0] = Mark((letter,), Ink.FUSE, weight=10.0)
    return found


def _draw(scene: Scene) -> Drawn:
    rows = [tuple(_zone(scene, zone)) for zone in scene.zones]
    shown = heaviest(rows)
    zones = [Strip(zone, marks, _now(scene, (zone,))) for zone, marks in zip(scene.zones, rows, strict=True)]
    differ = any(marks != shown for marks in rows)
    strip = Strip("Feed g" if scene.metric else "Feed N", shown, _now(scene, scene.zones))
    return Drawn(strip, tuple(zones) if differ else ())


def nitrogen_of(scene: Scene, zone: str) -> tuple[float, float]:
    """Nitrogen of the calendar year so far, and its cap, in g/m2."""
    return scene.once(("nitrogen", zone), lambda: _reckoned(scene, zone))


def _reckoned(scene: Scene, zone: str) -> tuple[float, float]:
    facts = next((facts for facts in scene.standing.zones if facts.zone == zone), None)
    if facts is not None:
        return facts.n_g_per_m2, facts.n_cap_g_per_m2
    past = scene.pasts[zone]
    return nitrogen_of_year(past, past.date.year), year_cap(past)


def _now(scene: Scene, zones: tuple[str, ...]) -> Now:
    used, cap = max((nitrogen_of(scene, zone) for zone in zones), key=lambda pair: pair[0] / pair[1])
    number = nitrogen_number(used, scene.metric)
    words = f"of {nitrogen_number(cap, scene.metric)}"
    return Now(number, "g" if scene.metric else "lb", words, ink=Ink.LATE if used > cap * 1.02 else Ink.PLAIN)


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    burning = [fuse(scene, zone) for zone in scene.zones]
    first, last = scene.cells.span(cell)
    counts = {id(e): f for one in burning for f in one.feedings if first <= f.day <= last for e in f.entries}
    made = [_made(scene, entry, counts.get(id(entry))) for entry in _entries(scene, cell, counts)]
    day = scene.past_end(cell) if cell <= scene.now else last
    found: dict[Burnt, list[str]] = {}
    for one in burning:
        burnt = one.burnt(day)
        if (
            burnt is not None
            and not (burnt.feeding and burnt.feeding.day >= first)
            and (burnt.feeding or not burnt.waits)
        ):
            found.setdefault(burnt, []).append(one.zone)
    fuses = [_fuse_said(scene, burnt, zones, cell) for burnt, zones in found.items()]
    year = [_year_said(scene)] if cell == scene.now else []
    return (*made, *fuses, *told(scene, STEPS, cell), *year) or (idle(_nothing(scene, day)),)


def _entries(scene: Scene, cell: int, counts: dict[int, FeedingDay]) -> list[Entry]:
    fed: dict[int, Entry] = {id(entry): entry for entry in scene.entries(cell, Feeding)}
    fed |= {id(entry): entry for feeding in counts.values() for entry in feeding.entries}
    return sorted(fed.values(), key=lambda entry: (entry.day, entry.id))


def _made(scene: Scene, entry: Entry, feeding: FeedingDay | None) -> Said:
    brought = ""
    if feeding is not None:
        known = feeding.n_g_per_m2
        brought = f": {nitrogen(known, scene.metric)}" if known is not None else ": nitrogen not known, no amount"
        if feeding.slow_share is not None:
            brought += f", {feeding.slow_share:.0%} slow"
    text = f"{summary(entry, scene.lawn)}{brought}."
    return logged(entry, text, Ink.FUSE)


def _fuse_said(scene: Scene, burnt: Burnt, zones: list[str], cell: int) -> Said:
    end = scene.past_end(cell) if cell <= scene.now else scene.cells.span(cell)[1]
    what = "fed" if burnt.feeding else "not fed; counted from"
    on = "" if cell == scene.now else f" on {day_words(end, scene.today)}"
    since = f"{what} {day_words(burnt.since, scene.today)}, {counted(burnt.days, 'day')}{on}"
    head = f"{zone_words(scene.lawn, zones)} {since}"
    opens = day_words(burnt.since + burnt.opens, scene.today)
    if burnt.waits:
        return Said(f"{head}: not before {opens} ({burnt.opens} days).", "━━━", Ink.FUSE)
    if burnt.days <= burnt.late:
        return Said(f"{head}: the window opened {opens}, late after {burnt.late} days.", "───", Ink.FUSE)
    return Said(f"{head}: past {burnt.late}.", "░░░", Ink.GAP)


def _year_said(scene: Scene) -> Said:
    parts = [
        f"{zone} {nitrogen_number(used, scene.metric)} of {nitrogen_number(cap, scene.metric)}"
        for zone in scene.zones
        for used, cap in (nitrogen_of(scene, zone),)
    ]
    return idle(f"this year: {', '.join(parts)} {'g N/m2' if scene.metric else 'lb N/k'}.")


def _nothing(scene: Scene, day: int) -> str:
    if scene.season(day) is None:
        return "none due: not growing."
    if day > scene.today:
        return "no window known here."
    kept = min((since for since in scene.fed_since.values() if since is not None), default=None)
    return "nothing was kept yet." if kept is None or day < kept else "none due yet."


def _total(scene: Scene) -> Now:
    """Nitrogen of the calendar year in which the cells end, of the zone that got most."""
    year = date.fromordinal(scene.cells.last).year
    most = max(nitrogen_of_year(scene.pasts[zone], year) for zone in scene.zones)
    return Now(nitrogen_number(most, scene.metric), "g" if scene.metric else "lb", "N/m2" if scene.metric else "N/k")


LANE = Lane(name="Feed", place=30, draw=_draw, words=_words, total=_total)
