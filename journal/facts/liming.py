"""How much lime goes down at once, and what weak lime is worth."""

from journal.facts.citation import Basis, Citation, Known
from journal.facts.factors import g_per_m2

_VIRGINIA = Citation(
    "virginia-452-717",
    "Virginia Cooperative Extension",
    "452-717 (SPES-306P), soil test note on lawns",
    None,
    "pubs.ext.vt.edu/452/452-717/452-717.html",
)
_OREGON = Citation(
    "oregon-liming",
    "Oregon State Univ.",
    "Tall fescue monograph, Liming",
    None,
    "forages.oregonstate.edu/tallfescuemonograph/turf/cultural_practices/liming",
)
_PENN_STATE = Citation(
    "penn-state-maintain",
    "Penn State Agricultural Analytical Services Lab",
    "Home Lawn - Maintain",
    None,
    "agsci.psu.edu/aasl/online-report/home-lawn-maintain",
)

DOSE = g_per_m2(50)
DOSE_BASIS = Basis(Known.PUBLISHED, (_VIRGINIA, _OREGON), "again after one to six months")
"""The most lime in one dose on living grass."""

LARGE_DOSE = g_per_m2(100)
LARGE_DOSE_BASIS = Basis(Known.PUBLISHED, (_PENN_STATE,), "split four to six months apart")
"""The most that any publication seen allows at once."""

STRENGTH_BASIS = Basis(Known.PUBLISHED, (_PENN_STATE,))
"""A lime's weight is the recommended weight x 100 / its calcium carbonate equivalent in percent."""

FULL_STRENGTH = 100.0
"""Percent: pure calcium carbonate, by which recommendations are written."""
