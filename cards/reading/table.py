"""A sheet as the teacher sees it: the cells that are not blank, each with its address."""

import re
import unicodedata
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from enum import Enum, auto

from cards.content import Cell
from cards.place import Place

_ENDS = re.compile(r"^[\s\ufeff]+|[\s\ufeff]+$")


class Doubt(Enum):
    """What may be amiss with a cell that a program filled in, not a person."""

    NO_VALUE = auto()
    ERROR_VALUE = auto()
    DATE = auto()


@dataclass(frozen=True, slots=True)
class Row:
    """A row that is not blank: its number, from 1, and its cells by column, from 1."""

    number: int
    cells: Mapping[int, Cell]

    def text(self, column: int | None) -> str:
        """Return the text in a column; blank where there is no such column or cell."""
        cell = self.cells.get(column or 0)
        return cell.text if cell else ""


@dataclass(frozen=True, slots=True)
class Table:
    """The rows of a sheet that are not blank.

    `name` is the sheet's name in places; `title` is the name that may say what the sheet is for
    (a file of its own has a file name, whose ending says nothing). `delimited` is true where
    delimiters part the fields, so that one field too many means something.
    """

    name: str
    title: str
    rows: tuple[Row, ...]
    doubts: Mapping[Place, Doubt] = field(default_factory=dict)
    delimited: bool = False


def rows_of(cells: Iterable[Cell]) -> tuple[Row, ...]:
    """Gather cells into rows, top to bottom; blank cells are left out."""
    rows: dict[int, dict[int, Cell]] = {}
    for cell in cells:
        if cell.text:
            rows.setdefault(cell.place.row, {})[cell.place.column] = cell
    return tuple(Row(number, dict(sorted(rows[number].items()))) for number in sorted(rows))


def clean(text: str) -> str:
    """Return a cell's text composed (NFC), with plain line breaks, without blank ends."""
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    return _ENDS.sub("", unicodedata.normalize("NFC", text))
