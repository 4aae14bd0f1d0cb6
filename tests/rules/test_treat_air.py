"""Leaf products in heat, in cold, on grass at rest, and sprays in still air."""

from datetime import date, time

import pytest

from journal.facts.factors import celsius, mph
from journal.facts.house import number
from journal.reckon.dawn import near_dawn_or_dusk
from tests.rules.treated import shed
from tests.scenario import book, later, level, raised

ON = "2026-06-01"
WARM = 'temp = ["45F", "90F"]'


def treated(words: str, *more: str, label: str = "", on: str = ON) -> dict[str, str]:
    """Levels of the four rules on the day after."""
    name = words.split()[0]
    diary = book(*more, f"{on} treat {words} front", on=shed({name: label} if label else {}))
    rules = ("treat-hot", "treat-cold", "treat-dormant", "treat-still")
    return {rule: said for rule in rules if (said := level(diary, later(on, 1), rule))}


# heat


@pytest.mark.parametrize(
    ("temp", "label", "says"),
    [("85F", "", ""), ("86F", "", "loss"), ("86F", WARM, ""), ("91F", WARM, "loss"), ("70F", "", "")],
)
def test_above_85_degrees_or_above_the_label(temp: str, label: str, says: str) -> None:
    """Iowa State Univ. Extension: not if above 85 F is forecast within 24 hours."""
    assert treated(f"leaf-off 1floz temp {temp}", label=label).get("treat-hot", "") == says


@pytest.mark.parametrize(("today", "tomorrow", "says"), [(86, 70, "loss"), (70, 86, "loss"), (85, 85, "")])
def test_the_high_of_that_day_and_of_the_next_count(today: int, tomorrow: int, says: str) -> None:
    days = (f"{ON} weather {today}F 60F", f"{later(ON, 1)} weather {tomorrow}F 60F")
    assert treated("leaf-off 1floz temp 68F", *days).get("treat-hot", "") == says


def test_the_next_day_is_known_on_the_next_day() -> None:
    diary = book(f"{ON} weather 80F 60F", f"{ON} treat leaf-off 1floz front", f"{later(ON, 1)} weather 90F 60F",
                 on=shed())  # fmt: skip
    assert level(diary, ON, "treat-hot") == ""
    assert level(diary, later(ON, 1), "treat-hot") == "loss"
    assert level(diary, later(ON, 6), "treat-hot") == "loss"
    assert level(diary, later(ON, 7), "treat-hot") == ""


def test_heat_two_days_later_is_another_matter() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", f"{later(ON, 2)} weather 95F 60F", on=shed())
    assert level(diary, later(ON, 2), "treat-hot") == ""


def test_july_grub_granules_and_a_barrier_are_no_matter_of_heat() -> None:
    hot = f"{ON} weather 92F 70F"
    assert treated("grub-end 3lb", hot) == treated("grub-off 3lb", hot) == treated("spring-wall 3lb", hot) == {}


def test_weed_and_feed_is_even_when_it_is_logged_as_a_feeding() -> None:
    diary = book(f"{ON} weather 92F 70F", f"{ON} feed green-gate 3lb front", on=shed())
    assert level(diary, ON, "treat-hot") == "loss"


def test_a_starter_with_an_active_goes_to_the_seed() -> None:
    diary = book("2026-08-20 weather 92F 70F", "2026-08-20 feed seed-start 3lb front", on=shed())
    assert level(diary, "2026-08-20", "treat-hot") == ""


def test_the_owners_own_limit() -> None:
    diary = book(f"{ON} set treat-hot most 80F", f"{ON} treat leaf-off 1floz front temp 82F", on=shed())
    flag = raised(diary, ON, "treat-hot")
    assert flag is not None
    assert flag.headline == "leaf-off in 82 F of heat"
    assert [(one.words, one.origin) for one in flag.numbers.values()] == [("80 F", "yours")]


# cold


@pytest.mark.parametrize(
    ("high", "label", "says"),
    [(50, "", ""), (49, "", "note"), (40, "", "note"), (39, "", "loss"), (46, WARM, ""), (44, WARM, "note"),
     (39, WARM, "loss"), (38, 'temp = ["35F", "85F"]', ""), (34, 'temp = ["35F", "85F"]', "loss")],
)  # fmt: skip
def test_below_50_degrees_a_note_below_40_a_loss(high: int, label: str, says: str) -> None:
    """K-State Extension: 50 degrees or higher. Purdue: 40 F."""
    found = treated("leaf-off 1floz", f"{ON} weather {high}F 30F", label=label)
    assert found.get("treat-cold", "") == says


def test_the_high_of_the_day_goes_before_a_cool_morning() -> None:
    assert treated("leaf-off 1floz temp 45F") == {"treat-cold": "note"}
    assert treated("leaf-off 1floz temp 45F", f"{ON} weather 66F 40F") == {}


def test_the_april_barrier_is_no_matter_of_cold() -> None:
    assert treated("spring-wall 3lb temp 45F", "2026-04-10 weather 44F 30F", on="2026-04-10") == {}


# at rest


def test_a_leaf_applied_weed_product_on_dormant_grass() -> None:
    rest = "2026-05-20 see dormant front"
    assert treated("leaf-off 1floz", rest) == {"treat-dormant": "loss"}
    assert treated("spring-wall 3lb", rest) == treated("spot-out 1floz", rest) == {}
    assert treated("leaf-off spot", rest) == {"treat-dormant": "note"}
    assert treated("leaf-off 1floz", rest, "2026-05-30 see green front") == {}
    assert treated("leaf-off 1floz") == {}


def test_green_again_afterwards_does_not_undo_it_and_it_stands_14_days() -> None:
    diary = book("2026-05-20 see dormant front", f"{ON} treat leaf-off 1floz front",
                 f"{later(ON, 2)} see green front", on=shed())  # fmt: skip
    assert level(diary, later(ON, 13), "treat-dormant") == "loss"
    assert level(diary, later(ON, 14), "treat-dormant") == ""


def test_on_dormant_grass_heat_is_no_second_card() -> None:
    found = treated("leaf-off 1floz temp 92F", "2026-05-20 see dormant front")
    assert found == {"treat-dormant": "loss"}


# still air


@pytest.mark.parametrize(
    ("words", "says"),
    [("wind 2mph 6:30", "note"), ("wind 2mph 21:00", "note"), ("wind 2mph 12:00", ""), ("wind 2mph", "note"),
     ("wind 3mph 6:30", ""), ("6:30", ""), ("wind 0mph 19:00", "note")],
)  # fmt: skip
def test_below_3_mph_near_dawn_or_dusk_or_at_no_noted_time(words: str, says: str) -> None:
    """Pesticide Environmental Stewardship: at least 3 mph; calm may mean an inversion."""
    assert treated(f"leaf-off 1floz {words}").get("treat-still", "") == says


def test_granules_lie_still() -> None:
    assert treated("spring-wall 3lb wind 1mph") == {}


def test_it_stands_a_week() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front wind 1mph", on=shed())
    assert level(diary, later(ON, 6), "treat-still") == "note"
    assert level(diary, later(ON, 7), "treat-still") == ""


def test_dawn_and_dusk_by_the_clock() -> None:
    june, winter = date(2026, 6, 21), date(2026, 12, 21)
    assert near_dawn_or_dusk(june, time(7, 30), 42.3, 2)
    assert not near_dawn_or_dusk(june, time(10), 42.3, 2)
    assert near_dawn_or_dusk(winter, time(10), 42.3, 2)
    assert not near_dawn_or_dusk(june, time(12), None, 2)
    assert near_dawn_or_dusk(winter, time(7, 30), -42.3, 2)
    assert not near_dawn_or_dusk(june, time(7, 30), 42.3, 0)


@pytest.mark.parametrize(
    ("rule", "name", "value", "key"),
    [("treat-hot", "most", celsius(85), "isu-broadleaf"), ("treat-cold", "least", celsius(50), "kstate-salina"),
     ("treat-cold", "loss", celsius(40), "purdue-potw"), ("treat-still", "least", mph(3), "stewardship-weather")],
)  # fmt: skip
def test_the_numbers_and_their_publications(rule: str, name: str, value: float, key: str) -> None:
    found = number(rule, name)
    assert found.default == value
    assert key in {one.key for one in found.basis.citations}
