"""What is offered keeps to the local rule: amounts, the year's nitrogen, and the starter's closed days."""

from journal.plan.step import State
from tests.plan.garden import kept
from tests.scenario import level, the, typed

SOWN = "2026-09-06 seed three-river-blend 12lb front"


def test_the_next_feeding_brings_no_more_than_the_local_rule_allows() -> None:
    assert "0.68 lb N/k" in the(kept(), "2026-05-22", "feed").amount
    for own in ({"local_most_n": "0.5lb/k"}, {"local_most_soluble": "0.3lb/k"}):
        book = kept(lawn=own)
        step = the(book, "2026-05-22", "feed")
        assert "0.5 lb N/k" in step.amount
        assert level(typed(book, f"2026-05-22 {step.line}"), "2026-05-22", "feed-dose") == ""


def test_the_year_is_fed_when_the_local_rule_says_so() -> None:
    book = kept("2026-05-22 feed pond-ridge 4lb/k front", lawn={"local_year_n": "1lb/k"})
    step = the(book, "2026-07-10", "feed")
    assert step.state is State.DONE
    assert "0.96 lb N/k of 1 lb N/k" in step.why


def test_a_starter_waits_where_phosphate_is_closed_and_plain_nitrogen_does_not() -> None:
    shut = kept(SOWN, lawn={"local_rules": "us-ny", "local_closed": "09-01 09-20", "local_seeding": "yes"})
    assert the(shut, "2026-09-08", "starter").waits_for == "closed by the local rule"
    plain = kept(SOWN, lawn={"local_rules": "us-ny"})
    assert the(plain, "2026-09-08", "starter").line.startswith("feed pond-ridge")
    assert the(kept(SOWN, lawn={"local_rules": "us-md"}), "2026-09-08", "starter").line.startswith("feed oat-hill")
