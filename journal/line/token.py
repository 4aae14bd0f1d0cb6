"""A line cut into words, each with its place, and the remark after two dashes."""

import re
from dataclasses import dataclass

_WORD = re.compile(r"\"((?:[^\"]|\"\")*)\"(?=\s|$)|'([^']*)'(?=\s|$)|(\S+)")
_TAIL = re.compile(r"(^|\s)!\s*$")
REMARK = "--"
CONFIRM = "!"


@dataclass(frozen=True, slots=True)
class Token:
    """One word as meant (without its quotes) and where it stands in the line as typed."""

    text: str
    start: int
    end: int
    quoted: bool = False

    @property
    def word(self) -> str:
        """Case-folded, for comparing."""
        return self.text.casefold()


@dataclass(frozen=True, slots=True)
class Cut:
    """The words before the remark, the remark, and whether the line ends in ` !`."""

    tokens: tuple[Token, ...]
    remark: str
    remark_at: int
    confirmed: bool


def cut(text: str) -> Cut:
    """Cut a line at blanks; quotes keep words together; `--` begins the remark, a last ` !` is the confirmation."""
    tokens = words(text)
    tail = _TAIL.search(text)
    confirmed = tail is not None
    end = tail.start() if tail else len(text)
    dashes = next((at for at, token in enumerate(tokens) if token.text == REMARK and not token.quoted), len(tokens))
    if dashes < len(tokens) and tokens[dashes].start < end:
        after = tokens[dashes].end
        return Cut(tokens[:dashes], text[after : max(after, end)].strip(), tokens[dashes].start, confirmed)
    return Cut(tuple(token for token in tokens if token.start < end), "", -1, confirmed)


def unconfirmed(text: str) -> str:
    """The line without its ` !`: that was said of what it then was, and is said anew of what becomes of it."""
    return _TAIL.sub("", text)


def words(text: str) -> tuple[Token, ...]:
    """Only the words, with no remark taken off. A double quote inside double quotes is written twice."""
    tokens = []
    for match in _WORD.finditer(text):
        double, single, bare = match.groups()
        inside = double.replace('""', '"') if double is not None else single if single is not None else bare
        tokens.append(Token(inside, match.start(), match.end(), bare is None))
    return tuple(tokens)


def quote(text: str) -> str:
    """A text as it must be typed to be read back as one word that is never taken for anything else."""
    doubled = text.replace('"', '""')
    return f'"{doubled}"'
