"""A shed with products against weeds, and the garden's diary around them."""

from journal.season.history import History
from tests.plan.garden import PRODUCTS, kept

SHED: dict[str, dict[str, str]] = PRODUCTS | {
    "spring-wall": {"kind": "pre-emergent", "actives": "prodiamine", "form": "granule", "rate": "2lb/k 3lb/k"},
    "leaf-off": {"kind": "weed", "actives": "2,4-d", "form": "liquid", "rate": "1.1floz/k 1.5floz/k"},
}
SHORT = SHED["spring-wall"] | {"to_seed": "120d"}


def grown(*lines: str, lawn: dict[str, str] | None = None, **changes: object) -> History:
    """The book of a lawn that was sown long ago."""
    usual: dict[str, object] = {"products": SHED, "set_up": "2025-01-01"}
    return kept(*lines, lawn={"renovated": "2020-09-01"} | (lawn or {}), **(usual | changes))
