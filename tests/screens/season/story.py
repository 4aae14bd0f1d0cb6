"""Books to look at: a renovation of three zones, its weather, and what stands on a day."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from journal.facts.factors import celsius, mm
from journal.plan.step import State, Step
from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.remark import Remark
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.setting import Setting
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.soil import SoilTest
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.record.kinds.weather import Weather
from journal.record.unit import POUND
from journal.rules.flag import Flag, Level
from journal.season.history import History
from journal.standing import Standing
from journal.standing import standing as judged

MAY = date(2027, 5, 3)
BOTH = ("front", "back")
ALL = ("front", "back", "verge")
LB = float(POUND)


def day(text: str) -> date:
    """A date as it is written."""
    return date.fromisoformat(text)


def mow(on: str, inches: float, *zones: str) -> Entry:
    """A cut."""
    return Mowing(date=day(on), zones=zones, height_mm=mm(inches), clippings="bag")


def feed(on: str, product: str, pounds: float | None, *zones: str) -> Entry:
    """So many pounds over these zones."""
    return Feeding(date=day(on), zones=zones, product=product, amount_g=None if pounds is None else pounds * LB)


def treat(on: str, product: str, pounds: float, *zones: str) -> Entry:
    """A product against weeds."""
    return Treatment(date=day(on), zones=zones, product=product, amount_g=pounds * LB)


def sow(on: str, pounds: float | None, *zones: str) -> Entry:
    """The usual seed."""
    grams = None if pounds is None else pounds * LB
    return Seeding(date=day(on), zones=zones, product="three-river-blend", amount_g=grams)


def work(on: str, what: str, *zones: str) -> Entry:
    """Work on the soil."""
    return Cultivation(date=day(on), zones=zones, what=what)


def water(on: str, inches: float | None, *zones: str) -> Entry:
    """Water by the sprinkler."""
    return Watering(date=day(on), zones=zones, depth_mm=None if inches is None else mm(inches))


def see(on: str, subject: str, *zones: str) -> Entry:
    """Something seen."""
    return Sighting(date=day(on), zones=zones, subject=subject)


def photo(on: str) -> Entry:
    """A picture from the gate."""
    return Photo(date=day(on), zones=("front",), file=f"{on}.jpg", point="gate")


def set_(what: str, called: str, /, **values: str) -> Entry:
    """Settings of the lawn, a zone or a product."""
    return Setting(date=date(2026, 8, 20), what=what, name=called, values=tuple(values.items()))


def ground(**lawn: str) -> list[Entry]:
    """Three zones and a small shed."""
    given = {
        "name": "North Lane", "last_frost": "05-06", "first_frost": "10-05", "growth": "04-10 11-10",
        "grass": "kentucky bluegrass, perennial ryegrass", **lawn,
    }  # fmt: skip
    return [
        set_("lawn", "", **given),
        set_("zone", "front", area="2400sqft", irrigated="yes", rate="0.6in/h"),
        set_("zone", "back", area="3100sqft"),
        set_("zone", "verge", area="1200sqft"),
        set_("product", "oat-hill-starter", kind="starter", analysis="18-24-6"),
        set_("product", "pond-ridge", kind="fertilizer", analysis="24-0-11", slow="30% of n"),
        set_("product", "mill-lime", kind="lime"),
        set_("product", "three-river-blend", kind="seed", mix="kentucky bluegrass 50%, perennial ryegrass 50%"),
        set_("product", "gate-barrier", kind="pre-emergent", to_seed="112d"),
        set_("product", "dock-and-clover", kind="weed", to_seed="28d"),
    ]


def renovation() -> list[Entry]:
    """Sown in September, fed, cut through the autumn; a barrier and a gap in spring."""
    return numbered(
        [
            *ground(),
            mow("2026-08-21", 3, *ALL),
            treat("2026-08-25", "dock-and-clover", 2, *BOTH),
            photo("2026-08-26"),
            mow("2026-09-04", 1.5, *BOTH),
            work("2026-09-05", "aerate", *BOTH),
            sow("2026-09-06", 9, *BOTH),
            feed("2026-09-06", "oat-hill-starter", 22, *BOTH),
            water("2026-09-07", 0.3, *BOTH),
            water("2026-09-10", 0.4, *BOTH),
            water("2026-09-14", 0.5, *BOTH),
            water("2026-09-18", 1, *BOTH),
            water("2026-09-24", 0.8, *BOTH),
            mow("2026-09-09", 3, "verge"),
            see("2026-09-15", "emerged", *BOTH),
            mow("2026-09-18", 3, "verge"),
            mow("2026-09-30", 3, "verge"),
            mow("2026-10-04", 3.5, *BOTH),
            see("2026-10-05", "crabgrass", "verge"),
            mow("2026-10-08", 3, *BOTH),
            feed("2026-10-12", "pond-ridge", 16, *BOTH),
            mow("2026-10-15", 3, *ALL),
            photo("2026-10-16"),
            mow("2026-10-22", 3, *BOTH),
            mow("2026-11-01", 2.8, *ALL),
            photo("2026-11-20"),
            SoilTest(date=day("2027-03-20"), zones=("front",), ph=6.1, p="low"),
            photo("2027-04-01"),
            mow("2027-04-08", 2.8, *BOTH),
            treat("2027-04-12", "gate-barrier", 12, *BOTH),
            mow("2027-04-14", 2.5, "verge"),
            mow("2027-04-15", 3, *BOTH),
            mow("2027-04-18", 3, *BOTH),
            feed("2027-04-20", "pond-ridge", 11, *BOTH),
            mow("2027-04-22", 3, *BOTH),
            mow("2027-04-28", 3, "verge"),
            Height(date=day("2027-05-01"), zones=BOTH, height_mm=mm(3.9)),
            Remark(date=day("2027-05-02"), text="moles along the fence"),
        ]
    )


def numbered(entries: Iterable[Entry]) -> list[Entry]:
    """With ids in the order in which they were written."""
    return [replace(entry, id=f"{number:06}", line=entry.kind) for number, entry in enumerate(entries)]


def weather(first: date, last: date) -> list[Entry]:
    """Every day's weather: warm and cold by the season, rain every fifth day."""
    found: list[Entry] = []
    for ordinal in range(first.toordinal(), last.toordinal() + 1):
        when = date.fromordinal(ordinal)
        swing = abs((when.timetuple().tm_yday + 170) % 365 - 182) / 182
        high = celsius(round(30 + 55 * swing) + ordinal % 7)
        rain = mm((ordinal % 4 + 1) / 10) if ordinal % 5 == 0 else 0.0
        found.append(Weather(id=f"w{ordinal}", date=when, high_c=high, low_c=high - 10, rain_mm=rain))
    return found


def years(first: int, last: int) -> list[Entry]:
    """Plain years: a cut a week, four feedings, a photo a month."""
    found: list[Entry] = ground()
    for year in range(first, last + 1):
        start = date(year, 4, 12).toordinal()
        found += [mow(str(date.fromordinal(start + 7 * week)), 3, *ALL) for week in range(30)]
        found += [feed(f"{year}-{month:02}-01", "pond-ridge", 16, *ALL) for month in (5, 6, 9, 10)]
        found += [photo(f"{year}-{month:02}-15") for month in range(1, 13)]
    return numbered(found)


def standing(
    found: Iterable[Entry], as_of: date = MAY, *, flags: Iterable[Flag] = (), steps: Iterable[Step] = ()
) -> Standing:
    """Those entries on that day, with flags and steps as given and nothing else said of them."""
    raised = tuple(flags)
    return replace(
        judged(History.of(found), as_of),
        flags=raised,
        hidden=(),
        steps=tuple(steps),
        counts=Counter(flag.level for flag in raised),
    )


def flag(rule: str, level: Level, rose: str, *zones: str) -> Flag:
    """A flag that stands."""
    return Flag(
        id=f"{rule}/{','.join(zones)}", rule=rule, level=level, zones=zones, rose=day(rose),
        headline=f"{rule} stands", why="", do="put it right", clears="once done", numbers={}, basis=(),
    )  # fmt: skip


FLAGS = (
    flag("mow-gap", Level.LATE, "2027-05-03", "front", "back"),
    flag("photo-gap", Level.NOTE, "2027-04-20", "front"),
)
STEPS = (
    Step(
        step="mow", zones=BOTH, state=State.LATE, earliest=day("2027-04-29"), latest=day("2027-05-02"),
        line="mow front back 3in", title="mow", why="11 days since the last cut",
    ),
    Step(
        step="feed", zones=BOTH, state=State.WAITING, earliest=day("2027-06-01"), title="feed",
        best=(day("2027-06-08"), day("2027-06-14")), latest=day("2027-06-20"), amount="11 lb pond-ridge",
        line="feed pond-ridge 11lb front back", why="fed 20 Apr",
    ),
    Step(
        step="seed", zones=("front",), state=State.WAITING, earliest=day("2027-08-10"), title="seed",
        best=(day("2027-08-20"), day("2027-09-10")), latest=day("2027-09-25"),
    ),
)  # fmt: skip


def renovation_in_may() -> Standing:
    """The renovation on 3 May with its weather, flags and steps."""
    return standing([*renovation(), *weather(date(2026, 8, 20), MAY)], flags=FLAGS, steps=STEPS)
