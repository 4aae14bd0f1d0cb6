"""One file a reckoning. A new file here is a new one: it is found by its being here."""

import importlib
import pkgutil

from journal.reckon.declare import RECKONINGS, Reckoning

for _module in pkgutil.iter_modules(__path__):
    importlib.import_module(f"{__name__}.{_module.name}")


def reckonings() -> tuple[Reckoning, ...]:
    """Every reckoning, by name."""
    return tuple(RECKONINGS[name] for name in sorted(RECKONINGS))
