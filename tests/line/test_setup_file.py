"""A set-up file, the guided set-up and settings lines make the same lawn; a wrong value is named with its line."""

from dataclasses import replace
from datetime import date

import pytest

from journal.line.say import say
from journal.line.setup_file import SetupProblem, settings_from_toml
from journal.record.day import MonthDay
from journal.record.fold import LABEL_TERMS, LAWN_TERMS, PRODUCT_TERMS, ZONE_TERMS, fold
from journal.record.lawn import Lawn
from journal.record.product import Age, Content, Range
from journal.record.unit import Dimension
from journal.record.zone import Circuit
from journal.season.history import History
from tests.line.lawns import TODAY, drafted

TOML = """\
# everything that a set-up can say
[lawn]
name = "North Lane"
units = "us"
latitude = 42.3
last_frost = "05-06"
first_frost = "10-05"
growth = ["04-10", "11-10"]
grass = ["kentucky bluegrass", "perennial ryegrass"]
renovated = "2025-09-06"
kept_since = 2026-04-01
treatments_since = 2025-10-01
feeding = "interval"
local_rules = "none"
local_closed = ["12-01", "03-01"]
local_most_n = "0.9lb/k"
local_most_soluble = "0.7lb/k"
local_year_n = "3.2lb/k"
local_slow = "25%"
local_buffer = "25ft"
local_test_months = 36
local_seeding = false
local_sign = "48h"
late_fall = false
normals = "jan 30F 15F 3.1in, jul 82F 60F 3.4in"
height = "3 in"

[[zone]]
name = "front"
area = "2400 sqft"
sun = "full"
irrigated = true
soil = "loam"
rate = "0.6 in/h"
near_water = "30 ft"
trees = true
slope = "gentle"
out_of_view = false
mowing = "self"
grass = ["unknown"]
circuits = [{name = "A", share = 60, rate = "0.5 in/h"}, {name = "B", share = 40, rate = "0.9 in/h"}]

[[product]]
name = "oat-hill-starter"
kind = "starter"
analysis = "18-24-6"
slow = "20% of n"
bag = "48 lb"
cup = "0.5 lb"
n_source = ["urea", "methylene urea"]
actives = ["mesotrione", {name = "prodiamine", percent = 0.38}, {name = "2,4-D", lb_per_gal = 3.8}]
form = "granule"
rate = ["3 lb/k", "4 lb/k"]
[product.label]
to_seed = "0 d"
after_seed = "4 mowings"
repeat = "28 d"
max_per_year = 2
max_amount_per_year = "0.37 floz/k"
temp = ["50F", "85F"]
wind_max = "8 mph"
rain_free = "24 h"
water_in = "0.5 in"
water_in_within = "24 h"
mow_before = "2 d"
mow_after = "3 d"
reentry = "until dry"
buffer = "25 ft"
spot_counts = false
professional = true
site = "residential lawn"

[[product]]
name = "three-river-blend"
kind = "seed"
mix = [{grass = "kentucky bluegrass", percent = 50}, {grass = "perennial ryegrass", percent = 48}]
purity = 97
germination = 85
weed_seed = 0.1
other_crop = 0.1
inert = 2.8
coated = false
rate_basis = "pls"
maker = "hollow creek"
tested = "2026-03"

[[product]]
name = "dew-iron"
kind = "iron"
slow_n = "3.6%"
bottle = "32 floz"
"""

LINES = [
    "set name North Lane units us latitude 42.3 last_frost 05-06 first_frost 10-05 growth 04-10 11-10",
    "set grass kentucky bluegrass, perennial ryegrass",
    "set renovated 2025-09-06 kept_since 2026-04-01 feeding interval local_rules none late_fall no height 3in",
    "set treatments_since 2025-10-01",
    "set local_closed 12-01 03-01 local_most_n 0.9lb/k local_most_soluble 0.7lb/k local_year_n 3.2lb/k",
    "set normals jan 30F 15F 3.1in, jul 82F 60F 3.4in",
    "set local_slow 25% local_buffer 25ft local_test_months 36 local_seeding no local_sign 48h",
    "zone front 2400 sq ft sun full irrigated yes soil loam rate 0.6in/h near_water 30ft trees yes",
    "set front slope gentle out_of_view no mowing self grass unknown circuits A 60% 0.5in/h; B 40% 0.9in/h",
    "product oat-hill-starter starter analysis 18-24-6 slow 20% of n bag 48lb cup 0.5lb n_source urea, methylene urea",
    "set oat actives mesotrione; prodiamine 0.38%; 2,4-D 3.8lb/gal form granule rate 3lb/k 4lb/k",
    "set oat to_seed 0d after_seed 4 mowings repeat 28d max_per_year 2 max_amount_per_year 0.37floz/k temp 50F 85F",
    "set oat wind_max 8mph rain_free 24h water_in 0.5in water_in_within 24h mow_before 2d mow_after 3d",
    "set oat reentry until dry buffer 25ft spot_counts no professional yes site residential lawn",
    "product three-river-blend kind seed mix kentucky bluegrass 50%, perennial ryegrass 48% purity 97 germination 85",
    "set three weed_seed 0.1 other_crop 0.1 inert 2.8 coated no rate_basis pls maker hollow creek tested 2026-03",
    "product dew-iron kind iron slow_n 3.6% bottle 32 fl oz",
]


def by_lines(*lines: str) -> Lawn:
    history = History.of(())
    for number, line in enumerate(lines):
        history = history.plus(replace(drafted(line, history), id=f"s{number:03}"))
    return history.lawn(TODAY)


def by_file(toml: str = TOML) -> Lawn:
    return fold(settings_from_toml(toml, TODAY))


def test_the_file_and_the_lines_say_every_key_there_is() -> None:
    said = {(what, key) for what, _, key in by_file().said}
    assert {key for what, key in said if what == "lawn"} == set(LAWN_TERMS)
    assert {key for what, key in said if what == "zone"} == set(ZONE_TERMS)
    assert {key for what, key in said if what == "product"} == {*PRODUCT_TERMS, *LABEL_TERMS}


def test_the_file_and_the_lines_make_the_same_lawn() -> None:
    assert by_lines(*LINES) == by_file()
    assert by_file().problems == ()


def test_the_values_are_those_that_were_written() -> None:
    lawn = by_file()
    front, oat, blend, iron = lawn.zones[0], *lawn.products
    assert (lawn.latitude, lawn.last_frost, lawn.renovated, lawn.kept_since, lawn.height_mm) == (
        42.3, MonthDay(5, 6), date(2025, 9, 6), date(2026, 4, 1), 76.2,
    )  # fmt: skip
    assert lawn.growth == (MonthDay(4, 10), MonthDay(11, 10))
    assert lawn.local_closed == (MonthDay(12, 1), MonthDay(3, 1))
    assert (lawn.local_slow_percent, lawn.local_buffer_mm, lawn.local_test_months, lawn.local_seeding) == (
        25, 7620, 36, False,
    )  # fmt: skip
    assert front.area_m2 == pytest.approx(2400 * 0.09290304, rel=1e-15)
    assert front.circuits == (Circuit("A", 60, 12.7), Circuit("B", 40, 22.86))
    assert front.water_rate_mm_h == pytest.approx(0.66 * 25.4)
    assert (front.rate_mm_h, front.near_water_mm, front.irrigated, front.trees) == (15.24, 9144, True, True)
    assert (oat.analysis, oat.slow, oat.bag_g) == ((18, 24, 6), 0.2, pytest.approx(48 * 453.59237))
    assert oat.actives[:2] == (Content("mesotrione"), Content("prodiamine", percent=0.38))
    assert oat.actives[2].name == "2,4-d"
    assert oat.actives[2].g_per_l == pytest.approx(3.8 * 453.59237 / 3.785411784)
    assert oat.rate == Range(pytest.approx(14.647, abs=1e-3), pytest.approx(19.530, abs=1e-3), Dimension.MASS_RATE)
    assert (oat.label.to_seed_days, oat.label.after_seed, oat.label.rain_free_min) == (0, Age(0, 4), 1440)
    assert oat.label.temp_c == (pytest.approx(10), pytest.approx(29.444, abs=1e-3))
    assert (oat.label.professional, oat.label.spot_counts, oat.label.reentry) == (True, False, "until dry")
    assert [*blend.shares] == ["kentucky bluegrass", "perennial ryegrass"]
    assert [*blend.shares.values()] == pytest.approx([5000 / 98, 4800 / 98])
    assert (blend.tested, blend.rate_basis, blend.germination) == (date(2026, 3, 1), "pls", 85)
    assert (iron.liquid, oat.liquid, iron.slow) == (True, False, None)


def test_every_setting_can_be_said_as_a_line_that_makes_the_same_lawn() -> None:
    settings = settings_from_toml(TOML, TODAY)
    lawn = fold(settings)
    assert by_lines(*(say(setting, lawn) for setting in settings)) == lawn


def test_a_metric_file_keeps_metric_values_as_they_are() -> None:
    lawn = by_file(
        '[lawn]\nname = "M"\nunits = "metric"\nheight = "75 mm"\n[[zone]]\nname = "front"\narea = "220 m2"\n'
        'rate = "15 mm/h"\n[[product]]\nname = "lime-stone"\nkind = "lime"\nbag = "20 kg"\n'
        'rate = ["20 g/m2", "30 g/m2"]\n'
    )
    assert (lawn.units, lawn.height_mm, lawn.zones[0].area_m2, lawn.zones[0].rate_mm_h) == ("metric", 75, 220, 15)
    assert lawn.products[0].bag_g == 20_000
    assert lawn.products[0].rate == Range(20, 30, Dimension.MASS_RATE)


def test_only_the_name_is_required() -> None:
    lawn = by_file('[lawn]\nname = "Bare"\n')
    assert (lawn.name, lawn.units, lawn.zone_names, lawn.products) == ("Bare", "us", ("lawn",), ())


# what stands in place of what, the key, and a part of the reason
WRONG = [
    ('name = "North Lane"', 'nam = "North Lane"', "lawn.name", "needs a name"),
    ('units = "us"', 'units = "uk"', "lawn.units", "us, metric"),
    ("latitude = 42.3", "latitude = 142.3", "lawn.latitude", "-90 to 90"),
    ("latitude = 42.3", "latitude = nan", "lawn.latitude", "-90 to 90"),
    ('last_frost = "05-06"', 'last_frost = "05-32"', "lawn.last_frost", "like 05-06"),
    ('last_frost = "05-06"', 'last_frst = "05-06"', "lawn.last_frst", "Did you mean last_frost?"),
    ('growth = ["04-10", "11-10"]', 'growth = ["04-10"]', "lawn.growth", "two days"),
    ('grass = ["kentucky bluegrass", "perennial ryegrass"]', 'grass = ["moss"]', "lawn.grass", "not a grass"),
    ('renovated = "2025-09-06"', 'renovated = "2025-02-30"', "lawn.renovated", "calendar"),
    ("kept_since = 2026-04-01", "kept_since = 2026-04-01T10:00:00", "lawn.kept_since", "calendar"),
    ("late_fall = false", 'late_fall = "perhaps"', "lawn.late_fall", "yes or no"),
    ('local_closed = ["12-01", "03-01"]', 'local_closed = ["12-01"]', "lawn.local_closed", "two days"),
    ('local_most_n = "0.9lb/k"', 'local_most_n = "0.9lb"', "lawn.local_most_n", "wrong kind of unit"),
    ('local_year_n = "3.2lb/k"', 'local_year_n = "0lb/k"', "lawn.local_year_n", "more than nothing"),
    ('local_slow = "25%"', 'local_slow = "120%"', "lawn.local_slow", "0 to 100"),
    ("local_test_months = 36", "local_test_months = 3.5", "lawn.local_test_months", "whole months"),
    ("local_seeding = false", 'local_seeding = "perhaps"', "lawn.local_seeding", "yes or no"),
    ('height = "3 in"', 'height = "3 lb"', "lawn.height", "wrong kind of unit"),
    ('height = "3 in"', "height = 3", "lawn.height", "unit is missing"),
    ('area = "2400 sqft"', 'area = "0 sqft"', "zone.area", "more than nothing"),
    ('area = "2400 sqft"', "area = {a = 1}", "zone.area", "a text, a number"),
    ('sun = "full"', 'sun = "ful"', "zone.sun", "Did you mean full?"),
    ("irrigated = true", "irigated = true", "zone.irigated", "Did you mean irrigated?"),
    ('{name = "B", share = 40', '{name = "B", share = 50', "zone.circuits", "100"),
    ('{name = "B", share = 40', '{name = "B", shares = 40', "zone.circuits", "share is missing"),
    ('{name = "B", share = 40', '{name = "A", share = 40', "zone.circuits", "twice"),
    ('{name = "B", share = 40', '{name = "B", share = true', "zone.circuits", ""),
    ('name = "front"', 'name = "mow"', "zone.name", "already means"),
    ('name = "front"', 'name = "Front Yard"', "zone.name", "one word"),
    ('name = "front"', 'name = "dew-iron"', "product.name", "named twice"),
    ('kind = "starter"', 'kind = "stater"', "product.kind", "Did you mean starter?"),
    ('kind = "starter"', 'brand = "x"', "product.kind", "what kind"),
    ('analysis = "18-24-6"', 'analysis = "18-24"', "product.analysis", "three numbers"),
    ('slow = "20% of n"', 'slow = "20%"', "product.slow", "slow_n 3.6%"),
    ("percent = 0.38}", "percent = 0.38, percen = 1}", "product.actives", "Did you mean percent?"),
    ("percent = 0.38}", "percent = true}", "product.actives", ""),
    ('rate = ["3 lb/k", "4 lb/k"]', 'rate = ["4 lb/k", "3 lb/k"]', "product.rate", "low rate comes first"),
    ('to_seed = "0 d"', 'to_sed = "0 d"', "product.label.to_sed", "Did you mean to_seed?"),
    ("max_per_year = 2", "max_per_year = true", "product.label.max_per_year", ""),
    ('temp = ["50F", "85F"]', 'temp = ["50F"]', "product.label.temp", "lowest and highest"),
    ('buffer = "25 ft"', 'buffer = "25"', "product.label.buffer", "unit is missing"),
    ("percent = 48}", "percent = 480}", "product.mix", "add up"),
    ("purity = 97", "purity = 197", "product.purity", "1 to 100"),
    ('tested = "2026-03"', 'tested = "2026-3"', "product.tested", "like 2026-03"),
    ('bottle = "32 floz"', 'bottle = "' + "9" * 5000 + ' floz"', "product.bottle", "longer than"),
]


@pytest.mark.parametrize(("right", "wrong", "key", "why"), WRONG, ids=[f"{row[2]}-{row[1][:24]}" for row in WRONG])
def test_a_wrong_value_names_its_key_and_line(right: str, wrong: str, key: str, why: str) -> None:
    assert TOML.count(right) == 1
    text = TOML.replace(right, wrong)
    with pytest.raises(SetupProblem) as caught:
        settings_from_toml(text, TODAY)
    problem = caught.value
    assert problem.key == key
    assert why in problem.why
    line = next(number for number, row in enumerate(text.split("\n"), 1) if wrong in row)
    table = next((n for n in range(line, 0, -1) if text.split("\n")[n - 1].startswith("[")), 0)
    known = {"product.name": None, "lawn.name": table, "product.kind": line if "kind" in wrong else table}
    if (expected := known.get(key, line)) is not None:
        assert problem.line == expected
    assert f"line {problem.line}, " in str(problem)


@pytest.mark.parametrize(
    ("text", "line", "why"),
    [('[lawn]\nname = "x\n', 2, "TOML"), ("lawn = 3", 1, "needs a name"),
     ("[lawns]\nname = 'x'", 1, "Did you mean lawn?"),
     ("[lawn]\nname = 'x'\n[zone]\nname = 'front'", 3, "two brackets"),
     ("[lawn]\nname='x'\n[[zone]]\narea='3m2'", 3, "a name"),
     ("zone = [3]\n[lawn]\nname = 'x'", 1, "two brackets"), ("", 0, "needs a name"),
     ("[lawn]\nx = " + "[" * 3000, 0, "TOML"),
     ("[lawn]\nname = 'x'\nlatitude = " + "9" * 5000, 0, ""),
     ("[lawn]\nname = 'x'\n[[product]]\nname = 'pp'\nkind = 'seed'\nlabel = {repeat = '1x'}", 6, "wrong kind"),
     ("[lawn]\nname = 'x'\n[[product]]\nname = 'pp'\nkind = 'seed'\nlabel.repeat = '1x'", 6, "wrong kind")],
)  # fmt: skip
def test_a_file_that_is_no_set_up_is_refused(text: str, line: int, why: str) -> None:
    with pytest.raises(SetupProblem) as caught:
        settings_from_toml(text, TODAY)
    assert why in caught.value.why
    if line:
        assert caught.value.line == line


def test_the_right_one_of_several_tables_is_named() -> None:
    zones = "".join(f'[[zone]]\nname = "zone-{n}"\narea = "{n} sqft"\n' for n in "123")
    with pytest.raises(SetupProblem) as caught:
        settings_from_toml('[lawn]\nname = "x"\n' + zones.replace("2 sqft", "2 lb"), TODAY)
    assert (caught.value.key, caught.value.line) == ("zone.area", 8)


def test_a_byte_order_mark_and_windows_line_ends_are_no_hindrance() -> None:
    assert fold(settings_from_toml("\ufeff" + TOML.replace("\n", "\r\n"), TODAY)) == by_file()
