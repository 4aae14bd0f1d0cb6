"""The gravest flags in words, where there is room for them beside the plan."""

from functools import partial

from journal.screens.level import LEVEL_INKS
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Span, Target
from journal.screens.rows import left
from journal.screens.telling import beneath, details
from journal.screens.today.steps import where
from journal.standing import Standing


def draw_flags(paper: Paper, standing: Standing, most: int, *, full: bool) -> None:
    """A row a flag: level, rule, zones, headline, how it clears; `full` with why and what to do under it."""
    flags = [flag for flag in standing.flags if not paper.view.zone or paper.view.zone in flag.zones or not flag.zones]
    if not flags or most < 1:
        return
    paper.add()
    paper.heading("FLAGS")
    for flag in flags[:most]:
        row = (
            Span(" "),
            Span(left(flag.level.value, 5), LEVEL_INKS[flag.level]),
            Span(left(flag.rule, 18), Ink.STRONG),
            Span(f" {left(where(flag.zones, standing.lawn), 16)} "),
            Span(flag.headline),
            Span("" if full else f"   clears with {flag.clears}", Ink.DIM),
        )
        paper.stop(
            row,
            Target(0, flag=flag.id),
            details=partial(details, flag, standing, paper.width, whole=True),
            beneath=beneath(flag, standing, paper.width) if full else (),
        )
    if len(flags) > most:
        paper.add((Span(" "), Span(f"{len(flags) - most} more on page 3", Ink.DIM)))
