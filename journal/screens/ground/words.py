"""What each fact of the lawn and of a zone is for, what is lost without it, and an example to type."""

from collections.abc import Mapping
from types import MappingProxyType

from journal.record.lawn import Lawn
from journal.season.growth import southern

USES: Mapping[str, str] = MappingProxyType(
    {
        # the lawn
        "name": "what the lawn is called at the head of the pages",
        "units": "how amounts are shown, and how a bare number on the line is read",
        "latitude": "the length of the day, for what the grass drinks; below 0 the seasons are half a year apart",
        "last_frost": "average last frost of spring: from it the growing season is worked out",
        "first_frost": "average first frost of autumn: from it the end of the growing season is worked out",
        "growth": "when the grass grows: mowing, feeding and seeding are asked for in it alone",
        "grass": "height of cut, nitrogen in a year, days to emergence, where a zone names no grass of its own",
        "renovated": "when the renovation's seed went down: the plan goes on from there",
        "kept_since": "what is not logged counts as not done from that day on, and not before",
        "treatments_since": "what went down for weeds or insects is known from that day on: seed waits for what is not",
        "feeding": "interval: by weeks since the last feeding; months: in the months that suit the grass",
        "late_fall": "whether a feeding at the end of autumn belongs to the plan",
        "height": "the height of cut while no mowing has named one",
        "normals": "what each month is like in most years: Season shows the highs ahead",
        "local_rules": "the law or ordinance that binds the lawn",
        # a zone
        "area": "every amount and rate",
        "sun": "in shade the grass is cut higher",
        "irrigated": "whether dryness is asked about, and waterings are expected",
        "soil": "how much water the roots can reach",
        "rate": "turns minutes of watering into depth",
        "circuits": "several sprinkler circuits: their shares of the zone and their rates",
        "near_water": "the distance to a pond, a stream or a drain, to hold against a label's or a local rule's",
        "trees": "roots and shade of trees in it",
        "slope": "water that runs off",
        "out_of_view": "a zone that is not seen from the house",
        "mowing": "who cuts it: a service's cuts are not asked for",
    }
)
COSTS: Mapping[str, str] = MappingProxyType(
    {
        "latitude": "no water balance",
        "last_frost": "no growing season",
        "first_frost": "no growing season",
        "growth": "no plan, few flags",
        "grass": "taken as unknown",
        "area": "no amounts",
        "soil": "no water balance",
        "rate": "minutes give no depth",
    }
)
"""What a fact not said takes away; those that can be done without are not here."""

_BOTH: Mapping[str, str] = MappingProxyType(
    {
        "name": "North Lane", "latitude": "42.3", "last_frost": "05-06", "first_frost": "10-05",
        "growth": "04-10 11-10", "grass": "kentucky bluegrass; perennial ryegrass", "feeding": "months",
        "late_fall": "yes", "local_rules": "none", "sun": "part", "irrigated": "yes", "soil": "loam", "trees": "yes",
        "slope": "gentle", "out_of_view": "yes", "mowing": "service", "local_closed": "12-01 03-01",
        "local_slow": "20%", "local_test_months": "36", "local_seeding": "no", "local_sign": "48h",
    }
)  # fmt: skip
_US: Mapping[str, str] = MappingProxyType(
    {
        "units": "metric", "height": "3in", "area": "2400sqft", "rate": "0.6in/h", "near_water": "30ft",
        "circuits": "A 60% 0.5in/h; B 40% 0.9in/h", "normals": "jan 30F 15F 3.1in, feb 33F 17F 2.8in",
        "local_most_n": "0.9lb/k", "local_most_soluble": "0.7lb/k", "local_year_n": "3.2lb/k", "local_buffer": "25ft",
        "soil-test": "ph 6.1 p low k 95ppm om 4.2%",
    }
)  # fmt: skip
_METRIC: Mapping[str, str] = MappingProxyType(
    {
        **_US, "units": "us", "height": "75mm", "area": "220m2", "rate": "15mm/h", "near_water": "10m",
        "circuits": "A 60% 12mm/h; B 40% 22mm/h", "normals": "jan 2C -6C 60mm, feb 4C -5C 55mm",
        "local_most_n": "4.4g/m2", "local_most_soluble": "3.4g/m2", "local_year_n": "15g/m2", "local_buffer": "8m",
    }
)  # fmt: skip
_SOUTH: Mapping[str, str] = MappingProxyType(
    {"latitude": "-37.8", "last_frost": "10-05", "first_frost": "05-20", "growth": "09-10 06-10"}
)


def example(key: str, lawn: Lawn) -> str:
    """Words to type for a fact, in the units and the half of the world of the lawn; '' for one not known here.

    Where a fact is one of two words, it is the other one than is taken for granted.
    """
    if southern(lawn) and key in _SOUTH:
        return _SOUTH[key]
    return {**_BOTH, **(_METRIC if lawn.units == "metric" else _US)}.get(key, "")
