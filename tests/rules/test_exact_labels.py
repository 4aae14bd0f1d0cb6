"""A label counted to the day, the part and the tank: what is one application, and what falls between two of them."""

import pytest

from journal.season.history import History
from tests.rules.treated import all_flags, flags, shed
from tests.scenario import SET_UP, book, judged, later, lawn, level, raised, the, typed

ON = "2026-06-10"
LABEL = 'repeat = "28 d"\nmax_per_year = 2'
INTERVAL, COUNT, RATE = "label-interval", "label-year-count", "label-rate"


def _rated(**labels: str) -> History:
    """leaf-off at 1 to 1.5 fl oz/k."""
    return book(f"{SET_UP} set leaf-off rate 1floz/k 1.5floz/k", on=shed({"leaf-off": LABEL, **labels}))


def _harm(history: History, on: str, line: str) -> list[str]:
    return [flag.rule for flag in judged(history, on, line).raised if flag.level == "harm"]


def test_two_full_passes_over_the_same_half_are_twice_the_rate_there() -> None:
    half = book(f"{ON} treat leaf-off 0.7floz part 1/2 front", on=_rated())
    assert _harm(half, ON, "treat leaf-off 0.7floz part 2/2 front") == []
    assert _harm(half, ON, "treat leaf-off 0.7floz part 1/2 front") == [RATE]


def test_a_half_on_top_of_the_whole_zone_counts_where_both_lie() -> None:
    whole = book(f"{ON} treat leaf-off 0.8floz front", on=_rated())
    assert _harm(whole, ON, "treat leaf-off 0.3floz part 1/2 front") == []
    assert _harm(whole, ON, "treat leaf-off 0.4floz part 1/2 front") == [RATE]


def test_the_years_amount_sees_the_half_that_had_it_twice() -> None:
    own = shed({"leaf-off": 'repeat = "0 d"\nmax_amount_per_year = "2 floz/k"'})
    halves = book(f"{ON} treat leaf-off 0.9floz part 1/2 front", on=own)
    assert _harm(halves, ON, "treat leaf-off 0.9floz part 2/2 front") == []
    assert _harm(halves, ON, "treat leaf-off 0.9floz part 1/2 front") == ["label-year-amount"]


def test_after_both_halves_a_third_part_is_a_new_application() -> None:
    done = book(
        f"{ON} treat leaf-off 0.6floz part 1/2 front", f"{later(ON, 1)} treat leaf-off 0.6floz part 2/2 front",
        on=_rated(),
    )  # fmt: skip
    assert flags(done, later(ON, 1), INTERVAL) == {}
    assert _harm(done, str(later(ON, 2)), "treat leaf-off 0.4floz part 1/3 front") == [INTERVAL]


def test_halves_with_a_day_between_are_each_on_their_own_ground() -> None:
    halves = book(
        f"{ON} treat leaf-off 0.6floz part 1/2 front", f"{later(ON, 2)} treat leaf-off 0.6floz part 2/2 front",
        on=_rated(),
    )  # fmt: skip
    assert flags(halves, later(ON, 2), INTERVAL) == {}
    assert flags(halves, later(ON, 2), COUNT) == {}


@pytest.mark.parametrize(
    ("kind", "wait"), [("spring-wall", 60), ("leaf-off", 28), ("bare-ground", 14), ("spot-out", 14)]
)
def test_a_blank_label_waits_by_kind_to_the_day(kind: str, wait: int) -> None:
    amount = "2lb" if kind == "spring-wall" else "1floz"
    once = book(f"2026-03-01 treat {kind} {amount} front", on=shed())
    for gap, found in ((wait - 1, {kind: "loss"}), (wait, {})):
        day = later("2026-03-01", gap)
        assert flags(typed(once, f"{day} treat {kind} {amount} front"), day, INTERVAL) == found


def test_either_product_of_a_tank_is_held_to_its_own_label() -> None:
    labels = shed({"leaf-off": 'wind_max = "6 mph"', "leaf-mix": 'wind_max = "10 mph"'})
    tank = judged(labels, ON, "treat leaf-mix 1floz + leaf-off 1floz front wind 7mph temp 70F")
    (windy,) = [flag for flag in tank.raised if flag.rule == "treat-windy"]
    assert windy.level == "harm"
    assert "leaf-mix and leaf-off" in windy.why
    assert "6 mph" in windy.why
    assert "treat-windy" not in _harm(labels, ON, "treat leaf-mix 1floz front wind 7mph temp 70F")


def test_a_label_that_changes_later_judges_what_came_before_by_the_old_one() -> None:
    once = book("2026-05-10 treat leaf-off 1floz front", on=_rated())
    newer = book("2026-06-01 set leaf-off repeat 7d from 2026-06-01", on=once)
    assert _harm(newer, "2026-06-02", "treat leaf-off 1floz front") == [INTERVAL]
    corrected = book("2026-06-01 set leaf-off repeat 7d", on=once)
    assert _harm(corrected, "2026-06-02", "treat leaf-off 1floz front") == []


def test_the_label_of_a_product_bought_later_holds_for_a_use_written_down_before_that_day() -> None:
    line = "product new-can kind weed actives 2,4-d form liquid rate 1floz/k 1.5floz/k repeat 28d from 2026-06-01"
    bought = book(f"2026-06-01 {line}", on=_rated())
    assert _harm(bought, "2026-06-02", "treat new-can 9floz front on 5/20") == [RATE]
    used = book("2026-06-02 treat new-can 1floz front on 5/20", on=bought)
    assert _harm(used, "2026-06-03", "treat leaf-off 1floz front") == [INTERVAL]


def test_what_nobody_knows_keeps_other_weed_products_off_for_28_days() -> None:
    unknown = book("2026-09-10 treat unknown front by service", "2026-09-20 see dandelion front", on=_rated())
    for day, found in (("2026-10-07", True), ("2026-10-08", False)):
        raised_by = judged(unknown, day, "treat leaf-off 1floz front").raised
        assert any(flag.rule == "unknown-treatment" for flag in raised_by) is found
    step = the(unknown, "2026-09-21", "broadleaf")
    assert (step.state.value, str(step.earliest)) == ("waiting", "2026-10-08")


def test_a_use_whose_product_left_the_shed_waits_as_an_unknown_one_does() -> None:
    used = book("2026-06-01 treat leaf-off 1floz front", on=_rated())
    every = {entry.id: entry for track in used.tracks.values() for entry in track.entries}
    gone = History.of(e for e in every.values() if not (e.kind == "setting" and getattr(e, "name", "") == "leaf-off"))
    found = {flag.rule for flag in judged(gone, "2026-09-06", "seed three-river 2lb front").raised}
    assert "seed-over-residue" in found
    flag = raised(gone, "2026-06-02", "unknown-treatment")
    assert flag is not None
    assert flag.headline == "leaf-off is not in the shed: nothing is known of it"


def test_what_kills_all_over_grass_that_nobody_means_to_sow_anew_is_a_loss() -> None:
    line = "treat bare-ground 3floz"
    assert level(book(f"{ON} {line} front", on=shed()), ON, "treat-injury") == "loss"
    assert level(book(f"{ON} {line} spot front", on=shed()), ON, "treat-injury") == ""
    meant = book("2026-06-01 intend seed 8/20 front", f"{ON} {line} front", on=shed())
    assert level(meant, ON, "treat-injury") == ""
    killed = book(f"{ON} {line} front", on=shed())
    assert level(killed, later(ON, 29), "treat-injury") == "loss"
    assert level(killed, later(ON, 30), "treat-injury") == ""
    assert level(typed(killed, f"{later(ON, 1)} intend seed 8/20 front"), later(ON, 1), "treat-injury") == ""


def test_metric_books_and_southern_ones_are_held_to_the_same_wind_and_heat() -> None:
    metric = lawn(("[lawn]", '[lawn]\nunits = "metric"'))
    assert level(typed(metric, f"{ON} treat leaf-off 50ml front wind 12km/h"), ON, "treat-windy") == "note"
    blown = typed(metric, f"{ON} treat leaf-off 50ml front wind 13km/h temp 30C")
    (windy,) = all_flags(blown, ON, "treat-windy")
    assert windy.level == "harm"
    assert "mph" not in windy.why
    south = lawn(("latitude = 42.3", "latitude = -38.0"))
    assert level(typed(south, "2026-12-10 treat leaf-off 3floz front temp 90F"), "2026-12-10", "treat-hot") == "loss"


def test_neither_the_april_barrier_nor_the_july_granule_minds_the_air() -> None:
    for line, air, rule in (
        ("2026-04-12 treat spring-wall 2lb front", "weather 45F 30F", "treat-cold"),
        ("2026-07-10 treat grub-off 2lb front", "weather 92F 70F", "treat-hot"),
    ):
        day = line[:10]
        assert level(book(f"{day} {air}", line, on=shed()), day, rule) == ""
        sprayed = book(f"{day} {air}", f"{day} treat leaf-off 1floz front", on=shed())
        assert level(sprayed, day, rule) != ""
