"""Sheets of cells, as the bytes of an .xlsx file; rows and columns count from 1."""

import io
from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Any

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

from cards.place import column_letters
from cards.workbook.texts import writable
from decks.marks.sheet.styles import Style, coded, for_xlsxwriter

At = tuple[int, int]
"""A cell: its row and its column."""

Area = tuple[int, int, int, int]
"""Cells from a row and a column to a row and a column, both of which are part of it."""

_NO_TIME = datetime(1980, 1, 1, tzinfo=UTC)
"""What stands where the file tells when it was made: the earliest time that a zip file can tell."""
# In inches, on all sheets of ours.
_MARGINS = {"left": 0.75, "right": 0.75, "top": 1, "bottom": 1}
_FOOT_MARGIN = 0.5
_PIXELS_A_DIGIT = 7
# Half of what a cell holds, as some characters count twice.
_LONGEST_MARKUP = 16_383
_WIDEST = 255


class _Page(Worksheet):  # type: ignore[misc] # the library tells no types
    """A sheet of the library's that takes formulas as they are.

    It would look through each for a hundred newer functions, of which ours have none.
    """

    def _prepare_formula(self, formula: str, expand_future_functions: bool = False) -> str:  # noqa: FBT001, FBT002, ARG002 (as the library calls it)
        return formula.removeprefix("=")


class Book:
    """A workbook in the making. Texts are never taken for formulas, numbers or links."""

    def __init__(self) -> None:
        self._bytes = io.BytesIO()
        self._book = Workbook(self._bytes, {"in_memory": True})
        self._book.set_properties({"author": "Fairdeal", "created": _NO_TIME})
        self._formats: dict[Style, Any] = {}

    def add_sheet(self, name: str) -> "Sheet":
        """Add a sheet to the right of the others."""
        return Sheet(self, self._book.add_worksheet(name, worksheet_class=_Page))

    def format_of(self, style: Style) -> Any:  # noqa: ANN401 (the library tells no types)
        """Return the library's format for a style."""
        if style not in self._formats:
            self._formats[style] = self._book.add_format(for_xlsxwriter(style))
        return self._formats[style]

    def tint(self, tone: str) -> Any:  # noqa: ANN401 (as above)
        """Return the library's format for a ground alone, which a condition puts on a cell."""
        return self._book.add_format({"bg_color": coded(tone)})

    def finished(self) -> bytes:
        """Return the file; the book takes no more after that."""
        self._book.close()
        return self._bytes.getvalue()


class Sheet:
    """A sheet of a book in the making."""

    def __init__(self, book: Book, page: Any) -> None:  # noqa: ANN401 (as above)
        self._book, self._page = book, page

    def write_text(self, at: At, text: str, style: Style) -> None:
        """Write a text as it is, save characters that the file cannot hold."""
        row, column = at
        known, text = self._book.format_of(style), writable(text)
        if not text:
            self._page.write_blank(row - 1, column - 1, None, known)
        elif text.startswith("<r>"):
            # The library takes such a text for markup of its own, unless it comes in parts.
            parts = text[0], known, text[1:_LONGEST_MARKUP], known
            self._page.write_rich_string(row - 1, column - 1, *parts)
        else:
            self._page.write_string(row - 1, column - 1, text, known)

    def write_number(self, at: At, number: int, style: Style) -> None:
        """Write a number."""
        self._page.write_number(at[0] - 1, at[1] - 1, number, self._book.format_of(style))

    def leave_blank(self, at: At, style: Style) -> None:
        """Style a cell that holds nothing."""
        self._page.write_blank(at[0] - 1, at[1] - 1, None, self._book.format_of(style))

    def write_formula(self, at: At, formula: str, style: Style, while_blank: int | str) -> None:
        """Write a formula of our own, and what it comes to as long as nothing is filled in.

        Nothing of a teacher's text is ever part of one.
        """
        known = self._book.format_of(style)
        self._page.write_formula(at[0] - 1, at[1] - 1, formula, known, while_blank)

    def set_width(self, column: int, width: float) -> None:
        """Make a column as wide as so many digits, or as wide as a column can be."""
        pixels = round(min(width, _WIDEST) * _PIXELS_A_DIGIT)
        self._page.set_column_pixels(column - 1, column - 1, pixels)

    def set_height(self, row: int, points: float) -> None:
        """Make a row so high."""
        self._page.set_row(row - 1, points)

    def take_only(self, areas: Sequence[Area], rule: dict[str, Any]) -> None:
        """Let the cells of some areas take only what a rule of the library says."""
        counted = [[number - 1 for number in area] for area in areas]
        self._page.data_validation(*counted[0], {"other_cells": counted[1:], **rule})

    def tint_where(self, area: Area, condition: str, tone: str) -> None:
        """Colour the cells of an area for which a formula holds that is said of the first."""
        shown = {"type": "formula", "criteria": condition, "format": self._book.tint(tone)}
        self._page.conditional_format(*(number - 1 for number in area), shown)

    def keep_in_sight(self, *, row: int, column: int = 0, heads: int) -> None:
        """Keep rows and columns up to these on the screen, and a row of heads on printed pages."""
        self._page.freeze_panes(row, column)
        self._page.repeat_rows(heads - 1)

    def select(self, at: At) -> None:
        """Let a cell be the one that is typed into first."""
        row, column = at[0] - 1, at[1] - 1
        self._page.set_selection(row, column, row, column)

    def print_wide(self) -> None:
        """Print the sheet as wide as the paper, with its name and page at the foot."""
        self._page.set_landscape()
        self._page.fit_to_pages(1, 0)
        self._page.set_margins(**_MARGINS)
        self._page.set_footer("&L&A&R&P / &N", {"margin": _FOOT_MARGIN})
        self._page.set_header("", {"margin": _FOOT_MARGIN})
        self._page.hide_gridlines(2)


def name_of(row: int, column: int) -> str:
    """Return a cell's own name: `B7`."""
    return f"{column_letters(column)}{row}"


def span(area: Area) -> str:
    """Return an area as formulas name it: `B7:C9`."""
    return f"{name_of(*area[:2])}:{name_of(*area[2:])}"
