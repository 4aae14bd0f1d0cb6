"""What stands in for a label's number that was not entered, key by key, and how often a product was used."""

from collections.abc import Callable
from functools import partial

from journal.facts.actives import active, is_active, seed_wait
from journal.facts.house import number
from journal.line.words import neat
from journal.reckon.label_uses import default_count, default_repeat
from journal.reckon.label_year import uses_of_year
from journal.reckon.near_a_cut import wait_days, wants_distance
from journal.reckon.new_grass import wait_for
from journal.reckon.protection import is_protective
from journal.reckon.threshold import in_force
from journal.reckon.uses import Use, kind_of
from journal.reckon.watering_in import rain_free_hours, water_in
from journal.record.dose import Dose
from journal.record.kinds.treatment import Treatment
from journal.record.product import Product
from journal.record.unit import Dimension
from journal.season.stand import grass_mix
from journal.standing import Standing


def _to_seed(product: Product, standing: Standing) -> str:
    """The longest wait over the grasses of the zones, by the actives or by the kind."""
    actives = [content.name for content in product.actives]
    lawn = standing.lawn
    days = max(seed_wait(actives, kind_of(product), grass_mix(lawn, zone)).days for zone in lawn.zone_names)
    return f"{days} d" if days else ""


def _after_seed(product: Product, _: Standing) -> str:
    wait = wait_for(product)
    if wait.never:
        return "never over turf"
    parts = [f"{wait.days} d" if wait.days else "", f"{wait.mowings} mowings" if wait.mowings else ""]
    return " and ".join(part for part in parts if part)


def _repeat(product: Product, standing: Standing) -> str:
    return f"{default_repeat(standing.lawn, kind_of(product))} d"


def _max_per_year(product: Product, standing: Standing) -> str:
    return str(default_count(standing.lawn, kind_of(product)))


def _max_amount(product: Product, _: Standing) -> str:
    """As published, in pounds of the active on an acre, of the first that has a limit."""
    for content in product.actives:
        most = active(content.name).yearly_lb_per_acre if is_active(content.name) else None
        if most is not None:
            return f"{most:g} lb/acre of {active(content.name).name}"
    return ""


def _temp(product: Product, standing: Standing) -> str:
    if not _used(product, standing).on_leaves:
        return ""
    lawn = standing.lawn
    low, high = in_force(lawn, "treat-cold", "least"), in_force(lawn, "treat-hot", "most")
    return " to ".join(neat(value, Dimension.TEMPERATURE, lawn.units) for value in (low, high))


def _wind_max(_: Product, standing: Standing) -> str:
    house, lawn = number("treat-windy", "most").default, standing.lawn
    return neat(min(house, lawn.numbers.get(("treat-windy", "most"), house)), Dimension.SPEED, lawn.units)


def _rain_free(product: Product, standing: Standing) -> str:
    hours = rain_free_hours(_used(product, standing), standing.lawn)
    return f"{hours:g} h" if hours else ""


def _water_in(product: Product, standing: Standing) -> str:
    wanted = water_in(_used(product, standing), standing.lawn)
    return neat(wanted.depth_mm, Dimension.LENGTH, standing.lawn.units) if wanted else ""


def _water_in_within(product: Product, standing: Standing) -> str:
    if not _water_in(product, standing):
        return ""
    kind = "insect" if product.kind == "insect" else "barrier"
    return f"{in_force(standing.lawn, 'water-in-missing', f'late-days-{kind}'):g} d"


def _uncut(number: str, product: Product, standing: Standing) -> str:
    use = _used(product, standing)
    return f"{wait_days(use, standing.lawn, number)[0]} d" if wants_distance(use) else ""


def _used(product: Product, standing: Standing) -> Use:
    """A use of it today, as it would be logged."""
    entry = Treatment(date=standing.as_of, product=product.name)
    return Use(product.name, product, kind_of(product), Dose(product.name), entry)


_STANDS_IN: dict[str, Callable[[Product, Standing], str]] = {
    "to_seed": _to_seed,
    "after_seed": _after_seed,
    "repeat": _repeat,
    "max_per_year": _max_per_year,
    "max_amount_per_year": _max_amount,
    "temp": _temp,
    "wind_max": _wind_max,
    "rain_free": _rain_free,
    "water_in": _water_in,
    "water_in_within": _water_in_within,
    "mow_before": partial(_uncut, "before"),
    "mow_after": partial(_uncut, "after"),
}


def stands_in(product: Product, key: str, standing: Standing) -> str:
    """The number that is used as long as the label's is blank; '' where no rule needs one."""
    found = _STANDS_IN.get(key) if is_protective(product) else None
    return found(product, standing) if found else ""


def used_this_year(product: Product, standing: Standing) -> str:
    """Zone by zone how often in the calendar year, as the label counts; '' where it was not used, or needs no count."""
    if not is_protective(product):
        return ""
    times = {
        zone: uses_of_year(standing.history.on(zone, standing.as_of), product) for zone in standing.lawn.zone_names
    }
    used = ", ".join(f"{zone} {count}" for zone, count in times.items() if count)
    return f"this year: {used}" if used else ""
