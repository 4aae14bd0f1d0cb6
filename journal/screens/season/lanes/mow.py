"""Mowing: the height of the last cut in each cell, and the gaps, darker the longer they are.

With several zones a cell shows the worst of them: the longest gap, else the lowest cut; the zones stand below where
they differ and there is room.
"""

from bisect import bisect_left, bisect_right

from journal.line.words import summary
from journal.record.kinds.mowing import Mowing
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import INCH, counted, day_words, height_number, height_texts, zone_words
from journal.screens.season.gaps import Gap, clock, shade_mark
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, heaviest, idle
from journal.screens.season.scene import Scene

STEPS = ("first-mow", "mow", "last-mow")
EXPECTED = Mark((".",), Ink.AHEAD)
"""A cut a week, while the grass will grow."""


def _cut(cuts: tuple[Mowing, ...], metric: bool) -> Mark:
    last = cuts[-1]
    ink = Ink.STRONG if len({cut.day for cut in cuts}) > 1 else Ink.DONE
    if last.height_mm is None:
        return Mark(("+",), ink, weight=1.0)
    return Mark(height_texts(last.height_mm, metric), ink, weight=2.0 - last.height_mm / 1000)


def _zone(scene: Scene, zone: str, window: dict[int, Mark]) -> tuple[Mark, ...]:
    track = scene.history.track(zone, Mowing)
    days, starts, tick = track.days, scene.cells.starts, clock(scene, zone)
    end = bisect_right(days, scene.today)
    low = bisect_left(days, starts[0], 0, end)
    marks: list[Mark] = []
    for cell in range(COUNT):
        if cell > scene.now:
            marks.append(_ahead(scene, cell, window, tick.quiet(starts[cell])))
            continue
        high = bisect_left(days, starts[cell + 1], low, end)
        if high > low:
            marks.append(_cut(track.entries[low:high], scene.metric))
        else:
            gap = tick.gap(scene.past_end(cell), days[low - 1] if low else None)
            marks.append(shade_mark(gap.shade) if gap and gap.shade else BLANK)
        low = high
    return tuple(marks)


def _ahead(scene: Scene, cell: int, window: dict[int, Mark], quiet: str) -> Mark:
    if cell in window:
        return window[cell]
    return EXPECTED if not quiet and not scene.cells.by_day else BLANK


def _draw(scene: Scene) -> Drawn:
    unit = "mm" if scene.metric else "in"
    rows = [Strip(zone, _zone(scene, zone, ahead(scene, STEPS, (zone,))), _now(scene, (zone,))) for zone in scene.zones]
    worst = heaviest([row.marks for row in rows])
    differ = len(rows) > 1 and any(row.marks != worst for row in rows)
    return Drawn(Strip(f"Mow {unit}", worst, _now(scene, scene.zones)), tuple(rows) if differ else ())


def _gap(scene: Scene, zone: str, day: int) -> tuple[Gap | None, Mowing | None]:
    """The gap on a day, and the last cut up to it."""
    track = scene.history.track(zone, Mowing)
    at = bisect_right(track.days, min(day, scene.today))
    last = track.entries[at - 1] if at else None
    return clock(scene, zone).gap(day, last.day if last else None), last


def _now(scene: Scene, zones: tuple[str, ...]) -> Now:
    gaps = [_gap(scene, zone, scene.today) for zone in zones]
    due = [(gap, last) for gap, last in gaps if gap is not None]
    if due:
        gap, last = max(due, key=lambda pair: pair[0].days)
        words = _since(scene, last) if gap.cut and last is not None else "uncut"
        return Now(str(gap.days), "d", words, ink=Ink.GAP if gap.shade else Ink.PLAIN)
    cuts = [last for _, last in gaps if last is not None]
    if not cuts:
        return Now("–", "", "no cut yet")
    last = max(cuts, key=lambda cut: cut.day)
    return Now(str(scene.today - last.day), "d", "not due" if scene.seasons else _since(scene, last))


def _since(scene: Scene, cut: Mowing) -> str:
    return "since cut" if cut.height_mm is None else f"since {height_number(cut.height_mm, scene.metric)}"


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    if cell > scene.now:
        steps = told(scene, STEPS, cell)
        quiet = {clock(scene, zone).quiet(scene.cells.starts[cell]) for zone in scene.zones}
        if "" in quiet and not scene.cells.by_day:
            return (*steps, Said("about one cut a week, while it grows.", ink=Ink.AHEAD))
        return steps or (idle(f"none due: {', '.join(sorted(quiet - {''})) or 'no window here'}."),)
    made = [_made(scene, entry) for entry in scene.entries(cell, Mowing)]
    return (*made, *_gaps(scene, cell), *told(scene, STEPS, cell)) or (idle(_nothing(scene, cell)),)


def _made(scene: Scene, entry: Mowing) -> Said:
    return logged(entry, f"{summary(entry, scene.lawn)}.", Ink.DONE)


def _gaps(scene: Scene, cell: int) -> tuple[Said, ...]:
    """One sentence for each gap that is past the usual interval, zones together."""
    first, day = scene.cells.starts[cell], scene.past_end(cell)
    found: dict[Gap, list[str]] = {}
    for zone in scene.zones:
        gap, last = _gap(scene, zone, day)
        if gap is not None and gap.shade and (last is None or last.day < first):
            found.setdefault(gap, []).append(zone)
    return tuple(
        _gap_said(scene, gap, zones, cell) for gap, zones in sorted(found.items(), key=lambda one: -one[0].days)
    )


def _gap_said(scene: Scene, gap: Gap, zones: list[str], cell: int) -> Said:
    by = "" if cell == scene.now else f" by {day_words(scene.past_end(cell), scene.today)}"
    since = f"{'last cut' if gap.cut else 'uncut, counted from'} {day_words(gap.since, scene.today)}"
    limits = f"usual {gap.usual:g}, late after {gap.late:g}"
    text = f"{zone_words(scene.lawn, zones)}: {counted(gap.days, 'day')}{by}, {since}; {limits}."
    return Said(text, gap.shade * 3, Ink.GAP)


def _nothing(scene: Scene, cell: int) -> str:
    day = scene.past_end(cell)
    clocks = [clock(scene, zone) for zone in scene.zones]
    quiet = sorted({one.quiet(day) or ("dry, not irrigated" if one.dry(day) else "") for one in clocks} - {""})
    kept = min((since for since in scene.mown_since.values() if since is not None), default=None)
    if kept is None or day < kept:
        return "nothing was kept yet."
    return f"none due: {', '.join(quiet)}." if quiet else "none due yet."


def _total(scene: Scene) -> Now:
    """Cuts, zones mown on one day together, and their mean height."""
    cuts = [cut for here in scene.by_cell(Mowing) for cut in here]
    heights = [cut.height_mm for cut in cuts if cut.height_mm is not None]
    tenth = 1.0 if scene.metric else INCH / 10
    middle = round(sum(heights) / len(heights) / tenth) * tenth if heights else None
    mean = f"mean {height_number(middle, scene.metric)}" if middle is not None else ""
    return Now(str(len({cut.day for cut in cuts})), "x", mean)


LANE = Lane(name="Mow", place=20, draw=_draw, words=_words, total=_total)
