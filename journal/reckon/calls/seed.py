"""Seed for an area, by weight from the bag and by weight of what is alive in it."""

from dataclasses import dataclass

from journal.facts.sources import published
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import LAWN, up_to
from journal.reckon.declare import mark, reckoning
from journal.reckon.seed_amount import at_bulk_rate, at_live_rate
from journal.reckon.seeding import pure_live_share
from journal.record.term import asked, number
from journal.record.unit import Dimension

_BASIS = published("lsu-pls")


@reckoning(
    "seed",
    "seed to weigh out for an area, and how much of it is alive",
    "seed --rate 4lb/k --area 2400sqft --purity 95 --germination 85",
    explains={
        "purity": "percent of the bag that is the seed wanted, from its tag",
        "germination": "percent of that seed which comes up, from its tag",
        "pls": "the rate means pure live seed, not seed from the bag",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Seed:
    """Rate in g/m2, area in m2, purity and germination in percent."""

    rate: float = asked("rate", up_to("200lb/k", Dimension.MASS_RATE), "4lb/k")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "2400sqft")
    purity: float = asked("purity", number(1, 100), "95")
    germination: float = asked("germination", number(1, 100), "85")
    pls: bool = mark("pls")

    def answer(self) -> Answer:
        """Pure live seed and seed from the bag."""
        share = pure_live_share(self.purity, self.germination)
        seed = (at_live_rate if self.pls else at_bulk_rate)(self.rate, self.area, share)
        taken = (
            "The rate was taken as pure live seed, so more than that is weighed out."
            if self.pls
            else "The rate was taken as seed from the bag; many rates in print do not say which they mean. "
            "With --pls it means pure live seed."
        )
        return Answer(
            (
                figure("pls_percent", "pure live seed", 100 * share, "%"),
                figure("pls_lb", "pure live seed in all", seed.live_g, "lb"),
                figure("bulk_lb", "from the bag in all", seed.bulk_g, "lb"),
                figure("bulk_lb_per_1000sqft", "from the bag", seed.bulk_g_per_m2, "lb/k"),
            ),
            (
                taken,
                f"Pure live seed is purity times germination: {_BASIS.words()}. In a mixture each kind has its own.",
                "Coated seed: the coating is in the bag's weight, as inert matter, and the purity already says so.",
            ),
        )
