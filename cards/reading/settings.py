"""The Teams sheet and the Deck sheet."""

from collections.abc import Iterator, Mapping

from cards.content import Cell, SettingRow, TeamRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.quoting import quoted
from cards.reading.headings import key, role_of
from cards.reading.role import Role
from cards.reading.table import Row, Table

_TEAM_NAMES = {"name", "names"}


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


def team_doubts(table: Table) -> Iterator[Finding]:
    """Yield the colours that have no team beside them."""
    for first, second in _pairs(table, Role.TEAM, Role.COLOUR):
        if second and not first:
            yield _alone(second, "colour has no team", "Write the team's name before it")


def setting_doubts(table: Table) -> Iterator[Finding]:
    """Yield the values that have no setting beside them, and settings that stand twice."""
    seen: dict[str, Cell] = {}
    for first, second in _pairs(table, Role.SETTING, Role.VALUE):
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
        f"{quoted(cell.text)} stands in {earlier.place.cell} too; the one further down counts.",
        "Delete one of the two rows.",
    )


def _pairs(table: Table, first: Role, second: Role) -> Iterator[tuple[Cell | None, Cell | None]]:
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
