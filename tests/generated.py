"""Made-up entries in any number: an ordinary lawn's ten years, repeated more densely as the number grows."""

import math
import random
from datetime import date, timedelta

from journal.record.entry import Entry
from journal.record.kinds.cultivation import Cultivation
from journal.record.kinds.equipment import Equipment
from journal.record.kinds.feeding import Feeding
from journal.record.kinds.hiding import Snooze
from journal.record.kinds.intention import Intention
from journal.record.kinds.mowing import Mowing
from journal.record.kinds.photo import Photo
from journal.record.kinds.seeding import Seeding
from journal.record.kinds.setting import Setting
from journal.record.kinds.sighting import Height, Sighting
from journal.record.kinds.soil import SoilTest
from journal.record.kinds.stock import Stock
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
        ("product", "dry-creek", {"kind": "weed", "actives": "2,4-D 30%; dicamba 3%", "form": "liquid",
                                  "rate": "1.1floz/k 1.5floz/k", "repeat": "28d", "mow_before": "2d"}),
        ("product", "hill-guard", {"kind": "pre-emergent", "actives": "prodiamine 0.38%", "form": "granule"}),
        ("product", "grub-stone", {"kind": "insect", "actives": "imidacloprid 0.5%", "form": "granule"}),
    )  # fmt: skip
    return [
        Setting(id=f"S{n:05}", date=FIRST, what=what, name=name, values=tuple(values.items()))
        for n, (what, name, values) in enumerate(facts)
    ]


def _often(id: str, day: date, zones: tuple[str, ...], chance: random.Random) -> Entry:
    """What a keen owner writes down through the season, and now and then in winter."""
    roll = chance.random()
    if roll < 0.34:
        return Mowing(id=id, date=day, zones=zones, height_mm=76.2, clippings="bag", minutes=40.0)
    if roll < 0.66:
        return Watering(id=id, date=day, zones=zones, minutes=20.0)
    if roll < 0.76:
        return Rain(id=id, date=day, depth_mm=chance.uniform(1, 30))
    if roll < 0.84:
        return Height(id=id, date=day, zones=zones, height_mm=95.0)
    if roll < 0.92:
        return Photo(id=id, date=day, zones=zones, file=f"{id}.jpg", point=chance.choice(("gate", "porch")))
    return Sighting(id=id, date=day, zones=zones, subject=chance.choice(SEEN))


def _seldom(id: str, day: date, zones: tuple[str, ...], chance: random.Random) -> Entry:
    """What is done a few times a year however keen the owner is."""
    roll = chance.random()
    if roll < 0.34:
        return Feeding(id=id, date=day, zones=zones, product="pond-ridge", rate_g_per_m2=15.0)
    if roll < 0.5:
        return Treatment(id=id, date=day, zones=zones, product="dry-creek", amount_ml=150.0, wind_m_s=1.5)
    if roll < 0.58:
        return Treatment(id=id, date=day, zones=zones, product="hill-guard", amount_g=4000.0)
    if roll < 0.64:
        return Treatment(id=id, date=day, zones=zones, product="grub-stone", amount_g=3000.0)
    if roll < 0.7:
        return Cultivation(id=id, date=day, zones=zones, what="aerate", passes=2.0)
    if roll < 0.76:
        return Seeding(id=id, date=day, zones=zones, product="three-river", amount_g=4000.0)
    if roll < 0.8:
        return SoilTest(id=id, date=day, zones=zones, ph=6.2, p="low", k_ppm=95.0)
    if roll < 0.86:
        return Equipment(id=id, date=day, what="sharpen")
    if roll < 0.92:
        return Stock(id=id, date=day, product="pond-ridge", count=1.0, size_g=22680.0, cost=46.0)
    if roll < 0.96:
        return Intention(id=id, date=day, zones=zones, what="aerate", target=day + timedelta(20))
    return Snooze(id=id, date=day, zones=zones, flag="mow-gap", until=day + timedelta(7))


SEEN = ("dandelion", "clover", "red-thread", "dormant", "green", "traffic", "dry", "emerged")
SELDOM = 300
"""Feedings, treatments, sowings and the like in ten years: 30 a year on three zones."""
SHARE_OF_WEATHER = 0.4
"""Of a book whose owner takes in the daily weather; one line a day at the most."""


def _weather(count: int, chance: random.Random) -> list[Entry]:
    """The last so many days' weather, warm in July and cold in January."""
    made: list[Entry] = []
    for at in range(min(count, (LAST - FIRST).days + 1)):
        day = LAST - timedelta(at)
        high = 13 + 14 * math.sin((day.timetuple().tm_yday - 110) / 365 * 2 * math.pi) + chance.uniform(-6, 6)
        rain = chance.choice((0.0, 0.0, 0.0, 9.0))
        made.append(Weather(id=f"W{at:05}", date=day, high_c=high, low_c=high - 10, rain_mm=rain))
    return made


def generated(count: int) -> list[Entry]:
    """A lawn's settings and `count` entries over ten years, always the same for the same count."""
    chance = random.Random(count)
    span = (LAST - FIRST).days
    weather = _weather(int(count * SHARE_OF_WEATHER), chance)
    made = [*_settings(), *weather]
    for n in range(count - len(weather)):
        day = FIRST + timedelta(chance.randrange(span + 1))
        if not 4 <= day.month <= 11 and chance.random() < 0.9:
            day = day.replace(month=chance.randrange(4, 11), day=min(day.day, 28))
        zones = ZONES if chance.random() < 0.4 else (chance.choice(ZONES),)
        make = _seldom if n < min(SELDOM, count // 20) else _often
        made.append(make(f"E{n:07}", min(day, LAST), zones, chance))
    return made
