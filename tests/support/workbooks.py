"""Workbooks, filled with the rows that a test names."""

from collections.abc import Iterable, Mapping, Sequence

from openpyxl import Workbook

Sheets = Mapping[str, Iterable[Sequence[object]]]


def fill(sheets: Sheets) -> Workbook:
    """Return a workbook with these sheets; None leaves a cell blank."""
    book = Workbook()
    book.remove(book.worksheets[0])
    for name, rows in sheets.items():
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
    return book
