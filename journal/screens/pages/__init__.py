"""One file a page. A new file here with a `PAGE` is a new page: it is found by its being here."""

import importlib
import pkgutil
from functools import cache

from journal.screens.page import Page


@cache
def pages() -> tuple[Page, ...]:
    """Every page, by its number."""
    found: list[Page] = []
    for module in pkgutil.iter_modules(__path__):
        page = getattr(importlib.import_module(f"{__name__}.{module.name}"), "PAGE", None)
        if page is not None:
            found.append(page)
    return tuple(sorted(found, key=lambda page: page.number))


def page_numbered(number: int) -> Page | None:
    """The page behind a digit, None when there is none."""
    return next((page for page in pages() if page.number == number), None)
