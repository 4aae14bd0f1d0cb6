"""Laws on lawn fertilizer around the Great Lakes and in the West: Minnesota, Wisconsin, Michigan, Illinois, Washington.

None of them closes days or sets an amount of nitrogen, as far as was seen.
"""

from journal.facts.local_figures import distance, second_hand, sowing
from journal.facts.local_rules import Binds, LocalRules, Sowing, Stated
from journal.facts.sources import cite, judgment, published

MINNESOTA = LocalRules(
    id="us-mn",
    place="Minnesota",
    reference="Minn. Stat. s.18C.60",
    certainty="high",
    citations=(cite("mn-18c-60"), cite("mn-responsible"), cite("mn-2002-345")),
    ground=Stated("never on frozen ground (guidance)", published("mn-responsible")),
    phosphorus=Stated(
        "none, unless a soil test shows the need, or in the first growing season of seed or sod; then at most the "
        "university's rate",
        published("mn-18c-60"),
    ),
    soil_test_months=Stated(36, published("mn-18c-60")),
    sowing=sowing(Sowing.NEW, judgment("the wording names a first growing season only", "mn-18c-60")),
    paving=Stated("none on paving", published("mn-2002-345", note="from its title")),
    water=Stated("nothing of it in the statute; local rules may ask it", published("mn-18c-60")),
)

WISCONSIN = LocalRules(
    id="us-wi",
    place="Wisconsin",
    reference="Wis. Stat. s.94.643",
    certainty="high",
    citations=(cite("wi-94-643"),),
    ground=Stated("no fertilizer of any kind on frozen ground", published("wi-94-643")),
    phosphorus=Stated(
        "none labelled as holding phosphorus, unless grass is established in that season or a soil test shows the need",
        published("wi-94-643"),
    ),
    soil_test_months=Stated(36, published("wi-94-643")),
    sowing=sowing(Sowing.NEW, judgment("the wording names establishing only", "wi-94-643")),
    paving=Stated("remove it immediately", published("wi-94-643")),
)

MICHIGAN = LocalRules(
    id="us-mi",
    place="Michigan",
    reference="1994 PA 451 Part 85, as amended by PA 299 of 2010",
    certainty="high",
    citations=(cite("msu-2012"), cite("lake-mitchell"), cite("mi-nursery")),
    ground=Stated("not on frozen or saturated soil", published("msu-2012")),
    phosphorus=Stated(
        "no P2O5, unless a soil test shows the need, on new turf, or manure and biosolids with at most 0.25 lb/k of P",
        published("msu-2012", "lake-mitchell", "mi-nursery"),
    ),
    soil_test_months=Stated(36, published("msu-2012", "lake-mitchell", "mi-nursery")),
    sowing=sowing(Sowing.NEW, judgment("the wording names new turf only", "msu-2012")),
    buffer_mm=distance(15, published("msu-2012", "lake-mitchell", "mi-nursery")),
    buffer_careful_mm=distance(3, second_hand("mi-nursery", "lake-mitchell", note="with guard, deflector or drop")),
    water=Stated("exempt where 10 ft (3 m) of planted border lie between", second_hand("lake-mitchell", "mi-nursery")),
    paving=Stated("clean it up promptly", published("msu-2012")),
)

ILLINOIS = LocalRules(
    id="us-il",
    place="Illinois",
    reference="415 ILCS 65/5a",
    binds=Binds.HIRED,
    certainty="high",
    citations=(cite("il-65-5a"),),
    ground=Stated("not on a frozen or saturated lawn", published("il-65-5a")),
    phosphorus=Stated(
        "none, unless a soil test shows the need, or in the first two growing seasons", published("il-65-5a")
    ),
    soil_test_months=Stated(36, published("il-65-5a")),
    sowing=sowing(Sowing.NEW, judgment("the wording names the first two growing seasons only", "il-65-5a")),
    buffer_mm=distance(15, published("il-65-5a")),
    buffer_careful_mm=distance(3, published("il-65-5a", note="with a deflector or a drop spreader")),
    paving=Stated("sweep it back", published("il-65-5a")),
)

WASHINGTON = LocalRules(
    id="us-wa",
    place="Washington",
    reference="RCW 15.54.500",
    certainty="high",
    citations=(cite("wa-15-54-500"),),
    ground=Stated("no phosphorus on frozen ground", published("wa-15-54-500")),
    phosphorus=Stated(
        "none labelled as holding phosphorus, unless a lawn is established or repaired in that season or a soil test "
        "shows the need",
        published("wa-15-54-500"),
    ),
    soil_test_months=Stated(36, published("wa-15-54-500")),
    sowing=sowing(Sowing.ANY, published("wa-15-54-500", note="repair")),
    paving=Stated("no phosphorus on paving on purpose", published("wa-15-54-500")),
)

SETS = (MINNESOTA, WISCONSIN, MICHIGAN, ILLINOIS, WASHINGTON)
