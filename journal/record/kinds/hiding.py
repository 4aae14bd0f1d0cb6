"""Putting a flag out of sight: for a while, or for good with a reason. It hides, it does not clear."""

from dataclasses import dataclass
from datetime import date
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import rule_name, target_day


@entry_kind("snooze", Verb("snooze", "hide a flag for a while", "snooze mow-gap 7d"), lawnwide=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Snooze(Entry):
    """Hides `flag` (a rule's id or one flag's) in its zones before `until`."""

    flag: str = rule_name()
    until: date | None = target_day()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A snooze names its flag and its end."""
        if not values.get("flag"):
            raise Refusal("snooze", "which flag? Write it like snooze mow-gap 7d.")
        if values.get("until") is None:
            raise Refusal("snooze", "for how long? Write it like 7d, or a date.")
        if values["until"] <= values["date"]:
            raise Refusal("until", "a flag can't be hidden until a day gone by.")


@entry_kind(
    "aside",
    Verb("aside", "set a flag aside, with a reason", "aside seed-switch front -- wanted a darker blend"),
    lawnwide=True,
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Aside(Entry):
    """Hides `flag` in its zones from now on; the remark is the reason."""

    flag: str = rule_name()

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A flag set aside has a name and a reason."""
        if not values.get("flag"):
            raise Refusal("aside", "which flag? Write it like aside seed-switch front -- reason.")
        if not values.get("remark"):
            raise Refusal("aside", "a reason is wanted, after two dashes: -- reason.")
