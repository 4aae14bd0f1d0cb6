"""What several files of reckonings ask of a refusal."""

from collections.abc import Callable

import pytest

from journal.record.refusal import Refusal
from tests.reckon.called import answer


@pytest.fixture
def refused() -> Callable[[str, str, str], None]:
    """`refused("lime --need 0lb/k --area 1m2", "--need 0lb/k", "more than nothing")`: the word named, and why."""

    def check(line: str, word: str, why: str) -> None:
        with pytest.raises(Refusal) as caught:
            answer(line)
        assert caught.value.word == word
        assert why in caught.value.why

    return check
