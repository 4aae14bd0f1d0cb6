"""Flags in the cell in which they rose, the gravest first.

Only flags that stand on the date judged are drawn: one that rose and was cleared leaves no mark.
"""

from journal.rules.flag import Flag
from journal.screens.level import LEVEL_INKS, LEVEL_LETTERS
from journal.screens.season.cells import COUNT
from journal.screens.season.figures import counted, day_words
from journal.screens.season.lane import Lane
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene


def flags(scene: Scene) -> tuple[Flag, ...]:
    """Those that stand on the zones shown, gravest first."""
    return tuple(
        flag for flag in scene.standing.flags if not flag.zones or any(zone in scene.zones for zone in flag.zones)
    )


def risen(scene: Scene, cell: int) -> tuple[Flag, ...]:
    """Those that rose in a cell, gravest first."""
    first, last = scene.cells.span(cell)
    return tuple(flag for flag in flags(scene) if first <= flag.rose.toordinal() <= last)


def _draw(scene: Scene) -> Drawn:
    marks = [BLANK] * COUNT
    found: dict[int, list[Flag]] = {}
    for flag in flags(scene):
        cell = scene.cells.at(flag.rose.toordinal())
        if cell is not None:
            found.setdefault(cell, []).append(flag)
    for cell, here in found.items():
        gravest = max(here, key=lambda flag: flag.level.gravity).level
        letter = LEVEL_LETTERS[gravest]
        marks[cell] = Mark((f"{letter}{len(here)}", letter) if 1 < len(here) < 10 else (letter,), LEVEL_INKS[gravest])
    return Drawn(Strip("Flags", tuple(marks), _now(scene)))


def _now(scene: Scene) -> Now:
    standing = flags(scene)
    if not standing:
        return Now("0", "", "stand")
    gravest = max(standing, key=lambda flag: flag.level.gravity).level
    count = sum(flag.level is gravest for flag in standing)
    rest = len(standing) - count
    unit, words = (f"{gravest.value},", f"{rest} more") if rest else (gravest.value, "")
    return Now(str(count), unit, words, str(len(standing)), ink=LEVEL_INKS[gravest])


def said(scene: Scene, flag: Flag) -> Said:
    """One flag in words."""
    zones = ", ".join(flag.zones)
    head = f"{flag.rule} {zones}".strip()
    since = day_words(flag.rose.toordinal(), scene.today)
    clears = f"clears: {flag.clears}" if flag.clears else ""
    parts = "; ".join(part for part in (flag.headline, flag.do, clears) if part)
    return Said(
        f"{head}, since {since}: {parts}.", flag.level.value, LEVEL_INKS[flag.level], flag=flag.id,
        brief=f"{head}: {flag.headline}",
    )  # fmt: skip


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    here = flags(scene) if cell == scene.now else risen(scene, cell)
    if here:
        return tuple(said(scene, flag) for flag in here)
    first, _ = scene.cells.span(cell)
    if first > scene.today:
        return (idle("not yet known."),)
    standing = len(flags(scene))
    elsewhere = f"; {counted(standing, 'flag stands', 'flags stand')}, Tab goes there" if standing else ""
    return (idle(f"none of those that stand rose here{elsewhere}." if standing else "none stand."),)


NAME = "Flags"
LANE = Lane(name=NAME, place=10, draw=_draw, words=_words)
