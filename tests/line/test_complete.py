"""What could come next."""

import pytest

from journal.line.complete import MOST, Completion, complete
from tests.line.lawns import TODAY, US, a_history, logged

BOOK = a_history(US)


def after(text: str, *lines: str) -> Completion:
    return complete(text, len(text), logged(BOOK, lines), TODAY)


@pytest.mark.parametrize(
    ("typed", "ghost"),
    [("m", "ow"), ("w", "ater"), ("see", ""), ("aer", "ate"), ("dew", ""), ("feed qu", "iet-lane"), ("mow fr", "ont"),
     ("treat th", "istle-out"), ("see red", "-thread"), ("MO", "w"), ("feed oat-hill-starter", ""), ("set fr", "ont"),
     ("zone front ar", "ea"), ("product quiet-lane sl", "ow"), ("snooze mow", "-gap"), ("mow y", "esterday"),
     ("intend se", "ed")],
)  # fmt: skip
def test_the_ghost_is_the_rest_of_the_best_candidate(typed: str, ghost: str) -> None:
    assert after(typed).ghost == ghost


def test_only_products_that_the_verb_puts_down_are_offered() -> None:
    assert {"thistle-out", "three-river-blend"}.isdisjoint(after("feed ").candidates)
    assert after("seed t").candidates[0] == "three-river-blend"
    assert "thistle-out" not in after("seed t").candidates


def test_what_was_used_last_with_the_verb_comes_first_then_the_alphabet() -> None:
    assert after("feed ").candidates[:3] == ("dew-iron", "oat-hill-starter", "quiet-lane")
    used = after("feed ", "feed quiet-lane 12lb back")
    assert used.candidates[:2] == ("quiet-lane", "back")
    assert after("mow b", "mow 3in back-walk").ghost == "ack-walk"


@pytest.mark.parametrize("typed", ["mow front ", "mow fron ", "mow FRONT ", "mow 3in front "])
def test_words_already_given_drop_out(typed: str) -> None:
    assert "front" not in after(typed).candidates
    assert "back" in after(typed).candidates


def test_a_word_too_short_to_be_a_name_takes_nothing_away() -> None:
    assert "front" in after("mow f ").candidates


@pytest.mark.parametrize("typed", ["", "   ", "note mo", "mow 3in -- fr", "qq", "qq front", "mow zzz", "mow ß"])
def test_nothing_is_offered_where_nothing_fits(typed: str) -> None:
    assert after(typed) == Completion()


def test_nothing_is_offered_within_the_line() -> None:
    assert complete("mow fr", 3, BOOK, TODAY) == Completion()


def test_at_most_six_are_offered() -> None:
    assert len(after("see ").candidates) == MOST
    assert len(after("s").candidates) <= MOST


def test_a_pinned_letter_offers_its_verb_first() -> None:
    assert after("s").candidates[0] == "see"
    assert after("p").candidates[:2] == ("photo", "product")
