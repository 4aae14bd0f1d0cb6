"""What a year's ledger counts: plant food, seed, water, limits, and from sowing to sowing."""

from datetime import date

import pytest

from journal.facts.local_rules import Binds, LocalRules, Stated
from journal.facts.sources import published
from journal.reckon.ledger import ledger
from journal.season.history import History
from tests.reckon.garden import LB_PER_K, TODAY, book, n_lb, zone

FESCUE = (('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["fine fescue"]'),)


def per_k(value: float) -> float:
    return value / LB_PER_K


def unknown(history: History, name: str = "front", year: int = 2026) -> list[tuple[str, str]]:
    return [(one.what, one.why) for one in zone(history, name, year).uncounted]


def test_one_feeding_brings_what_its_analysis_says() -> None:
    found = zone(book("2026-05-16 feed pond-ridge 4lb/k front")).sums
    assert per_k(found.n) == pytest.approx(0.8)
    assert per_k(found.soluble_n) == pytest.approx(0.48)
    assert per_k(found.k2o) == pytest.approx(0.4)
    assert found.p2o5 == 0.0


def test_a_total_over_two_zones_is_split_by_area() -> None:
    history = book("2026-05-16 feed pond-ridge 20lb front back")
    assert n_lb(history, "front") == pytest.approx(0.8)
    assert n_lb(history, "back") == pytest.approx(0.8)


def test_two_passes_on_one_day_add_up() -> None:
    history = book("2026-05-16 feed pond-ridge 8lb front back", "2026-05-16 feed pond-ridge 8lb front back")
    assert n_lb(history) == pytest.approx(0.64)
    assert len(zone(history).nitrogen) == 2


def test_one_part_of_two_is_half_of_it_over_the_zone() -> None:
    assert n_lb(book("2026-05-16 feed pond-ridge 4lb/k part 1/2 front")) == pytest.approx(0.4)
    both = ["2026-05-16 feed pond-ridge 4lb part 1/2 front", "2026-05-17 feed pond-ridge 4lb part 2/2 front"]
    assert n_lb(book(*both)) == pytest.approx(0.8)


def test_a_spot_counts_as_thin_as_it_is_over_the_whole_zone() -> None:
    assert n_lb(book("2026-05-16 feed pond-ridge 1lb spot 40sqft front")) == pytest.approx(0.1)
    assert n_lb(book("2026-05-16 feed pond-ridge 1lb spot front")) == pytest.approx(0.1)


def test_weed_and_feed_counts_and_a_starter_does() -> None:
    assert n_lb(book("2026-05-16 treat green-gate 4lb/k front wind 2mph")) == pytest.approx(1)
    found = zone(book("2026-09-05 feed oat-hill 4lb/k front")).sums
    assert per_k(found.p2o5) == pytest.approx(0.96)
    assert found.soluble_n == found.n, "a label that says nothing of slow release is all soluble"


def test_iron_and_lime_bring_no_nitrogen() -> None:
    history = book("2026-05-16 feed rust-water 4floz front", "2026-05-17 feed white-dust 1bag front")
    assert zone(history).sums.n == 0.0
    assert zone(history).nitrogen == ()
    assert unknown(history) == []


def test_a_feeding_without_an_amount_is_listed_and_leaves_the_rest_in_doubt() -> None:
    history = book("2026-05-16 feed pond-ridge 4lb/k front", "2026-09-01 feed pond-ridge front back")
    assert unknown(history) == [("pond-ridge", "no amount was written down.")]
    assert [row.n_g_per_m2 is None for row in zone(history).nitrogen] == [False, True]
    assert zone(history).at_most
    assert n_lb(history) == pytest.approx(0.8)


def test_what_has_no_analysis_or_was_measured_by_volume_is_listed() -> None:
    history = book("2026-05-16 feed no-numbers 8lb front", "2026-06-16 feed green-water 8floz front")
    (_, why), (what, by_volume) = unknown(history)
    assert why == "its analysis is not in the shed: set no-numbers analysis 24-0-10."
    assert (what, by_volume) == ("green-water", "it was measured by volume, and an analysis counts by weight.")
    assert [row.n_g_per_m2 for row in zone(history).nitrogen] == [None, None]


def test_a_zone_without_an_area_takes_a_rate_and_no_total() -> None:
    history = book(
        "2026-05-16 feed pond-ridge 4lb/k back",
        "2026-06-30 feed pond-ridge 12lb back",
        changes=(('name = "back"\narea = "3000 sqft"', 'name = "back"'),),
    )
    assert n_lb(history, "back") == pytest.approx(0.8)
    assert unknown(history, "back") == [
        ("pond-ridge", "an area is not known, so what came on each part of the lawn is not either.")
    ]


def test_a_contractors_spraying_that_nobody_kept_the_invoice_of_is_listed() -> None:
    history = book("2026-05-16 treat unknown by service front")
    assert unknown(history) == [("unknown", "no amount was written down.")]
    assert zone(history).nitrogen == ()


def test_new_years_eve_is_one_year_and_new_years_day_the_next() -> None:
    history = book("2025-12-31 feed pond-ridge 2lb/k front", "2026-01-01 feed pond-ridge 4lb/k front")
    assert n_lb(history, year=2025) == pytest.approx(0.4)
    assert n_lb(history, year=2026) == pytest.approx(0.8)


def test_a_running_year_goes_up_to_the_day() -> None:
    history = book("2026-05-16 feed pond-ridge 4lb/k front", "2026-06-20 feed pond-ridge 4lb/k front")
    assert ledger(history, 2026, date(2026, 5, 31)).as_of == date(2026, 5, 31)
    assert per_k(zone(history, as_of=date(2026, 5, 31)).sums.n) == pytest.approx(0.8)
    assert ledger(history, 2026, TODAY).as_of == date(2026, 12, 31)


def test_an_area_that_changes_holds_from_its_day() -> None:
    history = book(
        "2026-05-16 feed pond-ridge 8lb front",
        "2026-06-01 set front area 4000sqft from 2026-06-01",
        "2026-07-16 feed pond-ridge 8lb front",
    )
    assert n_lb(history) == pytest.approx(0.8 + 0.4)


def test_seed_is_what_was_sown_over_the_whole_zone() -> None:
    found = zone(book("2026-09-05 seed three-river 15lb front back", "2026-09-20 seed three-river 1lb spot front")).sums
    assert per_k(found.seed) == pytest.approx(3 + 0.5)


def test_water_is_what_was_logged_and_what_the_timer_gave() -> None:
    history = book(
        "2026-06-01 water 30min front",
        "2026-06-10 schedule front 60min mon from 2026-07-06 to 2026-07-19",
    )
    assert zone(history).sums.water_mm == pytest.approx(0.25 * 25.4 + 2 * 0.5 * 25.4)
    assert unknown(history) == []


def test_water_of_no_known_depth_is_listed_once_for_a_timer() -> None:
    history = book(
        "2026-06-01 water deep back",
        "2026-06-10 schedule back 60min mon from 2026-07-06 to 2026-07-19",
        "2026-08-01 water back 10min spot",
    )
    assert zone(history, "back").sums.water_mm == 0.0
    assert unknown(history, "back") == [
        ("watering", "how much water it gave is not known."),
        ("schedule", "how much water it gave is not known."),
        ("watering", "only a spot was watered."),
    ]


def test_a_gauge_read_in_january_tells_of_december() -> None:
    history = book("2027-01-05 rain 1in since 2026-12-27")
    assert zone(history, year=2026).sums.rain_mm == pytest.approx(12.7)
    assert zone(history, year=2027).sums.rain_mm == pytest.approx(12.7)
    assert not zone(book()).sums.rain_on_file


def test_bluegrass_bears_two_point_seven_and_fine_fescue_half_of_it() -> None:
    """Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023."""
    for changes, most, grass in (((), 2.7, "kentucky bluegrass"), (FESCUE, 1.4, "fine fescue")):
        found = zone(book("2026-05-16 feed pond-ridge 4lb/k front", changes=changes))
        assert per_k(found.limit.n_g_per_m2) == pytest.approx(most)
        assert found.limit.grass == grass
        assert per_k(found.left_g_per_m2) == pytest.approx(most - 0.8)
        assert found.limit.basis.words() == "Univ. of Maryland Extension, Lawn Fertilizer Schedule Table, 2023"


def test_nothing_is_left_of_a_limit_that_is_passed() -> None:
    months = ("04-20", "06-01", "08-25", "10-10")
    history = book(*(f"2026-{day} feed pond-ridge 4lb/k front" for day in months), changes=FESCUE)
    assert n_lb(history) == pytest.approx(3.2)
    assert zone(history).left_g_per_m2 == 0.0


def test_the_stricter_of_the_grass_and_a_rule_of_the_place_wins() -> None:
    strict = zone(book("2026-03-01 set local_year_n 2lb/k"))
    assert per_k(strict.limit.n_g_per_m2) == pytest.approx(2)
    assert strict.limit.origin == "yours"
    lax = zone(book("2026-03-01 set local_year_n 3.2lb/k"))
    assert per_k(lax.limit.n_g_per_m2) == pytest.approx(2.7)
    assert lax.limit.origin == "default"
    assert lax.local is not None
    assert zone(book()).local is None


def test_seasons_run_from_sowing_to_sowing_over_the_new_year() -> None:
    history = book(
        "2025-09-06 seed three-river 3lb/k front",
        "2025-09-06 feed oat-hill 4lb/k front",
        "2025-10-18 feed pond-ridge 2lb/k front",
        "2026-05-16 feed pond-ridge 4lb/k front",
        "2026-09-05 seed three-river 2lb/k front",
        "2026-09-05 feed oat-hill 4lb/k front",
    )
    first, second = zone(history).seasons
    assert (first.since, first.to) == (date(2025, 9, 6), date(2026, 9, 4))
    assert per_k(first.sums.n) == pytest.approx(0.72 + 0.4 + 0.8)
    assert per_k(first.sums.seed) == pytest.approx(3)
    assert (second.since, second.to) == (date(2026, 9, 5), None)
    assert per_k(second.sums.n) == pytest.approx(0.72)
    (as_it_was,) = zone(history, year=2025).seasons
    assert as_it_was.to is None
    assert per_k(as_it_was.sums.n) == pytest.approx(0.72 + 0.4)
    assert [season.since for season in zone(history, year=2027).seasons] == [date(2026, 9, 5)]


def test_a_spot_and_a_top_up_begin_no_season() -> None:
    history = book(
        "2026-09-05 seed three-river 3lb/k front",
        "2026-09-20 seed three-river 1lb/k front",
        "2026-10-01 seed three-river 0.1lb spot 10sqft front",
    )
    assert [season.since for season in zone(history).seasons] == [date(2026, 9, 5)]


def test_south_of_the_equator_the_calendar_year_is_the_same() -> None:
    history = book(
        "2026-03-10 feed pond-ridge 4lb/k front",
        "2026-12-31 feed pond-ridge 4lb/k front",
        changes=(('name = "Round Numbers"', 'name = "Far South"\nlatitude = -41.3'),),
    )
    assert n_lb(history) == pytest.approx(1.6)


def test_a_metric_book_counts_the_same() -> None:
    history = book(
        "2026-05-16 feed pond-ridge 20g/m2 front",
        "2026-08-25 feed pond-ridge 4kg front",
        changes=(
            ('name = "Round Numbers"', 'name = "Round Numbers"\nunits = "metric"'),
            ('area = "2000 sqft"', 'area = "200 m2"'),
        ),
    )
    assert zone(history).sums.n == pytest.approx(8.0)


@pytest.mark.parametrize(
    ("binds", "origin", "most"), [(Binds.OWNERS, "local rule", 1.2), (Binds.HIRED, "default", 2.7)]
)
def test_a_county_that_speaks_to_owners_goes_before_the_grass(
    binds: Binds, origin: str, most: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    county = LocalRules(
        id="x-county",
        place="Some County",
        reference="Code 1",
        binds=binds,
        year_n_g_per_m2=Stated(1.2 * LB_PER_K, published("umd-schedule")),
    )
    monkeypatch.setattr("journal.reckon.ledger.local_rules", lambda _: county)
    found = zone(book())
    assert per_k(found.limit.n_g_per_m2) == pytest.approx(most)
    assert found.limit.origin == origin
    assert found.local is county
