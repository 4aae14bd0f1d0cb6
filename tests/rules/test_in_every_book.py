"""What holds of every rule in every book, whatever was logged."""

from datetime import date, timedelta
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.record.entry import Entry
from journal.rules.catalogue import rules
from journal.rules.declare import Rule
from journal.rules.flag import Flag, Level
from journal.rules.judge import flags_of, judged
from journal.rules.stretches import Court, raw
from journal.season.history import History
from journal.standing import findings, preflight, standing
from tests.rules.seasons import BEGINS, LAWNS, SPAN, entries, kept, lawns, numbered
from tests.rules.soil_shed import SHED
from tests.rules.treated import shed
from tests.scenario import LAWN, book, later, lawn, weather

few = settings(max_examples=8, derandomize=True)
FIRST = BEGINS.toordinal()
days = st.integers(0, SPAN + 60).map(lambda ahead: BEGINS + timedelta(ahead))


LABELLED = lawn(toml=LAWN.replace('form = "liquid"', 'form = "liquid"\nrate = "1.1floz/k 1.5floz/k"').replace(
    'form = "granule"', 'form = "granule"\nrate = "2lb/k 3lb/k"'))  # fmt: skip
EDGES = {
    "a year of products": book(
        *(f"2026-0{on} treat spot-out 2floz front" for on in ("1-20", "1-24", "3-20")),
        "2026-04-10 treat leaf-mix 2floz spot 40sqft front temp 46F",
        "2026-05-01 treat leaf-off 3floz part 1/2 front", "2026-05-02 treat leaf-off 3floz part 2/2 front",
        "2026-05-12 treat leaf-mix 3floz front temp 78F 7:00 wind 1mph",
        "2026-05-13 weather 92F 60F", "2026-05-20 see dormant front", "2026-05-25 feed green-gate 7lb front",
        "2026-06-01 treat leaf-off 3floz front", "2026-06-10 treat grub-end 3lb front",
        "2026-08-01 treat grub-end 3lb front",
        on=LAWNS["a labelled shed"],
    ),
    "killed, meant to be sown, and not sown": book(
        "2026-05-01 treat bare-ground 2floz front", "2026-05-03 intend seed three-river 2026-05-06 front",
        "2026-07-01 treat unknown front", "2026-07-10 treat leaf-off 1floz front", "2026-07-02 see flowering front",
        "2026-08-01 treat bare-ground 2floz front", "2026-08-12 seed three-river 2lb front",
        on=shed(),
    ),
    "after treatments, wet and dry, cut and walked on": book(
        "2026-04-20 treat spring-wall 3lb front", "2026-04-22 rain 0in", "2026-04-26 see traffic front",
        "2026-05-02 rain 0.7in since 2026-04-24", "2026-05-10 mow 3in bag front",
        "2026-05-11 treat leaf-off 3floz front 9:00",
        "2026-05-11 see traffic front 10:00", "2026-05-12 water 5min front", "2026-05-14 mow 3in bag front",
        "2026-06-01 schedule front 5min mon thu", "2026-06-10 treat grub-end 3lb front",
        "2026-06-08 see flowering front", "2026-06-09 see sign front", "2026-06-12 see sign-down front",
        "2026-06-12 see dry front", "2026-07-20 schedule off front", "2026-08-10 see exposure",
        "2026-08-20 treat green-gate 3lb front", "2026-08-21 rain 0.4in", on=LAWNS["a labelled shed by the water"],
    ),
    "cuts around the turn of months": book(
        *(f"2026-{on} mow 2.4in front" for on in ("05-25", "06-18", "08-19", "09-18", "10-22"))
    ),
    "nothing is fed": book("2026-04-20 mow 3in front", on=LAWNS["by months"]),
    "a resting lawn and a hot one": book(
        "2026-04-20 feed pond-ridge 7lb front", "2026-05-20 see dormant front", "2026-06-20 see green front",
        *weather("2026-06-18", 20, "88F 70F 0in"), *weather("2026-09-25", 40, "50F 40F 0.01in"),
    ),
    "a poor renovation": book(
        "2026-08-20 treat leaf-off 2floz front", "2026-08-24 feed pond-ridge front", "2026-08-25 mow 1in front",
        "2026-08-28 seed stone-wall 9lb front", "2026-09-05 water front", "2026-09-20 mow 3in front",
    ),
    "new grass that nobody cuts": book(
        "2026-04-25 seed quick-rye 9lb front", "2026-05-20 height 3.6in front", "2026-05-30 height 4.6in front",
        "2026-07-20 mow 3in return front",
    ),
    "sown in autumn and first cut in May": book("2026-09-20 seed quick-rye 9lb front", "2027-05-20 mow 3in front"),
    "a drought by the account": book(
        "2026-06-20 water deep front", *weather("2026-06-18", 60, "88F 66F 0in"), "2026-07-05 water 0.2in front",
        "2026-07-16 water 0.3in front", "2026-07-18 see dormant front", "2026-08-20 see green front",
        on=LAWNS["on loam"],
    ),
    "a rest that is watered once": book(
        "2026-05-10 seed quick-rye 9lb back", "2026-06-20 see dormant front back",
        *weather("2026-06-01", 120, "85F 65F 0in"),
        "2026-07-10 water 0.5in front back", "2026-08-10 see dormant front",
    ),
    "watered every day, and the mower runs": book(
        *(f"{later('2026-06-01', at)} water 20min front" for at in range(12)),
        *(f"{later('2026-04-20', 7 * at)} mow 3in 75min front back" for at in range(24)), "2026-08-01 sharpen",
        "2026-06-10 rain 0.8in", "2026-07-04 rain 1in",
    ),
    "a dormant sowing": book(
        "2026-01-20 seed quick-rye 9lb front", "2026-04-12 water 5min front", "2026-04-20 mow 3in front",
        "2026-04-25 feed pond-ridge 5lb front",
    ),
    "no sprinkler": book(
        "2026-06-01 feed pond-ridge 7lb front", "2026-06-20 mow 3in front", "2026-07-05 rain 1in since 2026-06-28",
        on=LAWNS["not irrigated"],
    ),
    "never written in again": lawn(set_up=BEGINS),
    "begun in June": lawn(set_up="2026-06-01"),
    "begun in June, by months": book("2026-06-01 set feeding months", on=lawn(set_up="2026-06-01")),
    "a timer": book("2026-06-01 schedule front 10min mon to 7/20", "2026-09-01 schedule off front"),
    "label rates and wind": book(
        "2026-05-01 treat leaf-off 50floz front wind 9mph", "2026-05-20 treat leaf-off 9floz spot 40sqft front",
        "2026-05-29 treat spring-wall 20lb part 1/2 front wind 14mph", "2026-06-02 feed pond-ridge 12lb part 1/2 front",
        "2026-06-03 feed pond-ridge 12lb part 2/2 front", "2026-09-06 seed three-river 9lb front",
        "2026-10-04 feed pond-ridge 2.5lb/k front", on=LABELLED,
    ),
    "a dry summer with rain at last": book(
        "2026-05-10 mow 3in front", *(f"{later('2026-05-20', 3 * at)} rain 0in" for at in range(20)),
        "2026-07-25 rain 1in since 2026-07-20", "2026-09-01 water 20min front", on=LAWNS["not irrigated"],
    ),
    "begun in July, one cut and one feeding before": book(
        "2026-06-20 mow 3in front", "2026-04-20 feed pond-ridge 5lb front", "2026-04-02 water front",
        on=lawn(set_up="2026-07-15"),
    ),
    "the zone is younger than the book": book("2026-06-10 zone side 900sqft", "2026-06-01 mow 3in front"),
    "sown as growth ends": book("2026-10-25 seed three-river 9lb front", *weather("2026-10-01", 60, "50F 38F 0.1in")),
    "closed days, and a soil test that counts no longer": book(
        "2026-02-01 soil p low", "2026-08-20 seed three-river 9lb front", "2026-08-22 feed pond-ridge 5lb front",
        on=lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["09-05", "09-07"]\n'
                 "local_seeding = false\nlocal_test_months = 7")),
    ),
    "seed in every season": book(
        "2026-01-20 seed quick-rye 9lb back", "2026-05-22 seed stone-wall 30lb front", "2026-05-25 see traffic front",
        "2026-05-27 see traffic front", "2026-05-29 see traffic front", "2026-06-12 rain 1.5in since 2026-06-01",
        "2026-10-14 seed three-river 2lb front", "2026-10-20 rain 2in", "2026-10-25 rake front",
    ),
    "a spray on a seedbed": book(
        "2026-08-25 seed quick-rye 9lb front", "2026-08-27 water 5min front", "2026-09-03 treat leaf-off 2floz front",
        *weather("2026-08-25", 40, "80F 62F 0in"),
    ),
    "fed too often, in heat, in frost and in the wet": book(
        "2026-01-20 see frozen front", "2026-01-25 feed pond-ridge 2lb/k front", "2026-03-28 feed slow-oak 3lb/k front",
        "2026-04-30 feed oat-hill 3lb/k front", "2026-05-01 rain 1in", "2026-05-20 feed pond-ridge 3lb/k front",
        *weather("2026-06-20", 6, "88F 70F 0in"), "2026-06-21 feed pond-ridge 3lb/k front",
        "2026-06-26 rain 0.4in since 2026-06-20", "2026-09-01 intend feed pond-ridge 2026-11-20 front",
        *weather("2026-11-20", 12, "30F 20F 0in"), "2026-11-26 feed pond-ridge 2lb/k front",
        on=lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["11-16", "03-01"]')),
    ),
    "new grass that is not fed, and cold and hot days": book(
        "2026-04-12 feed slow-oak 4lb/k front", "2026-04-20 seed three-river 9lb front",
        "2026-05-05 feed oat-hill 3lb/k front", *weather("2026-06-05", 3, "88F 60F 0in"),
        *weather("2026-06-12", 1, "86F 60F 0in"), "2026-06-20 see dormant front", "2026-06-24 see green front",
    ),
    "closed days in the weeks of the starter": book(
        "2026-08-20 seed three-river 9lb front",
        on=lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_closed = ["09-05", "09-07"]')),
    ),
    "weeds seen and nothing done": book(
        "2026-01-10 see crabgrass front", "2026-05-05 see clover front", *weather("2026-02-15", 80, "60F 40F 0in"),
    ),
    "weeds seen, and the soil measured": book(
        "2026-01-10 see crabgrass front", *(f"{later('2026-03-20', 2 * at)} weather soil 61F" for at in range(9)),
        "2026-03-22 treat spring-wall 4lb back", "2026-04-20 treat spring-wall 4lb front",
    ),
    "weeds seen, no weather, new numbers": book(
        "2026-01-10 see foxtail front", "2026-01-12 set barrier-missed before-frost-days 60",
        "2026-06-01 set broadleaf-missed stands-days 12", "2026-06-05 see plantain front",
    ),
    "barriers, and grass that is new": book(
        "2026-04-01 treat spring-wall 4lb front", "2026-04-20 intend seed three-river 2026-05-20 front",
        "2026-08-20 seed three-river 9lb front", "2026-09-02 see emerged front",
        "2026-09-15 treat leaf-off 2floz front", "2026-09-20 mow 3in front", "2026-09-28 mow 3in front",
        "2026-10-04 mow 3in front",
        "2026-10-10 treat unknown front", *weather("2026-02-15", 60, "60F 40F 0in"), on=lawn(set_up=BEGINS),
    ),
    "lime on old tests, a short shed and a point given up": book(
        "2026-01-10 soil ph 5.8 p low", "2026-03-01 buy pond-ridge 1x 20lb", "2026-04-02 photo a.jpg from gate front",
        "2026-05-01 feed pond-ridge 3lb/k front back", "2026-05-09 feed grey-lime 40lb/k front",
        "2026-05-30 feed grey-lime 40lb/k front edge kept", "2026-06-20 feed oat-hill 7lb front",
        "2026-06-25 buy pond-ridge 1x 5lb", "2026-07-01 intend seed three-river 2026-09-05 front",
        "2026-07-02 buy three-river 1x 2lb", "2026-09-01 feed kelp-mix 30floz front",
        on=lawn(('name = "North Lane"', 'name = "North Lane"\nlocal_rules = "us-md"'), toml=SHED, set_up="2022-12-01"),
    ),
    "plans": book("2026-05-01 intend seed quick-rye 2026-05-20 front", "2026-05-12 mow 1in front",
                  "2026-05-01 buy quick-rye 1x 5lb", "2026-04-01 seed three-river 9lb front"),
}  # fmt: skip


def _day_by_day(book: History, rule: Rule, zone: str) -> list[frozenset[tuple[str, Level]]]:
    found = []
    for ahead in range(SPAN + 90):
        past = book.on(zone, BEGINS + timedelta(ahead))
        found.append(frozenset((f.subject, f.level) for f, _ in judged(rule, past)))
    return found


def _turns_as_it_should(book: History, rule: Rule) -> None:
    every_day = _day_by_day(book, rule, "front")
    stood = raw(Court(book, "front", {rule.id: rule}, FIRST, FIRST + len(every_day) - 1))
    spans = [(subject, level, days) for (_, subject), levels in stood.items() for level, days in levels.items()]
    for ahead, found in enumerate(every_day):
        holds = {(subject, level) for subject, level, days in spans if days >> ahead & 1}
        assert holds == found, f"{rule.id} turns on {BEGINS + timedelta(ahead)}"


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.id)
@few
@given(lawns, st.data())
def test_judging_turn_days_is_judging_every_day(rule: Rule, name: str, data: st.DataObject) -> None:
    _turns_as_it_should(kept(name, numbered(data.draw(entries(rule.watches)))), rule)


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.id)
@pytest.mark.parametrize("name", EDGES)
def test_the_edges_of_the_year_are_turn_days(rule: Rule, name: str) -> None:
    _turns_as_it_should(EDGES[name], rule)


@few
@given(lawns, entries(), days)
def test_a_flag_rose_on_the_first_day_of_its_spell(name: str, diary: list[Entry], on: date) -> None:
    book = kept(name, numbered(diary))
    first_on_file = min(day for day in (book.set_up, book.oldest, book.kept_since) if day)
    for rule in rules():
        for flag in flags_of(rule, book.on("front", on)):
            day = on
            while day > first_on_file and flag.subject in {
                f.subject for f, _ in judged(rule, book.on("front", day - timedelta(1)))
            }:
                day -= timedelta(1)
            assert flag.rose == day, flag.id


@few
@given(lawns, entries(), days)
def test_what_is_dated_later_changes_no_flag(name: str, diary: list[Entry], on: date) -> None:
    diary = numbered(diary)
    everything = kept(name, diary)
    until = kept(name, [entry for entry in diary if entry.date <= on])
    assert findings(everything, on) == findings(until, on)


@few
@given(lawns, entries(), days, st.randoms(use_true_random=False))
def test_the_order_of_logging_changes_no_flag(name: str, diary: list[Entry], on: date, random: Random) -> None:
    diary = numbered(diary)
    other = list(diary)
    random.shuffle(other)
    assert findings(kept(name, diary), on) == findings(kept(name, other), on)


@few
@given(lawns, entries(), days)
def test_one_zone_knows_nothing_of_another(name: str, diary: list[Entry], on: date) -> None:
    diary = numbered(diary)
    wide = {rule.id for rule in rules() if rule.whole_lawn}
    everything = findings(kept(name, diary), on)
    oldest = min((e for e in diary), key=lambda e: e.date)
    without = findings(kept(name, [e for e in diary if e.zones != ("back",) or e is oldest]), on)

    def front(found: tuple[Flag, ...]) -> list[Flag]:
        return [f for f in found if f.zones == ("front",) and f.rule not in wide]

    assert front(everything) == front(without)


@few
@given(lawns, entries(), days)
def test_a_draft_raises_what_then_stands_and_clears_what_then_is_gone(
    name: str, diary: list[Entry], today: date
) -> None:
    *diary, draft = numbered(diary)
    book = kept(name, [entry for entry in diary if entry.date <= today])
    on = max(today, draft.date)
    before, after = standing(book, on), standing(book.plus(draft), on)
    found = preflight(book, draft, today)
    assert found == preflight(book, draft, today, before)
    stands = {(f.rule, zone, f.subject, f.level) for f in after.flags for zone in f.zones}
    stood = {(f.rule, zone, f.subject, f.level) for f in before.flags for zone in f.zones}
    raised = {(f.rule, zone, f.subject, f.level) for f in found.raised for zone in f.zones}
    own_day = standing(book.plus(draft), draft.date)
    every = (*own_day.flags, *own_day.hidden, *after.hidden)
    harm = {(f.rule, zone, f.subject, f.level) for f in every if f.level is Level.HARM for zone in f.zones}
    assert raised <= stands | harm  # a back-dated harm is told of, be it over by now
    assert stands - stood <= raised
    gone = {key[:3] for key in stood} - {key[:3] for key in stands}
    assert {(f.rule, zone, f.subject) for f in found.cleared for zone in f.zones} == gone
