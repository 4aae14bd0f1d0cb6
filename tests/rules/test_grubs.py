"""A grub preventive by habit. Michigan State Univ., masked chafer: 5, dry; Univ. of Illinois, 2010: 10 to 12."""

import pytest

from journal.facts.house import number
from tests.scenario import LAWN, book, later, lawn, level, raised

RULE = "grub-blind"
SHED = (
    LAWN
    + """
[[product]]
name = "grub-wall"
kind = "insect"
actives = ["chlorantraniliprole"]

[[product]]
name = "grub-cure"
kind = "insect"
actives = ["trichlorfon"]
"""
)
DRY = SHED.replace("irrigated = true", "irrigated = false")
PUT = "2026-06-20 treat grub-wall 8lb front"


def test_published_thresholds() -> None:
    per_sqft = 0.09290304
    assert number(RULE, "dry").default * per_sqft == pytest.approx(5)
    assert number(RULE, "irrigated").default * per_sqft == pytest.approx(10)


def test_a_preventive_without_a_count_is_a_note_for_thirty_days() -> None:
    diary = book(PUT, on=lawn(toml=SHED))
    flag = raised(diary, "2026-06-20", RULE)
    assert flag is not None
    assert (flag.level, "10 /sqft" in flag.why) == ("note", True)
    assert (level(diary, later("2026-06-20", 29), RULE), level(diary, later("2026-06-20", 30), RULE)) == ("note", "")
    assert level(diary, "2027-02-01", RULE) == ""


@pytest.mark.parametrize(("toml", "count", "found"), [(SHED, 9, "note"), (SHED, 10, ""), (DRY, 4, "note"),
                                                      (DRY, 5, "")])  # fmt: skip
def test_a_count_at_its_threshold_calls_for_it(toml: str, count: int, found: str) -> None:
    diary = book(f"2025-09-10 count grubs {count}/sqft front", PUT, on=lawn(toml=toml))
    assert level(diary, "2026-06-20", RULE) == found


@pytest.mark.parametrize(("on", "found"), [("2024-06-20", "note"), ("2024-06-21", "")])
def test_a_count_holds_for_24_months(on: str, found: str) -> None:
    diary = book(f"{on} count grubs 12/sqft front", PUT, on=lawn(toml=SHED))
    assert level(diary, "2026-06-20", RULE) == found


@pytest.mark.parametrize("seen", ["damage", "grubs", "chinch-bugs"])
def test_damage_and_other_insects_count_too(seen: str) -> None:
    assert level(book(f"2025-09-10 see {seen} front", PUT, on=lawn(toml=SHED)), "2026-06-20", RULE) == ""


def test_a_count_afterwards_is_too_late() -> None:
    after = book(PUT, "2026-06-25 count grubs 12/sqft front", on=lawn(toml=SHED))
    assert level(after, "2026-06-26", RULE) == "note"


@pytest.mark.parametrize("line", ["treat grub-cure 8lb front", "treat leaf-off 2floz front", "treat unknown front"])
def test_only_preventives(line: str) -> None:
    assert level(book(f"2026-06-20 {line}", on=lawn(toml=SHED)), "2026-06-20", RULE) == ""


def test_the_owners_own_threshold() -> None:
    own = book("2026-01-02 set grub-blind irrigated 6/sqft", "2025-09-10 count grubs 7/sqft front", PUT,
               on=lawn(toml=SHED))  # fmt: skip
    assert level(own, "2026-06-20", RULE) == ""
