"""House numbers of water and drought."""

from journal.facts.number import Number

WATER: tuple[Number, ...] = ()
