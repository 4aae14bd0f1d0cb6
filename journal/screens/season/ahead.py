"""What lies ahead: the plan's steps as hollow windows, `[` earliest, `=` best, `-` allowed, `]` latest."""

from collections.abc import Collection, Sequence
from datetime import date

from journal.plan.step import State, Step
from journal.screens.picture import Ink
from journal.screens.season.figures import day_words, zone_words
from journal.screens.season.mark import Mark, Said
from journal.screens.season.scene import Scene

WEIGHT = 8.0
OVER = (State.DONE, State.MISSED)


def steps(scene: Scene, names: Sequence[str], zones: Collection[str]) -> tuple[Step, ...]:
    """Steps of these names that are still to be done in these zones, as urgent as the plan has them."""
    return tuple(
        step
        for step in scene.standing.steps
        if step.step in names
        and step.state not in OVER
        and (not step.zones or any(zone in zones for zone in step.zones))
    )


def ahead(scene: Scene, names: Sequence[str], zones: Collection[str] = ()) -> dict[int, Mark]:
    """Cell -> mark, for the cells after the date judged. Where windows overlap the more urgent step shows.

    `zones` are those meant, where not all that are shown.
    """
    found: dict[int, Mark] = {}
    for step in steps(scene, names, zones or scene.zones):
        for cell in range(scene.now + 1, len(scene.cells.starts) - 1):
            mark = _mark(scene, step, cell)
            if mark is not None:
                found.setdefault(cell, mark)
    return found


def _mark(scene: Scene, step: Step, cell: int) -> Mark | None:
    if step.earliest is None:
        return None
    first, last = scene.cells.span(cell)
    opens = step.earliest.toordinal()
    end = step.latest or (step.best[1] if step.best else step.earliest)
    closes = max(opens, end.toordinal())
    if last < opens or first > closes:
        return None
    best = step.best is not None and step.best[0].toordinal() <= last and step.best[1].toordinal() >= first
    core = "=" if best else "-"
    opening, closing = first <= opens, last >= closes
    if opening and closing:
        return Mark((f"[{core}]", "[]", "=" if best else "["), Ink.AHEAD, core, WEIGHT)
    if opening:
        return Mark(("[",), Ink.AHEAD, core, WEIGHT)
    if closing:
        return Mark((f"{core}{core}]", f"{core}]", "]"), Ink.AHEAD, weight=WEIGHT)
    return Mark((core,), Ink.AHEAD, core, WEIGHT)


def told(scene: Scene, names: Sequence[str], cell: int) -> tuple[Said, ...]:
    """The steps whose window touches a cell ahead; in the cell that is now, all that are still to be done."""
    if cell < scene.now:
        return ()
    found = steps(scene, names, scene.zones)
    return tuple(_said(scene, step) for step in found if cell == scene.now or _mark(scene, step, cell))


def _said(scene: Scene, step: Step) -> Said:
    head = f"{step.title or step.step} {zone_words(scene.lawn, step.zones)}".strip()
    waits = "" if step.waits_for.startswith("opens") else step.waits_for
    tail = "; ".join(part for part in (step.why, step.amount, waits, _dates(scene, step, best=True)) if part)
    first = step.why if step.state is State.LATE else ""
    short = ", ".join(part for part in (first, _dates(scene, step, best=False) or waits or step.why) if part)
    return Said(
        f"{head}: {tail}." if tail else f"{head}.", _word(step), Ink.LATE if step.state is State.LATE else Ink.AHEAD,
        line=step.line, brief=f"{head}: {short}." if short else f"{head}.", ahead=True,
    )  # fmt: skip


def _word(step: Step) -> str:
    return {State.WAITING: "soon", State.BARRED: "not yet"}.get(step.state, step.state.value)


def _dates(scene: Scene, step: Step, *, best: bool) -> str:
    def day(when: date) -> str:
        return day_words(when.toordinal(), scene.today)

    if step.earliest is None:
        return ""
    parts = [f"opens {day(step.earliest)}"] if step.earliest > scene.standing.as_of else []
    if step.best is not None and best:
        parts.append(f"best {day(step.best[0])} to {day(step.best[1])}")
    if step.latest is not None:
        parts.append(f"by {day(step.latest)}")
    return ", ".join(parts)
