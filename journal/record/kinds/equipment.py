"""The mower's blade."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.slot import mark, preset


@entry_kind(
    "equipment",
    Verb("sharpen", "sharpen the blade", "sharpen", what="sharpen"),
    Verb("blade", "a new blade", "blade new", what="blade new"),
    lawnwide=True,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Equipment(Entry):
    """What was done to the mower."""

    what: str = preset()
    new: bool = mark("new")

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """`blade` is always a new one."""
        values["new"] = values.get("what") == "blade new"
