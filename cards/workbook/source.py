"""The teacher's file, opened to be copied with marks."""

import io
import re
import warnings
import zipfile
from collections.abc import Mapping
from pathlib import Path
from typing import TypeAlias

from openpyxl import Workbook, load_workbook
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from cards.reading.file import tables_of
from cards.reading.limits import MOST_KEPT_BYTES
from cards.reading.packed.escapes import guarded_workbook
from cards.reading.packed.lean import lean_workbook
from cards.reading.packed.lean_sheet import MOST_MERGED, merged_in
from cards.reading.sheet import has_formulas
from cards.reading.table import Table
from cards.spreadsheets import load_openpyxl_with_pictures
from cards.workbook import look
from cards.workbook.results import Results, results_of

_NOT_IN_NAMES = re.compile(r"[\[\]:*?/\\\x00-\x1f]")
_LONGEST_NAME = 31
_NARROWEST, _WIDEST = 12, 60


Sheets: TypeAlias = Mapping[str, Worksheet]
"""The sheets of a copy, by what places call them in the file that is copied."""


def opened(path: Path) -> tuple[Workbook, Sheets, Results]:
    """Return a workbook, or the rows of another kind of file as one, and its formulas' results.

    Macros are left out; so are pictures and all formats where there is far too much of anything.
    """
    if path.suffix.lower() not in {".xlsx", ".xlsm"}:
        return *_of_tables(path), {}
    data = path.read_bytes()
    if _is_enormous(data):
        data = lean_workbook(data, path.name)
    data = guarded_workbook(data)
    load_openpyxl_with_pictures()
    with warnings.catch_warnings():
        # They tell of drawings and styles that are left out.
        warnings.simplefilter("ignore")
        book = load_workbook(io.BytesIO(data), rich_text=True)
        sheets = {sheet.title: sheet for sheet in book.worksheets}
        if not any(map(has_formulas, book.worksheets)):
            return book, sheets, {}
        return book, sheets, results_of(book, load_workbook(io.BytesIO(data), data_only=True))


def _is_enormous(data: bytes) -> bool:
    """Say whether a workbook unpacks to too much, or merges too many cells, to be opened whole."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        if sum(part.file_size for part in archive.infolist()) > MOST_KEPT_BYTES:
            return True
        parts = [name for name in archive.namelist() if name.lower().endswith(".xml")]
        return sum(merged_in(archive.read(part)) for part in parts) > MOST_MERGED


def _of_tables(path: Path) -> tuple[Workbook, Sheets]:
    book = Workbook()
    book.remove(book.worksheets[0])
    sheets: dict[str, Worksheet] = {}
    for table in tables_of(path)[0]:
        sheets[table.name] = book.create_sheet(sheet_name(table.title))
        _copy(table, sheets[table.name])
    return book, sheets


def _copy(table: Table, sheet: Worksheet) -> None:
    widths: dict[int, int] = {}
    for row in table.rows:
        for column, cell in row.cells.items():
            look.write(sheet, (row.number, column), cell.text)
            widths[column] = max(widths.get(column, _NARROWEST), len(cell.text) + 2)
    for column, width in widths.items():
        sheet.column_dimensions[get_column_letter(column)].width = min(width, _WIDEST)


def sheet_name(title: str) -> str:
    """Return a title as the name of a sheet, which may not be long nor hold certain signs."""
    return _NOT_IN_NAMES.sub(" ", title)[:_LONGEST_NAME].strip(" '") or "Sheet"
