"""House numbers of what follows an application: people, water and clippings."""

from journal.facts.number import Number

PEOPLE: tuple[Number, ...] = ()
