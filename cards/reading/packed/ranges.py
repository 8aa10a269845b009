"""Ranges of cells, as `B2:C5`."""

import re

from msgspec import Struct

from cards.place import column_letters

_RANGE = re.compile(r"\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?")
# Cells that are merged farther across hold a title.
_MOST_COLUMNS = 256


class Range(Struct, frozen=True, kw_only=True):
    """The cells from one row and column to another, each counted from 1 and included."""

    first_row: int
    last_row: int
    first_column: int
    last_column: int

    @property
    def area(self) -> int:
        """The number of cells."""
        height = self.last_row - self.first_row + 1
        return height * (self.last_column - self.first_column + 1)

    def __str__(self) -> str:
        first, last = column_letters(self.first_column), column_letters(self.last_column)
        return f"{first}{self.first_row}:{last}{self.last_row}"


def clipped(ref: str, last_row: int) -> Range | None:
    """Return a range down to `last_row`, or None if it is no range or begins farther down."""
    found = _RANGE.fullmatch(ref)
    if not found or int(found[2]) > last_row:
        return None
    first_column, first_row = _column(found[1]), int(found[2])
    return Range(
        first_row=first_row,
        last_row=max(min(int(found[4] or first_row), last_row), first_row),
        first_column=first_column,
        last_column=max(
            min(_column(found[3] or found[1]), first_column + _MOST_COLUMNS), first_column
        ),
    )


def _column(letters: str) -> int:
    number = 0
    for letter in letters:
        number = number * 26 + ord(letter) - ord("A") + 1
    return number
