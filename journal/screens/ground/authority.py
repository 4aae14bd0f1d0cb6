"""Who said a fact of the ground, and when: the setting that decides on the day that is looked at."""

from collections.abc import Mapping
from datetime import date
from functools import lru_cache
from types import MappingProxyType

from journal.line.say import say
from journal.record.fold import Ground
from journal.record.kinds.setting import Setting
from journal.record.lawn import Lawn

Key = tuple[str, str, str]
"""(what, name, key), as the lawn keeps the words that were said."""

_ANY = Lawn()
"""A setting is said alike on every lawn."""
_DAY = date(2000, 1, 1)


def authors(ground: Ground, day: date) -> Mapping[Key, Setting]:
    """Key -> the setting whose words hold on that day: of corrections the newest, of dated changes the last begun."""
    found: dict[Key, Setting] = {}
    said = ground.on(day).said
    for setting in (*ground.always, *ground.dated):
        if setting.since is None or setting.since <= day:
            for key, words in setting.values:
                place = (setting.what, setting.name, key)
                if said.get(place) == words:
                    found[place] = setting
    return MappingProxyType(found)


@lru_cache(maxsize=1024)
def start_line(what: str, name: str, key: str) -> str:
    """`set front area `: where nothing was said, the value is the owner's to type; Enter alone saves nothing."""
    return f"set {key} " if what == "lawn" else f"set {name} {key} "


def set_line(what: str, name: str, key: str, words: str, since: date | None = None) -> str:
    """`set front area 2400sqft`: the value quoted where it must be, from the day on where a day is given.

    A dated change hides a plain correction, so what is corrected has to be dated alike.
    """
    made = Setting(date=_DAY, what=what, name=name, values=((key, words),), since=since)
    return f"set {say(made, _ANY).removesuffix(f' on {_DAY.isoformat()}').partition(' ')[2]}"
