"""Flags, steps and entries in words, for the terminal."""

import textwrap
from collections.abc import Iterable
from datetime import date

from journal.line.words import summary
from journal.plan.step import Step
from journal.record.day import spoken
from journal.record.entry import Entry
from journal.record.lawn import Lawn
from journal.rules.flag import Flag

WIDTH = 80


def flag_text(flag: Flag, today: date) -> str:
    """The level and headline, then why, what to do, what clears it, and on what authority."""
    zones = ", ".join(flag.zones)
    head = f"{flag.level.value:<5} {flag.rule}{f'  {zones}' if zones else ''}  {flag.headline}"
    rows = [("why", flag.why), ("do", flag.do), ("clears", flag.clears)]
    if flag.numbers:
        rows.append(("number", "; ".join(f"{name} {n.words} ({n.origin})" for name, n in flag.numbers.items())))
    rows.append(("basis", "; ".join(basis.words() for basis in flag.basis)))
    if flag.hidden:
        rows.append(("hidden", flag.hidden))
    rows.append(("rose", f"{spoken(flag.rose, today)}   id {flag.id}"))
    return "\n".join([*_wrapped("", head, 6), *(line for name, text in rows for line in _wrapped(name, text, 15))])


def _wrapped(name: str, text: str, indent: int) -> list[str]:
    first = f"      {name:<8} " if name else ""
    return textwrap.wrap(first + text, WIDTH, subsequent_indent=" " * indent, drop_whitespace=True) or [first]


def step_text(step: Step, today: date) -> str:
    """One step in two or three rows: state, what, when, how much, the line that logs it."""
    when = [f"{word} {spoken(day, today)}" for word, day in (("from", step.earliest), ("by", step.latest)) if day]
    head = f"{step.state.value:<8}{step.title or step.step}  {', '.join(step.zones)}  {' '.join(when)}"
    rows = [head.rstrip()]
    for name, text in (("why", step.why), ("much", step.amount), ("waits", step.waits_for), ("line", step.line)):
        if text:
            rows += _wrapped(name, text, 15)
    return "\n".join(rows)


def entry_text(entry: Entry, lawn: Lawn) -> str:
    """One row: date, kind, what, the end of the id."""
    remark = f" -- {entry.remark}" if entry.remark else ""
    about = "~" if entry.about else " "
    return f"{about}{entry.date.isoformat()}  {entry.kind:<11} {summary(entry, lawn)}{remark}  [{entry.id[-6:]}]"


def table(rows: Iterable[tuple[str, ...]]) -> str:
    """Columns side by side, each as wide as its widest cell."""
    cells = list(rows)
    widths = [max(len(row[i]) for row in cells) for i in range(len(cells[0]))] if cells else []
    return "\n".join("  ".join(c.ljust(w) for c, w in zip(row, widths, strict=True)).rstrip() for row in cells)
