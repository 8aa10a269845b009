"""A sheet of a workbook becomes a table of the texts that it shows."""

from collections.abc import Iterator, Mapping
from math import isfinite
from typing import TYPE_CHECKING, Any

from cards.content import Cell
from cards.place import Place
from cards.reading.error_values import is_error_value
from cards.reading.merged import Merged, spanned
from cards.reading.packed.escapes import unescaped
from cards.reading.rich import cleaned, has_struck, parts_of
from cards.reading.sheet_format import hidden_columns, set_apart_row, struck_fonts
from cards.reading.shown import shown
from cards.reading.table import Doubt, Table, clean, rows_of
from cards.style import Spans

if TYPE_CHECKING:
    from openpyxl.worksheet.worksheet import Worksheet

_GENERAL = "General"
_FORMULA, _ERROR, _DATE = "f", "e", "d"
# What is stored of a picture placed in a cell, and of other values of newer programs.
_OF_A_PICTURE = "#VALUE!"
# The type that openpyxl leaves on a formula whose stored value is a text without characters.
_EMPTY_TEXT = "str"

# openpyxl's cells have no common type in its stubs.
Cells = Mapping[tuple[int, int], Any]


def has_formulas(sheet: "Worksheet") -> bool:
    """Say whether any cell holds a formula."""
    return any(cell.data_type == _FORMULA for cell in cells_of(sheet).values())


def table_of(sheet: "Worksheet", stored: "Worksheet") -> tuple[Table, tuple[int, ...]]:
    """Return what a sheet shows, and the numbers of its hidden rows that are not blank.

    `stored` is the same sheet with the values stored for its formulas.
    """
    hidden = {number for number, row in sheet.row_dimensions.items() if row.hidden}
    values, struck = cells_of(stored), struck_fonts(sheet)
    texts: dict[Place, Cell] = {}
    doubts: dict[Place, Doubt] = {}
    for at, cell in cells_of(sheet).items():
        if cell.value is None:
            continue
        place = Place(sheet.title, *at)
        text, spans, doubt = _seen(cell, values[at])
        texts[place] = Cell(text, place, spans)
        if not doubt and cell._style.fontId in struck:  # noqa: SLF001 (a quick look)
            doubt = Doubt.STRUCK
        if doubt:
            doubts[place] = doubt
    hidden_rows = sorted({place.row for place, cell in texts.items() if cell.text} & hidden)
    for cell, first in list(spanned(_merged(sheet), texts)):
        texts[cell.place] = cell
        doubts[cell.place] = doubts.get(first, Doubt.MERGED)
    visible = [cell for cell in texts.values() if cell.place.row not in hidden]
    rows = rows_of(visible)
    table = Table(
        sheet.title,
        sheet.title,
        rows,
        doubts,
        hidden_columns=hidden_columns(sheet),
        set_apart=set_apart_row(sheet, rows),
    )
    return table, tuple(hidden_rows)


def cells_of(sheet: "Worksheet") -> Cells:
    """Return the cells that the file of a sheet holds, by row and column.

    The public iterators make a cell for every blank of the sheet, down to its last styled row.
    """
    return sheet._cells  # noqa: SLF001


def _seen(cell: Any, stored: Any) -> tuple[str, Spans, Doubt | None]:  # noqa: ANN401 (as Cells)
    """Return the text that a cell shows with its styles, and what may be amiss with it.

    A formula without a stored value is returned as it is written.
    """
    if cell.data_type == _FORMULA and stored.value is None and stored.data_type != _EMPTY_TEXT:
        return unescaped(str(getattr(cell.value, "text", cell.value))), (), Doubt.NO_VALUE
    if isinstance(stored.value, list):  # a rich text is a list of its parts
        text, spans = cleaned([(unescaped(text), style) for text, style in parts_of(stored.value)])
        return text, spans, Doubt.STRUCK if has_struck(stored.value) else None
    value = unescaped(stored.value) if isinstance(stored.value, str) else stored.value
    text = clean(shown(value, _format_of(stored)))
    if stored.data_type == _ERROR or (isinstance(value, float) and not isfinite(value)):
        in_cell = cell.data_type == _ERROR and text == _OF_A_PICTURE
        return text, (), Doubt.NO_TEXT if in_cell else Doubt.ERROR_VALUE
    if is_error_value(text):
        return text, (), Doubt.ERROR_VALUE if cell.data_type == _FORMULA else Doubt.ERROR_TEXT
    if not text and not _is_blank(value):
        return text, (), Doubt.HIDDEN
    return text, (), Doubt.DATE if _is_date(stored) else None


def _is_blank(value: Any) -> bool:  # noqa: ANN401 (as Cells)
    return value is None or (isinstance(value, str) and not clean(value))


def _format_of(cell: Any) -> str:  # noqa: ANN401 (as Cells)
    try:
        return str(cell.number_format)
    except IndexError:  # the style names a format that the workbook has not
        return _GENERAL


def _is_date(cell: Any) -> bool:  # noqa: ANN401 (as Cells)
    """Say whether a cell holds a day, not only a time of day."""
    return cell.data_type == _DATE and hasattr(cell.value, "year")


def _merged(sheet: "Worksheet") -> Iterator[Merged]:
    for merged in sheet.merged_cells.ranges:
        yield Merged(merged.min_row, merged.max_row, merged.min_col)
