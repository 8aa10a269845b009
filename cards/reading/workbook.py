"""Workbooks: .xlsx and .xlsm. Macros are never run and nothing outside the file is opened."""

import io
import warnings
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from msgspec.structs import replace

from cards.finding import Finding, UnusableFileError
from cards.reading.hidden import absent_sheet_warning, hidden_rows_note, hidden_sheet_note
from cards.reading.packed.archive import damaged
from cards.reading.packed.lean import lean_workbook
from cards.reading.pictures.in_workbook import pasted_in
from cards.reading.pictures.pasted import Pasted
from cards.reading.sheet import has_formulas, table_of
from cards.reading.table import Table
from cards.spreadsheets import load_openpyxl

if TYPE_CHECKING:
    from openpyxl.reader.excel import ExcelReader
    from openpyxl.workbook.workbook import Workbook
    from openpyxl.worksheet.worksheet import Worksheet

# The signature of the container that locked workbooks, and those before 2007, are kept in.
_COMPOUND_FILE = b"\xd0\xcf\x11\xe0"
_LOCKED = "EncryptedPackage".encode("utf-16-le")


def read_workbook(data: bytes, name: str) -> tuple[tuple[Table, ...], tuple[Finding, ...]]:
    """Read the visible sheets of a workbook, left to right; `name` is the file's name.

    The findings tell what is hidden and therefore left out. Raises `UnusableFileError` if the
    file is locked with a password, is of another kind, or is damaged.
    """
    _refuse_others(data, name)
    lean = lean_workbook(data, name)
    book, absent = _opened(lean, name, values=False)
    sheets = book.worksheets
    if not sheets:
        raise UnusableFileError(
            f"{name} has no sheet that can be read. It may be a Strict Open XML Spreadsheet: "
            "open it in your spreadsheet program and save it as Excel Workbook (.xlsx)."
        )
    stored = None
    if any(has_formulas(sheet) for sheet in sheets):
        stored = {sheet.title: sheet for sheet in _opened(lean, name, values=True)[0].worksheets}
    tables: list[Table] = []
    pasted, findings = pasted_in(data, name)
    findings += map(absent_sheet_warning, absent)
    for sheet in sheets:
        pictures = pasted.get(sheet.title, ())
        found = _read_sheet(sheet, stored[sheet.title] if stored else sheet, pictures)
        tables += found[0]
        findings += found[1]
    return tuple(tables), tuple(findings)


def _read_sheet(
    sheet: "Worksheet", stored: "Worksheet", pictures: Sequence[Pasted]
) -> tuple[list[Table], list[Finding]]:
    table, hidden_rows = table_of(sheet, stored)
    table = replace(table, pictures=tuple(pictures))
    if sheet.sheet_state != "visible":
        return [], [hidden_sheet_note(table.name)] if table.rows or hidden_rows else []
    notes = [hidden_rows_note(table.name, hidden_rows)] if hidden_rows else []
    return [table] if table.rows else [], notes


def _refuse_others(data: bytes, name: str) -> None:
    if not data.startswith(_COMPOUND_FILE):
        return
    if _LOCKED in data:
        raise UnusableFileError(
            f"{name} is locked with a password. "
            "Open it, save a copy without a password, and use the copy."
        )
    raise UnusableFileError(
        f"{name} is an older kind of workbook under a new name. "
        "Open it in your spreadsheet program and save it as .xlsx."
    )


def _opened(data: bytes, name: str, *, values: bool) -> tuple["Workbook", list[str]]:
    """Open a workbook with its formulas, or with the values stored for them.

    With it come the names of the sheets that it lists and does not hold.
    """
    load_openpyxl()
    from openpyxl.reader.excel import ExcelReader  # noqa: PLC0415 (loaded by now)

    try:
        with warnings.catch_warnings():
            # They tell of drawings and styles that are left out, which no card needs.
            warnings.simplefilter("ignore")
            reader = ExcelReader(io.BytesIO(data), data_only=values, rich_text=True)
            reader.read()
            return reader.wb, list(_absent(reader))
    except MemoryError:
        raise
    # A damaged file can fail anywhere in the library, in whatever way.
    except Exception as error:
        raise UnusableFileError(damaged(name)) from error


def _absent(reader: "ExcelReader") -> Iterator[str]:
    for sheet, part in reader.parser.find_sheets():
        if part.Type.endswith("/worksheet") and part.target not in reader.valid_files:
            yield sheet.name
