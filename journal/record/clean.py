"""The one door through which a user's text enters the book."""

import re
import unicodedata

LONGEST_LINE = 1000
"""A line longer than this is refused as a whole; reading looks no further."""

_UNSEEN = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u00ad\u061c\u180e\u200b\u200c\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff"
    "\ufff9-\ufffb\ud800-\udfff\U000e0000-\U000e007f]"
)
_CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\ud800-\udfff]")


def clean(text: str) -> str:
    """One line of text: NFC, no control, direction or zero-width characters, no lone surrogates.

    Tabs and line breaks become blanks; the joiner inside emoji stays.
    """
    text = re.sub(r"[\t\r\n\x0b\x0c\x85\u2028\u2029]+", " ", text)
    return unicodedata.normalize("NFC", _UNSEEN.sub("", text)).strip()


def unseen(text: str) -> bool:
    """Whether the text holds a character that `clean` takes out: none may stand where words are kept to the letter."""
    marked = f".{text}."
    return clean(marked) != unicodedata.normalize("NFC", marked)


def control_at(text: str) -> int | None:
    """Where the first control character stands, or None: such a line is refused, not silently altered."""
    found = _CONTROL.search(text)
    return found.start() if found else None
