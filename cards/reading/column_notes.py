"""What is to be said of whole columns, at their headings."""

from collections.abc import Collection, Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.reading.columns import BACKS, FRONTS, Roles, pair_of
from cards.reading.role import Role
from cards.reading.table import Row, Table


def column_notes(table: Table, headings: Row, roles: Roles) -> Iterator[Finding]:
    """Yield what is to be said of columns that are hidden but read, and of a second table."""
    for column in sorted(roles):
        if column in table.hidden_columns:
            yield _hidden_but_read(headings.cells[column])
    pair = pair_of(roles) or ()
    others = {column: role for column, role in roles.items() if role not in pair}
    if pair_of(others):
        yield _beside(headings.cells[min(c for c in others if others[c] in FRONTS | BACKS)], pair)


def _beside(cell: Cell, pair: Collection[Role]) -> Finding:
    return Finding(
        "table-beside",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"The cards of this sheet are made of the columns {' and '.join(pair)}; "
        "a second table beside them makes none.",
        "Put the second table on a sheet of its own.",
    )


def _hidden_but_read(cell: Cell) -> Finding:
    return Finding(
        "hidden-column",
        Severity.NOTE,
        cell.place,
        cell.text,
        "This column is hidden, but its heading says what it holds, so it was read.",
        "To leave it out, clear its heading or delete the column.",
    )
