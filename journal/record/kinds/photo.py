"""A picture of the lawn."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import path, point


@entry_kind(
    "photo", Verb("photo", "a picture, from a fixed point", "photo PATH from gate front", pin="p"), everywhere=True
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Photo(Entry):
    """The file's path as given, and the point it was taken from."""

    file: str = path()
    point: str = point()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A photo names its file."""
        if not values.get("file"):
            raise Refusal("photo", "which file? Write its path, in quotes if it has blanks.")
