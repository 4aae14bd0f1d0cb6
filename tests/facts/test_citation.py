"""How a number is known, in words and as data; every published figure names its publication."""

from collections.abc import Iterator

import pytest

from journal.facts import degree_days, frost, growth, irrigation, soil_test, soils
from journal.facts.active import Use
from journal.facts.actives import ACTIVES, fallback
from journal.facts.citation import Basis, Citation, Known, label, local_rule, memory, practice
from journal.facts.grasses import GRASSES
from journal.facts.house import NUMBERS
from journal.facts.injuries import INJURIES
from journal.facts.local_rules_sets import sets
from journal.facts.sources import CITATIONS, cite, judgment, published
from journal.rules import catalogue


def _all_bases() -> Iterator[tuple[str, Basis]]:
    for kind in GRASSES:
        for basis in (kind.cut_basis, kind.emergence_basis, kind.nitrogen_basis, kind.rate_basis):
            if basis is not None:
                yield kind.name, basis
    for one in ACTIVES:
        yield from ((one.name, basis) for basis in one.bases())
    yield from ((f"unknown {use}", fallback(use).basis) for use in Use)
    yield from ((f"{number.rule} {number.name}", number.basis) for number in NUMBERS)
    yield from ((f"{injury.active} on {injury.grass}", injury.basis) for injury in INJURIES)
    yield from ((rule.id, basis) for rule in catalogue.rules() for basis in rule.basis)
    yield "growth", growth.GROWTH_BASIS
    for rules in sets().values():
        yield rules.id, Basis(Known.PUBLISHED, rules.citations)
        yield from ((rules.id, stated.basis) for stated in rules.stated())
    yield "soil test", soil_test.RETEST_BASIS
    yield from ((soil.name, soil.available_basis) for soil in soils.SOILS.values())
    yield from ((band.event, band.basis) for band in degree_days.BANDS)
    for module in (soils, irrigation, degree_days, frost):
        yield from ((name, basis) for name, basis in vars(module).items() if isinstance(basis, Basis))


EVERY_BASIS = list(_all_bases())


def test_every_published_figure_cites_a_publication_that_can_be_looked_up() -> None:
    kept = [(of, basis) for of, basis in EVERY_BASIS if basis.kind is Known.PUBLISHED]
    assert len(kept) > 60
    for of, basis in kept:
        assert basis.citations, of
        assert all(citation.title and (citation.address or citation.publisher) for citation in basis.citations), of


def test_a_figure_from_memory_or_practice_claims_no_publication() -> None:
    loose = [basis for _, basis in EVERY_BASIS if basis.kind in (Known.MEMORY, Known.PRACTICE)]
    assert loose
    for basis in loose:
        assert basis.citations == ()
        assert basis.words().startswith(("from memory, not confirmed", "common practice, no source"))


def test_a_judgment_always_says_that_it_is_one() -> None:
    ours = [basis for _, basis in EVERY_BASIS if basis.kind is Known.JUDGMENT]
    assert ours
    assert all(basis.words().startswith("judgment") for basis in ours)


def test_every_publication_of_the_register_is_cited_somewhere() -> None:
    cited = {citation.key for _, basis in EVERY_BASIS for citation in basis.citations}
    assert set(CITATIONS) - cited == set()


def test_the_keys_of_the_register_are_the_keys_of_its_publications() -> None:
    assert all(key == citation.key for key, citation in CITATIONS.items())
    assert len({citation.words() for citation in CITATIONS.values()}) == len(CITATIONS)


def test_no_words_promise_that_anything_is_allowed() -> None:
    for of, basis in EVERY_BASIS:
        words = f" {basis.words().casefold()} "
        assert " safe " not in words, of
        assert " legal " not in words, of


@pytest.mark.parametrize(
    ("basis", "words"),
    [
        (published("purdue-ay8"), "Purdue Univ., AY-8, Mowing, Thatching, Aerifying, and Rolling Turf, 1998"),
        (practice(), "common practice, no source"),
        (practice("some say weekly"), "common practice, no source; some say weekly"),
        (memory(), "from memory, not confirmed"),
        (judgment(), "judgment"),
        (judgment("", "osu-b546"), "judgment, leaning on Ohio State Univ. Extension, Bulletin 546, Lawn Establishment"),
        (label(), "the product's own label"),
        (local_rule("last open day 15 Nov"), "local rule; last open day 15 Nov"),
    ],
)
def test_the_words_of_a_basis(basis: Basis, words: str) -> None:
    assert basis.words() == words


def test_further_publications_are_counted() -> None:
    assert published("osu-b546", "uc-rates", "cornell-rates").words().endswith("Lawn Establishment (and 2 more)")


def test_a_basis_as_data_names_its_publications() -> None:
    data = published("purdue-ay22", note="above 85 F").as_json()
    assert data["kind"] == "published"
    assert data["note"] == "above 85 F"
    assert data["citations"] == [
        {
            "key": "purdue-ay22",
            "publisher": "Purdue Univ.",
            "title": "AY-22, Fertilizing Established Lawns",
            "year": 1998,
            "address": "agry.purdue.edu/turfnew/pubs/ay22.htm",
        }
    ]


def test_published_without_a_publication_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one publication"):
        Basis(Known.PUBLISHED)


def test_practice_with_a_publication_is_refused() -> None:
    with pytest.raises(ValueError, match="cites no publication"):
        Basis(Known.PRACTICE, (cite("osu-b546"),))


def test_a_citation_without_a_publisher_is_refused() -> None:
    with pytest.raises(ValueError, match="publisher"):
        Citation("x", "", "A title", 2001, "example.edu")
