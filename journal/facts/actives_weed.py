"""Actives against weeds that are up, in a standing lawn."""

from journal.facts.active import FROM_MEMORY, Active, Use
from journal.facts.citation import memory
from journal.facts.grasses import Span
from journal.facts.sources import judgment, published

_BROADLEAF_MOWINGS = published("purdue-part-3", note="2 to 3 mowings; the upper end")
_CAUTIOUS = judgment("longer than the label intervals remembered, to be cautious")
_FOUR_WEEKS = memory("21 to 28 days; the upper end")
_TWO_A_YEAR = memory("two broadcast uses a year")

WEEDS: tuple[Active, ...] = (
    Active(
        "mesotrione", Use.WEED, "HRAC 27", FROM_MEMORY,
        28, judgment("for grasses not listed, or 20 % fine fescue and more"),
        28, 2, memory("one extension page counts 4 weeks from planting, not from emergence"), True,
        wait_by_grass=(("kentucky bluegrass", 0), ("tall fescue", 0), ("perennial ryegrass", 0), ("fine fescue", 0)),
        listed_basis=published("delaware-spring", note="the low rate on perennial ryegrass"),
        fescue_limit_percent=20.0,
        fescue_basis=judgment("a limit of 20 % is quoted second-hand; fine fescue is injured", "delaware-spring"),
        repeat_days=Span(14, 21), repeat_basis=judgment("a trial used 14 days; 21 is from memory", "hortscience-2008"),
        yearly_lb_per_acre=0.5, year_basis=published("hortscience-2018", note="560 g/ha a year"),
    ),
    Active(
        "topramezone", Use.WEED, "HRAC 27", FROM_MEMORY,
        28, judgment("cautious: one page has seed sown the day after", "purdue-seed-or-weeds"),
        28, 0, FROM_MEMORY, True,
        repeat_days=Span(21, 28), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=memory("2 to 3 uses"),
    ),
    Active(
        "2,4-d", Use.WEED, "HRAC 4", published("pnw-8597"),
        28, published("label-80081", note="3 to 4 weeks; the upper end"),
        0, 3, published("label-80081", "purdue-part-3", note="second to third mowing; the upper end"), True,
        aliases=("24-d", "2 4-d", "24d", "2,4d", "2,4-d amine", "2,4-d ester"),
        repeat_days=Span(21, 30), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=_TWO_A_YEAR,
    ),
    Active(
        "mecoprop-p", Use.WEED, "HRAC 4", FROM_MEMORY, 28, _FOUR_WEEKS, 0, 3, _BROADLEAF_MOWINGS, True,
        aliases=("mcpp", "mcpp-p", "mecoprop"),
        repeat_days=Span(28, 30), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=_TWO_A_YEAR,
    ),
    Active(
        "dicamba", Use.WEED, "HRAC 4", FROM_MEMORY,
        28, memory("21 to 28 days, longer when dry or cold"), 0, 3, _BROADLEAF_MOWINGS, True,
        repeat_days=Span(30, 30), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=_TWO_A_YEAR,
    ),
    Active(
        "triclopyr", Use.WEED, "HRAC 4", FROM_MEMORY,
        28, judgment("21 days is from memory; a week added"),
        0, 4, judgment("2 to 3 mowings is from memory; one added"), True,
        aliases=("triclopyr ester", "triclopyr amine"),
        repeat_days=Span(28, 28), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=_TWO_A_YEAR,
    ),
    Active(
        "clopyralid", Use.WEED, "HRAC 4", FROM_MEMORY, 28, memory("seldom allowed on a home lawn"),
        0, 3, FROM_MEMORY, True, max_per_year=1, year_basis=memory("1 to 2 uses"), home_lawn=False,
    ),
    Active(
        "quinclorac", Use.WEED, "HRAC 4", FROM_MEMORY, 28, judgment("for grasses not listed"),
        28, 0, memory("tall fescue at any time"), True,
        wait_by_grass=(("kentucky bluegrass", 7), ("tall fescue", 7), ("perennial ryegrass", 7)),
        listed_basis=published("delaware-spring", note="7 days before bluegrass, kept for all three"),
        repeat_days=Span(21, 30), repeat_basis=FROM_MEMORY, yearly_lb_per_acre=1.5, year_basis=FROM_MEMORY,
    ),
    Active(
        "sulfentrazone", Use.WEED, "HRAC 14", FROM_MEMORY,
        60, judgment("30 days is from memory; doubled for want of a label"),
        0, 3, judgment("a home label says after the second mowing; one added"), True,
        repeat_days=Span(35, 84), repeat_basis=FROM_MEMORY, yearly_lb_per_acre=0.375, year_basis=FROM_MEMORY,
    ),
    Active(
        "carfentrazone", Use.WEED, "HRAC 14", published("pnw-seedbed"),
        7, judgment("1 day is from memory; kept to a week", "purdue-seed-or-weeds"),
        28, 0, judgment("7 days after emergence is from memory; kept to 4 weeks"), True,
        aliases=("carfentrazone-ethyl",),
        repeat_days=Span(14, 14), repeat_basis=FROM_MEMORY, max_per_year=4, year_basis=FROM_MEMORY,
    ),
    Active(
        "halosulfuron", Use.WEED, "HRAC 2", FROM_MEMORY,
        42, judgment("28 days is from memory; seed sown at 0 to 14 days was held back", "kstate-thesis"),
        0, 4, judgment("3 mowings is from memory; one added"), True, aliases=("halosulfuron-methyl",),
        repeat_days=Span(42, 70), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=memory("2 to 4 uses"),
    ),
    Active(
        "fenoxaprop", Use.WEED, "HRAC 1", FROM_MEMORY, 28, _CAUTIOUS,
        28, 3, judgment("28 days is from memory; 3 mowings added"), True, aliases=("fenoxaprop-p-ethyl",),
        repeat_days=Span(14, 28), repeat_basis=FROM_MEMORY, max_per_year=2, year_basis=FROM_MEMORY,
    ),
    Active(
        "iron hedta", Use.WEED, "none", FROM_MEMORY, 14, judgment("1 to 7 days is from memory; doubled"),
        0, 4, judgment("3 mowings is from memory; one added"), True, aliases=("fehedta", "iron chelate hedta"),
        repeat_days=Span(28, 28), repeat_basis=published("umd-iron"), max_per_year=4, year_basis=published("umd-iron"),
    ),
)  # fmt: skip
