"""The marked copy: the teacher's workbook with colours and notes on the cells of findings."""

import math
from collections.abc import Iterator, Sequence
from copy import copy
from pathlib import Path
from typing import Any

from openpyxl import Workbook
from openpyxl.comments import Comment
from openpyxl.styles import PatternFill
from openpyxl.styles.colors import Color
from openpyxl.worksheet.worksheet import Worksheet

from cards.finding import Finding, Severity, UnusableFileError
from cards.reading.sheet import cells_of
from cards.reading.sheets import is_ours
from cards.workbook import look
from cards.workbook.findings_sheet import TINTS, write_findings
from cards.workbook.marked_cells import MarkedCells
from cards.workbook.notes import AUTHOR, note_on, without_ours
from cards.workbook.package import packed
from cards.workbook.results import putting
from cards.workbook.source import opened
from cards.workbook.tones import INK

_ORDER = tuple(Severity)
_NOTE_WIDTH, _LETTERS_A_LINE, _LINE_HEIGHT = 320, 44, 19


def marked_copy(path: Path, findings: Sequence[Finding]) -> bytes:
    """Return a copy of a file, as .xlsx, with every finding marked; the file is not touched.

    Marks of an earlier check are taken out first. Raises `UnusableFileError` for a workbook that
    cannot be copied.
    """
    try:
        book, sheets, results = opened(path)
        _take_out_marks(book)
        cells = MarkedCells(sheets)
        marks = [(finding, cells.at(finding.place)) for finding in findings]
        for cell, about in _by_cell(marks):
            _mark(cell, about)
        _show_first(book, write_findings(book, path.name, marks))
        return packed(book, putting(results, [sheet.title for sheet in book.worksheets]))
    except (UnusableFileError, MemoryError):
        raise
    # What the library does not know in a workbook can fail in whatever way.
    except Exception as error:
        raise UnusableFileError(
            f"{path.name} cannot be copied with marks. "
            "Check it without --mark: every finding names its cell."
        ) from error


def _by_cell(marks: Sequence[tuple[Finding, Any]]) -> Iterator[tuple[Any, list[Finding]]]:
    grouped: dict[tuple[str, str], tuple[Any, list[Finding]]] = {}
    for finding, cell in marks:
        if cell is not None:
            at = (cell.parent.title, cell.coordinate)
            grouped.setdefault(at, (cell, []))[1].append(finding)
    yield from grouped.values()


def _mark(cell: Any, findings: Sequence[Finding]) -> None:  # noqa: ANN401 (as in look)
    worst = min((finding.severity for finding in findings), key=_ORDER.index)
    cell.fill = look.fill(TINTS[worst])
    # White letters on a dark fill would vanish on a light one.
    font = copy(cell.font)
    font.color = Color(INK)
    cell.font = font
    before = cell.comment.text if cell.comment else ""
    author = cell.comment.author if cell.comment else AUTHOR
    _put_note(cell, note_on(findings, before), author)


def _put_note(cell: Any, text: str, author: str | None) -> None:  # noqa: ANN401 (as in look)
    lines = sum(max(1, math.ceil(len(line) / _LETTERS_A_LINE)) for line in text.split("\n"))
    cell.comment = Comment(text, author, width=_NOTE_WIDTH, height=(lines + 1) * _LINE_HEIGHT)


def _take_out_marks(book: Workbook) -> None:
    for sheet in list(book.worksheets):
        if is_ours(sheet.title, str(sheet["A1"].value)) and sheet.title.startswith("Findings"):
            book.remove(sheet)
            continue
        noted = [cell for cell in cells_of(sheet).values() if cell.comment]
        for cell in noted:
            _take_out_mark(cell)


def _take_out_mark(cell: Any) -> None:  # noqa: ANN401 (as in look)
    note, author = cell.comment.text, cell.comment.author
    kept = without_ours(note)
    if kept == note:
        return
    cell.comment = None
    if kept:
        _put_note(cell, kept, author)
    if cell.fill.fgColor.rgb in TINTS.values():
        cell.fill = PatternFill()


def _show_first(book: Workbook, first: Worksheet) -> None:
    """Open the copy at one sheet; of several that are selected, all would be changed at once."""
    book.active = 0
    for sheet in book.worksheets:
        sheet.sheet_view.tabSelected = sheet is first
