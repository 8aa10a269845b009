"""What is to be said of whole columns, at their headings."""

from collections.abc import Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.reading.columns import Roles
from cards.reading.role import Role
from cards.reading.table import Row, Table


def column_notes(table: Table, headings: Row, roles: Roles) -> Iterator[Finding]:
    """Yield notes on the columns that are hidden but read, and on the one that is not printed."""
    for column, role in sorted(roles.items()):
        if role is Role.PICTURE:
            continue
        if column in table.hidden_columns:
            yield _hidden_but_read(headings.cells[column])
    pictures = [column for column in sorted(roles) if roles[column] is Role.PICTURE]
    filled = (one for one in pictures if _holds_anything(table, headings, one))
    yield from (_not_printed(headings.cells[column]) for column in list(filled)[:1])


def _holds_anything(table: Table, headings: Row, column: int) -> bool:
    return any(row.number > headings.number and row.text(column) for row in table.rows)


def _hidden_but_read(cell: Cell) -> Finding:
    return Finding(
        "hidden-column",
        Severity.NOTE,
        cell.place,
        cell.text,
        "This column is hidden, but its heading says what it holds, so it was read.",
        "To leave it out, clear its heading or delete the column.",
    )


def _not_printed(cell: Cell) -> Finding:
    return Finding(
        "picture-not-printed",
        Severity.NOTE,
        cell.place,
        cell.text,
        "Pictures are not printed yet; the rest of the row is.",
        "Leave the column as it is, or draw on the cards once they are cut.",
    )
