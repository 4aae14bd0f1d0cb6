"""What the book lacks."""

from journal.standing import standing
from tests.rules.soil_shed import SHED
from tests.scenario import LAWN, book, day, later, lawn, level, raised, rules_raised

NO_DATES = (
    ('last_frost = "05-06"\nfirst_frost = "10-05"\n', ""),
    ('growth = ["04-10", "11-10"]\n', ""),
)


def test_an_application_without_an_amount() -> None:
    diary = book("2026-05-01 feed pond-ridge front")
    note = raised(diary, "2026-05-01", "amount-missing")
    assert note is not None
    assert (note.level, note.subject) == ("note", "pond-ridge")
    assert level(diary, later("2026-05-01", 59), "amount-missing") == "note"
    assert level(diary, later("2026-05-01", 60), "amount-missing") == ""
    assert level(book("2026-05-01 feed pond-ridge 7lb front"), "2026-05-01", "amount-missing") == ""
    assert level(book("2026-05-01 feed pond-ridge 3lb/k front"), "2026-05-01", "amount-missing") == ""


def test_spots_and_a_services_work_need_none() -> None:
    assert level(book("2026-05-01 treat leaf-off spot rtu front"), "2026-05-01", "amount-missing") == ""
    assert level(book("2026-05-01 treat unknown by service front"), "2026-05-01", "amount-missing") == ""


def test_one_product_of_a_mixture_without_an_amount() -> None:
    diary = book("2026-05-01 treat leaf-off 2floz + spring-wall front")
    note = raised(diary, "2026-05-01", "amount-missing")
    assert note is not None
    assert note.subject == "spring-wall"


def test_a_total_on_a_zone_without_an_area() -> None:
    bare = lawn(toml=LAWN.replace('area = "2400 sqft"\n', ""))
    assert level(book("2026-05-01 feed pond-ridge 7lb front", on=bare), "2026-05-01", "amount-missing") == "note"
    assert level(book("2026-05-01 feed pond-ridge 3lb/k front", on=bare), "2026-05-01", "amount-missing") == ""
    assert level(bare, "2026-05-01", "amount-missing") == ""


def test_without_dates_there_is_one_note_and_silence() -> None:
    diary = book("2026-05-01 mow 3in front", on=lawn(*NO_DATES))
    (note,) = standing(diary, day("2026-07-20")).flags
    assert (note.rule, note.level, note.zones) == ("growth-unknown", "note", ("front", "back"))
    assert "last_frost" in note.do
    assert level(lawn(), "2026-07-20", "growth-unknown") == ""
    frosts_only = lawn(NO_DATES[1])
    assert level(frosts_only, "2026-07-20", "growth-unknown") == ""


def test_a_watered_lawn_without_water_in_summer_gets_one_note() -> None:
    diary = lawn()
    assert level(diary, "2026-05-31", "water-unlogged") == ""
    assert level(diary, "2026-06-01", "water-unlogged") == "note"
    assert level(diary, "2026-09-01", "water-unlogged") == ""
    rained = book("2026-07-01 rain 0.3in", on=diary)
    assert level(rained, "2026-07-14", "water-unlogged") == ""
    assert level(rained, "2026-07-15", "water-unlogged") == "note"
    timer = book("2026-06-01 schedule front 20min mon thu 6:00", on=diary)
    assert level(timer, "2026-07-15", "water-unlogged") == ""
    dry = lawn(("irrigated = true", "irrigated = false"))
    assert level(dry, "2026-07-15", "water-unlogged") == ""


def test_a_new_book_is_not_asked_for_water_at_once() -> None:
    begun = lawn(set_up="2026-07-15")
    assert rules_raised(begun, "2026-07-15") == set()
    assert level(begun, later("2026-07-15", 14), "water-unlogged") == "note"


def test_no_dose_and_no_rate_is_reckoned_of_an_entry_without_an_amount() -> None:
    diary = book("2026-05-01 feed pond-ridge front", "2026-05-01 feed grey-lime front", on=lawn(toml=SHED))
    found = rules_raised(diary, "2026-05-01")
    assert "amount-missing" in found
    assert found & {"feed-dose", "feed-year", "rate-off", "lime-dose", "label-rate", "label-year-amount"} == set()


def test_another_product_of_the_tank_without_an_amount_hides_no_labels_limit() -> None:
    strong = lawn(('form = "liquid"', 'form = "liquid"\nrate = "1.1floz/k 1.5floz/k"'))
    diary = book("2026-05-01 treat leaf-off 9floz + spring-wall front", on=strong)
    assert level(diary, "2026-05-01", "amount-missing") == "note"
    assert level(diary, "2026-05-01", "label-rate") == "harm"
