"""The text of a file as rows of cells, each with the number of its line."""

import csv
import io
from collections.abc import Iterator

from journal.record.refusal import Refusal

MARKS = (",", ";", "\t")


def rows(text: str) -> list[tuple[int, list[str]]]:
    """(line, cells) of every row that is neither blank nor a remark (`#`); cells without blanks around them.

    Raises Refusal naming the line that is not a row of cells, and for a text that has none.
    """
    text = text.removeprefix("\ufeff")
    at = text.find("\0")
    if at >= 0:
        raise Refusal(f"line {text.count(chr(10), 0, at) + 1}", "this is no text: it holds a NUL.")
    mark = _mark(text)
    found = list(_cells(text, mark))
    if not found:
        raise Refusal("", "the file is empty.")
    return found


def _cells(text: str, mark: str) -> Iterator[tuple[int, list[str]]]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=mark, strict=True)
    try:
        for cells in reader:
            stripped = [cell.strip() for cell in cells]
            if any(stripped) and not stripped[0].startswith("#"):
                yield reader.line_num, [_dotted(cell) for cell in stripped] if mark == ";" else stripped
    except csv.Error as error:
        raise Refusal(f"line {reader.line_num}", f"not a row of cells: {error}.") from None


def _mark(text: str) -> str:
    """What parts the cells: the mark that the first row has most of."""
    first = next((line for line in text.splitlines() if line.strip() and not line.startswith("#")), "")
    return max(MARKS, key=first.count)


def _dotted(cell: str) -> str:
    """Where semicolons part the cells, a comma may be the decimal mark."""
    whole, comma, rest = cell.partition(",")
    return f"{whole}.{rest}" if comma and whole.lstrip("+-").isdigit() and rest.isdigit() else cell
