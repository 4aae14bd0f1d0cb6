"""Made-up entries in any number: an ordinary lawn's ten years, repeated more densely as the number grows."""

import random
from datetime import date, timedelta

from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.setting import Setting
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.treatment import Treatment
from journal.record.kinds.watering import Watering
from journal.record.kinds.weather import Rain, Weather

FIRST, LAST = date(2017, 4, 1), date(2027, 5, 2)
TODAY = date(2027, 5, 3)
ZONES = ("front", "back", "side")


def _settings() -> list[Entry]:
    facts: tuple[tuple[str, str, dict[str, str]], ...] = (
        ("lawn", "", {"name": "Mill Lane", "last_frost": "05-06", "first_frost": "10-05",
                      "grass": "kentucky bluegrass, perennial ryegrass"}),
        ("zone", "front", {"area": "2400sqft", "irrigated": "yes", "rate": "0.6in/h"}),
        ("zone", "back", {"area": "3100sqft"}),
        ("zone", "side", {"area": "1200sqft"}),
        ("product", "oat-hill-starter", {"kind": "starter", "analysis": "18-24-6", "slow": "20% of n", "bag": "48lb"}),
        ("product", "pond-ridge", {"kind": "fertilizer", "analysis": "24-0-11", "slow": "40% of n", "bag": "50lb"}),
        ("product", "three-river", {"kind": "seed", "mix": "kentucky bluegrass 50%, perennial ryegrass 50%"}),
        ("product", "dry-creek", {"kind": "weed", "actives": "2,4-D 30%; dicamba 3%", "form": "liquid"}),
    )  # fmt: skip
    return [
        Setting(id=f"S{n:05}", date=FIRST, what=what, name=name, values=tuple(values.items()))
        for n, (what, name, values) in enumerate(facts)
    ]


def _often(id: str, day: date, zones: tuple[str, ...], chance: random.Random) -> Entry:
    """What a keen owner writes down every day."""
    roll = chance.random()
    if roll < 0.36:
        return Mowing(id=id, date=day, zones=zones, height_mm=76.2, clippings="bag", minutes=40.0)
    if roll < 0.64:
        return Watering(id=id, date=day, zones=zones, minutes=20.0)
    if roll < 0.82:
        return Weather(id=id, date=day, high_c=chance.uniform(5, 32), low_c=0.0, rain_mm=chance.choice((0.0, 0.0, 8.0)))
    if roll < 0.92:
        return Rain(id=id, date=day, depth_mm=chance.uniform(1, 30))
    if roll < 0.96:
        return Height(id=id, date=day, zones=zones, height_mm=95.0)
    return Sighting(id=id, date=day, zones=zones, subject=chance.choice(("dandelion", "clover", "red-thread")))


def _seldom(id: str, day: date, zones: tuple[str, ...], chance: random.Random) -> Entry:
    """What is done a few times a year however keen the owner is."""
    roll = chance.random()
    if roll < 0.4:
        return Feeding(id=id, date=day, zones=zones, product="pond-ridge", rate_g_per_m2=15.0)
    if roll < 0.7:
        return Treatment(id=id, date=day, zones=zones, product="dry-creek", amount_ml=150.0, wind_m_s=1.5)
    if roll < 0.85:
        return Cultivation(id=id, date=day, zones=zones, what="aerate", passes=2.0)
    return Seeding(id=id, date=day, zones=zones, product="three-river", amount_g=4000.0)


SELDOM = 240
"""Feedings, treatments, sowings and the like in ten years: 24 a year on three zones."""


def generated(count: int) -> list[Entry]:
    """A lawn's settings and `count` entries over ten years, always the same for the same count."""
    chance = random.Random(count)
    span = (LAST - FIRST).days
    made = _settings()
    for n in range(count):
        day = FIRST + timedelta(chance.randrange(span + 1))
        zones = ZONES if chance.random() < 0.4 else (chance.choice(ZONES),)
        make = _seldom if n < min(SELDOM, count // 20) else _often
        made.append(make(f"E{n:07}", day, zones, chance))
    return made
