"""How far a measure may lie beside a threshold before it counts as another."""

SLACK = 0.02
"""What is measured or weighed out in other units comes out a little off, like 75 mm for 3 in: judgment."""


def reaches(value: float, limit: float) -> bool:
    """Whether a height, depth or amount is as much as that, but for the rounding of units."""
    return value >= limit * (1 - SLACK)


def exceeds(value: float, limit: float) -> bool:
    """Whether it is more than that, by more than the rounding of units."""
    return value > limit * (1 + SLACK)
