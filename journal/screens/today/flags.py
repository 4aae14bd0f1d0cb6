"""The gravest flags in words, where there is room for them beside the plan."""

from functools import partial

from journal.rules.cards import cards
from journal.rules.flag import Level
from journal.screens.level import LEVEL_INKS
from journal.screens.paper import Paper
from journal.screens.picture import Ink, Span, Target
from journal.screens.rows import cut, left
from journal.screens.telling import beneath, clearing, details
from journal.screens.today.steps import where
from journal.standing import Standing


def draw_flags(paper: Paper, standing: Standing, most: int, *, full: bool) -> None:
    """A row a card: level, rule, zones, headline, how it clears, what else is said of the same entry.

    `full`: with why and what to do under it.
    """
    flags = [flag for flag in standing.flags if not paper.view.zone or paper.view.zone in flag.zones or not flag.zones]
    if not flags or most < 1:
        return
    paper.add()
    paper.heading("FLAGS")
    table = cards(flags)
    for card in table[:most]:
        flag, more = card.head, ", ".join(line.rule for line in card.lines)
        row = (
            Span(" "),
            Span(left(flag.level.value, 5), LEVEL_INKS[flag.level]),
            Span(left(flag.rule, 18), Ink.STRONG),
            Span(f" {left(where(flag.zones, standing.lawn), 16)} "),
            Span(flag.headline),
            Span(f"   also {more}" if more else "", Ink.DIM),
            Span("" if full or more else f"   {clearing(flag, flag.clears, standing.as_of)}", Ink.DIM),
        )
        paper.stop(
            row,
            Target(0, flag=flag.id),
            details=partial(details, flag, standing, paper.width, whole=True),
            beneath=beneath(flag, standing, paper.width) if full else (),
        )
    if len(table) > most:
        paper.add((Span(" "), Span(f"{sum(len(card.flags) for card in table[most:])} more on page 3", Ink.DIM)))


def draw_hidden_harm(paper: Paper, standing: Standing) -> None:
    """Harm stays in sight in small, whoever put it aside."""
    for flag in standing.hidden:
        if flag.level is Level.HARM and (not paper.view.zone or not flag.zones or paper.view.zone in flag.zones):
            row = (
                Span(" "),
                Span("harm ", Ink.HARM),
                Span(f"{flag.rule} {where(flag.zones, standing.lawn)}".rstrip(), Ink.DIM),
                Span(f"  {flag.hidden}", Ink.DIM),
            )
            paper.add(cut(row, paper.width))
