"""Merged cells: what the first of them shows holds for every row that they span."""

from collections.abc import Iterable, Iterator, Mapping

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Cell
from cards.place import Place


class Merged(Struct, frozen=True):
    """The rows that merged cells span, and their first column, all from 1."""

    first_row: int
    last_row: int
    column: int

    @property
    def rows(self) -> int:
        """How many rows are spanned."""
        return self.last_row - self.first_row + 1


def spanned(ranges: Iterable[Merged], cells: Mapping[Place, Cell]) -> Iterator[tuple[Cell, Place]]:
    """Yield the first cell of merged cells anew for every other row that they span.

    With each comes the place of the first one, for what else is known of it. Rows that hold
    nothing of their own stay blank.
    """
    filled = {place.row for place in cells}
    last = max(filled, default=0)
    for one in sorted(ranges, key=lambda one: (one.first_row, one.column)):
        first = _cell_at(cells, one)
        for row in range(one.first_row + 1, min(one.last_row, last) + 1) if first else ():
            if first and row in filled:
                yield replace(first, place=replace(first.place, row=row)), first.place


def _cell_at(cells: Mapping[Place, Cell], one: Merged) -> Cell | None:
    sheet = next(iter(cells)).sheet if cells else ""
    return cells.get(Place(sheet, one.first_row, one.column))
