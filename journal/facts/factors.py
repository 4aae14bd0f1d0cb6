"""Exact conversions to the units everything is kept in: mm, g/m2, degrees Celsius.

Factors: NIST Special Publication 811 (2008), Appendix B: the inch is 25.4 mm, the foot 0.3048 m and the
pound 453.59237 g, all exact.
"""

from fractions import Fraction

INCH_MM = Fraction(254, 10)
LB_PER_K_G_M2 = Fraction(45359237, 100000) / (1000 * Fraction(3048, 10000) ** 2)


def mm(inches: float) -> float:
    """Inches to millimetres, rounded once, at the end."""
    return float(Fraction(str(inches)) * INCH_MM)


def g_per_m2(lb_per_k: float) -> float:
    """Pounds per 1,000 square feet to grams per square metre, rounded once, at the end."""
    return float(Fraction(str(lb_per_k)) * LB_PER_K_G_M2)


def mph(miles: float) -> float:
    """Miles an hour to metres a second, rounded once, at the end."""
    return float(Fraction(str(miles)) * 5280 * Fraction(3048, 10000) / 3600)


def celsius(fahrenheit: float) -> float:
    """Degrees Fahrenheit to degrees Celsius, rounded once, at the end."""
    return float((Fraction(str(fahrenheit)) - 32) * Fraction(5, 9))
