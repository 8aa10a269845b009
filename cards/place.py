"""Where something stands in the teacher's file, as the teacher sees it."""

from msgspec import Struct


class Place(Struct, frozen=True, order=True):
    """A cell of a sheet; `column` and `row` count from 1, `row` 0 means the sheet as a whole."""

    sheet: str
    row: int = 0
    column: int = 0

    @property
    def cell(self) -> str:
        """The spreadsheet's own name of the cell: `B7`, `row 7` without a column, or nothing."""
        if not self.row:
            return ""
        if not self.column:
            return f"row {self.row}"
        return f"{column_letters(self.column)}{self.row}"

    def __str__(self) -> str:
        return f"{' '.join(self.sheet.splitlines())} {self.cell}".strip()


def column_letters(column: int) -> str:
    """Return the letters over a column: 1 is A, 26 is Z, 27 is AA."""
    letters = ""
    while column > 0:
        column, letter = divmod(column - 1, 26)
        letters = chr(ord("A") + letter) + letters
    return letters
