"""The house numbers: defaults, units, ranges, and where each comes from."""

import pytest

from journal.facts.citation import Known
from journal.facts.factors import celsius, g_per_m2, mm
from journal.facts.house import NUMBERS, by_slow_share, number, numbers
from journal.facts.number import Number

UNITS = {"d", "m/s", "mm", "g/m2", "C", "%", "x", "/m2", "min"}


@pytest.mark.parametrize("one", NUMBERS, ids=lambda one: f"{one.rule} {one.name}")
def test_a_default_lies_in_its_own_range(one: Number) -> None:
    assert one.allows(one.default)
    assert not one.allows(one.low - 1)
    assert not one.allows(one.high + 1)
    assert one.unit in UNITS
    assert one.words


def test_no_number_is_named_twice() -> None:
    assert len({(one.rule, one.name) for one in NUMBERS}) == len(NUMBERS)


@pytest.mark.parametrize(
    ("rule", "name", "value"),
    [
        ("mow-gap", "days", 10),
        ("mow-height", "low", mm(2.5)),
        ("mow-height", "high", mm(3.5)),
        ("mow-first-early", "days", 28),
        ("mow-first-early", "loss-days", 21),
        ("mow-first-early", "height", mm(3.5)),
        ("seedbed-dry", "waterings", 2),
        ("seedbed-dry", "days", 20),
        ("seedbed-dry", "days-bluegrass", 27),
        ("seedbed-dry", "rain", mm(0.1)),
        ("seedbed-dry", "rain-two-days", mm(0.25)),
        ("starter-missing", "from-day", 8),
        ("starter-missing", "to-day", 21),
        ("starter-wrong", "to-day", 27),
        ("seed-switch", "points", 5),
        ("seed-over-residue", "split-days", 90),
        ("feed-overdue", "hot-high", celsius(85)),
        ("feed-overdue", "cap-left", g_per_m2(0.2)),
    ],
)
def test_defaults(rule: str, name: str, value: float) -> None:
    assert number(rule, name).default == value


@pytest.mark.parametrize(
    ("slow", "step", "overdue", "too_soon"),
    [
        (0, 42, 56, 28),
        (14.9, 42, 56, 28),
        (15, 42, 70, 42),
        (49, 42, 70, 42),
        (50, 56, 84, 56),
        (79, 56, 84, 56),
        (80, 84, 112, 84),
        (100, 84, 112, 84),
    ],
)
def test_slow_nitrogen_feeds_longer(slow: float, step: int, overdue: int, too_soon: int) -> None:
    assert by_slow_share("feed-overdue", "step-days", slow).default == step
    assert by_slow_share("feed-overdue", "days", slow).default == overdue
    assert by_slow_share("feed-too-soon", "days", slow).default == too_soon


def test_the_feeding_step_never_opens_before_the_gap_is_over() -> None:
    for slow in range(101):
        step = by_slow_share("feed-overdue", "step-days", slow).default
        assert by_slow_share("feed-too-soon", "days", slow).default <= step
        assert step < by_slow_share("feed-overdue", "days", slow).default


@pytest.mark.parametrize(
    ("rule", "name", "key"),
    [
        pytest.param("feed-too-soon", "full-dose", "pennsylvania-6813", id="0.9 lb N: 3 Pa.C.S. s.6813"),
        pytest.param("starter-missing", "phosphate", "vermont-1266b", id="0.67 % P2O5: 10 V.S.A. s.1266b"),
        pytest.param("mow-first-early", "loss-days", "osu-ec1550", id="about 3 weeks: Oregon EC 1550"),
        pytest.param("mow-height", "shade", "purdue-ay8", id="half an inch in shade: Purdue AY-8"),
        pytest.param("mow-height", "summer", "isu-mowing", id="half an inch in summer: Iowa State 2013"),
        pytest.param("mow-height", "last", "umd-calendar", id="half an inch lower last: Maryland calendar"),
        pytest.param("seedbed-dry", "waterings", "ncsu-seeding", id="2 to 3 times a day: NC State"),
        pytest.param("seedbed-dry", "days", "ncsu-seeding", id="15 to 20 days: NC State"),
        pytest.param("seedbed-dry", "once-from-day", "nebraska-lifeline", id="week 3 once a day: Nebraska"),
        pytest.param("seedbed-dry", "height", "isu-watering", id="1 to 2 in: Iowa State"),
        pytest.param("seed-over-residue", "split-days", "label-40896", id="60 to 90 days: granule label"),
    ],
)
def test_published_numbers_name_their_publication(rule: str, name: str, key: str) -> None:
    basis = number(rule, name).basis
    assert basis.kind is Known.PUBLISHED
    assert key in {citation.key for citation in basis.citations}


@pytest.mark.parametrize(
    ("rule", "name", "kind"),
    [
        ("mow-gap", "days", Known.PRACTICE),
        ("mow-first-early", "days", Known.PRACTICE),
        ("mow-height", "low", Known.PRACTICE),
        ("starter-missing", "to-day", Known.PRACTICE),
        ("starter-wrong", "to-day", Known.PRACTICE),
        ("feed-overdue", "days", Known.PRACTICE),
        ("feed-overdue", "days-80", Known.JUDGMENT),
        ("feed-too-soon", "days", Known.JUDGMENT),
        ("seedbed-dry", "days-bluegrass", Known.MEMORY),
        ("seedbed-dry", "rain", Known.MEMORY),
        ("mow-gap", "late-days", Known.MEMORY),
        ("starter-missing", "phosphate-share", Known.JUDGMENT),
        ("seed-switch", "points", Known.JUDGMENT),
    ],
)
def test_other_numbers_say_that_no_publication_stands_behind_them(rule: str, name: str, kind: Known) -> None:
    assert number(rule, name).basis.kind is kind


def test_the_feeding_clock_says_that_publications_disagree() -> None:
    assert "no bulletin confirms it" in number("feed-overdue", "days").basis.words()


def test_a_rule_without_numbers_has_none() -> None:
    assert numbers("amount-missing") == ()


def test_a_number_that_a_rule_lacks_is_refused_with_those_it_has() -> None:
    with pytest.raises(LookupError, match="days, slow-days, late-days"):
        number("mow-gap", "weeks")
    with pytest.raises(LookupError, match="it has none"):
        number("amount-missing", "days")
