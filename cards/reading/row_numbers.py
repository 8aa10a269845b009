"""Columns that do no more than number the rows."""

import re
from collections.abc import Sequence

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.quoting import quoted
from cards.reading.columns import FRONTS, Roles, pair_of
from cards.reading.table import Row, Table

_LEAST = 3
_WHOLE = re.compile(r"\d{1,4}", re.ASCII)


def numbers_rows(rows: Sequence[Row], column: int) -> bool:
    """Say whether a column counts the rows: 1, 2, 3 and so on, but for what stands in the first."""
    told = [row.text(column).rstrip(".) ") for row in rows]
    first = next((n for n, text in enumerate(told[:2]) if _WHOLE.fullmatch(text)), None)
    if first is None or len(told) - first < _LEAST:
        return False
    return told[first:] == [str(int(told[first]) + n) for n in range(len(told) - first)]


def without_numbers(table: Table, index: int, roles: Roles) -> tuple[Roles, tuple[Finding, ...]]:
    """Leave out what would be the fronts of cards, but numbers the rows below row `index`.

    It stays where no other two columns make a card.
    """
    fronts = [column for column, role in roles.items() if role in FRONTS]
    for column in fronts if len(fronts) > 1 else ():
        others = {at: role for at, role in roles.items() if at != column}
        if pair_of(others) and numbers_rows(table.rows[index + 1 :], column):
            return others, (_left_out(table.rows[index].cells[column]),)
    return roles, ()


def _left_out(cell: Cell) -> Finding:
    return Finding(
        "row-numbers",
        Severity.NOTE,
        cell.place,
        cell.text,
        f"The column headed {quoted(cell.text)} does no more than number the rows, so it was not "
        "read.",
        "If its numbers belong on the cards, rename the column that makes the fronts instead.",
    )
