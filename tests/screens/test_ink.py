"""Colours can be told from what lies behind them, and nothing depends on them."""

import pytest
from rich.style import Style

from journal.screens.ink import BARE, DARK, LEAST_CONTRAST, LIGHT, Palette, choose, contrast
from journal.screens.picture import Ink


@pytest.mark.parametrize("palette", [DARK, LIGHT], ids=lambda palette: palette.name)
@pytest.mark.parametrize("ink", list(Ink))
def test_every_ink_can_be_read_on_every_ground(palette: Palette, ink: Ink) -> None:
    tint = palette.tints[ink]
    for ground in (palette.paper, palette.foot):
        assert contrast(tint.fore, tint.back or ground) >= LEAST_CONTRAST


def test_contrast_is_measured_as_the_standard_says() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)


def test_without_colour_there_is_no_hue_at_all() -> None:
    for ink in Ink:
        style = BARE.style(ink)
        assert style.color is None
        assert style.bgcolor is None


def test_without_colour_the_cursor_harm_and_the_word_in_question_still_differ() -> None:
    plain = BARE.style(Ink.PLAIN)
    assert plain == Style()
    assert BARE.style(Ink.CURSOR).reverse
    assert BARE.style(Ink.HARM).reverse
    assert BARE.style(Ink.PROBLEM).underline


@pytest.mark.parametrize(
    ("environ", "palette"),
    [
        ({}, DARK),
        ({"COLORFGBG": "0;15"}, LIGHT),
        ({"COLORFGBG": "0;default;7"}, LIGHT),
        ({"COLORFGBG": "15;0"}, DARK),
        ({"NO_COLOR": "1", "COLORFGBG": "0;15"}, BARE),
        ({"NO_COLOR": ""}, DARK),
    ],
)
def test_the_terminal_decides(environ: dict[str, str], palette: Palette) -> None:
    assert choose(environ) is palette
