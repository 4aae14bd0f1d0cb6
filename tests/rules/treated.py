"""A shed of weed, insect and disease products, with labels as far as a scenario enters them."""

from collections.abc import Mapping
from datetime import date

from journal.rules.declare import RULES
from journal.rules.flag import Flag
from journal.rules.judge import flags_of
from journal.season.history import History
from journal.standing import findings
from tests.scenario import LAWN, day, lawn

_BLOCKS = {
    "green-gate": 'kind = "weed-and-feed"\nanalysis = "24-0-6"\nactives = ["2,4-d", "dicamba"]\nform = "granule"',
    "spring-wall": 'kind = "pre-emergent"\nactives = ["prodiamine"]\nform = "granule"',
    "leaf-off": 'kind = "weed"\nactives = [{name="2,4-d", lb_per_gal=1.5}]\nform = "liquid"',
    "leaf-mix": 'kind = "weed"\nactives = [{name="2,4-d", lb_per_gal=1.5}, {name="dicamba", lb_per_gal=0.2}]\n'
    'form = "liquid"',
    "warm-leaf": 'kind = "weed"\nactives = ["triclopyr ester"]\nform = "liquid"',
    "white-tip": 'kind = "weed"\nactives = [{name="mesotrione", lb_per_gal=4}]\nform = "liquid"',
    "seed-start": 'kind = "starter"\nanalysis = "18-24-6"\nactives = [{name="mesotrione", percent=0.08}]\n'
    'form = "granule"',
    "bare-ground": 'kind = "nonselective"\nactives = ["glyphosate"]\nform = "liquid"',
    "clover-out": 'kind = "weed"\nactives = ["clopyralid"]\nform = "liquid"',
    "plain-can": 'kind = "weed"\nform = "liquid"',
    "grub-end": 'kind = "insect"\nactives = [{name="imidacloprid", percent=0.5}]\nform = "granule"',
    "grub-off": 'kind = "insect"\nactives = ["chlorantraniliprole"]\nform = "granule"',
    "spot-out": 'kind = "disease"\nactives = ["azoxystrobin"]\nform = "liquid"',
    "rust-off": 'kind = "disease"\nactives = ["propiconazole"]\nform = "liquid"',
}

_PLAIN = LAWN[: LAWN.index('[[product]]\nname = "green-gate"')]


def shed(labels: Mapping[str, str] | None = None, *changes: tuple[str, str]) -> History:
    """Both zones are 1,000 sq ft; `labels` gives a product the lines of its label, `changes` replace words."""
    entered = dict(labels or {})
    blocks = [
        f'[[product]]\nname = "{name}"\n{block}\n'
        + (f"[product.label]\n{entered.pop(name)}\n" if name in entered else "")
        for name, block in _BLOCKS.items()
    ]
    assert not entered, entered
    toml = "\n".join([_PLAIN.replace("2400 sqft", "1000 sqft").replace("3100 sqft", "1000 sqft"), *blocks])
    return lawn(*changes, toml=toml)


def flags(history: History, on: str | date, rule: str, zone: str = "front") -> dict[str, str]:
    """Subject -> level of that rule's flags in that zone on that day."""
    return {flag.subject: str(flag.level) for flag in all_flags(history, on, rule, zone)}


def all_flags(history: History, on: str | date, rule: str, zone: str = "front") -> list[Flag]:
    """That rule's flags in that zone on that day."""
    return [f for f in findings(history, day(on)) if f.rule == rule and zone in f.zones]


def alone(history: History, on: str | date, rule: str, zone: str = "front") -> tuple[Flag, ...]:
    """What that rule says for itself, before anything yields to another."""
    return flags_of(RULES[rule], history.on(zone, day(on)))
