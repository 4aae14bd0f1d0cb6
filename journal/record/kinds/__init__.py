"""One file a kind of entry. A new file here is a new kind: it is found by its being here."""

import importlib
import pkgutil

for _module in pkgutil.iter_modules(__path__):
    importlib.import_module(f"{__name__}.{_module.name}")
