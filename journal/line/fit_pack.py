"""Bags, cups and ounces: what they come to depends on the product, which may be named after them."""

from journal.line.fitting import Fitting
from journal.record.product import Product
from journal.record.quantity import parse
from journal.record.refusal import Refusal


def fit_packs(fit: Fitting) -> None:
    """Bags and cups of the product named become its weight (cups of a liquid its volume).

    Raises Refusal for a size that nobody gave, and for plain ounces of a liquid, whose label means fluid ounces.
    """
    product = fit.lawn.product(fit.values.get("product") or "")
    name = product.name if product else "the product"
    if fit.ounces and product and product.liquid:
        text, token = fit.ounces
        asked = text.replace(" ", "").replace("oz", "floz")
        raise Refusal(text, f"{name} is a liquid, and ounces are a weight. Are fluid ounces meant?", asked)
    sizes = (product.bag_g, product.cup_g) if product else (None, None)
    for said, size, key in ((fit.bags, sizes[0], "bag"), (fit.cups, sizes[1], "cup")):
        if said is None:
            continue
        number, token = said
        if key == "cup" and product is not None and product.liquid:
            fit.values["amount_ml"] = parse(f"{number:.12f}cup").value
        elif size is None:
            raise Refusal(
                token.text,
                f"how much does a {key} of {name} weigh? set {name} {key} {'48lb' if key == 'bag' else '0.5lb'}",
            )
        else:
            fit.values["amount_g"] = number * size
    fit.bags = fit.cups = fit.ounces = None
    if product and fit.old is None:
        _of_its_form(fit, product)


def _weighed(product: Product) -> bool:
    """Whether it is sold by weight: so its label's form, its bag or its rate say."""
    if product.form or product.liquid:
        return product.form == "granule"
    return product.bag_g is not None or product.rate is not None


def _of_its_form(fit: Fitting, product: Product) -> None:
    """A granule is weighed, a liquid is measured: the other way no amount could be reckoned from it."""
    weighed = next((n for n in ("amount_g", "rate_g_per_m2") if fit.values.get(n) is not None), "")
    measured = next((n for n in ("amount_ml", "rate_ml_per_m2") if fit.values.get(n) is not None), "")
    if fit.values.get("size_ml") is not None and _weighed(product):
        raise Refusal("size_ml", f"{product.name} is a granule, and a granule is weighed: write it like 50lb.")
    if measured and product.form == "granule":
        raise Refusal(measured, f"{product.name} is a granule: give its weight, like 12lb, or bags or cups.")
    if weighed and product.form == "liquid":
        raise Refusal(weighed, f"{product.name} is a liquid: give its volume, like 5.5floz.")
