"""Where in the line the word stands that a refusal quotes."""

import re
from collections.abc import Sequence

from journal.line.token import Token


def locate(text: str, tokens: Sequence[Token], word: str, at: int = 1) -> tuple[int, int] | None:
    """Start and end of the word (or of several in a row), looked for from the at-th on, then before; or None.

    Whole words come before parts of words.
    """
    wanted = " ".join(word.casefold().split())
    if not wanted:
        return None
    at = min(at, len(tokens))
    places = [*range(at, len(tokens)), *range(at)]
    for first in places:
        found = _run(tokens, first, wanted)
        if found:
            return found
    pattern = re.compile(r"\s+".join(re.escape(part) for part in word.split()), re.IGNORECASE)
    for first in places:
        within = pattern.search(text, tokens[first].start)
        if within:
            return within.span()
    return None


def _run(tokens: Sequence[Token], first: int, wanted: str) -> tuple[int, int] | None:
    said = ""
    for token in tokens[first:]:
        said = f"{said} {' '.join(token.word.split())}".strip()
        if said == wanted:
            return tokens[first].start, token.end
        if not wanted.startswith(said):
            return None
    return None
