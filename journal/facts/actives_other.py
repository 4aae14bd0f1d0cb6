"""Actives that kill all plants, and those against insects and lawn disease."""

from journal.facts.active import FROM_MEMORY, Active, Use
from journal.facts.citation import memory
from journal.facts.factors import mm
from journal.facts.grasses import Span
from journal.facts.sources import judgment, published

_NO_SEED_RULE = memory("no wait before sowing is known")
_ONCE = memory("once a year")

OTHERS: tuple[Active, ...] = (
    Active(
        "glyphosate", Use.NONSELECTIVE, "HRAC 9", published("pnw-seedbed"),
        7, published("mercury-2020", "nebraska-2021", note="most labels 7 days; one column says 10 to 14"),
        0, 0, judgment("it kills turf"), True, never_on_turf=True,
        repeat_days=Span(14, 28),
        repeat_basis=judgment("14 to 28 days is from memory; 21 days apart is printed", "delaware-renovation"),
    ),
    Active(
        "chlorantraniliprole", Use.INSECT, "IRAC 28", FROM_MEMORY, None, _NO_SEED_RULE, 0, 0, FROM_MEMORY, False,
        max_per_year=1, yearly_lb_per_acre=0.5, year_basis=_ONCE,
        water_in_mm=mm(0.5), water_basis=published("illinois-220"),
    ),
    Active(
        "imidacloprid", Use.INSECT, "IRAC 4A", published("umn-insecticides"), None, _NO_SEED_RULE,
        0, 0, FROM_MEMORY, False,
        max_per_year=1, yearly_lb_per_acre=0.4, year_basis=_ONCE,
        water_in_mm=mm(0.5), water_basis=published("illinois-220"),
    ),
    Active(
        "trichlorfon", Use.INSECT, "IRAC 1B", FROM_MEMORY, None, _NO_SEED_RULE,
        0, 4, judgment("as an unknown insect product"), False,
        max_per_year=2, year_basis=judgment(), water_in_mm=mm(0.5), water_basis=published("illinois-243"),
    ),
    Active(
        "azoxystrobin", Use.DISEASE, "FRAC 11", published("uc-fungicides"), None, _NO_SEED_RULE,
        0, 0, memory("seedlings usually bear it"), True,
        repeat_days=Span(28, 28),
        repeat_basis=published("ncsu-brown-patch", note="21 to 28 days for sprays; the upper end"),
    ),
    Active(
        "propiconazole", Use.DISEASE, "FRAC 3", published("gcm-2018"), None, _NO_SEED_RULE,
        0, 2, judgment("care with seedlings; as an unknown disease product"), True,
        repeat_days=Span(14, 28), repeat_basis=FROM_MEMORY,
    ),
)  # fmt: skip
