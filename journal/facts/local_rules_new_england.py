"""Laws on lawn fertilizer in New England: Massachusetts, Connecticut, New Hampshire, Vermont, Maine."""

from journal.facts.citation import memory
from journal.facts.local_figures import distance, rate, second_hand, shut, sowing
from journal.facts.local_rules import Binds, Closes, LocalRules, Sowing, Stated
from journal.facts.sources import cite, judgment, published

_NOT_YET = "the text before the law was changed in 2024; the numbers in force were not seen"

MASSACHUSETTS = LocalRules(
    id="us-ma",
    place="Massachusetts",
    reference="330 CMR 31.05 to 31.06",
    certainty="high for phosphorus, medium for the dates",
    citations=(cite("ma-330-31-05"), cite("ma-330-31-06"), cite("ma-nutrients")),
    closed=(shut((12, 1), (3, 1), second_hand("lake-attitash", note="whether 1 Mar is open was not seen")),),
    ground=Stated("not on frozen, snow-covered or saturated ground", second_hand("lake-attitash")),
    most_n_g_per_m2=rate(1.0, memory("the state university's guideline rates bind; the number was not seen")),
    year_n_g_per_m2=rate(3.0, memory("the state university's guideline rates bind; the number was not seen")),
    phosphorus=Stated(
        "none, unless a soil test shows the need, or on a new lawn or in a renovation in its first growing season; "
        "0.25 lb/k of P2O5 once in 12 months is exempt",
        published("ma-330-31-05"),
    ),
    phosphate_percent=Stated(0.67, published("ma-330-31-05")),
    soil_test_months=Stated(36, published("ma-330-31-06")),
    sowing=sowing(Sowing.ANY, published("ma-330-31-05", note="renovation, in the first growing season")),
    buffer_mm=distance(20, memory("other water than drinking water")),
    buffer_careful_mm=distance(10, memory("with a drop or targeted spreader")),
    water=Stated(
        "20 ft from a supply well, 100 ft from surface water that is drunk (6.1 m, 30 m)",
        second_hand("lake-attitash"),
    ),
    paving=Stated("none on paving; sweep it up", memory()),
)

CONNECTICUT = LocalRules(
    id="us-ct",
    place="Connecticut",
    reference="P.A. 12-155; Gen. Stat. s.22-111yy",
    certainty="the dates are uncertain",
    citations=(cite("ct-12-155"), cite("ct-22-111yy")),
    closed=(
        shut(
            (12, 1), (2, 28),
            judgment("second-hand; the press says December through February, to 15 Mar is remembered", "norwich-2012"),
            Closes.PHOSPHORUS,
        ),
        shut((3, 1), (3, 15), memory("the press says December through February"), Closes.PHOSPHORUS),
    ),
    phosphorus=Stated(
        "no phosphate on a lawn that has stood for two growing seasons or more, unless a soil test shows the need, or "
        "for seeding, repair or sod",
        second_hand("ct-garden-club", "ct-12-155"),
    ),
    soil_test_months=Stated(24, second_hand("ct-garden-club")),
    sowing=sowing(Sowing.ANY, second_hand("ct-garden-club", note="repair and seeding")),
    buffer_mm=distance(20, second_hand("norwich-2012")),
    buffer_careful_mm=distance(15, memory("with a drop or targeted spreader")),
    paving=Stated("none on paving", memory()),
    further=(Stated("no number for nitrogen in the statute", memory()),),
)  # fmt: skip

NEW_HAMPSHIRE = LocalRules(
    id="us-nh",
    place="New Hampshire",
    reference="RSA 431:3 to 431:4-e, as changed by HB 1293 (2024 ch. 380) from 1 Jan 2025",
    certainty="a new law: look its numbers up",
    citations=(cite("nh-hb1293"), cite("nh-landscape")),
    ground=Stated("not on frozen or dormant grass, nor in or before heavy rain", second_hand("nh-landscape")),
    most_n_g_per_m2=rate(0.9, judgment(_NOT_YET, "nh-hb1293")),
    most_soluble_n_g_per_m2=rate(0.7, judgment(_NOT_YET, "nh-hb1293")),
    year_n_g_per_m2=rate(3.25, judgment(_NOT_YET, "nh-hb1293")),
    phosphorus=Stated(
        "only approved turf fertilizers, with no or little phosphate unless an exception holds; before the change: "
        "except on new, repaired or seeded lawns or where a test shows the need, and at most 1 lb/k of P2O5 a year",
        second_hand("nh-landscape", "nh-hb1293"),
    ),
    phosphate_percent=Stated(0.67, judgment(_NOT_YET, "nh-hb1293")),
    sowing=sowing(Sowing.UNKNOWN, judgment("not known since the change", "nh-hb1293")),
    buffer_mm=distance(25, second_hand("nh-landscape")),
    water=Stated("as far from storm drains as from any surface water", second_hand("nh-landscape")),
    paving=Stated("none on paving", second_hand("nh-landscape")),
    further=(
        Stated(
            "enhanced-efficiency kinds (mostly coated): at most 2.5 lb/k of nitrogen once, 0.7 lb/k released a month",
            judgment(_NOT_YET, "nh-hb1293"),
        ),
    ),
)

VERMONT = LocalRules(
    id="us-vt",
    place="Vermont",
    reference="10 V.S.A. s.1266b (Act 37 of 2011)",
    certainty="high",
    citations=(cite("vermont-1266b"), cite("vt-1266b-text")),
    closed=(shut((10, 16), (3, 31), published("vermont-1266b", "vt-1266b-text"), Closes.ANY),),
    least_slow_share=Stated(0.15, published("vt-1266b-text")),
    phosphorus=Stated(
        "a phosphorus fertilizer is barred unless a soil test shows the need, or it is a starter in a lawn's first "
        "season",
        published("vermont-1266b", "vt-1266b-text"),
    ),
    phosphate_percent=Stated(0.67, published("vermont-1266b", "vt-1266b-text")),
    soil_test_months=Stated(18, second_hand("addison-2012")),
    sowing=sowing(Sowing.NEW, judgment("the wording names a first season only", "vermont-1266b")),
    buffer_mm=distance(25, published("vermont-1266b", "vt-1266b-text", note="from waters of the state")),
    paving=Stated("none on paving", published("vermont-1266b", "vt-1266b-text")),
)

MAINE = LocalRules(
    id="us-me",
    place="Maine",
    reference="38 M.R.S. s.419",
    binds=Binds.SELLERS,
    certainty="high",
    citations=(cite("maine-lawns"), cite("maine-419")),
    phosphorus=Stated(
        "a sign at the sale says that a phosphorus fertilizer is not appropriate for lawns, unless a soil test shows "
        "the need, or for a new lawn, reseeding or overseeding",
        published("maine-lawns", "maine-419"),
    ),
    phosphate_percent=Stated(0.67, published("maine-lawns", "maine-419")),
    sowing=sowing(Sowing.ANY, published("maine-lawns", note="reseeding and overseeding")),
    water=Stated("towns have shoreland rules", memory()),
)

SETS = (MASSACHUSETTS, CONNECTICUT, NEW_HAMPSHIRE, VERMONT, MAINE)
