"""How hard an item is, in the words that teachers use."""

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import Level, folded
from cards.reading.near import near_miss
from cards.reading.quoting import quoted

_WORDINGS = {
    Level.EASY: "1, 1.0, easy, e, low, simple, basic, level 1, *, ★",
    Level.MEDIUM: "2, 2.0, medium, m, med, middle, moderate, average, level 2, **, ★★",
    Level.HARD: "3, 3.0, hard, h, high, difficult, challenging, advanced, level 3, ***, ★★★",
}
_LEVELS = {word: level for level, words in _WORDINGS.items() for word in words.split(", ")}


def level_of(text: str) -> Level | None:
    """Return the level that a word or number stands for; blank is medium; None if not known."""
    return _LEVELS.get(folded(text)) if text else Level.MEDIUM


def unknown_level(cell: Cell) -> Finding:
    """Say that a cell does not hold a level, and which one it may have been meant to hold."""
    near = near_miss(cell.text, [word for word in _LEVELS if word.isalpha() and len(word) > 1])
    hint = f"Did you mean {near}? " if near else ""
    return Finding(
        "unknown-level",
        Severity.ERROR,
        cell.place,
        cell.text,
        f"{quoted(cell.text)} is not a level.",
        f"{hint}Write easy, medium or hard (or 1, 2 or 3).",
    )
