"""Rules on lawn fertilizer in Florida: what the state asks of labels, and one county's ordinance."""

from journal.facts.local_figures import distance, rate, shut, sowing
from journal.facts.local_rules import Binds, LocalRules, Sowing, Stated
from journal.facts.sources import cite, judgment, published

_ADOPTED = "as a county adopted it; the state's own text was not seen"

FLORIDA = LocalRules(
    id="us-fl",
    place="Florida (labels)",
    reference="Fla. Admin. Code 5E-1.003",
    binds=Binds.LABELS,
    certainty="medium: the rule's text was not seen",
    citations=(cite("marion-19-247"), cite("polk-12-236")),
    most_n_g_per_m2=rate(1.0, published("marion-19-247", "polk-12-236", note=_ADOPTED)),
    most_soluble_n_g_per_m2=rate(0.7, published("marion-19-247", "polk-12-236", note=_ADOPTED)),
    phosphorus=Stated(
        "only as the label says: 0.25 lb/k of P2O5 a feeding and 0.5 lb/k a year unless a soil test shows the need; a "
        "starter at most 1.0 lb/k of P2O5, once",
        published("marion-19-247", "polk-12-236", note=_ADOPTED),
    ),
    sowing=sowing(Sowing.UNKNOWN, judgment("a starter may be used once; at which sowing was not seen")),
    water=Stated("by ordinance of the county or town", published("polk-12-236")),
    paving=Stated("by ordinance of the county or town", published("polk-12-236")),
    further=(
        Stated("a year's nitrogen goes by the grass", published("marion-19-247", note=_ADOPTED)),
        Stated(
            "counties and towns have ordinances of their own; some bar nitrogen and phosphorus for 30 days after "
            "seeding, which no set built in watches",
            published("neptune-24-33", "polk-12-236"),
        ),
    ),
)

PINELLAS = LocalRules(
    id="us-fl-pinellas",
    place="Pinellas County, Florida",
    reference="Code ch. 58 art. XIII",
    certainty="high; Florida's counties change theirs often",
    citations=(cite("pinellas"), cite("pinellas-atlas")),
    closed=(shut((6, 1), (9, 30), published("pinellas")),),
    ground=Stated(
        "not under a storm, flood or tropical watch, nor with 2 in (51 mm) of rain or more in 24 h",
        published("pinellas"),
    ),
    most_n_g_per_m2=rate(1.0, published("pinellas", note="granules")),
    most_soluble_n_g_per_m2=rate(
        0.5, published("pinellas", note="liquids; granules that are half slow bring no more either")
    ),
    year_n_g_per_m2=rate(4.0, published("pinellas")),
    least_slow_share=Stated(0.50, published("pinellas", note="of granules")),
    slow_in_granules_only=True,
    phosphorus=Stated("none, unless a soil test shows the need", published("pinellas")),
    sowing=sowing(Sowing.NONE, published("pinellas", note="a soil test is the one reason named")),
    buffer_mm=distance(10, published("pinellas", note="from the top of a bank, a seawall or a wetland")),
    paving=Stated("clean it all up; a deflector is required", published("pinellas")),
)

SETS = (FLORIDA, PINELLAS)
