"""What breaks a label: too much of a product, and spraying in wind."""

import pytest

from journal.season.history import History
from journal.standing import findings
from tests.scenario import LAWN, book, day, judged, later, lawn, level, raised

ON = "2026-06-01"


def labelled(rate: str = "1.1floz/k 1.5floz/k", label: str = "", granule: str = "2lb/k 3lb/k") -> History:
    """The shed with rates copied from two labels; both zones are 2,400 sq ft."""
    toml = LAWN.replace("3100 sqft", "2400 sqft")
    toml = toml.replace('form = "liquid"', f'form = "liquid"\nrate = "{rate}"\n[product.label]\n{label}')
    return lawn(toml=toml.replace('form = "granule"', f'form = "granule"\nrate = "{granule}"'))


def test_above_the_labels_high_rate_is_harm() -> None:
    diary = book(f"{ON} treat leaf-off 50floz front", on=labelled())
    flag = raised(diary, ON, "label-rate")
    assert flag is not None
    assert (flag.level, flag.subject) == ("harm", "leaf-off")
    assert flag.headline == "leaf-off at 20.8 fl oz/k; its label allows 1.5 fl oz/k"
    assert [(one.words, one.origin) for one in flag.numbers.values()] == [("1.5 fl oz/k", "label")]
    assert level(diary, later(ON, 29), "label-rate") == "harm"
    assert level(diary, later(ON, 30), "label-rate") == ""
    assert level(diary, ON, "label-rate", "back") == ""


@pytest.mark.parametrize(
    ("amount", "says"),
    [("1.5floz/k", ""), ("1.53floz/k", ""), ("1.54floz/k", "harm"), ("3.6floz", ""), ("3.7floz", "harm")],
)  # fmt: skip
def test_what_comes_of_rounding_is_within_the_rate(amount: str, says: str) -> None:
    assert level(book(f"{ON} treat leaf-off {amount} front", on=labelled()), ON, "label-rate") == says


def test_two_passes_of_one_day_are_one_application() -> None:
    twice = book(f"{ON} treat leaf-off 2floz front", f"{ON} treat leaf-off 2floz front back", on=labelled())
    assert level(twice, ON, "label-rate") == ""
    thrice = book(f"{ON} treat leaf-off 2floz front", on=twice)
    assert level(thrice, ON, "label-rate") == "harm"
    assert level(thrice, ON, "label-rate", "back") == ""
    line = "treat leaf-off 3floz front"
    next_day = book(f"{ON} {line}", f"{later(ON, 1)} {line}", on=labelled())
    assert level(next_day, later(ON, 1), "label-rate") == ""


def test_two_halves_of_a_zone_are_not_added() -> None:
    halves = book(*(f"{ON} treat leaf-off 1.8floz part {part}/2 front" for part in (1, 2)), on=labelled())
    assert level(halves, ON, "label-rate") == ""
    one_half = book(f"{ON} treat leaf-off 3.6floz part 1/2 front", on=labelled())
    assert level(one_half, ON, "label-rate") == "harm"


def test_a_spot_is_a_note() -> None:
    spot = book(f"{ON} treat leaf-off 1floz spot 40sqft front", on=labelled())
    assert level(spot, ON, "label-rate") == "note"
    both = book(f"{ON} treat leaf-off 50floz front", on=spot)
    assert {(f.subject, str(f.level)) for f in findings(both, day(ON)) if f.rule == "label-rate"} == {
        ("leaf-off-spot", "note"), ("leaf-off", "harm"),
    }  # fmt: skip


def test_silent_without_a_rate_or_an_amount() -> None:
    assert level(book(f"{ON} treat leaf-off 50floz front"), ON, "label-rate") == ""
    assert level(book(f"{ON} treat leaf-off front", on=labelled()), ON, "label-rate") == ""
    assert level(book(f"{ON} treat leaf-off spot rtu front", on=labelled()), ON, "label-rate") == ""


def test_an_active_brings_its_label_wherever_it_is() -> None:
    toml = LAWN.replace('slow = "20% of n"', 'slow = "20% of n"\nrate = "3lb/k 4lb/k"\nactives = ["mesotrione"]', 1)
    with_active = lawn(toml=toml)
    assert level(book(f"{ON} feed oat-hill 5lb/k front", on=with_active), ON, "label-rate") == "harm"
    plain = lawn(toml=toml.replace('\nactives = ["mesotrione"]', "", 1))
    assert level(book(f"{ON} feed oat-hill 5lb/k front", on=plain), ON, "label-rate") == ""


@pytest.mark.parametrize(
    ("wind", "label", "says"),
    [("5mph", "", ""), ("6mph", "", "note"), ("8mph", "", "note"), ("9mph", "", "harm"), ("14mph", "", "harm"),
     ("9mph", 'wind_max = "10mph"', "note"), ("11mph", 'wind_max = "10mph"', "harm"),
     ("5mph", 'wind_max = "4mph"', "harm"), ("4mph", 'wind_max = "4mph"', "")],
)  # fmt: skip
def test_a_spray_in_wind(wind: str, label: str, says: str) -> None:
    diary = book(f"{ON} treat leaf-off 3floz front wind {wind}", on=labelled(label=label))
    assert level(diary, ON, "treat-windy") == says
    assert level(diary, later(ON, 6), "treat-windy") == says
    assert level(diary, later(ON, 7), "treat-windy") == ""


def test_wind_that_nobody_noted_is_not_judged() -> None:
    assert level(book(f"{ON} treat leaf-off 3floz front"), ON, "treat-windy") == ""


def test_granules_in_wind_are_only_a_note() -> None:
    assert level(book(f"{ON} treat spring-wall 6lb front wind 14mph"), ON, "treat-windy") == "note"
    assert level(book(f"{ON} treat spring-wall 6lb front wind 6mph"), ON, "treat-windy") == ""


@pytest.mark.parametrize(
    ("own", "wind", "says"), [("6mph", "7mph", "harm"), ("12mph", "9mph", "harm"), ("12mph", "8mph", "note")]
)
def test_the_owner_may_be_stricter_never_looser(own: str, wind: str, says: str) -> None:
    diary = book(f"{ON} set treat-windy most {own}", f"{ON} treat leaf-off 3floz front wind {wind}")
    flag = raised(diary, ON, "treat-windy")
    assert flag is not None
    assert flag.level == says
    origins = {name: one.origin for name, one in flag.numbers.items()}
    assert origins == ({"calm": "default"} if says == "note" else {"most": "yours" if own == "6mph" else "default"})


def test_an_unknown_product_is_taken_for_a_spray() -> None:
    assert level(book(f"{ON} treat unknown front wind 14mph"), ON, "treat-windy") == "harm"


def test_harm_holds_a_line_back() -> None:
    too_much = judged(labelled(), ON, "treat leaf-off 50floz front")
    assert too_much.holds_back
    assert too_much.gravest is not None
    assert too_much.gravest.rule == "label-rate"
    assert judged(labelled(), ON, "treat leaf-off 3floz front wind 14mph").holds_back
    assert not judged(labelled(), ON, "treat leaf-off 3floz front wind 4mph").holds_back
    assert not judged(labelled(), ON, "treat leaf-off 1floz spot 40sqft front").holds_back


def test_it_holds_back_a_second_time_too() -> None:
    diary = book(f"{ON} treat leaf-off 50floz front", on=labelled())
    assert judged(diary, later(ON, 3), "treat leaf-off 50floz front").holds_back
    assert not judged(diary, later(ON, 3), "treat leaf-off 3floz front").holds_back


def test_it_cannot_be_switched_off() -> None:
    diary = book(f"{ON} set treat-windy off", f"{ON} treat leaf-off 3floz front wind 14mph")
    assert level(diary, ON, "treat-windy") == "harm"
