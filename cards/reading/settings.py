"""The Teams sheet and the Deck sheet."""

from collections.abc import Collection, Iterable, Iterator, Mapping

from cards.content import Cell, SettingRow, TeamRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.place import Place
from cards.quoting import quoted
from cards.reading.headings import key, role_of
from cards.reading.role import Role
from cards.reading.table import Row, Table

_Pair = tuple[Cell | None, Cell | None]

_TEAM_NAMES = {"name", "names"}
_SIDES = 2


def team_rows(table: Table) -> Iterator[TeamRow]:
    """Yield the teams of a Teams sheet: by its headings, or names in A and colours in B."""
    for first, second in _pairs(table, Role.TEAM, Role.COLOUR):
        if first:
            yield TeamRow(first, second)


def setting_rows(table: Table) -> Iterator[SettingRow]:
    """Yield the settings of a Deck sheet that have a value: by its headings, or from A and B."""
    for first, second in _pairs(table, Role.SETTING, Role.VALUE):
        if first and second:
            yield SettingRow(first, second)


def team_doubts(tables: Iterable[Table]) -> Iterator[Finding]:
    """Yield the colours that have no team beside them."""
    for first, second in _all_pairs(tables, Role.TEAM, Role.COLOUR):
        if second and not first:
            yield _alone(second, "colour has no team", "Write the team's name before it")


def setting_doubts(tables: Iterable[Table]) -> Iterator[Finding]:
    """Yield the values that have no setting beside them, and settings that stand twice."""
    seen: dict[str, Cell] = {}
    for first, second in _all_pairs(tables, Role.SETTING, Role.VALUE):
        if second and not first:
            yield _alone(second, "value has no setting", "Write the setting's name before it")
        if first and second:
            earlier = seen.get(key(first.text))
            if earlier:
                yield _twice(first, earlier)
            seen[key(first.text)] = first


def _alone(cell: Cell, wrong: str, mend: str) -> Finding:
    return Finding(
        "half-a-row",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"This {wrong} beside it and is not read.",
        f"{mend}, or clear the cell.",
    )


def _twice(cell: Cell, earlier: Cell) -> Finding:
    return Finding(
        "setting-twice",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"{quoted(cell.text)} stands in {_seen_from(cell.place, earlier.place)} too; this one "
        "counts.",
        "Delete one of the two rows.",
    )


def _seen_from(place: Place, other: Place) -> str:
    """Return where another place is: its cell, with its sheet if that is another too."""
    return other.cell if other.sheet == place.sheet else str(other)


def _all_pairs(tables: Iterable[Table], first: Role, second: Role) -> Iterator[_Pair]:
    return (pair for table in tables for pair in _pairs(table, first, second))


def _pairs(table: Table, first: Role, second: Role) -> Iterator[_Pair]:
    lying = _headings_below_one_another(table, {first, second})
    if first in lying:
        yield from _from_left_to_right(lying[first], lying.get(second))
        return
    columns, start = _columns(table, first, second)
    for row in table.rows[start:]:
        yield row.cells.get(columns[first]), row.cells.get(columns[second])


def _columns(table: Table, first: Role, second: Role) -> tuple[Mapping[Role, int], int]:
    """Return the two columns and the index of the first row below the headings."""
    plain = {first: 1, second: 2}
    for i, row in enumerate(table.rows):
        found = _found(row)
        if first in found:
            return {second: 0} | found, i + 1
    return plain, 0


def _headings_below_one_another(table: Table, roles: Collection[Role]) -> dict[Role, Row]:
    """Return the rows that begin with these headings, if all do and hold more than headings."""
    rows: dict[Role, Row] = {}
    for row in table.rows[:_SIDES]:
        role = _role(next(iter(row.cells.values())).text)
        if role and role in roles:
            rows[role] = row
    texts = [cell.text for row in rows.values() for cell in row.cells.values()]
    return rows if len(rows) == len(table.rows) and not all(map(_role, texts)) else {}


def _from_left_to_right(firsts: Row, seconds: Row | None) -> Iterator[_Pair]:
    others = seconds.cells if seconds else {}
    for column in sorted(firsts.cells.keys() | others.keys())[1:]:
        yield firsts.cells.get(column), others.get(column)


def _found(row: Row) -> dict[Role, int]:
    roles: dict[Role, int] = {}
    for column, cell in sorted(row.cells.items(), reverse=True):
        role = _role(cell.text)
        if role:
            roles[role] = column
    return roles


def _role(text: str) -> Role | None:
    """Return what a heading means; "Team 1" is a team, not a heading."""
    if any(character.isdigit() for character in text):
        return None
    return Role.TEAM if folded(text) in _TEAM_NAMES else role_of(text)
