"""How a reckoning declares itself, and how its options are read."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import MISSING, Field, dataclass, field, fields
from enum import Enum
from types import MappingProxyType
from typing import Any, TypeVar

from journal.record.clean import LONGEST_LINE
from journal.record.refusal import Refusal, nearest
from journal.record.term import Term


class Needs(Enum):
    """What a reckoning has to be given besides its options: nothing, days of weather, or the book's history.

    `answer()` takes nothing, `Sequence[DayWeather]`, or `(History, date)`.
    """

    NOTHING = "nothing"
    WEATHER = "weather"
    BOOK = "book"


def mark(key: str) -> Any:
    """A field that is True where its option, which takes no value, was given."""
    return field(default=False, metadata={"terms": (bare(key),)})


def bare(key: str) -> Term:
    """An option that takes no value: it has no example."""
    return Term(key, lambda _: True, "")


def in_order(*options: Term) -> Any:
    """A field that gathers options which may come again, as pairs (name, value) in the order in which they stand.

    At least one of them must be given.
    """
    return field(metadata={"terms": options, "gathered": True})


@dataclass(frozen=True, slots=True)
class Option:
    """One option: its name without the dashes, the field that its value goes to, and how it is read."""

    name: str
    field: str
    term: Term
    needed: bool
    gathered: bool

    @property
    def bare(self) -> bool:
        """Whether it takes no value."""
        return not self.term.example

    @property
    def example(self) -> str:
        """As it is typed: `--area 5000sqft`."""
        return f"--{self.name} {self.term.example}".rstrip()


@dataclass(frozen=True, slots=True)
class Reckoning:
    """One calculation: its name, what it says, a whole example, and the frozen dataclass that holds its options.

    `explains` has half a sentence for an option that needs one.
    """

    name: str
    says: str
    example: str
    needs: Needs
    asks: type[Any]
    explains: Mapping[str, str]

    @property
    def options(self) -> dict[str, Option]:
        """By name, in order of declaration."""
        return {option.name: option for found in fields(self.asks) for option in _options(found)}

    def read(self, words: Sequence[str]) -> Any:
        """The options as words of a shell (`--area`, `5000sqft`), read. Raises Refusal naming the option at fault."""
        options, values = self.options, dict[str, Any]()
        for name, text in _pairs(words, tuple(options)):
            option = options[name]
            if option.field in values and not option.gathered:
                raise Refusal(f"--{name}", "has been said already.")
            value = _value(option, text)
            values[option.field] = (*values.get(option.field, ()), (name, value)) if option.gathered else value
        for option in options.values():
            if option.gathered and option.needed and option.field not in values:
                several = _listed([name for name, one in options.items() if one.gathered and not one.bare])
                raise Refusal("", f"at least one of {several} is wanted, like {option.example}.")
            if option.needed and option.field not in values:
                raise Refusal(f"--{option.name}", f"is missing: write it like {option.example}.")
        return self.asks(**values)


def _options(found: "Field[Any]") -> list[Option]:
    own = found.metadata
    terms: tuple[Term, ...] = own["terms"] if "terms" in own else (own["term"],) if "term" in own else ()
    needed = found.default is MISSING and found.default_factory is MISSING
    return [Option(t.key.replace("_", "-"), found.name, t, needed, "gathered" in own) for t in terms]


def _pairs(words: Sequence[str], options: tuple[str, ...]) -> list[tuple[str, str]]:
    """Each option with the words up to the next one; `--area=5000sqft` too."""
    found: list[tuple[str, str]] = []
    for word in words:
        head, equals, rest = word.partition("=")
        if head.startswith("--") and head != "--":
            option = head[2:].casefold()
            if option not in options:
                near = nearest(option, options)
                raise Refusal(head, f"not asked here; there are {_listed(options)}.", f"--{near}" if near else "")
            found.append((option, rest if equals else ""))
        elif not found:
            raise Refusal(word, f"an option is wanted before it, like --{options[0]}.")
        else:
            option, before = found[-1]
            found[-1] = option, f"{before} {word}".strip()
    return found


def _value(option: Option, text: str) -> Any:
    head = f"--{option.name}"
    if option.bare and text.strip():
        raise Refusal(f"{head} {text}", "it stands alone: no value is wanted after it.")
    if not option.bare and not text.strip():
        raise Refusal(head, f"a value is wanted after it, like {option.term.example}.")
    if len(text) > LONGEST_LINE:
        raise Refusal(head, "far too long to be meant.")
    try:
        return option.term.read(text)
    except Refusal as refusal:
        raise Refusal(f"{head} {refusal.word or text}", refusal.why, refusal.suggestion) from None


def _listed(options: Sequence[str]) -> str:
    return ", ".join(f"--{option}" for option in options)


RECKONINGS: dict[str, Reckoning] = {}
"""By name. Filled by the files of `journal.reckon.calls`, each by its being there."""

T = TypeVar("T", bound=type[Any])


def reckoning(
    name: str,
    says: str,
    example: str,
    *,
    needs: Needs = Needs.NOTHING,
    explains: Mapping[str, str] = MappingProxyType({}),
) -> Callable[[T], T]:
    """Declare a frozen dataclass with a method `answer` as a reckoning.

    A field made by `asked` must be given, one made by `term` has a default; `mark` and `in_order` stand above.
    """

    def declare(asks: T) -> T:
        if name in RECKONINGS:
            raise ValueError(f"two reckonings are called {name}")
        RECKONINGS[name] = Reckoning(name, says, example, needs, asks, explains)
        return asks

    return declare
