"""Sheets of pairs: teams with their colours, and settings with their values."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from typing import TypeAlias

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import folded
from cards.reading.headings import is_among, keys_of, role_of
from cards.reading.role import Role
from cards.reading.table import Row, Table
from cards.reading.wordings import TEAM_COLOURS, TEAM_SHEETS

Pair: TypeAlias = tuple[Cell | None, Cell | None]

_NAMES = {"name", "names"}
_TEAMS = frozenset(keys_of(TEAM_SHEETS))
_COLOURS = frozenset(keys_of(TEAM_COLOURS))
_SIDES = 2
# How far down, in rows that are not blank, a row with both headings goes before one with the first.
_DEPTH = 10


def pairs(table: Table, first: Role, second: Role) -> Iterator[Pair]:
    """Yield the pairs of a sheet: by its headings, or else from its columns A and B.

    Headings may also stand below one another, with what they head to their right.
    """
    lying = _headings_below_one_another(table, {first, second})
    if first in lying:
        yield from _from_left_to_right(lying[first], lying.get(second))
        return
    headings = headings_with(table, first, second)
    below = [row for row in table.rows if not headings or row.number > headings.number]
    one, other = _columns(headings, below, first, second) if headings else (1, 2)
    if not headings and _begins_with_a_title(below):
        below = below[1:]
    for row in below:
        yield row.cells.get(one), row.cells.get(other)


def _begins_with_a_title(rows: Sequence[Row]) -> bool:
    """Say whether the first row has a single cell, and all below it, several, have both."""
    if len(rows) <= _SIDES or len(rows[0].cells) > 1:
        return False
    return all(row.cells.keys() >= {1, 2} for row in rows[1:])


def pairs_of_all(tables: Iterable[Table], first: Role, second: Role) -> Iterator[Pair]:
    """Yield the pairs of several sheets."""
    return (pair for table in tables for pair in pairs(table, first, second))


def headings_with(table: Table, first: Role, second: Role) -> Row | None:
    """Return the row with the heading `first`, or None if there is none.

    Of several near the top it is one that has `second` too, else one of more than a single cell,
    since a title may say the same.
    """
    near = [row for row in table.rows[:_DEPTH] if first in columns_in(row)]
    if near:
        return max(near, key=lambda row: (second in columns_in(row), len(row.cells) > 1))
    return next((row for row in table.rows[_DEPTH:] if first in columns_in(row)), None)


def _columns(headings: Row, below: Iterable[Row], first: Role, second: Role) -> tuple[int, int]:
    """Return the columns of a pair, 0 for the second where there is none.

    Under a single heading, and beside settings whatever heads it, that is the next column; where
    nothing stands there, the heading of settings may be that of their values.
    """
    columns = columns_in(headings)
    one, other = columns[first], columns.get(second)
    if other or (len(headings.cells) > 1 and second is not Role.VALUE):
        return one, other or 0
    beside = not any(row.text(one + 1) for row in below)
    return (one - 1, one) if beside and one - 1 in headings.cells else (one, one + 1)


def columns_in(headings: Row) -> Mapping[Role, int]:
    """Return the first column of each role; names are teams where nothing else is headed so."""
    names: dict[Role, int] = {}
    others: dict[Role, int] = {}
    for column, cell in headings.cells.items():
        role = _role(cell.text)
        if role:
            others.setdefault(role, column)
        elif folded(cell.text) in _NAMES:
            names.setdefault(Role.TEAM, column)
    return names | others


def alone(cell: Cell, wrong: str, mend: str) -> Finding:
    """Say that a cell lacks what it belongs to."""
    return Finding(
        "half-a-row",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"This {wrong} beside it and is not read.",
        f"{mend}, or clear the cell.",
    )


def _role(text: str) -> Role | None:
    """Return what a heading means; "Team 1" is a team, not a heading."""
    if any(character.isdigit() for character in text):
        return None
    if is_among(text, _COLOURS):
        return Role.COLOUR
    return Role.TEAM if is_among(text, _TEAMS) else role_of(text)


def _headings_below_one_another(table: Table, roles: Collection[Role]) -> dict[Role, Row]:
    """Return the rows that begin with these headings, if all do and hold more than headings."""
    rows: dict[Role, Row] = {}
    for row in table.rows[:_SIDES]:
        first = next(iter(row.cells.values())).text
        role = Role.TEAM if folded(first) in _NAMES else _role(first)
        if role and role in roles:
            rows[role] = row
    texts = [cell.text for row in rows.values() for cell in row.cells.values()]
    known = all(folded(text) in _NAMES or _role(text) for text in texts)
    return rows if len(rows) == len(table.rows) and not known else {}


def _from_left_to_right(firsts: Row, seconds: Row | None) -> Iterator[Pair]:
    others = seconds.cells if seconds else {}
    for column in sorted(firsts.cells.keys() | others.keys())[1:]:
        yield firsts.cells.get(column), others.get(column)
