"""Labels that were not entered, and products that are not for a home lawn."""

import pytest

from journal.record.kinds.hiding import Aside
from journal.record.product import Content, Label, Product
from journal.rules.flag import Level
from journal.rules.label_site import why_not
from tests.rules.treated import flags, shed
from tests.scenario import book, day, judged, later, level, raised

ON = "2026-05-01"
FULL = 'to_seed = "28 d"\nafter_seed = "3 mowings"\nrepeat = "30 d"\nmax_per_year = 2'


def test_a_blank_label_names_what_stands_in_for_it() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", on=shed())
    flag = raised(diary, ON, "label-unknown")
    assert flag is not None
    assert (flag.level, flag.subject) == ("note", "leaf-off")
    assert flag.headline == "the label of leaf-off is not entered"
    assert flag.why.endswith("seed waits 28 days, new grass waits 3 mowings, 28 days between uses, 2 uses a year")
    assert flag.do == "copy it from the label: set leaf-off to_seed ...; likewise after_seed, repeat, max_per_year"
    assert level(diary, later(ON, 59), "label-unknown") == "note"
    assert level(diary, later(ON, 60), "label-unknown") == ""


def test_it_names_only_what_is_missing_and_clears_when_it_is_entered() -> None:
    part = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": FULL.replace('repeat = "30 d"\n', "")}))
    flag = raised(part, ON, "label-unknown")
    assert flag is not None
    assert flag.headline == "part of the label of leaf-off is not entered"
    assert flag.why.endswith("these hold: 28 days between uses")
    entered = book(f"{later(ON, 3)} set leaf-off repeat 30d", on=part)
    assert level(entered, later(ON, 3), "label-unknown") == ""
    assert level(book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": FULL})), ON, "label-unknown") == ""


def test_one_a_product_whatever_the_number_of_uses() -> None:
    lines = (f"{ON} treat leaf-off 1floz front", f"{later(ON, 40)} treat leaf-off 1floz front")
    assert flags(book(*lines, on=shed()), later(ON, 40), "label-unknown") == {"leaf-off": "note"}


def test_insect_products_have_no_wait_before_seed() -> None:
    flag = raised(book(f"{ON} treat grub-off 3lb front", on=shed()), ON, "label-unknown")
    assert flag is not None
    assert flag.why.endswith("these hold: 90 days between uses, 1 use a year")


def test_a_fertilizer_without_an_active_has_no_such_label() -> None:
    assert level(book(f"{ON} feed pond-ridge 3lb front"), ON, "label-unknown") == ""


def test_it_absorbs_a_note_that_rests_on_a_default() -> None:
    diary = book(f"{ON} treat leaf-off spot front", f"{later(ON, 5)} treat leaf-off spot front", on=shed())
    assert flags(diary, later(ON, 5), "label-interval") == {}
    assert level(diary, later(ON, 5), "label-unknown") == "note"


# where, and by whom


@pytest.mark.parametrize(
    ("label", "says"),
    [("professional = true", "harm"), ('site = "golf course turf"', "harm"),
     ('site = "not for residential turf"', "harm"),
     ('site = "ornamental beds"', "harm"), ('site = "restricted use, residential lawns"', "harm"),
     ('site = "residential lawn"', ""), ('site = "home lawns, golf courses"', ""), ('site = "turf"', ""), ("", "")],
)  # fmt: skip
def test_not_for_a_home_lawn(label: str, says: str) -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": label}))
    assert level(diary, ON, "not-for-lawns") == says
    assert level(diary, later(ON, 300), "not-for-lawns") == says
    assert level(diary, ON, "not-for-lawns", "back") == ""


def test_it_holds_the_line_back_until_it_is_set_aside() -> None:
    own = shed({"leaf-off": "professional = true"})
    assert judged(own, ON, "treat leaf-off 1floz front").holds_back
    diary = book(f"{ON} treat leaf-off 1floz front", on=own)
    aside = Aside(id="9", date=day(ON), zones=("front",), flag="not-for-lawns/front/leaf-off", remark="used up")
    assert level(diary.plus(aside), ON, "not-for-lawns") == ""


def test_it_is_shown_once_a_product() -> None:
    lines = [f"{later(ON, 30 * at)} treat leaf-off 1floz front" for at in range(5)]
    diary = book(*lines, on=shed({"leaf-off": "professional = true"}))
    assert flags(diary, later(ON, 130), "not-for-lawns") == {"leaf-off": "harm"}


def test_a_service_may_use_what_is_for_professionals_but_not_on_a_wrong_site() -> None:
    line = f"{ON} treat leaf-off 1floz front by service"
    assert level(book(line, on=shed({"leaf-off": "professional = true"})), ON, "not-for-lawns") == ""
    assert level(book(line, on=shed({"leaf-off": 'site = "sod farms"'})), ON, "not-for-lawns") == "harm"


def test_an_active_that_is_seldom_for_home_lawns_is_a_note_until_the_site_is_entered() -> None:
    line = f"{ON} treat clover-out 1floz front"
    assert level(book(line, on=shed()), ON, "not-for-lawns") == "note"
    assert level(book(line, on=shed({"clover-out": 'site = "residential lawn"'})), ON, "not-for-lawns") == ""


def test_a_corrected_label_clears_it() -> None:
    diary = book(f"{ON} treat leaf-off 1floz front", on=shed({"leaf-off": 'site = "golf courses"'}))
    assert level(diary, ON, "not-for-lawns") == "harm"
    assert level(book(f"{ON} set leaf-off site residential lawn", on=diary), ON, "not-for-lawns") == ""


def test_seed_and_plain_fertilizer_are_not_judged() -> None:
    assert why_not(Product(name="a", kind="fertilizer", label=Label(professional=True))) is None
    with_active = Product(name="a", kind="fertilizer", actives=(Content("2,4-d"),), label=Label(professional=True))
    found = why_not(with_active)
    assert found is not None
    assert found[0] is Level.HARM
