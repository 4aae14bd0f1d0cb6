"""LAST: what was written down, newest first. COMING UP: what opens after that."""

from datetime import date
from functools import partial

from journal.line.say import say
from journal.line.words import summary
from journal.plan.step import State, Step
from journal.record.day import MONTHS, WEEKDAYS
from journal.record.entry import Entry
from journal.record.kinds.intention import PLANS, Intention
from journal.record.kinds.weather import Weather
from journal.record.lawn import Lawn
from journal.screens.newest import newest
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import filled, left
from journal.screens.today.ruler import closed
from journal.screens.today.steps import of_zone, short, where
from journal.screens.today.waiting import Wait, waits
from journal.season.stand import intentions
from journal.standing import Standing


def draw_latest(paper: Paper, standing: Standing, rows: int) -> None:
    """So many entries, each a stop; beside them, where there is room, what comes next."""
    # A day's weather is taken in by the hundred and would leave no room for what was done.
    entries = newest(standing.history, standing.as_of, max(1, rows), paper.view.zone, without=Weather.kind)
    if not entries:
        return
    beside = coming_up(standing, paper.view.zone, rows) if paper.width >= 110 else []
    half = paper.width // 2 if beside else paper.width
    paper.add()
    head: Row = (Span(" "), Span("LAST", Ink.TITLE))
    paper.add((*filled(head, half), Span("COMING UP", Ink.TITLE)) if beside else head)
    for at in range(max(len(entries), min(len(beside), rows))):
        other = beside[at] if at < len(beside) else EMPTY_ROW
        if at < len(entries):
            entry = entries[at]
            row = entry_row(entry, standing.lawn, standing.as_of)
            paper.stop(
                (*filled(row, half - 3), Span("   "), *other) if beside else row,
                Target(0, entry=entry.id),
                lit=1,
                main=False,
                line=partial(say, entry, standing.lawn),
            )
        else:
            paper.add((Span(" " * half), *other))


def entry_row(entry: Entry, lawn: Lawn, as_of: date) -> Row:
    """`Sun  2 May  rain    0.3 in`; of another year its number stands for the weekday: ` 2 May 2026`."""
    day = entry.date
    about = "~" if entry.about else " "
    words = f"{day.day:>2} {MONTHS[day.month - 1].title()}"
    words = f"{WEEKDAYS[day.weekday()].title()} {words} " if day.year == as_of.year else f"{words} {day.year}"
    remark = f"  -- {entry.remark}" if entry.remark else ""
    return (
        Span(" "),
        Span(f"{words}{about}"),
        Span(f" {left(entry.kind, 12)} ", Ink.DIM),
        Span(summary(entry, lawn)),
        Span(remark, Ink.DIM),
    )


def coming_up(standing: Standing, zone: str, most: int) -> list[Row]:
    """Steps that open later than today and what else is meant to be done, by their day."""
    steps = [step for step in of_zone(standing.steps, zone) if _later(step, standing)]
    rows = [(wait.first.earliest or standing.as_of, _ahead(wait, standing)) for wait in waits(steps, standing.lawn)]
    planned = {step.step for step in steps}
    rows += [
        (day, _meant(one, day, standing.lawn)) for one, day in _intentions(standing, zone) if one.what not in planned
    ]
    return [row for _, row in sorted(rows, key=lambda pair: pair[0])[:most]]


def _intentions(standing: Standing, zone: str) -> list[tuple[Intention, date]]:
    """Those still standing whose day lies ahead."""
    zones = (zone,) if zone else standing.lawn.zone_names
    pasts = [standing.history.on(name, standing.as_of) for name in zones]
    found = {one.id: one for past in pasts for what in PLANS for one in intentions(past, what)}
    return [(one, one.target) for one in found.values() if one.target and one.target > standing.as_of]


def _meant(one: Intention, day: date, lawn: Lawn) -> Row:
    product = f" {one.product}" if one.product else ""
    return (
        Span(f"{short(day):>6}  "),
        Span(f"{one.what}{product} {where(one.zones, lawn)}", Ink.AHEAD),
        Span("  meant", Ink.DIM),
    )


def _later(step: Step, standing: Standing) -> bool:
    return step.earliest is not None and step.earliest > standing.as_of and step.state is not State.DONE


def _ahead(wait: Wait, standing: Standing) -> Row:
    step = wait.first
    words = f"{step.title or step.step} {where(wait.zones, standing.lawn)}".strip()
    more = []
    if step.best is not None:
        more.append(f"best {short(step.best[0])} to {short(step.best[1])}")
    if step.latest is not None:
        more.append(f"by {short(step.latest)}")
    tail = f"  {', '.join(more)}" if more else ""
    day = short(step.earliest) if step.earliest is not None else ""
    ink = Ink.BARRED if closed(step, standing.as_of) else Ink.AHEAD
    return Span(f"{day:>6}  "), Span(words, ink), Span(tail, Ink.DIM)
