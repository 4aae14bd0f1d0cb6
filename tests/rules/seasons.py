"""Random short seasons, wilder than any owner's, for what must hold in every book."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date, time, timedelta
from typing import Any

from hypothesis import strategies as st

from journal.record.document import to_document
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.sighting import Count, Height, Sighting
from journal.record.kinds.soil import SoilTest
from journal.record.kinds.stock import Stock
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Schedule, Watering
from journal.record.kinds.weather import Rain, Weather
from journal.season.history import History
from tests.rules.seed_shed import OLD_BAG, OWN_SEED
from tests.rules.soil_shed import SHED
from tests.scenario import LAWN, book, lawn

BEGINS = date(2026, 1, 5)
SPAN = 330
SEEDS = ("three-river", "stone-wall", "quick-rye", "old-bag")
FEEDS = ("oat-hill", "pond-ridge", "slow-oak", "green-gate", "grey-lime", "kelp-mix", "dune-gold")
TREATMENTS = ("spring-wall", "leaf-off", "green-gate", "unknown", "grub-end", "spot-out", "leaf-mix")
LABELLED = f"""{LAWN.replace('actives = ["prodiamine"]', 'actives = [{name="prodiamine", percent=0.4}]')}
[product.label]
repeat = "20 d"
max_per_year = 3
max_amount_per_year = "2 floz/k"
temp = ["45F", "80F"]
rain_free = "48 h"
mow_after = "5 d"
mow_before = "1 d"
reentry = "30 h"

[[product]]
name = "grub-end"
kind = "insect"
actives = ["imidacloprid"]
form = "granule"
[product.label]
professional = true
water_in = "0.3 in"
water_in_within = "4 d"

[[product]]
name = "spot-out"
kind = "disease"
actives = ["azoxystrobin"]
form = "liquid"
[product.label]
repeat = "5 d"
spot_counts = true

[[product]]
name = "leaf-mix"
kind = "weed"
actives = [{{name="2,4-d ester", lb_per_gal=1.5}}, {{name="dicamba", lb_per_gal=0.2}}]
form = "liquid"
"""

_Made = st.SearchStrategy[Callable[[date], Entry]]
_zones = st.sampled_from([("front",), ("back",), ("front", "back")])
_amounts = st.sampled_from([None, 900.0, 2000.0, 5000.0])
_spots = st.sampled_from([False, False, False, True])
_heights = st.sampled_from([None, 30.0, 50.8, 63.5, 76.2, 88.9, 101.6, 120.0])
_states = st.sampled_from(
    [
        "emerged",
        "dormant",
        "green",
        "frozen",
        "thawed",
        "snow",
        "traffic",
        "traffic",
        "crabgrass",
        "dandelion",
        "damage",
        "dry",
        "flowering",
        "no-flowers",
        "exposure",
        "sign",
        "sign-down",
    ]
)
_days = st.integers(0, 40)


def _made(kind: type[Entry], **fields: st.SearchStrategy[object]) -> tuple[str, _Made]:
    return kind.kind, st.fixed_dictionaries(fields).map(lambda values: lambda on: kind(date=on, **_settled(values, on)))


def _settled(values: dict[str, Any], on: date) -> dict[str, Any]:
    """Days become dates, counted from the entry's own."""
    ahead, back = values.get("ahead"), values.get("back")
    rest = {name: value for name, value in values.items() if name not in ("ahead", "back", "ahead_as")}
    if isinstance(ahead, int):
        rest[str(values["ahead_as"])] = on + timedelta(ahead)
    if isinstance(back, int) and back:
        rest["since"] = on - timedelta(back)
    return rest


_MADE = (
    _made(Mowing, zones=_zones, height_mm=_heights),
    _made(
        Mowing, zones=_zones, height_mm=_heights, clippings=st.sampled_from(["", "bag", "return"]),
        minutes=st.sampled_from([None, 300.0]), time=st.sampled_from([None, time(9)]),
    ),
    _made(Equipment, what=st.just("sharpen")),
    _made(Watering, zones=_zones, minutes=st.sampled_from([None, 5.0, 20.0]), deep=_spots, spot=_spots),
    _made(
        Schedule, zones=_zones, minutes=st.just(10.0), weekdays=st.sampled_from([(), (0, 3)]), off=_spots,
        ahead=st.one_of(st.none(), _days), ahead_as=st.just("until"), back=st.sampled_from([0, 3]),
    ),
    _made(Rain, zones=st.sampled_from([(), ("front",)]), depth_mm=st.sampled_from([0.0, 3.0, 15.0, 40.0]), back=_days),
    _made(Feeding, zones=_zones, product=st.sampled_from(FEEDS), amount_g=_amounts, spot=_spots),
    _made(
        Feeding, zones=_zones, product=st.sampled_from(FEEDS), light=_spots, edge_kept=_spots,
        rate_g_per_m2=st.sampled_from([5.0, 15.0, 30.0, 300.0]), part=st.sampled_from(["", "1/2", "2/2"]),
    ),
    _made(Treatment, zones=_zones, product=st.sampled_from(TREATMENTS), amount_g=_amounts, spot=_spots),
    _made(
        Treatment, zones=_zones, product=st.sampled_from(TREATMENTS), amount_ml=_amounts, spot=_spots,
        part=st.sampled_from(["", "", "1/2", "2/2"]), wind_m_s=st.sampled_from([None, 0.5, 2.5, 6.0]),
        temp_c=st.sampled_from([None, 3.0, 20.0, 33.0]), time=st.sampled_from([None, time(7), time(12)]),
    ),
    _made(
        Seeding, zones=_zones, product=st.sampled_from(SEEDS), amount_g=_amounts, spot=_spots, new=_spots,
        slit=_spots, dormant=_spots,
    ),
    _made(Height, zones=_zones, height_mm=_heights),
    _made(Sighting, zones=_zones, subject=_states),
    _made(Count, zones=_zones, subject=st.just("grubs"), per_m2=st.sampled_from([40.0, 120.0])),
    _made(SoilTest, zones=st.sampled_from([(), ("front",)]), p=st.sampled_from(["low", "high"])),
    _made(
        Intention, zones=_zones, what=st.just("seed"), product=st.sampled_from((*SEEDS, "")), ahead=_days,
        ahead_as=st.just("target"),
    ),
    _made(
        Intention, zones=_zones, what=st.just("feed"), product=st.sampled_from((*FEEDS, "")), ahead=_days,
        ahead_as=st.just("target"),
    ),
    _made(Cultivation, zones=_zones, what=st.sampled_from(["dethatch", "aerate", "rake"])),
    _made(Stock, product=st.sampled_from((*SEEDS, "pond-ridge", "oat-hill")), size_g=st.sampled_from([None, 4000.0])),
    _made(Photo, zones=_zones, file=st.just("a.jpg"), point=st.sampled_from(["", "gate", "roof"])),
)  # fmt: skip

_spells = st.tuples(
    st.integers(0, SPAN - 60), st.integers(3, 60),
    st.sampled_from([(-1.0, -8.0), (4.0, -2.0), (14.0, 8.0), (20.0, 8.0), (33.0, 20.0)]),
    st.sampled_from([None, 0.0, 4.0]),
)  # fmt: skip

_NO_GROWTH = ('growth = ["04-10", "11-10"]\n', "")
_OWN = (
    "mow-gap days 13", "mow-gap slow-days 9", "mow-gap late-days 6", "mow-gap first-days 30", "mow-gap dry-days 12",
    "mow-first-early days 35", "mow-first-early loss-days 12", "mow-first-early height-from-day 20",
    "mow-first-late days 33", "mow-first-late days-bluegrass 40", "mow-too-low stands-days 7",
    "mow-one-third stands-days 9", "mow-one-third growth 2x", "mow-clippings days 11", "mow-clippings mowings 1x",
    "mow-blade minutes 200min", "mow-blade mowings 3x", "mow-blade stands-days 10", "mow-wet hours 40x",
    "mow-wet stands-days 5", "water-deficit days 4", "water-week days 10", "water-often dates 1x",
    "water-often days 12", "water-runoff stands-days 20", "dormant-thirst days 20", "dormant-thirst days-sown 9",
    "dormant-thirst ask-days 11", "dormant-thirst ask-stands 3",
    "mow-height stands-days 9", "mow-height late-days 33", "mow-height before-seeding-days 12",
    "feed-overdue days 40", "feed-overdue days-15 50", "feed-overdue seeded-days 20", "feed-overdue late-days 50",
    "feed-too-soon days 60", "feed-too-soon stands-days 20", "feed-too-soon light-to-day 33",
    "feed-dormant note-days 5", "feed-dormant stands-days 9", "feed-heat high 75F", "feed-heat stands-days 5",
    "feed-water-in days 4", "feed-water-in stands-days 9", "feed-wash days 2", "feed-wash stands-days 7",
    "seedling-feed late-day 30", "seedling-feed to-day 90", "feed-closed frozen-mean 38F",
    "seedbed-dry days 11", "seedbed-dry days-bluegrass 40", "seedbed-dry once-from-day 5",
    "seedbed-dry waterings 3", "starter-missing from-day 3", "starter-missing to-day 40",
    "starter-missing before-days 12", "starter-wrong before-days 20", "starter-wrong to-day 11",
    *OWN_SEED,
    "seed-over-residue split-days 20", "new-grass-treatment within-days 80", "new-grass-treatment stands-days 20",
    "barrier-past from 120", "barrier-past most 300", "barrier-missed before-frost-days 40",
    "barrier-missed stands-days 9", "broadleaf-missed stands-days 50", "grub-blind count-days 100",
    "barrier-before-seed note-days 30",
    "unknown-treatment residue-days 100", "label-interval days-weed 40", "label-year-count most 1",
    "group-repeat in-a-row 2",
    "phosphate-reason seeding-days 12", "soil-test-stale days 400", "lime-dose days 9", "lime-urea days 20",
    "stock-short ahead-days 10", "photo-gap days 20", "keep-off rain-days 6", "wash-off hours 60x", "bloom hours 20x",
    "water-in-missing note-days 1", "water-in-missing late-days-barrier 5", "mow-near-treatment after 6",
    "mow-near-treatment before 4", "clippings-treated mowings 5x", "reentry depth 20mm",
)  # fmt: skip
LAWNS = {
    "as set up": lawn(),
    "on loam": lawn(("irrigated = true", 'irrigated = true\nsoil = "loam"')),
    "on steep sand, dry": lawn(("irrigated = true", 'irrigated = false\nsoil = "sand"\nslope = "steep"')),
    "by frost dates": lawn(_NO_GROWTH),
    "growth unknown": lawn(_NO_GROWTH, ('last_frost = "05-06"\nfirst_frost = "10-05"\n', "")),
    "not irrigated": lawn(("irrigated = true", "irrigated = false")),
    "by months": lawn(('name = "North Lane"', 'name = "North Lane"\nfeeding = "months"')),
    "southern": lawn(("latitude = 42.3", "latitude = -42.3"), (_NO_GROWTH[0], 'growth = ["09-10", "05-10"]\n')),
    "own numbers": book(
        *(f"{BEGINS} set {words}" for words in _OWN),
        on=lawn(("irrigated = true", "irrigated = false"), set_up=BEGINS),
    ),
    "a local rule": lawn(
        ('name = "North Lane"', 'name = "North Lane"\nlocal_rules = "us-vt"\nlocal_closed = ["08-25", "09-12"]'),
    ),
    "a labelled shed": lawn(toml=LABELLED),
    "a labelled shed by the water": lawn(
        ('name = "front"\n', 'name = "front"\nnear_water = "20 ft"\nslope = "steep"\n'),
        ('name = "North Lane"', 'name = "North Lane"\nlocal_sign = "72h"'),
        toml=LABELLED,
    ),
    "seed with a poor label": lawn(toml=LAWN + OLD_BAG),
    "lime, and water near": lawn(toml=SHED),
    "lime under a local rule": lawn(
        ('name = "North Lane"', 'name = "North Lane"\nlocal_rules = "us-md"\nrenovated = "2025-09-06"'), toml=SHED
    ),
    "a starter against weeds, and a service": lawn(
        ('slow = "20% of n"', 'slow = "20% of n"\nactives = ["mesotrione"]'),
        ('name = "front"\n', 'name = "front"\nmowing = "service"\n'),
    ),
    "begun in May": lawn(set_up=BEGINS + timedelta(120)),
}


class Diary(list[Entry]):
    """Entries that show themselves without their defaults, and weather by its number of days."""

    def __repr__(self) -> str:
        said = [f"{e.kind} {to_document(e)}" for e in self if not isinstance(e, Weather)]
        return "\n".join([*said, f"{len(self) - len(said)} days of weather"])


@st.composite
def entries(draw: st.DrawFn, kinds: frozenset[str] | None = None) -> list[Entry]:
    """A diary in the order in which it was written down, which is not that of its days; of some kinds only, or all."""
    made = [strategy for kind, strategy in _MADE if kinds is None or kind in kinds]
    count = draw(st.integers(1, 14)) if made else 0
    found: list[Entry] = [draw(st.one_of(made))(BEGINS + timedelta(draw(st.integers(0, SPAN)))) for _ in range(count)]
    spells = st.lists(_spells, max_size=2) if kinds is None or Weather.kind in kinds else st.just([])
    for first, length, (high, low), rain in draw(spells):
        found += [
            Weather(date=BEGINS + timedelta(first + at), high_c=high, low_c=low, rain_mm=rain) for at in range(length)
        ]
    return Diary(found)


def numbered(diary: list[Entry]) -> list[Entry]:
    """With ids in the order of writing."""
    return [replace(entry, id=f"1{at:05}") for at, entry in enumerate(diary)]


lawns = st.sampled_from(list(LAWNS))


def kept(name: str, diary: list[Entry]) -> History:
    """The book of that lawn with the diary in it."""
    book = LAWNS[name]
    for entry in diary:
        book = book.plus(entry)
    return book
