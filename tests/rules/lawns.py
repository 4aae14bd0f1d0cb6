"""Lawns with another grass, another half of the globe, or no dates, for scenarios."""

from journal.season.history import History
from tests.scenario import lawn

KBG_PRG = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'
NAME = 'name = "North Lane"'
SOUTH = (("latitude = 42.3", "latitude = -42.3"), ('growth = ["04-10", "11-10"]', 'growth = ["09-10", "05-10"]'))
UNDATED = (('growth = ["04-10", "11-10"]\n', ""), ('last_frost = "05-06"\n', ""), ('first_frost = "10-05"\n', ""))
SOWN = "2026-09-06"


def grass(*names: str) -> History:
    words = ", ".join(f'"{name}"' for name in names)
    return lawn((KBG_PRG, f"grass = [{words}]"))


def sown_with(mix: str) -> History:
    """A lawn whose grass is not set up, and a seed of that mix."""
    words = ", ".join(
        f'{{grass="{name.strip()}", percent={share}}}' for share, name in (p.split(" ", 1) for p in mix.split(","))
    )
    old = '[{grass="kentucky bluegrass", percent=50}, {grass="perennial ryegrass", percent=50}]'
    return lawn((KBG_PRG + "\n", ""), (old, f"[{words}]"))
