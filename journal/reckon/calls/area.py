"""The size of a piece of lawn, put together from plain shapes."""

from collections.abc import Callable
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from journal.reckon.answer import Answer, figure
from journal.reckon.asking import sides
from journal.reckon.declare import bare, in_order, reckoning
from journal.reckon.shapes import circle_m2, rectangle_m2, triangle_m2
from journal.record.refusal import Refusal
from journal.record.term import Term

_SHAPES = MappingProxyType[str, Callable[..., float]](
    {"rect": rectangle_m2, "circle": circle_m2, "triangle": triangle_m2}
)


@reckoning(
    "area",
    "the size of a piece of lawn, put together from plain shapes",
    "area --rect 40ft,60ft --triangle 30ft,20ft --minus --circle 12ft",
    explains={
        "rect": "its two sides",
        "circle": "its radius, from the middle to the rim",
        "triangle": "its base, and its height at right angles to that",
        "minus": "take the next shape away",
    },
)
@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """Shapes with their lengths in mm, and marks that take the next one away."""

    shapes: tuple[tuple[str, Any], ...] = in_order(
        Term("rect", sides(2), "40ft,60ft"),
        Term("circle", sides(1), "12ft"),
        Term("triangle", sides(2), "30ft,20ft"),
        bare("minus"),
    )

    def answer(self) -> Answer:
        """The area of all shapes, those behind `--minus` taken away."""
        if all(name == "minus" for name, _ in self.shapes):
            raise Refusal("--minus", "a shape is wanted to take something from, like --rect 40ft,60ft.")
        total, sign = 0.0, 1
        for name, lengths in self.shapes:
            if name == "minus":
                if sign < 0:
                    raise Refusal("--minus", "stands there twice; a shape is wanted after it.")
                sign = -1
                continue
            total += sign * _SHAPES[name](*lengths)
            sign = 1
        if sign < 0:
            raise Refusal("--minus", "a shape is wanted after it, like --circle 12ft.")
        if total <= 0:
            raise Refusal("--minus", "more is taken away than there is.")
        return Answer((figure("sqft", "area", total, "sqft"), figure("m2", "area", total, "m2")), self._notes())

    def _notes(self) -> tuple[str, ...]:
        if not any(name == "circle" for name, _ in self.shapes):
            return ()
        return ("The length of a circle was taken as its radius: 12ft means 24 ft across.",)
