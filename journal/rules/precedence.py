"""Which flag yields to which: one table, for every pair of which only one may stand.

A rule named here that does not exist changes nothing. What a rule can see for itself (a feeding that is held, a
seedbed that is not mown) it says itself by its silence; the table holds what only shows when two have spoken.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from journal.rules.flag import Flag, Level
from journal.rules.numbers import LABEL


class Where(StrEnum):
    """On what both must stand for the one to yield: the zone, or an entry that is evidence of both."""

    ZONE = "zone"
    ENTRY = "entry"


@dataclass(frozen=True, slots=True)
class Yields:
    """`loser` is dropped where `winner` stands; with `only`, at that level alone; `by_default`, if no label decides."""

    loser: str
    winner: str
    where: Where
    only: Level | None = None
    by_default: bool = False


_ZONE, _ENTRY = Where.ZONE, Where.ENTRY

TABLE: tuple[Yields, ...] = (
    # a zone is mown too early, too late for the first time, or too late again: one of them
    Yields("mow-first-late", "mow-first-early", _ZONE),
    Yields("mow-gap", "mow-first-early", _ZONE),
    Yields("mow-gap", "mow-first-late", _ZONE),
    Yields("mow-gap", "dormant-thirst", _ZONE),
    # clippings: the label, then what was sprayed on them, then habit
    Yields("mow-clippings", "clippings-treated", _ZONE),
    # feeding: a new stand is fed by its age
    Yields("feed-overdue", "starter-missing", _ZONE),
    Yields("feed-overdue", "seedling-feed", _ZONE),
    Yields("seedling-feed", "starter-missing", _ZONE),
    Yields("feed-overdue", "dormant-thirst", _ZONE),
    Yields("starter-wrong", "seed-over-residue", _ENTRY),
    Yields("starter-wrong", "new-grass-treatment", _ENTRY),
    # lime and phosphorus: one of them for one entry
    Yields("soil-test-stale", "phosphate-reason", _ENTRY),
    Yields("soil-test-stale", "lime-dose", _ENTRY),
    Yields("soil-test-stale", "lime-urea", _ENTRY),
    Yields("lime-urea", "lime-dose", _ENTRY),
    # seed and what was sprayed before it
    Yields("barrier-before-seed", "seed-over-residue", _ZONE),
    Yields("barrier-missed", "new-grass-treatment", _ZONE),
    Yields("broadleaf-missed", "new-grass-treatment", _ZONE),
    # water: what runs after an application comes before the habit
    Yields("water-deficit", "dormant-thirst", _ZONE),
    Yields("water-week", "dormant-thirst", _ZONE),
    Yields("water-often", "water-in-missing", _ZONE),
    # nothing is reckoned from an amount that is not there; what a label limits is, for each product of a tank alone
    *(
        Yields(loser, "amount-missing", _ENTRY)
        for loser in ("feed-dose", "feed-year", "rate-off", "seed-rate", "lime-dose")
    ),
    # one card for a label that was not entered
    *(
        Yields(loser, "label-unknown", _ENTRY, only=Level.NOTE, by_default=True)
        for loser in ("label-interval", "label-year-count", "label-year-amount", "wash-off")
    ),
    Yields("treat-hot", "treat-dormant", _ENTRY),
)  # fmt: skip


def settled(flags: Iterable[Flag]) -> tuple[Flag, ...]:
    """The flags of one day, one zone each, without those that yield to another; in the order in which they came."""
    standing = tuple(flags)
    return tuple(flag for flag in standing if not any(_beats(other, flag) for other in standing))


def _beats(winner: Flag, loser: Flag) -> bool:
    return any(
        row.winner == winner.rule
        and row.loser == loser.rule
        and row.only in (None, loser.level)
        and not (row.by_default and any(one.origin == LABEL for one in loser.numbers.values()))
        and _meet(row.where, winner, loser)
        for row in TABLE
    )


def _meet(where: Where, one: Flag, other: Flag) -> bool:
    if not set(one.zones) & set(other.zones):
        return False
    return where is Where.ZONE or bool(set(one.evidence) & set(other.evidence))
