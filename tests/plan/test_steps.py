"""The list as a whole: zones together, the urgent first, what is due soon."""

from dataclasses import fields

import pytest

from journal.plan.declare import Declared, step
from journal.plan.offer import Offer
from journal.plan.step import State, Step
from journal.plan.steps import PLAN, due, steps
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.season.history import NotWatched, Past
from tests.plan.garden import PRODUCTS, history, kept
from tests.scenario import day, the

BOTH = "2026-05-04 mow 3in front back"


def test_zones_in_the_same_state_are_one_step_with_one_line() -> None:
    found = the(kept(BOTH), "2026-05-11", "mow")
    assert found.zones == ("front", "back")
    assert found.line == "mow 3in front back"


def test_zones_that_differ_are_steps_of_their_own() -> None:
    book = kept(BOTH, "2026-05-06 mow 3in back")
    assert the(book, "2026-05-11", "mow", "front").zones == ("front",)
    assert the(book, "2026-05-11", "mow", "back").zones == ("back",)


def test_a_dose_over_several_zones_is_one_total() -> None:
    book = kept("2026-09-06 seed three-river-blend 22lb front back")
    assert the(book, "2026-09-06", "starter").line == "feed oat-hill-starter 19lb front back"


def test_where_an_area_is_missing_the_line_gives_a_rate() -> None:
    book = kept("2026-09-06 seed three-river-blend 4lb/k front", zones={"front": {}})
    assert the(book, "2026-09-06", "starter").line == "feed oat-hill-starter 3.5lb/k front"


def test_late_comes_before_open_before_waiting_and_then_what_ends_first() -> None:
    book = kept("2026-09-06 seed three-river-blend 9lb front", "2026-08-25 mow 3in back", set_up="2026-08-20")
    found = steps(book, day("2026-09-10"))
    order = [State.LATE, State.OPEN, State.WAITING, State.BARRED, State.MISSED, State.DONE]
    assert [order.index(one.state) for one in found] == sorted(order.index(one.state) for one in found)
    assert [one.step for one in found][:4] == ["mow", "damp", "starter", "aerate"]


def test_due_leaves_out_what_is_done_and_what_is_far_off() -> None:
    book = kept("2026-09-06 seed three-river-blend 9lb front")
    found = steps(book, day("2026-09-08"))
    soon = due(found, day("2026-09-08"), 7)
    assert {one.step for one in soon if "front" in one.zones} == {"soil-test", "starter", "damp", "keep-off"}
    assert {one.step for one in due(found, day("2026-09-08"), 26) if "front" in one.zones} == {
        "soil-test", "starter", "damp", "keep-off", "first-mow", "seedling-feed",
    }  # fmt: skip


def test_a_lawn_without_zones_is_one_zone() -> None:
    book = kept("2026-05-04 mow 3in", zones={})
    assert the(book, "2026-05-12", "mow", "lawn").line == "mow 3in lawn"


def test_an_empty_book_has_a_plan_too() -> None:
    found = steps(history([], zones={}, products={}), day("2026-05-30"))
    assert [one.step for one in found] == ["mow", "feed", "soil-test"]


def test_a_step_sees_only_the_kinds_it_declares() -> None:
    @step("peek", watches=(Mowing,))
    def peek(past: Past) -> Offer | None:
        return Offer(state=State.OPEN) if past[Feeding] else None

    assert isinstance(peek, Declared)
    with pytest.raises(NotWatched):
        peek.find(kept().on("front", day("2026-05-01"), peek.watches))


def test_every_step_has_a_name_and_words_for_the_page() -> None:
    assert {one.name for one in PLAN} == {
        "soil-test", "knock-back", "aerate", "seed", "starter", "damp", "keep-off", "first-mow", "bag", "seedling-feed",
        "established", "mow", "water", "feed", "barrier", "broadleaf", "photo", "sharpen", "last-mow", "sign",
    }  # fmt: skip
    shed = PRODUCTS | {"wall": {"kind": "pre-emergent"}}
    book = kept("2026-04-15 treat wall 7lb back", "2026-09-06 seed three-river-blend 9lb front", products=shed)
    found = [one for on in ("2026-06-01", "2026-09-10", "2026-10-10") for one in steps(book, day(on))]
    for one in found:
        assert one.title, one
        assert one.why, one
        assert one.waits_for or one.state not in (State.WAITING, State.BARRED), one
    assert {field.name for field in fields(Step)} >= {"earliest", "best", "latest", "amount", "line"}
