"""When the lawn grows by default and how long it may go between cuts."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.facts.citation import Known
from journal.facts.growth import cut_gap, default_growth
from journal.facts.house import number


def test_growth_runs_from_three_weeks_before_the_last_frost_to_five_after_the_first() -> None:
    growth = default_growth(date(2026, 5, 6), date(2026, 10, 5))
    assert (growth.first, growth.last) == (date(2026, 4, 15), date(2026, 11, 9))
    assert growth.basis.kind is Known.JUDGMENT


def test_frosts_out_of_order_are_refused() -> None:
    with pytest.raises(ValueError, match="after the average last frost"):
        default_growth(date(2026, 10, 5), date(2026, 5, 6))


@pytest.mark.parametrize(
    ("day", "days", "kind"),
    [
        (date(2026, 5, 20), 10, Known.PRACTICE),
        (date(2026, 6, 30), 10, Known.PRACTICE),
        (date(2026, 7, 1), 14, Known.JUDGMENT),
        (date(2026, 8, 31), 14, Known.JUDGMENT),
        (date(2026, 9, 1), 10, Known.PRACTICE),
        (date(2026, 10, 1), 14, Known.JUDGMENT),
        (date(2026, 10, 19), 14, Known.JUDGMENT),
        (date(2026, 10, 20), 21, Known.MEMORY),
        (date(2026, 11, 9), 21, Known.MEMORY),
        (date(2026, 11, 10), 10, Known.PRACTICE),
    ],
)
def test_days_between_cuts_through_the_year(day: date, days: int, kind: Known) -> None:
    gap = cut_gap(day, date(2026, 11, 9))
    assert (gap.days, gap.basis.kind) == (days, kind)


def test_the_summer_gap_leans_on_purdue_ay_8() -> None:
    assert [c.key for c in cut_gap(date(2026, 7, 9), date(2026, 11, 9)).basis.citations] == ["purdue-ay8"]


@given(st.dates(date(2000, 1, 1), date(2040, 12, 31)))
def test_a_gap_is_always_one_of_the_house_numbers(day: date) -> None:
    gap = cut_gap(day, date(day.year, 11, 9))
    assert number("mow-gap", gap.number).default == gap.days
