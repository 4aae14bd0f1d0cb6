"""How far from the label's range an amount was."""

import pytest

from journal.season.history import History
from tests.rules.soil_shed import SHED
from tests.scenario import LAWN, book, judged, later, lawn, level, raised, the


def spread(*lines: str) -> History:
    return book(*lines, on=lawn(toml=SHED))


def off(history: History, on: str = "2026-06-10") -> str:
    return level(history, on, "rate-off")


@pytest.mark.parametrize(
    ("rate", "expected"),
    [(1.56, "note"), (1.57, ""), (2, ""), (4, ""), (4.8, ""), (4.89, ""), (4.9, "note")],
)  # fmt: skip
def test_more_than_a_fifth_off_the_label_with_two_in_a_hundred_for_rounding(rate: float, expected: str) -> None:
    assert off(spread(f"2026-06-10 feed pond-ridge {rate}lb/k front")) == expected


def test_the_flag_names_both_rates_and_stands_for_thirty_days() -> None:
    diary = spread("2026-06-10 feed pond-ridge 6lb/k front")
    flag = raised(diary, "2026-06-10", "rate-off")
    assert flag is not None
    assert flag.headline == "pond-ridge at 6 lb/k, above its label's 4 lb/k"
    assert [off(diary, str(later("2026-06-10", at))) for at in (-1, 0, 29, 30)] == ["", "note", "note", ""]


def test_less_that_is_meant_to_be_light_is_let_pass_and_more_is_not() -> None:
    assert off(spread("2026-06-10 feed pond-ridge 1lb/k light front")) == ""
    assert off(spread("2026-06-10 feed pond-ridge 6lb/k light front")) == "note"


def test_two_passes_of_one_day_are_one_rate() -> None:
    half = "2026-06-10 feed pond-ridge 1.5lb/k front"
    assert off(spread(half)) == "note"
    assert off(spread(half, half)) == ""
    assert off(spread(half, half, half, half)) == "note"


def test_parts_and_spots_go_by_their_own_area() -> None:
    """1,200 of 2,400 sq ft at 3 lb/k are 3.6 lb; the whole would be 1.5 lb/k."""
    assert off(spread("2026-06-10 feed pond-ridge 3.6lb part 1/2 front")) == ""
    assert off(spread("2026-06-10 feed pond-ridge 3.6lb front")) == "note"
    both = ("2026-06-10 feed pond-ridge 3.6lb part 1/2 front", "2026-06-10 feed pond-ridge 3.6lb part 2/2 front")
    assert off(spread(*both)) == ""
    assert off(spread("2026-06-10 feed pond-ridge 0.3lb spot 100sqft front")) == ""
    assert off(spread("2026-06-10 feed pond-ridge 0.9lb spot 100sqft front")) == "note"
    assert off(spread("2026-06-10 feed pond-ridge 0.9lb spot front")) == ""


def test_lime_and_supplements_too_by_weight_or_volume() -> None:
    assert off(spread("2026-06-10 feed grey-lime 15lb/k front")) == "note"
    assert off(spread("2026-06-10 feed kelp-mix 9floz/k front")) == "note"
    assert off(spread("2026-06-10 feed kelp-mix 5floz/k front")) == ""


def test_products_against_weeds_are_judged_by_their_labels_law_alone() -> None:
    toml = LAWN.replace('actives = ["2,4-d", "dicamba"]', 'actives = ["2,4-d", "dicamba"]\nrate = "2lb/k 3lb/k"')
    diary = book("2026-06-10 feed green-gate 6lb/k front", on=lawn(toml=toml))
    assert off(diary) == ""
    assert level(diary, "2026-06-10", "label-rate") == "harm"


def test_without_an_amount_an_area_or_a_label_nothing_is_said() -> None:
    assert off(spread("2026-06-10 feed pond-ridge front")) == ""
    assert off(spread("2026-06-10 feed slow-oak 9lb/k front")) == ""
    bare = lawn(('area = "2400 sqft"\n', ""), toml=SHED)
    assert off(book("2026-06-10 feed pond-ridge 60lb front", on=bare)) == ""


def test_the_owners_own_bounds_count() -> None:
    assert off(spread("2026-05-01 set rate-off over 1.6", "2026-06-10 feed pond-ridge 6lb/k front")) == ""


def test_metric_says_it_in_metric() -> None:
    metric = lawn(('name = "North Lane"', 'name = "North Lane"\nunits = "metric"'), toml=SHED)
    flag = raised(book("2026-06-10 feed pond-ridge 30g/m2 front", on=metric), "2026-06-10", "rate-off")
    assert flag is not None
    assert flag.headline == "pond-ridge at 30 g/m2, above its label's 19.5 g/m2"


def test_no_feeding_that_the_plan_offers_is_off() -> None:
    diary = spread("2026-04-20 feed pond-ridge 7lb front")
    step = the(diary, "2026-06-10", "feed")
    assert step.line
    assert "rate-off" not in {flag.rule for flag in judged(diary, "2026-06-10", step.line).raised}
