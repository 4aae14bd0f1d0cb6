"""One card for what is said of one entry."""

from journal.rules.cards import cards
from journal.rules.flag import Level
from journal.standing import findings, standing
from tests.scenario import book, day

DIARY = book(
    "2026-08-20 treat leaf-off 2floz front", "2026-08-28 seed stone-wall 9lb front", "2026-09-02 mow 1in front",
    "2026-09-02 mow 3in back",
)  # fmt: skip


def test_the_gravest_flag_of_an_entry_heads_its_card() -> None:
    table = cards(standing(DIARY, day("2026-09-03")).flags)
    (card,) = [card for card in table if card.head.rule == "seed-over-residue"]
    assert card.head.level is Level.LOSS
    assert {"mow-first-early", "seed-switch"} <= {flag.rule for flag in card.lines}
    assert all(set(flag.evidence) & set(card.head.evidence) for flag in card.lines)


def test_every_flag_stands_on_one_card_and_none_is_graver_than_its_head() -> None:
    for flags in (standing(DIARY, day("2026-09-03")).flags, findings(DIARY, day("2026-09-03"))):
        table = cards(flags)
        assert sorted(flag.id for card in table for flag in card.flags) == sorted(flag.id for flag in flags)
        assert all(line.level.gravity <= card.head.level.gravity for card in table for line in card.lines)
        heads = [card.head.level.gravity for card in table]
        assert heads == sorted(heads, reverse=True)


def test_flags_that_share_no_entry_have_cards_of_their_own() -> None:
    flags = standing(book("2026-06-01 mow 3in front", "2026-05-31 mow 3in back"), day("2026-06-14")).flags
    gaps = [card for card in cards(flags) if card.head.rule == "mow-gap"]
    assert len(gaps) == 2
    assert all("mow-gap" not in {line.rule for line in card.lines} for card in gaps)
    assert cards(()) == ()
