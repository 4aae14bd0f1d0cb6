"""How each ink looks: straw on soil by night, soil on straw by day, and without any colour.

Hues come from the job: leaf for what is done, water for what is wet or ahead, straw and clay for what is wrong.
None of them is ever the only sign of a meaning: a glyph or a word stands beside each.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from rich.style import Style

from journal.screens.picture import Ink

LEAST_CONTRAST = 4.5
"""Between text and what lies behind it (WCAG 2.2, success criterion 1.4.3)."""


@dataclass(frozen=True, slots=True)
class Tint:
    """Hue of the letters, of what lies behind them ('' is the paper's own), and weight."""

    fore: str = ""
    back: str = ""
    bold: bool = False
    underline: bool = False
    italic: bool = False
    reverse: bool = False


@dataclass(frozen=True, slots=True)
class Palette:
    """A name, the paper, the strip at the foot, and a tint for every ink. '' means the terminal's own."""

    name: str
    paper: str
    foot: str
    tints: Mapping[Ink, Tint]

    def style(self, ink: Ink, ground: str = "") -> Style:
        """The terminal's style of an ink on the paper, or on `ground`."""
        return _style(self.tints[ink], ground or self.paper)


@cache
def _style(tint: Tint, ground: str) -> Style:
    return Style(
        color=tint.fore or None,
        bgcolor=tint.back or ground or None,
        bold=tint.bold or None,
        underline=tint.underline or None,
        italic=tint.italic or None,
        reverse=tint.reverse or None,
    )


def _palette(name: str, paper: str, foot: str, bar: str, hues: Mapping[str, str]) -> Palette:
    """Build the tints from a few named hues: the two palettes differ in nothing else."""
    text, faint, leaf, water = hues["text"], hues["faint"], hues["leaf"], hues["water"]
    straw, clay, seed = hues["straw"], hues["clay"], hues["seed"]
    return Palette(
        name,
        paper,
        foot,
        {
            Ink.PLAIN: Tint(text),
            Ink.DIM: Tint(faint),
            Ink.STRONG: Tint(hues["strong"], bold=True),
            Ink.TITLE: Tint(leaf, bold=True),
            Ink.RULE: Tint(hues["rule"]),
            Ink.HARM: Tint(hues["on"], clay, bold=True),
            Ink.LOSS: Tint(clay, bold=True),
            Ink.LATE: Tint(straw, bold=True),
            Ink.NOTE: Tint(water),
            Ink.DONE: Tint(leaf),
            Ink.AHEAD: Tint(water),
            Ink.BARRED: Tint(hues["barred"]),
            Ink.GAP: Tint(straw),
            Ink.FUSE: Tint(seed),
            Ink.WATER: Tint(water),
            Ink.SEED: Tint(seed),
            Ink.CURSOR: Tint(paper, straw, bold=True),
            Ink.USUAL: Tint(faint, italic=True),
            Ink.PROBLEM: Tint(clay, underline=True),
            Ink.KEY: Tint(straw),
            Ink.BAR: Tint(hues["strong"], bar, bold=True),
            Ink.AWAY: Tint(hues["on"], straw, bold=True),
            Ink.TAB: Tint(hues["on"], leaf, bold=True),
            Ink.GHOST: Tint(faint),
            Ink.SAID: Tint(leaf, bold=True),
        },
    )


DARK = _palette(
    "dark",
    paper="#171812",
    foot="#25281d",
    bar="#363c27",
    hues={
        "text": "#d9d3bd",
        "strong": "#f4eed8",
        "faint": "#a29c86",
        "rule": "#938e78",
        "leaf": "#a3c76d",
        "water": "#86b8dc",
        "straw": "#e8c266",
        "clay": "#ef8d6b",
        "seed": "#d3a97c",
        "barred": "#b49a8c",
        "on": "#171812",
    },
)
LIGHT = _palette(
    "light",
    paper="#f7f2e4",
    foot="#ece5d0",
    bar="#dfe0bd",
    hues={
        "text": "#33301f",
        "strong": "#16140b",
        "faint": "#656048",
        "rule": "#68634d",
        "leaf": "#3c6617",
        "water": "#1d5c87",
        "straw": "#7d5300",
        "clay": "#a33313",
        "seed": "#7c4c20",
        "barred": "#74564a",
        "on": "#fffaf0",
    },
)
BARE = Palette(
    "bare",
    "",
    "",
    {
        **{ink: Tint() for ink in Ink},
        Ink.STRONG: Tint(bold=True),
        Ink.TITLE: Tint(bold=True),
        Ink.HARM: Tint(bold=True, reverse=True),
        Ink.LOSS: Tint(bold=True),
        Ink.LATE: Tint(bold=True),
        Ink.CURSOR: Tint(reverse=True),
        Ink.PROBLEM: Tint(underline=True),
        Ink.BAR: Tint(bold=True, reverse=True),
        Ink.AWAY: Tint(bold=True, reverse=True),
        Ink.TAB: Tint(bold=True, reverse=True),
        Ink.SAID: Tint(bold=True),
    },
)
"""No hue at all, for NO_COLOR: the terminal's own ink and paper, with weight, underline and reverse."""


def choose(environ: Mapping[str, str]) -> Palette:
    """The palette for this terminal: BARE under NO_COLOR, LIGHT where COLORFGBG tells of light paper, else DARK."""
    if environ.get("NO_COLOR"):
        return BARE
    paper = environ.get("COLORFGBG", "").rpartition(";")[2]
    return LIGHT if paper in ("7", "15") else DARK


def contrast(a: str, b: str) -> float:
    """Ratio of two `#rrggbb` hues' luminance, 1 to 21 (WCAG 2.2, "contrast ratio")."""
    lighter, darker = sorted((_luminance(a), _luminance(b)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(hue: str) -> float:
    parts = (int(hue[at : at + 2], 16) / 255 for at in (1, 3, 5))
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
