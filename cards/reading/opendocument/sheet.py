"""A sheet of an OpenDocument spreadsheet while it is read."""

from msgspec import Struct, field

from cards.content import Cell
from cards.place import Place
from cards.reading.limits import (
    LAST_COLUMN,
    MOST_CELLS,
    MOST_ROWS,
    too_large,
    too_many_cells,
    too_many_rows,
)
from cards.reading.merged import Merged, spanned
from cards.reading.opendocument.cell import OpenCell
from cards.reading.table import Doubt, Table, rows_of
from cards.style import Spans

_MOST_SPANNED = 500_000
_Seen = tuple[str, Spans, Doubt | None]


class OpenSheet(Struct):
    """The sheet `title` of the file `file`: what is read so far.

    `row` and `column` tell where the next row and cell stand, from 1.
    """

    file: str
    title: str
    hidden: bool
    row: int = 1
    column: int = 1
    hidden_columns: set[int] = field(default_factory=set)
    hidden_rows: set[int] = field(default_factory=set)
    set_apart: int | None = None
    has_pictures: bool = False
    _line: dict[int, _Seen] = field(default_factory=dict)
    _cells: list[Cell] = field(default_factory=list)
    _doubts: dict[Place, Doubt] = field(default_factory=dict)
    _merged: list[Merged] = field(default_factory=list)
    _filled: int = 0

    def add_columns(self, count: int, *, hidden: bool) -> None:
        """Go past the formats of some columns."""
        last = min(self.column + count, LAST_COLUMN + 1)
        if hidden:
            self.hidden_columns.update(range(self.column, last))
        self.column = last

    def begin_row(self) -> None:
        """Begin a row, or rows that are all the same."""
        self.column = 1
        self._line = {}

    def add_cells(self, cell: OpenCell, count: int, *, rows: int) -> None:
        """Add `count` cells that show the same and span `rows` rows."""
        seen = cell.seen()
        if seen[0]:
            if count > LAST_COLUMN:
                raise too_large(self.file)
            self._line.update(dict.fromkeys(range(self.column, self.column + count), seen))
            if rows > 1:
                self._merged.append(Merged(self.row, self.row + rows - 1, self.column))
        self.skip_cells(count)

    def skip_cells(self, count: int) -> None:
        """Go past cells that show nothing."""
        self.column += count

    def end_rows(self, count: int, *, hidden: bool, heading: bool) -> None:
        """End `count` rows that are all the same; `heading` rows are repeated on every page."""
        for row in range(self.row, self.row + count) if self._line else ():
            self._fill(row)
            if hidden:
                self.hidden_rows.add(row)
            if heading:
                self.set_apart = row
        self.row += count

    def _fill(self, row: int) -> None:
        self._filled += 1
        if self._filled > MOST_ROWS:
            raise too_many_rows(self.file)
        if len(self._cells) + len(self._line) > MOST_CELLS:
            raise too_many_cells(self.file)
        for column, (text, spans, doubt) in self._line.items():
            place = Place(self.title, row, column)
            self._cells.append(Cell(text, place, spans))
            if doubt:
                self._doubts[place] = doubt

    @property
    def cells(self) -> int:
        """The number of cells that show anything."""
        return len(self._cells)

    def table(self) -> Table:
        """Return what the sheet shows, without its hidden rows."""
        cells = {cell.place: cell for cell in self._cells}
        if sum(one.rows for one in self._merged) > _MOST_SPANNED:
            raise too_large(self.file)
        for cell, first in list(spanned(self._merged, cells)):
            cells[cell.place] = cell
            self._doubts[cell.place] = self._doubts.get(first, Doubt.MERGED)
        visible = [cell for cell in cells.values() if cell.place.row not in self.hidden_rows]
        return Table(
            self.title,
            self.title,
            rows_of(visible),
            self._doubts,
            hidden_columns=frozenset(self.hidden_columns),
            set_apart=self.set_apart,
        )
