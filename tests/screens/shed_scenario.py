"""A shed of three products and what was bought and used, for the tests of its page."""

from journal.screens.page import Size
from journal.screens.pages.shed import PAGE
from journal.screens.picture import Picture, plain_text
from journal.screens.view import View
from journal.season.history import History
from journal.standing import Standing, standing
from tests.scenario import LAWN, book, day, lawn

TODAY = day("2026-06-10")
SHED = """
[[product]]
name = "amber"
kind = "fertilizer"
analysis = "24-0-10"
slow = "60% of n"
bag = "20 lb"
rate = ["2.5 lb/k", "3.75 lb/k"]

[[product]]
name = "thicket-off"
kind = "weed"
actives = ["2,4-d", "dicamba", "mecoprop-p"]
form = "liquid"
bottle = "32 floz"
rate = ["1.1 floz/k", "1.5 floz/k"]

[[product]]
name = "live-blend"
kind = "seed"
mix = [{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]
rate = ["2 lb/k", "3 lb/k"]
rate_basis = "pls"
"""
TWO_ZONES = LAWN.partition("[[product]]")[0].replace("3100", "3000")
BOUGHT = (
    "2026-04-01 buy amber 2x 20lb $68",
    "2026-04-01 buy thicket-off 1x 32floz $29",
    "2026-04-01 buy live-blend 1x 20lb $84 pure 95 germ 80 tested 2025-06",
    "2026-05-02 feed amber 6lb front",
)


def shed(*lines: str, toml: str = TWO_ZONES + SHED) -> History:
    """Front 2,400 and back 3,000 sq ft, three products."""
    return book(*lines, on=lawn(toml=toml))


SIZE = Size(100, 90)
_JUDGED: list[tuple[History, Standing]] = []


def judged(history: History) -> Standing:
    """The book on the day; of one book it is asked many times over."""
    if not _JUDGED or _JUDGED[0][0] is not history:
        _JUDGED[:] = [(history, standing(history, TODAY))]
    return _JUDGED[0][1]


def picture(history: History, size: Size = SIZE, **view: object) -> Picture:
    """The page as it is drawn."""
    return PAGE.draw(judged(history), View(as_of=TODAY, today=TODAY, page=4).but(**view), size)


def rows(history: History, size: Size = SIZE, **view: object) -> list[str]:
    """The page as text."""
    return [plain_text(row) for row in picture(history, size, **view).rows]


def row_of(shown: list[str], start: str) -> str:
    """The only row that begins so."""
    found = [row for row in shown if row.strip("▸ ").startswith(start)]
    assert len(found) == 1, (start, found)
    return " ".join(found[0].split())


def at(history: History, name: str) -> int:
    """Where the cursor stands on what is named so."""
    return next(at for at, target in enumerate(picture(history).targets) if target.name == name)


def line(history: History, name: str) -> str:
    """What Enter takes from what is named so, its product opened."""
    under = picture(history, row=at(history, name), open=True).under
    assert under is not None
    assert under.name == name
    return under.line


def closed_line(history: History, product: str) -> str:
    """What Enter takes from the row of a product."""
    under = picture(history, row=at(history, product)).under
    assert under is not None
    return under.line
