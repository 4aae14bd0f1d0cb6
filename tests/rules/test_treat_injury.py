"""What hurts the grass, what trees take up, and one group used again and again."""

import pytest

from journal.rules.label_group import groups
from tests.rules.treated import flags, shed
from tests.scenario import book, day, later, level, raised

ON = "2026-06-01"
GRASS = 'grass = ["kentucky bluegrass", "perennial ryegrass"]'


def grown(grass: str) -> tuple[str, str]:
    return GRASS, f"grass = [{grass}]"


@pytest.mark.parametrize(
    ("product", "grass", "says"),
    [("leaf-off", '"kentucky bluegrass"', ""), ("leaf-off", '"bentgrass"', "loss"), ("leaf-off", '"unknown"', "note"),
     ("white-tip", '"tall fescue"', "note"), ("warm-leaf", '"kentucky bluegrass"', "note"),
     ("warm-leaf", '"zoysiagrass"', "loss"), ("leaf-mix", '"fine fescue"', "note"),
     ("white-tip", '"fine fescue"', "note"),
     ("spring-wall", '"unknown"', ""), ("plain-can", '"unknown"', "")],
)  # fmt: skip
def test_by_what_grows_there(product: str, grass: str, says: str) -> None:
    diary = book(f"{ON} treat {product} front", on=shed({}, grown(grass)))
    assert level(diary, ON, "treat-injury") == says


def test_any_grass_from_10_percent_on() -> None:
    eleven = ", ".join(f'"{name}"' for name in ("bentgrass", "kentucky bluegrass", "tall fescue"))
    assert level(book(f"{ON} treat leaf-off front", on=shed({}, grown(eleven))), ON, "treat-injury") == "loss"


def test_seedlings_of_fine_fescue_and_mesotrione() -> None:
    own = shed({}, grown('"fine fescue"'))
    diary = book("2026-05-01 seed quick-rye 5lb front", f"{ON} treat white-tip 0.1floz front", on=own)
    assert level(diary, ON, "treat-injury") == "loss"


def test_it_names_grass_and_source_and_stands_30_days() -> None:
    diary = book(f"{ON} treat leaf-off front", on=shed({}, grown('"bentgrass"')))
    flag = raised(diary, ON, "treat-injury")
    assert flag is not None
    assert flag.headline == "leaf-off may hurt bentgrass"
    assert any("Pacific Northwest" in basis.words() for basis in flag.basis)
    assert level(diary, later(ON, 29), "treat-injury") == "loss"
    assert level(diary, later(ON, 30), "treat-injury") == ""


# trees


TREES = ('name = "front"\n', 'name = "front"\ntrees = true\n')


def test_dicamba_where_trees_stand() -> None:
    own = shed({}, TREES)
    flag = raised(book(f"{ON} treat leaf-mix 1floz front", on=own), ON, "tree-root")
    assert flag is not None
    assert (flag.level, flag.subject) == ("loss", "roots")
    assert level(book(f"{ON} feed green-gate 3lb front", on=own), ON, "tree-root") == "loss"
    assert level(book(f"{ON} treat leaf-mix spot front", on=own), ON, "tree-root") == "note"
    assert level(book(f"{ON} treat leaf-off 1floz front", on=own), ON, "tree-root") == ""
    assert level(book(f"{ON} treat leaf-mix 1floz back", on=own), ON, "tree-root", "back") == ""
    assert level(book(f"{ON} treat leaf-mix 1floz front", on=own), later(ON, 30), "tree-root") == ""


def test_an_ester_of_triclopyr_is_taken_up_too() -> None:
    assert flags(book(f"{ON} treat warm-leaf 1floz front temp 60F", on=shed({}, TREES)), ON, "tree-root") == {
        "roots": "loss"
    }


@pytest.mark.parametrize(("temp", "says"), [("70F", ""), ("71F", "note"), ("80F", "note"), ("81F", "loss")])
def test_an_ester_in_warm_air(temp: str, says: str) -> None:
    """Ohio State Univ.: esters are volatile above 60 to 70 F. Purdue: the amine form from about 70 F."""
    assert level(book(f"{ON} treat warm-leaf 1floz front temp {temp}", on=shed()), ON, "tree-root") == says
    by_day = book(f"{ON} treat warm-leaf 1floz front", f"{ON} weather {temp} 50F", on=shed())
    assert level(by_day, ON, "tree-root") == says
    assert level(book(f"{ON} treat leaf-off 1floz front temp {temp}", on=shed()), ON, "tree-root") == ""


# groups


def used(*products: str, every: int = 30) -> str:
    lines = [f"{later('2026-05-01', every * at)} treat {name} front" for at, name in enumerate(products)]
    return level(book(*lines, on=shed()), later("2026-05-01", every * (len(products) - 1)), "group-repeat")


def test_the_third_in_a_row_of_one_group() -> None:
    assert used("spot-out", "spot-out") == ""
    assert used("spot-out", "spot-out", "spot-out") == "note"
    assert used("spot-out", "rust-off", "spot-out", "spot-out") == ""
    assert used("spot-out", "spot-out", "spot-out", "rust-off") == ""
    assert used("grub-end", "grub-end", "grub-end") == "note"
    assert used("spot-out", "grub-end", "spot-out", "grub-off", "spot-out") == "note"


def test_all_within_twelve_months() -> None:
    assert used("grub-end", "grub-end", "grub-end", every=182) == "note"
    assert used("grub-end", "grub-end", "grub-end", every=183) == ""


def test_barriers_and_weed_products_are_not_counted() -> None:
    assert used("spring-wall", "spring-wall", "spring-wall") == used("leaf-off", "leaf-off", "leaf-off") == ""


def test_it_stands_60_days_and_the_owner_may_count_otherwise() -> None:
    lines = [f"2026-0{month}-01 treat spot-out front" for month in (5, 6, 7)]
    diary = book(*lines, on=shed())
    assert level(diary, later("2026-07-01", 59), "group-repeat") == "note"
    assert level(diary, later("2026-07-01", 60), "group-repeat") == ""
    four = book("2026-04-01 set group-repeat in-a-row 4", *lines, on=shed())
    assert level(four, "2026-07-01", "group-repeat") == ""


def test_only_single_site_groups_count() -> None:
    products = {one.name: one for one in shed().lawn(day(ON)).products}
    assert groups(products["spot-out"]) == ("FRAC 11",)
    assert groups(products["plain-can"]) == ()
