"""Pre-emergent actives: barriers against annual weeds."""

from journal.facts.active import FROM_MEMORY, Active, Use
from journal.facts.citation import memory
from journal.facts.factors import mm
from journal.facts.grasses import Span
from journal.facts.sources import judgment, published

_TRIAL = published("weed-technology-2005", note="one trial, Kentucky bluegrass, one rate")
_HALF_INCH_MEMORY = memory("half an inch")

BARRIERS: tuple[Active, ...] = (
    Active(
        "prodiamine", Use.PRE_EMERGENT, "HRAC 3", published("pnw-grass-weeds"),
        210, published("delaware-renovation", note="4 to 7 months by rate; the upper end, 7 x 30 d"),
        60, 3, judgment("60 days or the second mowing is from memory; one mowing added"), False,
        seed_wait_split_days=210, split_basis=published("delaware-renovation"),
        seed_wait_trial_slit_days=112, slit_basis=_TRIAL,
        repeat_days=Span(60, 90), repeat_basis=published("label-40896", note="for the second half of a split"),
        water_in_mm=mm(0.5), water_basis=published("label-40896", note="within 14 days and before germination"),
    ),
    Active(
        "dithiopyr", Use.PRE_EMERGENT, "HRAC 3", published("label-82181"),
        120, published("delaware-renovation", note="3 months single, 4 months split; the upper end, 4 x 30 d"),
        0, 3, judgment("the label asks two mowings and vigorous roots; one mowing added", "label-82181"), False,
        seed_wait_split_days=120, split_basis=published("delaware-renovation"),
        seed_wait_trial_slit_days=77, slit_basis=_TRIAL,
        repeat_days=Span(42, 56), repeat_basis=published("ncsu-crabgrass", note="half and half at 6 to 8 weeks"),
        yearly_lb_per_acre=0.5, year_basis=published("label-82181", note="the New York limit"),
        water_in_mm=mm(0.5), water_basis=published("label-82181"),
    ),
    Active(
        "pendimethalin", Use.PRE_EMERGENT, "HRAC 3", published("pnw-grass-weeds"),
        120, memory("labels say 90 to 120 days; a trial found 56 broadcast, 70 slit-seeded"),
        0, 4, FROM_MEMORY, False,
        seed_wait_trial_slit_days=70, slit_basis=_TRIAL,
        repeat_days=Span(56, 56), repeat_basis=published("kstate-2016", note="a follow-up at about 8 weeks"),
        water_in_mm=mm(0.5), water_basis=_HALF_INCH_MEMORY,
    ),
    Active(
        "siduron", Use.PRE_EMERGENT, "HRAC 7", FROM_MEMORY,
        210, judgment("for grasses not listed, as an unknown pre-emergent"),
        0, 0, published("purdue-part-2", note="used at seeding of cool-season grass"), False,
        wait_by_grass=(("kentucky bluegrass", 0), ("tall fescue", 0), ("perennial ryegrass", 0), ("fine fescue", 0)),
        listed_basis=published("purdue-part-2", "delaware-spring"),
        fescue_limit_percent=20.0,
        fescue_basis=judgment("held to the limit of mesotrione; the publications name no limit"),
        repeat_days=Span(28, 35), repeat_basis=FROM_MEMORY,
        water_in_mm=mm(0.5), water_basis=memory("half an inch within 3 days"),
    ),
    Active(
        "corn gluten meal", Use.PRE_EMERGENT, "none", FROM_MEMORY,
        42, memory("28 to 42 days; the upper end"), 0, 4, judgment("two mowings is from memory; two added"), False,
        aliases=("corn gluten", "cgm"),
        max_per_year=2, year_basis=memory("two uses bring about 4 lb of nitrogen per 1,000 sq ft"),
    ),
)  # fmt: skip
