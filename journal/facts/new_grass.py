"""How old new grass must be before a product against weeds, insects or disease: by its actives, else by its kind."""

from collections.abc import Iterable
from dataclasses import dataclass

from journal.facts.actives import active, fallback, is_active
from journal.facts.citation import Basis
from journal.facts.mixture import Mixture, fine_fescue_percent, shares


@dataclass(frozen=True, slots=True)
class NewGrassWait:
    """Days after emergence and mowings from day 21 on, both; `never` for what kills grass.

    `by` is the active or actives that decide, or `kind`.
    """

    days: int
    mowings: int
    by: str
    basis: Basis
    never: bool = False

    @property
    def none(self) -> bool:
        """Whether nothing is waited for."""
        return not (self.days or self.mowings or self.never)


def new_grass_wait(actives: Iterable[str], kind: str) -> NewGrassWait:
    """The longest of both over all the actives; by kind where none is named.

    An active not known here counts as an unknown product of that kind. Raises ValueError for another kind.
    """
    waits = [_by_active(name, kind) for name in actives if name.strip()] or [_by_kind(kind)]
    longest = max(waits, key=lambda wait: (wait.never, wait.days, wait.mowings))
    most = max(waits, key=lambda wait: (wait.mowings, wait.days))
    by = longest.by if longest.mowings >= most.mowings else f"{longest.by} and {most.by}"
    if not longest.days and not longest.never:
        longest, by = most, most.by
    return NewGrassWait(longest.days, most.mowings, by, longest.basis, longest.never)


def _by_active(name: str, kind: str) -> NewGrassWait:
    if not is_active(name):
        return _by_kind(kind)
    one = active(name)
    return NewGrassWait(
        one.new_grass_days_after_emergence, one.new_grass_mowings, one.name, one.new_grass_basis, one.never_on_turf
    )


def _by_kind(kind: str) -> NewGrassWait:
    unknown = fallback(kind)
    return NewGrassWait(
        unknown.new_grass_days_after_emergence, unknown.new_grass_mowings, "kind", unknown.basis, unknown.never_on_turf
    )


def goes_down_with(actives: Iterable[str], sown: Mixture) -> bool:
    """Whether every active in it may go down with that seed: listed for each grass, and not too much fine fescue."""
    named = [name for name in actives if name.strip()]
    grasses = list(shares(sown))
    return bool(named and grasses) and all(_with_seed(name, grasses, sown) for name in named)


def _with_seed(name: str, grasses: list[str], sown: Mixture) -> bool:
    if not is_active(name):
        return False
    one = active(name)
    limit = one.fescue_limit_percent
    if limit is not None and fine_fescue_percent(sown) >= limit:
        return False
    return all(one.listed_wait(kind) == 0 for kind in grasses)
