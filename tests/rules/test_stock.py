"""What the next work needs and what was put down, against what the shed holds."""

import pytest

from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import book, judged, later, lawn, level, raised, rules_raised

BOUGHT = "2026-04-01 buy pond-ridge 1x 20lb"
FED = "2026-05-01 feed pond-ridge 3lb/k front back"
"""16.5 lb on 5,500 sq ft: 3.5 lb are left of 20."""


def shed(*lines: str) -> History:
    return book(*lines, on=lawn(toml=SHED))


def short(history: History, on: str) -> str:
    return level(history, on, "stock-short")


def test_from_the_day_the_next_feeding_opens_it_says_how_much_is_lacking_and_how_many_bags() -> None:
    diary = shed(BOUGHT, FED)
    assert (short(diary, "2026-06-11"), short(diary, "2026-06-12")) == ("", "note")
    flag = raised(diary, "2026-06-12", "stock-short")
    assert flag is not None
    assert flag.subject == "pond-ridge"
    assert flag.headline == "pond-ridge runs short: 3.5 lb left"
    assert "of front, back takes about 16.5 lb" in flag.why
    assert flag.do == "buy 1 bag of 40 lb: 13 lb are lacking"
    assert raised(diary, "2026-06-12", "stock-short", "back") is not None


def test_a_purchase_or_the_feeding_itself_clears_it() -> None:
    diary = shed(BOUGHT, FED)
    assert short(book("2026-06-15 buy pond-ridge 1x 40lb", on=diary), "2026-06-15") == ""
    cleared = {flag.rule for flag in judged(diary, "2026-06-15", "buy pond-ridge 1x 40lb").cleared}
    assert "stock-short" in cleared


@pytest.mark.parametrize(("size", "expected"), [("33lb", ""), ("32.7lb", ""), ("32.6lb", "note")])
def test_just_enough_is_enough_with_two_in_a_hundred_for_rounding(size: str, expected: str) -> None:
    assert short(shed(f"2026-04-01 buy pond-ridge 1x {size}", FED), "2026-06-12") == expected


def test_a_zone_that_is_not_due_yet_does_not_count_in() -> None:
    diary = shed("2026-04-01 buy pond-ridge 1x 30lb", "2026-05-01 feed pond-ridge 3lb/k front",
                 "2026-05-20 feed pond-ridge 3lb/k back")  # fmt: skip
    assert short(diary, "2026-06-12") == ""
    assert short(diary, "2026-07-01") == "note"


def test_outside_growth_and_with_the_years_nitrogen_used_nothing_is_needed() -> None:
    diary = shed(BOUGHT, FED)
    assert short(diary, "2026-12-20") == ""
    used = shed("2026-04-01 buy pond-ridge 1x 40lb", *(f"{on} feed pond-ridge 3.7lb/k front"
                for on in ("2026-04-20", "2026-06-05", "2026-08-20")))  # fmt: skip
    assert short(used, "2026-10-20") == ""


def test_a_book_without_purchases_knows_no_shelf() -> None:
    assert short(shed(FED), "2026-07-01") == ""


def test_seed_for_a_sowing_that_is_meant_from_four_weeks_before() -> None:
    diary = shed("2026-06-01 buy three-river 1x 2lb", "2026-06-01 intend seed three-river 2026-09-05 front")
    assert (short(diary, "2026-08-07"), short(diary, "2026-08-08")) == ("", "note")
    flag = raised(diary, "2026-08-08", "stock-short")
    assert flag is not None
    assert "the sowing meant for" in flag.why
    own = book("2026-06-01 set stock-short ahead-days 60", on=diary)
    assert short(own, "2026-07-07") == "note"
    sown = book("2026-08-15 buy three-river 1x 20lb", on=diary)
    assert short(sown, "2026-08-15") == ""


def test_a_line_that_takes_more_than_is_left_says_so_before_it_is_saved() -> None:
    diary = shed(BOUGHT)
    found = judged(diary, "2026-05-01", "feed pond-ridge 24lb front")
    flag = next(flag for flag in found.raised if flag.rule == "stock-short")
    assert flag.headline == "4 lb more of pond-ridge put down than was left"
    assert not found.holds_back
    assert "stock-short" not in {f.rule for f in judged(diary, "2026-05-01", "feed pond-ridge 20lb front").raised}


def test_it_stands_for_two_weeks_or_until_the_missing_purchase_is_logged() -> None:
    diary = shed(BOUGHT, "2026-05-01 feed pond-ridge 24lb front")
    assert [short(diary, str(later("2026-05-01", at))) for at in (-1, 0, 13, 14)] == ["", "note", "note", ""]
    assert short(book("2026-04-20 buy pond-ridge 1x 40lb", on=diary), "2026-05-02") == ""


def test_a_purchase_after_the_use_does_not_explain_it_and_a_service_takes_nothing() -> None:
    late = shed(BOUGHT, "2026-05-01 feed pond-ridge 24lb front", "2026-05-03 buy pond-ridge 1x 40lb")
    assert short(late, "2026-05-04") == "note"
    assert short(shed(BOUGHT, "2026-05-01 feed pond-ridge 24lb by service front"), "2026-05-02") == ""


def test_what_was_used_before_the_first_purchase_is_not_held_against_it() -> None:
    diary = shed("2026-05-01 feed pond-ridge 5lb front", "2026-05-05 buy pond-ridge 1x 40lb")
    assert short(diary, "2026-05-06") == ""


def test_the_use_in_one_zone_is_not_told_of_the_other() -> None:
    diary = shed(BOUGHT, "2026-05-01 feed pond-ridge 24lb front")
    assert "stock-short" not in rules_raised(diary, "2026-05-02", "back")


def test_too_late_in_the_season_for_a_feeding_nothing_is_needed() -> None:
    diary = shed("2026-04-01 buy pond-ridge 1x 20lb", "2026-09-10 feed pond-ridge 3lb/k front back")
    assert (short(diary, "2026-10-20"), short(diary, "2026-10-22")) == ("", "")
    early = shed("2026-04-01 buy pond-ridge 1x 20lb", "2026-08-20 feed pond-ridge 3lb/k front back")
    assert (short(early, "2026-10-01"), short(early, "2026-10-20"), short(early, "2026-10-21")) == ("note", "note", "")


def test_a_season_without_a_feeding_yet_counts_from_its_start_at_the_labels_low_rate() -> None:
    diary = shed("2026-04-01 buy pond-ridge 1x 5lb")
    assert (short(diary, "2026-05-21"), short(diary, "2026-05-22")) == ("", "note")
    flag = raised(diary, "2026-05-22", "stock-short")
    assert flag is not None
    assert "takes about 11 lb" in flag.why


def test_by_months_it_is_needed_while_a_window_runs_unfed() -> None:
    months = lawn(('name = "North Lane"', 'name = "North Lane"\nfeeding = "months"'), toml=SHED)
    diary = book("2026-04-01 buy pond-ridge 1x 5lb", on=months)
    assert (short(diary, "2026-08-19"), short(diary, "2026-08-20"), short(diary, "2026-09-30")) == ("", "note", "note")
