"""`plan`: every step of the season."""

from tests.cli.conftest import Run


def test_the_plan_holds_what_is_due_and_what_lies_far_ahead(lawn: Run) -> None:
    plan = lawn("plan --json --as-of 2026-05-10").json
    due = lawn("due --json --within 7 --as-of 2026-05-10").json
    assert plan["as_of"] == "2026-05-10"
    assert [step for step in due["steps"] if step not in plan["steps"]] == []
    assert {"mow", "feed"} <= {step["step"] for step in plan["steps"]}
    assert len(plan["steps"]) > len(due["steps"])


def test_what_is_done_is_told_in_words(lawn: Run) -> None:
    assert lawn("log", "seed", "three-river", "9lb", "front", today="2026-09-06").code == 0
    told = lawn("plan", today="2026-09-08")
    assert told.code == 0
    assert "done    seed" in told.out
