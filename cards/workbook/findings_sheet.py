"""The first sheet of a marked copy: everything that was found, with links to the cells."""

import math
from collections.abc import Sequence
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import quote_sheetname
from openpyxl.worksheet.hyperlink import Hyperlink
from openpyxl.worksheet.worksheet import Worksheet

from cards.finding import Finding, Severity, tally
from cards.workbook import look
from cards.workbook.tones import LINK, PANEL, QUIET

TINTS = {
    Severity.ERROR: "FFF7D4CE",
    Severity.WARNING: "FFFBE8BC",
    Severity.NOTE: "FFD9E6F4",
}
"""The fill of a marked cell. On each, ink passes 4.5:1 (WCAG 2.2)."""

_HEADINGS = (
    ("How serious", 14),
    ("Where", 24),
    ("What is there", 36),
    ("What is wrong", 56),
    ("How to mend it", 56),
)
_HEADED = 4
_LINE_HEIGHT = 16.5
_MOST_LINES = 12
_DIRECTIONS = (
    "Select a place to go there. Mend it there, or in your own file, which is as it was. "
    "This sheet is not read."
)


def write_findings(book: Workbook, name: str, marks: Sequence[tuple[Finding, Any]]) -> Worksheet:
    """Write the sheet; each finding comes with the cell that it is marked in, or None."""
    sheet: Worksheet = book.create_sheet(_free_name(book), 0)
    # Reading knows this sheet by its name and by the first word of this title.
    title = f"Fairdeal found {tally(finding for finding, _ in marks)} in {name}"
    look.write(
        sheet, (1, 1), title, font=look.font(size=18, bold=True), alignment=look.on_one_line()
    )
    quiet = look.font(color=QUIET)
    look.write(sheet, (2, 1), _DIRECTIONS, font=quiet, alignment=look.on_one_line())
    sheet.row_dimensions[1].height, sheet.row_dimensions[2].height = 36, 24
    _write_headings(sheet)
    for row, (finding, cell) in enumerate(marks, start=_HEADED + 1):
        _write_finding(sheet, row, finding)
        if cell is not None:
            _link(sheet.cell(row, 2), cell)
    sheet.auto_filter.ref = f"A{_HEADED}:E{_HEADED + len(marks)}"
    sheet.sheet_view.showGridLines = False
    look.keep_in_sight(sheet, row=_HEADED)
    look.print_wide(sheet)
    return sheet


def _free_name(book: Workbook) -> str:
    taken = {name.casefold() for name in book.sheetnames}
    names = ["Findings", *(f"Findings {number}" for number in range(2, len(taken) + 3))]
    return next(name for name in names if name.casefold() not in taken)


def _write_headings(sheet: Worksheet) -> None:
    for column, (heading, width) in enumerate(_HEADINGS, start=1):
        style = {"font": look.font(bold=True), "fill": look.fill(PANEL)}
        look.write(sheet, (_HEADED, column), heading, border=look.hairline(), **style)
        sheet.column_dimensions["ABCDE"[column - 1]].width = width
    sheet.row_dimensions[_HEADED].height = 24


def _write_finding(sheet: Worksheet, row: int, finding: Finding) -> None:
    texts = (
        finding.severity.capitalize(),
        str(finding.place),
        finding.found,
        finding.wrong,
        finding.mend,
    )
    for column, text in enumerate(texts, start=1):
        look.write(sheet, (row, column), text, border=look.hairline())
    lines = max(_lines(text, width) for text, (_, width) in zip(texts, _HEADINGS, strict=True))
    sheet.row_dimensions[row].height = 6 + _LINE_HEIGHT * min(lines, _MOST_LINES)
    sheet.cell(row, 1).fill = look.fill(TINTS[finding.severity])
    sheet.cell(row, 1).font = look.font(bold=True)


def _lines(text: str, width: int) -> int:
    """Return about how many lines a text takes in a column of this width, in characters."""
    return sum(max(1, math.ceil(len(line) / (width - 4))) for line in text.split("\n"))


def _link(at: Any, cell: Any) -> None:  # noqa: ANN401 (openpyxl's cells have no common type)
    location = f"{quote_sheetname(cell.parent.title)}!{cell.coordinate}"
    at.hyperlink = Hyperlink(ref=at.coordinate, location=location)
    at.font = look.font(color=LINK, underline="single")
