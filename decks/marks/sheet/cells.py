"""Cells of the marks workbook: titles, headings, places to fill in, and sums."""

from collections.abc import Sequence
from typing import Any

from openpyxl.styles import Alignment, Border, Side
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook import look

HEADED = 5
"""The row of the headings; above it stand the title, directions and sums."""

COUNT, SHARE, MEAN = "0", "0%", "0.0"
AS_TYPED = "General"
"""Where something is filled in, so that 2.5 does not look like a whole number."""


def top(sheet: Worksheet, title: str, directions: Sequence[str]) -> None:
    """Write the title and a line of directions in each row below it."""
    large = look.font(size=18, bold=True)
    look.write(sheet, (1, 1), title, font=large, alignment=look.on_one_line())
    sheet.row_dimensions[1].height = 36
    for row, line in enumerate(directions, start=2):
        quiet = look.font(color=look.QUIET)
        look.write(sheet, (row, 1), line, font=quiet, alignment=look.on_one_line())
        sheet.row_dimensions[row].height = 20


def heading(sheet: Worksheet, column: int, text: str, *, width: float, filled_in: bool) -> None:
    """Write a heading; those of columns to fill in are darker. A number is written as one."""
    sheet.column_dimensions[get_column_letter(column)].width = width
    cell = look.write(
        sheet,
        (HEADED, column),
        text,
        font=look.font(bold=True),
        fill=look.fill(look.NEEDED if filled_in else look.PANEL),
        border=look.hairline(),
        alignment=_middle(wrap_text=True) if filled_in else look.wrapped(vertical="center"),
    )
    _as_number(cell, text)


def label(sheet: Worksheet, at: tuple[int, int], text: str, *, first: bool = False) -> None:
    """Write what a row is called; `first` draws a line above it, where another pile begins."""
    cell = look.write(
        sheet, at, text, border=_border(first=first), alignment=look.wrapped(vertical="center")
    )
    _as_number(cell, text)


def to_fill_in(sheet: Worksheet, at: tuple[int, int], *, first: bool = False) -> None:
    """Dress a cell that a number is written into."""
    tone = Side("thin", color=look.HAIRLINE)
    above = Side("thin", color=look.QUIET) if first else tone
    box = Border(left=tone, right=tone, bottom=tone, top=above)
    look.dress(sheet.cell(*at), border=box, alignment=_middle(), number_format=AS_TYPED)


def none_here(sheet: Worksheet, at: tuple[int, int], *, first: bool = False) -> None:
    """Dress a cell that nothing belongs into."""
    tones = {"fill": look.fill(look.PANEL), "border": _border(first=first)}
    look.dress(sheet.cell(*at), **tones)


def formula(  # noqa: PLR0913 (what, where and how)
    sheet: Worksheet,
    at: tuple[int, int],
    text: str,
    number_format: str,
    *,
    strong: bool = False,
    first: bool = False,
) -> None:
    """Write a formula of our own; nothing of a teacher's text is ever part of one."""
    cell: Any = sheet.cell(*at)
    cell.value = text
    look.dress(
        cell,
        font=look.font(bold=strong, color=look.INK if strong else look.QUIET),
        border=_border(first=first),
        alignment=_middle(),
        number_format=number_format,
    )


def only(sheet: Worksheet, ranges: Sequence[str], rule: DataValidation, hint: str) -> None:
    """Let the cells of some ranges take only what a rule says, and say so otherwise."""
    rule.showErrorMessage, rule.errorTitle, rule.error = True, "Not a mark", hint
    for cells in ranges:
        rule.add(cells)
    sheet.add_data_validation(rule)


def _border(*, first: bool) -> Border:
    above = Side("thin", color=look.QUIET) if first else Side()
    return Border(bottom=Side("thin", color=look.HAIRLINE), top=above)


def _middle(**changes: Any) -> Alignment:  # noqa: ANN401 - whatever openpyxl's alignments take
    return Alignment(horizontal="center", vertical="center", **changes)


def _as_number(cell: Any, text: str) -> None:  # noqa: ANN401 - openpyxl's cells have no common type
    """Keep a plain number a number, so that it sorts as one and no program flags it."""
    if text.isascii() and text.isdecimal() and str(int(text)) == text:
        cell.value, cell.number_format = int(text), "General"
