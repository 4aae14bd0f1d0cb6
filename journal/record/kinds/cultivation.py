"""Opening the soil: coring, dethatching, topdressing, raking."""

from dataclasses import dataclass

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.slot import mark, measure, preset
from journal.record.unit import Dimension


@entry_kind(
    "cultivation",
    Verb("aerate", "pull cores", "aerate 2x front", what="aerate"),
    Verb("dethatch", "take thatch out", "dethatch front", what="dethatch"),
    Verb("topdress", "spread compost or sand", "topdress 0.25in front", what="topdress"),
    Verb("rake", "rake or scratch the surface", "rake back", what="rake"),
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Cultivation(Entry):
    """What was done, in how many passes, how deep. `rental` marks a hired machine."""

    what: str = preset()
    passes: float | None = measure(Dimension.TIMES, low=1, high=20)
    depth_mm: float | None = measure(Dimension.LENGTH, low=0.5, high=200)
    rental: bool = mark("rental")
