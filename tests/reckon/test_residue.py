"""From which day on seed may follow a treatment."""

from datetime import date, timedelta

from journal.facts.mixture import Mixture
from journal.reckon.residue import Residue, residues
from journal.record.kinds.setting import Setting
from journal.record.kinds.treatment import Treatment
from tests.reckon.shed import book

APRIL = date(2026, 4, 15)
BLEND: Mixture = {"kentucky bluegrass": 50, "perennial ryegrass": 50}


def put(product: str, on: date = APRIL, **facts: object) -> Treatment:
    return Treatment(id=f"9{on}", date=on, zones=("front",), product=product, **facts)  # type: ignore[arg-type]


def shed(name: str, **facts: str) -> Setting:
    return Setting(id=f"08{name}", date=date(2026, 1, 1), what="product", name=name, values=tuple(facts.items()))


def found(*entries: object) -> tuple[Residue, ...]:
    return residues(book(*entries).on("front", date(2026, 8, 1)), BLEND)


def test_the_label_decides_where_it_speaks() -> None:
    barrier = shed("wall", kind="pre-emergent", actives="prodiamine 0.38%", to_seed="120d")
    (one,) = found(barrier, put("wall"))
    assert one.over == APRIL + timedelta(120)
    assert one.wait.by == "label"


def test_a_spring_barrier_keeps_seed_out_until_november() -> None:
    (one,) = found(shed("wall", kind="pre-emergent"), put("wall"))
    assert one.over == date(2026, 11, 11)


def test_an_unknown_treatment_is_taken_for_a_barrier() -> None:
    (one,) = found(put("unknown"))
    assert one.over == date(2026, 11, 11)


def test_a_spot_or_an_insect_product_keeps_no_seed_out() -> None:
    assert found(put("weeder", spot=True)) == ()
    assert found(shed("grubs", kind="insect"), put("grubs")) == ()


def test_the_last_to_end_comes_last() -> None:
    entries = (put("weeder", date(2026, 7, 20)), shed("wall", kind="pre-emergent"), put("wall"))
    assert [one.product for one in found(*entries)] == ["weeder", "wall"]
