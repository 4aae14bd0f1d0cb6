"""Cutting the grass."""

from dataclasses import dataclass

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.slot import choice, measure
from journal.record.unit import Dimension


@entry_kind("mowing", Verb("mow", "cut the grass", "mow 3in bag front 40min", pin="m", bare=True))
@dataclass(frozen=True, slots=True, kw_only=True)
class Mowing(Entry):
    """Height of cut, what became of the clippings, and the time it took."""

    height_mm: float | None = measure(Dimension.LENGTH, usual=True, low=5, high=300)
    clippings: str = choice("bag", "return", "scatter", usual=True)
    minutes: float | None = measure(Dimension.MINUTES, usual=True, low=1, high=1440)
