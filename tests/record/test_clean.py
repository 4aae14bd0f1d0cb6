"""What enters the book holds nothing that can't be seen."""

import unicodedata

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from journal.record.clean import clean, control_at, unseen

HIDDEN = [*range(0x20), *range(0x7F, 0xA0), 0xAD, 0x061C, 0x180E, 0x200B, 0x200C, 0x200E, 0x200F, *range(0x202A,
0x202F),
          *range(0x2060, 0x2070), 0xFEFF, 0x2028, 0x2029, 0xD800, 0xDFFF, 0xE0041]  # fmt: skip


@example(" \u0301a")
@example("a\u200b\u0301")
@example("\u1100\u200b\u1161")
@given(st.text(st.characters(), max_size=80))
def test_nothing_hidden_comes_through_and_once_is_enough(text: str) -> None:
    found = clean(text)
    assert clean(found) == found
    assert unicodedata.normalize("NFC", found) == found
    assert not {ord(char) for char in found} & set(HIDDEN)
    assert found == found.strip()
    found.encode("utf-8")
    assert control_at(found) is None
    assert not unseen(found)


@pytest.mark.parametrize("code", HIDDEN)
def test_each_hidden_character_is_taken_out(code: int) -> None:
    assert clean(f"a{chr(code)}b") in ("ab", "a b")
    assert unseen(f"a{chr(code)}b")


@pytest.mark.parametrize(
    ("text", "cleaned"),
    [("a\tb", "a b"), ("a\r\nb", "a b"), ("  a  ", "a"), ("e\u0301", "é"), ("👩\u200d🌾", "👩\u200d🌾"),
     ("שלום", "שלום"), ("[/red]", "[/red]"),
     ("2\ufe0f", "2\ufe0f"), ("two  blanks", "two  blanks")],
)  # fmt: skip
def test_what_can_be_seen_stays(text: str, cleaned: str) -> None:
    assert clean(text) == cleaned


def test_a_control_character_is_found_but_a_tab_is_none() -> None:
    assert control_at("ab\x1bc") == 2
    assert control_at("a\tb\nc") is None
    assert control_at("") is None
