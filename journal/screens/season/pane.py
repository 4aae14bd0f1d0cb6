"""Everything in a cell, in words: the lane under the cursor first, then the gravest flag, the done and the ahead."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import clipped, cut, ends, filled, wrapped
from journal.screens.season.figures import counted, day_words, short_day
from journal.screens.season.lane import Lane
from journal.screens.season.lanes.flags import NAME as FLAGS
from journal.screens.season.mark import Said
from journal.screens.season.scene import Scene

NAME, WHEN = 9, 7
GUTTER = " │"


@dataclass(frozen=True, slots=True)
class Block:
    """What one lane says of the cell. `fewer` says it with less, `brief` with a row a sentence; empty: as `said`."""

    name: str
    said: tuple[Said, ...]
    fewer: tuple[Said, ...] = ()
    brief: tuple[Said, ...] = ()


def blocks(scene: Scene, lanes: Sequence[Lane], cell: int, first: Lane | None) -> tuple[Block, ...]:
    """The lane of the cursor, whatever it has to say; then of the others the flags, a row each, what was done, what
    lies ahead, and how things stand.
    """
    found = [Block(first.name, words(first, scene, cell))] if first else []
    told = {
        lane.name: tuple(one for one in words(lane, scene, cell) if not one.idle) for lane in lanes if lane is not first
    }
    flags = told.pop(FLAGS, ())
    if flags:
        found.append(Block(FLAGS, flags, tuple(replace(one, text=one.brief) for one in flags), (_gravest(flags),)))
    for part in (_done, _ahead, _state):
        for name, said in told.items():
            some = tuple(one for one in said if part(one))
            if some:
                found.append(Block(name, some))
    return tuple(found)


def words(lane: Lane, scene: Scene, cell: int) -> tuple[Said, ...]:
    """What a lane says of a cell, put together once for a scene."""
    return scene.once(("words", lane.name, cell), lambda: lane.words(scene, cell))


def _gravest(flags: Sequence[Said]) -> Said:
    """One row for all: the gravest, and beside its level how many more there are (`late +2`, nine at most)."""
    first, more = flags[0], len(flags) - 1
    return replace(first, when=f"{first.when} +{min(9, more)}") if more else first


def _done(said: Said) -> bool:
    return said.logged is not None


def _ahead(said: Said) -> bool:
    return said.ahead


def _state(said: Said) -> bool:
    return said.logged is None and not said.ahead


def title(scene: Scene, cell: int, first: Lane | None, width: int) -> Row:
    """A rule with the cell's days and the lane in it."""
    head = f"─ {cell_words(scene, cell)}{f' · {first.name}' if first else ''} "
    tail = f" {where_words(scene, cell)} ─"
    if len(head) + len(tail) > width:
        tail = ""
    return cut((Span(head + "─" * max(0, width - len(head) - len(tail)) + tail, Ink.RULE),), width)


def cell_words(scene: Scene, cell: int) -> str:
    """`30 Apr to 6 May`, or `Mon 3 May` where a cell is a day."""
    first, last = scene.cells.span(cell)
    if first == last:
        return f"{_WEEKDAYS[(first - 1) % 7]} {day_words(first, scene.today)}"
    one_year = date.fromordinal(first).year == date.fromordinal(last).year
    return f"{short_day(first) if one_year else day_words(first, scene.today)} to {day_words(last, scene.today)}"


_WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


def where_words(scene: Scene, cell: int) -> str:
    """How far away the cell is, and whether the grass grows then."""
    first, last = scene.cells.span(cell)
    grows = "" if not scene.seasons else "not growing" if scene.idle_season(cell) else "growing"
    if first <= scene.today <= last:
        far = "now"
    else:
        days = first - scene.today if first > scene.today else scene.today - last
        way = "ahead" if first > scene.today else "ago"
        far = f"{counted(days // 7, 'week') if days >= 14 else counted(days, 'day')} {way}"
    return f"{far}, {grows}" if grows else far


FULL, FEWER, BRIEF = 0, 1, 2
"""How much a block says."""


def lines(block: Block, width: int, much: int) -> list[Row]:
    """A block as rows: name, day or mark, sentence; `much` is FULL, FEWER or BRIEF."""
    rows: list[Row] = []
    room = max(10, width - NAME - WHEN - 1)
    forms = {FULL: block.said, FEWER: block.fewer or block.said, BRIEF: block.brief or block.said}
    for said in _together(forms[much]):
        told = [clipped(said.brief or said.text, room)] if much == BRIEF else wrapped(said.text, room)
        for index, line in enumerate(told):
            rows.append(
                (
                    Span(f" {'' if rows else block.name:<{NAME - 1}}", Ink.TITLE),
                    Span(f"{'' if index else said.when[:WHEN]:<{WHEN}} ", said.ink),
                    Span(line, Ink.DIM if said.idle else Ink.PLAIN),
                )
            )
    return rows


def _together(said: Sequence[Said]) -> list[Said]:
    """The same said twice of one day is said once, with how often."""
    times = Counter((one.when, one.text) for one in said)
    found = []
    for one in said:
        count = times.pop((one.when, one.text), 0)
        if count:
            found.append(replace(one, text=f"{one.text.rstrip('.')}, {count} times.") if count > 1 else one)
    return found


_OPENED = ((FULL, FULL), (FULL, FEWER), (FULL, BRIEF))
_CLOSED = (*_OPENED, (BRIEF, BRIEF))


def body(found: Sequence[Block], width: int, height: int, columns: int, *, opened: bool) -> list[Row]:
    """Exactly `height` rows, in one to three columns that are read one after another.

    In full where that fits; else all but the first block with fewer words; else, unless it was `opened`, that one
    too. What still does not fit is counted.
    """
    if height <= 0:
        return []
    wide = (width - len(GUTTER) * (columns - 1)) // columns
    flow: list[list[Row]] = [[]]
    forms: Sequence[tuple[int, int]] = _OPENED if opened else _CLOSED
    if sum(len(block.said) for block in found) > height * columns:
        forms = forms[2:]  # there is no room for a row each: longer forms need not be tried
    for first, others in forms:
        poured = [lines(block, wide, others if at else first) for at, block in enumerate(found)]
        flow = _flow(poured, height, columns)
        if len(flow) <= columns:
            break
    more = sum(len(column) for column in flow[columns:])
    shown = flow[:columns]
    if more:
        shown[-1][-1] = _counted(shown[-1][-1], more, wide, opened=opened)
    tall = max((len(column) for column in shown), default=0)
    return [_across(shown, at, wide, columns) for at in range(tall)] + [()] * (height - tall)


def _counted(row: Row, more: int, width: int, *, opened: bool) -> Row:
    """The last row there is room for, with the count of the others at its end."""
    tail = f" +{more} more{'' if opened else ': Space'}"
    return ends(row, (Span(tail, Ink.KEY),), width)


def _across(shown: Sequence[Sequence[Row]], at: int, wide: int, columns: int) -> Row:
    row: list[Span] = []
    for index in range(columns):
        column = shown[index] if index < len(shown) else ()
        part = column[at] if at < len(column) else ()
        last = index == columns - 1
        row += cut(part, wide) if last else (*filled(part, wide), Span(GUTTER, Ink.RULE))
    return tuple(row)


def _flow(found: Sequence[list[Row]], height: int, columns: int) -> list[list[Row]]:
    """Blocks in columns as even as can be without parting one; more columns than there are when they do not fit."""
    rows = sum(len(block) for block in found)
    for even in range(max(1, -(-rows // columns)), height + 1):
        flow = _poured(found, even, whole=True)
        if len(flow) <= columns and all(len(column) <= height for column in flow):
            return flow
    return _poured(found, height, whole=False)


def _poured(found: Sequence[list[Row]], height: int, *, whole: bool) -> list[list[Row]]:
    """Blocks one after another in columns of a height; a `whole` one is not parted but goes to the next column."""
    flow: list[list[Row]] = [[]]
    for block in found:
        if whole and flow[-1] and len(flow[-1]) + len(block) > height:
            flow.append([])
        for row in block:
            if not whole and len(flow[-1]) == height:
                flow.append([])
            flow[-1].append(row)
    return flow
