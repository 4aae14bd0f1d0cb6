"""The groups of the Ground page from top to bottom."""

from collections.abc import Mapping, Sequence
from datetime import date
from functools import cache, partial

from journal.record.fold import ZONE_TERMS
from journal.record.kinds.setting import Setting
from journal.screens.ground.authority import Key, authors
from journal.screens.ground.fact import LEGEND, Fact, draw_fact, named
from journal.screens.ground.house import draw_house
from journal.screens.ground.local import draw_local
from journal.screens.ground.place import draw_place
from journal.screens.ground.soil import draw_soil
from journal.screens.ground.water import water_rows
from journal.screens.ground.weather import TOLD, proposals
from journal.screens.ground.year import draw_year
from journal.screens.ground.zone import first_line, stand_words, zone_facts
from journal.screens.ground.zones import draw_zones
from journal.screens.page import Size
from journal.screens.paper import Paper, Within
from journal.screens.picture import Ink, Row, Span, Target
from journal.screens.view import View
from journal.standing import Standing

_STOPS = tuple(Target(0) for _ in ZONE_TERMS)
"""Every zone that is opened has as many facts to stand on."""


def build(standing: Standing, view: View, size: Size) -> Paper:
    """The whole ground, or one zone of it."""
    paper = Paper(view, size.width)
    today = view.today or view.as_of
    said = authors(standing.history.ground, standing.as_of)
    if view.zone:
        _one_zone(paper, standing, said, today)
    else:
        _everything(paper, standing, said, today, airy=size.height >= 30)
    return paper


def _everything(paper: Paper, standing: Standing, said: Mapping[Key, Setting], today: date, *, airy: bool) -> None:
    for problem in standing.lawn.problems:
        paper.add((Span(" "), Span("! can't be read: ", Ink.LOSS), Span(problem)))
    paper.heading("PLACE", LEGEND)
    draw_year(paper, standing)
    found = TOLD(standing.history, standing.as_of, standing.lawn.latitude)
    draw_place(paper, standing, said, today, proposals(found, standing.lawn, standing.as_of))
    paper.add()

    def facts(zone: str) -> list[Fact]:
        return zone_facts(zone, standing, said, today)

    @cache
    def inside(zone: str) -> Paper:
        return _inside(zone, facts(zone), standing, paper.width)

    def opened(zone: str) -> Within:
        return Within(_STOPS, partial(inside, zone))

    draw_zones(paper, standing, lambda zone: first_line(facts(zone)), opened)
    paper.add()
    draw_soil(paper, standing)
    paper.add()
    draw_local(paper, standing, said, today)
    paper.add()
    draw_house(paper, standing, said, today, airy=airy)


def _one_zone(paper: Paper, standing: Standing, said: Mapping[Key, Setting], today: date) -> None:
    paper.heading(f"ZONE {paper.view.zone}", LEGEND)
    for row in _stand_rows(paper.view.zone, standing, paper.width):
        paper.add(row)
    for at, fact in enumerate(zone_facts(paper.view.zone, standing, said, today)):
        draw_fact(paper, fact, main=at == 0)
    paper.add()
    draw_soil(paper, standing)


def _inside(zone: str, facts: Sequence[Fact], standing: Standing, width: int) -> Paper:
    """A zone opened in the table: what grows there and its water, then its facts to stand on."""
    paper = Paper(View(as_of=standing.as_of), width)
    for row in _stand_rows(zone, standing, width):
        paper.add(row)
    for fact in facts:
        draw_fact(paper, fact, indent=3)
    paper.add()
    return paper


def _stand_rows(zone: str, standing: Standing, width: int) -> list[Row]:
    """What grows there, and the water account with its picture."""
    past = standing.history.on(zone, standing.as_of)
    stage = next((one.stage for one in standing.zones if one.zone == zone), "")
    return [*named(stand_words(past, stage), width), *water_rows(past, width)]
