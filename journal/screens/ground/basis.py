"""How a number is known, in a word and in full."""

from journal.facts.citation import Basis, Known

_SHORT = {
    Known.LABEL: "label", Known.LOCAL_RULE: "local rule", Known.PUBLISHED: "published", Known.PRACTICE: "practice",
    Known.MEMORY: "from memory", Known.JUDGMENT: "judgment",
}  # fmt: skip


def basis_short(basis: Basis) -> str:
    """How a number is known, in a word or two."""
    return _SHORT[basis.kind]


def basis_in_full(basis: Basis) -> list[tuple[str, str]]:
    """(name, words): how it is known, then every publication with where it can be read."""
    said = [("basis", basis.words() if not basis.citations else f"{_SHORT[basis.kind]}; {basis.note}".rstrip("; "))]
    said += [
        ("source", f"{one.words()}; {one.address}" if one.address else one.words()) for one in basis.citations
    ]  # fmt: skip
    return said
