"""No step waters while a spray has to stay dry on the leaves."""

from journal.plan.step import State
from tests.plan.garden import PRODUCTS, kept
from tests.scenario import day, later, the

SOWN = "2026-09-06"
SHED = PRODUCTS | {"clear-row": {"kind": "weed", "form": "liquid", "actives": "quinclorac"}}


def test_a_seedbed_waits_for_it() -> None:
    book = kept(
        f"{SOWN} seed three-river-blend 9.6lb front", "2026-09-10 treat clear-row 2floz front", products=SHED,
    )  # fmt: skip
    for on in ("2026-09-10", "2026-09-11"):
        step = the(book, on, "damp")
        assert (step.state, step.earliest, step.line) == (State.WAITING, day("2026-09-12"), "")
        assert "clear-row is on the leaves" in step.waits_for
    assert the(book, "2026-09-12", "damp").state is State.OPEN


def test_so_does_a_spot_and_the_weaning() -> None:
    spot = kept(
        f"{SOWN} seed three-river-blend 0.5lb spot 40sqft front",
        "2026-09-10 treat clear-row 2floz front",
        products=SHED,
    )
    assert the(spot, "2026-09-11", "damp").state is State.WAITING
    late = later(SOWN, 35)
    weaned = kept(f"{SOWN} seed three-river-blend 9.6lb front", f"{late} treat clear-row 2floz front", products=SHED)
    assert (the(weaned, late, "damp").title, the(weaned, late, "damp").state) == ("taper water", State.WAITING)
