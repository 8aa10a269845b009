"""Rows of a table that say something of the others: totals below them, units above them."""

import re
from collections.abc import Iterator, Sequence

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.quoting import quoted
from cards.reading.columns import Columns
from cards.reading.headings import is_among, keys_of
from cards.reading.table import Row
from cards.reading.wordings import TOTALS

_TOTALS = frozenset(keys_of(TOTALS))
_NUMBER = re.compile(r"[-+−]?\d[\d.,\s]*%?")
_BRACKETED = re.compile(r"\([^()\n]{1,20}\)|\[[^\[\]\n]{1,20}\]")
_FEW = 3
"""Fewer rows than these have nothing to be summed up."""


def summing_up(rows: Sequence[Row], columns: Columns, *, headed: bool) -> Iterator[Finding]:
    """Yield what looks like a total or like units among the rows that make the items of a sheet.

    `headed` says whether headings stand above the first.
    """
    if len(rows) <= _FEW:
        return
    total = _total(rows[-1], columns)
    if total:
        yield _looks_like_a_total(total)
    units, *others = (_bracketed(row, columns) for row in rows)
    if headed and units and not any(others):
        yield _look_like_units(units)


def _total(row: Row, columns: Columns) -> Cell | None:
    """Return the cell that calls a row a total, if besides it both sides have but a number."""
    sides = [cell for at, cell in row.cells.items() if at in {columns.prompt, columns.answer}]
    cells = [next(iter(row.cells.values())), *sides]
    named = [cell for cell in cells if is_among(cell.text, _TOTALS)]
    others = [cell for cell in sides if cell not in named]
    numbers = all(_NUMBER.fullmatch(cell.text) for cell in others)
    return named[0] if named and others and numbers else None


def _bracketed(row: Row, columns: Columns) -> Cell | None:
    """Return the first side of a row whose both sides stand in brackets and have letters."""
    sides = [row.cells[at] for at in (columns.prompt, columns.answer) if at in row.cells]
    in_brackets = all(_BRACKETED.fullmatch(cell.text) for cell in sides)
    has_letters = any(map(str.isalpha, "".join(cell.text for cell in sides)))
    return sides[0] if len(sides) > 1 and in_brackets and has_letters else None


def _looks_like_a_total(cell: Cell) -> Finding:
    return Finding(
        "total-row",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"The last row makes a card, and with {quoted(cell.text)} and a number it looks like "
        "a total of the rows above it.",
        "If it is one, delete the row; if it is none, leave it.",
    )


def _look_like_units(cell: Cell) -> Finding:
    return Finding(
        "unit-row",
        Severity.WARNING,
        cell.place,
        cell.text,
        "This row makes a card, and with both sides in brackets right below the headings it looks "
        "like units.",
        "If it holds units, write them behind the headings and delete the row; if not, leave it.",
    )
