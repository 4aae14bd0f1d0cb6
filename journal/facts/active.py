"""One active ingredient and what is published of it; and the waits of a product whose actives are not known."""

from dataclasses import dataclass
from enum import StrEnum

from journal.facts.citation import Basis, memory
from journal.facts.grasses import Span


class Use(StrEnum):
    """What a product is used for."""

    PRE_EMERGENT = "pre-emergent"
    WEED = "weed"
    WEED_AND_FEED = "weed-and-feed"
    NONSELECTIVE = "nonselective"
    INSECT = "insect"
    DISEASE = "disease"


@dataclass(frozen=True, slots=True)
class Active:
    """What to assume of an active while the owner's label has not been entered; the label always goes first.

    Waits are whole days from the use to the sowing: a wait of N is over on day N. None means that no such rule is
    known. `wait_by_grass` overrides `seed_wait_days` for the grasses named; `fescue_limit_percent` is the share of
    fine fescue from which a mix no longer counts as listed. `water_in_mm` is the depth that takes it into the soil.
    """

    name: str
    use: Use
    group: str
    group_basis: Basis
    seed_wait_days: int | None
    seed_basis: Basis
    new_grass_days_after_emergence: int
    new_grass_mowings: int
    new_grass_basis: Basis
    leaf_applied: bool
    aliases: tuple[str, ...] = ()
    wait_by_grass: tuple[tuple[str, int], ...] = ()
    listed_basis: Basis | None = None
    fescue_limit_percent: float | None = None
    fescue_basis: Basis | None = None
    seed_wait_split_days: int | None = None
    split_basis: Basis | None = None
    seed_wait_trial_slit_days: int | None = None
    slit_basis: Basis | None = None
    never_on_turf: bool = False
    repeat_days: Span | None = None
    repeat_basis: Basis | None = None
    max_per_year: int | None = None
    yearly_lb_per_acre: float | None = None
    year_basis: Basis | None = None
    water_in_mm: float | None = None
    water_basis: Basis | None = None
    home_lawn: bool = True

    def listed_wait(self, grass: str) -> int | None:
        """Days before sowing a grass that is listed for it, by standard name; None for one that is not."""
        return dict(self.wait_by_grass).get(grass)

    def bases(self) -> tuple[Basis, ...]:
        """Every basis it carries."""
        some = (
            self.group_basis, self.seed_basis, self.new_grass_basis, self.listed_basis, self.fescue_basis,
            self.split_basis, self.slit_basis, self.repeat_basis, self.year_basis, self.water_basis,
        )  # fmt: skip
        return tuple(basis for basis in some if basis is not None)


@dataclass(frozen=True, slots=True)
class Fallback:
    """What to assume of a product whose actives are not known, deliberately slow. `seed_wait_days` None: no rule."""

    use: Use
    seed_wait_days: int | None
    new_grass_days_after_emergence: int
    new_grass_mowings: int
    never_on_turf: bool
    repeat_days: int
    max_per_year: int
    leaf_applied: bool
    basis: Basis


FROM_MEMORY = memory()
