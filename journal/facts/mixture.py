"""What holds for a mixture of grasses: a mapping of grass name (or alias) to percent by weight, 0 to 100.

Shares need not add up to 100: a seed label also counts inert matter. Names of one grass are added together.
An empty mixture, or one with `unknown` in it, is a lawn whose grass is not known.
"""

import math
from collections.abc import Mapping

from journal.facts.grasses import FINE_FESCUE, KENTUCKY_BLUEGRASS, UNKNOWN, Grass, grass

Mixture = Mapping[str, float]

COUNTS_FROM_PERCENT = 10.0
SAME_SEED_POINTS = 5.0
_ROUNDING = 1e-9


def shares(mix: Mixture) -> dict[str, float]:
    """Percent by the grass's standard name, largest first, nothing at zero.

    Raises UnknownGrass for a name not known, ValueError for a share that is no percentage.
    """
    total: dict[str, float] = {}
    for name, percent in mix.items():
        if not (math.isfinite(percent) and 0 <= percent <= 100):
            raise ValueError(f"{name} {percent}: a share is from 0 to 100 %.")
        if percent > 0:
            kind = grass(name).name
            total[kind] = total.get(kind, 0.0) + percent
    return dict(sorted(total.items(), key=lambda item: (-item[1], item[0])))


def _present(mix: Mixture) -> list[Grass]:
    return [grass(name) for name in shares(mix)] or [UNKNOWN]


def _counting(mix: Mixture) -> list[Grass]:
    """The grasses of at least 10 %, or the largest where none reaches that."""
    parts = shares(mix)
    return [grass(n) for n, p in parts.items() if p >= COUNTS_FROM_PERCENT - _ROUNDING] or _present(mix)[:1]


def low_end_mm(mix: Mixture) -> float:
    """The lowest cut that every grass of at least 10 % bears: the highest of their low ends, in mm."""
    return max(kind.low_cut_mm for kind in _counting(mix))


def high_end_mm(mix: Mixture) -> float:
    """The highest cut that suits any grass in it: the highest of their high ends, in mm."""
    return max(kind.high_cut_mm for kind in _present(mix))


def slowest_emergence_days(mix: Mixture) -> int:
    """Days from sowing until the slowest grass in it is assumed to be up."""
    return max(kind.emergence_days for kind in _present(mix))


def slowest(mix: Mixture) -> Grass:
    """The grass that is last to come up; its `emergence_basis` says how the days are known."""
    return max(_present(mix), key=lambda kind: kind.emergence_days)


def is_unknown(mix: Mixture) -> bool:
    """True when any of it is not known, or nothing is named."""
    return UNKNOWN in _present(mix)


def bluegrass_percent(mix: Mixture) -> float:
    """The share of Kentucky bluegrass that is known, 0 to 100; nothing is added for an unknown grass."""
    return shares(mix).get(KENTUCKY_BLUEGRASS.name, 0.0)


def has_bluegrass(mix: Mixture) -> bool:
    """True with any Kentucky bluegrass in it; an unknown lawn is taken to have some."""
    return is_unknown(mix) or bluegrass_percent(mix) > 0


def fine_fescue_percent(mix: Mixture) -> float:
    """The share of the fine fescues together, 0 to 100."""
    return shares(mix).get(FINE_FESCUE.name, 0.0)


def nitrogen_cap(mix: Mixture) -> Grass:
    """The grass whose yearly nitrogen cap holds: fine fescue's above half of the mix, else bluegrass's.

    A lawn of one grass has that grass's own cap.
    """
    parts = _present(mix)
    if len(parts) == 1:
        return parts[0]
    return FINE_FESCUE if fine_fescue_percent(mix) > 50 else KENTUCKY_BLUEGRASS


def overlap_percent(a: Mixture, b: Mixture) -> float:
    """How much two mixtures share: over all grasses the smaller percentage, summed. Unknown shares nothing."""
    left, right = shares(a), shares(b)
    return sum(min(left[name], right[name]) for name in left if name in right and name != UNKNOWN.name)


def same_seed(a: Mixture, b: Mixture, points: float = SAME_SEED_POINTS) -> bool:
    """True for the same grasses, each share within `points` percentage points. Never true of an unknown mixture."""
    if is_unknown(a) or is_unknown(b):
        return False
    left, right = shares(a), shares(b)
    if left.keys() != right.keys():
        return False
    return all(abs(left[name] - right[name]) <= points + _ROUNDING for name in left)
