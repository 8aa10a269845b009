"""Cells of the marks workbook: titles, headings, places to fill in, and sums."""

from collections.abc import Sequence

from decks.marks.sheet import styles
from decks.marks.sheet.styles import Style, first_of_pile
from decks.marks.sheet.writing import At, Sheet

HEADED = 5
"""The row of the headings; above it stand the title, directions and sums."""


def top(sheet: Sheet, title: str, directions: Sequence[str]) -> None:
    """Write the title and a line of directions in each row below it."""
    sheet.write_text((1, 1), title, styles.TITLE)
    sheet.set_height(1, 36)
    for row, line in enumerate(directions, start=2):
        sheet.write_text((row, 1), line, styles.DIRECTIONS)
        sheet.set_height(row, 20)


def heading(sheet: Sheet, column: int, text: str, *, width: float, filled_in: bool) -> None:
    """Write a heading; those of columns to fill in are darker. A number is written as one."""
    sheet.set_width(column, width)
    style = styles.HEADING_TO_FILL_IN if filled_in else styles.HEADING
    _write(sheet, (HEADED, column), text, style)


def label(sheet: Sheet, at: At, text: str, *, first: bool) -> None:
    """Write what a row is called; `first` draws a line above it, where another pile begins."""
    _write(sheet, at, text, _maybe_first(styles.LABEL, first=first))


def to_fill_in(sheet: Sheet, at: At, *, first: bool = False) -> None:
    """Dress a cell that a number is written into."""
    sheet.leave_blank(at, _maybe_first(styles.TO_FILL_IN, first=first))


def none_here(sheet: Sheet, at: At, *, first: bool = False) -> None:
    """Dress a cell that nothing belongs into."""
    sheet.leave_blank(at, _maybe_first(styles.NONE_HERE, first=first))


def total(sheet: Sheet, at: At, formula: str) -> None:
    """Write a sum over all rows."""
    sheet.write_formula(at, formula, styles.result(styles.COUNT, strong=True), while_blank=0)


def figure(sheet: Sheet, at: At, formula: str, style: Style, *, first: bool = False) -> None:
    """Write a formula that shows nothing as long as nothing is filled in."""
    sheet.write_formula(at, formula, _maybe_first(style, first=first), while_blank="")


def _maybe_first(style: Style, *, first: bool) -> Style:
    return first_of_pile(style) if first else style


def _write(sheet: Sheet, at: At, text: str, style: Style) -> None:
    """Write a text, but a plain number as a number, which sorts as one and no program flags."""
    if text.isascii() and text.isdecimal() and str(int(text)) == text:
        sheet.write_number(at, int(text), styles.numbered(style))
    else:
        sheet.write_text(at, text, style)
