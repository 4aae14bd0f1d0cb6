"""No line that is offered against weeds is one that the flags would call harm or a loss."""

from dataclasses import replace
from datetime import timedelta

import pytest

from journal.plan.step import State
from journal.plan.steps import steps
from journal.rules.flag import Level
from journal.season.history import History
from journal.standing import preflight
from tests.plan.weeds import SHED, SHORT, grown
from tests.scenario import day, draft, the, weather

SEEN = ("2025-08-01 see crabgrass front", "2026-05-10 see dandelion front back")
NEAR = {"front": {"area": "2400sqft", "near_water": "10ft", "trees": "yes"}, "back": {}}
BOOKS: dict[str, History] = {
    "established": grown(*SEEN),
    "with weather": grown(*SEEN, *weather("2026-02-15", 120, "55F 38F 0in")),
    "to be sown": grown(*SEEN, "2026-03-01 intend seed three-river-blend 2026-09-05 front"),
    "a short wait": grown(
        *SEEN, "2026-03-01 intend seed three-river-blend 2026-09-05 front", products=SHED | {"spring-wall": SHORT}
    ),
    "sown last autumn": grown(*SEEN, "2025-09-28 seed three-river-blend 9lb front", "2026-04-20 mow 3in front",
                              "2026-04-28 mow 3in front", "2026-05-04 mow 3in front"),
    "sown this autumn": grown(*SEEN, "2026-08-20 seed three-river-blend 9lb front",
                              *(f"2026-{on} mow 3in front" for on in ("09-20", "09-29", "10-06", "10-20"))),
    "near water": grown(*SEEN, zones=NEAR),
    "metric": grown(*SEEN, lawn={"units": "metric", "height": "75mm"}),
    "treated": grown(*SEEN, "2026-04-20 treat leaf-off 2floz front", "2026-04-25 treat spring-wall 5lb front"),
}  # fmt: skip
OURS = ("barrier", "broadleaf", "knock-back")


@pytest.mark.parametrize("name", BOOKS)
def test_what_is_offered_is_not_blamed_and_moves_its_step_on(name: str) -> None:
    book, on, seen = BOOKS[name], day("2026-02-20"), 0
    while on < day("2026-12-01"):
        for step in steps(book, on):
            if step.step in OURS and step.line and step.state in (State.OPEN, State.LATE):
                flags = preflight(book, draft(book, f"{on} {step.line}"), on).raised
                blamed = [f"{f.rule} {f.headline}" for f in flags if f.level in (Level.HARM, Level.LOSS)]
                assert blamed == [], f"{on} {step.line}"
                logged = book.plus(replace(draft(book, f"{on} {step.line}"), id="9"))
                left = [one for one in steps(logged, on) if one.step == step.step and set(one.zones) & set(step.zones)]
                assert all(one.state is State.DONE for one in left), f"{on} {step.line} leaves the step to do"
                seen += 1
        on += timedelta(5)
    assert seen > 5


def test_a_starter_against_weeds_is_not_offered_once_the_seedlings_are_up() -> None:
    shed = SHED | {"oat-hill-starter": SHED["oat-hill-starter"] | {"actives": "mesotrione"}}
    sown = "2026-08-28 seed three-river-blend 9lb front"
    book = grown(sown, products=shed)
    assert the(book, "2026-09-10", "starter").line.startswith("feed oat-hill-starter")
    up = grown(sown, "2026-09-06 see emerged front", products=shed)
    assert the(up, "2026-09-04", "starter").line.startswith("feed oat-hill-starter")
    assert the(up, "2026-09-10", "starter").line == ""
