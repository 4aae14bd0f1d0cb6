"""Granules for an amount of nitrogen, or what an amount of granules brought."""

import math
from dataclasses import dataclass

from journal.facts.calibration import CROSSWISE_BASIS
from journal.facts.factors import g_per_m2
from journal.facts.feeding import MOST, MOST_BASIS, MOST_SOLUBLE, MOST_SOLUBLE_BASIS
from journal.facts.rounding import exceeds
from journal.facts.safety import LABEL
from journal.facts.sources import published
from journal.reckon.answer import Answer, figure
from journal.reckon.asking import BIN, LAWN, money, share_of_nitrogen, up_to, whole
from journal.reckon.declare import reckoning
from journal.reckon.feeding import Nutrients, product_for_nitrogen
from journal.reckon.spreading import Spreading, nitrogen_cost_per_g, spreading
from journal.record.product import Product
from journal.record.quantity import show
from journal.record.refusal import Refusal
from journal.record.term import asked, number, term, terms
from journal.record.unit import Dimension

_MOST_PRODUCT = g_per_m2(1000)
"""More granules than that lie in nobody's grass."""

_PHOSPHATE = 0.67
"""Percent of P2O5 above which a product is a phosphorus fertilizer."""
_PHOSPHATE_BASIS = published("vermont-1266b")


@reckoning(
    "spread",
    "granules for an amount of nitrogen, or what an amount of granules brings",
    "spread --analysis 24-0-11 --n 0.9lb/k --area 8200sqft --bag 50lb --price 42",
    explains={
        "n": "the nitrogen wanted; or else say --amount",
        "amount": "what was used; the rest is worked out backward from it",
        "slow-share": "slow-release share of the nitrogen; or else --slow-n",
        "slow-n": "slow-release nitrogen in the whole product, as labels print it",
        "price": "of one bag",
        "passes": "how often the lawn is gone over (2)",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """Analysis in percent, nitrogen in g/m2, area in m2, weights in g, slow share 0 to 1."""

    analysis: tuple[float, float, float] = asked("analysis", terms(Product)["analysis"][1].read, "24-0-11")
    area: float = asked("area", up_to(LAWN, Dimension.AREA), "8200sqft")
    n: float | None = term("n", up_to("20lb/k", Dimension.MASS_RATE), "0.9lb/k")
    amount: float | None = term("amount", up_to(BIN, Dimension.MASS), "15lb")
    slow_share: float | None = term("slow_share", share_of_nitrogen, "40%")
    slow_n: float | None = term("slow_n", number(0, 60), "9.6%")
    bag: float | None = term("bag", up_to(BIN, Dimension.MASS), "50lb")
    price: float | None = term("price", money, "42")
    passes: int = term("passes", whole(1, 8), "2", 2)

    def answer(self) -> Answer:
        """What to weigh out, how many bags, what plant food, at what cost."""
        product = self._product()
        spread = spreading(product, self._rate(product), self.area, self.passes)
        food = spread.nutrients
        if food is None or spread.rate_g_per_m2 > _MOST_PRODUCT:
            raise (
                Refusal("--analysis", "far too little nitrogen in it for that.")
                if self.amount is None
                else Refusal("--amount", "far too much for so small an area.")
            )
        cost = None if self.price is None or spread.bags is None else self.price * spread.bags
        per_n = None
        if self.price is not None and self.bag is not None:
            per_n = nitrogen_cost_per_g(self.price, self.bag, product)
        return Answer(
            (
                figure("product_lb_per_1000sqft", "product", spread.rate_g_per_m2, "lb/k"),
                figure("product_lb", "product in all", spread.product_g, "lb"),
                figure(
                    "per_pass_lb",
                    "in the one pass" if self.passes == 1 else f"in each of {self.passes} passes",
                    spread.per_pass_g,
                    "lb",
                ),
                figure("bags", "bags used", None if _hardly_any(spread.bags) else spread.bags),
                figure("bag_covers_sqft", "one bag covers", spread.bag_covers_m2, "sqft"),
                figure("n_lb_per_1000sqft", "nitrogen (N)", food.n, "lb/k"),
                figure("soluble_n_lb_per_1000sqft", "of it soluble", food.soluble_n, "lb/k"),
                figure("p2o5_lb_per_1000sqft", "phosphate (P2O5)", food.p2o5, "lb/k"),
                figure("k2o_lb_per_1000sqft", "potash (K2O)", food.k2o, "lb/k"),
                figure("cost", "cost of what is used", cost, "$"),
                figure("cost_per_lb_n", "cost of the nitrogen", per_n, "$/lb"),
            ),
            self._notes(spread, food),
        )

    def _product(self) -> Product:
        if self.slow_share is not None and self.slow_n is not None:
            raise Refusal("--slow-n", "the slow share has been said by --slow-share already.")
        if self.slow_n is not None and self.slow_n > self.analysis[0]:
            raise Refusal("--slow-n", f"more than the {self.analysis[0]:g} % of nitrogen in the analysis.")
        if self.price is not None and self.bag is None:
            raise Refusal("--price", "of how large a bag? Say its weight too, like --bag 50lb.")
        return Product(
            name="", analysis=self.analysis, slow_share=self.slow_share, slow_n_percent=self.slow_n, bag_g=self.bag
        )

    def _rate(self, product: Product) -> float:
        """Grams of product per m2."""
        if self.n is not None and self.amount is not None:
            raise Refusal("--amount", "--n has been said already: one follows from the other.")
        if self.amount is not None:
            return self.amount / self.area
        if self.n is None:
            raise Refusal("--n", "is missing: write it like --n 0.9lb/k, or --amount 15lb for what was used.")
        rate = product_for_nitrogen(product, self.n)
        if rate is None:
            raise Refusal("--n", "there is no nitrogen in this product; say --amount instead.")
        return rate

    def _notes(self, spread: Spreading, food: Nutrients) -> tuple[str, ...]:
        found = []
        if exceeds(food.n, MOST):
            found.append(f"More nitrogen at once than {_rate_words(MOST)}: {MOST_BASIS.words()}.")
        if exceeds(food.soluble_n, MOST_SOLUBLE):
            limit = f"More soluble nitrogen at once than {_rate_words(MOST_SOLUBLE)}: {MOST_SOLUBLE_BASIS.words()}."
            said = self.slow_share is not None or self.slow_n is not None
            found.append(limit if said else f"{limit} No slow-release share was said: all of it is taken as soluble.")
        found.append(_passes(self.passes))
        if _hardly_any(spread.bags):
            found.append("Less than a hundredth of one bag is used: it is not counted in bags.")
        if spread.bags is not None and self.price is not None:
            found.append(
                f"{_whole_bags(spread.bags, self.price)} The cost of the nitrogen leaves phosphate and potash out."
            )
        elif spread.bags is not None:
            found.append(_whole_bags(spread.bags, None))
        else:
            found.append("Bags and cost can't be given without --bag and --price.")
        if self.analysis[1] > _PHOSPHATE:
            found.append(
                f"A phosphorus fertilizer ({_PHOSPHATE_BASIS.words()}): many places bar it on standing lawns. "
                "The local rule goes first."
            )
        found.append(f"The label's own rate goes first. {LABEL}")
        return tuple(found)


def _hardly_any(bags: float | None) -> bool:
    return bags is not None and bags < 0.005


def _rate_words(g_per_m2: float) -> str:
    us, metric = (show(g_per_m2, Dimension.MASS_RATE, system) for system in ("us", "metric"))
    return f"{us} ({metric})"


def _passes(passes: int) -> str:
    words = CROSSWISE_BASIS.words()
    if passes == 1:
        return f"Two passes at half the rate, the second at right angles to the first, leave fewer stripes: {words}."
    if passes == 2:
        return f"Set the spreader to half the rate and go over it twice, the second time at right angles: {words}."
    return f"Set the spreader to a part in {passes} of the rate; each pass runs at right angles to the last: {words}."


def _whole_bags(bags: float, price: float | None) -> str:
    count = math.ceil(bags - 1e-9)
    what = "Buy 1 bag" if count == 1 else f"Buy {count} bags"
    return f"{what}." if price is None else f"{what}: ${count * price:,.2f}."
