"""A publication, and how a number is known: published, label, local rule, practice, memory or judgment."""

from dataclasses import dataclass
from enum import StrEnum


@dataclass(frozen=True, slots=True)
class Citation:
    """One publication. `year` is None where the page carries no date; `address` has no scheme before it."""

    key: str
    publisher: str
    title: str
    year: int | None
    address: str

    def __post_init__(self) -> None:
        if not (self.publisher and self.title):
            raise ValueError(f"{self.key}: a citation names its publisher and its title.")

    def words(self) -> str:
        """Publisher, title and year, as a reader would want to look it up."""
        year = f", {self.year}" if self.year else ""
        return f"{self.publisher}, {self.title}{year}"

    def as_json(self) -> dict[str, str | int | None]:
        """Keys: key, publisher, title, year (or null), address."""
        return {
            "key": self.key,
            "publisher": self.publisher,
            "title": self.title,
            "year": self.year,
            "address": self.address,
        }


class Known(StrEnum):
    """How a number is known, strongest first."""

    LABEL = "label"
    LOCAL_RULE = "local rule"
    PUBLISHED = "published"
    PRACTICE = "common practice"
    MEMORY = "memory"
    JUDGMENT = "judgment"


_WORDS = {
    Known.LABEL: "the product's own label",
    Known.LOCAL_RULE: "local rule",
    Known.PUBLISHED: "published",
    Known.PRACTICE: "common practice, no source",
    Known.MEMORY: "from memory, not confirmed",
    Known.JUDGMENT: "judgment",
}


@dataclass(frozen=True, slots=True)
class Basis:
    """How one number is known.

    A published number cites at least one publication; a judgment may cite those it leans on; no other kind does.
    `note` is half a sentence for what a reader must know too: who disagrees, which end of a range was taken.
    """

    kind: Known
    citations: tuple[Citation, ...] = ()
    note: str = ""

    def __post_init__(self) -> None:
        if self.kind is Known.PUBLISHED and not self.citations:
            raise ValueError("a published number cites at least one publication.")
        if self.citations and self.kind not in (Known.PUBLISHED, Known.JUDGMENT):
            raise ValueError(f"a number known by {self.kind} cites no publication.")

    def words(self) -> str:
        """One short sentence for a flag: how it is known, the first publication, the note."""
        text = _WORDS[self.kind]
        if self.citations:
            text = self.citations[0].words()
            if len(self.citations) > 1:
                text += f" (and {len(self.citations) - 1} more)"
            if self.kind is Known.JUDGMENT:
                text = f"{_WORDS[Known.JUDGMENT]}, leaning on {text}"
        return f"{text}; {self.note}" if self.note else text

    def as_json(self) -> dict[str, object]:
        """Keys: kind, words, note, citations (a list of `Citation.as_json`)."""
        return {
            "kind": str(self.kind),
            "words": self.words(),
            "note": self.note,
            "citations": [citation.as_json() for citation in self.citations],
        }


def label(note: str = "") -> Basis:
    """The number stands on the label of the owner's own product."""
    return Basis(Known.LABEL, note=note)


def local_rule(note: str = "") -> Basis:
    """The number stands in a law or ordinance that the owner has entered."""
    return Basis(Known.LOCAL_RULE, note=note)


def practice(note: str = "") -> Basis:
    """What the trade commonly does; no publication was found."""
    return Basis(Known.PRACTICE, note=note)


def memory(note: str = "") -> Basis:
    """Remembered from extension or label practice and not confirmed."""
    return Basis(Known.MEMORY, note=note)
