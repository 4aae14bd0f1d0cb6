"""The register of publications that the figures are taken from, by short key, and bases that cite them."""

from collections.abc import Mapping
from types import MappingProxyType

from journal.facts import (
    sources_feeding,
    sources_label,
    sources_local,
    sources_mowing,
    sources_people,
    sources_seed,
    sources_water,
    sources_weather,
    sources_weeds,
)
from journal.facts.citation import Basis, Citation, Known

_KENT = "Univ. of Delaware Cooperative Extension, Kent County"
_KENT_AT = "kentcoopextension.blogspot.com/2008"
_PURDUE = "Purdue Univ. Turfgrass Science"
_TIPS = "purdueturftips.blogspot.com"
_MARYLAND = "Univ. of Maryland Extension"
_CORNELL = "Cornell Univ. College of Agriculture and Life Sciences"
_PNW = "Pacific Northwest Weed Management Handbook"
_PNW_TURF = "pnwhandbooks.org/weed/horticultural/turfgrass"

_TABLE: tuple[tuple[str, str, str, int | None, str], ...] = (
    # seed, emergence, mowing
    ("osu-b546", "Ohio State Univ. Extension", "Bulletin 546, Lawn Establishment", None,
     "ohioline.osu.edu/b546/b546_6.html"),
    ("cornell-rates", _CORNELL, "Seeding rates for sports fields", None,
     "safesportsfields.cals.cornell.edu/seeding-rates"),
    ("uc-rates", "Univ. of California IPM", "Planting times and rates for grasses established from seed",
     2017, "ipm.ucanr.edu/TOOLS/TURF/SITEPREP/sdtimert.html"),
    ("uw-establish", "Univ. of Wisconsin-Extension", "Turfgrass Establishment and Renovation (slides)", None,
     "slideplayer.com/amp/13775262"),
    ("umd-september", _MARYLAND, "Get your lawn back in shape this September", 2017,
     "marylandgrows.umd.edu/2017/08/30/get-your-lawn-back-in-shape-this-september"),
    ("kstate-fall", "K-State Extension in The Kansan", "Fall care for lawn", 2019,
     "thekansan.com/news/20190925/fall-care-for-lawn"),
    ("kstate-overseed", "K-State Extension in the Garden City Telegram", "Overseeding tall fescue", None,
     "gctelegram.com/a5184f3b-fc58-5ead-b4ed-3d962785ecd4.html"),
    ("patton-2004", "Crop Science", "Establishment of Bermudagrass and Zoysiagrass by Seed", 2004,
     "doi 10.2135/cropsci2004.2160"),
    ("lsu-pls", "LSU AgCenter", "Pure Live Seed Calculation", None,
     "lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/"
     "pure-live-seed-calculation"),
    ("bermuda-seed", "Garden column, Georgia", "Bermuda - Planting Seed", None,
     "walterreeves.com/lawn-care/bermuda-planting-seed"),
    ("lsu-rapides", "LSU AgCenter, Rapides Parish", "Lawns Information", 2005,
     "lsuagcenter.com/portals/our_offices/parishes/rapides/features/lawn_garden/lawns/lawns"),
    ("nebraska-lifeline", "Univ. of Nebraska-Lincoln Extension in the Omaha World-Herald",
     "Throw a lifeline to your lawn", None,
     "omaha.com/living/throw-a-lifeline-to-your-lawn/article_b9c16110-5e2f-5a2f-80f6-f6a002500cd5.html"),
    ("nebraska-acreage", "Univ. of Nebraska-Lincoln", "Sustainable Acreage Ground Covers", None,
     "acreagenebraska.com/sustainable-acreage-ground-covers"),
    ("osu-ec1550", "Oregon State Univ. Extension", "EC 1550, Practical Lawn Establishment and Renovation",
     2022, "docslib.org/doc/7590669"),
    ("ncsu-seeding", "NC State Univ.", "Quick reference: seeding a new lawn", None,
     "ces.ncsu.edu/depts/hort/consumer/quickref/lawns/seeding_newlawn.html"),
    ("isu-watering", "Iowa State Univ. Extension", "How should I water a newly seeded lawn?", None,
     "hortnews.extension.iastate.edu/faq/how-should-i-water-newly-seeded-lawn"),
    ("cornell-spot", "Cornell Gardening", "Job Well Done (spot seeding)", None,
     "gardening.cornell.edu/homegardening/tidbit_templateb466.html"),
    ("kansas-tips", "Rural Messenger", "Fall lawn tips", None,
     "ruralmessenger.com/kansas-news/horticulture/fall-lawn-tips"),
    ("purdue-ay8", "Purdue Univ.", "AY-8, Mowing, Thatching, Aerifying, and Rolling Turf", 1998,
     "agry.purdue.edu/turfnew/pubs/ay8.htm"),
    ("isu-mowing", "Iowa State Univ. Extension", "Yard and Garden: Lawn Care", 2013,
     "extension.iastate.edu/2013-yardgarden-lawn-care"),
    ("isu-1994", "Iowa State Univ. Extension", "Raise Mower Height", 1994,
     "hortnews.extension.iastate.edu/1994/6-8-1994/upmow.html"),
    ("isu-stop-mowing", "Iowa State Univ. Extension", "When can I stop mowing the lawn in the fall?", 2021,
     "yardandgarden.extension.iastate.edu/faq/when-can-i-stop-mowing-lawn-fall"),
    ("ask-158965", "Ask Extension, Arapahoe County, Colorado", "Mowing height, question 158965", 2013,
     "ask.extension.org/questions/158965"),
    ("kstate-mf736", "K-State Extension", "MF736, Tall Fescue Lawns", None,
     "online.documentine.com/31-inches-is-how-tall/1/mf736-tall-fescue-lawns.html"),
    ("guelph-mowing", "Univ. of Guelph Turfgrass", "Mowing", None,
     "uoguelph.ca/turfgrassoutreach/mowing.html"),
    ("umn-fine-fescue", "Univ. of Minnesota Extension", "Planting and maintaining a fine fescue lawn", None,
     "extension.umn.edu/lawns-and-landscapes/planting-and-maintaining-fine-fescue-lawn"),
    ("uga-grass", "Univ. of Georgia Extension in the Dalton Daily Citizen", "What kind of grass?", 2023,
     "dailycitizen.news (article 73c53e7c-e514-11ed-b316-2be90772e6b1)"),
    ("ufl-pinellas", "Univ. of Florida Extension in the Tampa Bay Times", "Timely tendings: mowing tips",
     None, "tampabay.com/features/homeandgarden/timely-tendings-mowing-tips-for-healthy-lawns/2119915"),
    ("ufl-clay", "Univ. of Florida Extension, Clay County", "Mowing tips", 2018,
     "blogs.ifas.ufl.edu/clayco/2018/06/04/mowing-tips-for-clay-county"),
    ("ncsu-lee", "NC State Extension, Lee County", "Lawn Care Essentials", 2015,
     "lee.ces.ncsu.edu/2015/05/lawn-care-essentials-3"),
    ("umd-calendar", _MARYLAND, "Lawn Maintenance Calendar for Maryland Home Lawns", None,
     "extension.umd.edu/hgic/topics/lawn-maintenance-calendar-maryland-home-lawns"),
    # feeding
    ("umd-schedule", _MARYLAND, "Lawn Fertilizer Schedule Table", 2023,
     "extension.umd.edu/resource/lawn-fertilizer-schedule-table"),
    ("ncsu-caring", "NC State Extension", "Caring for Your Lawn and the Environment", None,
     "content.ces.ncsu.edu/caring-for-your-lawn-and-the-environment"),
    ("isu-summer", "Iowa State Univ. Extension", "Should I fertilize the lawn in summer?", None,
     "hortnews.extension.iastate.edu/faq/should-i-fertilize-lawn-summer"),
    ("virginia-2003", "Virginia Dept. of Conservation and Recreation",
     "Name is a clue: Fertilize cool-season grasses Sept.-Oct.", 2003, "dcr.virginia.gov"),
    ("purdue-fall-n", _PURDUE, "Fall Nitrogen Fertilization Benefits All Cool-Season Turfs", 2008,
     "turf.purdue.edu/fall-nitrogen-fertilization-benefits-all-cool-season-turfs"),
    ("purdue-ay22", "Purdue Univ.", "AY-22, Fertilizing Established Lawns", 1998,
     "agry.purdue.edu/turfnew/pubs/ay22.htm"),
    ("pennsylvania-6813", "Commonwealth of Pennsylvania", "3 Pa.C.S. s.6813", 2023,
     "casetext.com (text of the statute)"),
    ("vermont-1266b", "Vermont Agency of Agriculture",
     "Phosphorous Fertilizer Information - Turf (10 V.S.A. s.1266b)", None,
     "agriculture.vermont.gov/node/122"),
    ("umn-feed", "Univ. of Minnesota Extension, Stearns and Benton Counties",
     "Fall is the Time to Feed your Lawn!", 2017, "www3.extension.umn.edu/county/morrison"),
    # weed, insect and disease products
    ("delaware-spring", _KENT, "Turfgrass - Spring Seedings", 2008,
     f"{_KENT_AT}/02/turfgrass-spring-seedings.html"),
    ("delaware-renovation", _KENT, "Start Planning Now for Late Summer Renovations", 2008,
     f"{_KENT_AT}/06/turf-start-planning-now-for-late-summer.html"),
    ("weed-technology-2005", "Weed Technology 19(1)",
     "Preemergence Herbicide and Seeding Method Effects on Seedling Growth of Kentucky Bluegrass", 2005,
     "bioone.org/journals/weed-technology/volume-19/issue-1/WT-03-199R"),
    ("hortscience-2018", "HortScience 53(11)", "Article on p. 1689 (mesotrione, 560 g/ha a year)",
     2018, "journals.ashs.org/hortsci/view/journals/hortsci/53/11/article-p1689.xml"),
    ("hortscience-2008", "HortScience 43(2)",
     "Selective creeping bentgrass control in Kentucky bluegrass and tall fescue", 2008,
     "pure.psu.edu/en/publications/selective-creeping-bentgrass-control-in-kentucky-bluegrass-and-ta."),
    ("purdue-seed-or-weeds", _PURDUE, "Plant Turf Seed or Control Weeds First?", None, _TIPS),
    ("purdue-part-2", _PURDUE, "Rejuvenating Turf in 2011: Part II", 2011,
     f"{_TIPS}/2011/03/rejuvenating-turf-in-2011-part-ii.html"),
    ("purdue-part-3", _PURDUE, "Part III: Controlling broadleaf weeds in newly seeded areas", 2011,
     f"{_TIPS}/2011/03/part-iii-controlling-broadleaf-weeds-in.html"),
    ("label-80081", "Label text of a turf mixture holding 2,4-D", "Directions for use", None,
     "greenbook.net/node/80081"),
    ("label-40896", "Label text of a pre-emergent granule (active taken as prodiamine from its wording)",
     "Directions for use", None, "greenbook.net/node/40896"),
    ("label-82181", "Label text of a pre-emergent granule (active taken as dithiopyr from its wording)",
     "Directions for use", None, "greenbook.net/node/82181"),
    ("kstate-thesis", "Kansas State Univ.",
     "Kentucky bluegrass and tall fescue growth when seeded after herbicide application", None,
     "krex.k-state.edu/items/43da30ee-de9b-453e-bca1-22f2afee01e6"),
    ("isu-broadleaf", "Iowa State Univ. Extension",
     "What is the proper way to apply broadleaf herbicides to the lawn?", None,
     "hortnews.extension.iastate.edu/faq/what-proper-way-apply-broadleaf-herbicides-lawn"),
    ("stewardship-weather", "Pesticide Environmental Stewardship", "Evaluate the Weather Conditions", None,
     "pesticidestewardship.org/drift/Pages/EvaluatetheWeatherConditions.aspx"),
    ("ncsu-crabgrass", "NC State Extension", "Crabgrass is germinating", None, ""),
    ("kstate-2016", "K-State Horticulture Newsletter", "March 2016", 2016,
     "ksuhortnewsletter.org/newsletters/archives/03-2016"),
    ("mercury-2020", "Extension column in The Mercury, Manhattan, Kansas", "Column of 16 August 2020", 2020,
     "themercury.com"),
    ("nebraska-2021", "Univ. of Nebraska-Lincoln Extension in the Lincoln Journal Star",
     "Lawn renovation column", 2021, "journalstar.com"),
    ("umd-iron", _MARYLAND, "Iron-Based Herbicides", 2022,
     "extension.umd.edu/resource/iron-based-herbicides"),
    ("pnw-grass-weeds", _PNW, "Annual Grass Weeds", None, f"{_PNW_TURF}/annual-grass-weeds-0"),
    ("pnw-broadleaf", _PNW, "Broadleaf Weeds, Turf", None,
     f"{_PNW_TURF}/chemical-control-broadleaf-weeds-turf"),
    ("pnw-8597", _PNW, "Page 8597 (2,4-D)", None, "pnwhandbooks.org/node/8597"),
    ("delaware-escapes", _KENT, "Controlling Crabgrass Escapes", 2008,
     f"{_KENT_AT}/06/turf-controlling-crabgrass-escapes.html"),
    ("pnw-seedbed", _PNW, "Seedbed Preparation", None,
     "pnwhandbooks.org/weed/agronomic/grass-seed/seedbed-preparation"),
    ("illinois-220", "Univ. of Illinois, Home, Yard and Garden Pest", "Article 220", 2010,
     "hyg.ipm.illinois.edu/article.php?id=220"),
    ("illinois-243", "Univ. of Illinois, Home, Yard and Garden Pest", "Article 243", 2010,
     "hyg.ipm.illinois.edu/article.php?id=243"),
    ("umn-insecticides", "Univ. of Minnesota Entomology", "Turf grub insecticide table", None, ""),
    ("uc-fungicides", "Univ. of California IPM", "Turfgrass: General Properties and Use of Fungicides", None,
     "ipm.ucanr.edu/agriculture/turfgrass/General-Properties-And-Use-Of-Fungicides"),
    ("gcm-2018", "Golf Course Management", "Fungicide table, February 2018", 2018, ""),
    ("ncsu-brown-patch", "NC State Univ.",
     "Comparison of Granular Fungicides for Brown Patch Control in Tall Fescue", 2010, "turffiles.ncsu.edu"),
    ("psu-home-lawn", "Penn State Agricultural Analytical Services Lab", "Home Lawn - Maintain", None,
     "agsci.psu.edu/aasl/online-report/home-lawn-maintain"),
    ("umc-turf-test", "Univ. of Missouri Extension, Soil and Plant Testing Laboratory", "Turf soil test", None,
     "extension.missouri.edu/programs/soil-and-plant-testing-laboratory/spl-soil-analysis/spl-turf-soil-test"),
)  # fmt: skip

CITATIONS: Mapping[str, Citation] = MappingProxyType(
    {
        row[0]: Citation(*row)
        for row in (
            *_TABLE,
            *sources_water.ROWS,
            *sources_local.ROWS,
            *sources_feeding.ROWS,
            *sources_label.ROWS,
            *sources_mowing.ROWS,
            *sources_people.ROWS,
            *sources_seed.ROWS,
            *sources_weather.ROWS,
            *sources_weeds.ROWS,
        )
    }
)


def cite(key: str) -> Citation:
    """The publication of that key. Raises KeyError: a missing key is a fault of the code, never of the owner."""
    return CITATIONS[key]


def published(*keys: str, note: str = "") -> Basis:
    """Seen in these publications."""
    return Basis(Known.PUBLISHED, tuple(cite(key) for key in keys), note)


def judgment(note: str = "", *keys: str) -> Basis:
    """Our own judgment, leaning on these publications where any are named."""
    return Basis(Known.JUDGMENT, tuple(cite(key) for key in keys), note)
