"""How hard an item is, in the words that teachers use."""

from collections.abc import Iterable

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import Level, folded
from cards.quoting import quoted
from cards.reading.headings import unaccented
from cards.reading.near import near_miss
from cards.reading.wordings import LEVELS

_LEVELS = {
    form: level
    for wordings in LEVELS.values()
    for level, words in wordings.items()
    for word in words.split(", ")
    for form in (folded(word), unaccented(word))
}
# The words of other languages are known, but a misspelt one is more likely to be English.
_SUGGESTED = [word for words in LEVELS["English"].values() for word in words.split(", ")]


def level_of(text: str) -> Level | None:
    """Return the level that a word or number stands for; blank is medium; None if not known."""
    if not text:
        return Level.MEDIUM
    return _LEVELS.get(folded(text)) or _LEVELS.get(unaccented(text))


def unknown_level(cell: Cell) -> Finding:
    """Say that a cell does not hold a level, and which one it may have been meant to hold."""
    near = _near(cell.text, _SUGGESTED) or _near(cell.text, _LEVELS)
    hint = f"Did you mean {near}? " if near else ""
    return Finding(
        "unknown-level",
        Severity.ERROR,
        cell.place,
        cell.text,
        f"{quoted(cell.text)} is not a level.",
        f"{hint}Write easy, medium or hard (or 1, 2 or 3).",
    )


def _near(text: str, known: Iterable[str]) -> str | None:
    return near_miss(text, [word for word in known if word.isalpha() and len(word) > 1])
