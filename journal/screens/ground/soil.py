"""SOIL TESTS: the newest of each zone and its age, or the line for one."""

from functools import partial

from journal.facts.soil_test import RETEST_BASIS
from journal.line.say import say
from journal.line.words import neat
from journal.reckon.soil_test import newest_test
from journal.reckon.starter import soil_test_days
from journal.record.kinds.soil import SoilTest
from journal.record.lawn import WHOLE
from journal.record.unit import Dimension
from journal.screens.ground.basis import basis_in_full
from journal.screens.ground.fact import dated, named
from journal.screens.ground.words import example
from journal.screens.paper import Paper
from journal.screens.picture import EMPTY_ROW, Ink, Row, Span, Target
from journal.screens.rows import left, middle
from journal.season.history import Past
from journal.standing import Standing

_YEAR = 365.25


def is_stale(test: SoilTest, past: Past) -> bool:
    """Whether it no longer speaks for or against anything."""
    return past.day - test.day >= soil_test_days(past.lawn)[0]


def figures(test: SoilTest) -> list[tuple[str, str]]:
    """(name, words) as the laboratory gave them, its own category first."""
    said = [("pH", f"{test.ph:g}" if test.ph is not None else "")]
    said.append(("P", " ".join(filter(None, (test.p, _ppm(test.p_ppm))))))
    said.append(("K", " ".join(filter(None, (test.k, _ppm(test.k_ppm))))))
    said.append(("organic", neat(test.om_percent, Dimension.PERCENT, "us") if test.om_percent is not None else ""))
    return [(name, words) for name, words in said if words]


def draw_soil(paper: Paper, standing: Standing) -> None:
    """A row a zone, or those of the zone that is looked at."""
    lawn = standing.lawn
    zones = [zone for zone in lawn.zone_names if not paper.view.zone or zone == paper.view.zone]
    name = min(16, max(9, *(len(zone) + 1 for zone in lawn.zone_names)))
    paper.heading("SOIL TESTS")
    for at, zone in enumerate(zones):
        past = standing.history.on(zone, standing.as_of)
        test = newest_test(past)
        head = (Span(" "), Span(left(middle(zone, name - 1), name), Ink.STRONG))
        line = f"soil {example('soil-test', lawn)}{'' if zone == WHOLE else f' {zone}'}"
        if test is None:
            row = (*head, Span("·  none on file   ", Ink.DIM), Span(line, Ink.KEY))
            paper.stop(row, Target(0, line="soil ", name=f"soil {zone}"), lit=1, main=at == 0)
            continue
        stale = is_stale(test, past)
        paper.stop(
            (*head, *_row(test, past, " ! stale" if stale else "")),
            Target(0, line="soil ", name=f"soil {zone}") if stale else Target(0, entry=test.id),
            lit=1,
            main=at == 0,
            line=None if stale else partial(say, test, lawn),
            details=partial(_opened, test, past, paper.width),
        )


def _row(test: SoilTest, past: Past, old: str) -> Row:
    words = "  ".join(f"{name} {value}" for name, value in figures(test))
    day = dated(test.date, past.date)
    return Span(f"{day:<12} "), Span(f"{_age(test, past):<8}", Ink.DIM), Span(old, Ink.LATE), Span(f" {words}")


def _age(test: SoilTest, past: Past) -> str:
    days = past.day - test.day
    return f"{days} d" if days < 60 else f"{days / 30.4:.0f} mo" if days < 700 else f"{days / _YEAR:.1f} yr"


def _opened(test: SoilTest, past: Past, width: int) -> list[Row]:
    usual, local = (f"{days / 30.4:.0f} months" for days in soil_test_days(past.lawn))
    age = f"stale: older than {usual}" if is_stale(test, past) else f"speaks for {usual}"
    said = [("taken", f"{dated(test.date, past.date)}, {_age(test, past)} ago"), *figures(test), ("age", age)]
    if local != usual:
        said.append(("local", f"your local rule lets it speak for phosphorus for {local}"))
    said += [(name, words.removeprefix("published; ")) for name, words in basis_in_full(RETEST_BASIS)]
    said.append(("remark", test.remark))
    return [*named([pair for pair in said if pair[1]], width), EMPTY_ROW]


def _ppm(value: float | None) -> str:
    return neat(value, Dimension.PPM, "us") if value is not None else ""
