"""A sheet of a workbook becomes a table of the texts that it shows."""

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any

from cards.content import Cell
from cards.place import Place
from cards.reading.shown import shown
from cards.reading.table import Doubt, Table, clean, rows_of

if TYPE_CHECKING:
    from openpyxl.worksheet.worksheet import Worksheet

_FORMULA, _ERROR, _DATE = "f", "e", "d"
# The type that openpyxl leaves on a formula whose stored value is a text without characters.
_EMPTY_TEXT = "str"
# A carriage return, as it is written where the file format does not allow the character itself.
_ESCAPED_RETURN = "_x000D_"

# openpyxl's cells have no common type in its stubs.
_Cells = Mapping[tuple[int, int], Any]


def has_formulas(sheet: "Worksheet") -> bool:
    """Say whether any cell holds a formula."""
    return any(cell.data_type == _FORMULA for cell in _cells_of(sheet).values())


def table_of(sheet: "Worksheet", stored: "Worksheet") -> tuple[Table, tuple[int, ...]]:
    """Return what a sheet shows, and the numbers of its hidden rows that are not blank.

    `stored` is the same sheet with the values stored for its formulas.
    """
    hidden = {number for number, row in sheet.row_dimensions.items() if row.hidden}
    values = _cells_of(stored)
    texts: dict[Place, Cell] = {}
    doubts: dict[Place, Doubt] = {}
    for at, cell in _cells_of(sheet).items():
        if cell.value is None:
            continue
        place = Place(sheet.title, *at)
        text, doubt = _seen(cell, values[at])
        texts[place] = Cell(text, place)
        if doubt:
            doubts[place] = doubt
    hidden_rows = sorted({place.row for place, cell in texts.items() if cell.text} & hidden)
    for spanned in list(_spanned(sheet, texts)):
        texts[spanned.place] = spanned
    visible = [cell for cell in texts.values() if cell.place.row not in hidden]
    return Table(sheet.title, sheet.title, rows_of(visible), doubts), tuple(hidden_rows)


def _cells_of(sheet: "Worksheet") -> _Cells:
    # The public iterators make a cell for every blank of the sheet, down to its last styled row.
    return sheet._cells  # noqa: SLF001


def _seen(cell: Any, stored: Any) -> tuple[str, Doubt | None]:  # noqa: ANN401 - as _Cells
    """Return the text that a cell shows, and what may be amiss with it.

    A formula without a stored value is returned as it is written.
    """
    if cell.data_type == _FORMULA and stored.value is None and stored.data_type != _EMPTY_TEXT:
        return str(getattr(cell.value, "text", cell.value)), Doubt.NO_VALUE
    text = stored.value
    if isinstance(text, str):
        text = text.replace(_ESCAPED_RETURN, "\r")
    text = clean(shown(text, stored.number_format))
    if stored.data_type == _ERROR:
        return text, Doubt.ERROR_VALUE
    return text, Doubt.DATE if _is_date(stored) else None


def _is_date(cell: Any) -> bool:  # noqa: ANN401 - as _Cells
    """Say whether a cell holds a day, not only a time of day."""
    return cell.data_type == _DATE and hasattr(cell.value, "year")


def _spanned(sheet: "Worksheet", texts: Mapping[Place, Cell]) -> Iterator[Cell]:
    """Yield the first cell of merged cells again for every other row that they span.

    Rows that hold nothing of their own stay blank.
    """
    filled = {place.row for place in texts}
    last = max(filled, default=0)
    for merged in sorted(sheet.merged_cells.ranges, key=lambda merged: merged.bounds):
        first = texts.get(Place(sheet.title, merged.min_row, merged.min_col))
        for row in range(merged.min_row + 1, min(merged.max_row, last) + 1) if first else ():
            if first and row in filled:
                yield Cell(first.text, Place(sheet.title, row, merged.min_col))
