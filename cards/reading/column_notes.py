"""What is to be said of whole columns, at their headings."""

from collections.abc import Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.reading.columns import Roles
from cards.reading.table import Row, Table


def column_notes(table: Table, headings: Row, roles: Roles) -> Iterator[Finding]:
    """Yield notes on the columns that are hidden but read."""
    for column in sorted(roles):
        if column in table.hidden_columns:
            yield _hidden_but_read(headings.cells[column])


def _hidden_but_read(cell: Cell) -> Finding:
    return Finding(
        "hidden-column",
        Severity.NOTE,
        cell.place,
        cell.text,
        "This column is hidden, but its heading says what it holds, so it was read.",
        "To leave it out, clear its heading or delete the column.",
    )
