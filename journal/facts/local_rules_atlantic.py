"""Laws on lawn fertilizer in the middle Atlantic states: New York, New Jersey, Maryland, Pennsylvania, Virginia."""

from journal.facts.citation import memory
from journal.facts.local_figures import distance, rate, second_hand, shut, sowing
from journal.facts.local_rules import Binds, Closes, LocalRules, Sowing, Stated
from journal.facts.sources import cite, judgment, published

NEW_YORK = LocalRules(
    id="us-ny",
    place="New York",
    reference="Env. Conserv. Law s.17-2101 to 2105",
    certainty="high",
    citations=(cite("ny-17-2103"), cite("ny-dec")),
    closed=(
        shut(
            (12, 1), (4, 1),
            published("ny-dec", "ny-17-2103", "27east-2012",
                      note="between 1 Dec and 1 Apr; that both days are closed is second-hand, from a newspaper"),
        ),
    ),
    phosphorus=Stated(
        "a phosphorus fertilizer is barred unless a soil test shows the need, or on a new lawn in its first growing "
        "season",
        published("ny-dec", "ny-17-2103"),
    ),
    phosphate_percent=Stated(0.67, published("ny-dec", "ny-17-2103")),
    sowing=sowing(Sowing.NEW, judgment("the wording names a new lawn only", "ny-17-2103")),
    buffer_mm=distance(20, published("ny-dec", "ny-17-2103")),
    buffer_careful_mm=distance(3, published("ny-dec", "ny-17-2103", note="with a deflector or a drop spreader")),
    water=Stated("exempt where 10 ft (3 m) of planted border lie between", published("ny-dec", "ny-17-2103")),
    paving=Stated("clean it up at once", published("ny-dec", "ny-17-2103")),
    further=(Stated("some counties, like Nassau and Suffolk, ask more", memory()),),
)  # fmt: skip

NEW_JERSEY = LocalRules(
    id="us-nj",
    place="New Jersey",
    reference="N.J.S.A. 58:10A-61 and following (P.L. 2010 c.112)",
    certainty="high for the dates, medium for the year's amount",
    citations=(cite("nj-58-10a-62"), cite("rutgers-2013")),
    closed=(
        shut(
            (11, 16), (2, 28),
            published("nj-58-10a-62", "rutgers-2013",
                      note="before 1 Mar or after 15 Nov; potassium and lime stay open"),
        ),
    ),
    ground=Stated(
        "not on frozen or saturated ground, nor in heavy rain", published("nj-58-10a-62")
    ),
    most_n_g_per_m2=rate(0.9, second_hand("nj-com-2013", note="for consumer products")),
    most_soluble_n_g_per_m2=rate(0.7, second_hand("nj-com-2013", note="for consumer products")),
    year_n_g_per_m2=rate(3.2, memory()),
    least_slow_share=Stated(0.20, second_hand("nj-com-2013", note="for consumer products")),
    phosphorus=Stated(
        "barred unless a soil test shows the need, a lawn is first established or repaired, or it goes below the "
        "surface or is organic",
        second_hand("cape-may-2011"),
    ),
    soil_test_months=Stated(36, second_hand("cape-may-2011")),
    sowing=sowing(Sowing.ANY, second_hand("cape-may-2011", note="repair and establishing again")),
    buffer_mm=distance(25, second_hand("nj-com-2013")),
    buffer_careful_mm=distance(10, memory("with a drop spreader or deflector")),
    paving=Stated("none on paving", published("nj-58-10a-62")),
    further=(Stated("it takes the place of towns' rules", published("nj-58-10a-62")),),
)  # fmt: skip

MARYLAND = LocalRules(
    id="us-md",
    place="Maryland",
    reference="Agric. Art. s.8-803.5 (Fertilizer Use Act of 2011)",
    certainty="high",
    citations=(cite("md-8-803-5"), cite("umd-schedule")),
    closed=(
        shut(
            (11, 16), (2, 28),
            published("md-8-803-5", "md-notice", note="before 1 Mar or after 15 Nov: 15 Nov is the last open day"),
        ),
    ),
    ground=Stated("not on frozen ground, nor before heavy rain", published("md-8-803-5")),
    most_n_g_per_m2=rate(0.9, published("umd-schedule", "md-summary")),
    most_soluble_n_g_per_m2=rate(0.7, published("umd-schedule", "md-summary")),
    phosphorus=Stated(
        "only on a soil test, or where a lawn is established, patched or renovated",
        published("md-8-803-5", "md-summary"),
    ),
    sowing=sowing(Sowing.ANY, second_hand("md-summary", note="patched or renovated")),
    buffer_mm=distance(15, published("md-8-803-5", "md-summary")),
    buffer_careful_mm=distance(
        10, published("md-8-803-5", "md-summary", note="with a drop spreader, deflector or targeted spray")
    ),
    paving=Stated("none on paving, and none to melt ice", published("md-8-803-5")),
    further=(
        Stated("a year's nitrogen by the state university's table for each grass", published("umd-schedule")),
        Stated(
            "enhanced-efficiency kinds (mostly coated) may bring more at once: 2.5 lb/k, 0.7 lb/k released a month",
            second_hand("md-summary"),
        ),
    ),
)  # fmt: skip

PENNSYLVANIA = LocalRules(
    id="us-pa",
    place="Pennsylvania",
    reference="3 Pa.C.S. s.6813 (Act 83 of 2022, amended 2023)",
    certainty="high; amended once already",
    citations=(cite("pennsylvania-6813"), cite("pa-homeowners"), cite("psu-2022")),
    closed=(
        shut(
            (12, 16), (2, 28),
            published("pennsylvania-6813", "psu-allegheny",
                      note="after 15 Dec and before 1 Mar; an extension page bars all nitrogen and phosphorus then"),
            Closes.NITROGEN, 0.5,
        ),
    ),
    ground=Stated("not on ground frozen 2 in (51 mm) deep or snow-covered", published("pennsylvania-6813")),
    most_n_g_per_m2=rate(0.9, published("pennsylvania-6813", note="more of an enhanced-efficiency kind")),
    most_soluble_n_g_per_m2=rate(0.7, published("pennsylvania-6813")),
    phosphorus=Stated(
        "none, unless labelled for establishing, establishing again or repair, or organic or enhanced with at most "
        "0.25 lb/k of P a feeding and 0.5 lb/k a year",
        published("pennsylvania-6813"),
    ),
    sowing=sowing(Sowing.ANY, published("pennsylvania-6813", note="repair, by a product labelled for it")),
    buffer_mm=distance(15, published("pennsylvania-6813", note="from the top of the bank")),
    buffer_careful_mm=distance(0, published("pennsylvania-6813", note="with drop, deflector or targeted spread")),
    paving=Stated("remove it immediately", published("pennsylvania-6813")),
    further=(
        Stated(
            "enhanced-efficiency kinds may bring more at once, if they release at most 0.7 lb/k at any time",
            published("pennsylvania-6813"),
        ),
    ),
)  # fmt: skip

VIRGINIA = LocalRules(
    id="us-va",
    place="Virginia",
    reference="Va. Code s.3.2-3600 and following; 2011 ch. 353",
    binds=Binds.SELLERS,
    certainty="medium",
    citations=(cite("va-3-2-3607-2"), cite("va-2011-353")),
    most_n_g_per_m2=rate(0.9, memory("guidance, in 30 days")),
    most_soluble_n_g_per_m2=rate(0.7, memory("guidance, in 30 days")),
    phosphorus=Stated(
        "lawn maintenance fertilizer with phosphorus is not to be sold since 31 Dec 2013; starter, repair and organic "
        "kinds are exempt",
        memory("the act itself was seen: 2011 ch. 353"),
    ),
    sowing=sowing(Sowing.ANY, memory("starter and repair fertilizer may be sold")),
    water=Stated("none statewide for owners", memory()),
    paving=Stated("urea, nitrogen and phosphorus may not be sold to melt ice", published("va-3-2-3607-2")),
    further=(
        Stated(
            "no closed days in the statute; the university's calendar is for hired applicators",
            published("va-2011-353"),
        ),
    ),
)

SETS = (NEW_YORK, NEW_JERSEY, MARYLAND, PENNSYLVANIA, VIRGINIA)
