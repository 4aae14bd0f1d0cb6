"""What the demo book tells: a worn-out lawn knocked back, opened, sown, kept damp, and mown again."""

from datetime import date, timedelta
from functools import cache

from journal.cli.demo import OPENS
from journal.cli.demo.book import entries
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.hiding import Aside, Snooze
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Sighting
from journal.record.kinds.stock import Stock
from journal.record.kinds.treatment import UNKNOWN, Treatment
from journal.record.kinds.watering import Watering
from journal.record.lawn import Lawn
from journal.record.product import PROTECTS, Label, Product
from journal.season.history import History
from journal.season.water import rain_days

SOWN = date(2025, 9, 6)


@cache
def book() -> tuple[Entry, ...]:
    return entries()


@cache
def history() -> History:
    return History.of(book())


def lawn() -> Lawn:
    return history().lawn(OPENS)


def of(kind: type[Entry]) -> list[Entry]:
    return [entry for entry in book() if isinstance(entry, kind)]


def product(name: str) -> Product:
    found = lawn().product(name)
    assert found is not None
    return found


def treated() -> list[Treatment]:
    return [entry for entry in book() if isinstance(entry, Treatment)]


def test_the_zones_differ() -> None:
    front, back, side = lawn().zones
    assert [zone.name for zone in lawn().zones] == ["front", "back", "side"]
    assert len({front.soil, back.soil, side.soil}) == 3
    assert front.circuits
    assert not side.irrigated
    assert side.out_of_view
    assert back.near_water_mm


def test_the_shed_has_what_the_story_needs() -> None:
    kinds = [p.kind for p in lawn().products]
    assert kinds.count("fertilizer") == 2
    assert kinds.count("seed") == 2
    assert {"starter", "pre-emergent", "weed", "lime", "insect", "iron"} <= set(kinds)
    slow = [p.slow for p in lawn().products if p.kind == "fertilizer"]
    assert len({round(share or 0, 2) for share in slow}) == 2


def test_every_product_against_weeds_or_insects_has_its_label() -> None:
    for one in lawn().products:
        if one.kind not in PROTECTS:
            continue
        label: Label = one.label
        assert one.rate is not None
        assert one.actives
        assert None not in (label.to_seed_days, label.repeat_days, label.max_per_year, label.max_year_amount)
        assert label.reentry
        assert label.site


def test_the_starter_may_go_down_with_the_seed() -> None:
    starter = product("heron-gate-starter")
    assert starter.label.to_seed_days == 0
    assert [active.name for active in starter.actives] == ["mesotrione"]


def test_weeds_are_knocked_back_and_the_wait_ends_before_seed() -> None:
    before = [t for t in treated() if t.date < SOWN and "front" in t.zones and t.product != UNKNOWN]
    last = before[-1]
    names = [last.product, *(dose.product for dose in last.also)]
    assert len(names) == 2
    longest = max(product(name).label.to_seed_days or 0 for name in names)
    assert last.date + timedelta(longest) <= SOWN


def test_a_contractor_s_unknown_product_is_on_file_and_over_before_seed() -> None:
    unknown = next(t for t in treated() if t.product == UNKNOWN)
    assert unknown.by_service
    assert unknown.about
    assert (SOWN - unknown.date).days > 210


def test_every_spray_has_its_wind_and_stays_under_its_label() -> None:
    for one in treated():
        if one.product == UNKNOWN:
            continue
        label = product(one.product).label
        assert one.wind_m_s is not None
        assert one.wind_m_s <= (label.wind_max_m_s or one.wind_m_s)
        assert "back" not in one.zones or one.edge_kept
        doses = [(one.product, one.amount_g, one.amount_ml), *((d.product, d.amount_g, d.amount_ml) for d in one.also)]
        area = one.spot_m2 or history().lawn(one.date).area_m2(one.zones)
        assert area is not None
        for name, grams, millilitres in doses:
            rate = product(name).rate
            amount = grams if grams is not None else millilitres
            assert rate is not None
            assert amount is not None
            assert amount / area <= 1.02 * rate.high, one.line


def test_no_product_is_used_more_often_in_a_year_than_its_label_says() -> None:
    for name in {t.product for t in treated()} - {UNKNOWN}:
        most = product(name).label.max_per_year
        for zone in lawn().zone_names:
            for year in (2024, 2025, 2026, 2027):
                days = {t.date for t in treated() if t.product == name and zone in t.zones and t.date.year == year}
                assert most is not None
                assert len(days) <= most


def test_the_soil_is_opened_the_day_before_seed() -> None:
    opened = {c.what for c in of(Cultivation) if isinstance(c, Cultivation) and 0 <= (SOWN - c.date).days <= 1}
    assert opened == {"aerate", "dethatch", "topdress", "rake"}


def test_one_seed_is_sown_and_once_the_other_on_a_patch() -> None:
    sown = [s for s in of(Seeding) if isinstance(s, Seeding)]
    assert [(s.date, s.product, s.zones, s.spot) for s in sown] == [
        (SOWN, "low-meadow-blend", ("front", "back"), False),
        (date(2026, 4, 25), "sunny-gap-mix", ("side",), True),
    ]
    assert [a.flag for a in of(Aside) if isinstance(a, Aside)] == ["seed-switch"]


def test_starter_on_the_day_of_seed_and_a_light_feeding_a_month_later() -> None:
    fed = [(f.product, (f.date - SOWN).days) for f in history().track("front", Feeding).entries]
    assert ("heron-gate-starter", 0) in fed
    assert [days for name, days in fed if name == "crow-hill-autumn" and 28 <= days <= 45]


def test_the_seedbed_is_watered_twice_a_day_with_one_lapse() -> None:
    once = []
    past = history().on("back", date(2025, 9, 30))
    rain = {date.fromordinal(day): mm for day, mm in rain_days(past, SOWN.toordinal(), past.day).items()}
    for age in range(1, 16):
        day = SOWN + timedelta(age)
        if rain.get(day, 0) > 2.5 or rain.get(day - timedelta(1), 0) > 6.3:
            continue
        times = [w for w in history().track("back", Watering).entries if w.date == day]
        if len(times) < 2:
            once.append(day)
    assert once == [date(2025, 9, 12)]


def test_the_first_cut_is_late_sharp_and_bagged_but_for_one_mistake() -> None:
    for zone, days in (("front", [29, 36, 43, 50, 61]), ("back", [19, 29, 36, 43, 50, 61])):
        mown = [m for m in history().track(zone, Mowing).entries if SOWN < m.date < date(2025, 12, 31)]
        assert [(m.date - SOWN).days for m in mown] == days
        assert {m.clippings for m in mown} == {"bag"}
    assert [e.date for e in book() if e.kind == "equipment" and SOWN < e.date < date(2025, 10, 6)] == [
        date(2025, 10, 4)
    ]


def test_the_dry_summer_lets_the_side_sleep_and_wakes_it() -> None:
    seen = [(s.subject, s.date) for s in history().track("side", Sighting).entries if s.date.year == 2026]
    states = [(subject, day) for subject, day in seen if subject in ("dormant", "green")]
    assert [subject for subject, _ in states] == ["dormant", "green"]
    asleep, awake = (day for _, day in states)
    assert not [m for m in history().track("side", Mowing).entries if asleep <= m.date < awake]


def test_a_feeding_without_an_amount_is_followed_by_what_the_scale_said() -> None:
    fed = [f for f in history().track("front", Feeding).entries if f.date == date(2024, 10, 19)]
    assert [f.amount_g is None for f in fed] == [True, False]


def test_no_more_is_used_than_was_bought() -> None:
    for one in lawn().products:
        bought = [s for s in of(Stock) if isinstance(s, Stock) and s.product == one.name]
        grams = sum((s.count or 1) * (s.size_g or 0) for s in bought)
        millilitres = sum((s.count or 1) * (s.size_ml or 0) for s in bought)
        used = [e for e in book() if getattr(e, "product", "") == one.name and type(e).applies]
        assert sum(getattr(e, "amount_g", None) or 0 for e in used) <= grams + 1e-6, one.name
        assert sum(getattr(e, "amount_ml", None) or 0 for e in used) <= millilitres + 1e-6, one.name


def test_on_the_opening_day_two_zones_wait_for_the_mower() -> None:
    last = {zone: history().on(zone, OPENS)[Mowing].last for zone in lawn().zone_names}
    assert {zone: (OPENS - m.date).days for zone, m in last.items() if m} == {"front": 11, "back": 11, "side": 5}


def test_on_the_opening_day_a_barrier_holds_and_autumn_is_planned_behind_it() -> None:
    barrier = treated()[-1]
    assert barrier.zones == lawn().zone_names
    free = barrier.date + timedelta(product(barrier.product).label.to_seed_days or 0)
    assert free > OPENS
    planned = {i.what: i.target for i in of(Intention) if isinstance(i, Intention) and (i.target or OPENS) > OPENS}
    assert {"seed", "aerate", "soil", "treat"} <= set(planned)
    assert (planned["seed"] or OPENS) > free


def test_on_the_opening_day_one_photo_point_is_a_month_behind() -> None:
    newest = {p.point: (OPENS - p.date).days for p in of(Photo) if isinstance(p, Photo)}
    assert {point for point, age in newest.items() if age > 35} == {"kitchen"}


def test_a_snooze_is_on_file_and_over() -> None:
    assert [s.until for s in of(Snooze) if isinstance(s, Snooze) and s.until and s.until < OPENS]


def test_every_name_is_our_own_and_photos_are_paths_only() -> None:
    assert all("-" in one.name for one in lawn().products)
    assert all(p.file.startswith("photos/") for p in of(Photo) if isinstance(p, Photo))
