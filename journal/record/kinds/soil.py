"""A soil test."""

from dataclasses import dataclass
from typing import Any

from journal.record.entry import Entry, Verb, entry_kind
from journal.record.refusal import Refusal
from journal.record.slot import choice, measure
from journal.record.unit import Dimension

CATEGORIES = ("very-low", "low", "medium", "high", "very-high")


@entry_kind(
    "soil-test", Verb("soil", "a soil test's figures", "soil ph 6.1 p low k 95ppm om 4.2% front"), everywhere=True
)
@dataclass(frozen=True, slots=True, kw_only=True)
class SoilTest(Entry):
    """Figures as the laboratory gave them; its category for phosphorus and potassium where it gave one."""

    ph: float | None = measure(Dimension.NUMBER, keyword="ph")
    p: str = choice(*CATEGORIES, keyword="p")
    p_ppm: float | None = measure(Dimension.PPM, keyword="p")
    k: str = choice(*CATEGORIES, keyword="k")
    k_ppm: float | None = measure(Dimension.PPM, keyword="k")
    om_percent: float | None = measure(Dimension.PERCENT, keyword="om", high=100)

    @classmethod
    def settle(cls, values: dict[str, Any]) -> None:
        """At least one figure, and a pH that soil can have."""
        if not any(values.get(name) not in (None, "") for name in ("ph", "p", "p_ppm", "k", "k_ppm", "om_percent")):
            raise Refusal("soil", "which figures? Write them like ph 6.1 p low k 95ppm om 4.2%.")
        ph = values.get("ph")
        if ph is not None and not 3 <= ph <= 11:
            raise Refusal("ph", "soil lies between pH 3 and 11.")
