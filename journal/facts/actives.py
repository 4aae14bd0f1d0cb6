"""The actives known here by name, what to assume of an unknown product, and the waits before sowing."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import lru_cache
from types import MappingProxyType

from journal.facts.active import Active, Fallback, Use
from journal.facts.actives_barrier import BARRIERS
from journal.facts.actives_other import OTHERS
from journal.facts.actives_weed import WEEDS
from journal.facts.citation import Basis
from journal.facts.mixture import Mixture, fine_fescue_percent, shares
from journal.facts.sources import judgment

ACTIVES: tuple[Active, ...] = (*WEEDS, *BARRIERS, *OTHERS)


class UnknownActive(LookupError):
    """No active of that name. `word` is what was asked for, `suggestion` the nearest name known, or ""."""

    def __init__(self, word: str, suggestion: str) -> None:
        self.word = word
        self.suggestion = suggestion
        hint = f" Did you mean {suggestion}?" if suggestion else ""
        super().__init__(f"{word} is not an active known here.{hint}")


@lru_cache(maxsize=512)
def _plain(word: str) -> str:
    return re.sub(r"\s+", " ", word.strip().casefold())


_BY_NAME: Mapping[str, Active] = MappingProxyType(
    {_plain(name): one for one in ACTIVES for name in (one.name, *one.aliases)}
)


def active(name: str) -> Active:
    """The active of that name or alias, whatever the case. Raises UnknownActive with one suggestion."""
    found = _BY_NAME.get(_plain(name))
    if found is None:
        near = get_close_matches(_plain(name), _BY_NAME, n=1, cutoff=0.7)
        raise UnknownActive(name, _BY_NAME[near[0]].name if near else "")
    return found


def is_active(name: str) -> bool:
    """True for the name or alias of an active known here."""
    return _plain(name) in _BY_NAME


_SLOW = "a slow default for an unknown product; enter the label"
_FALLBACKS: Mapping[Use, Fallback] = MappingProxyType(
    {
        one.use: one
        for one in (
            Fallback(Use.PRE_EMERGENT, 210, 60, 4, False, 60, 2, False, judgment(_SLOW)),
            Fallback(Use.WEED, 28, 28, 4, False, 28, 2, True, judgment(_SLOW)),
            Fallback(
                Use.WEED_AND_FEED, 28, 28, 4, False, 28, 2, True,
                judgment("read as a broadleaf product; with a crabgrass preventer in it the wait is far longer"),
            ),
            Fallback(
                Use.NONSELECTIVE, 365, 0, 0, True, 14, 2, True,
                judgment("it may hold a lasting active; with the label or the actives entered the wait is shorter"),
            ),
            Fallback(Use.INSECT, None, 0, 4, False, 90, 1, False, judgment(_SLOW)),
            Fallback(Use.DISEASE, None, 0, 2, False, 14, 2, True, judgment("2 in a row of one group; " + _SLOW)),
        )
    }
)  # fmt: skip


def fallback(kind: str) -> Fallback:
    """What to assume of a product of that kind whose actives are not known. Raises ValueError for another kind."""
    return _FALLBACKS[Use(kind)]


@dataclass(frozen=True, slots=True)
class SeedWait:
    """Days from the last use to the sowing; over on day `days`. `by` is the active that decides, or `kind`."""

    days: int
    by: str
    basis: Basis


NO_WAIT_BY = "no rule"


def seed_wait(actives: Iterable[str], kind: str, sown: Mixture) -> SeedWait:
    """The longest wait over all the actives for sowing `sown` after one use; by kind where no active is named.

    An active not known here counts as an unknown product of that kind. Days 0 by "no rule" where nothing sets a
    wait. Raises ValueError for another kind, UnknownGrass for a grass in the mix that is not known.
    """
    return _longest([_by_active(name, kind, sown) for name in _named(actives)] or [_by_kind(kind)])


def seed_wait_after_split(actives: Iterable[str], kind: str, sown: Mixture) -> SeedWait:
    """As `seed_wait`, after a second use within 90 days of the first: the split value where it is longer."""
    names = _named(actives)
    return _longest([seed_wait(names, kind, sown), *(wait for name in names for wait in _after_split(name))])


def slit_trial_wait(actives: Iterable[str]) -> SeedWait | None:
    """The wait that a trial found for slit-seeding, the longest over the actives; None where none was tried.

    Slit-seeded ground waits at least this long, even after a label with a shorter wait.
    """
    tried = [wait for name in _named(actives) for wait in _slit_trial(name)]
    return _longest(tried) if tried else None


def _longest(waits: list[SeedWait]) -> SeedWait:
    return max(waits, key=lambda wait: wait.days)


def _named(actives: Iterable[str]) -> list[str]:
    return [name for name in actives if name.strip()]


def _by_kind(kind: str) -> SeedWait:
    unknown = fallback(kind)
    if unknown.seed_wait_days is None:
        return SeedWait(0, NO_WAIT_BY, unknown.basis)
    return SeedWait(unknown.seed_wait_days, "kind", unknown.basis)


def _by_active(name: str, kind: str, sown: Mixture) -> SeedWait:
    if not is_active(name):
        return _by_kind(kind)
    one = active(name)
    if one.seed_wait_days is None:
        return SeedWait(0, NO_WAIT_BY, one.seed_basis)
    return max((_for_grass(one, grass, sown) for grass in shares(sown) or {"": 0.0}), key=lambda wait: wait.days)


def _for_grass(one: Active, grass: str, sown: Mixture) -> SeedWait:
    limit = one.fescue_limit_percent
    too_much_fescue = limit is not None and fine_fescue_percent(sown) >= limit
    listed = one.listed_wait(grass)
    if listed is None or too_much_fescue:
        return SeedWait(one.seed_wait_days or 0, one.name, one.seed_basis)
    return SeedWait(listed, one.name, one.listed_basis or one.seed_basis)


def _after_split(name: str) -> list[SeedWait]:
    one = active(name) if is_active(name) else None
    if one is None or one.seed_wait_split_days is None or one.split_basis is None:
        return []
    return [SeedWait(one.seed_wait_split_days, one.name, one.split_basis)]


def _slit_trial(name: str) -> list[SeedWait]:
    one = active(name) if is_active(name) else None
    if one is None or one.seed_wait_trial_slit_days is None or one.slit_basis is None:
        return []
    return [SeedWait(one.seed_wait_trial_slit_days, one.name, one.slit_basis)]
