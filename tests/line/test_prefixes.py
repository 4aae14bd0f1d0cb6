"""What a prefix of a verb meant once it means for good."""

from pathlib import Path

import pytest

from journal.line.verb import PINS, find_verb, prefix_table, shortest
from journal.record.entry import VERBS

GOLDEN = Path(__file__).parent / "golden" / "prefixes.txt"


def _golden() -> dict[str, str]:
    lines = GOLDEN.read_text("utf-8").splitlines()
    return dict(tuple(line.split(" ", 1)) for line in lines)  # type: ignore[misc]


def broken(old: dict[str, str], new: dict[str, str]) -> list[str]:
    """The prefixes whose meaning changed otherwise than a new verb may change it.

    A new verb may take what meant nothing or could not be decided; it may not make a meaning undecided or another's.
    """
    verbs = {meaning for meaning in old.values() if "|" not in meaning}
    problems = []
    for prefix, meaning in old.items():
        now = new.get(prefix, "")
        kept = set(meaning.split("|")) <= set(now.split("|"))
        fresh = "|" not in now and now not in verbs and bool(now)
        if now != meaning and not ("|" in meaning and (kept or fresh)):
            problems.append(f"{prefix}: {meaning} -> {now or 'nothing'}")
    return problems


def test_no_prefix_means_another_verb_than_it_did() -> None:
    assert broken(_golden(), prefix_table()) == []


def test_the_golden_file_holds_every_prefix() -> None:
    missing = [f"{prefix} {meaning}" for prefix, meaning in prefix_table().items() if prefix not in _golden()]
    assert missing == [], "add these lines to the golden file"


def test_a_new_verb_may_take_only_what_was_free() -> None:
    old = {"a": "aerate|aside", "ae": "aerate", "aerate": "aerate", "as": "aside", "aside": "aside"}
    assert broken(old, old | {"r": "rest", "rest": "rest"}) == []
    assert broken(old, old | {"a": "a"}) == []
    assert broken(old, old | {"a": "aerate|aside|axe"}) == []
    assert broken(old, old | {"ae": "aerate|aerify"}) == ["ae: aerate -> aerate|aerify"]
    assert broken(old, old | {"ae": "aerify"}) == ["ae: aerate -> aerify"]
    assert broken(old, old | {"a": "aerate"}) == ["a: aerate|aside -> aerate"]
    assert broken(old, {}) == [f"{prefix}: {meaning} -> nothing" for prefix, meaning in old.items()]


def test_the_pinned_letters_are_these() -> None:
    assert PINS == {
        "m": "mow", "w": "water", "r": "rain", "f": "feed", "t": "treat", "s": "see", "p": "photo", "b": "buy",
        "n": "note", "h": "height", "i": "intend", "c": "count",
    }  # fmt: skip


@pytest.mark.parametrize(
    ("word", "verb"),
    [("see", "see"), ("seed", "seed"), ("s", "see"), ("ae", "aerate"), ("to", "topdress"), ("we", "weather"),
     ("so", "soil"), ("sh", "sharpen"), ("sn", "snooze"), ("bl", "blade"), ("z", "zone"), ("MOW", "mow"), ("M", "mow"),
     ("d", "dethatch"), ("sc", "schedule"), ("rak", "rake"), ("rai", "rain")],
)  # fmt: skip
def test_a_word_means_its_verb(word: str, verb: str) -> None:
    assert find_verb(word).name == verb


@pytest.mark.parametrize("word", ["ra", "se", "a", "mowed", "xyz", "1", "é", "me", "fd"])
def test_a_word_that_could_be_several_or_none_means_none(word: str) -> None:
    assert find_verb(word).name == ""


def test_the_shortest_form_means_the_verb() -> None:
    for verb in VERBS:
        assert find_verb(shortest(verb)).name == verb
