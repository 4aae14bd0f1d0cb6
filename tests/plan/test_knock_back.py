"""Weeds knocked back before seed: by a label holding 2,4-D seed 3 to 4 weeks after; the product's own goes first."""

from tests.plan.weeds import SHED, grown
from tests.scenario import day, find, the

SEEN = "2026-06-01 see dandelion front"
MEANT = "2026-07-01 intend seed three-river-blend 2026-09-05 front"


def test_the_last_day_is_the_wait_before_the_seed() -> None:
    book = grown(SEEN, MEANT)
    assert the(book, "2026-07-10", "knock-back").state == "waiting"
    step = the(book, "2026-07-11", "knock-back")
    assert (step.state, step.latest) == ("open", day("2026-08-08"))
    assert step.best == (day("2026-07-25"), day("2026-08-08"))
    assert step.line == "treat leaf-off 1.1floz/k front"
    assert the(book, "2026-08-08", "knock-back").state == "open"
    assert the(book, "2026-08-09", "knock-back").state == "missed"
    assert find(book, "2026-09-06", "knock-back") is None


def test_by_the_products_own_label() -> None:
    shed = SHED | {"leaf-off": SHED["leaf-off"] | {"to_seed": "42d"}}
    assert the(grown(SEEN, MEANT, products=shed), "2026-07-12", "knock-back").latest == day("2026-07-25")


def test_only_before_seed_and_where_weeds_were_seen() -> None:
    assert find(grown(SEEN), "2026-07-20", "knock-back") is None
    assert find(grown(MEANT), "2026-07-20", "knock-back") is None
    assert find(grown(SEEN, MEANT), "2026-07-20", "knock-back", "back") is None


def test_done_where_it_was_treated_and_the_seed_is_free_on_its_day() -> None:
    put = grown(SEEN, MEANT, "2026-08-08 treat leaf-off 2.6floz front")
    assert the(put, "2026-08-20", "knock-back").state == "done"
    assert the(put, "2026-09-05", "seed").state == "open"


def test_what_can_not_go_down_in_time_is_barred() -> None:
    twice = grown("2026-03-01 treat leaf-off 2.6floz front", "2026-04-10 treat leaf-off 2.6floz front", SEEN, MEANT)
    step = the(twice, "2026-07-20", "knock-back")
    assert (step.state, step.line) == ("barred", "")
