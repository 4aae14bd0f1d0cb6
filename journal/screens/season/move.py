"""What the keys do on the page: another view, or None where a key means nothing."""

from journal.screens.page import Size
from journal.screens.season.cells import COUNT, months_on
from journal.screens.season.frame import FIRST_ROW, cells_of, cursor_cell, same_day
from journal.screens.season.lane import lanes
from journal.screens.season.lanes.flags import flags
from journal.screens.season.layout import layout, too_small
from journal.screens.season.scene import Scene, scene_of
from journal.screens.season.years import oldest_year
from journal.screens.view import View
from journal.standing import Standing


def moved(key: str, standing: Standing, view: View, size: Size) -> View | None:
    """The view after a key."""
    if too_small(size):
        return None
    if key in ("plus", "minus"):
        return _zoomed(key, standing, view)
    scene = scene_of(standing, view.zone, cells_of(view, standing))
    plan = layout(size.width)
    last = standing.as_of.year - oldest_year(standing) if view.years else len(lanes(scene)) - 1
    comes_in = 0 if view.years else FIRST_ROW
    row = max(0, min(view.row if view.row >= 0 else comes_in, last))
    cell = cursor_cell(view, scene, plan)
    here = view.but(row=row, cell=cell)
    if view.row < 0 and key in ("left", "right", "up", "down", "wheelup", "wheeldown"):
        return here
    match key:
        case "left" | "right" | "wheelup" | "wheeldown":
            return here.but(cell=_within(cell + (1 if key in ("right", "wheeldown") else -1), plan.hidden))
        case "up" | "down":
            way = -1 if (key == "up") is not view.years else 1
            return here.but(row=max(0, min(last, row + way)))
        case "pageup" | "pagedown":
            return here.but(cell=_within(months_on(scene.cells, cell, 1 if key == "pagedown" else -1), plan.hidden))
        case "home":
            return here.but(cell=plan.hidden)
        case "end":
            return here.but(cell=COUNT - 1)
        case "tab" | "shift+tab" if not view.years:
            return _to_flag(scene, view, cell, plan.hidden, 1 if key == "tab" else -1)
        case "space":
            return here.but(open=not view.open)
    return None


def _zoomed(key: str, standing: Standing, view: View) -> View:
    """The other switch; the cursor stays on its day where that can be seen, and on its lane."""
    if key == "plus":
        other = view.but(days=not view.days)
    elif view.years:
        other = view.but(years=False, row=max(FIRST_ROW, view.top) if view.row >= 0 else -1, top=0)
    else:
        lane = max(FIRST_ROW, view.row)
        other = view.but(years=True, top=lane, row=0 if view.row >= 0 else -1)
    return other.but(cell=same_day(view, standing, other), open=False)


def _within(cell: int, first: int) -> int:
    return max(first, min(COUNT - 1, cell))


def _to_flag(scene: Scene, view: View, cell: int, first: int, way: int) -> View | None:
    """The next cell in which a flag rose, round the end; None where there is none."""
    found = {scene.cells.at(flag.rose.toordinal()) for flag in flags(scene)}
    stops = sorted(at for at in found if at is not None and at >= first)
    if not stops:
        return None
    here = cell if view.row >= 0 else (-1 if way > 0 else COUNT)
    if way > 0:
        target = next((at for at in stops if at > here), stops[0])
    else:
        target = next((at for at in reversed(stops) if at < here), stops[-1])
    return view.but(row=0, cell=target)
