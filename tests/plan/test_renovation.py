"""The plan of a whole renovation, week by week, as a lawn keeper would read it."""

import os
from datetime import date
from pathlib import Path

from journal.plan.step import Step
from journal.plan.steps import steps
from journal.season.history import History
from tests.plan.renovation import mondays, story
from tests.scenario import day

GOLDEN = Path(__file__).parent / "golden" / "renovation.txt"
REWRITE = "SWARDBOOK_REWRITE_GOLDEN"
"""Set this variable to write the file anew after a change that is meant; then read it."""


def _written(found: Step) -> list[str]:
    dates = " ".join(
        f"{name} {when:%d %b %y}" for name, when in (("from", found.earliest), ("by", found.latest)) if when is not None
    )
    if found.best:
        dates += f" (best {found.best[0]:%d %b} to {found.best[1]:%d %b})"
    lines = [f"  {found.state:<8}{found.title:<15}{', '.join(found.zones):<13}{dates}"]
    more = (("why:", found.why), ("waits for:", found.waits_for), ("how much:", found.amount), (">", found.line))
    lines += [f"{'':10}{name} {words}" for name, words in more if words]
    return lines


def _story(book: History, first: date, last: date) -> str:
    lines: list[str] = []
    for monday in mondays(first, last):
        lines.append(f"{monday:%A} {monday.day} {monday:%B %Y}")
        for found in steps(book, monday):
            lines += _written(found)
        lines.append("")
    return "\n".join(lines)


def test_the_plan_reads_right_from_one_summer_to_the_next() -> None:
    told = _story(story(), day("2026-07-01"), day("2027-06-30"))
    if os.environ.get(REWRITE):
        GOLDEN.write_text(told, encoding="utf-8")
    assert told == GOLDEN.read_text(encoding="utf-8")
