"""What publications say of setting a spreader or sprayer and going over the lawn with it."""

from journal.facts.citation import Basis, Citation, Known, practice

_UMASS = Citation(
    "umass-rotary",
    "Univ. of Massachusetts Extension Turf Program",
    "Rotary Spreader Calibration Procedures",
    None,
    "ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures",
)
_MINNESOTA = Citation(
    "umn-spreader",
    "Univ. of Minnesota Extension, SULIS",
    "Calibrating Your Spreader",
    None,
    "extension.umn.edu/garden/landscaping/maint/selectin_10.html",
)
_CLEMSON = Citation(
    "clemson-spreaders",
    "Clemson Univ. Home and Garden Information Center",
    "Calibrating Spreaders",
    2018,
    "hgic.clemson.edu/factsheet/calibrating-spreaders",
)
_ALBANY = Citation(
    "albany-sprayer",
    "Albany County (Wyoming) Weed and Pest",
    "Calibrating your sprayer",
    None,
    "albanycountyweedandpest.com/calibrating-your-sprayer.html",
)
_LARIMER = Citation(
    "larimer-sprayer",
    "Larimer County (Colorado) Weed District",
    "Sprayer calibration",
    None,
    "larimer.org/weeds/calibration.htm",
)

OFF_PERCENT = 5.0
OFF_BASIS = Basis(Known.PUBLISHED, (_UMASS,))
"""So far beside the rate that was wanted a spreader's setting may lie."""

CROSSWISE_BASIS = Basis(Known.PUBLISHED, (_UMASS, _MINNESOTA))
"""Half the rate, gone over twice, the second time at right angles."""

AGAIN_BASIS = Basis(Known.PUBLISHED, (_CLEMSON,))
"""Each product and each user wants a calibration of its own: pace and granule change what comes out."""

PLOT_BASIS = Basis(Known.PUBLISHED, (_ALBANY, _LARIMER))
"""Fluid ounces caught for 1/128 of an acre (340 sq ft) are gallons an acre."""

TANK_BASIS = practice()
"""The tank is half filled with water first, then comes the product, then the rest of the water."""
