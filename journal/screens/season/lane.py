"""What a lane is. One small file in `lanes` declares one; it is found by being there."""

import importlib
import pkgutil
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from journal.screens.season import lanes as _folder
from journal.screens.season.mark import Drawn, Now, Said
from journal.screens.season.scene import Scene


def _always(_scene: Scene) -> bool:
    return True


def _no_total(_scene: Scene) -> Now:
    return Now()


@dataclass(frozen=True, slots=True, kw_only=True)
class Lane:
    """`draw` makes its row, `words` tells in sentences what any cell shows, `total` sums its cells up for a year.

    Lanes stand in the order of `place`; those with `weather` stand below a rule, and any lane only where `on_file`
    says so.
    """

    name: str
    place: int
    draw: Callable[[Scene], Drawn]
    words: Callable[[Scene, int], tuple[Said, ...]]
    total: Callable[[Scene], Now] = _no_total
    weather: bool = False
    on_file: Callable[[Scene], bool] = _always


@cache
def every_lane() -> tuple[Lane, ...]:
    """All lanes in order."""
    modules = (
        importlib.import_module(f"{_folder.__name__}.{found.name}") for found in pkgutil.iter_modules(_folder.__path__)
    )
    return tuple(sorted((module.LANE for module in modules), key=lambda lane: lane.place))


def drawn(lane: Lane, scene: Scene) -> Drawn:
    """The lane's row, drawn once for a scene."""
    return scene.once(("drawn", lane.name), lambda: lane.draw(scene))


def lanes(scene: Scene) -> tuple[Lane, ...]:
    """The lanes that this book has anything for."""
    return tuple(lane for lane in every_lane() if lane.on_file(scene))
