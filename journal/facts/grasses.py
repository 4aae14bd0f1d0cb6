"""Lawn grasses: names, height of cut, days to emergence, seeding rates and nitrogen caps, each with its basis."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import lru_cache
from types import MappingProxyType

from journal.facts.citation import Basis, memory
from journal.facts.factors import g_per_m2, mm
from journal.facts.sources import judgment, published


@dataclass(frozen=True, slots=True)
class Span:
    """From `low` to `high`, both in it."""

    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Grass:
    """One kind of grass. Cuts in mm, days as calendar days, rates in lb per 1,000 sq ft as they were printed."""

    name: str
    aliases: tuple[str, ...]
    cool_season: bool
    low_cut_mm: float
    high_cut_mm: float
    cut_basis: Basis
    emergence_days: int
    emergence_basis: Basis
    nitrogen_cap_lb_per_k: float
    nitrogen_basis: Basis
    seed_rate_new_lb_per_k: Span | None = None
    overseed_rate_lb_per_k: Span | None = None
    rate_basis: Basis | None = None
    unwanted: bool = False

    @property
    def seed_rate_new_g_per_m2(self) -> Span | None:
        """The rate for bare soil in g/m2, or None where no rate is published."""
        return _metric(self.seed_rate_new_lb_per_k)

    @property
    def overseed_rate_g_per_m2(self) -> Span | None:
        """The rate over a standing lawn in g/m2, or None where no rate is published."""
        return _metric(self.overseed_rate_lb_per_k)

    @property
    def nitrogen_cap_g_per_m2(self) -> float:
        """The most nitrogen in a calendar year, in g/m2."""
        return g_per_m2(self.nitrogen_cap_lb_per_k)


def _metric(span: Span | None) -> Span | None:
    return None if span is None else Span(g_per_m2(span.low), g_per_m2(span.high))


class UnknownGrass(LookupError):
    """No grass of that name. `word` is what was asked for, `suggestion` the nearest name known, or ""."""

    def __init__(self, word: str, suggestion: str) -> None:
        self.word = word
        self.suggestion = suggestion
        hint = f" Did you mean {suggestion}?" if suggestion else ""
        super().__init__(f"{word} is not a grass known here.{hint}")


_MARYLAND = published("umd-schedule")
_CAROLINA = published("ncsu-caring")
_AS_BLUEGRASS = judgment("held to the cap of bluegrass and tall fescue", "umd-schedule")
_ODD_CUT = memory("seldom sown on purpose in a home lawn")

KENTUCKY_BLUEGRASS = Grass(
    "kentucky bluegrass", ("kbg", "bluegrass", "smooth meadow-grass", "poa pratensis"), True,
    mm(2), mm(3.5), published("purdue-ay8", "isu-mowing", "ask-158965", "isu-1994"),
    21, published("nebraska-lifeline", "ncsu-seeding", note="others say 14 to 21 days"),
    2.7, _MARYLAND, Span(1, 3), Span(0.5, 1.5),
    published("osu-b546", "uc-rates", "kstate-fall", "cornell-rates", note="overseeding is half the new rate"),
)  # fmt: skip
TALL_FESCUE = Grass(
    "tall fescue", ("tttf", "turf-type tall fescue", "turf type tall fescue", "festuca arundinacea"), True,
    mm(2), mm(4), published("purdue-ay8", "kstate-mf736", note="sources differ by an inch at either end"),
    10, published("nebraska-acreage", "nebraska-lifeline", note="5 to 10 days and 10 to 14 days are printed"),
    2.7, _MARYLAND, Span(5, 10), Span(3, 6),
    published("umd-september", "uc-rates", "kstate-overseed"),
)  # fmt: skip
PERENNIAL_RYEGRASS = Grass(
    "perennial ryegrass", ("prg", "ryegrass", "perennial rye", "lolium perenne"), True,
    mm(1.5), mm(3.5),
    judgment("the low end is from memory, the high end printed", "purdue-ay8", "guelph-mowing"),
    7, published("nebraska-lifeline", "osu-ec1550", note="7 to 14 days are printed"),
    2.7, _AS_BLUEGRASS, Span(4, 9), Span(2, 4.5),
    published("cornell-rates", "uc-rates", "uw-establish", "kstate-fall", note="overseeding is half the new rate"),
)  # fmt: skip
FINE_FESCUE = Grass(
    "fine fescue",
    ("ff", "chewings fescue", "chewings", "creeping red fescue", "red fescue", "strong creeping red fescue",
     "slender creeping red fescue", "hard fescue", "sheep fescue", "sheeps fescue", "festuca rubra"), True,
    mm(2), mm(4),
    judgment("the low end is ours, 2.5 to 4 in is printed", "umn-fine-fescue", "purdue-ay8"),
    10, memory("one photograph shows seedlings at 6 days"),
    1.4, _MARYLAND, Span(3.5, 5), Span(1.75, 2.5),
    published("uc-rates", "uw-establish", "kstate-fall", note="overseeding is half the new rate"),
)  # fmt: skip
ANNUAL_RYEGRASS = Grass(
    "annual ryegrass", ("italian ryegrass", "annual rye", "lolium multiflorum"), True,
    mm(1.5), mm(3.5), _ODD_CUT, 7, memory(), 2.7, _AS_BLUEGRASS, unwanted=True,
)  # fmt: skip
ROUGH_BLUEGRASS = Grass(
    "rough bluegrass", ("rough-stalked bluegrass", "poa trivialis", "poa triv"), True,
    mm(1.5), mm(3), _ODD_CUT, 14, memory(), 2.7, _AS_BLUEGRASS, unwanted=True,
)  # fmt: skip
BENTGRASS = Grass(
    "bentgrass", ("cbg", "creeping bentgrass", "colonial bentgrass", "bent", "agrostis"), True,
    mm(0.5), mm(1.5), _ODD_CUT, 14, memory(), 2.7, _AS_BLUEGRASS,
)  # fmt: skip
BERMUDAGRASS = Grass(
    "bermudagrass", ("bermuda", "bermuda grass", "couch grass", "cynodon"), False,
    mm(0.5), mm(2), published("uga-grass", "ufl-pinellas", "ncsu-lee"),
    14, memory("unhulled seed takes up to 30 days"),
    2.7, published("umd-schedule", note="southern states print up to 7"), Span(0.25, 2), None,
    published("lsu-pls", "patton-2004", "bermuda-seed", note="the low end is a research rate"),
)  # fmt: skip
ZOYSIAGRASS = Grass(
    "zoysiagrass", ("zoysia", "zoysia grass"), False,
    mm(1), mm(3), published("ncsu-lee", "purdue-ay8", "ufl-clay", "ufl-pinellas", note="sources differ widely"),
    21, memory(),
    1.8, published("umd-schedule", note="1.5 in North Carolina, more in Florida"), Span(1, 2), None,
    published("lsu-pls", "patton-2004"),
)  # fmt: skip
ST_AUGUSTINEGRASS = Grass(
    "st. augustinegrass", ("st augustinegrass", "st. augustine", "st augustine", "saint augustinegrass",
                           "saint augustine", "st augustine grass", "stenotaphrum"), False,
    mm(2), mm(4), published("ufl-clay", "ncsu-lee", note="sources differ: 2 to 3 in and 3.5 to 4 in"),
    21, judgment("planted as plugs or sod; no seed is sold", "lsu-rapides"), 2.5, _CAROLINA,
)  # fmt: skip
CENTIPEDEGRASS = Grass(
    "centipedegrass", ("centipede", "centipede grass", "eremochloa"), False,
    mm(1), mm(2), published("uga-grass", "ufl-clay", "ncsu-lee"),
    21, memory(), 0.5, _CAROLINA, Span(0.25, 1), None,
    judgment("0.5 to 1 lb is printed, the low end is from memory", "lsu-pls"),
)  # fmt: skip
UNKNOWN = Grass(
    "unknown", ("not known", "don't know", "dont know", "mixed", "?"), True,
    mm(2), mm(4), judgment("bluegrass is assumed to be there; fescue may be"),
    21, judgment("bluegrass is assumed to be there", "nebraska-lifeline"), 2.7, _AS_BLUEGRASS,
)  # fmt: skip

GRASSES: tuple[Grass, ...] = (
    KENTUCKY_BLUEGRASS, TALL_FESCUE, PERENNIAL_RYEGRASS, FINE_FESCUE, ANNUAL_RYEGRASS, ROUGH_BLUEGRASS,
    BENTGRASS, BERMUDAGRASS, ZOYSIAGRASS, ST_AUGUSTINEGRASS, CENTIPEDEGRASS, UNKNOWN,
)  # fmt: skip


@lru_cache(maxsize=512)
def _plain(word: str) -> str:
    """A name as it is looked up: small letters, single blanks for hyphens, one grass rather than several."""
    text = re.sub(r"[\s_-]+", " ", word.strip().casefold()).replace("grasses", "grass").replace("fescues", "fescue")
    return text.removesuffix("s") if text.endswith(("ryes", "bermudas", "zoysias")) else text


_BY_NAME: Mapping[str, Grass] = MappingProxyType(
    {_plain(name): kind for kind in GRASSES for name in (kind.name, *kind.aliases)}
)


@lru_cache(maxsize=256)
def grass(name: str) -> Grass:
    """The grass of that name or alias, whatever the case or plural. Raises UnknownGrass with one suggestion."""
    found = _BY_NAME.get(_plain(name))
    if found is None:
        near = get_close_matches(_plain(name), _BY_NAME, n=1, cutoff=0.6)
        raise UnknownGrass(name, _BY_NAME[near[0]].name if near else "")
    return found
