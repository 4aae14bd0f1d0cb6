"""A shed with lime, a supplement, labels with rates, and a front by the water."""

from tests.scenario import LAWN

_LABELLED = (
    LAWN.replace('analysis = "18-24-6"', 'analysis = "18-24-6"\nrate = "3lb/k 4lb/k"\nbag = "25 lb"')
    .replace('analysis = "24-0-11"', 'analysis = "24-0-11"\nrate = "2lb/k 4lb/k"\nbag = "40 lb"', 1)
    .replace('rate = "0.6 in/h"', 'rate = "0.6 in/h"\nnear_water = "20 ft"', 1)
)
_MORE = """
[[product]]
name = "grey-lime"
kind = "lime"
rate = "25lb/k 50lb/k"

[[product]]
name = "kelp-mix"
kind = "supplement"
form = "liquid"
rate = "3floz/k 6floz/k"

[[product]]
name = "dune-gold"
kind = "fertilizer"
analysis = "20-5-10"
n_source = ["methylene urea", "potassium nitrate"]
"""
SHED = _LABELLED + _MORE
