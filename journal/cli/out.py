"""Printing: results on standard output, trouble on standard error."""

import json
import sys
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from journal.line.reading import Reading

DONE, STANDS, UNUSABLE = 0, 1, 2
"""Exit codes: done; what was asked for stands (damage, a flag, a line held back); the input could not be used."""


def show(text: str) -> None:
    """To standard output."""
    print(text)


def show_json(document: Any) -> None:
    """One document to standard output."""
    print(json.dumps(document, ensure_ascii=False, indent=2))


def trouble(text: str) -> int:
    """To standard error; the exit code for input that could not be used."""
    print(f"swardbook: {text}", file=sys.stderr)
    return UNUSABLE


def point(reading: "Reading") -> int:
    """The problem of a line, with the line as typed and a mark under the word in question."""
    problem = reading.problem
    if problem is None:
        return trouble("the line is not finished.")
    text = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in reading.text)
    if len(text) > 200 or not text.strip():
        return trouble(str(problem))
    mark = " " * problem.start + "^" * max(1, min(problem.end, len(text)) - problem.start)
    return trouble(f"{problem}\n  {text}\n  {mark.rstrip()}")
