"""Feet on a seedbed: common practice; as little as possible until it is mown (Rural Messenger, Fall lawn tips)."""

from tests.scenario import book, later, level, raised

SOWN = "2026-09-06"
SEED = f"{SOWN} seed three-river 6lb front"


def seen(*days: int) -> list[str]:
    return [f"{later(SOWN, at)} see traffic front" for at in days]


def test_seen_once_it_is_a_note_for_two_weeks() -> None:
    diary = book(SEED, *seen(5))
    assert [level(diary, later(SOWN, 5 + at), "seedbed-traffic") for at in (-1, 0, 13, 14)] == ["", "note", "note", ""]


def test_the_third_time_in_seven_days_is_a_loss() -> None:
    assert level(book(SEED, *seen(5, 8)), later(SOWN, 8), "seedbed-traffic") == "note"
    assert level(book(SEED, *seen(5, 8, 11)), later(SOWN, 11), "seedbed-traffic") == "loss"
    assert level(book(SEED, *seen(5, 8, 12)), later(SOWN, 12), "seedbed-traffic") == "note"
    diary = book(SEED, *seen(5, 8, 11, 20))
    assert [level(diary, later(SOWN, at), "seedbed-traffic") for at in (24, 25, 33, 34)] == ["loss", "note", "note", ""]


def test_a_lawn_may_be_walked_on() -> None:
    assert level(book(*seen(5)), later(SOWN, 5), "seedbed-traffic") == ""
    mown = book(SEED, f"{later(SOWN, 28)} mow 3in front", *seen(29))
    assert level(mown, later(SOWN, 29), "seedbed-traffic") == ""
    assert level(book(SEED, *seen(-1)), SOWN, "seedbed-traffic") == ""
    assert level(book(SEED, *seen(57)), later(SOWN, 57), "seedbed-traffic") == ""


def test_it_stands_its_days_though_the_first_cut_comes() -> None:
    diary = book(SEED, *seen(26), f"{later(SOWN, 28)} mow 3in front")
    assert level(diary, later(SOWN, 30), "seedbed-traffic") == "note"


def test_round_a_spot_it_is_a_note_that_names_the_spot() -> None:
    diary = book(f"{SOWN} seed three-river 0.5lb spot 40sqft front", *seen(3, 4, 5))
    flag = raised(diary, later(SOWN, 5), "seedbed-traffic")
    assert flag is not None
    assert (flag.level, "a spot sown Sun 6 Sep" in flag.why) == ("note", True)
    cut = book(f"{SOWN} seed three-river 0.5lb spot 40sqft front", f"{later(SOWN, 21)} mow 3in front", *seen(22))
    assert level(cut, later(SOWN, 22), "seedbed-traffic") == ""


def test_the_owners_own_numbers() -> None:
    own = book("2026-09-01 set seedbed-traffic often 2", SEED, *seen(5, 8))
    assert level(own, later(SOWN, 8), "seedbed-traffic") == "loss"
