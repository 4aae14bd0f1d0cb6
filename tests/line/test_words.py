"""An entry in words, on any lawn, whatever it holds."""

from datetime import date

import pytest
from hypothesis import given, settings

from journal.line.caution import shows_safety
from journal.line.words import in_words, summary
from journal.record.entry import Entry
from journal.record.kinds.setting import Setting
from tests.line.entries import KINDS_ON_A_LINE, entries
from tests.line.lawns import EMPTY_BOOK, METRIC, TODAY, US, a_history, drafted, logged

BOOK = a_history(US)
LAWNS = (BOOK.lawn(TODAY), a_history(METRIC).lawn(TODAY), EMPTY_BOOK.lawn(TODAY))


@pytest.mark.parametrize("kind", KINDS_ON_A_LINE, ids=lambda kind: kind.kind)
def test_every_entry_can_be_said_in_words(kind: type[Entry]) -> None:
    @settings(max_examples=10)
    @given(entries(kind, LAWNS[0]))
    def said(entry: Entry) -> None:
        for lawn in LAWNS:
            assert in_words(entry, lawn, TODAY).strip()
            assert "(usual)" not in summary(entry, lawn) or "(usual)" in str(entry)

    said()
    for lawn in LAWNS:  # with nothing said, as an old document may be
        assert in_words(kind(date=date(2020, 2, 29)), lawn, TODAY)
        summary(kind(date=date(2020, 2, 29)), lawn)


@pytest.mark.parametrize(
    ("line", "words"),
    [("mow 3in bag front 40min", "mow front, at 3 in, bagged, 40 min, today"),
     ("m", "mow all zones (usual), at 3 in (usual), today"),
     ("treat thistle 5.5floz front wind 4mph temp 32F -1d -- dew",
      "treat 5.5 fl oz thistle-out on front, wind 4 mph, air 32 F, yesterday -- dew"),
     ("rain 0in", "rain, 0 in, today"),
     ("see rust 10% back ~4/15", "see back, rust, 10 %, about Thu 15 Apr"),
     ("set front area 2100sqft from 2027-04-01", "set front: area 2100sqft, from Thu 1 Apr"),
     ("mow front 40% 5/1/26", "mow front 40 %, at 3 in (usual), Fri 1 May 2026"),
     ("note [b]moles[/b]", "note: [b]moles[/b], today")],
)  # fmt: skip
def test_a_line_in_words(line: str, words: str) -> None:
    entry = drafted(line, BOOK)
    assert in_words(entry, LAWNS[0], TODAY) == words


def test_a_setting_of_nothing_has_words() -> None:
    assert in_words(Setting(date=TODAY, what="zone", name="side"), LAWNS[0], TODAY) == "set side"


def test_products_against_weeds_and_pests_bring_the_safety_words() -> None:
    history = logged(BOOK, ["product green-guard kind weed-and-feed"])
    lawn = history.lawn(TODAY)
    protecting = ("treat unknown front", "treat thistle 3floz", "feed green-guard 12lb", "intend treat thistle 9/9",
                  "buy gate 1x")  # fmt: skip
    for line in protecting:
        assert shows_safety(drafted(line, history), lawn), line
    for line in ("feed quiet-lane 12lb", "mow", "buy quiet-lane 1x"):
        assert not shows_safety(drafted(line, history), lawn), line
