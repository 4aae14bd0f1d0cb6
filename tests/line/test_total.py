"""Every text gives a reading: a draft or a problem, never both, never an error."""

import time

from hypothesis import example, given, settings
from hypothesis import strategies as st

from journal.line.complete import complete
from journal.line.read import read, read_change
from journal.line.reading import Reading
from journal.record.clean import unseen
from journal.record.document import to_document
from journal.record.entry import VERBS
from journal.store.plain import fault, text_fault
from tests.line.lawns import METRIC, TODAY, US, a_history, logged

BOOK = logged(a_history(US), ["mow 3in bag front 40min", "feed oat 12lb front back", "water A 20min B 12min"])
METRIC_BOOK = a_history(METRIC)

WORDS = (
    *VERBS, "front", "ba", "all", "oat", "thistle-out", "unknown", "3in", "3", "in", "1/2", "1/0", "-3d", "-99999d",
    "5/15",
    "2/29", "31", "feb", "~", "~mon", "~4/15", "on", "from", "to", "in", "since", "part", "spot", "40sqft", "40", "%",
    "40%",
    "by", "service", "+", "--", "!", "wind", "4mph", "temp", "-3C", "p", "low", "95ppm", "ph", "7:30", "25:00", "12am",
    "$31", "$-1", "$", "half", "a", "bag", "2bag", "cup", "7d", "99999999d", "999999999999in", "A", "20min", "Z",
    "edge", "kept",
    '"', "'", '""', '"a b"', "'a b'", '"a', "[/", "[red]", "[", "\\", "\u202e", "\u200b", "\u200d", "\ud800", "é",
    "e\u0301",
    "ß", "İ", "ﬀ", "🌱", "👩‍🌾", "שלום", "٣in", "²", "½in", "mow-gap", "mow-gap/front", "days", "12", "off", "area",
    "2400",
    "sq", "ft", "fl", "oz", "kind", "seed", "starter", "analysis", "18-24-6", "slow", "of", "n", "circuits", "60%",
    "0.5in/h;",
    "grass", "kentucky", "bluegrass", "growth", "04-10", "11-10", "last_frost", "99-99", "units", "metric", "tested",
    "2026-03",
    "0001-01-01", "9999-12-31", "last", "ago", "month", "today", "tomorrow", "grubs", "4/sqft", "rust", "x", "2x",
    "\x85", "\x1b",
    "\u2028", "\x00",
)  # fmt: skip

LINES = st.lists(st.sampled_from(WORDS), max_size=9).map(" ".join)
TEXTS = st.text(st.characters(), max_size=60)
AFTER_A_VERB = st.builds(lambda verb, rest: f"{verb} {rest}", st.sampled_from(sorted(VERBS)), st.one_of(LINES, TEXTS))


def check(reading: Reading, text: str) -> None:
    """What holds for every reading."""
    assert reading.text == text
    assert (reading.draft is None) != (reading.problem is None)
    marks = [(span.start, span.end) for span in reading.spans]
    if reading.problem is not None:
        marks.append((reading.problem.start, reading.problem.end))
        assert str(reading.problem)
    for start, end in marks:
        assert 0 <= start <= end <= len(text)
    if reading.draft is not None:
        document = to_document(reading.draft)
        assert not fault(document)
        assert not text_fault(document)
        assert not unseen(reading.draft.remark)
        assert not unseen(reading.draft.line)
        assert reading.words


@settings(max_examples=400)
@example("mow --")
@example('photo "a -- b.jpg" -- c !')
@example("snooze mow-gap 99999999d")
@example("note")
@example("mow \ud800")
@given(st.one_of(LINES, TEXTS, AFTER_A_VERB))
def test_every_text_gives_a_reading(text: str) -> None:
    check(read(text, BOOK, TODAY), text)


@settings(max_examples=150)
@given(AFTER_A_VERB)
def test_every_text_gives_a_reading_in_a_metric_book_and_in_place_of_another_entry(text: str) -> None:
    check(read(text, METRIC_BOOK, TODAY), text)
    old = BOOK.track("front", VERBS["mow"][1]).entries[0]
    check(read_change(text, old, BOOK, TODAY), text)


@settings(max_examples=200)
@given(st.one_of(LINES, TEXTS, AFTER_A_VERB), st.integers(-1, 80))
def test_every_text_can_be_completed(text: str, cursor: int) -> None:
    for at in (len(text), cursor):
        found = complete(text, at, BOOK, TODAY)
        assert len(found.candidates) <= 6
        if found.ghost:
            assert any(candidate.endswith(found.ghost) for candidate in found.candidates)


@settings(max_examples=10)
@given(
    st.sampled_from(['"', "'", "! ", "-- ", "+ ", "1/", "re", "a b ", "\u0301", "[/", "0", "~", "3in ", "x" * 50 + " "])
)
def test_long_texts_are_read_in_no_time(piece: str) -> None:
    for head in ("", "mow ", "see ", "set name ", "photo ", "note "):
        text = (head + piece * 1000)[:1000]
        began = time.process_time()
        check(read(text, BOOK, TODAY), text)
        assert time.process_time() - began < 1, text[:20]
        longer = head + piece * 10_000
        assert read(longer, BOOK, TODAY).problem is not None


def test_reading_changes_nothing() -> None:
    before = (dict(BOOK.tracks), BOOK.ground, BOOK.size)
    read("set front area 99sqft", BOOK, TODAY)
    read("mow 3in", BOOK, TODAY)
    assert (dict(BOOK.tracks), BOOK.ground, BOOK.size) == before
