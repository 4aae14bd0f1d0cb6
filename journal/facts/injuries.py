"""Which lawn grasses an active is said to injure. Labels differ: the owner's label goes first."""

from dataclasses import dataclass

from journal.facts.actives import UnknownActive, active
from journal.facts.citation import Basis, memory
from journal.facts.mixture import COUNTS_FROM_PERCENT, Mixture, shares
from journal.facts.sources import published


@dataclass(frozen=True, slots=True)
class Injury:
    """`active` injures `grass`, both by standard name.

    Worth a note only: seen in `one_trial`, or at a `high_rate`; of `seedlings` where the grass is not new.
    """

    active: str
    grass: str
    basis: Basis
    one_trial: bool = False
    high_rate: bool = False
    seedlings: bool = False


_MEMORY = memory()
_HIGH_RATE = memory("at a high rate")
_PHENOXY = published("pnw-broadleaf", "label-80081")
_TRIAL = published("hortscience-2008", note="one trial")

INJURIES: tuple[Injury, ...] = (
    Injury("mesotrione", "bentgrass", published("hortscience-2008")),
    Injury("mesotrione", "fine fescue", published("delaware-spring", note="seedlings"), seedlings=True),
    Injury("mesotrione", "bermudagrass", _MEMORY),
    Injury("mesotrione", "zoysiagrass", _MEMORY),
    Injury("mesotrione", "rough bluegrass", _MEMORY),
    Injury("mesotrione", "tall fescue", _TRIAL, one_trial=True),
    Injury("topramezone", "bermudagrass", _MEMORY),
    Injury("topramezone", "bentgrass", _MEMORY),
    Injury("topramezone", "zoysiagrass", _MEMORY),
    Injury("2,4-d", "bentgrass", _PHENOXY),
    Injury("2,4-d", "rough bluegrass", _PHENOXY),
    Injury("2,4-d", "centipedegrass", _PHENOXY),
    Injury("2,4-d", "st. augustinegrass", _PHENOXY),
    Injury("mecoprop-p", "bentgrass", _HIGH_RATE, high_rate=True),
    Injury("dicamba", "bentgrass", _HIGH_RATE, high_rate=True),
    Injury("dicamba", "fine fescue", _HIGH_RATE, high_rate=True),
    Injury("triclopyr", "bermudagrass", _MEMORY),
    Injury("triclopyr", "bentgrass", _MEMORY),
    Injury("triclopyr", "zoysiagrass", _MEMORY),
    Injury("triclopyr", "kentucky bluegrass", _TRIAL, one_trial=True),
    Injury("quinclorac", "bentgrass", memory("seedlings"), seedlings=True),
    Injury("quinclorac", "fine fescue", _MEMORY),
    Injury("quinclorac", "st. augustinegrass", _MEMORY),
    Injury("quinclorac", "centipedegrass", _MEMORY),
    Injury("sulfentrazone", "fine fescue", _MEMORY),
    Injury("sulfentrazone", "bentgrass", _MEMORY),
    Injury("sulfentrazone", "st. augustinegrass", _MEMORY),
    Injury("fenoxaprop", "kentucky bluegrass", published("delaware-escapes", note="it may discolour"), one_trial=True),
    Injury("fenoxaprop", "bentgrass", _MEMORY),
    Injury("pendimethalin", "bentgrass", _MEMORY),
    Injury("siduron", "bermudagrass", _MEMORY),
    Injury("siduron", "bentgrass", memory("some kinds of bentgrass")),
)


def injured(active_name: str, lawn: Mixture) -> tuple[Injury, ...]:
    """What an active is said to do to the grasses of at least 10 % of a lawn; nothing for an active not known."""
    try:
        name = active(active_name).name
    except UnknownActive:
        return ()
    here = {grass for grass, percent in shares(lawn).items() if percent >= COUNTS_FROM_PERCENT}
    return tuple(one for one in named(name) if one.grass in here)


def named(active_name: str) -> tuple[Injury, ...]:
    """Every grass that an active, by its standard name, is said to injure."""
    return tuple(one for one in INJURIES if one.active == active_name)
