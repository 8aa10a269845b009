"""Which cells of a workbook the places of findings mean."""

from collections.abc import Mapping
from typing import Any

from openpyxl.worksheet.worksheet import Worksheet

from cards.place import Place
from cards.reading.sheet import cells_of

At = tuple[int, int]
"""A row and a column."""


class MarkedCells:
    """The cells of sheets, which come by what places call them.

    What has to be known of a whole sheet is gathered once, when a place on it is first asked for.
    """

    def __init__(self, sheets: Mapping[str, Worksheet]) -> None:
        self._sheets = sheets
        self._first_filled: dict[str, Mapping[int, int]] = {}
        self._spanning: dict[str, Mapping[At, At]] = {}

    def at(self, place: Place) -> Any:  # noqa: ANN401 (as in look)
        """Return the cell to mark for a place, or None where it is no cell."""
        sheet = self._sheets.get(place.sheet)
        if sheet is None or not place.row:
            return None
        if sheet.title not in self._spanning:
            self._first_filled[sheet.title] = _first_filled(sheet)
            self._spanning[sheet.title] = _spanning(sheet)
        column = place.column or self._first_filled[sheet.title].get(place.row, 1)
        at = place.row, column
        return sheet.cell(*self._spanning[sheet.title].get(at, at))


def _first_filled(sheet: Worksheet) -> dict[int, int]:
    """Return for each row its first column with something in it."""
    filled = (at for at, cell in cells_of(sheet).items() if cell.value is not None)
    return dict(sorted(filled, reverse=True))


def _spanning(sheet: Worksheet) -> dict[At, At]:
    """Return for each of the cells that are merged the first one of them."""
    firsts = {area: (area.min_row, area.min_col) for area in sheet.merged_cells.ranges}
    areas = sorted(firsts, key=firsts.__getitem__, reverse=True)
    return {at: firsts[area] for area in areas for at in area.cells}
