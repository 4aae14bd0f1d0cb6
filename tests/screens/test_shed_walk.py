"""Walking through the Shed: what Enter takes, and a page that is whole at every step."""

import pytest
from rich.cells import cell_len

from journal.line.read import read
from journal.record.kinds.setting import Setting
from journal.record.product import KINDS
from journal.screens.page import Size
from journal.screens.pages.shed import PAGE, PAPER
from journal.screens.picture import plain_text
from journal.screens.view import View
from tests.screens.driver import Driven, opened
from tests.screens.pretend import PretendSession
from tests.screens.shed_scenario import BOUGHT, SHED, TODAY, TWO_ZONES, closed_line, judged, line, picture, shed


def test_enter_takes_the_line_that_puts_it_down() -> None:
    fed = shed(*BOUGHT)
    assert closed_line(fed, "amber") == "feed amber 13.5lb all"
    assert line(fed, "amber/low rate/front") == "feed amber 6lb front"
    assert line(fed, "amber/high rate/front back") == "feed amber 20lb all"
    assert line(fed, "thicket-off/high rate/back") == "treat thicket-off 4.5floz back"
    # 2 lb/k live on 2,400 sq ft is 4.8 lb; of the lot 0.95 x 0.80 = 0.76 is alive: 6.3 lb.
    assert line(fed, "live-blend/low rate/front") == "seed live-blend 6.4lb front"


def test_every_line_that_is_offered_can_be_read_as_it_stands() -> None:
    """A line that ends in a blank waits for the owner's own value; every other is ready to save."""
    fed = shed(*BOUGHT, '2026-05-01 product red-tub kind supplement maker "the shed on from street" bag 5lb')
    ready = 0
    for place, target in enumerate(picture(fed).targets):
        under = picture(fed, row=place, open=True).under
        assert under is not None
        if under.line.endswith(" "):
            assert read(under.line, fed, TODAY).problem is not None or under.line.startswith("buy")
            continue
        reading = read(under.line, fed, TODAY)
        assert reading.problem is None, f"{under.line}: {reading.problem}"
        ready += 1
        if target.name.count("/") == 1 and under.line.startswith("set"):
            assert isinstance(reading.draft, Setting)
            name, _, key = target.name.partition("/")
            assert reading.draft.values == ((key, fed.lawn(TODAY).said["product", name, key]),)
    assert ready > 30


def test_a_step_of_the_cursor_builds_nothing() -> None:
    stands = judged(shed(*BOUGHT))
    view = View(as_of=TODAY, today=TODAY, page=4, row=0, open=True)
    size = Size(80, 21)
    paper = PAPER(stands, view.but(open=False), size)
    for key in ("down", "down", "up", "tab", "space", "space", "end", "home"):
        after = PAGE.press(key, stands, view, size)
        assert after is not None
        view = after
        PAGE.draw(stands, view, size)
        assert PAPER(stands, view.but(open=False), size) is paper


MANY = TWO_ZONES + "".join(
    f'[[product]]\nname = "{name}"\nkind = "{kind}"\n'
    for at, kind in enumerate(KINDS * 5)
    for name in (f"sack-{at}{'-of-long-name' * (at % 3)}"[:40],)
)


@pytest.mark.parametrize("size", [Size(60, 13), Size(80, 21), Size(120, 33), Size(200, 57)])
@pytest.mark.parametrize("toml", [MANY, TWO_ZONES + SHED, TWO_ZONES], ids=["65", "3", "0"])
def test_the_page_is_always_whole_and_its_cursor_always_seen(size: Size, toml: str) -> None:
    history = shed(*(BOUGHT if "amber" in toml else ()), toml=toml)
    stands = judged(history)
    view = View(as_of=TODAY, today=TODAY, page=4)
    for key in (
        "down",
        "space",
        *["down"] * 40,
        "pagedown",
        "pageup",
        "tab",
        "up",
        "end",
        "space",
        "home",
        "wheeldown",
    ):
        view = PAGE.press(key, stands, view, size) or view
        drawn = PAGE.draw(stands, view, size)
        assert len(drawn.rows) == size.height
        assert all(cell_len(plain_text(row)) <= size.width for row in drawn.rows)
        if drawn.under is not None:
            assert 0 < drawn.under.row < size.height
            assert plain_text(drawn.rows[drawn.under.row]).startswith("▸")


def stands_on(app: Driven) -> list[str]:
    """The words of the row under the cursor."""
    return next(row for row in app.rows if row.startswith("▸")).removeprefix("▸").split()


async def test_a_number_of_the_label_is_set_from_its_row_and_the_cursor_stays() -> None:
    async with opened(PretendSession(), size=(100, 60)) as app:
        await app.press("4", "down", "space", *["down"] * 10)
        assert stands_on(app)[0] == "rate"
        await app.press("enter")
        assert app.line == "set pond-ridge rate 2.5lb/k 3.5lb/k"
        await app.press(*["backspace"] * len("3.5lb/k"))
        await app.type("3lb/k")
        await app.press("enter")
        assert stands_on(app)[:3] == ["rate", "2.5lb/k", "3lb/k"]
        assert "at the high rate, 3 lb/k" in app.screen
        await app.press("escape")
        assert stands_on(app)[0] == "pond-ridge"


async def test_an_amount_is_put_down_from_its_row() -> None:
    session = PretendSession()
    async with opened(session, size=(100, 60)) as app:
        await app.press("4", "down", "space", "down", "down", "enter")
        assert app.line == "feed pond-ridge 6lb front"
        await app.press("enter")
        assert session.done[-1].kind == "feeding"
        assert app.line == ""
        await app.press("4", "4")
        assert "Shed · back" in app.rows[0]


async def test_a_row_inside_is_clicked_like_any_other() -> None:
    async with opened(PretendSession(), size=(100, 60)) as app:
        await app.press("4", "down", "space")
        at = next(at for at, row in enumerate(app.rows) if row.strip().startswith("slow "))
        app.app.acts.clicked(8, at, twice=True)
        await app.rest()
        assert app.line == "set pond-ridge slow 30% of n"
