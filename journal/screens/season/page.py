"""The page put together: title, axis, grid, cursor, and the cell in words."""

from collections.abc import Mapping

from journal.facts.safety import one_row
from journal.line.say import say
from journal.screens.page import Size
from journal.screens.picture import Ink, Picture, Row, Span, Target
from journal.screens.rows import page
from journal.screens.season.axis import axis_rows
from journal.screens.season.board import NO_STOP, lane_lines
from journal.screens.season.cells import COUNT
from journal.screens.season.frame import cells_of, cursor_cell, lane_of, title_words
from journal.screens.season.grid import cursor_row, rule_row, strip_row
from journal.screens.season.lane import lanes
from journal.screens.season.lanes.protect import cautions
from journal.screens.season.layout import LOWEST, NARROWEST, WIDER, WIDEST, Layout, layout, too_small
from journal.screens.season.pane import Block, blocks, body, title
from journal.screens.season.scene import Scene, scene_of
from journal.screens.season.summary import summary_rows
from journal.screens.season.years import scene_of_axis, year_lines
from journal.screens.title import title_row
from journal.screens.view import View
from journal.standing import Standing

HEAD = 3


def draw(standing: Standing, view: View, size: Size) -> Picture:
    """Lanes or years, over weeks or days."""
    if too_small(size):
        return Picture(page(((Span(f"needs {NARROWEST}x{LOWEST + 3}"),),), size.width, size.height))
    scene = scene_of(standing, view.zone, cells_of(view, standing))
    plan, shown = layout(size.width), lanes(scene)
    lane = lane_of(view, shown)
    cell = cursor_cell(view, scene, plan)
    room = size.height - HEAD
    if view.years and lane is not None:
        grid = year_lines(standing, view, scene, shown, lane, room)
    else:
        grid = lane_lines(scene, shown, room, lane, opened=view.open)
    rows: list[Row] = [
        title_row(standing, view, size.width, title_words(view, lane.name if lane else "")),
        *axis_rows(scene_of_axis(standing, view, scene), plan, years=view.years),
    ]
    stops: dict[int, int] = {}
    here = 0
    for line in grid:
        here = len(rows) if line.here else here
        if line.stop != NO_STOP:
            stops[line.stop] = len(rows)
        rows.append(
            rule_row(plan)
            if line.strip is None
            else strip_row(line.strip, line.scene, plan, cursor=cell if line.here else None, inner=line.stop == NO_STOP)
        )
    rows.append(cursor_row(plan, cell if view.row >= 0 else -1))
    told = blocks(scene, shown, cell, lane)
    left = size.height - len(rows) - 1
    if left >= 0:
        columns = 3 if size.width >= WIDEST else 2 if size.width >= WIDER else 1
        caution: list[Row] = [(Span(" "), Span(one_row(scene.lawn.units), Ink.DIM))] if cautions(scene) else []
        left -= len(caution)
        sums = [] if view.years else summary_rows(scene, size.width, left)
        rows += [
            title(scene, cell, lane, size.width),
            *body(told, size.width, left - len(sums), columns, opened=view.open),
            *sums,
            *caution,
        ]
    under = _under(scene, told[0], here, plan, cell) if view.row >= 0 and told else None
    return Picture(page(rows, size.width, size.height), _targets(stops, plan), under)


def _targets(stops: Mapping[int, int], plan: Layout) -> tuple[Target, ...]:
    """A target for each stop in the order of the stops; one that is not shown stands on no row.

    A press on the label or the number now is one on the lane, on the grid one on its cell.
    """
    left = plan.column(plan.hidden)
    cells = (left, plan.hidden, plan.cell, COUNT - plan.hidden)
    return tuple(
        Target(stops.get(stop, -1), 0, left + plan.grid + plan.now, cells=cells)
        for stop in range(max(stops, default=-1) + 1)
    )


def _under(scene: Scene, own: Block, row: int, plan: Layout, cell: int) -> Target:
    """What Enter and Delete mean: the newest entry of the cell, else the flag, else the line of its step."""
    entry = next((said.logged for said in reversed(own.said) if said.logged is not None), None)
    flag = next((said.flag for said in own.said if said.flag), "")
    left = plan.column(cell)
    if entry is not None:
        return Target(row, left, left + plan.cell, say(entry, scene.lawn), entry.id, flag)
    step = next((said.line for said in own.said if said.line), "")
    return Target(row, left, left + plan.cell, step, "", flag)
