"""A lawn and a session that needs no disk: the real line, a standing made up for the test."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from journal.facts.citation import practice
from journal.line.complete import Completion, complete
from journal.line.read import read, read_change
from journal.line.reading import Reading
from journal.line.setup_questions import settings_from_answers
from journal.line.words import in_words
from journal.plan.step import State, Step
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.record.kinds.weather import Rain
from journal.rules.flag import Flag, Level, NumberUsed
from journal.season.history import History
from journal.standing import Preflight, Standing, ZoneFacts

TODAY = date(2027, 5, 3)
ANSWERS = {
    "name": "North Lane",
    "units": "us",
    "zones": "front 2400sqft, back 3100sqft, side 1200sqft",
    "frost": "05-06 10-05",
    "grass": "kentucky bluegrass, perennial ryegrass",
}


def product(name: str, **values: str) -> Setting:
    """A product of the shed."""
    return Setting(date=date(2026, 4, 1), what="product", name=name, values=tuple(values.items()))


def lawn_settings() -> list[Setting]:
    """Three zones and four products, with ids."""
    made = [
        *settings_from_answers(ANSWERS, date(2026, 4, 1)),
        product("pond-ridge", kind="fertilizer", analysis="24-0-11", slow="30% of n", rate="2.5lb/k 3.5lb/k"),
        product("oat-hill-starter", kind="starter", analysis="18-24-6", rate="3lb/k 4lb/k", bag="48lb"),
        product("three-river-blend", kind="seed", mix="kentucky bluegrass 50%, fine fescue 50%", rate="3lb/k 4lb/k"),
        product("well-field", kind="weed", actives="2,4-D", rate="1.1floz/k 1.5floz/k", form="liquid"),
    ]
    return [replace(setting, id=f"0{at:03}") for at, setting in enumerate(made)]


def diary() -> list[Entry]:
    """The weeks before TODAY."""
    three = ("front", "back", "side")
    made: list[Entry] = [
        Cultivation(date=date(2026, 9, 5), zones=three, what="aerate", passes=2.0),
        Feeding(date=date(2027, 4, 20), zones=("front", "back"), product="pond-ridge", amount_g=4990.0),
        Mowing(date=date(2027, 4, 22), zones=("front", "back"), height_mm=76.2, clippings="bag"),
        Watering(date=date(2027, 4, 25), zones=("back",), minutes=20.0),
        Mowing(date=date(2027, 4, 28), zones=("side",), height_mm=76.2, clippings="bag"),
        Treatment(date=date(2027, 4, 12), zones=("side",), product="well-field", amount_ml=40.0),
        Rain(date=date(2027, 5, 2), depth_mm=7.6),
    ]
    return [replace(entry, id=f"1{at:03}", line=f"typed {at}") for at, entry in enumerate(made)]


def flag(rule: str, level: Level, *zones: str, headline: str, **more: object) -> Flag:
    """A flag with every part filled in."""
    made = Flag(
        id=f"{rule}/{'+'.join(zones)}",
        rule=rule,
        level=level,
        zones=zones,
        rose=date(2027, 5, 3),
        headline=headline,
        why="The grass has been growing all that time; a late cut takes more of it at once, and that sets it back.",
        do="Mow before it is longer: `mow front back 3in`.",
        clears="a mowing",
        evidence=("1002",),
        numbers={"days": NumberUsed("days", "10 d", "default")},
        basis=(practice("a bulletin says by growth, one third at a time"),),
    )
    return replace(made, **more)  # type: ignore[arg-type]


def flags() -> tuple[Flag, ...]:
    """One late, two notes."""
    return (
        flag("mow-gap", Level.LATE, "front", "back", headline="11 days since the last mowing; your number is 10."),
        flag("label-unknown", Level.NOTE, "side", headline="well-field has no re-entry time; used: until dry."),
        flag("photo-gap", Level.NOTE, headline="gate: 32 of 35 days without a picture."),
    )


def steps(as_of: date) -> tuple[Step, ...]:
    """A plan with every state in it."""
    day = timedelta(1)
    return (
        Step(step="mow/front+back", zones=("front", "back"), state=State.LATE, earliest=date(2027, 4, 29),
             best=(date(2027, 4, 29), date(2027, 5, 1)), latest=date(2027, 5, 2), line="mow front back 3in",
             title="mow", why="11 d since 22 Apr", amount="at 2.6-3.5 in"),
        Step(step="water/back", zones=("back",), state=State.OPEN, earliest=as_of, best=(as_of, as_of + day),
             latest=as_of + 2 * day, line="water back 22min", title="water", why="0.4 in short", amount="22 min"),
        Step(step="photo/gate", zones=(), state=State.OPEN, earliest=date(2027, 5, 2), latest=date(2027, 5, 10),
             line="", title="photo gate", why="last 1 Apr, 32 d"),
        Step(step="mow/side", zones=("side",), state=State.WAITING, earliest=date(2027, 5, 6),
             best=(date(2027, 5, 6), date(2027, 5, 7)), latest=date(2027, 5, 8), line="mow side 3in", title="mow",
             why="cut 28 Apr"),
        Step(step="feed/front+back", zones=("front", "back"), state=State.WAITING, earliest=date(2027, 6, 1),
             best=(date(2027, 6, 4), date(2027, 6, 8)), latest=date(2027, 6, 15),
             line="feed pond-ridge 17lb front back", title="feed",
             why="every 6 to 8 weeks", amount="17 lb pond-ridge", waits_for="fed 20 Apr"),
        Step(step="broadleaf/side", zones=("side",), state=State.BARRED, earliest=date(2027, 5, 9),
             line="treat well-field 1.5floz/k side", title="weed spray", waits_for="mown 28 Apr, mow due on the 6th"),
        Step(step="seed/all", zones=("front", "back", "side"), state=State.BARRED, earliest=date(2027, 8, 2),
             line="seed three-river-blend 27lb", title="seed", waits_for="barrier of 12 Apr holds", amount="27 lb"),
    )  # fmt: skip


def zones() -> tuple[ZoneFacts, ...]:
    """The three zones in figures."""
    common = {"n_cap_g_per_m2": 13.2, "growing": True}
    return (
        ZoneFacts(zone="front", area_m2=222.97, cut_mm=76.2, cut_on=date(2027, 4, 22), mown_days_ago=11, n_g_per_m2=2.0,
                  water_mm_7d=17.8, sown_on=date(2026, 9, 6), stage="growing", **common),  # type: ignore[arg-type]
        ZoneFacts(zone="back", area_m2=288.0, cut_mm=76.2, cut_on=date(2027, 4, 22), mown_days_ago=11, n_g_per_m2=2.0,
                  water_mm_7d=7.6, sown_on=date(2026, 9, 6), stage="growing", **common),  # type: ignore[arg-type]
        ZoneFacts(zone="side", area_m2=111.5, cut_mm=76.2, cut_on=date(2027, 4, 28), mown_days_ago=5, n_g_per_m2=0.0,
                  water_mm_7d=7.6, sown_on=None, stage="growing", **common),  # type: ignore[arg-type]
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class PretendSaved:
    """What a save did."""

    entries: tuple[Entry, ...]
    said: str
    raised: tuple[Flag, ...] = ()
    cleared: tuple[Flag, ...] = ()


class Refused(Exception):
    """The disk said no."""


@dataclass
class PretendSession:
    """Keeps everything in memory. `fails` makes the next save fail with these words; `harms` marks lines as harmful."""

    entries: list[Entry] = field(default_factory=lambda: [*lawn_settings(), *diary()])
    today: date = TODAY
    exists: bool = True
    read_only: str = ""
    fails: str = ""
    harms: str = "\0"
    before_save: Callable[[], None] | None = None
    news: list[Entry] = field(default_factory=list)
    made_flags: tuple[Flag, ...] = field(default_factory=flags)
    made_hidden: tuple[Flag, ...] = ()
    done: list[Entry] = field(default_factory=list)
    undone: list[Entry] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.history = History.of(self.entries)

    def standing(self, as_of: date) -> Standing:
        """The same plan and flags on any day."""
        counts = {level: sum(f.level is level for f in self.made_flags) for level in Level}
        lawn = self.history.lawn(as_of)
        facts = zones() if lawn.name == "North Lane" else ()
        return Standing(
            as_of=as_of, history=self.history, lawn=lawn, flags=self.made_flags, hidden=self.made_hidden,
            by_zone=self.made_flags, steps=steps(as_of) if facts else (), zones=facts, counts=counts,
        )  # fmt: skip

    def read(self, text: str) -> Reading:
        """The real line."""
        return read(text, self.history, self.today)

    def read_change(self, id: str, text: str) -> Reading:
        """The real line."""
        return read_change(text, next(e for e in self.entries if e.id == id), self.history, self.today)

    def complete(self, text: str, cursor: int) -> Completion:
        """The real line."""
        return complete(text, cursor, self.history, self.today)

    def judge(self, reading: Reading) -> Preflight:
        """Harm for lines that hold `harms`; a mowing clears mow-gap."""
        if self.harms in reading.text:
            return Preflight((flag("label-rate", Level.HARM, "side", headline="above the label's high rate."),), ())
        mown = reading.draft is not None and reading.draft.kind == "mowing"
        return Preflight((), self.made_flags[:1] if mown else ())

    def save(self, reading: Reading) -> PretendSaved:
        """Keep it, or fail."""
        if self.before_save:
            self.before_save()
        if self.fails:
            raise Refused(self.fails)
        assert reading.draft is not None
        entry = replace(reading.draft, id=reading.draft.id or f"2{len(self.done):03}")
        self.entries = [e for e in self.entries if e.id != entry.id] + [entry]
        self.history = History.of(self.entries)
        self.done.append(entry)
        judged = self.judge(reading)
        return PretendSaved((entry,), in_words(entry, self.history.lawn(self.today), self.today), (), judged.cleared)

    def strike(self, id: str) -> str:
        """Take it out."""
        entry = next(e for e in self.entries if e.id == id)
        self._without(entry)
        return f"struck: {entry.kind}"

    def undo(self) -> str:
        """Take the newest out again."""
        if not self.done:
            raise Refused("Nothing was logged in this window yet.")
        entry = self.done.pop()
        self.undone.append(entry)
        self._without(entry)
        return f"undone: {entry.kind}"

    def redo(self) -> str:
        """Put it back."""
        entry = self.undone.pop()
        self.done.append(entry)
        self.entries.append(entry)
        self.history = History.of(self.entries)
        return f"done again: {entry.kind}"

    def refresh(self) -> bool:
        """Take in what another terminal wrote."""
        if not self.news:
            return False
        self.entries += self.news
        self.news = []
        self.history = History.of(self.entries)
        return True

    def set_up(self, settings: tuple[Entry, ...]) -> None:
        """Make the book."""
        self.entries = [replace(setting, id=f"0{at:03}") for at, setting in enumerate(settings)]
        self.history = History.of(self.entries)
        self.exists = True

    def _without(self, entry: Entry) -> None:
        self.entries = [e for e in self.entries if e.id != entry.id]
        self.history = History.of(self.entries)


def empty_book() -> PretendSession:
    """A folder without a book."""
    return PretendSession(entries=[], exists=False)
