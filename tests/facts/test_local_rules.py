"""Laws on lawn fertilizer: each date and number beside the text it was read in.

The texts were read in stored copies which may be out of date.
"""

from datetime import date, timedelta

import pytest

from journal.facts.citation import Known
from journal.facts.factors import g_per_m2, mm
from journal.facts.local_rules import CHECK, READ, Binds, Closes, LocalRules, OwnRules, Sowing, Stated, laid_over
from journal.facts.local_rules_sets import meant, named, sets
from journal.facts.local_words import rows
from journal.record.day import MonthDay

SETS = sets()
ALL = pytest.mark.parametrize("rules", SETS.values(), ids=list(SETS))
UNSURE = (Known.MEMORY, Known.JUDGMENT)


def shut(key: str, on: str, *, nitrogen: bool = True, phosphorus: bool = False) -> bool:
    day = date.fromisoformat(on)
    spans = [stated.value for stated in SETS[key].closed]
    return any(span.holds(day) and span.shuts(nitrogen=nitrogen, phosphorus=phosphorus) for span in spans)


def sayings(rules: LocalRules, what: str, units: str = "us") -> list[str]:
    return [row.says for row in rows(rules, units) if row.what == what]


def test_which_sets_there_are() -> None:
    states = ["ma", "ct", "nh", "vt", "me", "ny", "nj", "md", "pa", "va", "mn", "wi", "mi", "il", "wa", "fl"]
    assert list(SETS) == [*(f"us-{state}" for state in states), "us-fl-pinellas"]


# first and last open and closed days, as the wordings have them
@pytest.mark.parametrize(
    ("key", "day", "is_shut"),
    [
        # Md. Code, Agric. s.8-803.5: before 1 Mar or after 15 Nov
        ("us-md", "2026-11-15", False), ("us-md", "2026-11-16", True), ("us-md", "2027-02-28", True),
        ("us-md", "2027-03-01", False), ("us-md", "2028-02-29", True), ("us-md", "2026-12-31", True),
        # 10 V.S.A. s.1266b: before 1 Apr or after 15 Oct
        ("us-vt", "2026-03-31", True), ("us-vt", "2026-04-01", False), ("us-vt", "2026-10-15", False),
        ("us-vt", "2026-10-16", True), ("us-vt", "2028-02-29", True),
        # N.J.S.A. 58:10A-62: before 1 Mar or after 15 Nov
        ("us-nj", "2026-11-15", False), ("us-nj", "2026-11-16", True), ("us-nj", "2027-03-01", False),
        # Env. Conserv. Law s.17-2103: between 1 Dec and 1 Apr; a newspaper: open from 2 Apr to 30 Nov
        ("us-ny", "2026-11-30", False), ("us-ny", "2026-12-01", True), ("us-ny", "2027-04-01", True),
        ("us-ny", "2027-04-02", False),
        # a lake association on 330 CMR 31: 1 Dec to 1 Mar
        ("us-ma", "2026-11-30", False), ("us-ma", "2026-12-01", True), ("us-ma", "2027-03-01", True),
        ("us-ma", "2027-03-02", False), ("us-ma", "2028-02-29", True),
        # 3 Pa.C.S. s.6813: after 15 Dec and before 1 Mar
        ("us-pa", "2026-12-15", False), ("us-pa", "2026-12-16", True), ("us-pa", "2027-02-28", True),
        ("us-pa", "2027-03-01", False),
        # Pinellas County Code ch. 58: 1 Jun to 30 Sep
        ("us-fl-pinellas", "2026-05-31", False), ("us-fl-pinellas", "2026-06-01", True),
        ("us-fl-pinellas", "2026-09-30", True), ("us-fl-pinellas", "2026-10-01", False),
        # Connecticut closes phosphate alone
        ("us-ct", "2026-12-15", False), ("us-ct", "2027-03-10", False),
    ],
)  # fmt: skip
def test_nitrogen_on_the_boundary_days(key: str, day: str, is_shut: bool) -> None:
    assert shut(key, day) is is_shut


def test_connecticut_closes_phosphate_and_nobody_is_sure_to_when() -> None:
    for day, is_shut in (("2026-11-30", False), ("2026-12-01", True), ("2028-02-29", True), ("2027-03-15", True),
                         ("2027-03-16", False)):  # fmt: skip
        assert shut("us-ct", day, phosphorus=True) is is_shut
    assert all(not span.confirmed for span in SETS["us-ct"].closed)
    assert all("confirmed" in says or "memory" in says for says in sayings(SETS["us-ct"], "closed"))


def test_potash_alone_stays_open_in_new_jersey_and_not_in_vermont() -> None:
    # Rutgers NJAES, 2013: potassium and lime stay open; 10 V.S.A. s.1266b: any fertilizer
    assert not shut("us-nj", "2026-12-01", nitrogen=False)
    assert shut("us-vt", "2026-12-01", nitrogen=False)


def test_pennsylvania_closes_more_than_half_a_pound_of_nitrogen_only() -> None:
    (span,) = SETS["us-pa"].closed
    assert (span.value.closes, span.value.above_n_g_per_m2) == (Closes.NITROGEN, g_per_m2(0.5))
    assert "above 0.5 lb/k" in sayings(SETS["us-pa"], "closed")[0]
    assert "bars all nitrogen and phosphorus" in span.basis.note


@pytest.mark.parametrize(
    ("key", "total", "soluble", "year"),
    [
        ("us-md", 0.9, 0.7, None), ("us-pa", 0.9, 0.7, None), ("us-nj", 0.9, 0.7, 3.2), ("us-nh", 0.9, 0.7, 3.25),
        ("us-va", 0.9, 0.7, None), ("us-fl", 1.0, 0.7, None), ("us-fl-pinellas", 1.0, 0.5, 4.0),
        ("us-ma", 1.0, None, 3.0), ("us-vt", None, None, None), ("us-wi", None, None, None),
    ],
)  # fmt: skip
def test_pounds_of_nitrogen_per_thousand(
    key: str, total: float | None, soluble: float | None, year: float | None
) -> None:
    rules = SETS[key]
    found = (rules.most_n_g_per_m2, rules.most_soluble_n_g_per_m2, rules.year_n_g_per_m2)
    for stated, pounds in zip(found, (total, soluble, year), strict=True):
        assert (stated and stated.value) == (None if pounds is None else g_per_m2(pounds))


@pytest.mark.parametrize(
    ("key", "buffer", "careful"),
    [("us-ma", 20, 10), ("us-ct", 20, 15), ("us-nh", 25, None), ("us-vt", 25, None), ("us-me", None, None),
     ("us-ny", 20, 3), ("us-nj", 25, 10), ("us-md", 15, 10), ("us-pa", 15, 0), ("us-mi", 15, 3), ("us-il", 15, 3),
     ("us-wa", None, None), ("us-fl-pinellas", 10, None)],
)  # fmt: skip
def test_feet_from_water(key: str, buffer: float | None, careful: float | None) -> None:
    rules = SETS[key]
    for stated, feet in ((rules.buffer_mm, buffer), (rules.buffer_careful_mm, careful)):
        assert (stated and stated.value) == (None if feet is None else mm(12 * feet))


def test_months_that_a_soil_test_counts() -> None:
    months = {key: rules.soil_test_months.value for key, rules in SETS.items() if rules.soil_test_months}
    assert months == {"us-vt": 18, "us-ct": 24} | dict.fromkeys(
        ("us-ma", "us-nj", "us-mn", "us-wi", "us-mi", "us-il", "us-wa"), 36
    )


def test_the_percentage_that_makes_a_phosphorus_fertilizer() -> None:
    # 10 V.S.A. s.1266b: 0.5 % P2O5 is none
    percent = {key: rules.phosphate_percent.value for key, rules in SETS.items() if rules.phosphate_percent}
    assert percent == dict.fromkeys(("us-ma", "us-nh", "us-vt", "us-me", "us-ny"), 0.67)
    assert percent["us-vt"] > 0.5


def test_which_sowing_is_a_reason_for_phosphorus() -> None:
    named_any = {"us-ct", "us-ma", "us-md", "us-me", "us-nj", "us-pa", "us-wa", "us-va"}
    new_only = {"us-ny", "us-vt", "us-mn", "us-wi", "us-mi", "us-il"}
    found = {key: rules.sowing.value for key, rules in SETS.items() if rules.sowing}
    assert {key for key, which in found.items() if which is Sowing.ANY} == named_any
    assert {key for key, which in found.items() if which is Sowing.NEW} == new_only
    assert {key for key, which in found.items() if which is Sowing.UNKNOWN} == {"us-nh", "us-fl"}
    assert found["us-fl-pinellas"] is Sowing.NONE
    assert all(SETS[key].sowing.basis.kind is Known.JUDGMENT for key in new_only)  # type: ignore[union-attr]


def test_the_least_slow_share() -> None:
    shares = {key: rules.least_slow_share.value for key, rules in SETS.items() if rules.least_slow_share}
    assert shares == {"us-vt": 0.15, "us-nj": 0.20, "us-fl-pinellas": 0.50}


def test_who_is_bound() -> None:
    others = {key: rules.binds for key, rules in SETS.items() if rules.binds is not Binds.OWNERS}
    assert others == {
        "us-il": Binds.HIRED, "us-me": Binds.SELLERS, "us-va": Binds.SELLERS, "us-fl": Binds.LABELS,
    }  # fmt: skip


@ALL
def test_what_does_not_bind_owners_or_is_not_confirmed_is_not_held_against_them(rules: LocalRules) -> None:
    for stated in rules.stated():
        held = rules.holds(stated)
        if rules.binds is not Binds.OWNERS or stated.basis.kind in UNSURE:
            assert held is None
        else:
            assert held == stated.value
        assert rules.heeds(stated) == (stated.value if rules.binds is Binds.OWNERS else None)


@pytest.mark.parametrize(
    ("key", "field"),
    [("us-nj", "year_n_g_per_m2"), ("us-ma", "most_n_g_per_m2"), ("us-ma", "year_n_g_per_m2"),
     ("us-nh", "most_n_g_per_m2"), ("us-va", "most_n_g_per_m2")],
)  # fmt: skip
def test_numbers_that_nobody_confirmed_are_marked(key: str, field: str) -> None:
    assert getattr(SETS[key], field).basis.kind in UNSURE


@ALL
def test_every_set_names_its_law_the_day_it_was_read_and_a_publication(rules: LocalRules) -> None:
    assert rules.place
    assert rules.reference
    assert rules.certainty
    assert rules.read == READ == date(2026, 11, 25)
    assert rules.citations
    assert list(rules.stated())
    assert all(isinstance(stated.basis.citations, tuple) for stated in rules.stated())


@ALL
@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_rows_of_a_page(rules: LocalRules, units: str) -> None:
    found = rows(rules, units)
    assert rules.reference in found[0].says
    assert found[-1].says.endswith(CHECK)
    assert "25 Nov 2026" in found[-1].says
    assert "out of date" in found[-1].says
    for row in found:
        assert row.what
        assert row.says
        if row.known.kind is Known.MEMORY:
            assert row.says.endswith("(from memory)")
        text = f" {row.says.casefold()} "
        assert " safe " not in text
        assert " legal " not in text
    assert len(found) == 4 + len(list(rules.stated()))


def test_rows_in_either_units() -> None:
    assert sayings(SETS["us-nj"], "nitrogen a year") == ["at most 3.2 lb/k (from memory)"]
    assert sayings(SETS["us-nj"], "nitrogen a year", "metric") == ["at most 15.6 g/m2 (from memory)"]
    assert sayings(SETS["us-ny"], "from water") == ["at least 20 ft"]
    assert sayings(SETS["us-ny"], "from water", "metric") == ["at least 6.1 m"]
    assert sayings(SETS["us-vt"], "closed") == ["16 Oct to 31 Mar, both days closed to any fertilizer"]
    assert "not owners" in sayings(SETS["us-il"], "binds")[0]
    assert "not held against" in sayings(SETS["us-il"], "binds")[0]


def test_sets_by_name() -> None:
    assert named("US-MA") is SETS["us-ma"]
    assert named("us ma") is SETS["us-ma"]
    assert named("us-de") is None


@pytest.mark.parametrize(
    ("name", "key"),
    [("us-mass", "us-ma"), ("massachusetts", "us-ma"), ("New Jersy", "us-nj"), ("md", "us-md"), ("us-de", ""),
     ("us-ri", ""), ("us-in", ""), ("delaware", ""), ("our-town", ""), ("us-fl-pinelas", "us-fl-pinellas"), ("x", "")],
)  # fmt: skip
def test_the_set_that_was_probably_meant(name: str, key: str) -> None:
    assert meant(name) == key


OWN = OwnRules(
    closed=(MonthDay(12, 20), MonthDay(2, 10)), most_n_g_per_m2=5.0, most_soluble_n_g_per_m2=2.0, year_n_g_per_m2=11.0,
    least_slow_share=0.3, buffer_mm=9000.0, soil_test_months=12, seeding=True,
)  # fmt: skip


@pytest.mark.parametrize("under", [None, "us-vt", "us-il", "us-fl-pinellas"])
def test_the_owners_own_numbers_take_the_place_of_the_sets(under: str | None) -> None:
    rules = laid_over(OWN, SETS[under] if under else None)
    (span,) = rules.closed
    assert span.value.closes is Closes.BOTH
    found = (span, rules.most_n_g_per_m2, rules.most_soluble_n_g_per_m2, rules.year_n_g_per_m2,
             rules.least_slow_share, rules.buffer_mm, rules.soil_test_months, rules.sowing)  # fmt: skip
    wanted = (span.value, 5.0, 2.0, 11.0, 0.3, 9000.0, 12, Sowing.ANY)
    for stated, value in zip(found, wanted, strict=True):
        assert isinstance(stated, Stated)
        assert stated.basis.kind is Known.LOCAL_RULE
        assert rules.holds(stated) == value  # type: ignore[misc]
    assert rules.buffer_careful_mm is None


def test_the_owners_own_number_counts_even_where_it_is_looser() -> None:
    rules = laid_over(OwnRules(most_n_g_per_m2=g_per_m2(1.2)), SETS["us-md"])
    assert rules.holds(rules.most_n_g_per_m2) == g_per_m2(1.2)
    assert rules.most_soluble_n_g_per_m2 == SETS["us-md"].most_soluble_n_g_per_m2
    assert rules.closed == SETS["us-md"].closed


def test_rules_of_ones_own_have_a_name_and_no_day_of_reading() -> None:
    rules = laid_over(OWN, None)
    assert (rules.place, rules.read) == ("your own local rules", None)
    found = rows(rules, "us")
    assert found[0].says == "your own local rules: as you entered them"
    assert found[-1].says.endswith(f"not watched. {CHECK}")
    assert {row.known.kind for row in found} == {Known.LOCAL_RULE}


def test_a_span_over_the_new_year_and_one_within_it_close_as_many_days_as_they_should() -> None:
    for own, days in (((MonthDay(12, 20), MonthDay(2, 10)), 12 + 31 + 10), ((MonthDay(6, 1), MonthDay(6, 30)), 30)):
        (span,) = laid_over(OwnRules(closed=own), None).closed
        assert sum(span.value.holds(date(2027, 1, 1) + timedelta(at)) for at in range(365)) == days
