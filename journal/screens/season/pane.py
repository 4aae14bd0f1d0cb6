"""Everything in a cell, in words: the lane under the cursor first, then the others."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from journal.screens.picture import Ink, Row, Span
from journal.screens.rows import cut, filled, wrapped
from journal.screens.season.figures import counted, day_words, short_day
from journal.screens.season.lane import Lane
from journal.screens.season.mark import Said
from journal.screens.season.scene import Scene

NAME, WHEN = 9, 8
GUTTER = " │"


@dataclass(frozen=True, slots=True)
class Block:
    """What one lane says of the cell."""

    name: str
    said: tuple[Said, ...]


def blocks(scene: Scene, lanes: Sequence[Lane], cell: int, first: Lane | None) -> tuple[Block, ...]:
    """The lane of the cursor, whatever it has to say; then those that have anything to tell."""
    found = [Block(first.name, first.words(scene, cell))] if first else []
    for lane in lanes:
        if lane is not first:
            said = tuple(one for one in lane.words(scene, cell) if not one.idle)
            if said:
                found.append(Block(lane.name, said))
    return tuple(found)


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


def lines(block: Block, width: int) -> list[Row]:
    """A block as rows: name, day or mark, sentence."""
    rows: list[Row] = []
    for said in _together(block.said):
        for index, line in enumerate(wrapped(said.text, max(10, width - NAME - WHEN - 1))):
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


def body(found: Sequence[Block], width: int, height: int, columns: int, *, more_by: str) -> list[Row]:
    """Exactly `height` rows, in one to three columns that are read one after another.

    What does not fit is counted; `more_by` names the key that shows it, if there is one.
    """
    if height <= 0:
        return []
    wide = (width - len(GUTTER) * (columns - 1)) // columns
    flow = _flow([lines(block, wide) for block in found], height, columns)
    more = sum(len(column) for column in flow[columns:])
    shown = flow[:columns]
    if more:
        shown[-1][-1] = (Span(f" +{more + 1} more{f': {more_by}' if more_by else ''}", Ink.KEY),)
    tall = max((len(column) for column in shown), default=0)
    return [_across(shown, at, wide, columns) for at in range(tall)] + [()] * (height - tall)


def _across(shown: Sequence[Sequence[Row]], at: int, wide: int, columns: int) -> Row:
    row: list[Span] = []
    for index in range(columns):
        column = shown[index] if index < len(shown) else ()
        part = column[at] if at < len(column) else ()
        last = index == columns - 1
        row += cut(part, wide) if last else (*filled(part, wide), Span(GUTTER, Ink.RULE))
    return tuple(row)


def _flow(found: Sequence[list[Row]], height: int, columns: int) -> list[list[Row]]:
    """Blocks in columns: the first alone in its own where there are several, the others shared out evenly."""
    if columns == 1 or len(found) < 2:
        return _poured(found, height, height)
    first = _poured(found[:1], height, height)
    rest = sum(len(block) for block in found[1:])
    even = max(1, -(-rest // (columns - len(first)))) if len(first) < columns else height
    return first + _poured(found[1:], height, min(height, even))


def _poured(found: Sequence[list[Row]], height: int, even: int) -> list[list[Row]]:
    """Blocks one after another: a new column once `even` rows are reached, or the height is."""
    flow: list[list[Row]] = [[]]
    for block in found:
        if flow[-1] and len(flow[-1]) >= even:
            flow.append([])
        for row in block:
            if len(flow[-1]) == height:
                flow.append([])
            flow[-1].append(row)
    return flow
