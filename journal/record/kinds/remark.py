"""Anything else worth a line."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import text


@entry_kind("remark", Verb("note", "anything else", "note moles along the fence", pin="n"), lawnwide=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Remark(Entry):
    """Free words."""

    text: str = text()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A note says something."""
        if not values.get("text"):
            raise Refusal("note", "what? Write the words after it.")
