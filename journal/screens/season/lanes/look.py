"""Looking: `o` seen or measured, `#` photographed, `t` soil tested, `"` noted; `%` several of these in one cell.

At two columns a number where there was more than one.
"""

from journal.line.words import summary
from journal.record.entry import Entry
from journal.record.kinds.photo import Photo
from journal.record.kinds.remark import Remark
from journal.record.kinds.sighting import Count, Height, Sighting
from journal.record.kinds.soil import SoilTest
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene

STEPS = ("photo", "soil-test")
KINDS: tuple[type[Entry], ...] = (Sighting, Height, Count, Photo, SoilTest, Remark)
_GLYPH = {"sighting": "o", "height": "o", "count": "o", "photo": "#", "soil-test": "t", "remark": '"'}
_DONE = {"sighting": "seen", "height": "measured", "count": "counted", "photo": "photo", "soil-test": "soil test"}


def _draw(scene: Scene) -> Drawn:
    window = ahead(scene, STEPS)
    marks = [window.get(cell, BLANK) for cell in range(COUNT)]
    for cell, here in enumerate(scene.by_cell(*KINDS)):
        if here:
            glyphs = {_GLYPH[entry.kind] for entry in here}
            glyph = glyphs.pop() if len(glyphs) == 1 else "%"
            count = len(here)
            marks[cell] = Mark((f"{glyph}{count}", glyph) if 1 < count < 10 else (glyph,), Ink.DONE)
    return Drawn(Strip("Look", tuple(marks), _now(scene)))


def _now(scene: Scene) -> Now:
    """Days since the last photo, or since anything was last seen where there is none."""
    for kinds in ((Photo,), (Sighting, Height, Count, SoilTest)):
        last = [past[kind].last for past in scene.pasts.values() for kind in kinds]
        newest = max((entry for entry in last if entry is not None), key=lambda entry: entry.day, default=None)
        if newest is not None:
            days = scene.today - newest.day
            number, unit = (days, "d") if days < 1000 else (days // 365, "yr")
            return Now(str(number), unit, _DONE[newest.kind])
    return Now("–", "", "no photo")


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    made = [_made(scene, entry) for entry in scene.entries(cell, *KINDS)]
    return (*made, *told(scene, STEPS, cell)) or (idle("nothing looked at."),)


def _made(scene: Scene, entry: Entry) -> Said:
    text = f"{summary(entry, scene.lawn)}{f' -- {entry.remark}' if entry.remark else ''}."
    return logged(entry, text, Ink.DONE)


LANE = Lane(name="Look", place=80, draw=_draw, words=_words)
