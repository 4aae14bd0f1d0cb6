"""Things seen: a measured height, an observation, a count."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import measure, subject
from journal.record.unit import Dimension

STATES = (
    "emerged", "traffic", "dormant", "green", "frozen", "snow", "thawed", "flowering", "no-flowers", "dry", "sick",
    "exposure", "sign", "sign-down",
)  # fmt: skip
WEEDS = (
    "crabgrass", "goosegrass", "foxtail", "annual-bluegrass", "nutsedge", "broadleaf", "dandelion", "clover",
    "plantain", "chickweed", "ground-ivy", "violet", "spurge", "thistle", "oxalis", "knotweed", "moss", "weeds",
)  # fmt: skip
TROUBLES = (
    "red-thread", "dollar-spot", "brown-patch", "leaf-spot", "rust", "snow-mold", "powdery-mildew", "pythium",
    "necrotic-ring", "summer-patch", "fairy-ring", "mushrooms", "grubs", "chinch-bugs", "billbugs", "webworms",
    "armyworms", "ants", "moles", "damage", "thatch", "compaction", "bare", "thin", "puddle", "wash", "yellow",
    "burn", "scalp", "shade", "stripes", "wilt", "dog-spots",
)  # fmt: skip
SUBJECTS = STATES + WEEDS + TROUBLES
COUNTED = ("grubs", "chinch-bugs", "billbugs", "webworms", "armyworms", "dandelion", "weeds", "cores")


@entry_kind("height", Verb("height", "grass height, measured", "height 3.6in front", pin="h"), everywhere=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Height(Entry):
    """The standing height of the grass before a cut."""

    height_mm: float | None = measure(Dimension.LENGTH, low=1, high=2000)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A height has a number."""
        if values.get("height_mm") is None:
            raise Refusal("height", "how high? Write it like 3.6in or 90mm.")


@entry_kind("sighting", Verb("see", "something seen", "see red-thread 10% back", pin="s"), everywhere=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Sighting(Entry):
    """What was seen, over how much of the zone."""

    subject: str = subject(SUBJECTS)
    percent: float | None = measure(Dimension.PERCENT, high=100)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A sighting names what was seen."""
        if not values.get("subject"):
            raise Refusal("see", "what was seen? One of the known words, or write `note ...` for anything else.")


@entry_kind("count", Verb("count", "a count of something", "count grubs 4/sqft back", pin="c"), everywhere=True)
@dataclass(frozen=True, slots=True, kw_only=True)
class Count(Entry):
    """How many, per area."""

    subject: str = subject(COUNTED)
    per_m2: float | None = measure(Dimension.COUNT_RATE)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """A count has a subject and a number per area."""
        if not values.get("subject") or values.get("per_m2") is None:
            raise Refusal("count", "what, and how many? Write it like count grubs 4/sqft.")
