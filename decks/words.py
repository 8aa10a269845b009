"""Small turns of phrase that several storeys need."""

from collections.abc import Sequence


def listed(words: Sequence[str], conjunction: str = "or") -> str:
    """Return words as a sentence lists them: `letter or a4`, `small, medium or large`."""
    *most, last = words
    return f"{', '.join(most)} {conjunction} {last}" if most else last


def counted(number: int, one: str, many: str = "") -> str:
    """Return a number with its noun: `1 card`, `2 cards`, `3 leaves`."""
    return f"{number} {one if number == 1 else many or one + 's'}"
