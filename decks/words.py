"""Small turns of phrase that several storeys need."""

from collections.abc import Sequence
from math import floor


def listed(words: Sequence[str], conjunction: str = "or") -> str:
    """Return words as a sentence lists them: `letter or a4`, `small, medium or large`."""
    *most, last = words
    return f"{', '.join(most)} {conjunction} {last}" if most else last


def percent(share: float | None) -> str:
    """Return a share in whole per cent, halves up as spreadsheets do; a dash if there is none."""
    return "–" if share is None else f"{floor(100 * share + 0.5)} %"


def counted(number: int, one: str, many: str = "") -> str:
    """Return a number with its noun: `1 card`, `2 cards`, `3 leaves`."""
    return f"{number} {one if number == 1 else many or one + 's'}"
