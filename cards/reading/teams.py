"""The Teams sheet."""

from collections.abc import Iterable, Iterator, Sequence

from msgspec.structs import replace

from cards.content import Cell, TeamRow
from cards.finding import Finding, Severity
from cards.item import folded
from cards.quoting import quoted
from cards.reading.headings import is_among, keys_of
from cards.reading.pairs import alone, columns_in, headings_with, pairs, pairs_of_all
from cards.reading.role import Role
from cards.reading.table import Row, Table
from cards.reading.wordings import STUDENTS

_STUDENTS = frozenset(keys_of(STUDENTS))


def team_rows(table: Table) -> Iterator[TeamRow]:
    """Yield the teams of a Teams sheet: by its headings, or names in A and colours in B.

    A class list says beside each student which team that one is in: there, each team comes once.
    """
    sides = pairs(table, Role.TEAM, Role.COLOUR)
    rows = [TeamRow(first, second) for first, second in sides if first]
    yield from _each_once(rows) if _students(table) else rows


def team_doubts(tables: Sequence[Table]) -> Iterator[Finding]:
    """Yield the colours that have no team beside them, and the lists of students."""
    for first, second in pairs_of_all(tables, Role.TEAM, Role.COLOUR):
        if second and not first:
            yield alone(second, "colour has no team", "Write the team's name before it")
    for table in tables:
        headings, students = _headings(table), _students(table)
        if headings and students:
            yield _class_list(students, headings.cells[columns_in(headings)[Role.TEAM]])


def _each_once(rows: Iterable[TeamRow]) -> Iterator[TeamRow]:
    """Yield the first row of each team, with the first colour that stands beside the team."""
    teams: dict[str, TeamRow] = {}
    for row in rows:
        first = teams.setdefault(folded(row.name.text), row)
        teams[folded(row.name.text)] = first if first.colour else replace(first, colour=row.colour)
    yield from teams.values()


def _headings(table: Table) -> Row | None:
    return headings_with(table, Role.TEAM, Role.COLOUR)


def _students(table: Table) -> Cell | None:
    """Return the heading of the students, where a sheet lists them beside their teams."""
    headings = _headings(table)
    if headings is None:
        return None
    team = columns_in(headings)[Role.TEAM]
    if is_among(headings.text(team), _STUDENTS):  # names alone are those of teams
        return None
    for column, cell in headings.cells.items():
        if is_among(cell.text, _STUDENTS) and _holds_words(table, headings, column):
            return cell
    return None


def _holds_words(table: Table, headings: Row, column: int) -> bool:
    """Say whether letters stand below a heading: numbers say how many the students are."""
    below = (row.text(column) for row in table.rows if row.number > headings.number)
    return any(map(str.isalpha, "".join(below)))


def _class_list(students: Cell, teams: Cell) -> Finding:
    return Finding(
        "class-list",
        Severity.NOTE,
        students.place,
        students.text,
        f"This sheet lists students. The teams are those under {quoted(teams.text)} in "
        f"{teams.place.cell}, each once; the students’ names are not read.",
        "If these are the names of the teams, head them Team, and the other column otherwise.",
    )
