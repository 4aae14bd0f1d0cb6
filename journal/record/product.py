"""A product of the shed, with the numbers from its own label."""

import re
from dataclasses import dataclass
from datetime import date

from journal.record.quantity import looks_like_quantity, parse_as
from journal.record.refusal import Refusal
from journal.record.term import (
    LONGEST_WAIT,
    grass_names,
    listed,
    measured,
    month,
    number,
    one_of,
    positive,
    term,
    wait,
    words,
    yes_no,
)
from journal.record.unit import Dimension

KINDS = (
    "starter", "fertilizer", "seed", "pre-emergent", "weed", "weed-and-feed", "nonselective", "insect", "disease",
    "lime", "iron", "supplement", "wetting",
)  # fmt: skip
PROTECTS = ("pre-emergent", "weed", "weed-and-feed", "nonselective", "insect", "disease")
"""Kinds that are put down against weeds, insects or disease: the label's own law and the safety words apply."""


@dataclass(frozen=True, slots=True)
class Range:
    """A label's low and high rate, in the base unit of `dimension` (g/m2 or mL/m2)."""

    low: float
    high: float
    dimension: Dimension


@dataclass(frozen=True, slots=True)
class Content:
    """An active ingredient by common name: percent by weight, or grams a litre, where the label says."""

    name: str
    percent: float | None = None
    g_per_l: float | None = None


@dataclass(frozen=True, slots=True)
class Age:
    """How old new grass must be: so many days and so many mowings, both."""

    days: float = 0.0
    mowings: int = 0


def _analysis(text: str) -> tuple[float, float, float]:
    share = r"([0-9]{1,3}(?:\.[0-9]+)?)"
    match = re.fullmatch(rf"{share}\s*-\s*{share}\s*-\s*{share}", text)
    if match is None:
        raise Refusal(text, "three numbers are wanted, like 18-24-6.")
    n, p, k = (float(part) for part in match.groups())
    if n + p + k > 100:
        raise Refusal(text, "percentages by weight can't be above 100 together.")
    return n, p, k


def _slow_share(text: str) -> float:
    match = re.fullmatch(r"(.+?%)\s*of\s*(?:the\s*)?n(?:itrogen)?", text.casefold())
    if match is None:
        raise Refusal(
            text,
            "of what? Write `slow 20% of n` for a share of the nitrogen, "
            "or `slow_n 3.6%` for a percentage of the whole product, as labels print it.",
        )
    value = parse_as(match[1], Dimension.PERCENT).value
    if value > 100:
        raise Refusal(text, "a share can't be above 100 %.")
    return value / 100


def _parts(text: str) -> list[str]:
    """`3lb/k 4lb/k`, `3 lb/k to 4 lb/k` or with a comma: the quantities, each without its blanks."""
    parts = [part for part in text.replace(",", " ").split() if part != "to"]
    found: list[str] = []
    for part in parts:
        if found and not looks_like_quantity(part):
            found[-1] += part
        else:
            found.append(part)
    return found


def _range(text: str) -> Range:
    parts = _parts(text)
    if len(parts) == 1:
        parts *= 2
    if len(parts) != 2:
        raise Refusal(text, "the label's low and high rate are wanted, like 3lb/k 4lb/k.")
    low, high = (parse_as(p, Dimension.MASS_RATE, Dimension.VOLUME_RATE) for p in parts)
    if low.dimension is not high.dimension:
        raise Refusal(text, "both ends of the rate must be weights, or both volumes.")
    if low.value > high.value:
        raise Refusal(text, "the low rate comes first.")
    if low.value <= 0:
        raise Refusal(text, "a rate is more than nothing.")
    return Range(low.value, high.value, low.dimension)


def _temperatures(text: str) -> tuple[float, float]:
    parts = _parts(text)
    if len(parts) != 2:
        raise Refusal(text, "the lowest and highest temperature are wanted, like 50F 85F.")
    low, high = sorted(parse_as(p, Dimension.TEMPERATURE).value for p in parts)
    return low, high


def _actives(text: str) -> tuple[Content, ...]:
    found = []
    for item in listed(text):
        name, _, last = item.rpartition(" ")
        if name and looks_like_quantity(last) and last[-1:] not in ("d", "D"):
            strength = parse_as(last, Dimension.PERCENT, Dimension.ACTIVE)
            percent = strength.dimension is Dimension.PERCENT
            found.append(
                Content(name.casefold(), strength.value if percent else None, None if percent else strength.value)
            )
        else:
            found.append(Content(item.casefold()))
    return tuple(found)


def _mix(text: str) -> tuple[tuple[str, float], ...]:
    found: list[tuple[str, float]] = []
    for item in listed(text):
        name, _, share = item.rpartition(" ")
        if looks_like_quantity(item):
            share, _, name = item.partition(" ")
        if not name:
            raise Refusal(item, "a share is missing: write it like kentucky bluegrass 50%.")
        value = parse_as(share, Dimension.PERCENT, Dimension.NUMBER).value
        found.append((" ".join(grass_names(name)), value))
    total = sum(share for _, share in found)
    if not 50 <= total <= 100.5:
        raise Refusal(text, f"the grasses add up to {total:g} %, not to the label's pure seed.")
    return tuple(found)


def _age(text: str) -> Age:
    days, mowings, rest = 0.0, 0, text.casefold().replace("and", " ")
    for amount, unit in re.findall(r"([0-9]+)\s*(mowings?|d(?:ays?)?|w(?:k|eeks?)?)\b", rest):
        if unit.startswith("m"):
            mowings = int(amount)
        else:
            days = float(amount) * (7 if unit.startswith("w") else 1)
    if not re.fullmatch(r"(\s*[0-9]+\s*(mowings?|d(ays?)?|w(k|eeks?)?)\b\s*,?)+", rest):
        raise Refusal(text, "the age of the grass is wanted, like 28d or 4 mowings.")
    if max(days, mowings) > LONGEST_WAIT:
        raise Refusal(text, f"at most {LONGEST_WAIT} days can be meant.")
    return Age(days, mowings)


def _minutes(text: str) -> float:
    quantity = parse_as(text, Dimension.MINUTES, Dimension.DAYS)
    minutes = quantity.value * (1440 if quantity.dimension is Dimension.DAYS else 1)
    if minutes > LONGEST_WAIT * 1440:
        raise Refusal(text, f"at most {LONGEST_WAIT} days can be meant.")
    return minutes


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """What the owner copied from the label. None or '' where it is blank: a cautious default is used and named.

    Days, minutes, mm, C, m/s, counts; the yearly amount per square metre.
    """

    to_seed_days: float | None = term("to_seed", wait, "28d")
    after_seed: Age | None = term("after_seed", _age, "4 mowings")
    repeat_days: float | None = term("repeat", wait, "28d")
    max_per_year: float | None = term("max_per_year", number(0, 99), "2")
    max_year_amount: float | None = term(
        "max_amount_per_year", positive(Dimension.VOLUME_RATE, Dimension.MASS_RATE), "0.37floz/k"
    )
    temp_c: tuple[float, float] | None = term("temp", _temperatures, "50F 85F")
    wind_max_m_s: float | None = term("wind_max", positive(Dimension.SPEED), "8mph")
    rain_free_min: float | None = term("rain_free", _minutes, "24h")
    water_in_mm: float | None = term("water_in", measured(Dimension.LENGTH), "0.5in")
    water_in_within_min: float | None = term("water_in_within", _minutes, "24h")
    mow_before_days: float | None = term("mow_before", wait, "2d")
    mow_after_days: float | None = term("mow_after", wait, "3d")
    reentry: str = term("reentry", words, "until dry", "")
    buffer_mm: float | None = term("buffer", measured(Dimension.LENGTH), "25ft")
    spot_counts: bool = term("spot_counts", yes_no, "no", False)
    professional: bool = term("professional", yes_no, "no", False)
    site: str = term("site", words, "residential lawn", "")


@dataclass(frozen=True, slots=True, kw_only=True)
class Product:
    """Weights in g, volumes in mL; analysis is N, P2O5, K2O in percent by weight."""

    name: str
    kind: str = term("kind", one_of(*KINDS), "starter", "")
    analysis: tuple[float, float, float] | None = term("analysis", _analysis, "18-24-6")
    slow_share: float | None = term("slow", _slow_share, "20% of n")
    slow_n_percent: float | None = term("slow_n", number(0, 60), "3.6%")
    bag_g: float | None = term("bag", positive(Dimension.MASS), "48lb")
    bottle_ml: float | None = term("bottle", positive(Dimension.VOLUME), "32floz")
    cup_g: float | None = term("cup", positive(Dimension.MASS), "0.5lb")
    n_source: tuple[str, ...] = term("n_source", listed, "urea", ())
    actives: tuple[Content, ...] = term("actives", _actives, "mesotrione 0.08%", ())
    form: str = term("form", one_of("granule", "liquid"), "granule", "")
    rate: Range | None = term("rate", _range, "3lb/k 4lb/k")
    mix: tuple[tuple[str, float], ...] = term("mix", _mix, "kentucky bluegrass 50%, perennial ryegrass 50%", ())
    purity: float | None = term("purity", number(1, 100), "97")
    germination: float | None = term("germination", number(1, 100), "85")
    weed_seed: float | None = term("weed_seed", number(0, 100), "0.1")
    other_crop: float | None = term("other_crop", number(0, 100), "0.1")
    inert: float | None = term("inert", number(0, 100), "3")
    coated: bool = term("coated", yes_no, "no", False)
    rate_basis: str = term("rate_basis", one_of("bulk", "pls"), "bulk", "bulk")
    maker: str = term("maker", words, "hollow-creek", "")
    tested: date | None = term("tested", month, "2026-03")
    label: Label = Label()

    @property
    def slow(self) -> float | None:
        """Slow-release share of the nitrogen, 0 to 1, from either way of saying it; None when not said."""
        if self.slow_share is not None:
            return self.slow_share
        if self.slow_n_percent is None or not self.analysis or not self.analysis[0]:
            return None
        return min(1.0, self.slow_n_percent / self.analysis[0])

    @property
    def liquid(self) -> bool:
        """Whether it is measured by volume: so its label's form, its bottle or its rate say."""
        if self.form:
            return self.form == "liquid"
        return self.bottle_ml is not None or (self.rate is not None and self.rate.dimension is Dimension.VOLUME_RATE)

    @property
    def nitrogen(self) -> float:
        """Share of N by weight, 0 to 1."""
        return self.analysis[0] / 100 if self.analysis else 0.0

    @property
    def shares(self) -> dict[str, float]:
        """Grass -> percent of the pure seed, adding up to 100."""
        total = sum(share for _, share in self.mix)
        return {name: 100 * share / total for name, share in self.mix} if total else {}
