"""Saying no: which word, why, and what was probably meant."""

from collections.abc import Iterable


class Refusal(Exception):
    """A word that can't be used. `word` is quoted back, `why` is a sentence, `suggestion` a word or ''."""

    def __init__(self, word: str, why: str, suggestion: str = "") -> None:
        super().__init__(word, why, suggestion)
        self.word = word
        self.why = why
        self.suggestion = suggestion

    def __str__(self) -> str:
        tail = f" Did you mean {self.suggestion}?" if self.suggestion else ""
        return f"{self.word}: {self.why}{tail}" if self.word else f"{self.why}{tail}"


def nearest(word: str, names: Iterable[str]) -> str:
    """The name closest to `word` by edit distance, or '' when none is close."""
    word = word.casefold()
    if len(word) < 2:
        return ""
    best, least = "", max(1, len(word) // 3) + 1
    for name in names:
        if abs(len(name) - len(word)) >= least:
            continue
        distance = _distance(word, name.casefold())
        if distance < least:
            best, least = name, distance
    return best


def _distance(a: str, b: str) -> int:
    """Edits between two words: insert, delete, replace, or swap two neighbours."""
    before: list[int] = []
    row = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        earlier, before, row = before, row, [i]
        for j, y in enumerate(b, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, earlier[j - 2] + 1)
            row.append(cost)
    return row[-1]
