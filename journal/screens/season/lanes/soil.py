"""Work on the soil: `A` aerated, `D` dethatched, `R` raked, `T` topdressed; at two columns how often."""

from journal.line.words import summary
from journal.record.kinds.cultivation import Cultivation
from journal.screens.picture import Ink
from journal.screens.season.ahead import ahead, told
from journal.screens.season.cells import COUNT
from journal.screens.season.lane import Lane
from journal.screens.season.logged import logged
from journal.screens.season.mark import BLANK, Drawn, Mark, Now, Said, Strip, idle
from journal.screens.season.scene import Scene

STEPS = ("aerate", "dethatch", "topdress")
_RANK = ("aerate", "dethatch", "topdress", "rake")
_LETTER = {"aerate": "A", "dethatch": "D", "topdress": "T", "rake": "R"}
_DONE = {"aerate": "aerated", "dethatch": "dethatched", "topdress": "topdressed", "rake": "raked"}


def _draw(scene: Scene) -> Drawn:
    window = ahead(scene, STEPS)
    marks = [window.get(cell, BLANK) for cell in range(COUNT)]
    for cell, here in enumerate(scene.by_cell(Cultivation)):
        if here:
            what = min((entry.what for entry in here), key=_RANK.index)
            letter, count = _LETTER[what], len(here)
            marks[cell] = Mark((f"{letter}{count}", letter) if 1 < count < 10 else (letter,), Ink.DONE)
    return Drawn(Strip("Soil", tuple(marks), _now(scene)))


def _now(scene: Scene) -> Now:
    last = [past[Cultivation].last for past in scene.pasts.values()]
    newest = max((entry for entry in last if entry is not None), key=lambda entry: entry.day, default=None)
    if newest is None:
        return Now("–", "", "untouched")
    days = scene.today - newest.day
    number, unit = (days, "d") if days < 100 else (days // 7, "wk") if days < 730 else (days // 365, "yr")
    return Now(str(number), unit, _DONE[newest.what])


def _words(scene: Scene, cell: int) -> tuple[Said, ...]:
    made = [logged(entry, f"{summary(entry, scene.lawn)}.", Ink.DONE) for entry in scene.entries(cell, Cultivation)]
    return (*made, *told(scene, STEPS, cell)) or (idle("nothing done to the soil."),)


LANE = Lane(name="Soil", place=60, draw=_draw, words=_words)
