"""The ledger as the JSON that scripts read. The keys are a promise."""

from typing import Any

from journal.facts.local_rules import CHECK, LocalRules
from journal.reckon.answer import SIGNIFICANT
from journal.reckon.ledger import Ledger, Limit, Season, ZoneLedger
from journal.reckon.ledger_year import NitrogenRow, Sums, Uncounted
from journal.reckon.spread_check import SpreadCheck
from journal.reckon.stock import Shelf
from journal.record.quantity import in_unit
from journal.record.unit import UNITS, Dimension
from journal.reports.ledger_words import check_says, limit_says, local_says

JSON = dict[str, Any]


def ledger_json(found: Ledger, units: str) -> JSON:
    """Everything, by zone; amounts in both systems of units, words in the book's own."""
    return {
        "year": found.year,
        "as_of": found.as_of.isoformat(),
        "zones": {zone.zone: _zone(zone, units) for zone in found.zones},
        "lawn": {"cost": _plain(found.cost), "spent": _plain(found.spent)},
        "checks": [_check(check, units) for check in found.checks],
        "short": [_short(one) for one in found.short],
    }


def _zone(zone: ZoneLedger, units: str) -> JSON:
    return {
        "area_sqft": _in(zone.area_m2, "sqft"),
        "area_m2": _plain(zone.area_m2),
        **_sums(zone.sums),
        "feedings": [_feeding(row) for row in zone.nitrogen],
        "limit": _limit(zone.limit, units),
        "n_left_lb_per_1000sqft": _in(zone.left_g_per_m2, "lb/k"),
        "n_left_g_per_m2": _plain(zone.left_g_per_m2),
        "n_left_at_most": zone.at_most,
        "local": _local(zone.local, units) if zone.local else None,
        "unknown": [_unknown(one) for one in zone.uncounted],
        "seasons": [_season(season) for season in zone.seasons],
    }


def _sums(sums: Sums) -> JSON:
    rates = {"n": sums.n, "soluble_n": sums.soluble_n, "p2o5": sums.p2o5, "k2o": sums.k2o, "seed": sums.seed}
    return {
        **{f"{name}_lb_per_1000sqft": _in(value, "lb/k") for name, value in rates.items()},
        **{f"{name}_g_per_m2": _plain(value) for name, value in rates.items()},
        "water_in": _in(sums.water_mm, "in"),
        "water_mm": _plain(sums.water_mm),
        "rain_in": _in(sums.rain_mm if sums.rain_on_file else None, "in"),
        "rain_mm": _plain(sums.rain_mm if sums.rain_on_file else None),
        "cost": _plain(sums.cost),
    }


def _feeding(row: NitrogenRow) -> JSON:
    return {
        "date": row.entry.date.isoformat(),
        "product": row.product,
        "n_lb_per_1000sqft": _in(row.n_g_per_m2, "lb/k"),
        "n_g_per_m2": _plain(row.n_g_per_m2),
        "entry": row.entry.id,
    }


def _limit(limit: Limit, units: str) -> JSON:
    return {
        "n_lb_per_1000sqft": _in(limit.n_g_per_m2, "lb/k"),
        "n_g_per_m2": _plain(limit.n_g_per_m2),
        "from": limit.origin,
        "says": limit_says(limit, units),
        "basis": limit.basis.words(),
    }


def _local(rules: LocalRules, units: str) -> JSON:
    most = rules.heeds(rules.year_n_g_per_m2)
    return {
        "name": rules.id,
        "n_lb_per_1000sqft": _in(most, "lb/k"),
        "says": local_says(rules, units),
        "check": CHECK,
    }


def _unknown(one: Uncounted) -> JSON:
    return {"entry": one.entry.id, "date": one.entry.date.isoformat(), "what": one.what, "why": one.why}


def _season(season: Season) -> JSON:
    return {
        "from": season.since.isoformat(),
        "to": season.to.isoformat() if season.to else None,
        **_sums(season.sums),
    }


def _check(check: SpreadCheck, units: str) -> JSON:
    """Pounds and grams are null for what is measured by volume, and the label's where the shed has no rate of it."""
    weighed = check.range.dimension is Dimension.MASS_RATE
    low, high = (check.range.low, check.range.high) if weighed and check.by_label else (None, None)
    return {
        "entry": check.entries[0].id,
        "date": check.entries[0].date.isoformat(),
        "product": check.product,
        "zones": list(check.zones),
        "rate_lb_per_1000sqft": _in(check.rate if weighed else None, "lb/k"),
        "rate_g_per_m2": _plain(check.rate if weighed else None),
        "label_low_lb_per_1000sqft": _in(low, "lb/k"),
        "label_high_lb_per_1000sqft": _in(high, "lb/k"),
        "off_percent": _plain(check.off_percent),
        "says": check_says(check, units),
    }


def _short(shelf: Shelf) -> JSON:
    """Pounds and grams are null for what is measured by volume, fluid ounces and millilitres for what is weighed."""
    weight, volume = (None, shelf.short) if shelf.liquid else (shelf.short, None)
    return {
        "product": shelf.product,
        "lb": _in(weight, "lb"),
        "g": _plain(weight),
        "floz": _in(volume, "floz"),
        "ml": _plain(volume),
    }


def _in(value: float | None, unit: str) -> float | None:
    return None if value is None else _plain(in_unit(value, UNITS[unit]))


def _plain(value: float | None) -> float | None:
    return None if value is None else float(f"{value:.{SIGNIFICANT}g}")
