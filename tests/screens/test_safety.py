"""Every page that shows a treatment carries the safety words once, in every size; a page without one does not."""

import pytest

from journal.facts.safety import SHORT
from journal.screens.page import Page, Size
from journal.screens.pages import pages
from journal.screens.picture import plain_text
from journal.screens.view import View
from journal.standing import standing
from tests.scenario import book, day, lawn

SIZES = (Size(80, 21), Size(120, 33), Size(200, 57))
ON = day("2026-05-06")
SPRAYED = book("2026-05-04 treat leaf-off 2floz front wind 9mph")
MOWN = book(
    "2026-05-04 mow 3in front",
    on=lawn(('kind = "weed-and-feed"\n', 'kind = "fertilizer"\n'), ('actives = ["2,4-d", "dicamba"]\n', "")),
)


def _rows(page: Page, size: Size, history: object) -> str:
    found = standing(history, ON)  # type: ignore[arg-type]
    return "\n".join(plain_text(row) for row in page.draw(found, View(as_of=ON, today=ON), size).rows)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("page", [page for page in pages() if page.name != "ground"], ids=lambda page: page.name)
def test_a_page_that_shows_a_treatment_says_the_words_once(page: Page, size: Size) -> None:
    assert _rows(page, size, SPRAYED).count(SHORT) == 1


@pytest.mark.parametrize(
    "page", [page for page in pages() if page.name not in ("shed", "ground")], ids=lambda p: p.name
)
def test_a_page_without_one_says_nothing_of_it(page: Page) -> None:
    assert SHORT not in _rows(page, SIZES[1], MOWN)
