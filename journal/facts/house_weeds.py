"""House numbers of weeds, insects and their seasons."""

from journal.facts.number import Number

WEEDS: tuple[Number, ...] = ()
