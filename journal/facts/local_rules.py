"""What a law on lawn fertilizer asks: closed days, most nitrogen, reasons for phosphorus, distance from water.

Nothing here is advice on the law. Stored copies of the texts were read, which may be out of date, and towns, counties
and lake districts can ask more: whatever is shown of it is shown with `CHECK` and the day it was read.
"""

from collections.abc import Iterator
from dataclasses import dataclass, fields, replace
from datetime import date
from enum import StrEnum
from typing import Generic, TypeVar

from journal.facts.citation import Basis, Citation, Known, local_rule
from journal.record.day import MonthDay

T = TypeVar("T")

READ = date(2026, 11, 25)
"""The day on which the texts of all sets built in were read."""

CHECK = "Check with your local authority."


@dataclass(frozen=True, slots=True)
class Stated(Generic[T]):
    """One thing a law says, and how that is known.

    A judgment here means that the publications it leans on were read and contradict each other, or that the law has
    changed since: it is as little confirmed as a memory.
    """

    value: T
    basis: Basis

    @property
    def confirmed(self) -> bool:
        """Whether it was read in a publication, or entered by the owner."""
        return self.basis.kind in (Known.PUBLISHED, Known.LOCAL_RULE)


class Binds(StrEnum):
    """Whom a law speaks to. What does not bind owners is shown to them and never held against them."""

    OWNERS = "whoever feeds the lawn, owners too"
    HIRED = "those who are hired to do it, not owners"
    SELLERS = "those who sell fertilizer, not owners"
    LABELS = "what a label has to say; the label binds you"


class Closes(StrEnum):
    """What a closed day is closed to."""

    NITROGEN = "nitrogen"
    PHOSPHORUS = "phosphorus"
    BOTH = "nitrogen and phosphorus"
    ANY = "any fertilizer"


@dataclass(frozen=True, slots=True)
class Closed:
    """First and last closed day, both in it; it may cross the new year. 29 February goes with the 28th.

    `above_n_g_per_m2`: only a feeding of more nitrogen than that is meant; 0 means any.
    """

    first: MonthDay
    last: MonthDay
    closes: Closes = Closes.BOTH
    above_n_g_per_m2: float = 0.0

    def holds(self, day: date) -> bool:
        """Whether that day is one of them."""
        today = MonthDay(day.month, 28 if (day.month, day.day) == (2, 29) else day.day)
        if self.first <= self.last:
            return self.first <= today <= self.last
        return today >= self.first or today <= self.last

    def shuts(self, *, nitrogen: bool, phosphorus: bool) -> bool:
        """Whether a product that brings these is meant; one that brings neither is only by `any fertilizer`."""
        return (
            self.closes is Closes.ANY
            or (nitrogen and self.closes in (Closes.NITROGEN, Closes.BOTH))
            or (phosphorus and self.closes in (Closes.PHOSPHORUS, Closes.BOTH))
        )


class Sowing(StrEnum):
    """Which sowing is a reason for phosphorus where no soil test asks for it."""

    ANY = "overseeding, repair or renovation is a reason, and so is a new lawn"
    NEW = "only a new lawn is a reason; overseeding is not named and so is taken as none"
    NONE = "sowing is no reason; only a soil test is"
    UNKNOWN = "which sowing is a reason is not known; taken as none"


@dataclass(frozen=True, slots=True, kw_only=True)
class LocalRules:
    """One set. Amounts in g/m2 of the nutrient, shares 0 to 1, distances in mm; None where nothing was seen of it.

    None does not mean that there is none: absence was not proven.

    What may weigh how much (`holds` and `heeds` say it of each number):
    - closed days, most nitrogen and most soluble nitrogen at once, the least slow share: confirmed ones bind and may
      raise harm; others hold a feeding back, or lower an amount offered, where they are stricter, and raise nothing.
    - the year's most, the buffer and the months of a soil test: the same; a buffer that is not confirmed is a note.
    - a confirmed wording on phosphorus wants a reason for it, and may raise harm.
    - sowing as a reason for phosphorus is read out of wordings; where overseeding is not named it is a judgment that
      it is none: it turns the starter offered into plain nitrogen and raises a note at most.
    - every other wording is only shown.
    """

    id: str
    place: str
    reference: str
    binds: Binds = Binds.OWNERS
    read: date | None = READ
    certainty: str = ""
    citations: tuple[Citation, ...] = ()
    closed: tuple[Stated[Closed], ...] = ()
    ground: Stated[str] | None = None
    most_n_g_per_m2: Stated[float] | None = None
    most_soluble_n_g_per_m2: Stated[float] | None = None
    year_n_g_per_m2: Stated[float] | None = None
    least_slow_share: Stated[float] | None = None
    slow_in_granules_only: bool = False
    phosphorus: Stated[str] | None = None
    phosphate_percent: Stated[float] | None = None
    soil_test_months: Stated[int] | None = None
    sowing: Stated[Sowing] | None = None
    sign_hours: Stated[float] | None = None
    """A sign goes up before a product against weeds, insects or disease, and stays for so many hours."""
    buffer_mm: Stated[float] | None = None
    buffer_careful_mm: Stated[float] | None = None
    """With a drop spreader, a deflector or a targeted spray."""
    water: Stated[str] | None = None
    """What else it says of water."""
    paving: Stated[str] | None = None
    further: tuple[Stated[str], ...] = ()

    def heeds(self, stated: Stated[T] | None) -> T | None:
        """The value where it speaks to owners, confirmed or not: what an offer keeps to on the cautious side."""
        if stated is None or (self.binds is not Binds.OWNERS and stated.basis.kind is not Known.LOCAL_RULE):
            return None
        return stated.value

    def holds(self, stated: Stated[T] | None) -> T | None:
        """The value where it binds owners and is confirmed: only such a one may raise harm."""
        return self.heeds(stated) if stated is not None and stated.confirmed else None

    def stated(self) -> Iterator[Stated[object]]:
        """Everything it says."""
        for field in fields(self):
            value = getattr(self, field.name)
            yield from (one for one in (value if isinstance(value, tuple) else (value,)) if isinstance(one, Stated))


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnRules:
    """What the owner has entered of the rules of the place; None where nothing. Units as in `LocalRules`."""

    closed: tuple[MonthDay, MonthDay] | None = None
    most_n_g_per_m2: float | None = None
    most_soluble_n_g_per_m2: float | None = None
    year_n_g_per_m2: float | None = None
    least_slow_share: float | None = None
    buffer_mm: float | None = None
    soil_test_months: int | None = None
    seeding: bool | None = None
    sign_hours: float | None = None


_NAMELESS = LocalRules(
    id="own", place="your own local rules", reference="as you entered them", read=None, certainty="yours"
)


def laid_over(own: OwnRules, named: LocalRules | None) -> LocalRules:
    """The owner's own numbers in the place of the set's, field by field, be they stricter or not.

    The owner can look the law up and the set cannot. Closed days of one's own take the place of all the set's, and
    close nitrogen and phosphorus; a buffer of one's own also that of careful spreading.
    """
    rules = _NAMELESS if named is None else named
    if own.closed is not None:
        rules = replace(rules, closed=(_yours(Closed(*own.closed)),))
    if own.most_n_g_per_m2 is not None:
        rules = replace(rules, most_n_g_per_m2=_yours(own.most_n_g_per_m2))
    if own.most_soluble_n_g_per_m2 is not None:
        rules = replace(rules, most_soluble_n_g_per_m2=_yours(own.most_soluble_n_g_per_m2))
    if own.year_n_g_per_m2 is not None:
        rules = replace(rules, year_n_g_per_m2=_yours(own.year_n_g_per_m2))
    if own.least_slow_share is not None:
        rules = replace(rules, least_slow_share=_yours(own.least_slow_share), slow_in_granules_only=False)
    if own.buffer_mm is not None:
        rules = replace(rules, buffer_mm=_yours(own.buffer_mm), buffer_careful_mm=None)
    if own.soil_test_months is not None:
        rules = replace(rules, soil_test_months=_yours(own.soil_test_months))
    if own.seeding is not None:
        rules = replace(rules, sowing=_yours(Sowing.ANY if own.seeding else Sowing.NEW))
    if own.sign_hours is not None:
        rules = replace(rules, sign_hours=_yours(own.sign_hours))
    return rules


def _yours(value: T) -> Stated[T]:
    return Stated(value, local_rule("as you entered it"))
