"""What a spreader or a sprayer puts out, from what was caught over a measured piece of ground."""


def output_per_m2(caught: float, area_m2: float) -> float:
    """Grams or millilitres per m2.

    For a spreader: Consumer Reports, How to calibrate a drop spreader, 2006. For a sprayer: Albany County (Wyoming)
    Weed and Pest, Calibrating your sprayer.
    """
    return caught / area_m2


def off_percent(rate: float, target: float) -> float:
    """How far a rate lies beside the one wanted, in percent of that; below zero where it is too little."""
    return 100 * (rate - target) / target
