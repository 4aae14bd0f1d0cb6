"""Granules over a lawn: how much of a product, how many bags, and what plant food that brings.

Product for a nutrient is the wanted weight over its share of the product: Univ. of Georgia (Waltz), Fertilizer
Calculations for Attractive, Healthy Lawns.
"""

from dataclasses import dataclass

from journal.reckon.feeding import Nutrients, nutrients
from journal.record.product import Product


@dataclass(frozen=True, slots=True)
class Spreading:
    """Weights in g, rates in g/m2, area in m2; None where the bag or the analysis is not known."""

    product_g: float
    per_pass_g: float
    rate_g_per_m2: float
    bags: float | None
    bag_covers_m2: float | None
    nutrients: Nutrients | None


def spreading(product: Product, rate_g_per_m2: float, area_m2: float, passes: int = 2) -> Spreading:
    """A product spread at a rate of itself over an area, in so many passes; all of them above zero."""
    total = rate_g_per_m2 * area_m2
    bag = product.bag_g
    return Spreading(
        product_g=total,
        per_pass_g=total / passes,
        rate_g_per_m2=rate_g_per_m2,
        bags=total / bag if bag else None,
        bag_covers_m2=bag / rate_g_per_m2 if bag else None,
        nutrients=nutrients(product, rate_g_per_m2),
    )


def nitrogen_cost_per_g(price: float, bag_g: float, product: Product) -> float | None:
    """Money for a gram of nitrogen, the other nutrients left out of account; None for a product without any."""
    return price / (bag_g * product.nitrogen) if product.nitrogen else None
