"""House numbers of soil, phosphorus and lime."""

from journal.facts.number import Number

SOIL: tuple[Number, ...] = ()
