"""What the format of a sheet says: hidden columns, and a row that is set apart as headings are."""

from collections.abc import Sequence
from math import isfinite
from typing import TYPE_CHECKING

from cards.reading.limits import LAST_COLUMN
from cards.reading.table import Row

if TYPE_CHECKING:
    from openpyxl.worksheet.worksheet import Worksheet

# How far down, in rows that are not blank, such a row is looked for: titles may stand above it.
_DEPTH = 5


def hidden_columns(sheet: "Worksheet") -> frozenset[int]:
    """Return the numbers of the columns that are hidden, from 1."""
    hidden: set[int] = set()
    spans = [(c.min or 1, c.max or 0) for c in sheet.column_dimensions.values() if c.hidden]
    beyond = 1
    # they may overlap, and each may reach to the last column
    for first, last in sorted(spans):
        hidden.update(range(max(first, beyond), min(last, LAST_COLUMN) + 1))
        beyond = max(beyond, last + 1)
    return frozenset(hidden)


def set_apart_row(sheet: "Worksheet", rows: Sequence[Row]) -> int | None:
    """Return the number of the first row of several cells, if it is set apart as headings are.

    That is so if it is the last of the frozen rows, if it has the filter, or if all its cells are
    bold and those of the row below are not.
    """
    first = next((i for i, row in enumerate(rows[:_DEPTH]) if len(row.cells) > 1), None)
    if first is None or first + 1 >= len(rows):
        return None
    row = rows[first]
    marked = row.number in {_last_frozen(sheet), _filtered(sheet)}
    return row.number if marked or _bold_by_itself(sheet, row, rows[first + 1]) else None


def struck_fonts(sheet: "Worksheet") -> frozenset[int]:
    """Return the numbers of the workbook's fonts that strike out what is written in them."""
    fonts = getattr(sheet.parent, "_fonts", ())
    return frozenset(number for number, font in enumerate(fonts) if font.strike)


def _last_frozen(sheet: "Worksheet") -> int:
    pane = sheet.sheet_view.pane
    frozen = pane is not None and pane.state in {"frozen", "frozenSplit"}
    rows = float(pane.ySplit or 0) if pane and frozen else 0
    return int(rows) if isfinite(rows) else 0


def _filtered(sheet: "Worksheet") -> int:
    ref = sheet.auto_filter.ref
    return int("".join(filter(str.isdigit, ref.partition(":")[0])) or 0) if ref else 0


def _bold_by_itself(sheet: "Worksheet", row: Row, below: Row) -> bool:
    return all(_bold(sheet, row)) and not any(_bold(sheet, below))


def _bold(sheet: "Worksheet", row: Row) -> list[bool]:
    cells = (sheet.cell(row.number, column) for column in row.cells)
    try:
        return [bool(cell.font and cell.font.b) for cell in cells]
    except IndexError:  # the style names a font that the workbook has not
        return [False]
